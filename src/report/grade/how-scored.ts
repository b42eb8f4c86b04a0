/** What the scores of a sheet are, and what a z′ on it allows besides. */
import { figure } from '../../base/rounding.ts';
import { nextFact, nextSentence, type Sentence, says, um } from '../../base/sentence.ts';
import type { GradedClass } from '../../tasks/grade/grade-request.ts';
import type { Grade } from '../../training/grade-trainee.ts';
import { together } from '../../training/reasons.ts';
import { heldAgainst } from './grade-words.ts';

export function howScored(grade: Grade, graded: GradedClass): Sentence {
  const { questionable, unsatisfactory } = graded.settings.models.training.scores;
  return says`z is how far a panel’s mean is from ${heldAgainst(graded)}, in units of σ_pt (${um(graded.sigmaPt.value)})${besides(grade, graded)}.${nextSentence}Up to ${figure(questionable)} is satisfactory, under ${figure(unsatisfactory)} questionable, ${figure(unsatisfactory)} and more unsatisfactory (ISO 13528).${nextSentence}No one fails on one panel alone.`;
}

/** Nothing where no panel has a z′. */
function besides({ scores }: Grade, graded: GradedClass): Sentence {
  const allowing = scores.filter(({ kind }) => kind === 'z-prime');
  const ofClass = graded.reference.kind === 'consensus';
  const asOne = graded.assumptions.some(({ code }) => code === 'one-gauge');
  const own = allowing.some(({ shared }) => shared === 0);
  const parts = [
    // A σ_pt of the class holds its own points already.
    ...(own && !ofClass ? ['the film between your points and the reference’s'] : []),
    ...(own && ofClass && graded.sigmaPt.from !== 'class' ? ['the film between your points'] : []),
    ...(ofClass ? ['what the class is unsure of'] : []),
    ...(allowing.some(({ calibration }) => calibration > 0)
      ? [asOne ? 'what gauges may be off by on thick film' : 'what the gauges may be off by']
      : []),
    ...(!ofClass && allowing.some(({ shared, calibration }) => shared > 0 && calibration === 0)
      ? ['how well the reference repeats']
      : []),
  ];
  return allowing.length === 0 ? says`` : says`${nextFact}z′ allows besides for ${together(parts)}`;
}
