/** What was planned beside what was measured, in words. */

import { counted } from '../../base/counted.ts';
import { shownFile } from '../../base/file-name.ts';
import { thicknessText, unitName } from '../../base/sentence.ts';
import type { LengthUnit } from '../../base/units.ts';
import type { CompareResult } from '../../tasks/compare/compare-files.ts';
import type { PartLeft } from '../../tasks/compare/compare-panel.ts';
import type { RateSeen } from '../../tasks/compare/compare-plan.ts';
import { factorText } from '../log-factor.ts';
import { type Block, paragraph } from '../model.ts';
import { partNameOf, partsLeft } from './compare-words.ts';

export function planLine(
  { planned, panels, worked }: CompareResult,
  unit: LengthUnit,
): readonly Block[] {
  if (!planned) return [];
  const judged = panels
    .map((panel) => partsLeft([panel]).filter(({ against }) => against !== null))
    .filter((parts) => parts.length > 0);
  const within = judged.filter((parts) => parts.every((part) => wordOf(part) === 'as-foretold'));
  const all = within.length === judged.length ? 'all ' : '';
  const parts = [
    ...WORDS.flatMap(({ word, told }) => toldOn(told, judged.flat(), word, unit)),
    ...(within.length === 0
      ? []
      : [`${all}${counted(within.length, 'panel')} within what plan and readings may be off by`]),
  ];
  return [
    paragraph(
      'Against the plan',
      judged.length === 0
        ? 'none of its panels was compared.'
        : `${parts.join('; ')}; ${asWorkedText(judged.flat(), worked)}.`,
    ),
  ];
}

/** A plan allows for rates that are far off: what might go is said before it, and is no matter of what it foretold. */
type PlanWord = 'over' | NonNullable<PartLeft['against']>;

const wordOf = ({ overruns, against }: PartLeft): PlanWord | null =>
  overruns.some(({ code }) => code === 'more-than-allowed') ? 'over' : against;

const WORDS: readonly { readonly word: PlanWord; readonly told: string }[] = [
  { word: 'over', told: 'more than might go on' },
  { word: 'more', told: 'more on' },
  { word: 'less', told: 'less on' },
];

function toldOn(
  told: string,
  judged: readonly PartLeft[],
  word: PlanWord,
  unit: LengthUnit,
): readonly string[] {
  const some = judged.filter((part) => wordOf(part) === word);
  return some.length === 0 ? [] : [`${told} ${some.map((one) => toldOf(one, unit)).join(', ')}`];
}

/** What the plan is held to: all its sets, or those that were worked. */
function asWorkedText(judged: readonly PartLeft[], worked: CompareResult['worked']): string {
  if (worked === null) return 'taken as worked in full (if not, say so with --worked)';
  const unsaid = new Set(
    judged.map(({ comparison: { panel } }) => panel).filter(({ id }) => !worked.panels.has(id)),
  );
  const rest =
    unsaid.size === 0
      ? ''
      : ` (${counted(unsaid.size, 'panel')} not named there as worked in full)`;
  return `by the sets of ${shownFile(worked.file)}${rest}`;
}

/** `roof (0.6 for 2.9 µm)` */
function toldOf({ comparison, foretold }: PartLeft, unit: LengthUnit): string {
  const came = thicknessText(comparison.change?.removed.value ?? 0, unit);
  const planned = thicknessText(foretold?.removal?.median ?? 0, unit);
  return `${partNameOf(comparison)} (${came} for ${planned} ${unitName(unit)})`;
}

export const rateLines = ({ rates }: CompareResult): readonly Block[] => rates.flatMap(rateLine);

/** Only a rate that looks wrong is worth a line. */
function rateLine({ combination, panels, factor, looks }: RateSeen): readonly Block[] {
  if (looks === null) return [];
  const word =
    looks === 'too-low' ? 'cuts more than its rate says' : 'cuts less than its rate says';
  return [
    paragraph(
      'Rate',
      `${combination}, most of the work on ${counted(panels, 'panel')}, ${word}: ${factorText(factor)} what was foretold.`,
    ),
  ];
}
