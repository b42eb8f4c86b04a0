/** What a plan foretells of a panel, removal and correction, against what the true paint and marks give. */
import { writeFileSync } from 'node:fs';
import { afterAll, describe, expect, test } from 'vitest';
import { normalCdf } from '../../src/base/stats/normal.ts';
import { mean } from '../../src/base/stats/summary.ts';
import { medianDepth } from '../../src/correction/defects.ts';
import type { PanelPlan } from '../../src/correction/plan/plan.ts';
import { resolveSettings } from '../../src/tasks/settings/settings.ts';
import { normal, seededRandom } from '../samples/seeded-random.ts';
import { assumedSwirls, planCars } from './run-cars.ts';
import { assumedWorld, drawPaint } from './true-cars.ts';

const CARS = 250;
/** Paints that each car is given, one after the other: planning takes the time, and does not hang on them. */
const PAINTS = 60;
const SEED = 31_337;
/** As the model has it: marks of one car by a factor, each about that. */
const DEPTH_SCALE_LOG_SD = 0.5;
const DEPTH_LOG_SD = 0.6;

const settings = resolveSettings({ typed: {}, job: undefined, shops: [] });
const depth = medianDepth(assumedSwirls(settings));

type Worked = {
  readonly plan: PanelPlan;
  readonly taken: number;
  /** Share of its marks that lie in what went. */
  readonly cleared: number;
};

const random = seededRandom(SEED);
const planned = planCars(assumedWorld, CARS, random).map(({ plans }) =>
  plans.filter(({ steps }) => steps.length > 0),
);

/** Every panel that is worked, car by car and paint by paint. */
const workedOn = (softness: number): readonly (readonly Worked[])[] =>
  planned.flatMap((plans) =>
    Array.from({ length: PAINTS }, () => {
      const removedBy = drawPaint({ ...assumedWorld, softness }, random);
      const deepest = depth * Math.exp(DEPTH_SCALE_LOG_SD * normal(random));
      return plans.map((plan) => {
        const taken = removedBy(plan);
        return { plan, taken, cleared: normalCdf(Math.log(taken / deepest) / DEPTH_LOG_SD) };
      });
    }),
  );

type Row = {
  readonly name: string;
  readonly worked: number;
  readonly within: number;
  readonly under: number;
  readonly over: number;
  /** Mean of what went less the mean foretold, as a share of it. */
  readonly removalOff: number;
  readonly expected: number;
  readonly obtained: number;
  /** Standard errors over cars, as panels of one share their paint and their marks. */
  readonly errors: { readonly within: number; readonly removal: number; readonly cleared: number };
};

const shareOf = (all: readonly Worked[], is: (one: Worked) => boolean): number =>
  all.filter(is).length / all.length;

/** Of a figure that each car has by all its panels. */
function errorOver(cars: readonly (readonly Worked[])[], of: (one: Worked) => number): number {
  const size = mean(cars.map((car) => car.length));
  const sums = cars.map((car) => car.reduce((sum, one) => sum + of(one), 0));
  const middle = mean(cars.flat().map(of));
  const squares = cars.map((car, i) => ((sums[i] ?? 0) - middle * car.length) ** 2);
  return Math.sqrt(mean(squares) / cars.length) / size;
}

function rowOf(
  name: string,
  all: readonly (readonly Worked[])[],
  of: (one: Worked) => boolean,
): Row {
  const cars = all.map((car) => car.filter(of)).filter((car) => car.length > 0);
  const panels = cars.flat();
  const isWithin = ({ plan: { removal }, taken }: Worked): boolean =>
    taken >= removal.low && taken <= removal.high;
  const off = ({ plan: { removal }, taken }: Worked): number => taken / removal.mean - 1;
  const missed = ({ plan: { expected }, cleared }: Worked): number => cleared - expected;
  return {
    name,
    worked: panels.length / PAINTS,
    within: shareOf(panels, isWithin),
    under: shareOf(panels, ({ plan: { removal }, taken }) => taken < removal.low),
    over: shareOf(panels, ({ plan: { removal }, taken }) => taken > removal.high),
    removalOff: mean(panels.map(off)),
    expected: mean(panels.map(({ plan: { expected } }) => expected)),
    obtained: mean(panels.map(({ cleared }) => cleared)),
    errors: {
      within: errorOver(cars, (one) => (isWithin(one) ? 1 : 0)),
      removal: errorOver(cars, off),
      cleared: errorOver(cars, missed),
    },
  };
}

