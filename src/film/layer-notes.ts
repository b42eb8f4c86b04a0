import { type Remark, remark } from '../base/remark.ts';
import { isClearLayer } from './limits/measured-clear.ts';
import type { Reading } from './reading.ts';
import { type PanelSurvey, partsOf } from './survey.ts';

/**
 * Readings of single layers are no total film: never averaged in; those of the clear speak for it on factory film, where
 * nothing is stated in their place.
 */
export function layerNotes(
  readings: readonly Reading[],
  panels: readonly PanelSurvey[],
): readonly Remark[] {
  const single = readings.filter(({ layer }) => layer !== '');
  if (single.length === 0) return [];
  const using = new Set(panels.filter(usesReadClear).map(({ panel }) => panel.id));
  const ofClear = single.filter((one) => isClearLayer(one) && using.has(one.panel)).length;
  const use =
    ofClear === 0
      ? 'not used'
      : ofClear === single.length
        ? 'used for the clear'
        : `${ofClear} of the clear used for it`;
  return [
    remark(
      'layer-readings',
      `${single.length} reading${single.length === 1 ? ' is' : 's are'} of a single layer, not of the whole film: kept apart, ${use}`,
      single.length,
    ),
  ];
}

const usesReadClear = (panel: PanelSurvey): boolean =>
  partsOf(panel).some(
    ({ topcoat, facts }) => topcoat !== null && facts.clear?.within !== undefined,
  );
