/**
 * How far a class agrees at the parts that its trainees read twice or more: marked points with their repeats, or panels
 * with points of one’s own. Everybody must have read every part. One who read few, or
 * names them otherwise, would leave few for all: as many are taken as make the largest table.
 */
import { at, valueAt } from '../base/at.ts';
import { type GaugeRr, gaugeRr } from '../base/stats/gauge-rr.ts';
import { mean, sampleVariance } from '../base/stats/summary.ts';
import { sum } from '../base/sum.ts';
import type { PanelPoint } from '../film/panel-points.ts';
import { type GradedSurvey, markedPoints, pointKey, readPanels } from './graded-survey.ts';
import type { Reference } from './reference.ts';

export type ClassGaugeRr = {
  readonly result: GaugeRr;
  /** Parts are marked points with their repeats, or panels with points of one’s own. */
  readonly parts: 'marked points' | 'panels';
  readonly counts: { readonly parts: number; readonly trainees: number; readonly trials: number };
  /** Surveys that read too few parts. */
  readonly without: readonly GradedSurvey[];
  /** Whose repeats vary by more than those of all others together; null where nobody’s do. */
  readonly most: MostOfRepeats | null;
};

/** Repeats of one, and of the others, as standard deviations. */
export type MostOfRepeats = {
  readonly survey: GradedSurvey;
  readonly sd: number;
  readonly others: number;
};

export const gaugeRrOfClass = (
  surveys: readonly GradedSurvey[],
  reference: Reference,
): ClassGaugeRr | null =>
  surveys.length < 2
    ? null
    : (rr(surveys.map(atMarks), 'marked points') ??
      rr(
        surveys.map((survey) => byPanels(survey, reference)),
        'panels',
      ));

/** What one trainee read of each part, twice at the least. */
type Read = {
  readonly survey: GradedSurvey;
  readonly parts: ReadonlyMap<string, readonly number[]>;
};

function atMarks(survey: GradedSurvey): Read {
  const parts = readPanels(survey).flatMap(({ panel, points }) => {
    const marked = markedPoints(survey, panel.id);
    return points
      .filter(({ point }) => marked.has(point))
      .map(({ point, repeats }) => [pointKey(panel.id, point), repeats] as const);
  });
  return { survey, parts: new Map(parts.filter(isRepeated)) };
}

/** What varies within a panel is the film as well. */
function byPanels(survey: GradedSurvey, { panels }: Reference): Read {
  const parts = readPanels(survey)
    .filter(({ panel }) => panels.has(panel.id))
    .map(({ panel, points }) => [panel.id, valuesOf(points)] as const);
  return { survey, parts: new Map(parts.filter(isRepeated)) };
}

const valuesOf = (points: readonly PanelPoint[]): readonly number[] =>
  points.map(({ thickness }) => thickness);

const isRepeated = ([, trials]: readonly [string, readonly number[]]): boolean =>
  trials.length >= 2;

function rr(all: readonly Read[], parts: ClassGaugeRr['parts']): ClassGaugeRr | null {
  const reads = largestTable(all);
  const keys = inCommon(reads);
  if (keys.length < 2) return null;
  const table = keys.map((key) => reads.map((one) => valueAt(one.parts, key)));
  const trials = Math.min(...table.flat().map(({ length }) => length));
  const even = table.map((part) => part.map((values) => values.slice(0, trials)));
  return {
    result: gaugeRr(even),
    parts,
    counts: { parts: keys.length, trainees: reads.length, trials },
    without: all.filter((one) => !reads.includes(one)).map(({ survey }) => survey),
    most: parts === 'panels' ? null : mostOfRepeats(reads, even),
  };
}

/** Of three at the least: of two one always repeats worse. Everybody has as many degrees of freedom. */
function mostOfRepeats(
  reads: readonly Read[],
  even: readonly (readonly (readonly number[])[])[],
): MostOfRepeats | null {
  const variances = reads.map(({ survey }, i) => {
    const own = even.map((part) => sampleVariance(at(part, i)));
    return { survey, variance: mean(own) };
  });
  const all = sum(variances.map(({ variance }) => variance));
  const most = variances.find(({ variance }) => 2 * variance > all);
  if (most === undefined || reads.length < 3) return null;
  const others = (all - most.variance) / (reads.length - 1);
  return { survey: most.survey, sd: Math.sqrt(most.variance), others: Math.sqrt(others) };
}

/**
 * In the order of the class; of tables as large, the one with more trainees. One whose parts are others’ under other
 * names, or are few, is left out alone.
 */
function largestTable(all: readonly Read[]): readonly Read[] {
  const tables = all
    .flatMap(({ parts }) => tablesWithin([...parts.keys()], all))
    .filter((reads) => reads.length > 1)
    .toSorted((one, other) => other.length - one.length);
  const sizes = tables.map((reads) => reads.length * inCommon(reads).length);
  return tables[sizes.indexOf(Math.max(...sizes))] ?? all;
}

/** Who read all of these parts; and, of fewer parts each, with whoever else leaves the most of them. */
function tablesWithin(keys: readonly string[], all: readonly Read[]): readonly (readonly Read[])[] {
  if (keys.length < 2) return [];
  const reads = all.filter(({ parts }) => keys.every((key) => parts.has(key)));
  const left = all
    .filter((one) => !reads.includes(one))
    .map(({ parts }) => keys.filter((key) => parts.has(key)))
    .toSorted((one, other) => other.length - one.length);
  return [reads, ...tablesWithin(left[0] ?? [], all)];
}

const inCommon = (reads: readonly Read[]): readonly string[] =>
  [...at(reads, 0).parts.keys()].filter((key) => reads.every(({ parts }) => parts.has(key)));
