/** Files that have nothing in common show no work: said plainly, as a page without a figure may be taken for no loss. */
import { type Diagnostic, warning } from '../../base/diagnostics.ts';
import { shownFile } from '../../base/file-name.ts';
import type { SurveyComparison } from '../../film/compare/compare-surveys.ts';
import type { Panel } from '../../film/template/template.ts';
import { listed } from '../read/match-panels.ts';
import type { Visit } from './compare-visits.ts';

type Between = { readonly first: Visit; readonly last: Visit };

export function nothingShared(
  { panels, onlyBefore, onlyAfter }: SurveyComparison,
  { first, last }: Between,
): readonly Diagnostic[] {
  const [before, after] = [shownFile(first.file), shownFile(last.file)];
  const at = { file: last.file };
  if (panels.length === 0) {
    return [
      warning(
        'compare-nothing-shared',
        `${before} and ${after} have no panel in common: ${before} reads ${namesOf(onlyBefore)}, ${after} ${namesOf(onlyAfter)}; nothing can be compared`,
        {
          at,
          hint: 'are they readings of one vehicle before and after the work? Read the same panels both times, and call them alike',
        },
      ),
    ];
  }
  const unpaired = panels.flatMap(({ by, panel, unpaired: { notReadAgain, notReadBefore } }) =>
    by === 'means' ? [{ id: panel.id, notReadAgain, notReadBefore }] : [],
  );
  const [mark] = unpaired.flatMap(({ id, notReadAgain }) =>
    notReadAgain.filter((point) => first.marked(id, point)),
  );
  const [other] = unpaired.flatMap(({ id, notReadBefore }) =>
    notReadBefore.filter((point) => last.marked(id, point)),
  );
  if (panels.some(({ by }) => by !== 'means') || mark === undefined || other === undefined) {
    return [];
  }
  return [
    warning(
      'compare-nothing-shared',
      `no marked point of ${before} is read again in ${after}: it has point ${mark}, and that point ${other}; each panel is compared by its mean, which tells little`,
      { at, hint: 'call each marked point alike in both files, and read it both times' },
    ),
  ];
}

const namesOf = (panels: readonly Panel[]): string => listed(panels.map(({ name }) => name));
