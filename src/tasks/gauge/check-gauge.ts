/** Readings of shims, of one check or of one before and one after the work → what the gauge is worth. */
import { error, found, hasErrors, type Outcome, warning } from '../../base/diagnostics.ts';
import { spoken } from '../../base/remark.ts';
import { type Sentence, says, um } from '../../base/sentence.ts';
import {
  type LengthUnit,
  type Micrometres,
  micrometres,
  milToMicrometres,
} from '../../base/units.ts';
import {
  type AdjustedCheck,
  checkAdjusted,
  fitAdjustment,
  type GaugeAdjustment,
} from '../../film/gauge/gauge-adjustment.ts';
import {
  checkGauge,
  type Drift,
  driftBetween,
  type GaugeCheck,
  type GaugeVerdict,
  overallVerdict,
  type PermittedError,
  type Repeatability,
  reachesFilm,
  repeatabilityOver,
  whereTested,
} from '../../film/gauge/gauge-check.ts';
import { displayStep } from '../../film/panel-points.ts';
import type { Gauge } from '../../formats/gauge.ts';
import {
  type GaugeCheckReading,
  type GaugeChecks,
  type GaugeCheckTime,
  readGaugeChecks,
} from '../../intake/read-gauge-checks.ts';
import { inputsOf, type LoadedFile, type ReadInput } from '../read/read-request.ts';
import type { Assumption } from '../settings/assumption.ts';
import type { Settings } from '../settings/settings.ts';
import { permittedText } from './gauge-words.ts';
import { keyedText } from './keyed-checks.ts';

export type CheckGaugeRequest = {
  /** One, or that of before the work and that of after it. */
  readonly files: readonly LoadedFile[];
  readonly settings: Pick<Settings, 'film' | 'readingUnit'>;
  /** What is known of the gauge already: its maker's statement, its name. */
  readonly gauge: Gauge | undefined;
  /** As typed; it stands above everything else. */
  readonly permitted: Partial<PermittedError>;
  readonly shimUncertainty: Micrometres | undefined;
  readonly adjust: boolean;
};

export type GaugeRun = { readonly check: GaugeCheckTime | null; readonly result: GaugeCheck };

export type CheckedGauge = {
  readonly inputs: readonly ReadInput[];
  readonly assumptions: readonly Assumption[];
  readonly gauge: Gauge | undefined;
  readonly verdict: GaugeVerdict;
  /** Whether a shim was as thick as a film, and from where one is. */
  readonly reached: boolean;
  readonly filmShim: Micrometres;
  readonly permitted: PermittedError;
  /** 0 where the readings show none. */
  readonly step: Micrometres;
  /** Undefined where no shim was read twice. */
  readonly repeatability: Repeatability | undefined;
  readonly runs: readonly GaugeRun[];
  /** Empty where there was one check only. */
  readonly drift: readonly Drift[];
  readonly adjustment: GaugeAdjusted | null;
  /** Of readings that no gauge shows; null where there is none. */
  readonly keyed: Sentence | null;
};

export type GaugeAdjusted = {
  readonly line: GaugeAdjustment;
  /** Different shims it rests on. */
  readonly shims: number;
  /** What the checks say of the adjusted readings, in the order of all runs' shims. */
  readonly left: AdjustedCheck;
};

export function checkGaugeFiles(request: CheckGaugeRequest): Outcome<CheckedGauge> {
  const read = readChecks(request);
  if (read.value === undefined) return { diagnostics: read.diagnostics };
  const { readings, unit } = read.value;
  const permitted = permittedError(request);
  const step = stepOf(readings, unit, request.gauge);
  const { repeatability: assumedRepeatability, filmShim } = request.settings.film.measurement;
  const runs = runsOf(readings).map(({ check, own }) => ({
    check,
    result: checkGauge(own, { permitted: permitted.value, assumedRepeatability, step }),
  }));
  const [before, after] = runs;
  const drift =
    before === undefined || after === undefined ? [] : driftBetween(before.result, after.result);
  const adjustment = request.adjust ? adjust(runs, drift) : found(null);
  const reached = reachesFilm(
    runs.flatMap(({ result }) => result.shims),
    filmShim,
  );
  const repeatability = repeatabilityOver(runs.map(({ result }) => result));
  const value = {
    inputs: inputsOf(...request.files),
    assumptions: [
      ...permitted.assumptions,
      ...(repeatability === undefined ? [repeatabilityAssumption(assumedRepeatability)] : []),
    ],
    gauge: request.gauge,
    verdict: whereTested(overallVerdict(runs.map(({ result }) => result)), reached),
    reached,
    filmShim,
    permitted: permitted.value,
    step,
    repeatability,
    runs,
    drift,
    adjustment: adjustment.value ?? null,
    keyed: keyedText(readings),
  };
  return { value, diagnostics: [...read.diagnostics, ...adjustment.diagnostics] };
}

