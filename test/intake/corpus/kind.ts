/** A kind of spoiled file: a sentence, who reads it, and how to write one with known readings. */
import type { IntakeOptions } from '../../../src/intake/read-gauge-file.ts';
import { inMicrometres, type Survey } from './invented-survey.ts';
import type { Random } from './random.ts';

export type Expected =
  /** A person could settle it from the file alone. */
  | 'read'
  /** Nobody could: any reading of it would be a guess. */
  | 'refused'
  | 'either-but-never-wrong';

export type ExcludedClass = 'missing' | 'over-range' | 'error' | 'deleted' | 'not-film';

export type TrueReading = {
  readonly vehicle: string | null;
  readonly panel: string;
  readonly point: string;
  readonly um: number;
};

export type Truth = {
  readonly readings: readonly TrueReading[];
  /** Whether the file names its points, only shows which readings share one, or says neither. */
  readonly points: 'stated' | 'grouped' | 'open';
  /** One entry per cell that is no reading: the classes it may be counted in. */
  readonly excluded?: readonly (readonly ExcludedClass[])[];
  /** What a warning or a decision must say where the file is read. */
  readonly says?: RegExp;
  /** The line a refusal must point at, and what its hint must name. */
  readonly refusedAt?: number;
  readonly hint?: RegExp;
  /** Other readings that are as good, where they are said. */
  readonly others?: readonly { readonly readings: readonly TrueReading[]; readonly says: RegExp }[];
};

export type Instance = {
  readonly bytes: Uint8Array;
  readonly truth: Truth;
  readonly options?: Partial<IntakeOptions>;
  /** The longest it may take, where the kind is about size. */
  readonly withinMs?: number;
};

/** The developer who owns the part of the reader that is tried. */
export type Owner = 'bytes' | 'cells' | 'layout';

export type Kind = {
  readonly owner: Owner;
  readonly group: string;
  readonly expected: Expected;
  readonly title: string;
  readonly write: (random: Random) => Instance;
};

/** Kinds of one group, written down briefly. */
export const kindsOf =
  (group: string, owner: Owner) =>
  (
    title: string,
    expected: Expected,
    write: (random: Random) => Instance,
    other: Owner = owner,
  ): Kind => ({
    owner: other,
    group,
    expected,
    title,
    write,
  });

export const readingsOf = ({ unit, shots }: Survey): readonly TrueReading[] =>
  shots.map(({ vehicle, panel, point, value }) => ({
    vehicle,
    panel,
    point,
    um: inMicrometres(value, unit),
  }));

export const utf8 = (text: string): Uint8Array => new TextEncoder().encode(text);

export type Rest = Partial<Omit<Truth, 'readings'>> & Pick<Instance, 'options' | 'withinMs'>;

/** A file and what it holds; text is written as UTF-8. */
export function instance(
  content: string | Uint8Array,
  survey: Survey | readonly TrueReading[],
  rest: Rest = {},
): Instance {
  const { options, withinMs, ...truth } = rest;
  const readings = 'shots' in survey ? readingsOf(survey) : survey;
  return {
    bytes: typeof content === 'string' ? utf8(content) : content,
    truth: { points: 'stated', ...truth, readings },
    ...(options === undefined ? {} : { options }),
    ...(withinMs === undefined ? {} : { withinMs }),
  };
}
