/**
 * A survey as `leastcut survey --format json` wrote it, read back for what it asks to be measured next.
 * Other keys of the record are let by: later versions may have more of them.
 */
import * as z from 'zod';
import { given } from './json/given.ts';
import { settingsReader } from './json/settings-reader.ts';

const part = z.object({
  n_points: z.int().min(0),
  condition: z.string(),
  advice: z.array(
    z.object({ code: z.string(), points: z.int().min(1).nullish(), value: z.number().optional() }),
  ),
});

const named = z.object({ point: z.string() });

const surveyFileSchema = z.object({
  schema: z.literal('leastcut/survey/1'),
  vehicle: z.string().nullable(),
  template: z.string(),
  panels: z.array(
    part.extend({
      panel: z.string(),
      points: z.array(z.string()).default([]),
      other_points: z.array(named).default([]),
      excluded: z.array(z.object({ point: z.string().nullish() })).default([]),
      zones: z.array(part.extend({ points: z.array(z.string()) })),
    }),
  ),
  to_read: z
    .array(
      z.object({
        panel: z.string(),
        point: z.string().nullable(),
        place: z.enum(['face', 'shut']),
      }),
    )
    .default([]),
});

/** Advice that asks for readings. */
export type SurveyedAdvice = {
  readonly code: string;
  /** Further points to read. */
  readonly points?: number;
  /** What more may go then, in µm. */
  readonly gain?: number;
};

export type SurveyedPanel = {
  readonly panel: string;
  readonly pointCount: number;
  /** Names of all points that were read or tried there, on the face or off it. */
  readonly points: readonly string[];
  readonly condition: string;
  readonly advice: readonly SurveyedAdvice[];
  /** Names of the points of each zone, the thinner one first. */
  readonly zones: readonly (readonly string[])[];
};

/** A place that is to be read besides: a door shut, of which the point has no name yet, or one worked deeper before. */
export type PlaceToRead = {
  readonly panel: string;
  readonly point: string | null;
  readonly place: 'face' | 'shut';
};

export type SurveyFile = {
  readonly vehicle: string | null;
  readonly template: string;
  readonly panels: readonly SurveyedPanel[];
  readonly toRead: readonly PlaceToRead[];
};

export const readSurveyFile = settingsReader(
  surveyFileSchema,
  ({ vehicle, template, panels, to_read }): SurveyFile => ({
    vehicle,
    template,
    panels: panels.map(
      ({ panel, n_points, points, other_points, excluded, condition, advice, zones }) => ({
        panel,
        pointCount: n_points,
        points: [...points, ...[...other_points, ...excluded].flatMap(({ point }) => point ?? [])],
        condition,
        advice: advice.map(({ code, points, value }) => ({
          code,
          ...given({ points: points ?? undefined, gain: value }),
        })),
        zones: zones.map(({ points }) => points),
      }),
    ),
    toRead: to_read,
  }),
);
