/** `leastcut/compare/1`. */
import { Z_95 } from '../../base/stats/normal.ts';
import { standardUncertainty, uncertaintyBudget } from '../../base/uncertainty.ts';
import { micrometres } from '../../base/units.ts';
import type { FilmChange } from '../../film/compare/compare-change.ts';
import type { PanelComparison } from '../../film/compare/panel-comparison.ts';
import type { ForetoldPanel } from '../../formats/plan-file.ts';
import type { CommonShift } from '../../tasks/compare/common-shift.ts';
import type { CompareResult } from '../../tasks/compare/compare-files.ts';
import type { VisitStep } from '../../tasks/compare/compare-film-doubts.ts';
import type { PanelLeft } from '../../tasks/compare/compare-left-parts.ts';
import { changeDof } from '../../tasks/compare/compare-panel.ts';
import { leftAtPlace, type PanelPlace } from '../../tasks/compare/compare-places.ts';
import { pointsApart } from '../../tasks/compare/odd-readings.ts';
import type { PartLeft } from '../../tasks/compare/part-left.ts';
import { envelope, type RecordContext, remarkRecord } from '../envelope.ts';
import { factorRecord } from '../log-factor.ts';
import type { MachineRecord } from '../model.ts';
import { recorded, recordedOrNull } from '../recorded.ts';
import { isSeen, notCompared, setsOf } from './compare-words.ts';

export function compareRecord(result: CompareResult, context: RecordContext): MachineRecord {
  const { total, panels, steps, rates, shift, gloss } = result;
  return {
    ...envelope('compare', result, context),
    template: result.before.survey.template.id,
    risk_pct: recorded(100 * result.settings.terms.risk),
    panels: panels.map(panelRecord),
    places: result.places.map((one) => placeRecord(one, panels)),
    not_compared: notCompared(total).map(({ panel, code, text }) => ({
      panel: panel.id,
      code,
      text,
    })),
    car: { n_panels: total.panels.length, removed_um: changeRecord(total.car) },
    common_shift: shift === null ? null : shiftRecord(shift),
    visits: steps.length < 2 ? [] : steps.map(stepRecord),
    rates: rates.map(({ combination, panels: n, factor, looks }) => ({
      combination,
      n_panels: n,
      ...factorRecord(factor),
      looks,
    })),
    gloss: gloss.map((one) => ({
      panel: one.panel.id,
      angle_deg: one.angle,
      n_points: one.places,
      before_gu: recorded(one.before),
      after_gu: recorded(one.after),
      gained_gu: {
        mean: recorded(one.gained),
        low: recordedOrNull(one.interval?.[0]),
        high: recordedOrNull(one.interval?.[1]),
      },
      haze_hu:
        one.haze === null
          ? null
          : { before: recorded(one.haze.before), after: recorded(one.haze.after) },
      better_angle_deg: one.betterAngle,
    })),
  };
}

const panelRecord = (panel: PanelLeft): MachineRecord => ({
  ...partRecord(panel),
  zones: panel.zones.map((zone) => ({
    ...partRecord(zone),
    zones: [],
    zone: zone.comparison.zone,
    points: zone.comparison.pairs.map(({ point }) => point),
  })),
});

