/** Readings at points whose change stands out, which other panels are told without. */
import type { PointApart } from '../../film/compare/compare-points.ts';
import type { SurveyComparison } from '../../film/compare/compare-surveys.ts';
import type { PanelComparison } from '../../film/compare/panel-comparison.ts';
import type { Reading } from '../../film/reading.ts';

export const pointsApart = ({ apart }: Pick<PanelComparison, 'apart'>): readonly PointApart[] =>
  apart?.points ?? [];

/** Without the odd readings of one of the two times, on the face. */
export function withoutOdd(
  readings: readonly Reading[],
  odd: PointApart['odd'],
  { panels }: SurveyComparison,
): readonly Reading[] {
  const named = new Set(
    panels.flatMap((one) =>
      pointsApart(one)
        .filter((point) => point.odd === odd)
        .map(({ point }) => keyOf(one.panel.id, point)),
    ),
  );
  return named.size === 0
    ? readings
    : readings.filter(
        ({ panel, point, place }) => place !== 'face' || !named.has(keyOf(panel, point)),
      );
}

const keyOf = (panel: string, point: string): string => JSON.stringify([panel, point]);
