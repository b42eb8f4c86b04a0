import { type Diagnostic, warning } from '../../base/diagnostics.ts';
import { figure } from '../../base/rounding.ts';
import type { FilmModel } from '../../film/film-model.ts';
import { oneValue } from '../../film/gauge/one-value.ts';
import type { Reading } from '../../film/reading.ts';

/** All readings of a car are one value: they are read as they stand, and told. */
export function stuckGauge({
  readings,
  model,
}: {
  readonly readings: readonly Reading[];
  readonly model: FilmModel;
}): readonly Diagnostic[] {
  const value = oneValue(readings, model.measurement);
  const message = `all ${readings.length} readings are ${figure(value ?? 0)} µm: paint varies, and so does a gauge that is set down again`;
  return value === undefined
    ? []
    : [
        warning('gauge-stuck', message, {
          at: readings[0]?.origin,
          hint: 'check the gauge on two shims, and read the car again; what was copied down is no reading',
        }),
      ];
}
