/** What the words for the state of a panel, of a plan and of a run mean. */
import type { DiagnosticKind } from '../../base/catalogue.ts';
import type { GoOnVerdict } from '../../correction/go-on.ts';
import type { Verdict } from '../../correction/plan/plan.ts';
import type { AgainstPlan } from '../../correction/removal/measured-removal.ts';
import type { RungState } from '../../correction/spot/spot-ladder.ts';
import type { NextCode } from '../../correction/spot/spot-next.ts';
import type { ComparedBy } from '../../film/compare/panel-comparison.ts';
import type { Condition } from '../../film/condition/condition.ts';
import type { GaugeVerdict } from '../../film/gauge/gauge-check.ts';
import type { VerdictGround } from '../../training/overall-verdict.ts';
import type { ScoreVerdict } from '../../training/scores.ts';
import type { Basis } from '../default.ts';

export const conditionMeanings: Readonly<Record<Condition, string>> = {
  unread: 'No valid reading: the panel was not read, or the gauge cannot read what is under it.',
  covered: 'A film, wrap or coating lies over the paint, as the job says.',
  filler: 'A point reads so much that there is filler under the paint.',
  mixed:
    'Part of the panel carries another film than the rest: two zones, surveyed and worked apart.',
  refinished: 'The panel reads as if it was painted again after the factory.',
  thin: 'A point reads less than must stay, or the thinnest credible film does.',
  'cut-back': 'The panel reads well under the others: it was likely sanded or cut before.',
  original: 'The readings are in line with factory film.',
};

export const verdictMeanings: Readonly<Record<Verdict, string>> = {
  polish: 'Steps were found that reach the aim, to within a point of it, and keep every limit.',
  lighter: 'The aim takes more film than may go: the steps do what the limits allow.',
  hand: 'The panel is worked by hand.',
  leave: 'The panel is left as it is; the reason stands beside it.',
  refinish: 'Polishing is no answer: the panel wants new paint.',
};

/** How a rung of the ladder stands after test spots. */
export const rungMeanings: Readonly<Record<RungState, string>> = {
  'too-mild': 'It did not clear, or is milder than one that did not.',
  cleared: 'It was tried and cleared what was aimed at.',
  'over-budget': 'One set of it takes more than may go.',
  open: 'Nothing speaks against it.',
};

/** What to do after the test spots. */
export const nextMeanings: Readonly<Record<NextCode, string>> = {
  start: 'Nobody judged a trial yet: start with the mildest that may do.',
  again: 'One more set of the same on the same place.',
  'step-up': 'The rung did not clear: try the next one.',
  refine: 'It cleared and left haze: take a refining step.',
  done: 'It cleared: nothing stronger is needed.',
  'stop-colour': 'Stop: colour came off on the pad.',
  'stop-overrun': 'Stop: a trial surely took more than might go where it was worked.',
  'stop-risk': 'Stop: the next rung takes more than may go.',
  'stop-ladder': 'Stop: no rung of this shop is likely to do.',
};

/** Whether to work a panel further, once film was taken from it. */
export const goOnMeanings: Readonly<Record<GoOnVerdict, string>> = {
  'go-on': 'One more set of the step named would keep every limit. It is allowed, not asked for.',
  stop: 'No more work on this panel: more came off than might go, nothing more may go, or one more set of the step named breaks a limit.',
  unresolved: 'The readings cannot say: what came off may be little enough, or too much.',
};

/** By what a panel was compared. */
export const comparedByMeanings: Readonly<Record<ComparedBy, string>> = {
  pairs: 'By points that were marked and found again.',
  means: 'By the means over the panel, as no point was found again: film that varies hides more.',
  nothing: 'There was nothing to compare by.',
};

/** What came off, beside what the plan foretold. */
export const againstPlanMeanings: Readonly<Record<AgainstPlan, string>> = {
  more: 'More came off than was foretold, beyond what both may be off by.',
  less: 'Less came off than was foretold, beyond what both may be off by.',
  'as-foretold': 'What came off is within what plan and readings may be off by.',
};

/** A rate, by what it took over all panels. */
export const rateMeanings: Readonly<Record<'too-low' | 'too-high', string>> = {
  'too-low': 'The combination cuts more than its rate says.',
  'too-high': 'The combination cuts less than its rate says.',
};

