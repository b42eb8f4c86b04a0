/** How a gauge's statement and its adjustment are said, on every page alike. */
import { figure } from '../../base/rounding.ts';
import { type Sentence, says, um } from '../../base/sentence.ts';
import { micrometres } from '../../base/units.ts';
import { adjusted, type GaugeAdjustment } from '../../film/gauge/gauge-adjustment.ts';
import type { PermittedError } from '../../film/gauge/gauge-check.ts';

/** `± 1 µm ± 2 % of the film` */
export const permittedText = ({ fixed, proportional }: PermittedError): Sentence =>
  says`± ${um(fixed, null)} ± ${figure(100 * proportional)} % of the film`;

/** `0.971 × reading − 1.94 µm, so that 100 µm become 95.2 µm` */
export const adjustmentText = (adjustment: GaugeAdjustment): Sentence => {
  const { offset, slope } = adjustment;
  const hundred = micrometres(100);
  const sign = offset < 0 ? '−' : '+';
  return says`${figure(slope)} × reading ${sign} ${um(Math.abs(offset), 2)}, so that ${um(hundred, 0)} become ${um(adjusted(hundred, adjustment))}`;
};
