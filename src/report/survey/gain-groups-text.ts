/** Gains of many panels in a line: ranges with the panels that they are of. */
import { LEAST_TOLD, shown } from '../../base/rounding.ts';
import {
  joinSentences,
  type Sentence,
  says,
  type ThicknessRange,
  um,
} from '../../base/sentence.ts';
import type { PanelSurvey } from '../../film/survey.ts';
import { partNames, whichPanels } from '../panel-list.ts';
import { alikeGroups } from './gain-groups.ts';
import type { Gain } from './gain-table.ts';
import { signed } from './help-lines.ts';
import { isToldApart } from './own-gains.ts';

/** `+0.21 to +0.33 µm`, from the least change to the most; `within ± 0.01 µm` where some lose. */
export function gainRange(gains: readonly number[]): Sentence {
  const sizes = [...gains].sort((a, b) => a - b);
  const [low, high] = [sizes[0] ?? 0, sizes.at(-1) ?? 0];
  if (low <= -LEAST_TOLD && high >= LEAST_TOLD) {
    return says`within ± ${um(Math.max(-low, high), 2)}`;
  }
  const [least, most] = Math.abs(low) > Math.abs(high) ? [high, low] : [low, high];
  return shown(least, 2) === shown(most, 2) ? signed(most) : [spanOf(least, most, true)];
}

/** `+0.21 to +0.33` of gains, their unit named elsewhere. */
export const rangeOf = (gains: readonly number[]): Sentence => [
  spanOf(Math.min(...gains), Math.max(...gains), false),
];

const spanOf = (least: number, most: number, named: boolean): ThicknessRange => ({
  least,
  most,
  digits: 2,
  named,
  plus: true,
});

const sizesOf = (gains: readonly Gain[]): readonly number[] => gains.map(({ gain }) => gain);

/**
 * `+0.44 to +0.78 µm (boot lid, roof), +0.22 to +0.37 µm (the others)`: where the groups are all that there is, the
 * largest comes last and goes without its names.
 */
export function groupsText(gains: readonly Gain[], parts: readonly PanelSurvey[]): Sentence {
  const groups = alikeGroups(gains);
  const [largest] = [...groups].sort((one, other) => other.length - one.length);
  const rest = groups.length > 1 ? restOf(gains, parts) : null;
  const named = rest === null ? groups : groups.filter((group) => group !== largest);
  const told = named.map((group) => says`${gainRange(sizesOf(group))} (${whichOf(group, parts)})`);
  const last =
    rest === null || largest === undefined ? [] : [says`${gainRange(sizesOf(largest))} (${rest})`];
  return joinSentences([...told, ...last], ', ');
}

const whichOf = (gains: readonly Gain[], parts: readonly PanelSurvey[]): string =>
  whichPanels(partsIn(gains), parts);

/** What is left once the smaller groups are named, but for panels that are told apart; null where that could not be told. */
function restOf(gains: readonly Gain[], parts: readonly PanelSurvey[]): string | null {
  const apart = parts.filter(isToldApart);
  const but = apart.length === 0 ? '' : ` except ${partNames(apart)}`;
  const others = parts.filter((part) => !apart.includes(part));
  if (gains.length === others.length) return `the others${but}`;
  return whichOf(gains, others) === 'every original panel'
    ? `the other original panels${but}`
    : null;
}

const partsIn = (group: readonly Gain[]): readonly PanelSurvey[] => group.map(({ part }) => part);
