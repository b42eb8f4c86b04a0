/** `uncertainty` and `why` of a panel in the record of a survey. */
import {
  effectiveDegreesOfFreedom,
  expandedUncertainty,
  standardUncertainty,
  uncertaintyBudget,
} from '../../base/uncertainty.ts';
import { type PanelWhy, panelWhy } from '../../film/help/panel-why.ts';
import type { PanelPoint } from '../../film/panel-points.ts';
import type { PanelSurvey } from '../../film/survey.ts';
import type { Settings } from '../../tasks/settings/settings.ts';
import { machine, machineOrNull } from '../envelope.ts';
import type { MachineRecord } from '../model.ts';
import { limitStepsRecord } from './limit-steps.ts';
import { comparisonRecord } from './sureness-lines.ts';

/** GUM: the interval that holds the value with this chance. */
const CONFIDENCE = 0.95;

export function uncertaintyRecord({ uncertainty }: PanelSurvey): MachineRecord | null {
  if (uncertainty === null) return null;
  return {
    value_um: machine(uncertainty.value),
    standard_um: machine(standardUncertainty(uncertainty)),
    dof: finite(effectiveDegreesOfFreedom(uncertainty)),
    expanded_um: machine(expandedUncertainty(uncertainty, CONFIDENCE)),
    confidence_pct: machine(100 * CONFIDENCE),
    sources: uncertaintyBudget(uncertainty).map(({ source, contribution, share, dof }) => ({
      source,
      um: machine(Math.abs(contribution)),
      share: machine(share),
      dof: finite(dof),
    })),
  };
}

/** Null where nothing limits them: JSON knows no infinity. */
const finite = (dof: number): number | null => (Number.isFinite(dof) ? machine(dof) : null);

/** Of a panel in two zones its points and what parts them; the rest stands with each zone. */
export function whyRecord(
  survey: PanelSurvey,
  { terms, film }: Pick<Settings, 'terms' | 'film'>,
): MachineRecord {
  const parted = survey.zones.length > 0;
  const why = panelWhy(survey, terms, film);
  return {
    readings: [...survey.points, ...survey.otherPoints].map(pointRecord),
    comparisons: (survey.sureness?.comparisons ?? []).map(comparisonRecord),
    beside: (survey.sureness?.beside ?? []).map(comparisonRecord),
    spread: spreadRecord(survey),
    thinnest: parted ? null : thinnestRecord(survey, why, film.tolerance),
    clear: parted ? null : clearRecord(survey, why, film.topcoat.thinnestShare),
    risk: parted || why.risk === null ? null : riskRecord(why.risk),
    doubt: parted ? [] : why.doubt.map(({ source, share }) => ({ source, share: machine(share) })),
    limits: parted ? [] : why.limits.map(limitStepsRecord),
    flag_rule: parted ? 'none' : survey.flagRule,
    ashman_d: machineOrNull(survey.ashmanD),
  };
}

export const pointRecord = ({ point, place, curved, thickness, repeats }: PanelPoint) => ({
  point,
  place,
  curved,
  mean_um: machine(thickness),
  readings_um: repeats.map(machine),
});

function spreadRecord({ film, moderation }: PanelSurvey) {
  if (film === null || moderation === null) return null;
  const { own, prior } = moderation;
  return {
    own_sd_um: own.dof === 0 ? null : machine(Math.sqrt(own.variance)),
    own_dof: own.dof,
    prior_sd_um: machine(Math.sqrt(prior.variance)),
    prior_dof: machine(prior.dof),
    sd_um: machine(film.spread.sd),
    dof: machine(film.spread.dof),
  };
}

function thinnestRecord(
  { film }: PanelSurvey,
  { thinnest, distributionFree }: PanelWhy,
  { content, confidence }: Settings['film']['tolerance'],
) {
  if (film === null || distributionFree === null) return null;
  return {
    content_pct: machine(100 * content),
    confidence_pct: machine(100 * confidence),
    tolerance_factor: machineOrNull(thinnest?.factor),
    bound_um: machineOrNull(thinnest?.bound),
    min_um: machine(film.smallest),
    gauge_margin_um: machineOrNull(thinnest?.gaugeMargin),
    thinnest_um: machineOrNull(thinnest?.thinnest),
    distribution_free: {
      confidence_pct: machine(100 * distributionFree.confidence),
      points_needed: distributionFree.pointsNeeded,
    },
  };
}

const estimate = ({ mean, variance }: { readonly mean: number; readonly variance: number }) => ({
  mean_um: machine(mean),
  sd_um: machine(Math.sqrt(variance)),
});

function clearRecord({ topcoat }: PanelSurvey, { clear }: PanelWhy, thinnestShare: number) {
  if (topcoat === null || clear === null) return null;
  const { onThinnest } = clear;
  return {
    finish: topcoat.finish,
    taken_um: machine(topcoat.told.film.taken.mean),
    held: clear.held === null ? null : estimate(clear.held),
    under: estimate(clear.under),
    by_total: estimate(clear.byTotal),
    share_g: machine(clear.share),
    gap_counted_um: machine(clear.gapCounted),
    over_panel: estimate(clear.overPanel),
    within_sd_um: machine(Math.sqrt(clear.within.variance)),
    thinnest_share_pct: machine(100 * thinnestShare),
    on_thinnest: { mean_um: machine(onThinnest.mean), sd_um: machine(onThinnest.sd) },
  };
}

const riskRecord = ({ risk, riskIfThin, already }: NonNullable<PanelWhy['risk']>) => ({
  risk_prob: machine(risk),
  risk_if_thin_prob: machine(riskIfThin),
  already_prob: machine(already),
});
