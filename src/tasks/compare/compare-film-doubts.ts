/** Doubts about the film that was read at the visits: more of it than before, or places that nothing says are the same. */
import { type Diagnostic, note, warning } from '../../base/diagnostics.ts';
import { shownFile } from '../../base/file-name.ts';
import { tell, um } from '../../base/sentence.ts';
import { micrometres } from '../../base/units.ts';
import type { SurveyComparison } from '../../film/compare/compare-surveys.ts';
import type { PanelComparison } from '../../film/compare/panel-comparison.ts';
import { listed } from '../read/match-panels.ts';
import type { Rise } from './part-left.ts';

/** What came off from one visit to the next. */
export type VisitStep = {
  readonly from: string;
  readonly to: string;
  readonly comparison: SurveyComparison;
};

/** Over more than two visits, where a panel first read more film than at the visit before; by its id. */
export const risesOver = (steps: readonly VisitStep[]): ReadonlyMap<string, Rise> =>
  new Map(
    (steps.length < 2 ? [] : steps)
      .toReversed()
      .flatMap(({ from, to, comparison }) =>
        comparison.panels.flatMap(({ panel, gained, change, paint }) =>
          gained && change !== null
            ? [[panel.id, { from, to, by: micrometres(-change.removed.value), paint }] as const]
            : [],
        ),
      ),
  );

function roseBetween({ from, to, comparison }: VisitStep): readonly Diagnostic[] {
  const gained = comparison.panels.filter((one) => one.gained);
  if (gained.length === 0) return [];
  return [
    warning(
      'compare-film-gained',
      `${shownFile(to)} reads more film than ${shownFile(from)}, the visit before: ${listed(gained.map(nameWithGain))}`,
      {
        at: { file: to },
        hint: 'are the files in the order of the visits? else check the gauge, wipe off wax and polish, read the same places again',
      },
    ),
  ];
}

const nameWithGain = ({ panel, change }: PanelComparison): string =>
  `${panel.name} by ${tell([um(-(change?.removed.value ?? 0))], 'um')}`;

/** What is worth a word before anybody acts on the comparison. */
export function filmDoubts(
  total: SurveyComparison,
  steps: readonly VisitStep[],
  after: string,
): readonly Diagnostic[] {
  const gained = total.panels.filter((one) => one.gained);
  const named = total.panels.flatMap(({ unpaired, by }) =>
    by === 'pairs' ? [] : unpaired.notMarked,
  );
  return [
    ...(gained.length === 0 ? [] : [filmGained(gained, after)]),
    ...(steps.length < 2 ? [] : steps.flatMap(roseBetween)),
    ...(named.length === 0
      ? []
      : [
          note(
            'compare-not-marked',
            'points are called alike before and after, and are not marked: taken for other places, each panel is compared by its mean',
            { at: { file: after }, hint: 'if they are the same marked places, say --marked' },
          ),
        ]),
  ];
}

const paintHint = (gained: readonly PanelComparison[]): string =>
  gained.some(({ paint }) => paint !== null)
    ? '; or was it painted since? Then nothing may go there before a test spot'
    : '';

function filmGained(gained: readonly PanelComparison[], after: string): Diagnostic {
  return warning(
    'compare-film-gained',
    `${shownFile(after)} reads more film than before: ${listed(gained.map(nameWithGain))}`,
    {
      at: { file: after },
      hint: `are the files the wrong way round? else check the gauge, wipe off wax and polish, read the same places again${paintHint(gained)}`,
    },
  );
}
