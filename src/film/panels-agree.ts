/** Whether the panels of a car agree on its usual film, and how surely enough of them do. */
import { at } from '../base/at.ts';
import { median } from '../base/stats/summary.ts';
import { exactly, type Uncertain, uncertainAs } from '../base/uncertainty.ts';
import { type Micrometres, micrometres } from '../base/units.ts';
import type { AlikeFilm } from './baseline-makers.ts';
import { isRepaintTo, repaintReach } from './condition/condition.ts';
import { chanceBeyond, chanceWith, compareWithLine } from './condition/line-comparison.ts';
import type { FilmModel } from './film-model.ts';

type Conditions = FilmModel['conditions'];

/** Neither repaint nor cut back, where `usual` is the usual film. */
export const agrees = (usual: Micrometres, one: AlikeFilm, model: Conditions): boolean =>
  roomToAgree(usual, one, model) >= 0;

/**
 * By how much the usual film could move before the panel agreed no more: that of a repaint rises with its line, by more
 * than the film itself where that is a share of it.
 */
function roomToAgree(usual: Micrometres, { film, mean }: AlikeFilm, model: Conditions): number {
  const reach = repaintReach(usual, model);
  const rises = reach > model.refinishedAbove ? 1 + model.refinishedAboveShare : 1;
  return Math.min((usual + reach - film) / rises, mean - (usual - model.cutBack));
}

/**
 * The chance that fewer than `baselinePanels` agree after all, of those that do. Of k panels more than that, k + 1 would
 * have to lie beyond their lines: so the (k + 1)th of them, the least surely agreeing first.
 */
export function doubtOfAgreement(
  usual: Uncertain<'µm'>,
  agreeing: readonly AlikeFilm[],
  model: Conditions,
): number {
  const rooms = agreeing.map((one) => roomToAgree(usual.value, one, model)).sort((a, b) => a - b);
  const room = at(rooms, agreeing.length - model.baselinePanels);
  // What the gauge errs by, usual film and panel share.
  const apart = uncertainAs(micrometres(room), usual, (source, component) =>
    source === 'calibration' ? null : component,
  );
  return chanceWith(apart);
}

/**
 * The chance that a usual film on which all agree is none of a factory's: that it lies beyond the line of repaint to what
 * factories paint. No more than `paintedOverMost`: a car evenly thick may have been painted so, or painted again all over.
 */
export function doubtOfThickness(
  usual: Uncertain<'µm'>,
  factories: Micrometres,
  model: Conditions,
): number {
  const line = exactly(micrometres(factories + repaintReach(factories, model)));
  const held = { compared: 'median', condition: 'refinished', side: 'over' } as const;
  return Math.min(
    model.paintedOverMost,
    chanceBeyond(compareWithLine({ ...held, figure: usual, line })),
  );
}

/** What the usual film is held against to tell whether it is a respray. */
type Respray = {
  readonly alike: readonly AlikeFilm[];
  readonly against: readonly AlikeFilm[];
  readonly factories: Micrometres;
  readonly readPanels: number;
};

/**
 * Whether the panels that do not agree show that the usual film is repaint: it reads so to what factories paint, a third
 * of the panels at least are nearer to that, and what agrees reads like repaint to them. Fewer are as likely cut back.
 */
export function isRespray(
  usual: Micrometres,
  { alike, against, factories, readPanels }: Respray,
  model: Conditions,
): boolean {
  if (!isRepaintTo(factories, usual, model)) return false;
  const witnesses = against.filter(
    ({ painted }) => Math.abs(painted - factories) < Math.abs(painted - usual),
  );
  if (LEAST_SHARE_OF_WITNESSES * witnesses.length < readPanels) return false;
  const agreeing = alike.filter((one) => !against.includes(one));
  return isRepaintTo(middleOf(witnesses), middleOf(agreeing), model);
}

const middleOf = (panels: readonly AlikeFilm[]): Micrometres =>
  micrometres(median(panels.map(({ painted }) => painted)));

/** One in three. */
const LEAST_SHARE_OF_WITNESSES = 3;
