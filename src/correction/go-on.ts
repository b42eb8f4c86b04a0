/**
 * One more set, or stop: whether another set of a step keeps every limit of a panel from which film was
 * taken, by what is held of what was taken.
 *
 * The limits are asked three times: as what was taken is held with its doubt, and as if it had been the
 * least and the most that the measurement allows. Where they disagree, what is held decides if it is known: if
 * the measurement shows a removal, or bears out what was foretold. Else the data cannot say.
 */
import type { Allowance } from '../film/limits/allowance.ts';
import type { ExpectedRemoval } from '../film/limits/removal-risk.ts';
import { topcoatRisk } from '../film/limits/topcoat-risk.ts';

export type GoOnVerdict = 'go-on' | 'stop' | 'unresolved';

/** What a panel allows, by what is held of what was taken from it. */
export type AllowancesLeft = {
  readonly held: Allowance;
  /** As if the least, and the most, of the interval had been taken. */
  readonly atLeast: Allowance;
  readonly atMost: Allowance;
};

export type GoOnCase = {
  readonly left: AllowancesLeft;
  /** One more set. */
  readonly set: ExpectedRemoval;
  /** Whether a removal was shown, or one that was foretold was borne out. */
  readonly known: boolean;
  /** Whether it says that film was added: then it is no measurement of a removal. */
  readonly gained: boolean;
  /** Whether more came off than might go: then nobody goes on before it is known why. */
  readonly overrun: boolean;
};

export function goOn({ left, set, known, gained, overrun }: GoOnCase): GoOnVerdict {
  const allows = ({ budget }: Allowance): boolean => budget >= set.median;
  if (overrun || !allows(left.atLeast)) return 'stop';
  if (gained) return 'unresolved';
  if (allows(left.atMost) && allows(left.held)) return 'go-on';
  if (!known) return 'unresolved';
  return allows(left.held) ? 'go-on' : 'stop';
}

/** Chance of clear under its floor after one more set; null where nothing is known of the clear. */
export const riskOfOneMore = (
  { topcoat }: Pick<Allowance, 'topcoat'>,
  set: ExpectedRemoval,
): number | null => (topcoat === null ? null : topcoatRisk(topcoat, set));

/** Of a panel in several zones the hardest word counts: stop before unresolved, that before go on. */
export function hardestVerdict(verdicts: readonly GoOnVerdict[]): GoOnVerdict {
  if (verdicts.includes('stop')) return 'stop';
  return verdicts.length === 0 || verdicts.includes('unresolved') ? 'unresolved' : 'go-on';
}
