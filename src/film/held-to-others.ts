/**
 * Panels that lack film to the others, on a car of which too few agree to tell its usual film.
 *
 * Such a car is held to what factories paint, by which a thick panel that was cut back reads as original: it would be
 * free for lacking so much that it no longer agrees. So a panel that is cut back to the middle of the others is held to
 * that, as a panel lies about the film of its car. Others that read like repaint to what factories paint are no measure.
 */
import { median } from '../base/stats/summary.ts';
import type { VariancePrior } from '../base/stats/variance-prior.ts';
import { type Uncertain, uncertain } from '../base/uncertainty.ts';
import { type Micrometres, micrometres } from '../base/units.ts';
import { isRepaintTo } from './condition/condition.ts';
import type { FilmModel } from './film-model.ts';
import type { Panel } from './template/template.ts';

/** What a panel is held to, by its id. */
export type HeldToOthers = ReadonlyMap<
  string,
  { readonly value: Micrometres; readonly uncertain: Uncertain<'µm'> }
>;

export const NONE_HELD: HeldToOthers = new Map();

/** Brought to the kind of metal that most panels are of; `read` as it is. */
type Film = Record<'film' | 'mean' | 'read', Micrometres> & { readonly panel: Panel };

/** What factories paint, and how panels vary about their car. */
type Paint = { readonly factories: Micrometres; readonly about: VariancePrior };

export function heldToOthers(
  films: readonly Film[],
  { factories, about }: Paint,
  model: FilmModel['conditions'],
): HeldToOthers {
  const sound = films.filter(({ film }) => !isRepaintTo(factories, film, model));
  return new Map(
    sound.flatMap((one) => {
      const others = sound.filter((other) => other !== one).map(({ film }) => film);
      if (others.length === 0) return [];
      const usual = median(others);
      if (one.mean >= usual - model.cutBack) return [];
      const value = micrometres(usual + one.read - one.film);
      const { variance, dof } = about;
      const cars = { contribution: Math.sqrt(variance), dof };
      return [[one.panel.id, { value, uncertain: uncertain(value, { cars }) }]];
    }),
  );
}
