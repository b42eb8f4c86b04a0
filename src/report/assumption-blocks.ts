/** What a page rests on that nobody stated or measured, and, where more is asked for, its settings and inputs. */
import { shownFile } from '../base/file-name.ts';
import type { LengthUnit } from '../base/units.ts';
import type { Assumption } from '../tasks/settings/assumption.ts';
import { isOwn } from '../tasks/settings/effective-settings.ts';
import type { Settings } from '../tasks/settings/settings.ts';
import type { SurveyResult } from '../tasks/survey/survey-vehicle.ts';
import { decisionLines } from './decision-lines.ts';
import { headingOf, joined, remarkFacts, setIn } from './facts.ts';
import { type Block, list, paragraph, type Said } from './model.ts';
import type { PageOptions } from './page-options.ts';
import { settingsList } from './settings-list.ts';

const SAID_UP_FRONT = 'strict-policy';

export function assumptionBlocks(
  { assumptions, inputs, settings }: Pick<SurveyResult, 'assumptions' | 'inputs' | 'settings'>,
  { unit, verbose }: PageOptions,
  saidElsewhere: readonly string[] = [],
): readonly Block[] {
  const isSaid = (code: string): boolean => code === SAID_UP_FRONT || saidElsewhere.includes(code);
  const texts = assumptions
    .filter(({ code }) => !isSaid(code))
    .map((one) => remarkFacts(one, unit));
  return [
    ...assumed(texts),
    ...(verbose ? ownSettings(settings) : []),
    ...(verbose ? [list('Inputs', inputs.flatMap(inputLines))] : []),
  ];
}

/** The same of a page that shows neither settings nor inputs. */
export const assumedBlocks = (
  assumptions: readonly Assumption[],
  unit: LengthUnit,
): readonly Block[] => assumed(assumptions.map((one) => remarkFacts(one, unit)));

const assumed = (texts: readonly Said[]): readonly Block[] =>
  texts.length === 0 ? [] : [paragraph('Assumed', joined(texts, '; ', '.'))];

const ownSettings = ({ effective }: Settings): readonly Block[] => {
  const own = effective.filter(isOwn);
  return own.length === 0 ? [] : [settingsList('Settings that are not built in', own)];
};

const inputLines = ({ file, decisions }: SurveyResult['inputs'][number]): readonly Said[] => {
  const name = shownFile(file);
  return decisions === null
    ? [name]
    : [
        headingOf(`${name}:`),
        ...decisionLines(decisions, MOST_LINES).map((said) => setIn(name, said)),
      ];
};

/** Lines about how one file was read. */
const MOST_LINES = 16;
