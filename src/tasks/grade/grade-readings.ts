/**
 * Files of trainees → surveys by trainee.
 *
 * A trainee is who the column `operator` names, else the line `Operator: …` above the table, else the file’s
 * name without folder and ending. One name in several files is one trainee, whose attempts are the files in the
 * order they are named. Letters are compared without case.
 */
import { error, hasErrors, type Outcome } from '../../base/diagnostics.ts';
import { fileStem, saidFile } from '../../base/file-name.ts';
import { groupBy } from '../../base/group-by.ts';
import type { Reading } from '../../film/reading.ts';
import { isSameVehicle } from '../../film/same-vehicle.ts';
import { roleOfKey } from '../../intake/beside/sayings.ts';
import type { GaugeRole } from '../../intake/header/gauge-vocabulary.ts';
import type { LoadedFile, ReadInput, ReadRequest, VehicleReadings } from '../read/read-request.ts';
import type { HandedFile } from './grade-request.ts';
import { readOfClass } from './read-of-class.ts';

/** One trainee’s readings in one file. */
export type HandedIn = {
  readonly name: string;
  readonly file: string;
  readonly sha256: string;
  readonly date: string | null;
  /** Serial number of the gauge, where the file says it. */
  readonly serial: string | null;
  readonly readings: VehicleReadings;
};

export type ReadSurveys = {
  readonly surveys: readonly HandedIn[];
  readonly input: ReadInput;
};

/** `vehicle` is the one that is graded; null where nobody names it. */
export function readSurveys(
  file: HandedFile,
  read: ReadRequest,
  vehicle: string | null,
): Outcome<ReadSurveys> {
  if (file.notLoaded !== undefined) return { diagnostics: file.notLoaded };
  const { value, diagnostics } = readOfClass({ ...read, files: [file], vehicle: undefined });
  const [input] = value?.inputs ?? [];
  if (value === undefined || input === undefined) return { diagnostics };
  const chosen = vehicleOf(value.vehicles, vehicle, file);
  if (chosen.value === undefined) {
    return { diagnostics: [...diagnostics, ...chosen.diagnostics] };
  }
  const named = byOperator(chosen.value.readings, file, input);
  const all = [...diagnostics, ...named.diagnostics];
  if (named.value === undefined || hasErrors(all)) return { diagnostics: all };
  const { vehicle: _, ...about } = chosen.value;
  const surveys = [...named.value].map(([name, readings]): HandedIn => {
    const { date, serial } = signedBy(readings, input);
    return {
      name,
      file: file.name,
      sha256: file.sha256,
      date,
      serial,
      readings: { ...about, vehicle, readings },
    };
  });
  return { value: { surveys, input }, diagnostics: all };
}

/** The readings of the vehicle that is graded; those of another would be graded as wrong all over. */
function vehicleOf(
  vehicles: readonly VehicleReadings[],
  wanted: string | null,
  file: LoadedFile,
): Outcome<VehicleReadings> {
  const same = (one: string | null): boolean =>
    one === null || wanted === null || isSameVehicle(one, wanted);
  const [first, second] = vehicles.filter((one) => same(one.vehicle));
  if (first !== undefined && second === undefined) return { value: first, diagnostics: [] };
  const names = vehicles.map((one) => `"${one.vehicle ?? ''}"`).join(', ');
  const message =
    first === undefined
      ? `${saidFile(file.name)} is of ${names}, the reference of "${wanted ?? ''}"`
      : `${saidFile(file.name)} holds ${vehicles.length} vehicles (${names}), and one car is graded`;
  const hint = 'name the vehicle with --vehicle, or mend the column vehicle';
  return {
    diagnostics: [error('grade-other-vehicle', message, { at: { file: file.name }, hint })],
  };
}

function byOperator(
  readings: readonly Reading[],
  file: LoadedFile,
  input: ReadInput,
): Outcome<ReadonlyMap<string, readonly Reading[]>> {
  const nobody = readings.find(({ operator }) => operator === undefined);
  if (nobody === undefined || readings.every(({ operator }) => operator === undefined)) {
    const otherwise = saidOf(input, isRole('operator')) ?? fileStem(file.name);
    const spelled = new Map<string, string>();
    const nameOf = ({ operator = otherwise }: Reading): string => {
      const folded = foldedName(operator);
      spelled.set(folded, spelled.get(folded) ?? operator);
      return spelled.get(folded) ?? operator;
    };
    return { value: groupBy(readings, nameOf), diagnostics: [] };
  }
  const { line, column } = nobody.origin;
  return {
    diagnostics: [
      error('grade-nameless', 'this reading names no operator, and others in the file do', {
        at: { file: file.name, line, column },
        hint: 'write who took it in the column operator, or leave the column out',
      }),
    ],
  };
}

const isRole =
  (role: GaugeRole) =>
  (key: string): boolean =>
    roleOfKey(key) === role;

/** What the lines beside the table say under such a key. */
function saidOf({ decisions }: ReadInput, isKey: (key: string) => boolean): string | null {
  const said = decisions?.metadata.find(({ key, value }) => isKey(key) && value !== '');
  return said?.value ?? null;
}

const isSerial = (key: string): boolean =>
  /^(?:serial|s\/n|seriennummer|numéro de série)/iu.test(key);

export const foldedName = (name: string): string =>
  name.normalize('NFC').trim().replace(/\s+/g, ' ').toLowerCase();

const operatorsOf = (readings: readonly Reading[]): string | null => {
  const names = new Set(readings.flatMap(({ operator }) => operator ?? []));
  return names.size === 0 ? null : [...names].join(', ');
};

/** Who took readings, when, and with which gauge, as far as the file says. */
export const signedBy = (
  readings: readonly Reading[],
  input: ReadInput,
): Pick<HandedIn, 'date' | 'serial'> & { readonly assessor: string | null } => ({
  assessor: operatorsOf(readings) ?? saidOf(input, isRole('operator')),
  date: readings.find(({ time }) => time !== undefined)?.time ?? saidOf(input, isRole('time')),
  serial: saidOf(input, isSerial),
});