const isOneStep = ({ plan: { steps } }: Worked): boolean => steps.length === 1;
const usual = workedOn(1);
const one = rowOf('one step', usual, isOneStep);
const several = rowOf('several steps', usual, (panel) => !isOneStep(panel));
const softer = rowOf('one step, paint 1.5 times softer', workedOn(1.5), isOneStep);
const rows = [one, several, softer];

describe('the removal that a plan foretells', () => {
  test('holds nine cases of ten between its ends where one step is worked, as many under as over', () => {
    expect(one.worked).toBeGreaterThan(50);
    expect(Math.abs(one.within - 0.9)).toBeLessThan(3 * one.errors.within);
    expect(one.errors.within).toBeLessThan(0.01);
    expect(Math.abs(one.under - one.over)).toBeLessThan(6 * one.errors.within);
  });

  test('is as much as goes, on average', () => {
    expect(Math.abs(one.removalOff)).toBeLessThan(3 * one.errors.removal);
    expect(one.errors.removal).toBeLessThan(0.03);
  });

  test('of several steps holds no fewer: what is doubted of each is taken as shared', () => {
    expect(several.worked).toBeGreaterThan(200);
    expect(several.within).toBeGreaterThan(0.9 - 3 * several.errors.within);
    expect(several.within).toBeLessThan(0.99);
  });

  test('is passed more often on paint that is softer, so that the count can fail', () => {
    expect(softer.over).toBeGreaterThan(2 * one.over);
  });
});

describe('the correction that a plan expects', () => {
  test('of one step is what is obtained, on average', () => {
    expect(Math.abs(one.obtained - one.expected)).toBeLessThan(3 * one.errors.cleared);
    expect(one.errors.cleared).toBeLessThan(0.01);
    expect(softer.obtained).toBeGreaterThan(softer.expected + 0.03);
  });

  test('of several steps is a little less than is obtained, as their doubt is stated too great', () => {
    const more = several.obtained - several.expected;
    expect(more).toBeGreaterThan(-3 * several.errors.cleared);
    expect(more).toBeLessThan(0.03 + 3 * several.errors.cleared);
  });
});

const percent = (share: number, digits = 1): string => `${(100 * share).toFixed(digits)} %`;
const told = ({ name, worked, within, under, over, removalOff, expected, obtained, errors }: Row) =>
  `| ${[
    name,
    worked,
    `${percent(within)} ± ${percent(3 * errors.within)}`,
    percent(under),
    percent(over),
    `${percent(removalOff)} ± ${percent(3 * errors.removal)}`,
    percent(expected),
    `${percent(obtained)} ± ${percent(3 * errors.cleared)}`,
  ].join(' | ')} |`;

afterAll(() => {
  if (process.env['RECORD'] === undefined) return;
  writeFileSync(
    new URL('PLANS.md', import.meta.url),
    `# What plans foretell

${CARS} cars of eleven panels as in RESULTS.md, planned at the defaults, each worked on ${PAINTS} paints one
after the other: a hardness of its own (ln-SD 0.35), a deviation of each combination (0.4) and of each step
(0.15), marks deeper or less deep by a factor of the car (0.5), each about that (0.6). Written by the
simulation under \`RECORD=1\`; the seed is fixed.

- *within*: of the panels worked, what went lies in the 90 % range that the plan states; *under*, *over*:
  it went by less, by more. ± three standard errors, over cars.
- *removal off*: the mean of what went against the mean foretold.
- *expected*, *obtained*: the share of the marks that the plan expects to clear, and that cleared.

| panels | worked | within | under | over | removal off | expected | obtained |
|---|---|---|---|---|---|---|---|
${rows.map(told).join('\n')}
`,
  );
});
