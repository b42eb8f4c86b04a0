import fc from 'fast-check';
import { expect, test } from 'vitest';
import { micrometres } from '../../src/base/units.ts';
import { filmModel } from '../../src/formats/models.ts';
import { evenly } from '../evenly.ts';
import { onFace, plainPanel, surveyOf } from './car-builder.ts';

const film = fc.array(fc.integer({ min: 1000, max: 1240 }), { minLength: 3, maxLength: 6 });

/** The same readings, held to come from a gauge with this repeatability. */
const surveyAt = (panels: readonly (readonly number[])[], sd: number) =>
  surveyOf({
    panels: panels.map((_, k) => plainPanel(`p${k}`)),
    readings: panels.flatMap((values, k) => onFace(`p${k}`, ...values.map((value) => value / 10))),
    model: {
      ...filmModel,
      measurement: { ...filmModel.measurement, repeatability: micrometres(sd) },
    },
  }).panels;

test('a gauge held to scatter more never raises the thinnest credible film', () => {
  fc.assert(
    fc.property(
      fc.array(film, { minLength: 3, maxLength: 8 }),
      evenly(0.2, 3),
      evenly(0, 3),
      (panels, sd, more) => {
        const [quiet, noisy] = [surveyAt(panels, sd), surveyAt(panels, sd + more)];
        for (const [k, { thinnest, condition }] of quiet.entries()) {
          const other = noisy[k];
          if (thinnest === null || other?.condition !== condition) continue;
          expect(other.thinnest ?? 0).toBeLessThanOrEqual(thinnest + 1e-9);
        }
      },
    ),
    { numRuns: 300 },
  );
});
