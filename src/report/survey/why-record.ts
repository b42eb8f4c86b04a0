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
import type { MachineRecord } from '../model.ts';
import { recorded, recordedDof, recordedOrNull } from '../recorded.ts';
import { limitStepsRecord } from './limit-steps.ts';
import { comparisonRecord } from './sureness-record.ts';

/** GUM: the interval that holds the value with this chance. */
const CONFIDENCE = 0.95;

export function uncertaintyRecord({ uncertainty }: PanelSurvey): MachineRecord | null {
  if (uncertainty === null) return null;
  return {
    value_um: recorded(uncertainty.value),
    standard_um: recorded(standardUncertainty(uncertainty)),
    dof: recordedDof(effectiveDegreesOfFreedom(uncertainty)),
    expanded_um: recorded(expandedUncertainty(uncertainty, CONFIDENCE)),
    confidence_pct: recorded(100 * CONFIDENCE),
    sources: uncertaintyBudget(uncertainty).map(({ source, contribution, share, dof }) => ({
      source,
      sd_um: recorded(Math.abs(contribution)),
      share: recorded(share),
      dof: recordedDof(dof),
    })),
  };
}

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
    doubt: parted ? [] : why.doubt.map(({ source, share }) => ({ source, share: recorded(share) })),
    limits: parted ? [] : why.limits.map(limitStepsRecord),
    flag_rule: parted ? 'none' : survey.flagRule,
    ashman_d: recordedOrNull(survey.ashmanD),
  };
}

export const pointRecord = ({ point, place, curved, thickness, repeats }: PanelPoint) => ({
  point,
  place,
  curved,
  mean_um: recorded(thickness),
  readings_um: repeats.map(recorded),
});

function spreadRecord({ film, moderation }: PanelSurvey) {
  if (film === null || moderation === null) return null;
  const { own, prior } = moderation;
  return {
    own_sd_um: own.dof === 0 ? null : recorded(Math.sqrt(own.variance)),
    own_dof: own.dof,
    prior_sd_um: recorded(Math.sqrt(prior.variance)),
    prior_dof: recorded(prior.dof),
    sd_um: recorded(film.spread.sd),
    dof: recorded(film.spread.dof),
  };
}

function thinnestRecord(
  { film }: PanelSurvey,
  { thinnest, distributionFree }: PanelWhy,
  { content, confidence }: Settings['film']['tolerance'],
) {
  if (film === null || distributionFree === null) return null;
  return {
    content_pct: recorded(100 * content),
    confidence_pct: recorded(100 * confidence),
    tolerance_factor: recordedOrNull(thinnest?.factor),
    bound_um: recordedOrNull(thinnest?.bound),
    min_um: recorded(film.smallest),
    gauge_margin_um: recordedOrNull(thinnest?.gaugeMargin),
    thinnest_um: recordedOrNull(thinnest?.thinnest),
    distribution_free: {
      confidence_pct: recorded(100 * distributionFree.confidence),
      points_needed: distributionFree.pointsNeeded,
    },
  };
}

const estimate = ({ mean, variance }: { readonly mean: number; readonly variance: number }) => ({
  mean_um: recorded(mean),
  sd_um: recorded(Math.sqrt(variance)),
});

function clearRecord({ topcoat }: PanelSurvey, { clear }: PanelWhy, thinnestShare: number) {
  if (topcoat === null || clear === null) return null;
  const { onThinnest } = clear;
  const { taken } = topcoat.told.film;
  return {
    finish: topcoat.finish,
    taken_um: recorded((taken.allOver ?? taken).mean),
    held: clear.held === null ? null : estimate(clear.held),
    under: estimate(clear.under),
    by_total: estimate(clear.byTotal),
    share_g: recorded(clear.share),
    gap_counted_um: recorded(clear.gapCounted),
    over_panel: estimate(clear.overPanel),
    gone_at_place: estimate(clear.atPlace),
    within_sd_um: recorded(Math.sqrt(clear.within.variance)),
    thinnest_share_pct: recorded(100 * thinnestShare),
    on_thinnest: { mean_um: recorded(onThinnest.mean), sd_um: recorded(onThinnest.sd) },
  };
}

const riskRecord = ({ risk, riskIfThin, already }: NonNullable<PanelWhy['risk']>) => ({
  risk_prob: recorded(risk),
  risk_if_thin_prob: recorded(riskIfThin),
  already_prob: recorded(already),
});
