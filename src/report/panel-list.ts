/** Which panels a line is about, as short as it can be said. */
import { isZone, type PanelSurvey, partName } from '../film/survey.ts';
import { panelNames } from '../film/template/side-names.ts';

/**
 * Of panels or their zones: `every panel read`, `every original panel` (by the table's own word), or those it is,
 * or all but those it is not, whichever is shorter. `read` are all that could be among them.
 */
export function whichPanels(these: readonly PanelSurvey[], read: readonly PanelSurvey[]): string {
  const others = read.filter((part) => !these.includes(part));
  if (others.length === 0) return read.length === 1 ? partNames(read) : 'every panel read';
  const isOriginal = ({ condition }: PanelSurvey): boolean => condition === 'original';
  if (these.length > 1 && these.every(isOriginal) && !others.some(isOriginal)) {
    return 'every original panel';
  }
  const [named, allBut] = [partNames(these), `all but ${partNames(others)}`];
  return allBut.length < named.length ? allBut : named;
}

/** Whole panels, those of both sides together, then zones. */
export const partNames = (parts: readonly PanelSurvey[]): string =>
  [
    ...panelNames(parts.filter((part) => !isZone(part)).map(({ panel }) => panel)),
    ...parts.filter(isZone).map(partName),
  ].join(', ');
