import { type Remark, remark } from '../base/remark.ts';
import { isClearLayer } from './limits/measured-clear.ts';
import type { Reading } from './reading.ts';

/** Readings of single layers are no total film: never averaged in; those of the clear speak for it. */
export function layerNotes(readings: readonly Reading[]): readonly Remark[] {
  const single = readings.filter(({ layer }) => layer !== '');
  const ofClear = single.filter(isClearLayer).length;
  const use =
    ofClear === 0
      ? 'not used'
      : ofClear === single.length
        ? 'used for the clear'
        : `${ofClear} of the clear used for it`;
  return single.length === 0
    ? []
    : [
        remark(
          'layer-readings',
          `${single.length} reading${single.length === 1 ? ' is' : 's are'} of a single layer, not of the whole film: kept apart, ${use}`,
          single.length,
        ),
      ];
}
