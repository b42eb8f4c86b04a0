/** The answer first: what came off, whether that is as planned, and how far readings of this kind can tell. */

import { counted } from '../../base/counted.ts';
import { rangeShown } from '../../base/rounding.ts';
import { thicknessText, unitName } from '../../base/sentence.ts';
import type { LengthUnit } from '../../base/units.ts';
import type { FilmChange } from '../../film/compare/compare-change.ts';
import type { CompareResult } from '../../tasks/compare/compare-files.ts';
import type { PanelLeft } from '../../tasks/compare/compare-left-parts.ts';
import { joined } from '../facts.ts';
import { type Block, paragraph } from '../model.ts';
import { changeText, isSeen } from './compare-words.ts';

export function cameOff(
  { total: { car, panels: all } }: CompareResult,
  compared: readonly PanelLeft[],
  unit: LengthUnit,
): readonly Block[] {
  const [only, second] = compared;
  if (car === null || only === undefined) return [paragraph(null, 'Nothing could be compared.')];
  const seen = compared.filter(({ comparison }) => isSeen(comparison)).length;
  const unseen = compared.length - seen;
  const change = second === undefined ? (only.comparison.change ?? car) : car;
  const where =
    second === undefined
      ? ` on ${only.comparison.panel.name}`
      : ` on average over ${counted(all.filter((one) => one.change !== null).length, 'panel')}, by area`;
  const told =
    change.high < 0
      ? 'more film than before, which no work adds'
      : seenText(seen, unseen, second === undefined);
  return [paragraph('Came off', `${changeText(change, unit)} ${unitName(unit)}${where}: ${told}.`)];
}

/** Of one panel the mean is its own. */
function seenText(seen: number, unseen: number, isOne: boolean): string {
  const some = 'surely some';
  const tooLittle = 'too little to tell from nothing';
  if (isOne) return seen === 1 ? some : tooLittle;
  if (unseen === 0) return `${some} on each`;
  return seen === 0
    ? `${tooLittle} on any one of them`
    : `${some} on ${seen}, ${tooLittle} on the other${unseen === 1 ? '' : ` ${unseen}`}`;
}

/** What the columns of the table mean, and what a comparison of this size can show at all. */
export function legend(
  compared: readonly PanelLeft[],
  { worked, marks }: Pick<CompareResult, 'worked' | 'marks'>,
  unit: LengthUnit,
): readonly Block[] {
  if (compared.length === 0) return [];
  const asDone = worked === null ? [] : ['As done: planned, for the sets that were worked.'];
  return [
    paragraph(
      'How to read it',
      joined(
        [
          'n: pairs, or points before/after.',
          '±: what came off lies within it in 95 cases of 100.',
          'Seen: more than the readings scatter.',
          ...shownAt(compared, unit),
          'Less goes unseen, and is not nothing.',
          ...asDone,
          mayGo(compared, marks),
          // Where nothing is drawn, no sign is explained.
          { text: '· a pair, ‹ the mean, ┊ nothing.', facts: [] },
        ],
        ' ',
      ),
    ),
  ];
}

/** Without a plan marks before the work leave nothing to take from: a panel goes by its own points, where it has enough. */
function mayGo(compared: readonly PanelLeft[], marks: CompareResult['marks']): string {
  const surveyed = 'what a survey of the later readings says, with this visit on record';
  if (marks.before && compared.every(({ allowed }) => allowed?.by !== 'plan')) {
    return `May go: where enough points were read of the panel, ${surveyed}; fewer marks alone are no survey.`;
  }
  return marks.before || marks.after
    ? 'May go: what might go before, less what came off; marks alone are no survey.'
    : `May go: ${surveyed}.`;
}

function shownAt(panels: readonly PanelLeft[], unit: LengthUnit): readonly string[] {
  return (['pairs', 'means'] as const).flatMap((by) => {
    const changes = panels.flatMap(({ comparison }) =>
      comparison.by === by && comparison.change !== null ? [comparison.change] : [],
    );
    if (changes.length === 0) return [];
    const range = (of: (change: FilmChange) => number): string =>
      rangeShown(changes.map(of), (one) => thicknessText(one, unit));
    const half = range(({ detectable }) => detectable.half);
    const surely = range(({ detectable }) => detectable.surely);
    const what = by === 'pairs' ? 'At marked points' : 'By means of panels, no point found again,';
    return [
      `${what} a change of ${half} ${unitName(unit)} shows half of the time, one of ${surely} in 95 cases of 100.`,
    ];
  });
}
