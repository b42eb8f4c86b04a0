/** Panels that a slip or a swap makes no measure: they are not compared, and say nothing of the others. */
import { describe, expect, test } from 'vitest';
import { compareSurveys } from '../../../src/film/compare/compare-surveys.ts';
import type { Reading } from '../../../src/film/reading.ts';
import { correctionModel, filmModel } from '../../../src/formats/models.ts';
import { onFace, plainPanel, surveyOf } from '../car-builder.ts';

type Films = Readonly<Record<string, readonly number[]>>;

const before: Films = {
  a: [112, 118, 110, 115, 113],
  b: [109, 107, 111, 112, 105],
  c: [120, 117, 114, 118, 122],
  d: [101, 106, 103, 108, 104],
};
const after: Films = {
  a: [110, 115, 108, 112, 111],
  b: [108, 104, 108, 110, 103],
  c: [117, 115, 113, 114, 120],
  d: [99, 103, 101, 106, 101],
};
const compare = (first: Films, second: Films) => {
  const panels = Object.keys(first).map((id) => plainPanel(id));
  const surveyed = (films: Films) =>
    surveyOf({
      panels,
      readings: Object.entries(films).flatMap(([id, ums]): readonly Reading[] =>
        onFace(id, ...ums),
      ),
    });
  return compareSurveys(surveyed(first), surveyed(second), {
    marked: { before: () => true, after: () => true },
    gauges: { cancels: true, before: filmModel.measurement, after: filmModel.measurement },
    model: filmModel,
    scatterDof: correctionModel.spot.scatterDof,
  });
};
const of = (compared: ReturnType<typeof compare>, id: string) => {
  const found = compared.panels.find(({ panel }) => panel.id === id);
  if (found === undefined) throw new Error(`${id} was not compared`);
  return found;
};
const changesOf = (compared: ReturnType<typeof compare>, ...ids: readonly string[]) =>
  ids.map((id) => of(compared, id).change);

describe('a panel with a value that looks keyed wrongly', () => {
  const first = { ...before, e: [100, 104, 108, 112, 116] };
  const sound = [98, 100.5, 107, 109, 115.5];
  const slipped = sound.map((film) => (film === 107 ? 1070 : film));
  const told = (second: readonly number[], back = first) => compare(back, { ...after, e: second });

  test('is not compared, and names the slip, be it of before or after', () => {
    const { by, pairs, change, zones, slips, swap } = of(told(slipped), 'e');
    expect({ by, pairs, change, zones, swap }).toEqual({
      ...{ by: 'nothing', pairs: [], change: null },
      ...{ zones: [], swap: null },
    });
    expect(slips.map(({ point, thickness }) => [point, thickness])).toEqual([['3', 1070]]);
    const early = told(sound, { ...first, e: slipped });
    expect(of(early, 'e').slips.map(({ point }) => point)).toEqual(['3']);
    expect(of(told(sound), 'e').slips).toEqual([]);
  });

  test('says nothing of how the differences of other panels scatter, nor of the car', () => {
    const ids = Object.keys(before);
    const without = compare(before, after);
    expect(changesOf(told(slipped), ...ids)).toEqual(changesOf(without, ...ids));
    expect(told(slipped).car).toEqual(without.car);
    // Without a slip its differences are among those that tell the scatter.
    expect(changesOf(told(sound), ...ids)).not.toEqual(changesOf(without, ...ids));
  });
});

describe('two panels whose readings fit one another', () => {
  const steep: Films = {
    ...before,
    e: [100, 130, 105, 125, 110],
    f: [125, 104, 128, 99, 117],
  };
  const again: Films = { ...after, e: [123, 102, 126, 97, 115], f: [98, 128, 103, 123, 108] };

  test('are not compared, and each names both', () => {
    const compared = compare(steep, again);
    for (const id of ['e', 'f']) {
      const { by, change, pairs, swap } = of(compared, id);
      expect({ by, change, pairs }).toEqual({ by: 'nothing', change: null, pairs: [] });
      expect([swap?.kind, swap?.panels.map((panel) => panel.id)]).toEqual(['panels', ['e', 'f']]);
    }
    expect(of(compared, 'a').swap).toBeNull();
  });

  test('say nothing of the other panels', () => {
    const ids = Object.keys(before);
    const without = compare(before, after);
    expect(changesOf(compare(steep, again), ...ids)).toEqual(changesOf(without, ...ids));
    expect(compare(steep, again).car).toEqual(without.car);
  });
});
