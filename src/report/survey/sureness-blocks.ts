/** How sure a survey is: of the whole in a few lines, and of each panel where it is asked for. */

import { groupBy } from '../../base/group-by.ts';
import { saying } from '../../base/remark.ts';
import { rangeShown, roundTo } from '../../base/rounding.ts';
import {
  bare,
  joinSentences,
  nextFact,
  type Sentence,
  says,
  thicknessText,
  um,
  unitName,
} from '../../base/sentence.ts';
import { expandedUncertainty } from '../../base/uncertainty.ts';
import type { LengthUnit } from '../../base/units.ts';
import { isZone, type PanelSurvey, partName, partsOf } from '../../film/survey.ts';
import type { Settings } from '../../tasks/settings/settings.ts';
import { about, joined, toldFacts } from '../facts.ts';
import { type Block, list, paragraph, type Said, textOf } from '../model.ts';
import type { PageOptions } from '../page-options.ts';
import { partNames } from '../panel-list.ts';
import { coatName } from './coat-name.ts';
import type { HelpPage } from './help-blocks.ts';
import { hasDoubtedWord } from './leave-reason.ts';
import { nearLines } from './near-lines.ts';
import { otherWords, otherWordsInShort } from './other-words.ts';
import { ownGains } from './own-gains.ts';
import {
  doubtedComparison,
  hangsOnAnother,
  otherSideText,
  rangeIfWordHolds,
  surenessText,
} from './sureness-lines.ts';

/** How well words and means are known; in full also what other words take, and the clear that the limit of that name rests on. */
export function sureness(
  read: readonly PanelSurvey[],
  settings: Settings,
  { unit, verbose }: Pick<PageOptions, 'unit' | 'verbose'>,
): readonly Block[] {
  const parts = read
    .flatMap(partsOf)
    .filter(({ topcoat, condition }) => topcoat !== null && condition === 'original');
  const means = parts.flatMap(({ uncertainty }) =>
    uncertainty === null ? [] : [expandedUncertainty(uncertainty)],
  );
  const range = rangeIn(unit);
  const sure = `over ${roundTo(100 * (1 - settings.film.conditions.nearRisk), 1)}\u00a0%`;
  const but = lessSure(partsJudged(read));
  const besides = but.length === 0 ? '' : `, but for ${but.join(' and ')}`;
  const words = {
    text: `each condition ${sure}${besides}`,
    facts: [`each condition is ${sure} sure${besides}`],
  };
  const ofMeans =
    means.length === 0 ? [] : [`means ± ${range(means)} ${unitName(unit)} (95\u00a0%)`];
  const others = verbose ? otherWords(parts, settings, unit) : otherWordsInShort(parts);
  const clear = verbose && means.length > 0 ? [clearText(parts, unit)] : [];
  return [paragraph('How sure', joined([words, ...ofMeans, ...others, ...clear], '; '))];
}

/** Words that are no such thing: near a line, declared, or beside another word. */
const lessSure = (parts: readonly PanelSurvey[]): readonly string[] => [
  ...(parts.some((part) => isNear(part) || hasDoubtedWord(part)) ? ['those with ?'] : []),
  ...(parts.some(isDeclared) ? ['those declared'] : []),
];

const isDeclared = ({ condition, sureness: found }: PanelSurvey): boolean =>
  found === null && condition !== 'unread';

/** Of the panels from which something may go; of all the originals where there is none. */
function clearText(parts: readonly PanelSurvey[], unit: LengthUnit): string {
  const range = rangeIn(unit);
  const worked = parts.filter(({ budget }) => budget > 0);
  const whose = worked.length > 0 ? 'panels worked' : 'original panels';
  const known = (worked.length > 0 ? worked : parts).flatMap(({ topcoat }) => topcoat ?? []);
  const clears = known.map(({ clear }) => Math.max(0, clear.mean));
  const doubts = known.map(({ clear }) => clear.sd);
  return `thinnest ${coatName(parts)} reckoned of ${whose} ${range(clears)}\u00a0± ${range(doubts)} (SD)`;
}

const rangeIn =
  (unit: LengthUnit) =>
  (values: readonly number[]): string =>
    rangeShown(values, (one) => thicknessText(one, unit));

/** Whether the word is less than sure. */
export const isNear = ({ sureness: found }: PanelSurvey): boolean => found?.sure === 'near';

/** Panels whose condition is near its line: the comparison it hangs on, what it would be else, what settles it or helps. */
export function nearTheLine(
  read: readonly PanelSurvey[],
  { helped, result, verbose }: HelpPage,
  unit: LengthUnit,
): readonly Block[] {
  const parts = partsJudged(read);
  return verbose ? nearInFull(parts, { helped, result }, unit) : nearLines(parts, helped, unit);
}

function nearInFull(
  parts: readonly PanelSurvey[],
  { helped, result }: Pick<HelpPage, 'helped' | 'result'>,
  unit: LengthUnit,
): readonly Block[] {
  const lineOf = (survey: PanelSurvey, byWord?: Sentence): readonly Said[] => {
    const found = survey.sureness;
    const other = otherSideText(survey, result.settings.terms, byWord);
    if (found === null || other === null) return [];
    const ways = survey.advice.filter(({ code }) => code === 'settle').map(saying);
    const said = [doubtedComparison(found.deciding), other, ...ownGains(survey, ways, helped)];
    return [toldFacts(joinSentences(said, nextFact), unit)];
  };
  const range = rangeIfWordHolds(parts.filter(hangsOnAnother));
  const lines = parts.flatMap((survey) =>
    lineOf(survey, hangsOnAnother(survey) ? range : undefined).map((said) => ({ survey, said })),
  );
  const alike = [...groupBy(lines, ({ said }) => textOf(said)).values()];
  const told = alike.map((group) =>
    about(partNames(group.map(({ survey }) => survey)), group[0].said),
  );
  const [only, second] = told;
  if (only === undefined) return [];
  return [second === undefined ? paragraph('Near its line', only) : list('Near their line', told)];
}

/** Of each panel its mean, and what its condition hangs on; of those unread, that nothing is. */
export function surenessList(surveyed: readonly PanelSurvey[], unit: LengthUnit): readonly Block[] {
  const lines = partsJudged(surveyed).flatMap((survey): readonly Said[] => {
    const said = surenessText(survey);
    if (said !== null) {
      const text = toldFacts(says`${meanText(survey)}${survey.condition}, ${said}`, unit);
      return [about(partName(survey), text)];
    }
    return survey.condition === 'unread' && !isZone(survey)
      ? [`${survey.panel.name}: unread (${survey.panel.substrate}), so nothing is known of it`]
      : [];
  });
  return lines.length === 0
    ? []
    : [
        list(
          { text: 'How sure each mean (95 %) and each condition is', short: 'How sure (± 95 %)' },
          lines,
        ),
      ];
}

/** Nothing of a panel in two zones, whose points have no one mean. */
const meanText = ({ uncertainty }: PanelSurvey): Sentence =>
  uncertainty === null
    ? says``
    : says`mean ${bare(uncertainty.value)} ± ${um(expandedUncertainty(uncertainty))}${nextFact}`;

/** A panel in two zones is judged as one and each of them by itself. */
const partsJudged = (read: readonly PanelSurvey[]): readonly PanelSurvey[] =>
  read.flatMap((survey) => [survey, ...survey.zones]);
