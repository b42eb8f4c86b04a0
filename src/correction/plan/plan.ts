import type { Remark } from '../../base/remark.ts';
import type { Micrometres, Minutes } from '../../base/units.ts';
import type { PanelSurvey, ZoneName } from '../../film/survey.ts';
import type { Defect } from '../defects.ts';
import type { Step } from '../removal/step.ts';

export type Verdict = 'polish' | 'lighter' | 'hand' | 'leave' | 'refinish';

/** A removal not yet made, as a person wants it: the middle, the mean and the 90 % range. */
export type RemovalForecast = {
  readonly median: Micrometres;
  readonly mean: Micrometres;
  readonly low: Micrometres;
  readonly high: Micrometres;
};

export type PlannedStep = Step & {
  readonly removal: Micrometres;
  /** Machine time of the step's sets, without wiping and pad cleaning. */
  readonly machineTime: Minutes;
};

export type PanelPlan = {
  readonly survey: PanelSurvey;
  readonly verdict: Verdict;
  readonly steps: readonly PlannedStep[];
  readonly removal: RemovalForecast;
  /** Shares of the general defects, 0–1. */
  readonly aimed: number;
  readonly expected: number;
  /** Chance of clear under the floor on the thinnest 5 %; null where nothing is known of the film. */
  readonly risk: number | null;
  readonly riskIfThin: number | null;
  /** The part of the risk that stands before any polishing. */
  readonly already: number | null;
  /** True until a test spot on this paint has been seen. */
  readonly provisional: boolean;
  readonly reasons: readonly Remark[];
  readonly cautions: readonly Remark[];
  /** What is done at deep defects, on top of the panel's own steps; a zone's stand with its panel. */
  readonly local: readonly LocalWork[];
  /** The plans of its two zones where a panel has them; its own is then that of the one allowing least. */
  readonly zones: readonly ZonePlan[];
};

export type ZonePlan = PanelPlan & { readonly zone: ZoneName };

/** A spot at one deep defect, worked before the panel's own steps pass over it, or left. */
export type LocalWork = {
  readonly defect: Defect;
  /** The extra sets there, with their time on a small section; none where it is left. */
  readonly steps: readonly PlannedStep[];
  /** What the extra sets take. */
  readonly removal: RemovalForecast;
  /** Share of such defects cleared by the extra sets and the panel's own steps together. */
  readonly cleared: number;
  /** Chance of clear under the floor at that place once all is done; null where nothing is known of it. */
  readonly risk: number | null;
  /** What goes there in all, and may; null where nobody asked, as the paint has failed. */
  readonly place: { readonly removal: Micrometres; readonly budget: Micrometres } | null;
  readonly reasons: readonly Remark[];
};

/** What is worked by itself: a panel in one zone, or each zone of one in two. */
export const workedParts = ({ panels }: Pick<Plan, 'panels'>): readonly PanelPlan[] =>
  panels.some(({ zones }) => zones.length > 0)
    ? panels.flatMap((panel): readonly PanelPlan[] =>
        panel.zones.length === 0 ? [panel] : panel.zones,
      )
    : panels;

export type Plan = {
  readonly panels: readonly PanelPlan[];
  /** Sum of the risks of the panels whose film is known, worked or not: such panels to expect. */
  readonly expectedPanelsBelowFloor: number;
  /** The part of it that stands before any polishing. */
  readonly panelsBelowFloorAlready: number;
};

/** Whether a machine or a hand goes over any part of the panel as a whole. */
export const isWorked = ({ steps, zones }: Pick<PanelPlan, 'steps' | 'zones'>): boolean =>
  steps.length > 0 || zones.some((zone) => zone.steps.length > 0);

/** Whether anything is done on the panel, be it at one place. */
export const isTouched = (panel: Pick<PanelPlan, 'steps' | 'zones' | 'local'>): boolean =>
  isWorked(panel) || panel.local.some(({ steps }) => steps.length > 0);

/** Worked, be it at one place, where no clear could be told from what lies under it, as on repaint freed by a test spot. */
export const hasUnknownRisk = ({ steps, risk, local }: PanelPlan): boolean =>
  [{ steps, risk }, ...local].some((one) => one.steps.length > 0 && one.risk === null);
