/** How fast a shop works against the estimates, and what its own hours teach of that. */
import type { NormalKnowledge } from '../base/stats/conjugate-normal.ts';

export type Pace = {
  /** ln of what jobs take over their estimate. */
  readonly overall: NormalKnowledge;
  /** ln of what a stage takes over its estimate, beyond the overall pace; by stage. */
  readonly stages: ReadonlyMap<string, number>;
};

/** Before any record: as estimated, in the middle. */
export const unknownPace = (paceLogSd: number): Pace => ({
  overall: { mean: 0, sd: paceLogSd },
  stages: new Map(),
});
