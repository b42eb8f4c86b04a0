/** What is to be said of a panel that lost more than might go at a visit on record. */
import { type Remark, remark } from '../base/remark.ts';
import { bare, type Sentence, says, um } from '../base/sentence.ts';
import type { Micrometres } from '../base/units.ts';
import type { Overrun, PanelFacts } from './film-model.ts';
import type { PanelSurvey } from './survey.ts';

type Spent = {
  readonly facts: Pick<PanelFacts, 'recorded' | 'paintedDaysAgo'>;
  readonly budget: Micrometres;
};

/** Nothing of a panel that was painted since: what went is no part of its paint. */
export const overrunNotes = ({
  facts: { recorded, paintedDaysAgo },
  budget,
}: Spent): readonly Remark[] =>
  paintedDaysAgo === null
    ? (recorded?.overruns ?? []).map((overrun) => overrunNote(overrun, budget > 0))
    : [];

/** Other evidence may free a panel, or stop it, after its film was judged: what is said of it goes by what may go then. */
export const withOverrunsTold = (survey: PanelSurvey): PanelSurvey => {
  const told = overrunNotes(survey);
  const isTold = ({ code }: Remark): boolean => code === CODE;
  return told.length === 0 || !survey.evidence.some(isTold)
    ? survey
    : { ...survey, evidence: [...survey.evidence.filter((one) => !isTold(one)), ...told] };
};

const CODE = 'overrun-on-record';

/** Where nothing may go there is nothing to say of how it is worked. */
const overrunNote = ({ date, mean, sd, allowed, surely }: Overrun, mayGo: boolean): Remark =>
  remark(
    CODE,
    says`on ${date} ${surely ? 'more' : 'perhaps more'} came off than might go, ${bare(mean)} ± ${um(sd)} (SD)${mightGo(allowed)}: its limits count that with its ±; what took so much is not on record${mayGo ? ', so if it is worked, read marked points after each set' : ''}`,
    mean,
  );

function mightGo(allowed: Overrun['allowed']): Sentence {
  if (allowed === null) return says``;
  return allowed === 0 ? says` where nothing might` : says` where ${um(allowed, 2)} might`;
}
