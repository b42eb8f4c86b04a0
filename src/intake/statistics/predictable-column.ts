/**
 * Whether the numbers of a column follow from its first ones: they count the rows, in the file or on each panel anew,
 * stand alike on every panel, or are one number throughout. Films do not; how likely they would by chance says how
 * sure that is.
 */
import { groupBy } from '../../base/group-by.ts';
import { normalDensity } from '../../base/stats/normal.ts';
import { median, SIGMA_OF_MAD, sampleStandardDeviation } from '../../base/stats/summary.ts';
import { sum } from '../../base/sum.ts';

export type ColumnNumber = {
  readonly value: number;
  /** One unit of the last digit written. */
  readonly step: number;
};
/** Row by row; undefined where the row has none. */
export type NumberColumn = readonly (ColumnNumber | undefined)[];

export type Predictable = {
  readonly pattern: 'counts' | 'alike' | 'constant';
  /** Of readings doing so, such as the others of the table are. */
  readonly chance: number;
};

/** `panels`: which panel each row is of. Of fewer rows nothing is said. */
const fewestRows = 2;
/** One number in so many may be missing: a reading that was taken back. */
const rowsPerGap = 5;

export function predictable(
  column: NumberColumn,
  others: readonly NumberColumn[],
  panels: readonly string[],
): Predictable | undefined {
  const own = column.flatMap((cell, k) =>
    cell === undefined ? [] : [{ ...cell, panel: panels[k] ?? '' }],
  );
  if (own.length < fewestRows || own.length * 3 < column.length * 2) return undefined;
  const hit = chanceOfOne(column, others);
  const runs = [...groupBy(own, ({ panel }) => panel).values()].map((run) =>
    run.map(({ value }) => value),
  );
  const all = own.map(({ value }) => value);
  const found = [constant(all, hit), alike(runs, hit), counts([all], hit), counts(runs, hit)];
  const [likeliest] = found
    .flatMap((one) => one ?? [])
    .sort((one, other) => one.chance - other.chance);
  return likeliest;
}

/** That a reading is the one number that is foretold of it. */
function chanceOfOne(column: NumberColumn, others: readonly NumberColumn[]): number {
  const display = [column, ...others].flat().flatMap((cell) => cell?.step ?? []);
  const apart = others
    .map((other) => differences(other.flatMap((cell) => cell?.value ?? [])))
    .filter((one) => one.some((difference) => difference > 0))
    .flat();
  const spread = apart.length === 0 ? 0 : (SIGMA_OF_MAD * median(apart)) / Math.SQRT2;
  return spread === 0 ? 1 : Math.min(1, (PEAK * Math.min(...display)) / spread);
}

/** From row to row, so that one panel with filler widens nothing. */
const differences = (values: readonly number[]): readonly number[] =>
  values.slice(1).map((value, k) => Math.abs(value - (values[k] ?? 0)));

/** The density of a normal distribution at its mean, in units of its spread. */
export const PEAK = normalDensity(0);

/** 0 of one value. */
export const spreadOf = (values: readonly number[]): number =>
  values.length < 2 ? 0 : sampleStandardDeviation(values);

function constant(all: readonly number[], hit: number): Predictable | undefined {
  return all.every((value) => value === all[0])
    ? { pattern: 'constant', chance: hit ** (all.length - 1) }
    : undefined;
}

/** 101, 102, 103 or 10, 20, 30 on each panel: the longest foretells the others. */
function alike(runs: readonly (readonly number[])[], hit: number): Predictable | undefined {
  const [longest = []] = runs.toSorted((one, other) => other.length - one.length);
  if (runs.length < 2 || longest.length < 2) return undefined;
  if (runs.some((run) => run.some((value, k) => value !== longest[k]))) return undefined;
  const told = sum(runs.map(({ length }) => length)) - longest.length;
  return { pattern: 'alike', chance: hit ** told };
}

/** Up, or down where the newest reading stands first. However readings are spread, one order of all is theirs. */
function counts(runs: readonly (readonly number[])[], hit: number): Predictable | undefined {
  const [steps, values] = [runs.flatMap(stepsOf), runs.flat()];
  const [first = 0] = steps;
  const up = Math.sign(first);
  if (up === 0 || values.some((value) => !Number.isInteger(value))) return undefined;
  if (steps.some((step) => step * up < 1)) return undefined;
  const gaps = sum(steps.map((step) => step * up - 1));
  if (gaps * rowsPerGap > values.length) return undefined;
  const told = steps.filter((step) => step === up).length;
  const ordered = runs.reduce((chance, run) => chance / factorial(run.length), 1);
  return { pattern: 'counts', chance: Math.min(hit ** told, ordered) };
}

const stepsOf = (run: readonly number[]): readonly number[] =>
  run.slice(1).map((value, k) => value - (run[k] ?? 0));

const factorial = (count: number): number => {
  let product = 1;
  for (let k = 2; k <= Math.min(count, 100); k += 1) product *= k;
  return product;
};
