/** What of a quote is for panels of which something must be read again first: the job less the same job without them. */
import { type Minutes, minutes } from '../../base/units.ts';
import { isTouched, type Plan } from '../../correction/plan/plan.ts';
import type { Panel } from '../../film/template/template.ts';
import { jobTimeQuantile } from '../../work/job-time.ts';
import type { Minor } from '../../work/money.ts';
import type { QuoteAim, QuoteOption } from '../../work/quote-option.ts';
import { withoutWorkOn } from '../../work/without-work.ts';
import { asksToReadAgain } from '../survey/read-again.ts';
import type { SurveyResult } from '../survey/survey-vehicle.ts';

export type OnceReadAgain = {
  readonly panels: readonly Panel[];
  /** By how much longer the job is for them, of the middle and of what four in five such jobs keep within. */
  readonly p50: Minutes;
  readonly p80: Minutes;
  /** Of what is charged. */
  readonly charged: Minutes;
  /** Of the total, its tax with it; null without a price. */
  readonly total: Minor | null;
};

/** By aim; none where it works no such panel. */
export function onceReadAgain(
  options: readonly QuoteOption[],
  { survey, leftOut }: Pick<SurveyResult, 'survey' | 'leftOut'>,
  optionOf: (aim: QuoteAim, plan: Plan) => QuoteOption,
): ReadonlyMap<QuoteAim, OnceReadAgain> {
  const asked = new Set(
    survey.panels.filter((one) => asksToReadAgain(one, leftOut)).map(({ panel }) => panel.id),
  );
  if (asked.size === 0) return new Map();
  return new Map(
    options.flatMap((option) => {
      const worked = option.plan.panels.filter(
        (panel) => asked.has(panel.survey.panel.id) && isTouched(panel),
      );
      if (worked.length === 0) return [];
      const without = withoutWorkOn(option.plan, (panel) => worked.includes(panel));
      const panels = worked.map((panel) => panel.survey.panel);
      return [[option.aim, { panels, ...less(option, optionOf(option.aim, without)) }] as const];
    }),
  );
}

function less(whole: QuoteOption, rest: QuoteOption): Omit<OnceReadAgain, 'panels'> {
  const timeOf = ({ charged, work }: QuoteOption, share: number): number =>
    charged === null ? 0 : jobTimeQuantile(work.job.time, share);
  const longer = (share: number): Minutes => minutes(timeOf(whole, share) - timeOf(rest, share));
  return {
    p50: longer(0.5),
    p80: longer(0.8),
    charged: minutes((whole.charged ?? 0) - (rest.charged ?? 0)),
    total: whole.priced === null ? null : whole.priced.total - (rest.priced?.total ?? 0n),
  };
}
