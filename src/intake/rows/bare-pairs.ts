/**
 * `"Unit","µm"` above a table whose columns another sign sets apart: each line of a preamble may be written in a way
 * of its own. A quoted pair is no row of that table, where its quotes stand in the wrong place: it is asked for only
 * where a file has no header else. The quotes become blanks and the sign a colon, so that every place stays.
 */
import { rewritten, type Source } from './source.ts';

export const barePairsSentence =
  'quoted pairs above the table are names and values, set apart in a way of their own';

const pair = /^"([^"\n]{1,60})"([ ]*)[,;\t|]([ ]*)"([^"\n]*)"(?:[ ]*[,;\t|](?:"")?)*[ ]*$/u;
/** A preamble is short. */
const mostLines = 60;

/** The file with such lines written plainly, and the last of them; undefined where there is none. */
export function withBarePairs(
  source: Source,
): { readonly source: Source; readonly last: number } | undefined {
  const lines = source.text.split('\n');
  let last = 0;
  for (const [k, line] of lines.slice(0, mostLines).entries()) {
    const plain = line.replace(pair, ' $1 $2:$3 $4 ');
    if (plain === line) continue;
    lines[k] = plain.padEnd(line.length);
    last = k + 1;
  }
  return last === 0 ? undefined : { source: rewritten(source, lines.join('\n')), last };
}
