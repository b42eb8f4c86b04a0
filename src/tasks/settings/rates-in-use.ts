/** The shop's own observations on earlier vehicles → the settings that the next one is worked by. */

import { counted } from '../../base/counted.ts';
import type { Outcome } from '../../base/diagnostics.ts';
import { modelWithRates } from '../../correction/rates/model-with-rates.ts';
import { foreseenLogSd } from '../../correction/removal/removal-knowledge.ts';
import { removedFilm } from '../../correction/spot/spot-trial.ts';
import { isSameVehicle } from '../../film/same-vehicle.ts';
import type { Placed } from '../../formats/json/placed.ts';
import type { RatesFile } from '../../formats/rates.ts';
import { seenKey } from '../methods/add-observations.ts';
import { type KnownRates, type PlacedEvidence, rateEvidence } from '../methods/rate-evidence.ts';
import type { LoadedFile } from '../read/read-request.ts';
import { joinedTrials } from '../spot/joined-trials.ts';
import type { Assumption } from './assumption.ts';
import { asMeasured } from './gauge-in-use.ts';
import { modelsInForce } from './models-in-force.ts';
import type { SettingOrigin } from './setting-origin.ts';
import type { Settings } from './settings.ts';

export type NamedRates = {
  readonly file: Placed<RatesFile>;
  readonly name: string;
  readonly origin: SettingOrigin;
};

export function withRates(settings: Settings, rates: NamedRates | undefined): Outcome<Settings> {
  if (rates === undefined) return { value: settings, diagnostics: [] };
  const { file, name, origin } = rates;
  const plain = { ...settings.correction, learned: null };
  const read = rateEvidence(file, plain, modelsInForce(settings.numbers).correction);
  const { evidence, byEye, unknown } = read;
  const known = { name, origin, file: file.value, evidence, byEye, unknown, ofThisVehicle: 0 };
  return { value: learnedBy(settings, known), diagnostics: read.diagnostics };
}

function learnedBy(settings: Settings, rates: KnownRates): Settings {
  const correction = modelWithRates(
    settings.correction,
    rates.evidence.map(({ evidence }) => evidence),
  );
  const others = settings.assumptions.filter(({ code }) => code !== 'rates');
  return {
    ...settings,
    correction,
    rates,
    terms: { ...settings.terms, logSd: foreseenLogSd(correction) },
    assumptions: [...others, ratesAssumption(rates)],
  };
}

function ratesAssumption(rates: KnownRates): Assumption {
  const { name, origin, evidence, byEye, unknown, ofThisVehicle } = rates;
  const vehicles = new Set(evidence.map((one) => one.evidence.vehicle)).size;
  const left = [
    ...(byEye === 0 ? [] : [`${byEye} by eye alone say${byEye === 1 ? 's' : ''} nothing of film`]),
    ...(unknown === 0 ? [] : [`${unknown} with what is not known here left out`]),
    ...(ofThisVehicle === 0 ? [] : [`${ofThisVehicle} of this vehicle left out`]),
  ];
  const said =
    evidence.length === 0
      ? `built-in rates, for ${name} has no removal to learn from`
      : `rates from ${counted(evidence.length, 'observation')} of ${counted(vehicles, 'vehicle')} in ${name}`;
  const text = left.length === 0 ? said : `${said} (${left.join('; ')})`;
  return { code: 'rates', text, origin };
}

/**
 * The same without what was observed on the vehicle at hand, by its id or by the very figures of its test
 * spots: those speak for it, and once.
 */
export function withoutOwnObservations(
  settings: Settings,
  vehicle: string | null,
  spots: readonly LoadedFile[],
): Settings {
  const { rates } = settings;
  if (rates === null) return settings;
  const own = ownFigures(settings, spots);
  const others = rates.evidence.filter(
    ({ observation }) =>
      !isOf(observation.vehicle, vehicle) && !own.has(seenKey(withoutEye(observation))),
  );
  const ofThisVehicle = rates.evidence.length - others.length;
  return ofThisVehicle === 0
    ? settings
    : learnedBy(settings, { ...rates, evidence: others, ofThisVehicle });
}

const isOf = (one: string | undefined, other: string | null): boolean =>
  one !== undefined && other !== null && isSameVehicle(one, other);

const withoutEye = ({ cleared: _, ...film }: PlacedEvidence['observation']) => film;

/** Work and removal of each trial on the spots, as a rates file would have them. */
function ownFigures(settings: Settings, spots: readonly LoadedFile[]): ReadonlySet<string> {
  const { scatterDof } = settings.correction.spot;
  const gauge = asMeasured([], settings).model.measurement;
  // Files that cannot be read are told of where they are put to use.
  const trials = joinedTrials(spots, settings).value ?? [];
  return new Set(
    trials.flatMap(({ trial }) => {
      const removed = removedFilm(trial.marks, gauge, scatterDof);
      const steps = [{ combination: trial.combination.id, sets: trial.sets }];
      return removed === null ? [] : [seenKey({ steps, removed })];
    }),
  );
}
