/** Panels numbered from the other end, by figures that can be reckoned by hand. */
import { describe, expect, test } from 'vitest';
import { micrometres } from '../../src/base/units.ts';
import type { PanelPoint } from '../../src/film/panel-points.ts';
import type { Reading } from '../../src/film/reading.ts';
import { readPanel } from '../../src/training/graded-survey.ts';
import { expertReference } from '../../src/training/reference.ts';
import { turnedPoints, turnedReasons } from '../../src/training/turned-points.ts';
import { isInOrder, mayBeInOrder } from '../../src/training/values-in-order.ts';
import { model, readingAt, surveyOf } from './true-class.ts';

const FILM = [100, 108, 113, 121, 127];
/** A line of the file for each reading, from 2 on; each mark read `repeats` times. */
const read = (
  panels: Readonly<Record<string, readonly number[]>>,
  { repeats = 1, marked = true } = {},
): readonly Reading[] =>
  Object.entries(panels)
    .flatMap(([panel, films]) =>
      films.flatMap((film, i) =>
        Array.from({ length: repeats }, (_, r) => [panel, `${i + 1}`, r + 1, film] as const),
      ),
    )
    .map(([panel, point, repeat, film], k) =>
      readingAt(panel, point, repeat, film, { marked, line: k + 2 }),
    );
const back = FILM.toReversed();
const level = [110, 111, 110, 112, 111];

const expert = expertReference(
  surveyOf(read({ roof: FILM, boot: FILM, bonnet: level }, { repeats: 3 }), micrometres(1.2)),
);
const turnedIn = (readings: readonly Reading[], leftOut: readonly string[] = []) => {
  const trainee = surveyOf(readings, micrometres(1));
  const found = turnedPoints({ trainee, reference: expert, model }, new Set(leftOut));
  return { ...found, trainee, ids: found.panels.map(({ panel }) => panel.id) };
};

describe('a panel whose values fit the other end', () => {
  test('is turned where they fit it as two hands at one mark do, by both repeatabilities', () => {
    // σ² = 1.2²/3 + 1²/2 at three readings and two; differences of x, −x and nothing vary by x²/2.
    const most = model.copies.setDownBeside ** 2 * (1.2 ** 2 / 3 + 1 / 2);
    const ids = (x: number) => {
      const off = [x, -x, 0, 0, 0];
      const roof = back.map((film, i) => film + (off[i] ?? 0));
      return turnedIn(read({ roof, bonnet: level }, { repeats: 2 })).ids;
    };
    const x = Math.sqrt(2 * most);
    expect(x).toBeGreaterThan(1);
    expect(ids(0.99 * x)).toEqual(['roof']);
    expect(ids(1.01 * x)).toEqual([]);
  });

  test('is turned at marks of both alone, and not where a slip is told of it already', () => {
    expect(turnedIn(read({ roof: back, bonnet: level })).ids).toEqual(['roof']);
    expect(turnedIn(read({ roof: back, bonnet: level }), ['roof']).ids).toEqual([]);
    const unmarked = turnedIn(read({ roof: back, bonnet: level }, { marked: false }));
    expect(unmarked.ids).toEqual([]);
    expect(unmarked.turnedBack).toBe(unmarked.trainee);
    expect(turnedIn(read({ 'door-front-left': back })).ids).toEqual([]);
  });

  test('is turned back, readings and points, and what is no mark of both stays under its name', () => {
    const own = [
      ...read({ roof: back, boot: FILM }, { repeats: 2 }),
      readingAt('roof', '9', 1, 114, { marked: false, line: 90 }),
    ];
    const { turnedBack } = turnedIn(own);
    const as = (panel: string) =>
      readPanel(turnedBack, panel)?.points.map(({ point, thickness }) => [point, thickness]);
    const inOrder = as('roof')?.toSorted(([one], [other]) => `${one}`.localeCompare(`${other}`));
    expect(inOrder).toEqual([...FILM.map((film, i) => [`${i + 1}`, film]), ['9', 114]]);
    expect(as('boot')).toEqual(FILM.map((film, i) => [`${i + 1}`, film]));
    const namesOn = (readings: readonly Reading[], panel: string) =>
      readings.filter((one) => one.panel === panel).map(({ point }) => point);
    expect(namesOn(turnedBack.readings, 'roof')).toEqual([
      ...['5', '5', '4', '4', '3', '3', '2', '2', '1', '1'],
      '9',
    ]);
    expect(namesOn(turnedBack.readings, 'boot')).toEqual(namesOn(own, 'boot'));
  });
});

