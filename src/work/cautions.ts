import { type Remark, remark } from '../base/remark.ts';
import { shown } from '../base/rounding.ts';
import type { WorkEstimate } from './estimate-work.ts';

/** Exposure points of hand–arm vibration in a day: action and limit value (2002/44/EC, HSE). */
export const VIBRATION_ACTION = 100;
export const VIBRATION_LIMIT = 400;

/** What every plan has to warn of. */
export function planCautions({ vibrationPoints }: WorkEstimate): readonly Remark[] {
  return [
    remark('maker', 'the vehicle maker’s instruction and local rules come first'),
    remark('not-a-promise', 'a reading is no promise'),
    remark('pad', 'pad flat and moving, off edges, lines, handles and pillars'),
    remark('colour-on-pad', 'colour on the pad under clear: stop'),
    remark('protection', 'protect eyes, ears, lungs, skin; RCD, dry cables'),
    vibrationCaution(vibrationPoints),
    remark('chemicals', 'solvents and iron remover: gloves, air, no acid; no fluoride cleaner'),
    remark('old-paint', 'never sand unknown old paint dry (lead, chromate)'),
    remark('hot-parts', 'brakes and exhaust cool first'),
    remark('licensed', 'clear failure, airbags, structure: licensed practice'),
  ];
}

function vibrationCaution(points: number): Remark {
  const days = Math.ceil(points / VIBRATION_LIMIT);
  const rule = `action ${VIBRATION_ACTION}, limit ${VIBRATION_LIMIT} a day`;
  const spread = points > VIBRATION_LIMIT ? `: ${days} days or more hands` : '';
  return remark('vibration', `vibration ${shown(points, 0)} points (${rule})${spread}`, points);
}
