import type { PanelSurvey } from '../../film/survey.ts';

/** What may get too thin on all of these: the clear, or where they are all of single-stage paint, its topcoat. */
export function coatName(parts: readonly Pick<PanelSurvey, 'topcoat'>[]): 'clear' | 'topcoat' {
  const known = parts.flatMap(({ topcoat }) => topcoat ?? []);
  const single = known.length > 0 && known.every(({ finish }) => finish === 'single-stage');
  return single ? 'topcoat' : 'clear';
}
