/** What became of a spoiled file, held against what is known to be in it. */
import type { Outcome } from '../../../src/base/diagnostics.ts';
import type { GaugeReadings } from '../../../src/intake/read-gauge-file.ts';
import type { ExcludedClass, Expected, Instance, TrueReading, Truth } from './kind.ts';

export type Verdict =
  | 'right'
  /** Refused with file, line, column, the user's text and a remedy. */
  | 'refused'
  /** Refused, and one of these is not there, or another place is shown than the one at fault. */
  | 'misplaced'
  /** Read right, without the decision being stated. */
  | 'unsaid'
  /** Read right, with a cell left out under another class than its own, or under none. */
  | 'misclassed'
  /** Readings are lost, and as many cells are reported as left out. */
  | 'lost aloud'
  /** Anything else that differs from the truth. */
  | 'wrong and quiet'
  /** Nobody could settle the file; it was read. */
  | 'guessed'
  | 'slow'
  | 'threw';

export type Judgement = { readonly verdict: Verdict; readonly why: string };

/** Nothing that anybody relies on may come to these. */
export const disasters: readonly Verdict[] = ['wrong and quiet', 'guessed', 'threw'];

type Found = {
  readonly vehicle: string | null;
  readonly panel: string;
  readonly point: string;
  readonly um: number;
};

/** Names are compared in one form: composed letters, single blanks. */
const folded = (text: string): string => text.normalize('NFC').replace(/\s+/g, ' ').trim();
const TOLERANCE_UM = 1e-9;

const keyOf = ({ vehicle, panel, point }: Found, withPoint: boolean): string =>
  JSON.stringify([vehicle, folded(panel), withPoint ? folded(point) : '']);

/** The members of `all` that have no partner in `others`: same place, same value. */
function unmatched(
  all: readonly Found[],
  others: readonly Found[],
  withPoint: boolean,
): readonly Found[] {
  const free = new Map<string, number[]>();
  for (const one of others) {
    const key = keyOf(one, withPoint);
    free.set(
      key,
      [...(free.get(key) ?? []), one.um].sort((a, b) => a - b),
    );
  }
  return [...all]
    .sort((a, b) => a.um - b.um)
    .filter((one) => {
      const values = free.get(keyOf(one, withPoint)) ?? [];
      const at = values.findIndex((um) => Math.abs(um - one.um) <= TOLERANCE_UM);
      if (at >= 0) values.splice(at, 1);
      return at < 0;
    });
}

/** Which values share a point, whatever the point is called. */
const partition = (readings: readonly Found[]): string => {
  const groups = new Map<string, number[]>();
  for (const one of readings) {
    const key = keyOf(one, true);
    groups.set(key, [...(groups.get(key) ?? []), Math.round(one.um * 1e6)]);
  }
  return [...groups.values()]
    .map((group) => group.sort((a, b) => a - b).join(' '))
    .sort()
    .join('|');
};

const shownReading = ({ vehicle, panel, point, um }: Found): string =>
  `${vehicle === null ? '' : `${vehicle}/`}${panel.slice(0, 40)}/${point}=${um}`;

type Difference = { readonly lost: number; readonly invented: number; readonly text: string };

function difference(
  truth: readonly TrueReading[],
  points: Truth['points'],
  got: readonly Found[],
): Difference | undefined {
  const withPoint = points === 'stated';
  const lost = unmatched(truth, got, withPoint);
  const invented = unmatched(got, truth, withPoint);
  if (lost.length === 0 && invented.length === 0) {
    const raw = new Set(got.map(({ panel }) => panel)).size;
    const names = new Set(got.map(({ panel }) => panel.normalize('NFC'))).size;
    if (raw !== names) return { lost: 0, invented: 1, text: 'one name in two forms is two panels' };
    if (points === 'grouped' && partition(truth) !== partition(got))
      return { lost: 0, invented: 1, text: 'repeats and points are mixed up' };
    return undefined;
  }
  const some = (list: readonly Found[]) => list.slice(0, 3).map(shownReading).join(', ');
  return {
    lost: lost.length,
    invented: invented.length,
    text: `${lost.length} lost (${some(lost)}), ${invented.length} invented (${some(invented)})`,
  };
}

