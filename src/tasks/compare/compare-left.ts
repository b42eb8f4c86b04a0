/** Readings before and after, and what came off → the readings and facts that what is left is told from. */
import { groupBy } from '../../base/group-by.ts';
import { micrometres } from '../../base/units.ts';
import type { PanelComparison } from '../../film/compare/panel-comparison.ts';
import type { PanelFacts, RecordedRemoval } from '../../film/film-model.ts';
import type { Reading } from '../../film/reading.ts';
import { takenInAll } from '../survey/taken-in-all.ts';

/**
 * The vehicle as it stands. A panel read again is as it was read then. Where only some of its marked points
 * were, the others stand as before, less the mean of what came off; a panel that was not read again stands
 * as before.
 */
export function readingsLeft(
  before: readonly Reading[],
  after: readonly Reading[],
  compared: readonly PanelComparison[],
): readonly Reading[] {
  const later = groupBy(after, ({ panel }) => panel);
  const byPairs = new Map(
    compared.flatMap(({ panel, by, change }) =>
      by === 'pairs' && change !== null ? [[panel.id, change.removed.value] as const] : [],
    ),
  );
  const kept = before.flatMap((reading) => {
    const again = later.get(reading.panel);
    if (again === undefined) return [reading];
    const removed = byPairs.get(reading.panel);
    return removed === undefined || again.some((one) => isSamePlace(one, reading))
      ? []
      : [lessThan(reading, removed)];
  });
  return [...kept, ...after];
}

const isSamePlace = (one: Reading, other: Reading): boolean =>
  one.point === other.point && one.place === other.place && one.layer === other.layer;

const lessThan = (reading: Reading, removed: number): Reading => ({
  ...reading,
  thickness: micrometres(Math.max(0, reading.thickness - removed)),
});

/** Whether the job states the clear of this panel: from before the work. One that was read is as the readings have it. */
export const isStatedClear = ({ clear }: Pick<PanelFacts, 'clear'>): boolean =>
  clear !== null && clear.of === 'panel' && clear.within === undefined;

/** What is known of a panel's paint, once so much more has come off it. */
export function factsAfter(facts: PanelFacts, removed: RecordedRemoval): PanelFacts {
  const { recorded, clear } = facts;
  const by = recorded === null ? 'readings before and after' : 'film record and these readings';
  return {
    ...facts,
    recorded: { ...takenInAll([...(recorded === null ? [] : [recorded]), removed]), by },
    clear:
      clear !== null && isStatedClear(facts)
        ? {
            ...clear,
            mean: micrometres(Math.max(0, clear.mean - removed.mean)),
            sd: micrometres(Math.hypot(clear.sd, removed.sd)),
          }
        : clear,
  };
}
