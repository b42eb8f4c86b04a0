/** A job and a film record that both speak of earlier work on a panel. */
import { panelNames } from '../../film/template/side-names.ts';
import type { VehicleTemplate } from '../../film/template/template.ts';
import type { Assumption } from './assumption.ts';
import type { EffectiveFacts } from './panel-facts.ts';

/**
 * Both count, as `taken_um` is what went besides the record: one work told in both would count twice, so it is said.
 */
export function earlierWorkAssumption(
  facts: ReadonlyMap<string, EffectiveFacts>,
  { panels }: VehicleTemplate,
): readonly Assumption[] {
  const both = panels.filter(({ id }) => {
    const { taken, recorded } = facts.get(id) ?? {};
    return (taken?.value ?? 0) > 0 && (recorded?.value?.mean ?? 0) > 0;
  });
  return both.length === 0
    ? []
    : [
        {
          code: 'record-and-stated',
          text: `what is stated as taken counts besides what is on record of ${panelNames(both).join(', ')}: leave out of "taken_um" what the record holds`,
          origin: 'job',
        },
      ];
}
