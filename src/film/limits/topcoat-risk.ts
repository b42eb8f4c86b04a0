/** The risk of a removal to the topcoat of a panel, over all that the panel may be. */
import { type Micrometres, micrometres } from '../../base/units.ts';
import type { Condition } from '../condition/condition.ts';
import {
  allowanceOver,
  allowanceUpTo,
  clearRisk,
  type ExpectedRemoval,
  type PossibleClear,
} from './removal-risk.ts';
import type { Besides, PlainTopcoat, TopcoatCase } from './topcoat-cases.ts';

const NOTHING = micrometres(0);

/** Chance that the panel is what its word says. */
const chanceOfWord = ({ besides }: Pick<TopcoatCase, 'besides'>): number =>
  besides.reduce((left, { chance }) => left - chance, 1);

/** Chance of too little topcoat if it is this one. */
const plainRisk = (
  { clear, clearFloor }: Pick<PlainTopcoat, 'clear' | 'clearFloor'>,
  removal: ExpectedRemoval,
  thinner: Micrometres = NOTHING,
): number => clearRisk({ ...clear, mean: micrometres(clear.mean - thinner) }, clearFloor, removal);

/**
 * Σ chance · risk over all that the panel may be. Where no topcoat is known any removal counts as one too many, and
 * none as no risk. `thinner` is by how much every topcoat is taken to be thinner than reckoned.
 */
export function topcoatRisk(
  topcoat: TopcoatCase,
  removal: ExpectedRemoval,
  thinner: Micrometres = NOTHING,
): number {
  const own = plainRisk(topcoat, removal, thinner);
  if (topcoat.besides.length === 0) return own;
  return topcoat.besides.reduce(
    (sum, one) => sum + one.chance * riskBesides(one, removal, thinner),
    chanceOfWord(topcoat) * own,
  );
}

function riskBesides(
  { topcoat }: Besides,
  removal: ExpectedRemoval,
  thinner: Micrometres = NOTHING,
): number {
  if (topcoat === null) return removal.median > 0 ? 1 : 0;
  return plainRisk(topcoat, removal, thinner);
}

/** The largest median removal that keeps `topcoatRisk` at `risk` or under; 0 when none does. */
export function topcoatAllowance(topcoat: TopcoatCase, { risk, logSd }: TopcoatTerms): Micrometres {
  const lost = chanceOfLost(topcoat);
  if (lost >= risk) return NOTHING;
  return allowanceOver(possibleClears(topcoat), topcoat.clearFloor, { risk: risk - lost, logSd });
}

/** The same or `most`, whichever is less. */
export function topcoatAllowanceUpTo(
  most: Micrometres,
  topcoat: TopcoatCase,
  { risk, logSd }: TopcoatTerms,
): Micrometres {
  const lost = chanceOfLost(topcoat);
  if (lost >= risk) return NOTHING;
  const terms = { risk: risk - lost, logSd };
  return allowanceUpTo(most, possibleClears(topcoat), topcoat.clearFloor, terms);
}

type TopcoatTerms = { readonly risk: number; readonly logSd: number };

/** Chance that no topcoat is known, so that any removal is one too many. */
const chanceOfLost = ({ besides }: Pick<TopcoatCase, 'besides'>): number =>
  besides.reduce((sum, one) => (one.topcoat === null ? sum + one.chance : sum), 0);

function possibleClears(topcoat: TopcoatCase): readonly PossibleClear[] {
  const own = { clear: topcoat.clear, chance: chanceOfWord(topcoat) };
  const others = topcoat.besides.flatMap(({ topcoat: other, chance }) =>
    other === null ? [] : [{ clear: other.clear, chance }],
  );
  return [own, ...others];
}

/** What a removal risks. */
export type RemovalRisks = {
  readonly risk: number;
  /** The same were the topcoat thinner than reckoned. */
  readonly riskIfThin: number;
  /** The part of it that stands before anything is taken. */
  readonly already: number;
};

export const risksOf = (
  topcoat: TopcoatCase,
  removal: ExpectedRemoval,
  thinner: Micrometres,
): RemovalRisks => ({
  risk: topcoatRisk(topcoat, removal),
  riskIfThin: topcoatRisk(topcoat, removal, thinner),
  already: topcoatRisk(topcoat, { ...removal, median: NOTHING }),
});

/** The terms that `topcoatRisk` is the sum of, by what the panel may be; its word's own last. */
export const riskTerms = (
  topcoat: TopcoatCase,
  word: Condition,
  removal: ExpectedRemoval,
): readonly { readonly condition: Condition; readonly chance: number; readonly risk: number }[] => [
  ...topcoat.besides.map((one) => ({
    condition: one.condition,
    chance: one.chance,
    risk: riskBesides(one, removal),
  })),
  { condition: word, chance: chanceOfWord(topcoat), risk: plainRisk(topcoat, removal) },
];
