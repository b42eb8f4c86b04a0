/**
 * What the panels of a car say of each other, where too few agree to tell its usual film.
 *
 * Such a car is held to what factories paint, by which a thick panel that was cut back reads as original: it would be
 * free for lacking so much that it no longer agrees. So a panel that is cut back to the middle of the others is held to
 * that, as a panel lies about the film of its car. Whichever of the two gives a panel its word, it is held to the other
 * besides. Others that read like repaint to what factories paint are no measure.
 */
import { median } from '../base/stats/summary.ts';
import type { VariancePrior } from '../base/stats/variance-prior.ts';
import { add, exactly, type Uncertain, uncertain } from '../base/uncertainty.ts';
import { type Micrometres, micrometres } from '../base/units.ts';
import { isRepaintTo } from './condition/condition.ts';
import type { FilmModel } from './film-model.ts';
import { drawnTowards } from './painted-over.ts';
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
  paint: Paint,
  model: FilmModel['conditions'],
): HeldToOthers {
  const { variance, dof } = paint.about;
  const cars = { contribution: Math.sqrt(variance), dof };
  return new Map(
    besideOthers(films, paint, model).flatMap(({ one, usual }) => {
      if (one.mean >= usual - model.cutBack) return [];
      const value = micrometres(usual + one.read - one.film);
      return [[one.panel.id, { value, uncertain: uncertain(value, { cars }) }]];
    }),
  );
}

/**
 * The film of the car by what factories paint and by the others of each panel: as they lie about it with a share of the
 * variance of what factories paint over cars, the mean of both by inverse variances.
 */
export function carByOthers(
  films: readonly Film[],
  factories: Uncertain<'µm'>,
  model: FilmModel['conditions'],
): ReadonlyMap<string, Uncertain<'µm'>> {
  return new Map(
    besideOthers(films, { factories: factories.value }, model).map(({ one, usual }) => [
      one.panel.id,
      add(
        drawnTowards(micrometres(usual), factories, model),
        exactly(micrometres(one.read - one.film)),
      ),
    ]),
  );
}

/** Those that are no repaint to what factories paint, each with the middle of the others. */
function besideOthers(
  films: readonly Film[],
  { factories }: Pick<Paint, 'factories'>,
  model: FilmModel['conditions'],
): readonly { readonly one: Film; readonly usual: number }[] {
  const sound = films.filter(({ film }) => !isRepaintTo(factories, film, model));
  return sound.flatMap((one) => {
    const others = sound.filter((other) => other !== one).map(({ film }) => film);
    return others.length === 0 ? [] : [{ one, usual: median(others) }];
  });
}