function readChecks({ files, settings, shimUncertainty }: CheckGaugeRequest): Outcome<GaugeChecks> {
  if (files.length > 2) {
    return {
      diagnostics: [
        error('usage-option-value', `gauge takes one file or two, not ${files.length}`, {
          hint: 'the check before the work and the one after it',
        }),
      ],
    };
  }
  const { value: unit } = settings.readingUnit;
  const read = files.map((file) =>
    readGaugeChecks(file, {
      ...(unit === null ? {} : { unit }),
      ...(shimUncertainty === undefined ? {} : { shimUncertainty }),
    }),
  );
  const diagnostics = read.flatMap((one) => one.diagnostics);
  const checks = read.flatMap(({ value }) => value ?? []);
  const [first, second] = checks;
  if (hasErrors(diagnostics) || first === undefined) return { diagnostics };
  if (second === undefined) return { value: first, diagnostics };
  const all = [...first.readings, ...second.readings];
  if (all.some(({ check }) => check !== null)) {
    const message = 'two files are before and after by themselves, and one has a column "check"';
    const hint = 'give one file with the column, or two without it';
    return { diagnostics: [...diagnostics, error('usage-option-value', message, { hint })] };
  }
  const readings = [
    ...first.readings.map((one) => ({ ...one, check: 'before' as const })),
    ...second.readings.map((one) => ({ ...one, check: 'after' as const })),
  ];
  return { value: { readings, unit: first.unit }, diagnostics };
}

const runsOf = (
  readings: readonly GaugeCheckReading[],
): readonly { check: GaugeCheckTime | null; own: readonly GaugeCheckReading[] }[] =>
  ([null, 'before', 'after'] as const)
    .map((check) => ({ check, own: readings.filter((one) => one.check === check) }))
    .filter(({ own }) => own.length > 0);

/** Readings of a few shims may all be tens by chance: no display of a paint gauge is coarser than these. */
const COARSEST: Readonly<Record<LengthUnit, Micrometres>> = {
  um: micrometres(1),
  mil: milToMicrometres(0.1),
};

const stepOf = (
  readings: readonly GaugeCheckReading[],
  unit: LengthUnit,
  gauge: Gauge | undefined,
): Micrometres => {
  const shown = displayStep(readings.map(({ reading }) => reading));
  return micrometres(Math.max(Math.min(shown, COARSEST[unit]), gauge?.resolution ?? 0));
};

function permittedError({ settings, gauge, permitted }: CheckGaugeRequest): {
  readonly value: PermittedError;
  readonly assumptions: readonly Assumption[];
} {
  const { fixed, proportional } = settings.film.measurement;
  const value = { fixed, proportional, ...gauge?.permitted, ...permitted };
  const isStated =
    gauge !== undefined || (permitted.fixed !== undefined && permitted.proportional !== undefined);
  if (isStated) return { value, assumptions: [] };
  const said = says`largest error permitted: ${permittedText(value)}, for want of the maker's statement (--mpe-um and --mpe-pct, or --gauge)`;
  return { value, assumptions: [{ code: 'gauge-mpe', ...spoken(said), origin: 'built-in' }] };
}

const repeatabilityAssumption = (assumed: Micrometres): Assumption => ({
  code: 'gauge-no-repeats',
  ...spoken(says`no shim was read twice: readings taken to scatter by ${um(assumed, null)} (SD)`),
  origin: 'built-in',
});

function adjust(runs: readonly GaugeRun[], drift: readonly Drift[]): Outcome<GaugeAdjusted | null> {
  const refuse = (why: string, hint: string): Outcome<null> => ({
    value: null,
    diagnostics: [warning('gauge-not-adjusted', `not adjusted: ${why}`, { hint })],
  });
  if (drift.some(({ proved }) => proved)) {
    return refuse(
      'the gauge moved between the two checks, and no one line is true of both',
      'check it again when it has settled, then adjust on that one check',
    );
  }
  const checks = runs.flatMap(({ result }) => result.shims);
  const line = fitAdjustment(checks);
  if (line === null) {
    return refuse(
      'no line that a sound gauge could show goes through these readings',
      'look whether the shims were mixed up; else the gauge wants service',
    );
  }
  const shims = new Set(checks.map(({ shim }) => shim)).size;
  return found({ line, shims, left: checkAdjusted(checks, line) });
}
