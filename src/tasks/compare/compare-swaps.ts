/** What is told of panels whose marked points fit another way round far better. */
import { type Diagnostic, warning } from '../../base/diagnostics.ts';
import { shownFile } from '../../base/file-name.ts';
import type { SurveyComparison } from '../../film/compare/compare-surveys.ts';
import type { SwappedPanels } from '../../film/compare/panel-comparison.ts';
import type { Panel } from '../../film/template/template.ts';

/** As it is said of one of the panels. */
export function swapText({ kind, panels }: SwappedPanels, { id }: Panel): string {
  if (kind === 'mirrored') {
    return 'points fit far better numbered from the other end: settle that and compare again';
  }
  const other = panels.find((one) => one.id !== id)?.name;
  return `points fit those of the ${other} far better: settle which is which and compare again`;
}

/** Each once, in walking order. */
export const swapsOf = ({ panels }: SurveyComparison): readonly SwappedPanels[] => [
  ...new Set(panels.flatMap(({ swap }) => swap ?? [])),
];

/** `bonnet with roof`, `points of the left wing from the other end` */
const named = ({ kind, panels }: SwappedPanels): string => {
  const names = panels.map(({ name }) => name);
  return kind === 'mirrored' ? `${names.join()} from the other end` : names.join(' with ');
};

export const swapDoubts = (
  total: SurveyComparison,
  [before, after]: readonly [string, string],
): readonly Diagnostic[] => {
  const swaps = swapsOf(total);
  return swaps.length === 0
    ? []
    : [
        warning(
          'compare-points-swapped',
          `marked points fit far better another way round: ${swaps.map(named).join('; ')}`,
          {
            at: { file: after },
            hint: `look which panel or end was read first in ${shownFile(before)} and ${shownFile(after)}, or read these panels again; until then nothing is told of them`,
          },
        ),
      ];
};
