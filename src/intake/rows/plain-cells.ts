/**
 * The cells of a line without quotes, cut at each delimiter.
 *
 * A cell that stands in the row above as well is the same string: a name is held once, not in each row,
 * and whoever compares it with the one above is done at once.
 */
export function plainCells(
  text: string,
  delimiter: string,
  { start, end }: { readonly start: number; readonly end: number },
  above: readonly string[],
): string[] {
  const cells: string[] = [];
  const mark = delimiter.charCodeAt(0);
  let from = start;
  for (;;) {
    const before = above[cells.length];
    let to = from + (before?.length ?? 0);
    // Beyond its own line a cell cannot be the one above: that one holds no line end.
    const again =
      before !== undefined &&
      (to === end || text.charCodeAt(to) === mark) &&
      text.startsWith(before, from);
    if (!again) {
      to = from;
      while (to < end && text.charCodeAt(to) !== mark) to += 1;
    }
    cells.push(again ? before : text.slice(from, to));
    if (to >= end) return cells;
    from = to + 1;
  }
}
