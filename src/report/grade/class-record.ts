/** A class as a whole in the record of its grades, and what it has in common with that of a trainee. */
import type { GradedClass } from '../../tasks/grade/grade-request.ts';
import type { ClassGaugeRr } from '../../training/class-gauge-rr.ts';
import type { ClassPanel, FoundByClass } from '../../training/class-view.ts';
import type { ConditionAgreement } from '../../training/condition-agreement.ts';
import { recorded, recordedOrNull } from '../recorded.ts';

export const pct = (share: number | null): number | null =>
  share === null ? null : recorded(100 * share);

/** The class as a whole; of names only those of a page for everybody. */
export const classRecord = ({ view, copied, trainees, asked, leftOut }: GradedClass) => ({
  n_trainees: new Set(trainees.map(({ name }) => name)).size,
  n_graded: new Set(trainees.filter(({ grade }) => grade !== null).map(({ name }) => name)).size,
  panels: view.panels.map(classPanelRecord),
  low_spots: foundRecord(view.lowSpots),
  repaired_panels: foundRecord(view.repairs),
  conditions: view.conditions === null ? null : kappaRecord(view.conditions),
  gauge_rr: view.gaugeRr === null ? null : gaugeRrRecord(view.gaugeRr),
  left_out:
    asked === null ? leftOut.map(({ trainee, why }) => ({ trainee, left_out_as: why })) : [],
  copied:
    asked === null
      ? copied.map(({ trainees: who, fromReference, same, of, apart, identical, whole }) => ({
          trainees: who,
          from_reference: fromReference,
          identical,
          same,
          out_of: of,
          copied_panels: (whole?.panels ?? []).map(({ id }) => id),
          apart_um: recordedOrNull(apart?.sd),
          usual_um: recordedOrNull(apart?.usual),
        }))
      : [],
});

const classPanelRecord = ({ reference, count, robust, satisfactory }: ClassPanel) => ({
  panel: reference.panel.id,
  reference_um: recorded(reference.mean),
  reference_u_um: recorded(reference.uncertainty),
  n_points: reference.count,
  condition: reference.condition,
  low_spot: reference.lowSpot?.point ?? null,
  n_trainees: count,
  robust_mean_um: recordedOrNull(robust?.mean),
  robust_sd_um: recordedOrNull(robust?.sd),
  satisfactory_pct: pct(satisfactory),
});

const gaugeRrRecord = ({ result, parts, counts }: ClassGaugeRr) => ({
  parts_are: parts === 'panels' ? 'panels' : 'marked-points',
  n_parts: counts.parts,
  n_trainees: counts.trainees,
  n_trials: counts.trials,
  repeatability_um: recorded(result.sd.ev),
  reproducibility_um: recorded(result.sd.av),
  interaction_um: recorded(result.sd.int),
  interaction_prob: recorded(result.interactionChance),
  interaction_pooled: result.pooled,
  rr_um: recorded(result.sd.grr),
  part_um: recorded(result.sd.pv),
  total_um: recorded(result.sd.tv),
  study_variation_pct: pct(result.studyVariation),
  ndc: result.ndc,
});

export const foundRecord = ({ found, of, interval }: FoundByClass) => ({
  found,
  out_of: of,
  low_pct: pct(interval?.[0] ?? null),
  high_pct: pct(interval?.[1] ?? null),
});

export const kappaRecord = ({ of, alike, kappa }: ConditionAgreement) => ({
  n_panels: of,
  alike_pct: pct(alike / of),
  kappa: recordedOrNull(kappa),
});
