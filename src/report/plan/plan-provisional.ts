/** Why a plan is provisional still: what the test spots that were made have not shown. */
import { coloursAt, doubtsFinish } from '../../film/limits/colour-at-spot.ts';
import type { PlanResult } from '../../tasks/plan/plan-vehicle.ts';

type Provisional = {
  /** Beside the aim. */
  readonly page: string;
  /** Over the test spot that is to be made. */
  readonly card: string;
};

/** Of the factory paint. */
export function whyProvisional({
  paint: { tried },
  plan,
}: Pick<PlanResult, 'paint' | 'plan'>): Provisional {
  if (tried.some(({ panel }) => panel === null)) {
    return {
      page: 'no film that counts was read on a test spot',
      card: 'no spot has shown yet what a set takes',
    };
  }
  const surveys = plan.panels.map(({ survey }) => survey);
  if (surveys.some(doubtsFinish)) {
    return {
      page: 'a test spot that left colour shows nothing of what a set takes',
      card: 'the one that left colour shows nothing of what a set takes; settle first what that colour is',
    };
  }
  return tried.length === 0 && surveys.every(({ facts }) => coloursAt(facts).length === 0)
    ? { page: 'no test spot yet', card: 'nothing has shown yet how this paint gives way' }
    : {
        page: 'no test spot on the factory paint',
        card: 'nothing has shown yet how the factory paint gives way',
      };
}
