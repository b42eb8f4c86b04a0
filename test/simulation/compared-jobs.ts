/**
 * Cars that are read, planned, polished to the plan and read again: the word of the comparison on one more
 * set, held against what that set then truly leaves.
 */
import { remembered } from '../../src/base/kept.ts';
import { ladder } from '../../src/correction/removal/combination.ts';
import { correctionModel } from '../../src/formats/models.ts';
import { planRecord } from '../../src/report/plan/plan-record.ts';
import { planFiles } from '../../src/tasks/plan/plan-files.ts';
import { normal, seededRandom } from '../samples/seeded-random.ts';
import { compared, type Film, readingsText, requestOf } from '../tasks/comparing.ts';
import { elevenPanels } from './run-cars.ts';
import type { Random } from './true-cars.ts';

/** Thinnest published factory clear 35 less 12.7 (GM 1991). */
const CLEAR_FLOOR = 22.3;
/** As the model assumes: SD 6 and 10 over all points, of which √12.5 within a panel each. */
const WITHIN_SD = Math.sqrt(12.5);
const CLEAR_SD = Math.sqrt(36 - 12.5);
const UNDER_SD = Math.sqrt(100 - 12.5);
const Z_05 = 1.6448536;
const POINTS = 5;

export type Jobs = {
  readonly cars: number;
  readonly seed: number;
  readonly marked: boolean;
  /** Whether the plan is given to the comparison, or only the readings. */
  readonly withPlan: boolean;
};

export type WordCount = {
  panels: number;
  goOn: number;
  stop: number;
  unresolved: number;
  /** Of those to go on with: clear under its floor on the thinnest 5 % after one more set. */
  breached: number;
};

type Planned = {
  readonly panel: string;
  readonly steps: readonly {
    readonly machine: string;
    readonly pad: string;
    readonly product: string;
    readonly removal_um: number;
  }[];
};

export async function runJobs({ cars, seed, marked, withPlan }: Jobs): Promise<WordCount> {
  const count: WordCount = { panels: 0, goOn: 0, stop: 0, unresolved: 0, breached: 0 };
  for (let i = 0; i < cars; i += 1) {
    countCar(streamsOf(seed, i), { marked, withPlan }, count);
    // The runner wants to hear from a long test now and then.
    await new Promise(setImmediate);
  }
  return count;
}

/** A car has chance of its own, so that what is planned of one changes no other; and so have readings, rates and sets. */
type Streams = { readonly random: Random; readonly rates: Random; readonly sets: Random };

function streamsOf(seed: number, car: number): Streams {
  const stream = (of: number): Random => seededRandom(1_000_003 * seed + 3 * car + of);
  return { random: stream(0), rates: stream(1), sets: stream(2) };
}

const job = { finish: 'clear-over-base', taken_um: 0 };

function countCar(
  { random, rates, sets }: Streams,
  { marked, withPlan }: Pick<Jobs, 'marked' | 'withPlan'>,
  count: WordCount,
): void {
  const ids = elevenPanels.panels.map(({ id }) => id);
  const clear = new Map(ids.map((id) => [id, 42 + CLEAR_SD * normal(random)]));
  const films = ids.map((id) => (clear.get(id) ?? 0) + 70 + UNDER_SD * normal(random));
  const draw = (film: number): readonly number[] =>
    Array.from({ length: POINTS }, () => film + WITHIN_SD * (normal(random) + normal(random)));
  const first = films.map(draw);
  const second = marked ? first : films.map(draw);
  const calibration = 2 * random() - 1;
  const read = (panels: readonly (readonly number[])[], taken: (id: string) => number): Film =>
    Object.fromEntries(
      panels.map((values, at) => {
        const id = ids[at] ?? '';
        return [
          id,
          values.map((value) => {
            const film = value - taken(id);
            return film + calibration * (1 + 0.02 * film) + 1.5 * normal(random);
          }),
        ];
      }),
    );
  const before = readingsText(read(first, () => 0));
  const plan = planOf(before);
  const rateOf = drawRates(rates);
  const set = (id: string, foretold: number): number =>
    foretold * rateOf(id) * Math.exp(0.15 * normal(sets));
  const removed = new Map(
    plan.panels.map(({ panel, steps }) => [
      panel,
      steps.reduce(
        (sum, { machine, pad, product, removal_um }) =>
          sum + set(`${machine}/${pad}/${product}`, removal_um),
        0,
      ),
    ]),
  );
  const after = readingsText(read(second, (id) => removed.get(id) ?? 0));
  const result = compared({
    visits: [before, after],
    marked,
    job,
    ...(withPlan ? { plan: plan.text } : {}),
  });
  for (const { comparison, verdict, oneMore } of result.panels) {
    const { id } = comparison.panel;
    count.panels += 1;
    if (verdict === 'stop') count.stop += 1;
    if (verdict === 'unresolved') count.unresolved += 1;
    if (verdict !== 'go-on' || oneMore === null) continue;
    count.goOn += 1;
    // What the set takes on usual paint: what was foretold of it here knows of the paint.
    const usual = USUAL_SET.get(oneMore.combination);
    if (usual === undefined) throw new Error(`no rate of ${oneMore.combination}`);
    const left = (clear.get(id) ?? 0) - (removed.get(id) ?? 0) - set(oneMore.combination, usual);
    if (left - Z_05 * WITHIN_SD < CLEAR_FLOOR) count.breached += 1;
  }
}

/** What a set takes on usual paint, µm. */
const USUAL_SET = new Map(ladder(correctionModel).map(({ id, perSet }) => [id, perSet]));

/** One hardness of the car, one own deviation of each combination: drawn before it is known which are worked. */
function drawRates(random: Random): (combination: string) => number {
  const hardness = Math.exp(0.35 * normal(random));
  const own = new Map([...USUAL_SET.keys()].map((id) => [id, Math.exp(0.4 * normal(random))]));
  return (combination) => {
    const deviation = own.get(combination);
    if (deviation === undefined) throw new Error(`no rate of ${combination}`);
    return hardness * deviation;
  };
}

type PlanMade = { readonly text: string; readonly panels: readonly Planned[] };

/** Kept: the same cars are compared with their plan and without it. */
const planOf = remembered((readings: string): PlanMade => {
  const request = requestOf({ visits: [readings], job });
  const [planned] = planFiles({ ...request, defects: undefined }).value ?? [];
  if (planned === undefined) throw new Error('no plan');
  const text = JSON.stringify(
    planRecord(planned.result, planned.panels, { version: '0', diagnostics: [] }),
  );
  return { text, panels: (JSON.parse(text) as { panels: readonly Planned[] }).panels };
});
