/**
 * A header whose cells another mark parts than those of the rows: `Panel,Point,Thickness` over `Bonnet;1;132`, retyped
 * by hand. Its marks become those of the rows, so that every place stays.
 *
 * Each row below has as many cells by the other mark as the header has by its own, and none of them has so by the
 * header’s; the header holds nothing of the other mark. One row that does not fit, and the file stays as it is.
 */
import { endOfLine } from './lines.ts';
import { rewritten, type Source } from './source.ts';
import { type Delimiter, type Row, tokenize } from './tokens.ts';

const fewestRows = 2;

export type OneDelimiter = { readonly source: Source; readonly delimiter: Delimiter };

export function withOneDelimiter(
  source: Source,
  header: Row,
  own: Delimiter,
  others: readonly Delimiter[],
): OneDelimiter | undefined {
  const { text } = source;
  const width = header.cells.length;
  if (header.quoted || width < 2) return undefined;
  const end = endOfLine(text, header.start);
  const line = text.slice(header.start, end);
  const below = { offset: Math.min(end + 1, text.length), line: header.line + 1 };
  const rowsBy = (delimiter: Delimiter): readonly Row[] =>
    tokenize(source, delimiter, below).value ?? [];
  const fits = ({ cells }: Row): boolean => cells.length === width;
  // Nearly every file ends here: its first rows fit the header.
  if (tokenize(source, own, below, fewestRows).value?.some(fits) !== false) return undefined;
  const delimiter = others.find((mark) => {
    if (mark === own || line.includes(mark)) return false;
    const rows = rowsBy(mark);
    return rows.length >= fewestRows && rows.every(fits);
  });
  if (delimiter === undefined || rowsBy(own).some(fits)) return undefined;
  const marked = text.slice(0, header.start) + line.replaceAll(own, delimiter) + text.slice(end);
  return { source: rewritten(source, marked), delimiter };
}
