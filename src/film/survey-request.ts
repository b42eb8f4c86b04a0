import type { OverRange } from './condition/over-range.ts';
import type { FilmModel, PanelFacts } from './film-model.ts';
import type { RemovalTerms } from './limits/removal-limits.ts';
import type { Reading } from './reading.ts';
import type { VehicleTemplate } from './template/template.ts';

export type SurveyRequest = {
  readonly template: VehicleTemplate;
  /** Readings of one vehicle, their panels named by the template's ids. */
  readonly readings: readonly Reading[];
  /** Points of the same panels that are beyond the range of the gauge. */
  readonly overRange?: readonly OverRange[] | undefined;
  /** Of the same car: they make the baseline that its panels are held to. Absent, the readings do so themselves. */
  readonly baselineReadings?: readonly Reading[] | undefined;
  readonly factsOf: (panelId: string) => PanelFacts;
  readonly terms: RemovalTerms;
  readonly model: FilmModel;
};
