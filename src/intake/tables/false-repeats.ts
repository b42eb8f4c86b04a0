/**
 * A second column of a role that cannot be one, by its cells: `Result` beside the readings with no number in it, and
 * `Del.` (a part in Swedish, deleted in English) beside the panels with nothing but marks in it.
 */
import { numberShape } from '../cells/numbers.ts';
import { meansDeleted } from '../cells/words.ts';
import type { GaugeRole } from '../header/gauge-vocabulary.ts';
import { withoutRole } from '../header/header.ts';
import { columnTexts } from '../rows/column-texts.ts';
import type { Table } from './table.ts';

export function withoutFalseRepeats(
  table: Table,
): { readonly table: Table; readonly evidence: readonly string[] } | undefined {
  const { layout } = table;
  const wordless = layout.repeated.filter(
    (k) => isRole(table, k, 'reading') && !hasNumber(table, k),
  );
  const marks = layout.repeated.filter((k) => isRole(table, k, 'panel') && holdsMarks(table, k));
  const [mark] = marks;
  if (wordless.length + marks.length === 0) return undefined;
  const header = layout.header.map((cell, k) => {
    if (k === mark) return { ...cell, role: 'deleted' as const };
    return wordless.includes(k) ? withoutRole(cell) : cell;
  });
  const columns = new Map(layout.columns);
  if (mark !== undefined && !columns.has('deleted')) columns.set('deleted', mark);
  const repeated = layout.repeated.filter((k) => k !== mark && !wordless.includes(k));
  const unknown = [...layout.unknown, ...wordless].sort((a, b) => a - b);
  const called = (k: number): string => `"${layout.header[k]?.text ?? ''}"`;
  return {
    table: { ...table, layout: { ...layout, header, columns, repeated, unknown } },
    evidence: [
      ...wordless.map((k) => `${called(k)} holds no number and so no readings`),
      ...(mark === undefined ? [] : [`${called(mark)} holds marks: they take readings back`]),
    ],
  };
}

const isRole = ({ layout }: Table, column: number, role: GaugeRole): boolean =>
  layout.header[column]?.role === role;

const hasNumber = ({ rows }: Table, column: number): boolean =>
  [...columnTexts(rows, column).keys()].some((text) => numberShape(text) !== undefined);

/** Some cells are empty and the others say yes. */
function holdsMarks({ rows }: Table, column: number): boolean {
  const texts = [...columnTexts(rows, column).keys()];
  const marks = texts.filter((text) => text !== '');
  return marks.length > 0 && marks.length < texts.length && marks.every(meansDeleted);
}
