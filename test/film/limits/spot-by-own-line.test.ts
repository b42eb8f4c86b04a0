/** A panel that may be repaint by its own film: a test spot of its own frees it as it frees repaint, and no further. */
import { describe, expect, test } from 'vitest';
import { micrometres } from '../../../src/base/units.ts';
import { isHeldByOwnLine } from '../../../src/film/condition/painted-side.ts';
import type { PanelFacts } from '../../../src/film/film-model.ts';
import { withOwnSpots } from '../../../src/film/limits/after-test-spot.ts';
import { allowanceAfterSpot } from '../../../src/film/limits/allowance-at.ts';
import { isSound } from '../../../src/film/limits/sound-cap.ts';
import type { PanelSurvey, Survey } from '../../../src/film/survey.ts';
import { filmModel } from '../../../src/formats/models.ts';
import { fiveAround, panelOf, plainPanel, standardTerms, surveyOf } from '../car-builder.ts';

const grounds = { terms: standardTerms, model: filmModel };
const SOUND = ['a', 'b', 'c', 'd', 'e', 'f'] as const;
const LINE = 155;

const carOf = (
  films: Readonly<Record<string, number>>,
  factsOf: (id: string) => Partial<PanelFacts> = () => ({}),
): Survey => {
  const all = { ...Object.fromEntries(SOUND.map((id) => [id, 115])), ...films };
  return surveyOf({
    panels: Object.keys(all).map((id) => plainPanel(id)),
    readings: Object.entries(all).flatMap(([id, film]) => fiveAround(id, film)),
    factsOf,
  });
};

/** Nothing but panels close under the line of any car. */
const ofTwo = surveyOf({
  panels: ['one', 'two'].map((id) => plainPanel(id)),
  readings: ['one', 'two'].flatMap((id) => fiveAround(id, 150)),
});

const spotted = ({ panels }: Survey, ...on: readonly string[]): readonly PanelSurvey[] =>
  withOwnSpots(panels, ({ panel }) => (on.includes(panel.id) ? 0.4 : null), grounds);
const of = (panels: readonly PanelSurvey[], id: string): PanelSurvey => {
  const found = panels.find(({ panel }) => panel.id === id);
  if (found === undefined) throw new Error(`no panel ${id}`);
  return found;
};

describe('a panel that reads close under its line of repaint', () => {
  const car = carOf({ doubted: LINE - 1 });
  const least = panelOf(car, 'a').budget;

  test('gets nothing till it is settled, and by its own spot as much as the least of the others, no more', () => {
    const before = panelOf(car, 'doubted');
    expect([before.condition, before.budget, isHeldByOwnLine(before)]).toEqual([
      'original',
      0,
      true,
    ]);
    const after = of(spotted(car, 'doubted'), 'doubted');
    expect(after.budget).toBeGreaterThan(1);
    expect(after.budget).toBeLessThanOrEqual(least);
    expect(after.limits.map(({ code }) => code)).toContain('sound-panels');
    expect([after.otherSide, after.sides.lost]).toEqual([null, []]);
    expect(after.advice.map(({ code }) => code)).not.toContain('settle');
  });

  test('is told the same by a plan, of the survey before and after', () => {
    const panels = spotted(car, 'doubted');
    const after = of(panels, 'doubted');
    for (const [part, all] of [
      [after, panels],
      [panelOf(car, 'doubted'), car.panels],
    ] as const) {
      expect(allowanceAfterSpot(part, all, 0.4, grounds).budget).toBeCloseTo(after.budget, 9);
    }
  });

  test('is no more than a patch of its own film where the others allow less', () => {
    const worn = carOf({ doubted: LINE - 1 }, (id) =>
      id === 'a' ? { recorded: { mean: micrometres(3), sd: micrometres(0.5) } } : {},
    );
    const after = of(spotted(worn, 'doubted'), 'doubted');
    expect(panelOf(worn, 'a').budget).toBeLessThan(least);
    expect(after.budget).toBeLessThanOrEqual(panelOf(worn, 'a').budget);
    expect(after.boundBy.code).toBe('sound-panels');
  });

  test('is told that a spot of its own settles it, where others are there to go by', () => {
    const settleOf = ({ advice }: PanelSurvey) =>
      advice.find(({ code }) => code === 'settle')?.text ?? '';
    const told = /^a test spot of its own without colour; or .*: settles it$/;
    expect(settleOf(panelOf(car, 'doubted'))).toMatch(told);
    expect(settleOf(panelOf(ofTwo, 'one'))).toMatch(/settles it$/);
    expect(settleOf(panelOf(ofTwo, 'one'))).not.toContain('test spot');
  });

  test('stays as it is by the spot of another panel', () => {
    expect(spotted(car, 'a')).toEqual(car.panels);
  });

  test('counts what is gone from its patch', () => {
    const gone = carOf({ doubted: LINE - 1 }, (id) =>
      id === 'doubted'
        ? {
            recorded: {
              ...{ mean: micrometres(0.6), sd: micrometres(0.1) },
              allOver: { mean: micrometres(0), sd: micrometres(0) },
            },
          }
        : {},
    );
    expect(of(spotted(gone, 'doubted'), 'doubted').budget).toBeLessThanOrEqual(least - 0.6);
  });
});

describe('where it is the only panel to go by', () => {
  test('nothing is freed: panels in doubt by their own lines are no original paint', () => {
    expect(ofTwo.panels.filter(isHeldByOwnLine)).toHaveLength(2);
    expect(spotted(ofTwo, 'one', 'two')).toEqual(ofTwo.panels);
  });
});

describe('panels alike in doubt', () => {
  const films = { one: LINE - 1, two: LINE - 2, repaint: 230 };
  const car = carOf(films);

  test('free one another not, and each its own', () => {
    const panels = spotted(car, 'one');
    expect(of(panels, 'one').budget).toBeGreaterThan(1);
    expect(of(panels, 'two').budget).toBe(0);
  });

  test('let repaint with a spot of its own have more once each is settled by its own', () => {
    const repaintAfter = (...on: readonly string[]): number =>
      of(spotted(car, 'repaint', ...on), 'repaint').budget;
    expect(repaintAfter()).toBe(0);
    expect(repaintAfter('one')).toBe(0);
    const all = spotted(car, 'repaint', 'one', 'two');
    expect(repaintAfter('one', 'two')).toBeGreaterThan(1);
    expect(of(all, 'repaint').budget).toBeLessThanOrEqual(of(all, 'one').budget);
    expect(isSound(of(all, 'one'), standardTerms.risk)).toBe(true);
    expect(allowanceAfterSpot(of(all, 'repaint'), all, 0.4, grounds).budget).toBeCloseTo(
      of(all, 'repaint').budget,
      9,
    );
  });
});

describe('a panel is not held by its own line', () => {
  test.each([
    ['of film that nobody doubts', () => panelOf(carOf({}), 'a')],
    ['that is repaint by its word', () => panelOf(carOf({ doubted: LINE + 1 }), 'doubted')],
    ['that gets something as it is', () => panelOf(carOf({ doubted: 140 }), 'doubted')],
  ])('%s', (_, panel) => {
    expect(isHeldByOwnLine(panel())).toBe(false);
  });
});
