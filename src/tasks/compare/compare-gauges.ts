/** Whether what the gauge may be off by cancels between readings before and after, and why. */
import { spoken } from '../../base/remark.ts';
import type { GaugesCompared } from '../../film/compare/compare-change.ts';
import type { ReadInput } from '../read/read-request.ts';
import type { Assumption } from '../settings/assumption.ts';
import type { NamedGauge } from '../settings/gauge-in-use.ts';
import type { Settings } from '../settings/settings.ts';

export type NamedGauges = {
  /** Of all readings, or of the first ones where another took the later ones. */
  readonly before: NamedGauge | undefined;
  readonly after: NamedGauge | undefined;
};

type Standing = {
  readonly settings: Settings;
  readonly settingsAfter: Settings;
  readonly gauges: NamedGauges;
  readonly inputs: readonly ReadInput[];
  /** Who is named as having read the first visit and the last. */
  readonly readers: readonly [before: readonly string[], after: readonly string[]];
};

/** The first reason that holds; with none it is one gauge that kept its place. */
export function gaugesCompared({ settings, settingsAfter, gauges, inputs, readers }: Standing): {
  readonly gauges: GaugesCompared;
  readonly assumption: Assumption;
} {
  const against = differs(gauges) ?? drifted(gauges) ?? serialsDiffer(inputs);
  return {
    gauges: {
      cancels: against === undefined,
      before: settings.film.measurement,
      after: settingsAfter.film.measurement,
    },
    assumption:
      against === undefined
        ? {
            ...spoken(`${sameGauge(gauges)}${byOthers(readers)}`),
            code: 'same-gauge',
            origin: originOf(gauges),
          }
        : {
            ...spoken(`${against}: what each may be off by counts in full${byOthers(readers)}`),
            code: 'gauges-differ',
            origin: originOf(gauges),
          },
  };
}

/** Two people set a probe down differently, and one visit of each does not show by how much. */
function byOthers([before, after]: Standing['readers']): string {
  const isSame = before.every((one) => after.includes(one)) && after.length === before.length;
  return before.length === 0 || after.length === 0 || isSame
    ? ''
    : `; read by ${before.join(', ')} before and by ${after.join(', ')} after: what people read apart does not cancel`;
}

const originOf = ({ before, after }: NamedGauges): Assumption['origin'] =>
  (after ?? before)?.origin ?? 'built-in';

const sameGauge = ({ before }: NamedGauges): string =>
  before === undefined
    ? 'read with one gauge before and after, not verified: what it is off by cancels'
    : 'read with one gauge before and after: what it is off by cancels';

function differs({ before, after }: NamedGauges): string | undefined {
  if (after === undefined) return undefined;
  const serials = [before, after].map((gauge) => gauge?.file.value.serial);
  return serials[0] !== undefined && serials[0] === serials[1] ? undefined : 'read with two gauges';
}

const drifted = ({ before, after }: NamedGauges): string | undefined =>
  [before, after].some((gauge) => gauge?.file.value.drift.some(({ proved }) => proved) ?? false)
    ? 'the gauge moved between its two checks'
    : undefined;

const SERIAL = /\bserial|\bs\/?n\b|serien|s[ée]rie/iu;

/** Exports often say which gauge they are of. */
function serialsDiffer(inputs: readonly ReadInput[]): string | undefined {
  const serials = inputs.flatMap(
    ({ decisions }) => decisions?.metadata.find(({ key }) => SERIAL.test(key))?.value.trim() ?? [],
  );
  const [first] = serials;
  const other = serials.find((serial) => serial !== first);
  return other === undefined ? undefined : `the files name two gauges, "${first}" and "${other}"`;
}