/** What a score of a trainee’s panel, or a whole survey, comes to. */
export const scoreMeanings: Readonly<Record<ScoreVerdict, string>> = {
  satisfactory: 'As near to the reference as may be asked: |z| of 2 or less.',
  questionable:
    'Between satisfactory and not: |z| over 2 and under 3; of a survey, verdict_because says what of.',
  unsatisfactory:
    'Too far from the reference: |z| of 3 or more; of a survey, on two panels or more.',
};

export const gradeVerdictMeanings: Readonly<Record<ScoreVerdict | 'not-read', string>> = {
  ...scoreMeanings,
  'not-read': 'The file of the trainee could not be read: nothing is graded.',
};

/** What makes a survey questionable or unsatisfactory. */
export const verdictGroundMeanings: Readonly<Record<VerdictGround, string>> = {
  'panels-off': 'Unsatisfactory: two panels or more are unsatisfactory.',
  'car-off': 'Unsatisfactory: over the whole car the survey reads off by an unsatisfactory score.',
  'under-pass-mark':
    'The mark is under the pass mark: unsatisfactory where two panels or more are at fault, else questionable.',
  'one-panel-off': 'Questionable: one panel is unsatisfactory. No one fails on one panel alone.',
  'panels-doubtful': 'Questionable: two panels or more are questionable.',
  'car-doubtful': 'Questionable: over the whole car the survey reads off by a questionable score.',
  'gauge-drift':
    'Questionable: over the car the gauge drifts by a questionable score or more. Panels that it puts off count by themselves.',
  'marks-off': 'Questionable: some marks read off on panel after panel.',
  'not-following':
    'Questionable: values rise and fall otherwise than the reference’s, from mark to mark or from panel to panel, as they would by chance; on the whole car, or from one panel of the file on. What was read is to be asked; the mark stays.',
  slip: 'Questionable: a blunder in the readings, such as a slip, swapped sides, or values made up.',
  copied:
    'Questionable: the values agree too closely with another survey’s, or with the reference’s. Whose they are is to be asked; the mark stays.',
  'repair-missed': 'Questionable: a repaired panel was read and not found.',
  'panels-unread': 'Questionable: two panels or more were not read.',
  'half-unread':
    'Questionable: half of the panels or more were not read, or at one point only where the reference has more.',
};

/** What a check on shims says of a gauge. */
export const gaugeVerdictMeanings: Readonly<Record<GaugeVerdict, string>> = {
  pass: 'On every shim the error and its uncertainty together keep within what is permitted.',
  fail: 'On some shim the error is beyond what is permitted by more than its uncertainty.',
  undecided:
    'The error is nearer to the limit than it is certain: read more often, or use better shims.',
};

export const basisMeanings: Readonly<Record<Basis, string>> = {
  published: 'Someone published the number; the source is named.',
  'common practice': 'The trade works by this number; nobody is known to have published it.',
  'from memory': 'The number is remembered from a source that was not at hand to check.',
  derived: 'The number follows from others; the source says how.',
  assumption: 'Nobody knows the number well; it is yours to change.',
};

/** What became of a run, by its exit code. */
export const exitCodeMeanings: readonly {
  readonly code: number;
  readonly kind: DiagnosticKind | null;
  readonly meaning: string;
}[] = [
  { code: 0, kind: 'remark', meaning: 'The work is done.' },
  {
    code: 1,
    kind: null,
    meaning:
      'The work is done, and the answer is no: plan, where no panel (or none of those named) can be worked; gauge, where it fails; compare and grade with --check, where something stops or someone does not pass.',
  },
  { code: 2, kind: 'usage', meaning: 'The command line was not understood.' },
  {
    code: 3,
    kind: null,
    meaning: 'Of a batch, some jobs are done and some are not; each record says which.',
  },
  {
    code: 65,
    kind: 'data',
    meaning: 'An input cannot be read without guessing; the place and the way out are named.',
  },
  { code: 66, kind: 'input-file', meaning: 'A named file is missing or cannot be read.' },
  { code: 70, kind: null, meaning: 'A mistake of the program itself; please report it.' },
  { code: 73, kind: 'output', meaning: 'The output could not be written, or would overwrite.' },
  {
    code: 78,
    kind: 'settings',
    meaning: 'A job, shop or template file holds a mistake, or a variable of the environment does.',
  },
];
