/** Where all that was read is repaint from edge to edge, there is no edge of a repair to be found. */
import type { PanelSurvey } from '../survey.ts';

export function withoutEdges(panels: readonly PanelSurvey[]): readonly PanelSurvey[] {
  const read = panels.filter(
    ({ points, condition }) => points.length > 0 && condition !== 'unread',
  );
  const isAll = read.length > 1 && read.every(({ condition }) => condition === 'refinished');
  return isAll
    ? panels.map((panel) => ({
        ...panel,
        advice: panel.advice.filter(({ code }) => code !== 'repair-edge'),
      }))
    : panels;
}
