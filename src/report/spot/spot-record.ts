/** `leastcut/spot/1`. */
import type { ReadTrial } from '../../correction/spot/spot-advice.ts';
import type { Rung } from '../../correction/spot/spot-ladder.ts';
import type { SpotResult } from '../../tasks/spot/spot-files.ts';
import { envelope, type RecordContext, remarkRecord } from '../envelope.ts';
import { factorRecord } from '../log-factor.ts';
import type { MachineRecord } from '../model.ts';
import { recorded, recordedOrNull } from '../recorded.ts';

export const spotRecord = (result: SpotResult, context: RecordContext): MachineRecord => ({
  ...envelope('spot', result, context),
  aim: result.settings.aim.name,
  spots: result.trials.map(trialRecord),
  hardness: { ...factorRecord(result.paint.removal.hardness), word: result.word },
  depth_scale: factorRecord(result.paint.removal.depthScale),
  provisional: result.paint.provisional,
  ladder: result.ladder.map(rungRecord),
  next: { code: result.next.code, combination: result.next.combination?.id ?? null },
  advice: result.advice.map(remarkRecord),
  kept: keptRecord(result),
});

function keptRecord({ kept }: SpotResult) {
  if (kept === undefined || kept === null) return null;
  return { added: kept.added, already: kept.already };
}

const trialRecord = ({ trial, removed }: ReadTrial): MachineRecord => ({
  spot: trial.spot,
  panel: trial.panel,
  combination: trial.combination.id,
  sets: trial.sets,
  marks: trial.marks.length,
  removed_um:
    removed === null
      ? null
      : { mean: recorded(removed.mean), low: recorded(removed.low), high: recorded(removed.high) },
  resolvable_um: recordedOrNull(removed?.resolvable),
  seen_surely_um: recordedOrNull(removed?.sure),
  defect: trial.defect.kind.id,
  cleared_pct: trial.cleared === null ? null : recorded(100 * trial.cleared),
  haze_grade: trial.haze,
  colour_on_pad: trial.colourOnPad,
  panel_c: recordedOrNull(trial.temperature),
});

const rungRecord = ({ combination, before, low, high, chance, tried, state }: Rung) => ({
  combination: combination.id,
  before_um_per_set: recorded(before),
  removal_um_per_set: {
    median: recorded(combination.perSet),
    low: recorded(low),
    high: recorded(high),
  },
  reaches_aim_prob: recorded(chance),
  tried,
  state,
});
