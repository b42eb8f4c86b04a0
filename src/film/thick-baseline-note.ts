import { type Remark, remark } from '../base/remark.ts';
import { says, um } from '../base/sentence.ts';
import { type CarBaseline, isRepaintTo, usualBaseline } from './car-baseline.ts';
import type { FilmModel } from './film-model.ts';

/** A car whose panels agree speaks for itself, but a respray all over reads the same. */
export function thickBaselineNote(
  car: CarBaseline | null,
  model: FilmModel['conditions'],
): readonly Remark[] {
  const usual = usualBaseline(car);
  if (car === null || usual?.from !== 'panels') return [];
  return isRepaintTo(car.factories, usual.value, model)
    ? [
        remark(
          'thick-baseline',
          says`the panels agree, but their usual film of ${um(usual.value)} is far over the ${um(car.factories)} that factories paint: a car painted again all over reads so. Look for signs of it in the shuts, and try a test spot before any panel is worked`,
          usual.value,
        ),
      ]
    : [];
}
