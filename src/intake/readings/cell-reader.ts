/** Cells of readings, read once for each text: a long file has few of them, each many times. */
import type { ReadingCell } from '../cells/cell-verdict.ts';
import { type NumberRules, readReadingCell } from '../cells/reading-cell.ts';
import type { TableUnit } from '../cells/unit.ts';

export type CellReader = (text: string, unit: TableUnit) => ReadingCell;

/** Each text is read once in each unit. */
export function cellReader(rules: NumberRules): CellReader {
  const usual = rememberingReader(rules);
  const others = new Map<TableUnit, (text: string) => ReadingCell>();
  return (text, unit) => {
    if (unit === rules.unit) return usual(text);
    const own = others.get(unit) ?? rememberingReader({ ...rules, unit });
    others.set(unit, own);
    return own(text);
  };
}

function rememberingReader(rules: NumberRules): (text: string) => ReadingCell {
  const known = new Map<string, ReadingCell>();
  return (text) => {
    const before = known.get(text);
    if (before !== undefined) return before;
    const told = readReadingCell(text, rules);
    if (known.size < mostTexts) known.set(text, told);
    return told;
  };
}
/** Texts of readings kept: a gauge shows some thousands at most. */
const mostTexts = 100_000;
