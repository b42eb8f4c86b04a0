/** Cells that gave no reading → whose they are: under the same names as the readings beside them. */
import { groupBy } from '../../base/group-by.ts';
import { panelMatcher } from '../../film/template/panel-names.ts';
import type { VehicleTemplate } from '../../film/template/template.ts';
import type { ExcludedCell } from '../../intake/read-gauge-file.ts';
import type { VehicleReadings } from './read-request.ts';

/** A vehicle before the cells are its own that gave no reading. */
export type MatchedVehicle = Omit<VehicleReadings, 'leftOut'>;

/** Each vehicle with its own cells, and all cells in the order they had; those of nobody stay as they are. */
export function withLeftOut(
  vehicles: readonly MatchedVehicle[],
  excluded: readonly ExcludedCell[],
): { readonly vehicles: readonly VehicleReadings[]; readonly excluded: readonly ExcludedCell[] } {
  if (excluded.length === 0) {
    return { vehicles: vehicles.map((one) => ({ ...one, leftOut: [] })), excluded };
  }
  const spellings = new Map(vehicles.map(({ vehicle, template }) => [vehicle, spelling(template)]));
  const named = excluded.map((cell) => {
    const idOf = spellings.get(cell.vehicle);
    return cell.panel === null || idOf === undefined ? cell : { ...cell, panel: idOf(cell.panel) };
  });
  const ofVehicle = groupBy(
    named.filter(({ panel }) => panel !== null),
    ({ vehicle }) => vehicle,
  );
  return {
    vehicles: vehicles.map((one) => ({ ...one, leftOut: ofVehicle.get(one.vehicle) ?? [] })),
    excluded: named,
  };
}

/** A panel of the template by its id; another as the file names it. */
function spelling(template: VehicleTemplate | null): (label: string) => string {
  if (template === null) return (label) => label;
  const match = panelMatcher(template);
  return (label) => {
    const found = match(label);
    return found.kind === 'match' ? found.panel.id : label;
  };
}
