/** What was decided of a file, for a reader and for the next time it is read. */
import type { Decoded } from './bytes/decode.ts';
import { joinedRoles } from './header/columns-by-role.ts';
import type { GaugeRole } from './header/gauge-vocabulary.ts';
import type { Layout } from './header/layout.ts';
import type { IntakeDecisions } from './intake-decisions.ts';
import type { Parts, Split } from './parts/section-state.ts';
import type { SettledTables } from './tables/settle-tables.ts';

export function decisionsOf(
  { encoding, evidence }: Pick<Decoded, 'encoding' | 'evidence'>,
  split: Split,
  parts: Parts,
  { tables, evidence: settled, decimal }: SettledTables,
): IntakeDecisions {
  const [first] = tables;
  return {
    encoding,
    delimiter: split.shown,
    decimal,
    layout: first?.table.layout.kind ?? split.start.layout.kind,
    unit: first?.rules.unit ?? 'um',
    headerLine: split.start.header?.line ?? 0,
    columns: columnNames(tables.map(({ table }) => table.layout)),
    evidence: [...evidence, ...split.evidence, ...parts.evidence, ...settled],
    metadata: parts.metadata,
  };
}

/** The names of columns that every table of the file has for a role. */
function columnNames([first, ...more]: readonly Layout[]): IntakeDecisions['columns'] {
  const names = new Map<GaugeRole, readonly string[]>();
  for (const role of first?.columns.keys() ?? []) {
    const own = namesOf(first, role);
    const shared = more.every((layout) => namesOf(layout, role).join('\0') === own.join('\0'));
    if (shared && own.length > 0) names.set(role, own);
  }
  return names;
}

function namesOf(layout: Layout | undefined, role: GaugeRole): readonly string[] {
  const texts = (layout?.header ?? []).flatMap((cell) =>
    cell.role === role && cell.text !== '' ? [cell.text] : [],
  );
  if (joinedRoles.has(role)) return texts;
  const text = layout?.header[layout.columns.get(role) ?? -1]?.text ?? '';
  return text === '' ? [] : [text];
}
