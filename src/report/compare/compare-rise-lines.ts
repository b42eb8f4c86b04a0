/** Panels that read more film at one visit than at the one before, before anything that the comparison says. */
import { groupBy } from '../../base/group-by.ts';
import { thicknessText, unitName } from '../../base/sentence.ts';
import type { LengthUnit } from '../../base/units.ts';
import type { PanelLeft } from '../../tasks/compare/compare-left-parts.ts';
import { joined } from '../facts.ts';
import { type Block, notice } from '../model.ts';
import { shortName } from './compare-words.ts';

/** `from after.csv to spring.csv: roof 5.9, bonnet 2.5 µm` */
export function riseLines(panels: readonly PanelLeft[], unit: LengthUnit): readonly Block[] {
  const rises = panels.flatMap(({ comparison: { panel }, rise }) =>
    rise === null ? [] : [{ ...rise, name: panel.name }],
  );
  if (rises.length === 0) return [];
  const told = [...groupBy(rises, ({ from, to }) => JSON.stringify([from, to])).values()].flatMap(
    (some) =>
      some.slice(0, 1).map(({ from, to }) => {
        const each = some.map(({ name, by }) => `${name} ${thicknessText(by, unit)}`).join(', ');
        return `from ${shortName(from)} to ${shortName(to)}: ${each} ${unitName(unit)}.`;
      }),
  );
  return [
    notice(
      'More film at a later visit',
      joined(
        [
          ...told,
          'No work adds film: are the files in the order of the visits? Else first find out why.',
        ],
        ' ',
      ),
    ),
  ];
}
