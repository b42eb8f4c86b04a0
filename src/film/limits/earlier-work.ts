/**
 * What earlier work took of a panel: stated, else assumed; what visits on record took besides; on a panel cut back
 * also the film that it lacks to the others.
 *
 * That film counts as clear that is not there, polished off or never painted. Against the limit over the panel's life
 * it counts where nobody knows what was polished off: where somebody does, the rest was never painted; and where the
 * clear of this panel is known by itself, what is missing lies under it.
 */
import { type Micrometres, micrometres } from '../../base/units.ts';
import type { FilmModel, PanelFacts, RecordedRemoval } from '../film-model.ts';

const NOTHING_RECORDED: RecordedRemoval = { mean: micrometres(0), sd: micrometres(0) };

/** Gone from the clear as it was painted. */
export const clearTaken = (
  facts: PanelFacts,
  missing: Micrometres,
  { unknownClear }: FilmModel['earlier'],
): RecordedRemoval => takenInAll(facts, missing, unknownClear);

/** Gone of what may come off over the panel's life. */
export const lifeSpent = (
  facts: PanelFacts,
  missing: Micrometres,
  { unknownLife }: FilmModel['earlier'],
): RecordedRemoval =>
  takenInAll(facts, countsForLife(facts) ? missing : micrometres(0), unknownLife);

/** Whether visits on record took some of it, as test spots of this one are none of its history. */
export const isOnRecord = ({ recorded }: Pick<PanelFacts, 'recorded'>): boolean =>
  recorded !== null && recorded.mean > 0 && recorded.by !== TEST_SPOTS;

/** What says of film that it is gone, where no record does. */
export const TEST_SPOTS = 'test spots';

/** Whether film that a panel lacks is held to have been polished off. */
export const countsForLife = ({ taken, clear }: PanelFacts): boolean =>
  taken === null && clear?.of !== 'panel';

type Gone = Pick<RecordedRemoval, 'mean' | 'sd' | 'allOver'>;

/** At one place beyond what went all over the panel: no place is held to have more film than the panel. */
export function goneAtPlace({ mean, sd, allOver }: Gone): {
  readonly mean: Micrometres;
  readonly variance: number;
} {
  if (allOver === undefined) return { mean: micrometres(0), variance: 0 };
  return {
    mean: micrometres(Math.max(0, mean - allOver.mean)),
    variance: Math.max(0, sd ** 2 - allOver.sd ** 2),
  };
}

function takenInAll(
  { taken, takenSd, recorded }: PanelFacts,
  missing: Micrometres,
  unknown: Micrometres,
): RecordedRemoval {
  const withStated = ({ mean, sd }: Pick<RecordedRemoval, 'mean' | 'sd'>) => ({
    mean: micrometres((taken ?? unknown) + mean + Math.max(0, missing)),
    sd: micrometres(Math.hypot(takenSd, sd)),
  });
  const { allOver, ...all } = recorded ?? NOTHING_RECORDED;
  return {
    ...withStated(all),
    ...(allOver === undefined ? {} : { allOver: withStated(allOver) }),
  };
}
