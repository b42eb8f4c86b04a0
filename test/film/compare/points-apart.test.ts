import { describe, expect, test } from 'vitest';
import { compareSurveys } from '../../../src/film/compare/compare-surveys.ts';
import type { PanelComparison } from '../../../src/film/compare/panel-comparison.ts';
import { correctionModel, filmModel } from '../../../src/formats/models.ts';
import { onFace, plainPanel, surveyOf } from '../car-builder.ts';

/** Before, and what came off at each point by rights. */
const FILM: Readonly<Record<string, readonly number[]>> = {
  a: [112, 118, 110, 115, 113],
  b: [109, 107, 111, 112, 105],
  c: [120, 117, 114, 118, 122],
  d: [101, 106, 103, 108, 104],
};
const OFF = [2, 3, 2, 3, 2] as const;
const panels = Object.keys(FILM).map((id) => plainPanel(id));

/** Panel `a` with what came off it, point by point; at the others it is as it should be. */
function comparedAt(
  off: readonly number[],
  isMarked: (point: string) => boolean = () => true,
): PanelComparison {
  const readings = (taken: (id: string) => readonly number[]) =>
    Object.entries(FILM).flatMap(([id, films]) =>
      onFace(id, ...films.map((film, k) => film - (taken(id)[k] ?? 0))),
    );
  const [before, after] = [readings(() => []), readings((id) => (id === 'a' ? off : OFF))].map(
    (all) => surveyOf({ panels, readings: all }),
  ) as [ReturnType<typeof surveyOf>, ReturnType<typeof surveyOf>];
  const marked = (_: string, point: string): boolean => isMarked(point);
  const { panels: compared } = compareSurveys(before, after, {
    marked: { before: marked, after: marked },
    gauges: { cancels: true, before: filmModel.measurement, after: filmModel.measurement },
    model: filmModel,
    scatterDof: correctionModel.spot.scatterDof,
  });
  const [first] = compared;
  if (first === undefined) throw new Error('panel a was compared');
  return first;
}

const removed = ({ change }: PanelComparison): number => change?.removed.value ?? Number.NaN;
const SLIP = 25;
const at2 = (off: number): readonly number[] => OFF.map((one, k) => (k === 1 ? off : one));

describe('a marked point whose change stands out from its panel’s', () => {
  test('is none where all came off as it should', () => {
    expect(comparedAt(OFF).apart).toBeNull();
  });

  test('counts where more came off by it, with what would be without', () => {
    const { apart, ...whole } = comparedAt(at2(3 + SLIP));
    expect(whole.change?.removed.value).toBeCloseTo((2 + 28 + 2 + 3 + 2) / 5, 9);
    expect(whole.pairs).toHaveLength(5);
    expect(apart?.counted).toBe(true);
    expect(apart?.points).toMatchObject([{ point: '2', others: 2, lost: 'more', odd: 'after' }]);
    const otherwise = apart?.otherwise as PanelComparison;
    expect(removed(otherwise)).toBeCloseTo((2 + 2 + 3 + 2) / 4, 9);
    expect(otherwise.pairs.map(({ point }) => point)).toEqual(['1', '3', '4', '5']);
  });

  test('is left out where less came off by it, so that it hides no removal', () => {
    const { apart, ...rest } = comparedAt(at2(3 - SLIP));
    expect(rest.change?.removed.value).toBeCloseTo((2 + 2 + 3 + 2) / 4, 9);
    expect(apart?.counted).toBe(false);
    expect(apart?.points).toMatchObject([{ point: '2', lost: 'less', odd: 'after' }]);
    expect(removed(apart?.otherwise as PanelComparison)).toBeCloseTo((2 - 22 + 2 + 3 + 2) / 5, 9);
  });

  test('is a mark all the same: only what was not marked is named as that', () => {
    const but = (point: string) => point !== '5';
    for (const off of [3 + SLIP, 3 - SLIP]) {
      const { apart, ...own } = comparedAt(at2(off), but);
      expect(apart?.points.map(({ point }) => point)).toEqual(['2']);
      expect(own.unpaired.notMarked).toEqual(['5']);
      expect(apart?.otherwise.unpaired.notMarked).toEqual(['5']);
    }
  });

  test('hides no film that came on at all others', () => {
    const { gained, apart } = comparedAt([-18, -18, -18, 60, -18]);
    expect([gained, apart?.counted, apart?.otherwise.gained]).toEqual([false, true, true]);
    // 15 µm and more are held for paint.
    expect(apart?.otherwise.paint).toBeCloseTo(18, 9);
  });
});