describe('what is told of panels numbered from the other end', () => {
  const told = (readings: readonly Reading[]) => {
    const found = turnedIn(readings);
    return turnedReasons(found, found.trainee);
  };

  test('names them, and stands at the first reading of the first', () => {
    const [one, ...others] = told(read({ bonnet: level, roof: back }));
    expect(others).toEqual([]);
    expect(one).toMatchObject({ code: 'points-turned', panels: ['roof'], line: 7 });
    expect(one?.text).toMatch(
      /^points of roof are numbered from the other end: counted the other/u,
    );
    const both = told(read({ bonnet: level, roof: back, boot: back }));
    expect(both[0]?.text).toMatch(/^points of (?:roof and boot lid|boot lid and roof) are /u);
  });

  test('says all panels where these are all, and more than one', () => {
    expect(told(read({ roof: back, boot: back }))[0]?.text).toMatch(/^points of all panels are /u);
    expect(told(read({ roof: back }))[0]?.text).toMatch(/^points of roof are /u);
    expect(told(read({ roof: FILM, boot: FILM }))).toEqual([]);
  });
});

describe('values that only rise or only fall', () => {
  const points = (films: readonly number[], repeats = 1): readonly PanelPoint[] =>
    films.map((film, i) => ({
      point: `${i + 1}`,
      thickness: micrometres(film),
      repeats: Array.from({ length: repeats }, () => micrometres(film)),
      place: 'face',
      curved: false,
    }));

  test('do so at each step, and two that are alike do neither', () => {
    expect(isInOrder(points([110, 111, 113]))).toBe(true);
    expect(isInOrder(points([113, 111, 110]))).toBe(true);
    expect(isInOrder(points([110, 111, 111]))).toBe(false);
    expect(isInOrder(points([113, 111, 111]))).toBe(false);
    expect(isInOrder(points([110, 113, 111]))).toBe(false);
    expect([isInOrder(points([110])), isInOrder(points([]))]).toEqual([false, false]);
  });

  test('may do so where steps the other way are under what repeats differ by: 1.96·√2·s/√k', () => {
    const none = 1.96 * Math.SQRT2 * 1.5;
    const may = (by: number, repeats = 1) => [
      mayBeInOrder(points([110, 116, 116 - by, 122], repeats), 1.5),
      mayBeInOrder(points([122, 116, 116 + by, 110], repeats), 1.5),
    ];
    expect(may(0.99 * none)).toEqual([true, true]);
    expect(may(1.01 * none)).toEqual([false, false]);
    expect(may((0.99 * none) / 2, 4)).toEqual([true, true]);
    expect(may((1.01 * none) / 2, 4)).toEqual([false, false]);
    expect([mayBeInOrder(points([110]), 1.5), mayBeInOrder([], 1.5)]).toEqual([false, false]);
  });

  test('are held to the point that was read least often', () => {
    const [first, ...others] = points([110, 116, 113, 122], 9);
    if (first === undefined) throw new Error('four points are there');
    const once = { ...first, repeats: first.repeats.slice(0, 1) };
    // A step back of 3 is over 4.16/√9, and under 4.16.
    expect(mayBeInOrder([first, ...others], 1.5)).toBe(false);
    expect(mayBeInOrder([once, ...others], 1.5)).toBe(true);
  });
});
