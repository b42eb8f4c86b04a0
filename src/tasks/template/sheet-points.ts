import { pointsInRow, pointsOverFace, rowsOfPoints } from '../../film/template/point-layout.ts';
import type { Panel } from '../../film/template/template.ts';

/** The panel with so many points, in a row where its own are in one; with its own where none are asked. */
export function withPoints(panel: Panel, count: number | undefined): Panel {
  if (count === undefined || count === panel.points.length) return panel;
  const inRow = rowsOfPoints(panel.points).length === 1;
  return { ...panel, points: inRow ? pointsInRow(count) : pointsOverFace(count) };
}
