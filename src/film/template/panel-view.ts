/**
 * How a panel lies before whoever stands at it to measure, seen from outside. The `u` of a point runs
 * from front to rear on the panels of a side, and from left to right on all others: who stands at the
 * right-hand side of a vehicle has its front at his right, and who stands before it has its left there.
 */
import { knownPanel } from './panel-fit.ts';
import type { Panel } from './template.ts';

export type PanelView = {
  /** Drawn from 1 − u: what has the greater `u` lies at the left. */
  readonly isMirrored: boolean;
  /** What lies which way, where the panel's name tells. */
  readonly towards: {
    readonly word: 'front' | 'left';
    readonly at: 'left' | 'right' | 'top';
  } | null;
};

export function panelView(panel: Panel): PanelView {
  if (panel.facing === 'horizontal') {
    return { isMirrored: false, towards: { word: 'front', at: 'top' } };
  }
  const { meanings } = knownPanel(panel);
  const only = <T>(values: readonly (T | undefined)[]): T | undefined => {
    const [first, ...others] = new Set(values);
    return others.length === 0 ? first : undefined;
  };
  const side = only(meanings.map((meaning) => meaning.side));
  if (side !== undefined) return seenFrom('front', side);
  const end = only(meanings.map((meaning) => meaning.end));
  if (end === undefined) return { isMirrored: false, towards: null };
  return seenFrom('left', end === 'front' ? 'right' : 'left');
}

const seenFrom = (word: 'front' | 'left', at: 'left' | 'right'): PanelView => ({
  isMirrored: at === 'right',
  towards: { word, at },
});

/** The place of a point in the drawing of its panel. */
export const seenPlace = (
  { u, v }: { readonly u: number; readonly v: number },
  { isMirrored }: PanelView,
): { readonly u: number; readonly v: number } => ({
  u: isMirrored ? Math.round(1000 * (1 - u)) / 1000 : u,
  v,
});
