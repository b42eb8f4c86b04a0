import type { Finish } from './film-model.ts';

/** Paint that carries its colour on top. */
export const hasNoClear = (finish: Finish): boolean =>
  finish.startsWith('single-stage') || finish === 'lacquer';

/** What lies on top and is polished. */
export const coatOf = (finish: Finish): 'clear' | 'topcoat' =>
  hasNoClear(finish) ? 'topcoat' : 'clear';
