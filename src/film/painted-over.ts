/**
 * The usual film of a car as paint over the factory's.
 *
 * Panels that agree speak for their car. Where one reads far less, either that one was cut back, or it alone still shows
 * the factory's film and the others were painted over. Held to be the factory's film in that case: what factories paint,
 * F ± σ over cars, and the thinnest panel t, which lies about the film of its car with a share s of that variance
 * (`aboutItsCar`); by inverse variances (F + t/s)/(1 + 1/s) ± σ/√(1 + 1/s). The usual film counts as repaint by the chance
 * that it lies over the line of repaint both of that and of what factories paint by themselves, but at most by
 * `paintedOverMost`: nobody knows which of the two it is.
 *
 * What may go falls by that as it does at every line: the chance is taken from the risk, as any removal from repaint of
 * unknown coats counts as one too many.
 *
 * Zinc that is stated takes nothing from that chance: it adds 7 to 10 µm to every total, which explains no panel that
 * reads less than the others. What the clear of the thinnest panel is known to lack is put back on it: a panel cut back
 * shows no factory's film.
 */
import { mean } from '../base/stats/summary.ts';
import { add, exactly, multiply, type Uncertain, uncertainAs } from '../base/uncertainty.ts';
import { type Micrometres, micrometres } from '../base/units.ts';
import { chanceBeyond, compareWithLine } from './condition/line-comparison.ts';
import { factoryTop } from './factory-film.ts';
import type { FilmModel } from './film-model.ts';
import type { GatheredFilm } from './gathered-panel.ts';
import type { Panel } from './template/template.ts';

export type PaintedOver = {
  /** That the usual film of the car is repaint. */
  readonly chance: number;
  /** What the factory painted then, on galvanised steel and on any other metal. */
  readonly galvanised: Uncertain<'µm'>;
  readonly other: Uncertain<'µm'>;
  /** The thinnest panel, which shows it. */
  readonly shownBy: Shown;
};

type Shown = {
  readonly panel: Panel;
  readonly read: Micrometres;
  /** The same with what its clear is known to lack put back. */
  readonly film: Micrometres;
};

/** Of no matter at any risk that may be stated. */
const LEAST_CHANCE = 1e-6;

/**
 * Null where it is out of the question. `usual` and `thinnest` as on the kind of metal that most panels are of; what `zinc` adds to
 * that of either kind.
 */
export function paintedOver(
  usual: Uncertain<'µm'>,
  thinnest: Shown,
  factories: Uncertain<'µm'>,
  {
    zinc,
    model,
  }: { readonly zinc: Record<'galvanised' | 'other', number>; readonly model: FilmModel },
): PaintedOver | null {
  const { conditions } = model;
  const shown = (added: number): Uncertain<'µm'> =>
    drawnTowards(micrometres(thinnest.film + added), factories, conditions);
  const over = (film: Uncertain<'µm'>): number => chanceOfRepaint(usual, film, model);
  const chance = Math.min(conditions.paintedOverMost, over(factories), over(shown(0)));
  if (chance < LEAST_CHANCE) return null;
  return {
    chance,
    galvanised: shown(zinc.galvanised),
    other: shown(zinc.other),
    shownBy: thinnest,
  };
}

/** What factories paint, with a film of the car: by their variances. */
export function drawnTowards(
  film: Micrometres,
  factories: Uncertain<'µm'>,
  { aboutItsCar }: FilmModel['conditions'],
): Uncertain<'µm'> {
  const weight = 1 / aboutItsCar;
  return uncertainAs(
    micrometres((factories.value + weight * film) / (1 + weight)),
    factories,
    (_, { contribution, dof }) => ({ contribution: contribution / Math.sqrt(1 + weight), dof }),
  );
}

/**
 * That a film is repaint where `baseline` is usual: over it by a fixed step and by a share of it, so no likelier than
 * either by itself.
 */
function chanceOfRepaint(
  figure: Uncertain<'µm'>,
  baseline: Uncertain<'µm'>,
  { conditions: { refinishedAbove, refinishedAboveShare } }: FilmModel,
): number {
  const lines = [
    add(baseline, exactly(refinishedAbove)),
    multiply(baseline, 1 + refinishedAboveShare),
  ];
  const chances = lines.map((line) =>
    chanceBeyond(
      compareWithLine({ compared: 'median', condition: 'refinished', side: 'over', figure, line }),
    ),
  );
  return Math.min(...chances);
}

/** What a panel's clear, where it is known by itself, lacks of a factory's. */
export function lackingClear(
  { facts, clearPoints }: Pick<GatheredFilm, 'facts' | 'clearPoints'>,
  { layers }: Pick<FilmModel, 'layers'>,
): number {
  const read = clearPoints.map(({ thickness }) => thickness);
  const own = facts.clear?.of === 'panel' ? facts.clear.mean : read.length > 0 ? mean(read) : null;
  return own === null ? 0 : Math.max(0, factoryTop(facts.finish, layers) - own);
}
