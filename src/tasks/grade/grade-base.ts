/** The reference of a class, and by it the vehicle and the template that all files are read by. */
import { error, type Outcome } from '../../base/diagnostics.ts';
import type { VehicleTemplate } from '../../film/template/template.ts';
import type { LoadedFile, ReadInput, ReadRequest, VehicleReadings } from '../read/read-request.ts';
import type { Assumption } from '../settings/assumption.ts';
import { classTemplates } from './class-templates.ts';
import { signedBy } from './grade-readings.ts';
import type { GradeFilesRequest, HandedFile } from './grade-request.ts';
import { readOfClass } from './read-of-class.ts';

export type GradeBase = {
  /** How every file of the class is read. */
  readonly read: ReadRequest;
  readonly template: VehicleTemplate;
  readonly vehicle: string | null;
  /** Null where the class is its own reference. */
  readonly expert: Expert | null;
  readonly assumptions: readonly Assumption[];
};

export type Expert = {
  readonly readings: VehicleReadings;
  readonly input: ReadInput;
  readonly assessor: string | null;
  readonly date: string | null;
  readonly serial: string | null;
};

export function gradeBase(
  { read, reference }: GradeFilesRequest,
  files: readonly HandedFile[],
): Outcome<GradeBase> {
  return reference === undefined ? baseOfClass(read, files) : baseOfExpert(read, reference, files);
}

function baseOfExpert(
  read: ReadRequest,
  reference: LoadedFile,
  files: readonly HandedFile[],
): Outcome<GradeBase> {
  const alone = onlyVehicle(read, reference);
  if (alone.value === undefined) return { diagnostics: alone.diagnostics };
  const templates = classTemplates(read, alone.value.only, files);
  const { value, diagnostics } =
    templates === read.templates ? alone : onlyVehicle({ ...read, templates }, reference);
  if (value === undefined) return { diagnostics };
  const { only, input } = value;
  const expert: Expert = { readings: only, input, ...signedBy(only.readings, input) };
  const based = baseWith(read, only, only.vehicle ?? read.vehicle ?? null);
  return { value: { ...based, expert }, diagnostics };
}

type OnlyVehicle = { readonly only: VehicleReadings; readonly input: ReadInput };

function onlyVehicle(read: ReadRequest, reference: LoadedFile): Outcome<OnlyVehicle> {
  const { value, diagnostics } = readOfClass({ ...read, files: [reference] });
  const [only, second] = value?.vehicles ?? [];
  const [input] = value?.inputs ?? [];
  if (only === undefined || input === undefined) return { diagnostics };
  if (second !== undefined) {
    const message = `the reference holds ${value?.vehicles.length ?? 0} vehicles, and one car is graded`;
    const hint = 'name one with --vehicle';
    return { diagnostics: [...diagnostics, error('usage-several-vehicles', message, { hint })] };
  }
  return { value: { only, input }, diagnostics };
}

/** By the template of whoever read the most panels. */
function baseOfClass(read: ReadRequest, files: readonly HandedFile[]): Outcome<GradeBase> {
  const found = files.map((file) =>
    file.notLoaded === undefined
      ? readOfClass({ ...read, files: [file] })
      : { diagnostics: file.notLoaded },
  );
  const all = found.flatMap(({ value }) => value?.vehicles ?? []);
  const [first, ...rest] = all;
  if (first === undefined) return { diagnostics: found.flatMap((one) => one.diagnostics) };
  const most = rest.reduce((a, b) => (panelCount(b) > panelCount(a) ? b : a), first);
  const named = [...new Set(all.flatMap(({ vehicle }) => vehicle ?? []))];
  const vehicle = read.vehicle ?? (named.length === 1 ? (named[0] ?? null) : null);
  return { value: baseWith(read, most, vehicle), diagnostics: [] };
}

const panelCount = ({ readings }: VehicleReadings): number =>
  new Set(readings.map(({ panel }) => panel)).size;

function baseWith(
  read: ReadRequest,
  { template, assumptions }: VehicleReadings,
  vehicle: string | null,
): GradeBase {
  if (template === null) throw new Error('a survey needs a template');
  return {
    read: { ...read, templates: [template], templateId: template.id, size: undefined },
    template,
    vehicle,
    expert: null,
    assumptions,
  };
}