function partRecord(part: PartLeft): MachineRecord {
  const { comparison, left, oneMore } = part;
  const { change, pairs, unpaired, counts } = comparison;
  return {
    panel: comparison.panel.id,
    compared_by: comparison.by,
    n_pairs: pairs.length,
    n_before: counts.before,
    n_after: counts.after,
    removed_um: changeRecord(change),
    removed_sd_um: change === null ? null : recorded(standardUncertainty(change.removed)),
    removed_dof: change === null ? null : recordedOrNull(changeDof(change)),
    uncertainty:
      change === null
        ? []
        : uncertaintyBudget(change.removed).map(({ source, contribution, share }) => ({
            source,
            sd_um: recorded(Math.abs(contribution)),
            share: recorded(share),
          })),
    resolved: isSeen(comparison),
    gained: comparison.gained || part.rise !== null,
    seen_half_um: recordedOrNull(change?.detectable.half),
    seen_surely_um: recordedOrNull(change?.detectable.surely),
    planned_um: foretoldRecord(part.planned),
    worked_um: foretoldRecord(part.foretold),
    steps: stepsRecord(part),
    ...setsRecord(part),
    against_plan: part.against,
    allowed_um: recordedOrNull(part.allowed?.most),
    allowed_by: part.allowed?.by ?? null,
    overrun: part.overruns.map(remarkRecord),
    held_um:
      part.held === null ? null : { mean: recorded(part.held.mean), sd: recorded(part.held.sd) },
    clear_um:
      left === null || left.topcoat === null
        ? null
        : { mean: recorded(left.topcoat.clear.mean), sd: recorded(left.topcoat.clear.sd) },
    budget_left_um: recordedOrNull(left?.budget),
    bound_by: left?.boundBy.code ?? null,
    limits: left === null ? [] : left.limits.map(remarkRecord),
    one_more_set:
      oneMore === null
        ? null
        : {
            combination: oneMore.combination,
            from: oneMore.from,
            removal_um: recorded(oneMore.removal.median),
            risk_prob: recordedOrNull(part.riskOneMore),
          },
    verdict: part.verdict,
    reasons: part.reasons.map(remarkRecord),
    points_apart: pointsApart(comparison).map((one) => ({
      point: one.point,
      before_um: recorded(one.before),
      after_um: recorded(one.after),
      others_um: recorded(one.others),
      lost: one.lost,
      odd: one.odd,
      swapped_um: recordedOrNull(one.swapped ?? undefined),
      counted: comparison.apart?.counted ?? false,
    })),
    unpaired: {
      not_read_again: unpaired.notReadAgain,
      not_read_before: unpaired.notReadBefore,
      not_marked: unpaired.notMarked,
      off_the_face: unpaired.offTheFace,
    },
  };
}

/** A place that the plan worked deeper; what is left there goes by what its panel lost, null where that was not compared. */
function placeRecord({ panel, place }: PanelPlace, panels: readonly PanelLeft[]) {
  const { defect, point, sets, median, high, budget, read } = place;
  const gone = panels.flatMap(({ comparison, held }) =>
    comparison.panel.id === panel.id && held !== null && comparison.change !== null
      ? [micrometres(Math.max(held.mean, comparison.change.removed.value))]
      : [],
  )[0];
  return {
    panel: panel.id,
    defect,
    point,
    worked_sets: sets,
    planned_um: { median: recorded(median), high: recorded(high) },
    measured_um:
      read === null
        ? null
        : {
            value: recorded(read.measured.value),
            sd: recorded(read.measured.standardError),
          },
    held_um:
      read === null ? null : { mean: recorded(read.taken.mean), sd: recorded(read.taken.sd) },
    budget_um: recordedOrNull(budget),
    budget_left_um: gone === undefined ? null : recorded(leftAtPlace(place, gone)),
  };
}

const changeRecord = (change: FilmChange | null) =>
  change === null
    ? null
    : {
        mean: recorded(change.removed.value),
        low: recorded(change.low),
        high: recorded(change.high),
      };

const shiftRecord = (shift: CommonShift) => ({
  by_um: {
    mean: recorded(shift.by),
    low: recorded(shift.by - shift.within),
    high: recorded(shift.by + shift.within),
  },
  over: shift.over,
  n_panels: shift.parts,
  n_left_alone: shift.leftAlone,
  as_by_rate: shift.asByRate,
});

/** The middle, and the 90 % range. */
function foretoldRecord(foretold: ForetoldPanel | null) {
  if (foretold === null) return null;
  const { median, logSd } = foretold.removal ?? { median: 0, logSd: 0 };
  const reach = Math.exp(Z_95 * logSd);
  return {
    median: recorded(median),
    low: recorded(median / reach),
    high: recorded(median * reach),
  };
}

/** The plan's steps with the sets that were worked of each. */
const stepsRecord = ({ planned, foretold }: PartLeft) =>
  (planned?.steps ?? []).map(({ combination, sets }) => ({
    combination,
    sets,
    sets_worked: setsOf((foretold?.steps ?? []).filter((step) => step.combination === combination)),
  }));

/** All steps together; null without a plan. */
export const setsRecord = ({ planned, foretold }: PartLeft) => ({
  planned_sets: planned === null ? null : setsOf(planned.steps),
  worked_sets: foretold === null ? null : setsOf(foretold.steps),
});

const stepRecord = ({ from, to, comparison }: VisitStep): MachineRecord => ({
  from,
  to,
  car: { n_panels: comparison.panels.length, removed_um: changeRecord(comparison.car) },
  panels: comparison.panels.map(stepPanel),
});

const stepPanel = (one: PanelComparison): MachineRecord => ({
  panel: one.panel.id,
  compared_by: one.by,
  removed_um: changeRecord(one.change),
  resolved: isSeen(one),
  gained: one.gained,
});
