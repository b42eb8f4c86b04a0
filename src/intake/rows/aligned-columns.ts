/**
 * Columns that two blanks and more set apart, as a printed list has them.
 *
 * A row with as many cells as the header is split where it has them. One with fewer leaves a column
 * empty, and which one only the alignment can say: each of its cells must stand under exactly one column
 * of the full rows, whose places in the line must not overlap. A row that does not fit, and nothing is
 * taken for such a table.
 */

/** The header is looked for among these lines. */
const headLines = 5000;

/** A cell of a line: where it begins, and where it ends. */
type Span = { readonly start: number; readonly end: number };

/** The text with a tab in place of one blank between two cells, or the number of a line that does not fit. */
export type Aligned =
  | { readonly text: string }
  | { readonly text?: undefined; readonly odd: number };

/** Undefined where no line between blanks is a header. */
export function alignByBlanks(
  text: string,
  isHeader: (cells: readonly string[]) => boolean,
): Aligned | undefined {
  const lines = text.split('\n').map(withoutRule);
  const spans = lines.map(spansOf);
  const head = lines.slice(0, headLines).findIndex((line, k) => {
    const own = spans[k] ?? [];
    return own.length > 1 && isHeader(cellsOf(line, own));
  });
  const header = spans[head];
  if (header === undefined || header.length < 2) return undefined;
  const full = spans.slice(head).filter(({ length }) => length === header.length);
  if (full.length < 2) return undefined;
  const columns = disjoint(header.map((_, k) => extentOf(full, k)));
  const aligned = lines.map((line, k) => {
    const own = spans[k] ?? [];
    if (k < head || own.length === 0 || line.startsWith('#')) return line;
    // A line of one cell at its start is a text, or a row that lacks the rest: that is told as such.
    if (own.length === 1 && own[0]?.start === 0) return line;
    const places = own.length === header.length ? [...own.keys()] : placesUnder(own, columns);
    return places === undefined ? undefined : withTabs(line, own, places);
  });
  const odd = aligned.indexOf(undefined);
  return odd === -1 ? { text: aligned.join('\n') } : { odd };
}

/** `------- -----  ----` or one long rule under the header is drawn, and no row. */
const withoutRule = (line: string): string =>
  /^\s*(?:-{2,}(?:\s+-{2,})+|-{5,}|={5,}|_{5,})\s*$/u.test(line) ? ' '.repeat(line.length) : line;

const spansOf = (line: string): readonly Span[] =>
  [...line.matchAll(/\S+(?: \S+)*/gu)].map(({ 0: cell, index }) => ({
    start: index,
    end: index + cell.length,
  }));

const cellsOf = (line: string, spans: readonly Span[]): readonly string[] =>
  spans.map(({ start, end }) => line.slice(start, end));

function extentOf(rows: readonly (readonly Span[])[], column: number): Span {
  const own = rows.flatMap((row) => row[column] ?? []);
  return {
    start: own.reduce((least, { start }) => Math.min(least, start), Number.POSITIVE_INFINITY),
    end: own.reduce((most, { end }) => Math.max(most, end), 0),
  };
}

/** The columns, or none of them where two stand at one place. */
const disjoint = (columns: readonly Span[]): readonly Span[] =>
  columns.every(({ start }, k) => k === 0 || start >= (columns[k - 1]?.end ?? 0)) ? columns : [];

/** The number of the column that each cell stands under; undefined where one stands under none or two. */
function placesUnder(
  spans: readonly Span[],
  columns: readonly Span[],
): readonly number[] | undefined {
  const places = spans.map(({ start, end }) => {
    const under = [...columns.keys()].filter((k) => {
      const column = columns[k];
      return column !== undefined && start < column.end && end > column.start;
    });
    return under.length === 1 ? under[0] : undefined;
  });
  const known = places.flatMap((place) => place ?? []);
  const rising = known.every((place, k) => k === 0 || place > (known[k - 1] ?? -1));
  return known.length === spans.length && rising ? known : undefined;
}

/** One tab for each column between two cells, in place of blanks there. */
function withTabs(
  line: string,
  spans: readonly Span[],
  places: readonly number[],
): string | undefined {
  let written = '';
  let [from, column] = [0, 0];
  for (const [k, { start, end }] of spans.entries()) {
    const place = places[k] ?? 0;
    const tabs = place - column;
    const gap = start - from;
    if (gap < tabs) return undefined;
    written += `${'\t'.repeat(tabs)}${' '.repeat(gap - tabs)}${line.slice(start, end)}`;
    [from, column] = [end, place];
  }
  return written + line.slice(from);
}
