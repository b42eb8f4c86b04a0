import { type Remark, remark } from '../base/remark.ts';
import { shown } from '../base/rounding.ts';
import { nextFact, says } from '../base/sentence.ts';
import type { WorkEstimate } from './estimate-work.ts';
import type { WorkModel } from './work-model.ts';

/** What every plan has to warn of. */
export function planCautions(
  work: Pick<WorkEstimate, 'days'>,
  { vibration }: Pick<WorkModel, 'vibration'>,
): readonly Remark[] {
  return [
    remark('maker', 'maker’s instruction, local rules first'),
    remark('not-a-promise', 'a reading is no promise'),
    remark('pad', 'pad flat and moving, off edges, lines, handles'),
    remark('colour-on-pad', 'colour on the pad under clear: stop'),
    remark('protection', says`protect eyes, ears, lungs, skin${nextFact}RCD, dry cables`),
    vibrationCaution(work, vibration),
    remark('chemicals', says`solvents, iron remover: gloves, air, no acid${nextFact}no fluoride`),
    remark('old-paint', 'never sand old paint dry (lead, chromate)'),
    remark('hot-parts', 'brakes, exhaust cool first'),
    remark('licensed', 'clear failure, airbags, structure: licensed practice'),
  ];
}

/**
 * The limits are a person's, a day's: what counts is the hands that have most of it on the worst day. Past the
 * action value it is to be made less, and the hands kept warm and rested (2002/44/EC, art. 5(2): duration, rest, warmth).
 */
function vibrationCaution(
  { days }: Pick<WorkEstimate, 'days'>,
  { actionPoints, limitPoints }: WorkModel['vibration'],
): Remark {
  const most = Math.max(0, ...days.flatMap((day) => day.points));
  const rule = `action ${actionPoints}, limit ${limitPoints}`;
  const advice = most > actionPoints ? ': share the machine, keep hands warm, rest them' : '';
  return remark(
    'vibration',
    `vibration up to ${shown(most, 0)} points a hand in a day (${rule})${advice}`,
    most,
  );
}
