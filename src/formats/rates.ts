/**
 * The rates file, `leastcut/rates/1`: what test spots and finished panels showed on this shop's machines,
 * one observation after the other. Nothing is ever taken out: a new observation is added at the end, and
 * their order means nothing. A trial judged by eye alone has `cleared_pct` and no film; film that was
 * measured has its standard error, and may come out under 0 where noise is larger than what was taken.
 * Where several steps were worked before it was measured, `steps` stands in place of `combination` and
 * `sets`, and the film is what all of them took together.
 */
import * as z from 'zod';
import { type Micrometres, micrometres } from '../base/units.ts';
import { advised } from './json/advised.ts';
import { asQuantity, given } from './json/given.ts';
import { allOf, anyOf, has, not, where } from './json/rule-words.ts';
import { combination, date, note, text } from './json/setting-values.ts';
import { settingsReader } from './json/settings-reader.ts';
import { micrometreAdvice } from './trade-words.ts';

const percentAdvice = (value: unknown): string | undefined => {
  const [, digits = ''] = typeof value === 'string' ? (/^\s*(\d+)\s*%\s*$/.exec(value) ?? []) : [];
  return digits === '' ? undefined : `write the number alone: ${digits}`;
};

const sets = z.int().min(1).max(50);

const observationSchema = z
  .strictObject({
    date,
    vehicle: text.optional(),
    panel: text.optional(),
    combination: combination.optional(),
    sets: sets.optional(),
    steps: z
      .array(z.strictObject({ combination, sets }))
      .min(1)
      .describe('a list of steps: { "combination": "da/foam-medium/medium", "sets": 2 }')
      .optional(),
    removed_um: advised(z.number().min(-20).max(100), micrometreAdvice).optional(),
    standard_error_um: advised(z.number().min(0.01).max(20), micrometreAdvice).optional(),
    cleared_pct: advised(z.number().min(0).max(100), percentAdvice).optional(),
    haze_grade: z.number().min(0).max(4).optional(),
    note: note.optional(),
  })
  .superRefine((observation, context) => {
    const complaint = noWork(observation) ?? whatIsLacking(observation);
    if (complaint !== undefined) {
      const { message, ...params } = complaint;
      context.addIssue({ code: 'custom', path: [], message, params });
    }
  })
  .meta(
    allOf(
      anyOf(
        allOf(has('combination', 'sets'), not(has('steps'))),
        allOf(has('steps'), not(anyOf(has('combination'), has('sets')))),
      ),
      where(has('removed_um'), has('standard_error_um')),
      anyOf(has('removed_um'), allOf(has('cleared_pct'), not(has('standard_error_um')))),
    ),
  );

/** What was worked is one combination, or several steps. */
function noWork({
  combination: one,
  sets: count,
  steps,
}: {
  readonly combination?: unknown;
  readonly sets?: unknown;
  readonly steps?: unknown;
}) {
  if (steps === undefined) {
    const lacks = [
      ...(one === undefined ? ['combination'] : []),
      ...(count === undefined ? ['sets'] : []),
    ];
    return lacks.length === 0
      ? undefined
      : {
          message: `lacks ${lacks.join(' and ')}`,
          hint: 'say what was worked: "combination" and "sets", or "steps" where it was more than one',
          lacks,
        };
  }
  if (one === undefined && count === undefined) return undefined;
  const hint = 'several steps stand in "steps" alone, each with its own sets';
  return { message: 'has "steps" and what they replace', hint, lacks: [] };
}

/** Film and its standard error go together, and an observation shows something. */
function whatIsLacking({
  removed_um: removed,
  standard_error_um: error,
  cleared_pct: cleared,
}: {
  readonly removed_um?: number | undefined;
  readonly standard_error_um?: number | undefined;
  readonly cleared_pct?: number | undefined;
}) {
  if (removed !== undefined && error === undefined) {
    const hint = 'say what "removed_um" may be off by, or leave both out';
    return { message: 'lacks standard_error_um', hint, lacks: ['standard_error_um'] };
  }
  if (removed === undefined && error !== undefined) {
    const hint = '"standard_error_um" is that of "removed_um": say both, or leave both out';
    return { message: 'lacks removed_um', hint, lacks: ['removed_um'] };
  }
  if (removed !== undefined || cleared !== undefined) return undefined;
  return {
    message: 'shows nothing',
    hint: 'say "removed_um" with "standard_error_um", or "cleared_pct", or all three',
    lacks: ['removed_um', 'cleared_pct'],
  };
}

export const ratesSchema = z.strictObject({
  $schema: z.string().optional(),
  schema: z.literal('leastcut/rates/1'),
  observations: z.array(observationSchema),
  note: note.optional(),
});

export type WorkedStep = {
  /** `machine/pad/product` */
  readonly combination: string;
  readonly sets: number;
};

export type RateObservation = {
  readonly date: string;
  readonly vehicle?: string;
  readonly panel?: string;
  /** Worked one after the other on the same place. */
  readonly steps: readonly WorkedStep[];
  /** By all sets of all steps together; absent where it was judged by eye alone. */
  readonly removed?: { readonly mean: Micrometres; readonly standardError: Micrometres };
  /** Share of the marks that went, by eye. */
  readonly cleared?: number;
  /** 0 mirror to 4 heavy. */
  readonly hazeGrade?: number;
  readonly note?: string | readonly string[];
};

export type RatesFile = {
  readonly observations: readonly RateObservation[];
  readonly note?: string | readonly string[];
};

export const readRates = settingsReader(
  ratesSchema,
  ({ observations, note: remark }): RatesFile => ({
    observations: observations.map(toObservation),
    ...given({ note: remark }),
  }),
);

function toObservation(typed: z.output<typeof observationSchema>): RateObservation {
  const mean = asQuantity(micrometres, typed.removed_um);
  const standardError = asQuantity(micrometres, typed.standard_error_um);
  const { combination: one, sets: count } = typed;
  return {
    date: typed.date,
    steps:
      typed.steps ??
      (one === undefined || count === undefined ? [] : [{ combination: one, sets: count }]),
    ...given({
      vehicle: typed.vehicle,
      panel: typed.panel,
      removed:
        mean === undefined || standardError === undefined ? undefined : { mean, standardError },
      cleared: typed.cleared_pct === undefined ? undefined : typed.cleared_pct / 100,
      hazeGrade: typed.haze_grade,
      note: typed.note,
    }),
  };
}
