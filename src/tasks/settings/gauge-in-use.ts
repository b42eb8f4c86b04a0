/** The gauge that took the readings, as its file states → the settings that they are surveyed by. */
import {
  type Diagnostic,
  note,
  type Outcome,
  type Place,
  warning,
} from '../../base/diagnostics.ts';
import { spoken } from '../../base/remark.ts';
import { figure } from '../../base/rounding.ts';
import { type Sentence, says, tell, um } from '../../base/sentence.ts';
import type { Micrometres } from '../../base/units.ts';
import type { FilmModel } from '../../film/film-model.ts';
import {
  adjustReadings,
  type GaugeStanding,
  gaugeStanding,
  measuredWith,
  stepBeforeAdjusting,
  tellsRepeatability,
  untestedShare,
} from '../../film/gauge/gauge-in-use.ts';
import type { Reading } from '../../film/reading.ts';
import type { Gauge } from '../../formats/gauge.ts';
import type { Placed } from '../../formats/json/placed.ts';
import { adjustmentText, permittedText } from '../gauge/gauge-words.ts';
import type { Assumption } from './assumption.ts';
import type { SettingOrigin } from './setting-origin.ts';
import type { Settings } from './settings.ts';

export type NamedGauge = {
  readonly file: Placed<Gauge>;
  readonly name: string;
  readonly origin: SettingOrigin;
};

/** Settings with what the gauge is worth, and what there is to say about it. */
export function withGauge(settings: Settings, gauge: NamedGauge | undefined): Outcome<Settings> {
  const { film } = settings;
  if (gauge === undefined) {
    const assumptions = [...settings.assumptions, notVerified(settings)];
    return { value: { ...settings, assumptions }, diagnostics: [] };
  }
  const { value: known } = gauge.file;
  const standing = gaugeStanding(known, film.measurement);
  const value: Settings = {
    ...settings,
    film: { ...film, measurement: measuredWith(film.measurement, known) },
    adjustment: known.adjustment,
    assumptions: [...settings.assumptions, ...gaugeAssumptions(gauge, standing, film.measurement)],
  };
  return { value, diagnostics: gaugeDiagnostics(gauge, standing, film.measurement) };
}

function notVerified({ film: { measurement }, numbers }: Settings): Assumption {
  const own =
    numbers.get('film.measurement.fixed_um') ?? numbers.get('film.measurement.proportional');
  return {
    code: 'gauge-not-verified',
    ...spoken(says`gauge unverified: ${permittedText(measurement)}`),
    origin: own?.origin ?? 'built-in',
  };
}

function gaugeAssumptions(
  { file: { value: gauge }, name, origin }: NamedGauge,
  standing: GaugeStanding,
  measurement: FilmModel['measurement'],
): readonly Assumption[] {
  const say = (code: string, said: Sentence): Assumption => ({ code, ...spoken(said), origin });
  const { verdict, worst, reached } = standing;
  const share = untestedShare(measurement, gauge);
  return [
    say('gauge', says`gauge ${name}: ${permittedText(gauge.permitted)}, ${verdictText(verdict)}`),
    ...(reached === false
      ? [
          say(
            'gauge-untested',
            says`no shim of ${um(measurement.filmShim, 0)} or more in its check: ± ${figure(100 * share)} % of the film assumed`,
          ),
        ]
      : []),
    ...(verdict === 'fail' && worst !== null
      ? [say('gauge-widened', says`its calibration taken to be off by at least ${um(worst)}`)]
      : []),
    ...(verdict === 'fail' && worst === null
      ? [say('gauge-failed-unsaid', says`and its file does not say by how much it is off`)]
      : []),
    ...driftTold(gauge, say),
    ...(gauge.adjustment === null
      ? []
      : [
          say('gauge-adjusted', says`every reading put right: ${adjustmentText(gauge.adjustment)}`),
        ]),
    ...repeatabilityTold(gauge, measurement, say),
  ];
}

/** What is permitted covers either check, and not what came between. */
function driftTold(
  gauge: Gauge,
  say: (code: string, said: Sentence) => Assumption,
): readonly Assumption[] {
  const most = mostDrifted(gauge);
  return most === undefined
    ? []
    : [
        say(
          'gauge-drifted',
          says`it moved by ${um(Math.abs(most.change))} at ${um(most.shim, null)} between its two checks: readings from before and after are not to be compared`,
        ),
      ];
}

