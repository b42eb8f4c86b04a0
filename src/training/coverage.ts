/** How much of what the reference read a trainee read as well. */
import type { Panel } from '../film/template/template.ts';
import { type GradedSurvey, readPanels } from './graded-survey.ts';
import type { Reference } from './reference.ts';

export type Coverage = {
  readonly panelsRead: number;
  /** Of those, panels with a spread of their own: one point says nothing of how even the film is. */
  readonly panelsWithSpread: number;
  readonly panels: number;
  /** Points of the reference’s panels, no more of a panel than the reference has. */
  readonly pointsRead: number;
  readonly points: number;
  /** Share of the points, 0 to 1. */
  readonly share: number;
  readonly unread: readonly Panel[];
  /** Panels of the reference that were read at fewer points. */
  readonly short: readonly Panel[];
  /** Panels that the reference does not have. */
  readonly extra: readonly Panel[];
};

export function coverageOf(trainee: GradedSurvey, reference: Reference): Coverage {
  const own = readPanels(trainee);
  const lines = [...reference.panels.values()].map(({ panel, count }) => {
    const read = own.find((one) => one.panel.id === panel.id)?.points.length ?? 0;
    return { panel, count, read: Math.min(read, count) };
  });
  const sum = (of: (line: (typeof lines)[number]) => number): number =>
    lines.reduce((total, line) => total + of(line), 0);
  const [points, pointsRead] = [sum(({ count }) => count), sum(({ read }) => read)];
  return {
    panelsRead: lines.filter(({ read }) => read > 0).length,
    panelsWithSpread: lines.filter(({ read, count }) => read >= Math.min(2, count)).length,
    panels: lines.length,
    pointsRead,
    points,
    share: pointsRead / points,
    unread: lines.filter(({ read }) => read === 0).map(({ panel }) => panel),
    short: lines.filter(({ read, count }) => read > 0 && read < count).map(({ panel }) => panel),
    extra: own.map(({ panel }) => panel).filter(({ id }) => !reference.panels.has(id)),
  };
}