const statements = ({ value, diagnostics }: Outcome<GaugeReadings>): string =>
  [
    ...(value?.decisions.evidence ?? []),
    ...diagnostics
      .filter(({ severity }) => severity !== 'note')
      .flatMap(({ message, hint }) => [message, hint ?? '']),
  ].join('\n');

function judgeRefusal(
  { truth, bytes }: Instance,
  { diagnostics }: Outcome<GaugeReadings>,
): Judgement {
  const errors = diagnostics.filter(({ severity }) => severity === 'error');
  const [first] = errors;
  if (first === undefined) return { verdict: 'misplaced', why: 'no value and no error' };
  const said = `${first.at?.line}:${first.at?.column} ${first.code} ${first.message}`.slice(0, 220);
  const nothing = bytes.every((byte) => byte <= 0x20 || byte >= 0x80);
  const missing = [
    first.at?.file === undefined ? 'file' : '',
    nothing || first.at?.line !== undefined ? '' : 'line',
    nothing || first.at?.column !== undefined ? '' : 'column',
    nothing || first.at?.lineText !== undefined ? '' : 'lineText',
    first.hint === undefined ? 'hint' : '',
  ].filter((name) => name !== '');
  if (missing.length > 0)
    return { verdict: 'misplaced', why: `without ${missing.join(', ')}: ${said}` };
  if (truth.refusedAt !== undefined && errors.every(({ at }) => at?.line !== truth.refusedAt))
    return { verdict: 'misplaced', why: `line ${truth.refusedAt} is at fault: ${said}` };
  const { hint } = truth;
  if (hint !== undefined && errors.every((one) => !hint.test(one.hint ?? '')))
    return { verdict: 'misplaced', why: `no hint of ${hint.source}: ${said}; ${first.hint}` };
  return { verdict: 'refused', why: `${said}; ${first.hint}` };
}

/** The true exclusions that no cell of the right class stands for. */
function unclassed(
  wanted: readonly (readonly ExcludedClass[])[],
  { excluded }: GaugeReadings,
): number {
  const classes = excluded.map((cell): string => ('class' in cell ? String(cell.class) : 'none'));
  return wanted.filter((allowed) => {
    const names: readonly string[] = allowed;
    const at = classes.findIndex((one) => names.includes(one));
    if (at >= 0) classes.splice(at, 1);
    return at < 0;
  }).length;
}

function judgeReading(
  expected: Expected,
  { truth }: Instance,
  value: GaugeReadings,
  outcome: Outcome<GaugeReadings>,
): Judgement {
  const got = value.readings.map(({ vehicle, panel, point, thickness }) => ({
    vehicle,
    panel,
    point,
    um: Number(thickness),
  }));
  if (expected === 'refused')
    return { verdict: 'guessed', why: `read as ${got.slice(0, 3).map(shownReading).join(', ')}` };
  const said = statements(outcome);
  if (
    truth.others?.some(
      ({ readings, says }) =>
        says.test(said) && difference(readings, truth.points, got) === undefined,
    )
  )
    return { verdict: 'right', why: '' };
  const differs = difference(truth.readings, truth.points, got);
  const wanted = truth.excluded ?? [];
  if (differs !== undefined) {
    const told = value.excluded.length - wanted.length >= differs.lost;
    return {
      verdict: told && differs.invented === 0 ? 'lost aloud' : 'wrong and quiet',
      why: differs.text,
    };
  }
  if (truth.says !== undefined && !truth.says.test(said))
    return { verdict: 'unsaid', why: `nothing says ${truth.says.source}` };
  const bare = unclassed(wanted, value);
  if (bare === 0) return { verdict: 'right', why: '' };
  const classes = value.excluded.map((cell) => ('class' in cell ? String(cell.class) : 'none'));
  return {
    verdict: 'misclassed',
    why: `${bare} of ${wanted.length} not ${wanted[0]?.join('/')}: [${classes.slice(0, 5).join(' ')}]`,
  };
}

export function judge(
  expected: Expected,
  instance: Instance,
  outcome: Outcome<GaugeReadings>,
  ms: number,
): Judgement {
  if (instance.withinMs !== undefined && ms > instance.withinMs)
    return {
      verdict: 'slow',
      why: `${Math.round(ms)} ms of ${instance.withinMs} (${outcome.value === undefined ? 'refused' : 'read'})`,
    };
  return outcome.value === undefined
    ? judgeRefusal(instance, outcome)
    : judgeReading(expected, instance, outcome.value, outcome);
}
