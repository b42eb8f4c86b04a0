import { describe, expect, test } from 'vitest';
import { hasGained } from '../../../src/film/compare/compare-change.ts';
import { compareSurveys } from '../../../src/film/compare/compare-surveys.ts';
import { correctionModel, filmModel } from '../../../src/formats/models.ts';
import { plainPanel, reading, surveyOf } from '../car-builder.ts';

const IDS = ['a', 'b', 'c', 'd'];
const panels = IDS.map((id) => plainPanel(id));
const film = [112, 118, 110, 115, 113];
const scatter = [-2, 1.9, 0.2, -1.8, 2.1];
const measurement = filmModel.measurement;

/** Every panel read again at its marks, by so much more. */
const readAgain = (more: number) =>
  compareSurveys(
    ...([
      surveyOf({
        panels,
        readings: IDS.flatMap((id) => film.map((um, k) => reading(id, `${k}`, um))),
      }),
      surveyOf({
        panels,
        readings: IDS.flatMap((id) =>
          film.map((um, k) => reading(id, `${k}`, um + more + (scatter[k] ?? 0))),
        ),
      }),
    ] as const),
    {
      marked: { before: () => true, after: () => true },
      gauges: { cancels: true, before: measurement, after: measurement },
      model: filmModel,
      scatterDof: correctionModel.spot.scatterDof,
    },
  );

describe('a gain of the car', () => {
  test('flags all of its panels, and so is called one at the chance of a panel by their number', () => {
    const { flagRisk } = filmModel;
    const seen = Array.from({ length: 60 }, (_, i) => i / 40).map((more) => {
      const { car, panels: told } = readAgain(more);
      if (car === null) throw new Error('every panel was read twice');
      const byThemselves = told.some(
        ({ change }) => change !== null && hasGained(change, flagRisk / 4),
      );
      const isGain = hasGained(car, flagRisk / 4 / 4);
      if (!byThemselves)
        expect([more, told.map(({ gained }) => gained)]).toEqual([more, Array(4).fill(isGain)]);
      return { byThemselves, isGain, atOne: hasGained(car, flagRisk / 4) };
    });
    expect(seen.some(({ isGain, byThemselves }) => isGain && !byThemselves)).toBe(true);
    expect(seen.some(({ isGain, atOne, byThemselves }) => atOne && !isGain && !byThemselves)).toBe(
      true,
    );
  });
});
