/** Repaint is worked no stronger than it was tried on: what the plan then says, and why not more. */
import { describe, expect, test } from 'vitest';
import { at } from '../../../src/base/at.ts';
import { micrometres } from '../../../src/base/units.ts';
import { choiceReasons } from '../../../src/correction/plan/plan-remarks.ts';
import type { PlanRequest } from '../../../src/correction/plan/plan-request.ts';
import { ladderOn } from '../../../src/correction/removal/removal-knowledge.ts';
import { trialAdvice } from '../../../src/correction/spot/spot-advice.ts';
import { removedFilm } from '../../../src/correction/spot/spot-trial.ts';
import type { PanelSurvey } from '../../../src/film/survey.ts';
import { filmModel } from '../../../src/formats/models.ts';
import { defect, shopWith, untried } from '../shop.ts';
import { marks, trial } from '../spot-trials.ts';
import { type PlannedPanel, panelWith, planOfPanel } from './plan-of-panel.ts';

const model = shopWith('da', 'hand');
const rungs = ladderOn(untried, model);
const MILD = 'da/foam-soft/fine';
const rungOf = (id: string): number => rungs.find((one) => one.id === id)?.rung ?? Number.NaN;

const part = panelWith(4);
const plannedWith = (
  tried: readonly string[] | undefined,
  rest: Partial<PlanRequest> = {},
): PlannedPanel =>
  planOfPanel(part, tried === undefined ? untried : { ...untried, triedHere: new Set(tried) }, {
    model,
    ...rest,
  });
const strongestOf = ({ steps }: PlannedPanel['plan']): number =>
  Math.max(...steps.map(({ combination }) => rungOf(combination.id)));

describe('repaint on which a mild step was tried', () => {
  const farther = () => plannedWith([MILD], { aim: 0.95 });

  test('is worked no stronger than that, and is told what would take it farther', () => {
    const { plan } = farther();
    expect(strongestOf(plan)).toBeLessThanOrEqual(rungOf(MILD));
    expect(strongestOf(plannedWith(undefined, { aim: 0.95 }).plan)).toBeGreaterThan(rungOf(MILD));
    expect(plan.verdict).toBe('lighter');
    const [first] = plan.reasons;
    expect(first).toMatchObject({ code: 'stronger-than-tried', value: 4 });
    expect(first?.text).toBe(
      `the aim takes a step stronger than ${MILD}, the strongest that was tried on this panel, or more than the 4.00 µm that may go: try the next rung on its spot first`,
    );
  });

  test('has stronger steps rejected for that, and milder ones for reasons of their own', () => {
    const { why } = farther();
    const stronger = why.rejected.filter(({ reason }) => reason.code === 'stronger-than-tried');
    expect(stronger.length).toBeGreaterThan(0);
    for (const { steps, reason, expected } of stronger) {
      expect(Math.max(...steps.map(({ combination }) => rungOf(combination.id)))).toBeGreaterThan(
        rungOf(MILD),
      );
      expect([reason.text, expected]).toEqual([
        `stronger than ${MILD}, the strongest that was tried on this panel: try it there first`,
        null,
      ]);
    }
    const weighed = why.rejected.filter(({ expected }) => expected !== null);
    expect(weighed.length).toBeGreaterThan(0);
    for (const { steps } of weighed) {
      expect(
        Math.max(...steps.map(({ combination }) => rungOf(combination.id))),
      ).toBeLessThanOrEqual(rungOf(MILD));
    }
    const free = plannedWith(undefined).why.rejected.map(({ reason }) => reason.code);
    expect(free).not.toContain('stronger-than-tried');
  });

  test('is left where that clears too little to be worth its film, as long as anything may go', () => {
    const deep = { defectsOf: () => [defect('swirl-marks', 4, 9)] };
    const left = plannedWith([MILD], deep).plan;
    expect([left.verdict, left.steps]).toEqual(['leave', []]);
    expect(left.reasons[0]).toMatchObject({
      code: 'stronger-than-tried',
      text: 'steps no stronger than those tried on this panel clear too little to be worth their film: try the next rung on its spot first',
    });
    const shallow = plannedWith([MILD], {
      ...deep,
      allowanceAt: (one) => ({
        ...one,
        boundBy: { ...one.boundBy, code: 'spot-depth' },
      }),
    }).plan;
    expect(shallow.reasons[0]?.text).toBe(
      'no deeper than its test spot went without colour, too little clears to be worth its film: work that spot deeper first',
    );
    const spent = plannedWith([MILD], {
      ...deep,
      allowanceAt: (one) => ({ ...one, budget: micrometres(0) }),
    }).plan;
    expect(spent.reasons[0]?.text).toMatch(/^nothing may go: /u);
    expect(plannedWith(undefined, deep).plan.reasons[0]?.code).not.toBe('stronger-than-tried');
  });
});

test('other paint, and an aim that is reached, are told nothing of what was tried', () => {
  const tried = at(rungs, 0);
  const codes = (...[verdict, with_]: [Parameters<typeof choiceReasons>[0], typeof tried?]) =>
    choiceReasons(verdict, part, {
      machines: model.machines,
      isHeldByFilm: true,
      isShort: true,
      tried: with_,
    }).map(({ code }) => code);
  expect(codes('lighter', tried)).toEqual(['stronger-than-tried']);
  const byDepth: PanelSurvey = { ...part, boundBy: { ...part.boundBy, code: 'spot-depth' } };
  const [told] = choiceReasons('lighter', byDepth, {
    machines: model.machines,
    isHeldByFilm: true,
    isShort: true,
    tried,
  });
  expect(told?.text).toMatch(
    /, or more than the 4\.00 µm that its spot showed free of colour: work that spot deeper, or try the next rung on its spot first$/,
  );
  expect(codes('lighter')).toEqual(['aim-out-of-reach']);
  expect(codes('polish', tried)).toEqual([]);
  expect(codes('hand', tried)).toEqual(['by-hand']);
});

test('a test spot of which all that was read rose is told as that, and as no film read only without any', () => {
  const gained = marks([110, 113], [111, 115]);
  const told = (rest: Parameters<typeof trial>[1], read = marks()) =>
    trialAdvice(
      [
        {
          trial: trial('da/foam-medium/medium', { cleared: 0.5, marks: read, ...rest }),
          removed: removedFilm(read, filmModel.measurement, model.spot.scatterDof),
        },
      ],
      model,
    ).map(({ code, text }) => [code, text]);
  expect(told({ gained })).toEqual([
    [
      'spot-film-gained',
      'A: what was read rose, so nothing is learnt from it of paint or rates, and it frees no panel: check the gauge, wipe off polish and wax, let it cool, read again',
    ],
  ]);
  expect(told({}).map(([code]) => code)).toEqual(['spot-no-film']);
  expect(told({ gained }, marks([112, 104], [110, 102]))).toEqual([]);
});
