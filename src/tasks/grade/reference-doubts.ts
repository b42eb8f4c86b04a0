/** What the expert’s own readings are doubted for: every trainee is measured by them. */
import { type Diagnostic, warning } from '../../base/diagnostics.ts';
import { pointsOver, restsOnOverRange, textsOf } from '../../film/condition/over-range.ts';
import { alikeRepeats } from '../../training/alike-repeats.ts';
import type { GradedSurvey } from '../../training/graded-survey.ts';
import { madeUpValues } from '../../training/made-up-values.ts';
import { expertReference, type Reference } from '../../training/reference.ts';
import type { TrainingModel } from '../../training/training-model.ts';

/** Repeats that are all one figure, panels with one value or with those of another panel, points beyond the range. */
export function referenceDoubts(
  expert: GradedSurvey | undefined,
  model: TrainingModel,
): readonly Diagnostic[] {
  if (expert === undefined) return [];
  const alike = alikeRepeats(expert, model);
  const { told } = madeUpValues(expert, byItself(expert), {
    slips: model.slips,
    keyed: new Set(),
  });
  return [...(alike === null ? [] : [alike]), ...told, ...beyondRange(expert)].map(
    ({ text, file, line }) =>
      warning('grade-reference-doubted', `the reference is in doubt: ${text}`, {
        at: { file: file ?? '', ...(line === null ? {} : { line }) },
        hint: 'everybody is measured by it: grade by a reference that was read at the car',
      }),
  );
}

/** Filler, or a probe that was lifted: as long as the expert did not read the point again nobody knows which. */
const beyondRange = ({ survey, readings }: GradedSurvey) =>
  survey.panels.filter(restsOnOverRange).map(({ panel, overRange }) => ({
    text: `${panel.name}, ${pointsOver(overRange)} beyond the range of the gauge (${textsOf(overRange)}): filler, or the probe was lifted; no repair is looked for there`,
    file: readings[0]?.origin.file ?? null,
    line: null,
  }));

/** Without its marks and what each panel shows: beside its own, no value is ever too even, and how even a panel is tells nothing. */
function byItself(expert: GradedSurvey): Reference {
  const reference = expertReference(expert);
  const panels = [...reference.panels].map(
    ([id, panel]) => [id, { ...panel, ...NOTHING_OF_ITS_OWN }] as const,
  );
  return { ...reference, panels: new Map(panels) };
}

const NOTHING_OF_ITS_OWN = {
  marked: new Set<string>(),
  even: false,
  own: { variance: 0, dof: 0 },
  inOrder: { count: 0, of: 1 },
} as const;
