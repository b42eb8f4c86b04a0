import { type Remark, remark } from '../base/remark.ts';
import { shown } from '../base/rounding.ts';
import type { WorkEstimate } from './estimate-work.ts';
import type { WorkModel } from './work-model.ts';

/** What every plan has to warn of. */
export function planCautions(
  work: Pick<WorkEstimate, 'vibrationPoints' | 'days'>,
  { vibration }: Pick<WorkModel, 'vibration'>,
): readonly Remark[] {
  return [
    remark('maker', 'maker’s instruction and local rules come first'),
    remark('not-a-promise', 'a reading is no promise'),
    remark('pad', 'pad flat and moving, off edges, lines, handles'),
    remark('colour-on-pad', 'colour on the pad under clear: stop'),
    remark('protection', 'protect eyes, ears, lungs, skin; RCD, dry cables'),
    vibrationCaution(work, vibration),
    remark('chemicals', 'solvents, iron remover: gloves, air, no acid; no fluoride'),
    remark('old-paint', 'never sand old paint dry (lead, chromate)'),
    remark('hot-parts', 'brakes, exhaust cool first'),
    remark('licensed', 'clear failure, airbags, structure: licensed practice'),
  ];
}

/** The limits are a person's, a day's; more hands or more days share what is above them. */
function vibrationCaution(
  { vibrationPoints: points, days }: Pick<WorkEstimate, 'vibrationPoints' | 'days'>,
  { actionPoints, limitPoints }: WorkModel['vibration'],
): Remark {
  const rule = `a day: action ${actionPoints}, limit ${limitPoints}`;
  const exposed = days.filter((day) => day.a8 > 0);
  const spread =
    points <= limitPoints
      ? ''
      : exposed.length > 1
        ? `, over ${exposed.length} days`
        : ', shared by all hands';
  return remark('vibration', `vibration ${shown(points, 0)} points${spread} (${rule})`, points);
}
