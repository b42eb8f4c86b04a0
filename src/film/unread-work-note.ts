/** What is to be said of a panel that was worked at a visit on record and not read after it. */
import { type Remark, remark } from '../base/remark.ts';
import { bare, says, um } from '../base/sentence.ts';
import type { PanelFacts } from './film-model.ts';

/** Nothing of a panel that was painted since: what went is no part of its paint. */
export const unreadWorkNotes = ({
  recorded,
  paintedDaysAgo,
}: Pick<PanelFacts, 'recorded' | 'paintedDaysAgo'>): readonly Remark[] =>
  paintedDaysAgo === null
    ? (recorded?.unread ?? []).map(({ date, mean, sd }) =>
        remark(
          'worked-unread',
          says`on ${date} it was worked and not read after: ${bare(mean)} ± ${um(sd)} (SD) are held to be gone by the plan, not measured, and count in its limits`,
          mean,
        ),
      )
    : [];
