import type { Micrometres } from '../../base/units.ts';
import type { Condition } from '../condition/condition.ts';
import type { PossibleSides } from '../condition/possible-sides.ts';
import type { PanelFacts } from '../film-model.ts';
import type { PanelFilm } from '../panel-film.ts';
import type { PanelSurvey } from '../survey.ts';
import type { PlainTopcoat } from './topcoat-cases.ts';

/** What is known of a panel that bears on what may go. */
export type AllowanceCase = {
  readonly film: PanelFilm;
  readonly facts: PanelFacts;
  /** Its word and those beside it. */
  readonly conditions: readonly Condition[];
  readonly baseline: Micrometres | null;
  /** What it may be besides; `NO_SIDES` takes it by its word. */
  readonly sides: PossibleSides;
};

/** Where on the panel the clear is looked at. */
export type LookedAt = (topcoat: PlainTopcoat) => PlainTopcoat;

/** Of a surveyed panel; null where nothing was read. */
export const allowanceCase = ({
  film,
  facts,
  condition,
  also,
  baseline,
  sides,
}: Pick<
  PanelSurvey,
  'film' | 'facts' | 'condition' | 'also' | 'baseline' | 'sides'
>): AllowanceCase | null =>
  film === null ? null : { film, facts, conditions: [condition, ...also], baseline, sides };
