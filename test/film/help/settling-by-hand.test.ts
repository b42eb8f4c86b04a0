/** What would settle on which side of its line a panel lies, by doubts in round numbers. */
import { describe, expect, it } from 'vitest';
import { exactly, uncertain } from '../../../src/base/uncertainty.ts';
import { micrometres } from '../../../src/base/units.ts';
import type {
  ConditionSureness,
  OtherSide,
} from '../../../src/film/condition/condition-sureness.ts';
import {
  compareWithLine,
  type LineComparison,
} from '../../../src/film/condition/line-comparison.ts';
import { settlingAdvice } from '../../../src/film/help/settling.ts';
import type { PanelPoint } from '../../../src/film/panel-points.ts';
import type { PanelSurvey } from '../../../src/film/survey.ts';
import { amongSound, fiveAround, knownFacts } from '../car-builder.ts';

const um = micrometres;
const points: readonly PanelPoint[] = [1, 2, 3, 4].map((n) => ({
  point: `${n}`,
  thickness: um(100),
  repeats: [um(100)],
  place: 'face',
  curved: false,
}));

/** 10 µm from its line; known as well as any but for what is said. */
const line = (
  film: number,
  calibration: number,
  rest: Partial<Pick<LineComparison, 'compared' | 'condition' | 'shownBy'>> = {},
): LineComparison => {
  const { compared = 'median', condition = 'filler', ...more } = rest;
  const dof = Number.POSITIVE_INFINITY;
  const figure = uncertain(um(100), {
    film: { contribution: film, dof },
    calibration: { contribution: calibration, dof },
  });
  return {
    ...compareWithLine({ compared, condition, side: 'over', figure, line: exactly(um(110)) }),
    ...more,
  };
};

const sureness = (deciding: LineComparison): ConditionSureness => ({
  sure: 'near',
  deciding,
  comparisons: [deciding],
  beside: [],
});

const limit = amongSound(fiveAround('tested', 106)).panel.boundBy;
const apart: OtherSide = {
  condition: 'cut-back',
  budget: um(1),
  boundBy: limit,
  ifWordHolds: um(4),
};

/** With 16 points at most four times those there are, so that doubts about film are halved. */
const adviceOn = (
  deciding: LineComparison | null,
  rest: Partial<Pick<PanelSurvey, 'otherSide' | 'facts'>> = {},
) =>
  settlingAdvice(
    {
      sureness: deciding === null ? null : sureness(deciding),
      otherSide: apart,
      points,
      facts: knownFacts,
      ...rest,
    },
    { mostPoints: 16, nearRisk: 0.05 },
  ).map(({ code, text }) => `${code}: ${text}`);

describe('what would settle it', () => {
  // Of 10 µm with 5 % left: 10/1.6449 = 6.08 µm of standard uncertainty at most.
  it('is more points where they leave no more than the risk of the other side', () => {
    const more = 'settle: 16 points in all, if they read the same: settles it';
    expect(adviceOn(line(12, 0))).toEqual([more]);
    const neither = 'settle: neither more points nor a checked gauge would settle it';
    expect(adviceOn(line(12.5, 0))).toEqual([neither]);
  });
  it('is a checked gauge besides where its error is what is left', () => {
    expect(adviceOn(line(12, 5))).toEqual([
      'settle: a checked gauge with 16 points in all, if they read the same: settles it',
    ]);
  });
  it('is the point that decides read again, three times more', () => {
    const decides = { ...line(12, 0), compared: 'largest-point' } as const;
    expect(adviceOn(decides)).toEqual([
      'settle: that point read 3 more times, if it reads the same: settles it',
    ]);
  });
  it('is word that it was painted again besides, of a panel near the line of repaint', () => {
    const word =
      'word that it was painted again (painted_days_ago in the job; word that it never was settles nothing)';
    expect(adviceOn(line(12, 0, { condition: 'refinished' }))).toEqual([
      `settle: 16 points in all, if they read the same; or ${word}: settles it`,
    ]);
    expect(adviceOn(line(20, 0, { condition: 'refinished' }))).toEqual([
      `settle: ${word}: settles it`,
    ]);
  });
  it('is a clear read by itself of a panel that may be cut back, unless it was', () => {
    const may = line(20, 0, { condition: 'cut-back' });
    const read = 'read settles what may go, more points only narrow it';
    expect(adviceOn(may)).toEqual([`settle-clear: a clear ${read}`]);
    expect(adviceOn(may, { facts: { ...knownFacts, finish: 'single-stage-solid' } })).toEqual([
      `settle-clear: a topcoat ${read}`,
    ]);
    const clear = { mean: um(40), sd: um(2), of: 'panel' } as const;
    expect(adviceOn(may, { facts: { ...knownFacts, clear } })).toEqual([
      'settle: neither more points nor a checked gauge would settle it',
    ]);
    expect(adviceOn(line(12, 0, { condition: 'cut-back' }))).toEqual([
      'settle: 16 points in all, if they read the same: settles it',
    ]);
  });
  it('is the clear of the panel that shows the factory’s film, where the others may be painted over', () => {
    expect(adviceOn(line(12, 0, { shownBy: 'boot lid' }))).toEqual([
      'settle: the clear of boot lid read, or word of what was painted again (painted_days_ago in the job): settles it',
    ]);
  });
  it('is nothing where no figure decides, no other side is near, or as much may go there', () => {
    expect(adviceOn(null)).toEqual([]);
    expect(adviceOn(line(12, 0), { otherSide: null })).toEqual([]);
    expect(adviceOn(line(12, 0), { otherSide: { ...apart, budget: um(4) } })).toEqual([]);
  });
});
