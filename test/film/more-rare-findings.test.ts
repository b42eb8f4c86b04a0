/** What few cars have, told by the panel. */
import { describe, expect, test } from 'vitest';
import { micrometres } from '../../src/base/units.ts';
import { isOnRecord, TEST_SPOTS } from '../../src/film/limits/earlier-work.ts';
import {
  amongSound,
  byItself,
  fiveAround,
  onFace,
  plainPanel,
  reading,
  surveyOf,
} from './car-builder.ts';

const um = micrometres;

describe('filler', () => {
  test('at points off the face is told with each of them, its place and their range', () => {
    const offFace = [
      reading('tested', '6', 640, { place: 'edge' }),
      reading('tested', '7', 702, { place: 'shut' }),
    ];
    const textOf = (count: number) =>
      amongSound([...fiveAround('tested', 112), ...offFace.slice(0, count)]).panel.evidence[0]
        ?.text;
    expect(textOf(1)).toMatch(
      /^point 6 \(edge\) off the face reads 640\.0 µm, over 500 µm.{1,3}those on the face read 108\.0 to 116\.0 µm$/u,
    );
    expect(textOf(2)).toMatch(
      /^points 6 \(edge\), 7 \(shut\) off the face read 640\.0 to 702\.0 µm, over 500 µm/u,
    );
  });

  test('is told beside the one other point, or all of them, and what those are like', () => {
    const textOf = (...films: readonly number[]) =>
      amongSound(onFace('tested', ...films)).panel.evidence[0]?.text;
    expect(textOf(620, 112)).toMatch(
      /^point 1 reads 620\.0 µm, over 500 µm.{1,3}the other reads 112\.0 µm, like factory film$/u,
    );
    expect(textOf(620, 640, 230, 240)).toMatch(
      /^points 1, 2 read 620\.0 to 640\.0 µm, over 500 µm.{1,3}the other 2 read 230\.0 to 240\.0 µm, like repaint$/u,
    );
    expect(textOf(120, 122, 640, 310, 180)).toMatch(
      /120\.0 to 310\.0 µm, 2 of them like repaint$/u,
    );
    expect(textOf(620, 640)).toBe('all of its points over 500 µm, at 620.0 to 640.0 µm');
  });
});

describe('a panel in two zones', () => {
  test('names the points that stand out in either zone, and none where none does', () => {
    const { panel } = amongSound(onFace('tested', 110, 112, 111, 88, 131, 200, 202, 201, 178, 226));
    expect(panel.zones).toHaveLength(2);
    expect(panel.lowPoints).toEqual(panel.zones.flatMap(({ lowPoints }) => lowPoints));
    expect(panel.highPoints).toEqual(panel.zones.flatMap(({ highPoints }) => highPoints));
    expect([panel.lowPoints, panel.highPoints]).toEqual([
      ['4', '9'],
      ['5', '10'],
    ]);
    const plain = amongSound(onFace('tested', 110, 112, 111, 200, 202, 201)).panel;
    expect([plain.lowPoints, plain.highPoints]).toEqual([[], []]);
  });
});

describe('a panel that lost more than might go at a visit on record', () => {
  test('is told of it behind what else is said of it, once for each visit', () => {
    const overrun = (date: string) => ({
      date,
      mean: um(6.2),
      sd: um(0.4),
      allowed: um(2),
      surely: true,
    });
    const recorded = {
      mean: um(6.2),
      sd: um(0.4),
      overruns: [overrun('2025-03-31'), overrun('2026-03-31')],
    };
    const told = (given: typeof recorded | null) =>
      amongSound(fiveAround('tested', 112), {
        factsOf: (id) => (id === 'tested' ? { recorded: given } : {}),
      }).panel.evidence;
    const codes = told(recorded).map(({ code }) => code);
    expect(codes.slice(-2)).toEqual(['overrun-on-record', 'overrun-on-record']);
    expect(codes.length).toBeGreaterThan(2);
    expect(told(null).map(({ code }) => code)).not.toContain('overrun-on-record');
  });
});

describe('a car of one panel', () => {
  const alone = (...films: readonly number[]) =>
    surveyOf({
      panels: [plainPanel('tested')],
      readings: onFace('tested', ...films),
      model: byItself,
    }).panels[0];

  test('has its thicker zone held to be no factory film where nobody knows the film of the car', () => {
    const panel = alone(110, 112, 300, 302, 304);
    expect(panel?.baseline).toBeNull();
    expect(panel?.zones.map(({ condition }) => condition)).toEqual(['original', 'refinished']);
  });

  test('that is thin is told to be cut back as well, each by how surely it is', () => {
    const panel = alone(50, 112, 112, 112, 112);
    expect([panel?.condition, panel?.also]).toEqual(['thin', ['cut-back']]);
    const { comparisons = [], beside = [] } = panel?.sureness ?? {};
    const conditionsOf = (all: typeof beside) => all.map(({ condition }) => condition);
    expect(conditionsOf(comparisons)).toContain('thin');
    expect(conditionsOf(comparisons)).not.toContain('cut-back');
    expect(conditionsOf(beside)).toEqual(['cut-back']);
  });
});

test('film is on record where visits took some, and not what test spots of this one took', () => {
  const taken = { mean: um(1.5), sd: um(0.2) };
  expect(isOnRecord({ recorded: taken })).toBe(true);
  expect(isOnRecord({ recorded: { ...taken, by: 'film record and test spots' } })).toBe(true);
  expect(isOnRecord({ recorded: { ...taken, by: TEST_SPOTS } })).toBe(false);
  expect(isOnRecord({ recorded: { ...taken, mean: um(0) } })).toBe(false);
  expect(isOnRecord({ recorded: null })).toBe(false);
});