/** Of the shims at which it is proved to have moved, the one where it did most. */
export const mostDrifted = ({ drift }: Gauge): Gauge['drift'][number] | undefined =>
  drift
    .filter(({ proved }) => proved)
    .toSorted((one, other) => Math.abs(other.change) - Math.abs(one.change))[0];

function repeatabilityTold(
  gauge: Gauge,
  measurement: FilmModel['measurement'],
  say: (code: string, said: Sentence) => Assumption,
): readonly Assumption[] {
  if (gauge.repeatability === undefined) return [];
  const { sd, dof } = gauge.repeatability;
  return tellsRepeatability(gauge, measurement)
    ? [say('gauge-repeatability', says`repeatability ${um(sd, 2)} from the gauge’s own checks`)]
    : [
        say(
          'gauge-repeatability',
          says`its ${String(dof)} degrees of freedom of repeatability are too few: ${um(measurement.repeatability)} assumed`,
        ),
      ];
}

const verdictTexts = {
  pass: 'within that on every shim',
  fail: 'not within that on its shims',
  undecided: 'its check undecided',
} as const;

const verdictText = (verdict: GaugeStanding['verdict']): string =>
  verdict === null ? 'not checked on shims' : verdictTexts[verdict];

function gaugeDiagnostics(
  { file, name }: NamedGauge,
  { verdict, worst, reached }: GaugeStanding,
  { filmShim }: FilmModel['measurement'],
): readonly Diagnostic[] {
  const drifted = mostDrifted(file.value);
  return [
    ...(verdict === 'fail' ? [failed(name, worst, file.placeOf(['verdict']))] : []),
    ...(verdict === 'undecided'
      ? [undecided(name, reached === false ? filmShim : null, file.placeOf(['verdict']))]
      : []),
    ...(drifted === undefined ? [] : [driftedBetween(name, drifted, file.placeOf(['drift']))]),
  ];
}

const failed = (name: string, worst: GaugeStanding['worst'], at: Place): Diagnostic =>
  warning(
    'gauge-failed',
    worst === null
      ? `the gauge of ${name} failed its check, and the file does not say by how much`
      : `the gauge of ${name} is off by up to ${tell([um(worst)], 'um')}, more than its maker permits: its readings are trusted that much less`,
    { at, hint: 'read the car with a gauge that passes; or have this one put right, and check it' },
  );

/** `unreached` is the shim that it had to reach and did not. */
const undecided = (name: string, unreached: Micrometres | null, at: Place): Diagnostic =>
  unreached !== null
    ? warning(
        'gauge-undecided',
        `the check of ${name} reads no shim of ${tell([um(unreached, 0)], 'um')} or more: what the gauge is off by on a film was not tested`,
        { at, hint: 'check it on shims on either side of the film, one under it and one above' },
      )
    : note('gauge-undecided', `the check of ${name} could not tell whether the gauge is in order`, {
        at,
        hint: 'read each shim five to ten times, on better known shims if there are any',
      });

function driftedBetween(name: string, most: Gauge['drift'][number], at: Place): Diagnostic {
  const moved = tell([um(Math.abs(most.change))], 'um');
  const shim = tell([um(most.shim, null)], 'um');
  return warning(
    'gauge-drifted',
    `the gauge of ${name} moved by ${moved} at ${shim} between its two checks`,
    { at, hint: 'do not compare readings from before with those from after: read both anew' },
  );
}

/** Readings put right, and the display's step as it is then. */
export function asMeasured(
  readings: readonly Reading[],
  { adjustment, film }: Pick<Settings, 'adjustment' | 'film'>,
): { readonly readings: readonly Reading[]; readonly model: FilmModel } {
  if (adjustment === null) return { readings, model: film };
  const step = stepBeforeAdjusting(readings, adjustment, film.measurement.step);
  return {
    readings: adjustReadings(readings, adjustment),
    model: { ...film, measurement: { ...film.measurement, step } },
  };
}
