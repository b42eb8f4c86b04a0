/** Finishes that factories paint alike: panels of one car are compared with those that carry as many layers. */
import { groupBy } from '../base/group-by.ts';
import type { Finish, PanelFacts } from './film-model.ts';

export type PaintKind = 'clear-over-base' | 'single-stage';

/** Null of a finish nobody knows. */
export function paintKindOf(finish: Finish): PaintKind | null {
  if (finish === 'unknown') return null;
  return finish === 'clear-over-base' || finish === 'matte' ? 'clear-over-base' : 'single-stage';
}

type Group<Panel> = readonly [PaintKind | null, readonly Panel[]];
type Painted = { readonly facts: Pick<PanelFacts, 'finish'> };

/**
 * Panels by what they carry: first those of which there are most, and with them those of which nobody knows it, as they
 * may well be the same.
 */
export function byPaintKind<Panel extends Painted>(
  panels: readonly Panel[],
): readonly [Group<Panel>, ...Group<Panel>[]] {
  const groups = groupBy(panels, ({ facts }) => paintKindOf(facts.finish));
  const known = [...groups]
    .filter(([kind]) => kind !== null)
    .sort(([, one], [, other]) => other.length - one.length);
  const unknown: readonly Panel[] = groups.get(null) ?? [];
  const [most, ...rest] = known;
  if (most === undefined) return [[null, unknown]];
  if (rest.length === 0) return [[most[0], panels]];
  return [[most[0], [...most[1], ...unknown]], ...rest];
}
