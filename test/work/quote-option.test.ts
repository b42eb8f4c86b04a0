import { describe, expect, test } from 'vitest';
import { remark } from '../../src/base/remark.ts';
import { micrometres } from '../../src/base/units.ts';
import type { PartDecision } from '../../src/correction/plan/decide-car.ts';
import type { PanelPlan, Plan } from '../../src/correction/plan/plan.ts';
import { workModel } from '../../src/formats/models.ts';
import { chargedTime, overrunChance } from '../../src/work/chargeable.ts';
import { estimateWork } from '../../src/work/estimate-work.ts';
import type { PriceList } from '../../src/work/price-list.ts';
import {
  aimOutcome,
  curvePoint,
  marginal,
  missingRates,
  type QuoteOption,
  quoteOption,
} from '../../src/work/quote-option.ts';
import { bareList, flat } from './price-lists.ts';
import { MEDIUM, noRemoval, panel, plan, step } from './small-plans.ts';

const um = micrometres;
const steps = [step(MEDIUM, 2, 10)];
const taking = (mean: number): PanelPlan['removal'] => ({ ...noRemoval, mean: um(mean) });

/** A panel of so many sections that is worked, and what it gets and gives. */
const part = (id: string, sections: number, given: Partial<PanelPlan>): PanelPlan => ({
  ...panel(id, sections, steps),
  ...given,
});
const bonnet = part('bonnet', 2, { expected: 0.8, removal: taking(2), risk: 0.03 });
const roof = part('roof', 1, { expected: 0.5, removal: taking(0.5), risk: 0.01 });
const sill = panel('sill', 1);
const withSurvey = (one: PanelPlan, survey: Partial<PanelPlan['survey']>): PanelPlan => ({
  ...one,
  survey: { ...one.survey, ...survey },
});

describe('what a car gets and gives under an aim', () => {
  test('is the mean of its panels, each by its area', () => {
    const { expected, spent } = aimOutcome(plan(bonnet, roof));
    expect(expected).toBeCloseTo((2 * 0.8 + 1 * 0.5) / 3, 12);
    expect(spent).toBeCloseTo((2 * 2 + 1 * 0.5) / 3, 12);
  });

  test('leaves least where least stands after the work, and risks most where the risk is highest', () => {
    const { left, risk } = aimOutcome(plan(bonnet, roof));
    // Both were read alike: the least is left where the most goes.
    expect(left).toBeCloseTo((bonnet.survey.topcoat?.clear.mean ?? 0) - 2, 12);
    expect(risk).toBe(0.03);
  });

  test('counts a panel that is left in the means, and neither its film nor its risk', () => {
    const leftAlone = { ...sill, expected: 0, risk: 0.4, reasons: [] };
    const { expected, spent, polished, left, risk } = aimOutcome(plan(bonnet, leftAlone));
    expect(expected).toBeCloseTo((2 * 0.8) / 3, 12);
    expect(spent).toBeCloseTo((2 * 2) / 3, 12);
    expect(polished).toEqual({ expected: 0.8, spent: 2 });
    expect([left, risk]).toEqual([(bonnet.survey.topcoat?.clear.mean ?? 0) - 2, 0.03]);
  });

  test('is silent on what is left and on risk where nothing is known of the topcoat', () => {
    const unknown = { ...withSurvey(bonnet, { topcoat: null }), risk: null };
    const { left, risk, spent } = aimOutcome(plan(unknown));
    expect([left, risk, spent]).toEqual([null, null, 2]);
  });

  test('leaves out what polishing could not help: unread, covered, failed, or without a mark', () => {
    const { facts } = sill.survey;
    const because = (code: string) => ({ ...sill, reasons: [remark(code, 'so it is')] });
    const beside = [
      withSurvey(sill, { points: [] }),
      withSurvey(sill, { facts: { ...facts, covered: true } }),
      because('clear-coat-failure'),
      because('nothing-to-correct'),
    ];
    for (const one of beside) {
      expect(aimOutcome(plan(bonnet, one)), one.reasons[0]?.code).toEqual(aimOutcome(plan(bonnet)));
      expect(aimOutcome(plan(one))).toEqual({
        expected: 0,
        spent: null,
        polished: null,
        left: null,
        risk: null,
      });
    }
    expect(aimOutcome(plan(bonnet, because('within-budget')))).not.toEqual(
      aimOutcome(plan(bonnet)),
    );
  });
});

describe('a point of a curve', () => {
  const none = (one: PanelPlan, code: string) =>
    ({ kind: 'none', part: one.survey, reason: remark(code, 'so it is') }) as PartDecision;
  const worked = (one: PanelPlan, correction: number, mean: number) =>
    ({ kind: 'work', part: one.survey, taken: { correction, mean } }) as PartDecision;
  const aim = { name: '70 %', share: 0.7 };

  test('has the correction and the film of what is decided, by area, and nothing of what is left', () => {
    const point = curvePoint(aim, [
      worked(bonnet, 0.8, 2),
      none(roof, 'within-budget'),
      none(sill, 'nothing-to-correct'),
    ]);
    expect(point.aim).toBe(aim);
    expect(point.expected).toBeCloseTo((2 * 0.8) / 3, 12);
    expect(point.spent).toBeCloseTo((2 * 2) / 3, 12);
  });

  test('takes no film, not even none, where nothing could be corrected', () => {
    expect(curvePoint(aim, [none(sill, 'nothing-to-correct')])).toEqual({
      aim,
      expected: 0,
      spent: null,
    });
  });
});

