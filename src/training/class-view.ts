/** What the surveys of a class say together: how it scatters, which panels are hard, who agrees. */
import { algorithmA, type RobustSummary } from '../base/stats/algorithm-a.ts';
import { type GaugeRr, gaugeRr } from '../base/stats/gauge-rr.ts';
import { classTable, cohenKappa, type Kappa } from '../base/stats/kappa.ts';
import { mean } from '../base/stats/summary.ts';
import { micrometres } from '../base/units.ts';
import type { Grade } from './grade-trainee.ts';
import { type GradedSurvey, markedPoints, readPanel, readPanels } from './graded-survey.ts';
import type { SigmaPt } from './panel-score.ts';
import type { Reference, ReferencePanel } from './reference.ts';
import type { TrainingModel } from './training-model.ts';

export type ClassPanel = {
  readonly reference: ReferencePanel;
  /** Surveys without slips that read it. */
  readonly count: number;
  /** Of their means (Algorithm A); null for fewer than two. */
  readonly robust: RobustSummary | null;
  /** Share of them that are satisfactory on it; null where nobody read it. */
  readonly satisfactory: number | null;
};

export type ClassGaugeRr = {
  readonly result: GaugeRr;
  /** Parts are marked points with their repeats, or panels with points of one’s own. */
  readonly parts: 'marked points' | 'panels';
  readonly counts: { readonly parts: number; readonly trainees: number; readonly trials: number };
};

export type ClassView = {
  readonly panels: readonly ClassPanel[];
  readonly gaugeRr: ClassGaugeRr | null;
  /** Of the condition words of all surveys against the reference. */
  readonly kappa: Kappa | null;
};

type Graded = { readonly survey: GradedSurvey; readonly grade: Grade };

/**
 * The standard deviation that scores are measured by, from the class: √ of the mean of s*² over the panels that
 * enough surveys read. Undefined where no panel is.
 */
export function sigmaOfClass(
  surveys: readonly GradedSurvey[],
  reference: Reference,
  { leastSurveys }: TrainingModel['class'],
): SigmaPt | undefined {
  const squares = [...reference.panels.keys()].flatMap((id) => {
    const means = meansOf(surveys, id);
    return means.length < Math.max(2, leastSurveys) ? [] : [algorithmA(means).sd ** 2];
  });
  const sd = squares.length === 0 ? 0 : Math.sqrt(mean(squares));
  return sd === 0 ? undefined : { value: micrometres(sd), from: 'class' };
}

const meansOf = (surveys: readonly GradedSurvey[], id: string): readonly number[] =>
  surveys.flatMap((survey) => readPanel(survey, id)?.statistics.mean ?? []);

export function classView(graded: readonly Graded[], reference: Reference): ClassView {
  // A slip says how somebody writes, not how hard a panel is.
  const sound = graded.filter(({ grade }) => !grade.reasons.some(isSlip));
  const pairs = sound.flatMap(({ grade }) => grade.conditions);
  return {
    panels: [...reference.panels.values()].map((panel) => classPanel(panel, sound)),
    gaugeRr: rrOfClass(sound, reference),
    kappa: pairs.length === 0 ? null : cohenKappa(classTable(pairs)),
  };
}

function classPanel(reference: ReferencePanel, graded: readonly Graded[]): ClassPanel {
  const { id } = reference.panel;
  const means = meansOf(
    graded.map(({ survey }) => survey),
    id,
  );
  const verdicts = graded.flatMap(({ grade }) =>
    grade.scores.filter(({ panel }) => panel.id === id).map(({ verdict }) => verdict),
  );
  return {
    reference,
    count: means.length,
    robust: means.length < 2 ? null : algorithmA(means),
    satisfactory:
      verdicts.length === 0
        ? null
        : verdicts.filter((one) => one === 'satisfactory').length / verdicts.length,
  };
}

/** A survey of less than half of the car leaves too few panels that everybody read. */
const LEAST_COVERAGE = 0.5;

function rrOfClass(graded: readonly Graded[], reference: Reference): ClassGaugeRr | null {
  const surveys = graded
    .filter(({ grade: { coverage } }) => coverage.panelsRead >= LEAST_COVERAGE * coverage.panels)
    .map(({ survey }) => survey);
  if (surveys.length < 2) return null;
  return atMarks(surveys) ?? byPanels(surveys, reference);
}

const isSlip = ({ code }: { readonly code: string }): boolean =>
  code === 'unit-slip' || code === 'decimal-slip' || code === 'sides-swapped';

/** Marked points that everyone read twice or more. */
function atMarks(surveys: readonly GradedSurvey[]): ClassGaugeRr | null {
  const [first] = surveys;
  if (first === undefined) return null;
  const marks = readPanels(first).flatMap(({ panel }) =>
    [...markedPoints(first, panel.id)].map((point) => ({ id: panel.id, point })),
  );
  return rr(
    marks.map(({ id, point }) =>
      surveys.map((survey) => {
        const isMarked = markedPoints(survey, id).has(point);
        const found = readPanel(survey, id)?.points.find((one) => one.point === point);
        return isMarked ? (found?.repeats ?? []) : [];
      }),
    ),
    'marked points',
  );
}

/** Panels that everyone read at two points or more; what varies within them is the film as well. */
const byPanels = (surveys: readonly GradedSurvey[], { panels }: Reference): ClassGaugeRr | null =>
  rr(
    [...panels.keys()].map((id) =>
      surveys.map((survey) =>
        (readPanel(survey, id)?.points ?? []).map(({ thickness }) => thickness),
      ),
    ),
    'panels',
  );

function rr(
  table: readonly (readonly (readonly number[])[])[],
  parts: ClassGaugeRr['parts'],
): ClassGaugeRr | null {
  const full = table.filter((part) => part.every((trials) => trials.length >= 2));
  if (full.length < 2) return null;
  const trials = Math.min(...full.flat().map(({ length }) => length));
  const even = full.map((part) => part.map((values) => values.slice(0, trials)));
  const trainees = full[0]?.length ?? 0;
  return { result: gaugeRr(even), parts, counts: { parts: full.length, trainees, trials } };
}
