/** What is said of a row that cannot be split into cells. */
import { type Diagnostic, error } from '../../base/diagnostics.ts';
import type { RowFault } from './row-walker.ts';
import type { Source } from './source.ts';

export const lineEndsLost =
  'did the file lose its line ends, or a closing quote? --longest-row N lets longer rows pass';

export function rowFault(source: Source, { kind, offset }: RowFault): Diagnostic {
  const at = source.placeAt(offset, 1);
  const { quote, limits } = source;
  if (kind === 'open') {
    return error('quote-unclosed', 'the quote that opens here is never closed', {
      at,
      hint: `close it with a second ${quote}, or write ${quote}${quote} for a quote inside a quoted cell`,
    });
  }
  if (kind === 'stray') {
    return error('cell-invalid', 'a quote stands in the wrong place of its cell', {
      at,
      hint: `a quoted cell starts and ends with ${quote}; write ${quote}${quote} for a quote inside it`,
    });
  }
  return error(
    'row-too-long',
    `a row of more than ${limits.longestRow} characters is no row of readings`,
    {
      at,
      hint: lineEndsLost,
    },
  );
}

export const tooManyColumns = (source: Source, start: number, count: number): Diagnostic => {
  const at = source.placeAt(start, 1);
  return error(
    'row-too-long',
    `a row of ${count} cells: more than ${source.limits.mostColumns} are not read`,
    {
      at,
      hint: `a table of readings has fewer columns; --most-columns ${count} lets it pass`,
    },
  );
};
