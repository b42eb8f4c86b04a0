/**
 * Comments amid the rows that name another unit than the table: `# unit: mil` below rows in µm. A comment is no row, so
 * that the rows below it would be read in the wrong unit: the file is refused.
 */

import { roleOfKey, sayingOf } from '../beside/sayings.ts';
import { isThickness, unitSetBy } from '../beside/unit-lines.ts';
import { unitNamed } from '../cells/unit.ts';
import type { Findings } from '../findings.ts';
import type { UnitLine } from '../parts/section-state.ts';
import { lineFrom } from '../rows/lines.ts';
import type { Table } from '../tables/table.ts';

export function doubtUnitComments(
  tables: readonly Table[],
  lines: readonly UnitLine[],
  findings: Findings,
): void {
  const [first] = tables;
  const start = first?.rows[0]?.start;
  if (first === undefined || start === undefined) return;
  const { source } = first;
  const { text } = source;
  if (text.indexOf('\n#', start) === -1) return;
  const stated = new Set([
    ...lines.map(({ saying }) => unitNamed(saying.value)),
    ...tables.flatMap(({ layout }) =>
      layout.readings.map((own) => layout.header[own.column]?.unit),
    ),
  ]);
  stated.delete(undefined);
  for (let at = text.indexOf('\n#', start); at !== -1; at = text.indexOf('\n#', at + 1)) {
    const line = lineFrom(text, at + 1);
    const unit = unitNamedBy(line.slice(1, longestComment));
    if (unit === undefined || stated.size === 0) continue;
    if (stated.size === 1 && stated.has(unitNamed(unit))) continue;
    findings.add('error', 'unit-conflict', () => ({
      message: `"${line.trim()}" stands amid the rows and names a unit that is not that of all of them`,
      at: source.placeAt(at + 1, line.length),
      hint: 'write the unit of each row in a column, or put the two parts in files of their own',
    }));
  }
}

const longestComment = 200;

function unitNamedBy(comment: string): string | undefined {
  const row = { cells: [comment.trim()], line: 0, start: 0, quoted: false };
  const saying = sayingOf(row);
  const said = saying !== undefined && roleOfKey(saying.key) === 'unit' ? saying.value : undefined;
  return isThickness(said) ? said : unitSetBy(row);
}
