/** A panel, or a zone of it, once what came off is known: what is left, and the word on it. */
import type { Remark } from '../../base/remark.ts';
import type { Micrometres } from '../../base/units.ts';
import type { GoOnVerdict } from '../../correction/go-on.ts';
import type { AgainstPlan } from '../../correction/removal/measured-removal.ts';
import type { PanelComparison } from '../../film/compare/panel-comparison.ts';
import type { RecordedRemoval } from '../../film/film-model.ts';
import type { Allowance } from '../../film/limits/allowance.ts';
import type { ExpectedRemoval } from '../../film/limits/removal-risk.ts';
import type { ForetoldPanel } from '../../formats/plan-file.ts';
import type { Allowed } from './compare-overrun.ts';
import type { PlaceRead } from './compare-places-read.ts';

export type OneMoreSet = {
  readonly combination: string;
  readonly removal: ExpectedRemoval;
  /** The step of the plan, or the mildest that the shop has. */
  readonly from: 'plan' | 'mildest';
};

/** More film at a visit than at the one before it, which no work adds. */
export type Rise = {
  readonly from: string;
  readonly to: string;
  readonly by: Micrometres;
  /** How much of it is paint, by its amount; null where none is. */
  readonly paint: Micrometres | null;
};

/** A panel, or a zone of it, as it stands after what came off. */
export type PartLeft = {
  readonly comparison: PanelComparison;
  readonly planned: ForetoldPanel | null;
  /** The plan with the sets that were worked of it: all of them, where nothing else is said. */
  readonly foretold: ForetoldPanel | null;
  /** Null without a plan of it. */
  readonly against: AgainstPlan | null;
  /** What might go before the work. */
  readonly allowed: Allowed | null;
  /** Read more film at one visit than at the one before it; null where it never did. */
  readonly rise: Rise | null;
  /** Those of it that the plan worked deeper. */
  readonly places: readonly PlaceRead[];
  /** More came off than might go, surely or perhaps, or a limit is passed; nothing where all was kept. */
  readonly overruns: readonly Remark[];
  /** What is held of the removal: as foretold, by what was measured. */
  readonly held: RecordedRemoval | null;
  /**
   * Limits and budget once that is gone: what a survey of the later readings says with this visit on record, or
   * what is known besides, if that allows less. Null where nothing was compared.
   */
  readonly left: Allowance | null;
  readonly oneMore: OneMoreSet | null;
  /** Chance of clear under its floor after one more set. */
  readonly riskOneMore: number | null;
  /** Whether no clear can be told there from what lies under it, as on repaint: only the pad shows its end. */
  readonly isRiskUnknown: boolean;
  readonly verdict: GoOnVerdict;
  readonly reasons: readonly Remark[];
};
