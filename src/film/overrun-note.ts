/** What is to be said of a panel that lost more than might go at a visit on record. */
import { type Remark, remark } from '../base/remark.ts';
import { bare, type Sentence, says, um } from '../base/sentence.ts';
import type { Overrun, PanelFacts } from './film-model.ts';

/** Nothing of a panel that was painted since: what went is no part of its paint. */
export const overrunNotes = ({
  recorded,
  paintedDaysAgo,
}: Pick<PanelFacts, 'recorded' | 'paintedDaysAgo'>): readonly Remark[] =>
  paintedDaysAgo === null ? (recorded?.overruns ?? []).map(overrunNote) : [];

const overrunNote = ({ date, mean, sd, allowed, surely }: Overrun): Remark =>
  remark(
    'overrun-on-record',
    says`on ${date} ${surely ? 'more' : 'perhaps more'} came off than might go, ${bare(mean)} ± ${um(sd)} (SD)${mightGo(allowed)}: its limits count that with its ±; what took so much is not on record, so if it is worked, read marked points after each set`,
    mean,
  );

function mightGo(allowed: Overrun['allowed']): Sentence {
  if (allowed === null) return says``;
  return allowed === 0 ? says` where nothing might` : says` where ${um(allowed, 2)} might`;
}
