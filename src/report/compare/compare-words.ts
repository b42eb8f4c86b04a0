/** Words for what was compared by what, and what could not be. */

import { counted } from '../../base/counted.ts';
import { shownFile } from '../../base/file-name.ts';
import { thicknessText } from '../../base/sentence.ts';
import { sum } from '../../base/sum.ts';
import { expandedUncertainty } from '../../base/uncertainty.ts';
import type { LengthUnit } from '../../base/units.ts';
import type { GoOnVerdict } from '../../correction/go-on.ts';
import type { FilmChange } from '../../film/compare/compare-change.ts';
import type { SurveyComparison } from '../../film/compare/compare-surveys.ts';
import type { PanelComparison } from '../../film/compare/panel-comparison.ts';
import { nameWithZone } from '../../film/survey.ts';
import type { Panel } from '../../film/template/template.ts';
import type { ForetoldStep } from '../../formats/plan-file.ts';
import { type PanelLeft, partsOf } from '../../tasks/compare/compare-left-parts.ts';
import { swapText } from '../../tasks/compare/compare-swaps.ts';
import type { PartLeft } from '../../tasks/compare/part-left.ts';

export type NotCompared = { readonly panel: Panel; readonly code: string; readonly text: string };

/** Panels of which nothing can be said, and why. */
export const notCompared = ({
  panels,
  onlyBefore,
  onlyAfter,
}: SurveyComparison): readonly NotCompared[] => [
  ...onlyBefore.map((panel) => ({ panel, code: 'only-before', text: 'not read again' })),
  ...onlyAfter.map((panel) => ({ panel, code: 'only-after', text: 'not read before' })),
  ...panels
    .filter(({ change }) => change === null)
    .map((one) => ({ panel: one.panel, ...whyNothing(one) })),
];

function whyNothing({ counts, slips, swap, panel }: PanelComparison): Omit<NotCompared, 'panel'> {
  if (slips.length > 0) {
    const points = [...new Set(slips.map(({ point }) => point))];
    return { code: 'read-again', text: `first read point ${points.join(', ')} again` };
  }
  if (swap !== null) return { code: 'points-swapped', text: swapText(swap, panel) };
  return {
    code: 'no-common-ground',
    text:
      counts.before === 0 || counts.after === 0
        ? 'no point on its face at both times'
        : 'no film of its own to compare: nothing marked, and the gauge tells no mean',
  };
}

/** Whether film surely came off: of a panel in two zones, off either. Its mean over both may not show it. */
export const isSeen = ({ change, zones }: PanelComparison): boolean =>
  change?.resolved === true || zones.some(isSeen);

/** `5 pairs`, or `5/4 pts`: what a change rests on. */
export const basisText = ({ by, pairs, counts }: PanelComparison): string =>
  by === 'pairs' ? counted(pairs.length, 'pair') : `${counts.before}/${counts.after} points`;

/** Panels, and in place of one in two zones its zones. */
export const partsLeft = (panels: readonly PanelLeft[]): readonly PartLeft[] =>
  panels.flatMap(partsOf);

/** `roof`, or `roof (thinner zone)`. */
export const partNameOf = ({ panel, zone }: PanelComparison): string =>
  nameWithZone(panel.name, zone);

/** `2.1 ± 0.8`: the mean, and the half-width that holds it with 95 % confidence. */
export const changeText = ({ removed }: FilmChange, unit: LengthUnit): string =>
  `${thicknessText(removed.value, unit)} ± ${thicknessText(expandedUncertainty(removed), unit)}`;

/** One more set is allowed, is not, or nobody can say: none of it says that the panel needs one. */
export const GO_ON_WORDS: Readonly<Record<GoOnVerdict, string>> = {
  'go-on': 'allowed',
  stop: 'stop',
  unresolved: 'cannot tell',
};

export const setsOf = (steps: readonly ForetoldStep[]): number =>
  sum(steps.map(({ sets }) => sets));

/** A file without its folders. */
export const shortName = (file: string): string => shownFile(file).split(/[\\/]/).at(-1) ?? file;
