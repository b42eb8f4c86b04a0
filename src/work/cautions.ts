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
    remark('not-a-promise', 'a reading is not a promise: each panel runs the risk stated'),
    remark(
      'edges',
      'pad off or by hand on edges, body lines, handles and pillars: film is thinner there',
    ),
    remark('pad', 'keep the pad flat and moving; stop if colour shows on the pad under clear'),
    remark('protection', 'eye, ear, breathing and skin protection; RCD and dry cables'),
    vibrationCaution(vibrationPoints),
    remark(
      'chemicals',
      'gloves and air with solvents and iron remover, never acid with it; no hydrofluoric or bifluoride cleaner',
    ),
    remark('old-paint', 'never sand unknown old paint dry: it may hold lead or chromate'),
    remark('hot-parts', 'let brakes and exhaust cool before washing'),
    remark('licensed', 'clear coat failure, airbags and structure go to licensed practice'),
  ];
}

function vibrationCaution(points: number): Remark {
  const days = Math.ceil(points / VIBRATION_LIMIT);
  const rule = `${VIBRATION_ACTION} a day is the action value, ${VIBRATION_LIMIT} the limit`;
  const spread = points > VIBRATION_LIMIT ? `: over ${days} days at least, or more hands` : '';
  return remark('vibration', `vibration ${shown(points, 0)} points (${rule})${spread}`, points);
}
