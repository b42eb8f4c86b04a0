/**
 * The cells of a line without quotes, cut at each delimiter.
 *
 * A row starts as a copy of the one above, and a cell that stands there as well is left: a name is held once, not
 * in each row, and whoever compares it with the one above is done at once.
 */
export function plainCells(
  text: string,
  delimiter: string,
  { start, end }: { readonly start: number; readonly end: number },
  above: readonly string[],
): string[] {
  const cells = above.slice();
  const mark = delimiter.charCodeAt(0);
  let from = start;
  for (let k = 0; ; k += 1) {
    const before = above[k];
    let to = from + (before?.length ?? 0);
    // Beyond its own line a cell cannot be the one above: that one holds no line end.
    const again =
      before !== undefined &&
      (to === end || text.charCodeAt(to) === mark) &&
      text.startsWith(before, from);
    if (!again) {
      to = from;
      while (to < end && text.charCodeAt(to) !== mark) to += 1;
      cells[k] = text.slice(from, to);
    }
    if (to >= end) {
      if (cells.length > k + 1) cells.length = k + 1;
      return cells;
    }
    from = to + 1;
  }
}
