/**
 * What may be held of a clear before the total of its panel is looked at: as stated, as read and as factories paint.
 * What is stated takes no reading out of use. Where the two agree, the stated one and the mean of both by inverse
 * variances are held; where honest figures hardly ever differ so much, each alone.
 */
import { normalQuantile } from '../../base/stats/normal.ts';
import { micrometres } from '../../base/units.ts';
import type {
  ClearElsewhere,
  FilmModel,
  LayerThickness,
  PanelFacts,
  StatedLayer,
} from '../film-model.ts';
import { clearOfCar } from './clear-of-car.ts';

/**
 * By how many SDs what is stated differs, and from what: from the total of the panel, from its own clear as read, or, a
 * clear or what lies under it, from the clear of the car as read on others. Of `car`, it does so on another panel.
 */
export type StatedApart = {
  readonly sds: number;
  readonly from: 'total' | 'own-clear' | 'clear-elsewhere' | 'under-elsewhere' | 'car';
};

/** Null for what factories paint. */
export type HeldClear = { readonly clear: StatedLayer | null; readonly apart?: StatedApart };

type Known = Pick<PanelFacts, 'clear' | 'clearRead' | 'clearElsewhere' | 'under'>;

/** SDs from which two figures of one layer cannot both be true, of honest ones but for a false alarm. */
export const mostApart = ({ measurement }: FilmModel): number =>
  normalQuantile(1 - measurement.rounds.falseAlarm / 2);

export function clearsHeld(
  facts: Known,
  top: LayerThickness,
  model: FilmModel,
): readonly HeldClear[] {
  const { clear, clearRead, clearElsewhere = [] } = facts;
  if (clear === null) return unstated(facts, top, model);
  if (clearRead !== undefined) {
    return besideRead(clear, clearRead, model, { from: 'own-clear', held: [{ clear: clearRead }] });
  }
  if (clear.of === 'panel' || clearElsewhere.length === 0) return [{ clear }];
  return clearElsewhere.flatMap((read) => {
    const held = unstated({ ...facts, clearElsewhere: [read] }, top, model);
    return besideRead(clear, ofCar(read), model, { from: 'clear-elsewhere', held });
  });
}

/** As the total is to say more of it, or what was read elsewhere, or neither; of other panels the thinner first. */
function unstated(
  { clearElsewhere = [], under }: Known,
  top: LayerThickness,
  { stated }: FilmModel,
): readonly HeldClear[] {
  const nothing: HeldClear = { clear: null };
  // Beside what is stated under it the clear is held to nothing that factories paint.
  if (under !== null) return [nothing, ...clearElsewhere.map((read) => ({ clear: ofCar(read) }))];
  const told = clearElsewhere.map((read) => ({ clear: clearOfCar(read, top, stated) }));
  const isThinner = ({ clear }: (typeof told)[number]): boolean => clear.mean < top.mean;
  return [...told.filter(isThinner), nothing, ...told.filter((one) => !isThinner(one))];
}

/** `alone` is what is held without what is stated. */
function besideRead(
  clear: StatedLayer,
  read: StatedLayer,
  model: FilmModel,
  alone: { readonly from: StatedApart['from']; readonly held: readonly HeldClear[] },
): readonly HeldClear[] {
  const sds = Math.abs(clear.mean - read.mean) / Math.hypot(clear.sd, read.sd);
  if (sds <= mostApart(model)) return [{ clear }, { clear: together(clear, read) }];
  const apart = { sds, from: alone.from };
  return [{ clear }, ...alone.held].map((one) => ({ ...one, apart }));
}

function together(stated: StatedLayer, read: StatedLayer): StatedLayer {
  const share = read.sd ** 2 / (stated.sd ** 2 + read.sd ** 2);
  return {
    ...read,
    mean: micrometres(share * stated.mean + (1 - share) * read.mean),
    sd: micrometres(Math.sqrt(share) * stated.sd),
    withStated: true,
  };
}

const ofCar = ({ mean, sd, panels }: ClearElsewhere): StatedLayer => ({
  mean,
  sd,
  of: 'car',
  readOn: panels,
});
