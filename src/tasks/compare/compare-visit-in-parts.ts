/** Of three files or more, one that reads no point that the file before it reads: the rest of that visit, or one of its own. */
import { type Diagnostic, warning } from '../../base/diagnostics.ts';
import { shownFile } from '../../base/file-name.ts';
import type { VisitStep } from './compare-film-doubts.ts';

export const visitsInParts = (steps: readonly VisitStep[]): readonly Diagnostic[] =>
  steps.length < 2 ? [] : steps.filter(readsOthers).map(({ from, to }) => inParts(from, to));

/** Of none of its panels a point of that name. */
const readsOthers = ({ comparison: { panels } }: VisitStep): boolean =>
  panels.every(({ pairs, unpaired }) => pairs.length + unpaired.notMarked.length === 0);

const inParts = (from: string, to: string): Diagnostic =>
  warning(
    'compare-visit-in-parts',
    `${shownFile(to)} reads no point that ${shownFile(from)} reads: it is taken for a visit of its own`,
    {
      at: { file: to },
      hint: `if it is more of the same visit: leastcut read ${shownFile(from)} ${shownFile(to)} --format csv -o visit.csv, and compare that file`,
    },
  );
