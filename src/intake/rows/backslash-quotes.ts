/**
 * `"chip at \\"A\\""`: a backslash before each quote within a cell, as some programs write it. It is asked for only
 * where the quotes of a file do not close otherwise; a doubled quote is as long, so every place stays.
 */
import { rewritten, type Source } from './source.ts';

export const backslashSentence =
  'a backslash stands before each quote within a cell: the two are taken for a doubled quote';

/** Undefined where there is none, or where one ends its cell: `"C:\\cars\\"`. */
export function withDoubledQuotes(source: Source): Source | undefined {
  const { text } = source;
  if (!text.includes('\\"') || /\\"(?=[,;\t|\n]|$)/u.test(text)) return undefined;
  return rewritten(source, text.replaceAll('\\"', '""'));
}
