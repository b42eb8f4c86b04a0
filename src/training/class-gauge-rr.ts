/**
 * How far a class agrees at the parts that its trainees read twice or more: marked points with their repeats, or panels
 * with points of one’s own. Everybody must have read every part. One who read few would leave few for all: of the
 * trainees with the most parts, as many are taken as make the largest table.
 */
import { at, valueAt } from '../base/at.ts';
import { type GaugeRr, gaugeRr } from '../base/stats/gauge-rr.ts';
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
  };
}

/** In the order of the class; of tables as large, the one with more trainees. */
function largestTable(all: readonly Read[]): readonly Read[] {
  const byMost = all.toSorted((one, other) => other.parts.size - one.parts.size);
  const tables = byMost
    .slice(1)
    .map((_, k) => byMost.slice(0, k + 2))
    .toReversed();
  const sizes = tables.map((reads) => reads.length * inCommon(reads).length);
  const most = at(tables, sizes.indexOf(Math.max(...sizes)));
  return all.filter((one) => most.includes(one));
}

const inCommon = (reads: readonly Read[]): readonly string[] =>
  [...at(reads, 0).parts.keys()].filter((key) => reads.every(({ parts }) => parts.has(key)));
