/** A car of two finishes: panels are compared with those that carry as many layers. */
import { describe, expect, test } from 'vitest';
import type { Finish } from '../../src/film/film-model.ts';
import { byPaintKind } from '../../src/film/paint-kind.ts';
import { fiveAround, panelOf, plainPanel, surveyOf } from './car-builder.ts';

type Panels = Readonly<Record<string, readonly [film: number, finish: Finish]>>;

const car = (panels: Panels) =>
  surveyOf({
    panels: Object.keys(panels).map((id) => plainPanel(id)),
    readings: Object.entries(panels).flatMap(([id, [film]]) => fiveAround(id, film)),
    factsOf: (id) => ({ finish: panels[id]?.[1] ?? 'unknown' }),
  });

const clear = (...films: readonly number[]): Panels =>
  Object.fromEntries(films.map((film, i) => [`c${i}`, [film, 'clear-over-base'] as const]));
const single = (...films: readonly number[]): Panels =>
  Object.fromEntries(films.map((film, i) => [`s${i}`, [film, 'single-stage-solid'] as const]));

describe('panels stated in another finish than most', () => {
  const most = clear(112, 114, 113, 111, 112, 115);

  test('are no cut-back film by the layers that the others have besides', () => {
    const survey = car({ ...most, ...single(96, 97, 95, 94) });
    for (const id of ['s0', 's1', 's2', 's3']) {
      expect(panelOf(survey, id)).toMatchObject({ condition: 'original', baseline: 95.5 });
    }
    expect(panelOf(survey, 'c0').baseline).toBe(112.5);
    expect(survey.notes.map(({ code }) => code)).not.toContain('few-of-finish');
  });

  test('are cut back where they lack film to their own', () => {
    const survey = car({ ...most, ...single(96, 97, 95, 94, 80) });
    expect(panelOf(survey, 's4').condition).toBe('cut-back');
  });

  test('make the others neither thick nor thin', () => {
    const alone = car(most);
    const beside = car({ ...most, ...single(96, 97, 95, 94) });
    for (const id of Object.keys(most)) {
      expect(panelOf(beside, id).baseline).toBe(panelOf(alone, id).baseline);
      expect(panelOf(beside, id).condition).toBe(panelOf(alone, id).condition);
    }
  });

  test('have no film to be compared with where all that most carry was painted over', () => {
    const survey = car({ ...clear(250, 260, 255, 262, 251, 258), ...single(96, 97) });
    expect(survey.baseline).toBeNull();
    expect(panelOf(survey, 'c0').condition).toBe('refinished');
    expect(panelOf(survey, 's0').condition).not.toBe('cut-back');
  });

  test('are compared with the others where they are few, and that is said', () => {
    const survey = car({ ...most, ...single(96) });
    expect(panelOf(survey, 's0')).toMatchObject({ condition: 'cut-back' });
    expect(survey.notes.map(({ code, text }) => `${code}: ${text}`)).toContain(
      'few-of-finish: s0: stated to be single stage, which most panels are not, and too few of them agree to be compared with each other: compared with the others, whose paint has other layers, so that cut-back or repaint may be no more than that',
    );
    const other = car({ ...single(96, 97, 95, 94, 96), ...clear(112) });
    expect(other.notes.map(({ text }) => text).join()).toContain(
      'c0: stated to be clear over base',
    );
  });

  test('are compared with panels of which nobody knows the finish, as these may be the same', () => {
    const unknown: Panels = Object.fromEntries(
      Object.entries(most).map(([id, [film]]) => [id, [film, 'unknown'] as const]),
    );
    const survey = car({ ...unknown, ...single(96) });
    expect(panelOf(survey, 's0').condition).toBe('cut-back');
  });
});

test('panels whose finish nobody knows go with those that are most', () => {
  const of = (finish: Finish) => ({ facts: { finish } });
  const [a, b, c, d] = [of('unknown'), of('lacquer'), of('single-stage-metallic'), of('matte')];
  expect(byPaintKind([])).toEqual([[null, []]]);
  expect(byPaintKind([a, d])).toEqual([['clear-over-base', [a, d]]]);
  expect(byPaintKind([a, b, c, d])).toEqual([
    ['single-stage', [b, c, a]],
    ['clear-over-base', [d]],
  ]);
});
