import { type Remark, remark } from '../base/remark.ts';
import { nextFact, says, um } from '../base/sentence.ts';
import { type CarBaseline, usualBaseline, usualOfFactories } from './car-baseline.ts';
import { isRepaintTo } from './condition/condition.ts';
import type { FilmModel } from './film-model.ts';

/** What a usual film that factories hardly paint leaves open. */
export function thickBaselineNotes(
  car: CarBaseline | null,
  model: FilmModel['conditions'],
): readonly Remark[] {
  return car === null ? [] : [...thickNote(car, model), ...thinOrPainted(car, model)];
}

/** A car whose panels agree speaks for itself, but a respray all over reads the same, and so does a film over it all. */
function thickNote(car: CarBaseline, model: FilmModel['conditions']): readonly Remark[] {
  const usual = usualBaseline(car);
  if (usual?.from !== 'panels') return [];
  const factories = usualOfFactories(car);
  return isRepaintTo(factories, usual.value, model)
    ? [
        remark(
          'thick-baseline',
          says`the panels agree, but their usual film of ${um(usual.value)} is far over the ${um(factories)} that factories paint: a car painted again all over reads so, and one under a wrap or paint protection film (covered in the job). Look for signs of it in the shuts and at the edges, and try a test spot; film that its maker states counts as a factory’s (clear_um and under_um of the car)`,
          usual.value,
        ),
      ]
    : [];
}

/** A panel far thinner than the others was cut back, or shows that they were painted over: both count. */
function thinOrPainted(car: CarBaseline, model: FilmModel['conditions']): readonly Remark[] {
  const usual = usualBaseline(car);
  if (usual === null || car.paintedOver === null) return [];
  const { chance, shownBy } = car.paintedOver;
  if (chance <= model.nearRisk) return [];
  const { name } = shownBy.panel;
  return [
    remark(
      'thin-or-painted',
      says`most panels agree on ${um(usual.value)}, and ${name} reads ${um(shownBy.read)}: either that is the factory’s film and ${name} was cut back, or they were painted over and ${name} still shows the factory’s film${nextFact}both count till it is settled: read the clear of ${name} by itself (as thick as factories paint it, the others were painted over; far thinner, it was cut back), or find out what was painted again and state it (painted_days_ago)`,
      shownBy.read,
    ),
  ];
}
