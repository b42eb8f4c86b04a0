import { describe, expect, test } from 'vitest';
import type { PanelFacts } from '../../../src/film/film-model.ts';
import { onFace, panelOf, plainPanel, surveyOf } from '../car-builder.ts';

type Car = Readonly<Record<string, readonly number[]>>;

/** Points of each panel; the slips of the roof. */
function slipsOfRoof(car: Car, factsOf?: (id: string) => Partial<PanelFacts>) {
  const survey = surveyOf({
    panels: Object.keys(car).map((id) => plainPanel(id)),
    readings: Object.entries(car).flatMap(([id, films]) => onFace(id, ...films)),
    ...(factsOf === undefined ? {} : { factsOf }),
  });
  return panelOf(survey, 'roof').keyingSlips;
}
const sound = { a: [108, 110], b: [109, 111], c: [110, 112], d: [111, 113] };

describe('a panel that slipped whole', () => {
  test.each([
    [10, [1100, 1120]],
    [0.1, [11, 11.2]],
    [25.4, [2800, 2830]],
    [1 / 25.4, [4.3, 4.4]],
  ])(
    'is told with the factor %d that its points were keyed by, and all of their names',
    (factor, roof) => {
      expect(slipsOfRoof({ ...sound, roof })).toMatchObject([
        { factor, point: '1, 2', ofPanel: 2, condition: 'original' },
      ]);
      expect(slipsOfRoof({ ...sound, roof: [...roof, ...roof] })[0]?.point).toBe('1, 2, 3, 4');
    },
  );

  test('has points that lie within a quarter of each other', () => {
    expect(slipsOfRoof({ ...sound, roof: [1000, 1250] })).toHaveLength(1);
    expect(slipsOfRoof({ ...sound, roof: [1000, 1251] })).toEqual([]);
  });

  test('has no point that is farther from ten times the others', () => {
    // The others read 110.5: 1380 is within a quarter of 1105, 1382 is not.
    expect(slipsOfRoof({ ...sound, roof: [1150, 1380] })).toHaveLength(1);
    expect(slipsOfRoof({ ...sound, roof: [1150, 1382] })).toEqual([]);
  });

  test('is held against the others, and not against itself among them', () => {
    // 1000 is ten times 100, the middle of the others, and eight times 125, the middle of all.
    const others = { a: [80, 80], b: [100, 100], c: [150, 150] };
    expect(slipsOfRoof({ ...others, roof: [1000, 1000] })).toMatchObject([{ factor: 10 }]);
  });

  test('has two points at the least: one may be a slip of its own', () => {
    expect(slipsOfRoof({ ...sound, roof: [1100] })).toEqual([]);
    expect(slipsOfRoof({ ...sound, roof: [1100, 1120] })).toHaveLength(1);
  });

  test('is under no film or wrap, and is not told by panels that are', () => {
    const roof = [1100, 1120];
    const covered =
      (...ids: readonly string[]) =>
      (id: string) => ({ covered: ids.includes(id) });
    expect(slipsOfRoof({ ...sound, roof }, covered('roof'))).toEqual([]);
    expect(slipsOfRoof({ ...sound, roof }, covered('a'))).toHaveLength(1);
    expect(slipsOfRoof({ ...sound, roof }, covered('a', 'b'))).toEqual([]);
  });

  test('is one of fewer than half: of two and two nobody knows which are meant', () => {
    // Sound panels whose points lie farther apart than a slip’s.
    const rough = { a: [95, 125], b: [95, 127] };
    const two = { boot: [1100, 1120], roof: [1110, 1130] };
    expect(slipsOfRoof({ ...rough, ...two })).toEqual([]);
    expect(slipsOfRoof({ ...rough, c: [96, 126], ...two })).toHaveLength(1);
  });
});
