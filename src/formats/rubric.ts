/**
 * The rubric file, `leastcut/rubric/1`: how surveys of trainees are marked. Only the ratios of the
 * weights count: 2 and 1 say the same as 60 and 30. `sigma_pt_um` is the standard deviation for the
 * assessment of proficiency of ISO 13528: stated, or taken from the class.
 */
import * as z from 'zod';
import { type Micrometres, micrometres } from '../base/units.ts';
import { advised } from './json/advised.ts';
import { given } from './json/given.ts';
import { anyOf, hasSuch } from './json/rule-words.ts';
import { note, shownName } from './json/setting-values.ts';
import { settingsReader } from './json/settings-reader.ts';
import { micrometreAdvice } from './trade-words.ts';

const criteria = ['accuracy', 'coverage', 'low_points', 'repairs', 'repeatability'] as const;

const weight = z.number().min(0).max(1000).optional();

const weightsSchema = z
  .strictObject({
    accuracy: weight,
    coverage: weight,
    low_points: weight,
    repairs: weight,
    repeatability: weight,
  })
  .superRefine((weights, context) => {
    if (sumOf(weights) > 0) return;
    const message = 'gives weight to nothing';
    const hint = 'at least one weight is above 0, such as "accuracy": 1';
    const lacks = [...criteria];
    context.addIssue({ code: 'custom', path: [], message, params: { hint, lacks } });
  })
  .meta(anyOf(...criteria.map((name) => hasSuch(name, { exclusiveMinimum: 0 }))));

type TypedWeights = { readonly [Name in (typeof criteria)[number]]?: number | undefined };

const sumOf = (weights: TypedWeights): number =>
  criteria.reduce((sum, name) => sum + (weights[name] ?? 0), 0);

export const rubricSchema = z.strictObject({
  $schema: z.string().optional(),
  schema: z.literal('leastcut/rubric/1'),
  name: shownName.optional(),
  pass_mark_pct: advised(z.number().min(0).max(100), (value) =>
    typeof value === 'string' ? 'write the number of per cent alone, such as 70' : undefined,
  ),
  weights: weightsSchema,
  sigma_pt_um: advised(
    z.union([z.number().min(0.1).max(50), z.literal('class')]),
    micrometreAdvice,
  ).optional(),
  note: note.optional(),
});

export type Rubric = {
  readonly name?: string;
  /** Share of the marks. */
  readonly passMark: number;
  /** Shares that sum to 1. */
  readonly weights: {
    readonly accuracy: number;
    readonly coverage: number;
    readonly lowPoints: number;
    readonly repairs: number;
    readonly repeatability: number;
  };
  readonly sigmaPt?: Micrometres | 'class';
};

export const readRubric = settingsReader(
  rubricSchema,
  ({ name, pass_mark_pct, weights, sigma_pt_um }): Rubric => {
    const share = (one: keyof TypedWeights): number => (weights[one] ?? 0) / sumOf(weights);
    return {
      passMark: pass_mark_pct / 100,
      weights: {
        accuracy: share('accuracy'),
        coverage: share('coverage'),
        lowPoints: share('low_points'),
        repairs: share('repairs'),
        repeatability: share('repeatability'),
      },
      ...given({
        name,
        sigmaPt: typeof sigma_pt_um === 'number' ? micrometres(sigma_pt_um) : sigma_pt_um,
      }),
    };
  },
);
