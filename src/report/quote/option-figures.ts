/** The figures of an option, as record and table both write them. */
import { jobHours } from '../../work/job-time.ts';
import type { QuoteOption } from '../../work/quote-option.ts';
import { recorded, recordedOrNull } from '../recorded.ts';

/** What it aims at, what it gets, and what that takes from the paint. */
export const optionFigures = ({ aim, expected, spent, polished, left, risk }: QuoteOption) => ({
  aim: aim.name,
  aimed_pct: recorded(100 * aim.share),
  expected_pct: recorded(100 * expected),
  spent_um: recordedOrNull(spent),
  expected_polished_pct: polished === null ? null : recorded(100 * polished.expected),
  spent_polished_um: recordedOrNull(polished?.spent ?? null),
  left_um: recordedOrNull(left),
  risk_prob: recordedOrNull(risk),
});

/** Hours that the job keeps to with that chance; null where nothing is charged. */
export const optionHours = ({ work, charged }: QuoteOption, chance: number): number | null =>
  charged === null ? null : recorded(jobHours(work.job.time, chance));
