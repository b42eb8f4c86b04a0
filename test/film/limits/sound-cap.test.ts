/** What holds a repaint back does not hang on which word a panel near a line happens to have. */
import { describe, expect, test } from 'vitest';
import { micrometres } from '../../../src/base/units.ts';
import { allowanceAfterSpot } from '../../../src/film/limits/allowance-at.ts';
import { soundCap } from '../../../src/film/limits/sound-cap.ts';
import { filmModel } from '../../../src/formats/models.ts';
import {
  fiveAround,
  panelOf,
  plainPanel,
  standardTerms,
  surveyOf,
  UNTRIED_LOG_SD,
} from '../car-builder.ts';

const { risk } = standardTerms;
const grounds = { terms: standardTerms, model: filmModel };
const sound = ['a', 'b', 'c', 'd', 'e', 'f'];
const car = (sill: number, spread = 1) => {
  const films: Readonly<Record<string, number>> = {
    ...Object.fromEntries(sound.map((id, i) => [id, 112 + i])),
    sill,
    repaint: 220,
  };
  return surveyOf({
    panels: Object.keys(films).map((id) => plainPanel(id)),
    readings: Object.entries(films).flatMap(([id, film]) =>
      fiveAround(id, film).map((one) => ({
        ...one,
        thickness: micrometres(film + spread * (one.thickness - film)),
      })),
    ),
  });
};
const onRepaint = (sill: number): number => {
  const survey = car(sill);
  return allowanceAfterSpot(panelOf(survey, 'repaint'), survey.panels, UNTRIED_LOG_SD, grounds)
    .budget;
};

describe('what a test spot on repaint yields', () => {
  test('moves little by little with the film of a panel that goes from original to cut back', () => {
    const films = Array.from({ length: 121 }, (_, i) => 112 - i / 4);
    const yields = films.map(onRepaint);
    const jumps = yields.slice(1).map((one, i) => Math.abs(one - (yields[i] ?? one)));
    // A quarter of a micrometre of film moves it by less than half of one.
    expect(Math.max(...jumps)).toBeLessThan(0.5);
    expect(Math.min(...yields)).toBe(0);
  });

  test('is nothing where a panel may as well be original as cut back, and nothing may go from it', () => {
    expect(['original', 'cut-back']).toEqual(
      [103, 101].map((film) => panelOf(car(film), 'sill').condition),
    );
    expect([103, 101].map(onRepaint)).toEqual([0, 0]);
    const told = panelOf(car(101), 'repaint').boundBy.text;
    expect(told).toContain('sill');
  });

  test('is as without the panel once that is surely cut back', () => {
    const without = surveyOf({
      panels: [...sound, 'repaint'].map((id) => plainPanel(id)),
      readings: [
        ...sound.flatMap((id, i) => fiveAround(id, 112 + i)),
        ...fiveAround('repaint', 220),
      ],
    });
    const others = soundCap(without.panels, risk)?.budget ?? Number.NaN;
    expect(onRepaint(84)).toBeGreaterThan(0.95 * others);
  });

  test('hangs on no total that is thin, which is a matter of its panel alone', () => {
    const thin = panelOf(car(94), 'sill');
    expect([thin.condition, thin.also.includes('cut-back')]).toEqual(['thin', true]);
    const kept = soundCap(car(94).panels, risk);
    expect(kept?.budget).toBeGreaterThan(0);
  });

  test('is nothing to go by where all panels are surely cut back', () => {
    const [first] = car(84).panels.filter(({ panel }) => panel.id === 'sill');
    expect(soundCap(first === undefined ? [] : [first], risk)).toBeNull();
  });
});