describe('a row of a quote', () => {
  const aim = { name: 'correct', share: 0.85 };
  const priced: PriceList = { ...bareList, labour: flat(6_000n) };
  const row = (of: Plan, prices: PriceList | null = priced, hoursShare = 0.8): QuoteOption =>
    quoteOption(
      aim,
      { plan: of, work: estimateWork(of, workModel) },
      { prices, hoursShare, equalShortfall: 0.05 },
    );

  test('charges the hours within which so many of such jobs are done, and says the chance of more', () => {
    const { charged, overrun, work } = row(plan(bonnet));
    expect(charged).toBe(chargedTime(work.job.time, 0.8));
    expect(overrun).toBe(overrunChance(work.job.time, charged ?? fail()));
    expect(overrun).toBeCloseTo(0.2, 2);
  });

  test('has the price of those hours at the rate of the list', () => {
    const { charged, priced: job } = row(plan(bonnet));
    // 60.00 an hour is a unit of money a minute.
    expect(Number(job?.total)).toBeCloseTo(100 * (charged ?? Number.NaN), -1);
  });

  test('has no price without a list, nor with one that lacks a rate', () => {
    expect(row(plan(bonnet), null).priced).toBeNull();
    const partly = { bySkill: new Map([['polish' as const, 6_000n]]), other: null };
    const some = { ...bareList, labour: partly };
    const { priced: job, charged, work } = row(plan(bonnet), some);
    expect(job).toBeNull();
    expect(charged).toBeGreaterThan(0);
    const skills = new Set(work.stages.map(({ stage }) => stage.skill));
    expect(missingRates(work, some)).toEqual([...skills].filter((skill) => skill !== 'polish'));
    expect(missingRates(work, some).length).toBeGreaterThan(0);
    expect(missingRates(work, priced)).toEqual([]);
  });

  test('charges nothing where nothing is touched, and the whole job where one place is', () => {
    expect(row(plan(sill))).toMatchObject({ charged: null, overrun: null, priced: null });
    const spot = { steps } as unknown as PanelPlan['local'][number];
    const atOnePlace = row(plan({ ...sill, local: [spot] }));
    expect(atOnePlace.charged).toBeGreaterThan(0);
    expect(atOnePlace.priced).not.toBeNull();
  });

  test('names the panels that fall short of the aim by more than counts as none', () => {
    const short = part('boot', 1, { aimed: 0.85, expected: 0.79 });
    const even = part('roof', 1, { aimed: 0.8, expected: 0.75 });
    const unread = withSurvey(short, { points: [] });
    expect(row(plan(short, even, unread)).short).toEqual([short]);
  });
});

describe('what each further per cent costs', () => {
  const point = (expected: number, spent: number | null, total: bigint | null) =>
    ({
      expected,
      spent: spent === null ? null : um(spent),
      priced: total === null ? null : { total },
    }) as Parameters<typeof marginal>[0];

  test('is the film and the price between two rows over the per cents between them', () => {
    const further = marginal(point(0.5, 1, 10_000n), point(0.75, 2, 20_001n));
    expect(further?.film).toBeCloseTo(1 / 25, 12);
    // 10,001 over 25: 400.04.
    expect(further?.price).toBe(400n);
    // 10,013 over 25: 400.52.
    expect(marginal(point(0.5, 1, 10_000n), point(0.75, 2, 20_013n))?.price).toBe(401n);
  });

  test('follows from the per cents as a record shows them, to its last figure', () => {
    const further = marginal(point(0.61123456, 1, 0n), point(0.82162341, 2, 22_354n));
    // 82.162341 - 61.123456 = 21.038885; 22,354 over it is 1062.51; over 21.04 it would be 1062.45.
    expect(further?.price).toBe(1063n);
  });

  test('is nothing to tell where the second corrects no more, or either takes no film to speak of', () => {
    const [from, to] = [point(0.5, 1, 100n), point(0.75, 2, 200n)];
    expect(marginal(to, from)).toBeNull();
    expect(marginal(from, point(0.5004, 2, 200n))).toBeNull();
    expect(marginal(from, point(0.5006, 2, 200n))).not.toBeNull();
    expect(marginal(point(0.5, null, 100n), to)).toBeNull();
    expect(marginal(from, point(0.75, null, 200n))).toBeNull();
  });

  test('has no price where either row has none', () => {
    const [from, to] = [point(0.5, 1, 100n), point(0.75, 2, 200n)];
    expect(marginal(point(0.5, 1, null), to)).toEqual({ film: 0.04, price: null });
    expect(marginal(from, point(0.75, 2, null))).toEqual({ film: 0.04, price: null });
  });
});

const fail = (): never => {
  throw new Error('it is charged');
};
