/**
 * A table under a header of two rows, the upper one merged over columns of the lower: panels over their points, sides
 * over panels, or what is measured over numbers.
 */
import { unitNamed } from '../cells/unit.ts';
import { type Layout, type LayoutContext, layoutOf } from '../header/layout.ts';
import type { IntakeOptions } from '../intake-options.ts';
import { delimiterName, delimiters } from '../rows/dialect.ts';
import type { Source } from '../rows/source.ts';
import { type Row, tokenize } from '../rows/tokens.ts';
import { continuedHeader, joinedHeader } from './header-over-header.ts';
import { pointsUnderPanels } from './points-under-panels.ts';
import { isDataRow, type Split } from './section-state.ts';

type UnderTwo = Pick<Split, 'rows' | 'start'> & { readonly said: string };

/** The same where one of the two rows was found to be a header by itself. */
export function headerOfTwo(
  rows: readonly Row[],
  found: Row,
  own: Layout,
  context: LayoutContext,
): UnderTwo | undefined {
  const at = rows.findIndex(({ start }) => start === found.start);
  for (const upperAt of [at - 1, at]) {
    const double = underTwoAt(rows, upperAt, context);
    if (double === undefined) continue;
    if (double.start.layout.readings.length >= own.readings.length) return double;
  }
  return undefined;
}

/** The header is looked for among these rows. */
const headRows = 60;

/** The table where neither row is a header by itself. */
export function tableUnderTwoRows(
  source: Source,
  { delimiter: given, headerLine, columns }: IntakeOptions,
  context: LayoutContext,
): Split | undefined {
  if (headerLine !== undefined || columns !== undefined) return undefined;
  for (const delimiter of given === undefined ? delimiters : [given]) {
    const rows = tokenize(source, delimiter, { offset: 0, line: 1 }).value ?? [];
    for (let k = 0; k < Math.min(rows.length, headRows); k += 1) {
      if ((rows[k]?.cells.length ?? 0) < 2) continue;
      const double = underTwoAt(rows, k, context);
      if (double === undefined) continue;
      const { said, ...rest } = double;
      const evidence = [`${delimiterName[delimiter]} as delimiter`, said];
      return { source, delimiter, shown: delimiter, context, evidence, ...rest };
    }
  }
  return undefined;
}

function underTwoAt(
  rows: readonly Row[],
  upperAt: number,
  context: LayoutContext,
): UnderTwo | undefined {
  const [upper, lower, first] = rows.slice(Math.max(0, upperAt), upperAt + 3);
  if (upper === undefined || lower === undefined || first === undefined || upperAt < 0)
    return undefined;
  const pointed = pointsUnderPanels(upper, lower, rows.slice(upperAt + 2), context);
  const continued = pointed === undefined ? continuedHeader(upper, lower) : undefined;
  const cells = pointed?.header.map(({ text }) => text) ?? joinedHeader(upper, lower) ?? continued;
  if (cells === undefined) return undefined;
  const layout = pointed ?? layoutOf(cells, context);
  if (layout === undefined) return undefined;
  if (layout.readings.length < 2 && cells !== continued) return undefined;
  const units = pointed !== undefined && namesUnitsOnly(first) ? rows[upperAt + 3] : first;
  if (layout.repeated.length > 0 || units === undefined || !isDataRow(units, layout))
    return undefined;
  const header: Row = { ...lower, cells, quoted: true };
  return {
    rows: [...rows.slice(0, upperAt), header, ...rows.slice(upperAt + 2)],
    start: { layout, header, line: lower.line },
    said: `lines ${lower.line - 1} and ${lower.line} name the columns together`,
  };
}

const namesUnitsOnly = ({ cells }: Row): boolean =>
  cells.every((cell) => cell.trim() === '' || unitNamed(cell.trim()) !== undefined);
