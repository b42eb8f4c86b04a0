/** Files of a class → whose each survey is: names, attempts, gauges; nameless where that is asked for. */
import {
  type Diagnostic,
  error,
  hasErrors,
  type Outcome,
  warning,
} from '../../base/diagnostics.ts';
import { suggest } from '../../base/did-you-mean.ts';
import { fileStem, saidFile } from '../../base/file-name.ts';
import { groupBy } from '../../base/group-by.ts';
import { listed } from '../read/match-panels.ts';
import type { ReadInput } from '../read/read-request.ts';
import type { NamedGauge } from '../settings/gauge-in-use.ts';
import {
  type Names,
  namelessDiagnostic,
  namelessInput,
  namelessTrainee,
} from './grade-anonymous.ts';
import type { GradeBase } from './grade-base.ts';
import { foldedName, type HandedIn, readSurveys } from './grade-readings.ts';
import { isExpertsOwn, isSameFile, referenceAgain } from './grade-reference-again.ts';
import type { GradeFilesRequest, HandedFile } from './grade-request.ts';

export type Entry = {
  /** As it is told. */
  readonly name: string;
  readonly attempt: number;
  readonly attempts: number;
  readonly file: string;
  /** Null where the file could not be read; `notRead` says why. */
  readonly handedIn: HandedIn | null;
  readonly notRead: readonly Diagnostic[];
  /** The trainee’s own gauge. */
  readonly gauge: NamedGauge | undefined;
};

export type HandIn = {
  readonly entries: readonly Entry[];
  readonly inputs: readonly ReadInput[];
  /** Told of everybody: the name of the one whose sheet is asked for. */
  readonly asked: string | null;
  /** What must not be said, and what is said instead. */
  readonly hidden: Names;
};

type Unnamed = Pick<Entry, 'file' | 'handedIn' | 'notRead'> & { readonly given: string };

export function handIn(
  request: GradeFilesRequest,
  files: readonly HandedFile[],
  { read, vehicle, expert }: GradeBase,
): Outcome<HandIn> {
  const [again, own] = parted(files, (file) => isSameFile(file, request.reference));
  if (own.length === 0)
    return { diagnostics: [...again.map(({ name }) => referenceAgain(name)), nobodyLeft()] };
  const reads = own.map((file) => {
    const given = fileStem(request.trainees[files.indexOf(file)]?.name ?? file.name);
    const { value, diagnostics } = readSurveys(file, read, vehicle);
    const told = fewOfEach(diagnostics);
    return { given, file: file.name, value, diagnostics: told };
  });
  const said = reads.flatMap(({ diagnostics }) => diagnostics);
  if (reads.every(({ value }) => value === undefined)) return { diagnostics: said };
  const all = reads.flatMap(({ given, file, value, diagnostics }): readonly Unnamed[] =>
    value === undefined
      ? [{ given, file, handedIn: null, notRead: diagnostics }]
      : value.surveys.map((survey) => ({
          // Renamed files must not rename their trainees.
          given: survey.name === fileStem(file) ? given : survey.name,
          file,
          handedIn: survey,
          notRead: [],
        })),
  );
  const [copies, unnamed] = parted(
    all,
    ({ handedIn }) => handedIn !== null && isExpertsOwn(handedIn, expert),
  );
  const reference = [...again.map(({ name }) => name), ...copies.map(({ file }) => file)];
  if (unnamed.length === 0)
    return { diagnostics: [...reference.map(referenceAgain), nobodyLeft()] };
  const names = namesOf(unnamed, request.anonymous);
  const gauges = byTrainee(request, unnamed);
  const asked = askedFor(request.trainee, names);
  const hidden = hiddenNames(request, unnamed, names);
  const hide = (one: Diagnostic): Diagnostic =>
    request.anonymous ? namelessDiagnostic(one, hidden) : one;
  const entries = withAttempts(
    unnamed.map(({ given, ...entry }) => ({
      ...entry,
      notRead: entry.notRead.map(hide),
      name: names.get(foldedName(given)) ?? given,
      gauge: gauges.value?.get(foldedName(given)),
    })),
  );
  const diagnostics = [
    ...gauges.diagnostics,
    ...asked.diagnostics,
    ...reference.map(referenceAgain),
    ...said.map(asWarning).map(hide),
    ...entries.flatMap(notReadTold),
    ...attemptsTold(entries, unnamed),
  ];
  if (hasErrors(diagnostics)) return { diagnostics };
  const inputs = reads.flatMap(({ value }) =>
    value === undefined
      ? []
      : [request.anonymous ? namelessInput(value.input, hidden) : value.input],
  );
  return { value: { entries, inputs, asked: asked.value ?? null, hidden }, diagnostics };
}

const MOST_OF_A_KIND = 3;

