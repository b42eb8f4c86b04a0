import type { Remark } from '../base/remark.ts';
import type { Uncertain } from '../base/uncertainty.ts';
import type { Micrometres } from '../base/units.ts';
import type { Condition } from './condition/condition.ts';
import type { ConditionSureness, OtherSide } from './condition/condition-sureness.ts';
import type { AskedSlip } from './condition/keying-slips.ts';
import type { FlagRule } from './condition/outlying-points.ts';
import type { OverRangePoint } from './condition/over-range.ts';
import type { PossibleSides } from './condition/possible-sides.ts';
import type { PanelFacts } from './film-model.ts';
import type { SurveyAdvice } from './help/survey-advice.ts';
import type { Limit } from './limits/limit.ts';
import type { TopcoatCase } from './limits/topcoat-cases.ts';
import type { PanelFilm } from './panel-film.ts';
import type { PanelPoint } from './panel-points.ts';
import type { OwnSpread, SpreadPrior } from './spread.ts';
import type { Panel, VehicleTemplate } from './template/template.ts';

export type Moderation = {
  readonly own: OwnSpread;
  readonly prior: SpreadPrior;
  /** What the gauge's own noise must at least have put into the spread. */
  readonly leastVariance: number;
};

export type PanelStatistics = {
  readonly mean: Micrometres;
  /** Absent for a single point. */
  readonly sd: Micrometres | null;
  readonly min: Micrometres;
  readonly max: Micrometres;
  readonly median: Micrometres;
};

/** What is known of one panel, and what may come off. */
export type PanelSurvey = {
  readonly panel: Panel;
  readonly facts: PanelFacts;
  /** Points on the face: the only ones that enter statistics. */
  readonly points: readonly PanelPoint[];
  /** Points near an edge, on a body line or in a shut: reported apart. */
  readonly otherPoints: readonly PanelPoint[];
  /** Points of metal beyond the range of the gauge, in no statistic; none that was read as well. */
  readonly overRange: readonly OverRangePoint[];
  readonly readingCount: number;
  readonly statistics: PanelStatistics | null;
  /** Moderated by the other panels. */
  readonly film: PanelFilm | null;
  /** How the spread came about: the panel's own, and what it was drawn towards. */
  readonly moderation: Moderation | null;
  /** What the mean is uncertain by, source by source. */
  readonly uncertainty: Uncertain<'µm'> | null;
  readonly thinnest: Micrometres | null;
  readonly condition: Condition;
  /** The usual film of the car, as this panel should read; null where no panel speaks of it. */
  readonly baseline: Micrometres | null;
  /** How near its line the condition was decided; null where no figure decides it. */
  readonly sureness: ConditionSureness | null;
  /** What it may be besides, as far as that moves what may go. */
  readonly sides: PossibleSides;
  /** What it would be otherwise; null where it is not near its line. */
  readonly otherSide: OtherSide | null;
  readonly also: readonly Condition[];
  readonly evidence: readonly Remark[];
  /** The topcoat that binds, of those the panel may carry. */
  readonly topcoat: TopcoatCase | null;
  readonly limits: readonly Limit[];
  /** Over all that the panel may be, each by its chance: the figure to work to. */
  readonly budget: Micrometres;
  readonly boundBy: Limit;
  readonly totalFloor: Micrometres;
  /** Two where part of the panel carries another film; the panel itself then shows what allows least. */
  readonly zones: readonly ZoneSurvey[];
  readonly lowPoints: readonly string[];
  readonly highPoints: readonly string[];
  readonly flagRule: FlagRule;
  /** A value to be asked about first; it is never changed. */
  readonly keyingSlips: readonly AskedSlip[];
  /** Ashman's D of two zones: shown, never decided by. */
  readonly ashmanD: number | null;
  readonly advice: readonly SurveyAdvice[];
};

/** A part of a panel that is surveyed, planned and worked by itself. */
export type ZoneSurvey = PanelSurvey & { readonly zone: ZoneName };

/** By the film in it, against the other zone of its panel. */
export type ZoneName = 'thinner' | 'thicker';

/** A panel, or in place of one in two zones its zones: what is surveyed and worked by itself. */
export const partsOf = (survey: PanelSurvey): readonly PanelSurvey[] =>
  survey.zones.length === 0 ? [survey] : survey.zones;

/** `roof`, or `roof (thinner zone)`. */
export const nameWithZone = (name: string, zone: string | null): string =>
  zone === null ? name : `${name} (${zone} zone)`;

export const isZone = (survey: PanelSurvey): survey is ZoneSurvey => 'zone' in survey;

/** The same of a survey, with its zone where it is of one. */
export const partName = (survey: PanelSurvey): string =>
  nameWithZone(survey.panel.name, isZone(survey) ? survey.zone : null);

export type Survey = {
  readonly template: VehicleTemplate;
  /** All panels of the template in walking order, read or not. */
  readonly panels: readonly PanelSurvey[];
  /** Median of the panel medians among metal panels under the refinish mark; null without any. */
  readonly baseline: Micrometres | null;
  /** The same with what it is uncertain by; null where it would be one panel's own. */
  readonly baselineUncertain: Uncertain<'µm'> | null;
  /** Panels whose medians the baseline is the middle of; none where it is what factories paint. */
  readonly baselineMakers: readonly Panel[];
  /** Panels that are held to the others beside them instead, which read more. */
  readonly heldToOthers: readonly Panel[];
  /** What the panels of factory film say together of the spread over a panel. */
  readonly spreadPrior: SpreadPrior;
  readonly notes: readonly Remark[];
};
