import { type Remark, remark } from '../base/remark.ts';
import { bare, says, um } from '../base/sentence.ts';
import { isClearLayer } from './limits/measured-clear.ts';
import type { Reading } from './reading.ts';
import { type PanelSurvey, partsOf } from './survey.ts';

/**
 * Readings of single layers are no total film: never averaged in; those of the clear speak for it on factory film,
 * beside what is stated.
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
    ...panels.flatMap(readApart),
  ];
}

/** A clear that leaves what lies under it next to nothing of the total: one of the two was read wrongly. */
function readApart({ panel, topcoat, facts: { clear, under } }: PanelSurvey): readonly Remark[] {
  const isOfReadings = clear?.within !== undefined && under === null;
  if (topcoat?.apart === undefined || !isOfReadings) return [];
  return [
    remark(
      'clear-read-apart',
      says`${panel.name}: its clear as read, ${bare(clear.mean)} ± ${um(clear.sd)} of ${um(topcoat.told.film.mean)} in all, leaves too little for what lies under it: read both again; till then the least that either allows may go`,
      clear.mean,
    ),
  ];
}

const usesReadClear = (panel: PanelSurvey): boolean =>
  partsOf(panel).some(
    ({ topcoat, facts }) =>
      topcoat !== null && (facts.clearRead ?? facts.clear)?.within !== undefined,
  );
