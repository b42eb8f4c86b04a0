/** A test spot, and where its file speaks of it first. */
import type { Place } from '../../base/diagnostics.ts';
import type { SpotTrial } from '../../correction/spot/spot-trial.ts';

export type PlacedTrial = { readonly trial: SpotTrial; readonly at: Place };
