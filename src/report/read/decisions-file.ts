/** A decisions file as it is written: `leastcut/decisions/1`, with what was decided and nothing else. */
import type { ReadingDecisions } from '../../formats/decisions.ts';
import type { MachineRecord } from '../model.ts';

export function decisionsFile({
  encoding,
  delimiter,
  decimal,
  layout,
  unit,
  headerLine,
  columns,
  panelNames,
}: ReadingDecisions): MachineRecord {
  const all = {
    schema: 'leastcut/decisions/1',
    ...{ encoding, delimiter, decimal, layout, unit },
    header_line: headerLine,
    columns: columns.size === 0 ? undefined : columnNames(columns),
    panel_names: panelNames.size === 0 ? undefined : Object.fromEntries(panelNames),
  };
  return Object.fromEntries(Object.entries(all).filter(([, value]) => value !== undefined));
}

/** One name stands as it is, several in a list. */
const columnNames = (columns: ReadingDecisions['columns']): MachineRecord =>
  Object.fromEntries(
    [...columns].map(([role, names]) => [role, names.length === 1 ? names[0] : names]),
  );
