import { type Remark, remark } from '../base/remark.ts';
import { shown } from '../base/rounding.ts';
import type { WorkEstimate } from './estimate-work.ts';
import type { WorkModel } from './work-model.ts';

/** What every plan has to warn of. */
export function planCautions(
  { vibrationPoints }: WorkEstimate,
  { vibration }: Pick<WorkModel, 'vibration'>,
): readonly Remark[] {
  return [
    remark('maker', 'the vehicle maker’s instruction and local rules come first'),
    remark('not-a-promise', 'a reading is no promise'),
    remark('pad', 'pad flat and moving, off edges, lines, handles and pillars'),
    remark('colour-on-pad', 'colour on the pad under clear: stop'),
    remark('protection', 'protect eyes, ears, lungs, skin; RCD, dry cables'),
    vibrationCaution(vibrationPoints, vibration),
    remark('chemicals', 'solvents and iron remover: gloves, air, no acid; no fluoride cleaner'),
    remark('old-paint', 'never sand unknown old paint dry (lead, chromate)'),
    remark('hot-parts', 'brakes and exhaust cool first'),
    remark('licensed', 'clear failure, airbags, structure: licensed practice'),
  ];
}

function vibrationCaution(
  points: number,
  { actionPoints, limitPoints }: WorkModel['vibration'],
): Remark {
  const days = Math.ceil(points / limitPoints);
  const rule = `action ${actionPoints}, limit ${limitPoints} a day`;
  const spread = points > limitPoints ? `: ${days} days or more hands` : '';
  return remark('vibration', `vibration ${shown(points, 0)} points (${rule})${spread}`, points);
}
