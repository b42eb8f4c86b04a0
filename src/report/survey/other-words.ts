/** What panels may be besides their word, though they are not near its line, and what that takes from what may go. */
import { groupBy } from '../../base/group-by.ts';
import { LEAST_TOLD, roundTo, shown } from '../../base/rounding.ts';
import { bare, says, tell, um } from '../../base/sentence.ts';
import type { LengthUnit } from '../../base/units.ts';
import type { Condition } from '../../film/condition/condition.ts';
import { sidesWhy } from '../../film/help/panel-why.ts';
import { LEAST_CHANCE } from '../../film/limits/clear-expected.ts';
import { type PanelSurvey, partName } from '../../film/survey.ts';
import type { Settings } from '../../tasks/settings/settings.ts';
import { partNames } from '../panel-list.ts';
import { isToldApart } from './own-gains.ts';

type OtherWord = {
  readonly part: PanelSurvey;
  readonly condition: Condition;
  readonly chance: number;
};

/** `cut-back 3.4 % likely on roof (takes 0.75 µm), 2.3 % on rear right door (0.51)`: by the likeliest first. */
export function otherWords(
  parts: readonly PanelSurvey[],
  settings: Settings,
  unit: LengthUnit,
): readonly string[] {
  return [...likelyBesides(parts)].map(([condition, group]) =>
    condition === 'thin'
      ? `${wordText(group, () => '')} (a warning, no limit)`
      : wordText(group, (some, verb) => takesText(some, verb, settings, unit)),
  );
}

/** `cut-back up to 3.4 % likely on roof, rear right door`: without what that takes, and what takes nothing. */
export const otherWordsInShort = (parts: readonly PanelSurvey[]): readonly string[] =>
  [...likelyBesides(parts)]
    .filter(([condition]) => condition !== 'thin')
    .map(([, group]) => greatest(group));

/** The likeliest of each word first. */
const likelyBesides = (parts: readonly PanelSurvey[]) =>
  groupBy(
    parts
      .flatMap(wordsBesides)
      .filter(
        ({ condition, chance }) => chance >= (condition === 'thin' ? LEAST_THIN : LEAST_CHANCE),
      )
      .sort((one, other) => other.chance - one.chance),
    ({ condition }) => condition,
  );

function greatest(group: readonly [OtherWord, ...OtherWord[]]): string {
  const [first] = group;
  const names = partNames(group.map(({ part }) => part));
  return `${first.condition} ${group.length > 1 ? 'up to ' : ''}${percent(first)} likely on ${names}`;
}

/** That of thin film is told of the total, and moves nothing. */
const LEAST_THIN = 0.01;

/** What a panel that is told apart hangs on stands there. */
const wordsBesides = (part: PanelSurvey): readonly OtherWord[] =>
  (part.sureness?.comparisons ?? [])
    .slice(isToldApart(part) ? 1 : 0)
    .map(({ condition, isBeyond, otherSide }) => ({
      part,
      condition: isBeyond ? 'original' : condition,
      chance: otherSide,
    }));

/** With a chance each, or where they are many the greatest. */
function wordText(
  group: readonly [OtherWord, ...OtherWord[]],
  takes: (some: readonly OtherWord[], verb: string) => string,
): string {
  const [first] = group;
  if (group.length > MOST_APART) return `${greatest(group)}${takes(group, 'takes up to ')}`;
  const each = group.map((one) => {
    const [likely, verb] = one === first ? [' likely', 'takes '] : ['', ''];
    return `${percent(one)}${likely} on ${partName(one.part)}${takes([one], verb)}`;
  });
  return `${first.condition} ${each.join(', ')}`;
}

/** Panels that are told with a chance each. */
const MOST_APART = 3;

const percent = ({ chance }: OtherWord): string => `${shown(100 * chance, 1)}\u00a0%`;

/** ` (takes 0.75 µm)`, the most of several, without a verb the figure alone; nothing of what would be written as nought. */
function takesText(
  some: readonly OtherWord[],
  verb: string,
  settings: Settings,
  unit: LengthUnit,
): string {
  const taken = Math.max(...some.map(({ part }) => takenFrom(part, settings)));
  return taken < LEAST_TOLD
    ? ''
    : tell(says` (${verb}${verb === '' ? bare(taken, 2) : um(taken, 2)})`, unit);
}

/** What may go if its word held, less what may: of the two as they are printed, so that the sum can be followed. */
function takenFrom(part: PanelSurvey, { terms, film }: Settings): number {
  const byWord = isToldApart(part) ? undefined : sidesWhy(part, terms, film)?.byWord;
  return byWord === undefined ? 0 : roundTo(byWord, 2) - roundTo(part.budget, 2);
}
