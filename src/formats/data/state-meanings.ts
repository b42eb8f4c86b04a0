/** What the words for the state of a panel, of a plan and of a run mean. */

import type { DiagnosticKind } from '../../base/catalogue.ts';
import type { Verdict } from '../../correction/plan.ts';
import type { RungState } from '../../correction/spot-ladder.ts';
import type { NextCode } from '../../correction/spot-next.ts';
import type { Condition } from '../../film/condition.ts';
import type { GaugeVerdict } from '../../film/gauge-check.ts';
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
  polish: 'Steps were found that reach the aim and keep every limit.',
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
  'stop-risk': 'Stop: the next rung takes more than may go.',
  'stop-ladder': 'Stop: no rung of this shop is likely to do.',
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
    meaning: 'The work is done, and the answer is no: no panel can be worked.',
  },
  { code: 2, kind: 'usage', meaning: 'The command line was not understood.' },
  {
    code: 65,
    kind: 'data',
    meaning: 'An input cannot be read without guessing; the place and the way out are named.',
  },
  { code: 66, kind: 'input-file', meaning: 'A named file is missing or cannot be read.' },
  { code: 70, kind: null, meaning: 'A mistake of the program itself; please report it.' },
  { code: 73, kind: 'output', meaning: 'The output could not be written, or would overwrite.' },
  { code: 78, kind: 'settings', meaning: 'A job, shop or template file holds a mistake.' },
];
