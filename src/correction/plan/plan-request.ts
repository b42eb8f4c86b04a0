import type { Micrometres, Millimetres } from '../../base/units.ts';
import type { Allowance } from '../../film/limits/allowance.ts';
import type { PanelSurvey } from '../../film/survey.ts';
import type { Defect } from '../defects.ts';
import type { CorrectionModel } from '../removal/catalogue.ts';
import type { PaintKnowledge } from '../removal/removal-knowledge.ts';

/** What may come off at a removal's ln-SD: never more at a larger one. */
export type AllowanceAt = (part: PanelSurvey, logSd: number) => Allowance;

/** What plans of a vehicle are made from, whatever is aimed at. */
export type PlanGrounds = {
  /** Panels to plan: all of a survey, or those asked for. */
  readonly panels: readonly PanelSurvey[];
  /** General and local defects of a panel; assumed ones where none were recorded. */
  readonly defectsOf: (panelId: string) => readonly Defect[];
  /** What is known of a panel's paint; the same object for panels of one paint. */
  readonly paintOf: (panel: PanelSurvey) => PaintKnowledge;
  /** What may come off a panel or one of its zones. */
  readonly allowanceAt: AllowanceAt;
  /** What may come off at one place of it; where that is not given, a place is as thin as the thinnest. */
  readonly allowanceOnPlace?: AllowanceAt;
  readonly model: CorrectionModel;
  readonly thinnerClear: Micrometres;
  readonly edgeWidth: Millimetres;
};

/** How far the correction is to go. */
export type PlanAim = {
  /** Share of the general defects to clear, 0–1. */
  readonly aim: number;
  /** Worst haze grade that may be left. */
  readonly hazeAllowed: number;
};

export type PlanRequest = PlanGrounds & PlanAim;