/** Of many remarks of one kind on one file the first, and how many more. */
function fewOfEach(diagnostics: readonly Diagnostic[]): readonly Diagnostic[] {
  return [...groupBy(diagnostics, ({ code }) => code).values()].flatMap((kind) => {
    const more = kind.length - MOST_OF_A_KIND;
    if (more < 2) return kind;
    const [{ code, severity, at: place }] = kind;
    const rest: Diagnostic = {
      code,
      severity,
      message: `${more} more places of this kind in the file`,
      ...(place === undefined ? {} : { at: { file: place.file } }),
    };
    return [...kind.slice(0, MOST_OF_A_KIND), rest];
  });
}

const parted = <One>(
  all: readonly One[],
  isFirst: (one: One) => boolean,
): readonly [readonly One[], readonly One[]] => [
  all.filter(isFirst),
  all.filter((one) => !isFirst(one)),
];

const nobodyLeft = (): Diagnostic =>
  error('usage-missing-input', 'no file of a trainee is named beside the reference', {
    hint: 'name the reference first and the files of trainees after it, or add --consensus',
  });

/** By name without case and spare blanks, what it is told as: its first spelling, or a number. */
function namesOf(entries: readonly Unnamed[], anonymous: boolean): Names {
  const names = new Map<string, string>();
  for (const { given } of entries) {
    const folded = foldedName(given);
    if (!names.has(folded)) names.set(folded, anonymous ? namelessTrainee(names.size) : given);
  }
  return names;
}

/** Every spelling of a name, and the files of the trainees’ gauges. */
function hiddenNames(
  { traineeGauges }: GradeFilesRequest,
  entries: readonly Unnamed[],
  names: Names,
): Names {
  const toldAs = (name: string): string => names.get(foldedName(name)) ?? name;
  return new Map([
    ...entries.map(({ given }) => [given, toldAs(given)] as const),
    ...[...traineeGauges].map(([name, gauge]) => [gauge.name, `gauge of ${toldAs(name)}`] as const),
  ]);
}

function withAttempts(entries: readonly Omit<Entry, 'attempt' | 'attempts'>[]): readonly Entry[] {
  return entries.map((entry, i) => {
    const own = (some: typeof entries): number =>
      some.filter(({ name }) => name === entry.name).length;
    return { ...entry, attempt: own(entries.slice(0, i + 1)), attempts: own(entries) };
  });
}

/** Gauges by trainee; a name that nobody has is a slip of the pen. */
function byTrainee(
  { traineeGauges }: GradeFilesRequest,
  entries: readonly Unnamed[],
): Outcome<ReadonlyMap<string, NamedGauge>> {
  const given = [...new Set(entries.map((one) => one.given))];
  const folded = new Set(given.map(foldedName));
  const value = new Map([...traineeGauges].map(([name, gauge]) => [foldedName(name), gauge]));
  const unknown = [...traineeGauges.keys()].filter((name) => !folded.has(foldedName(name)));
  return {
    value,
    diagnostics: unknown.map((name) => unknownTrainee('--trainee-gauge', name, given)),
  };
}

/** Whose sheet is asked for, by the name of the file or the one it is told as. */
function askedFor(asked: string | undefined, names: Names): Outcome<string> {
  if (asked === undefined) return { diagnostics: [] };
  const told = [...names.values()];
  const value =
    names.get(foldedName(asked)) ?? told.find((name) => foldedName(name) === foldedName(asked));
  return value === undefined
    ? { diagnostics: [unknownTrainee('--trainee', asked, told)] }
    : { value, diagnostics: [] };
}

const unknownTrainee = (option: string, name: string, known: readonly string[]): Diagnostic =>
  error('usage-unknown-trainee', `${option} "${name}" is nobody of this class`, {
    hint: suggest(name, known) ?? `the files are of ${listed(known)}`,
  });

/** It costs its trainee the grade and stops nobody else’s. */
const asWarning = (one: Diagnostic): Diagnostic =>
  one.severity === 'error' ? { ...one, severity: 'warning' } : one;

const notReadTold = ({ name, file, handedIn }: Entry): readonly Diagnostic[] =>
  handedIn !== null
    ? []
    : [
        warning('grade-not-read', `${saidFile(file)} cannot be read: ${name} is not graded`, {
          at: { file },
          hint: 'mend what is said of the file, and grade the class again',
        }),
      ];

/** Two files of one name are one trainee: aloud, where only the names of the files say so. */
function attemptsTold(
  entries: readonly Entry[],
  unnamed: readonly Unnamed[],
): readonly Diagnostic[] {
  return entries.flatMap((entry, i) => {
    const byFileName = unnamed[i]?.handedIn?.name === fileStem(entry.file);
    if (entry.attempt < 2 || !byFileName) return [];
    return [
      warning(
        'grade-attempts',
        `${saidFile(entry.file)} is taken as attempt ${entry.attempt} of ${entry.name}: an earlier file has the same name`,
        {
          at: { file: entry.file },
          hint: 'if they are two people, give the files names of their own, or a column operator',
        },
      ),
    ];
  });
}
