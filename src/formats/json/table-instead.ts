/** A table where JSON is wanted, as where a file of readings and a job file are exchanged: told as such, and not as bad JSON. */
import { ownTable, takenAs } from '../../base/own-files.ts';
import type { SyntaxFault } from './json-syntax.ts';

const delimiters = [',', ';', '\t'];

/** Nothing of a text that may be meant as JSON, or whose first two lines are not parted alike. */
export function tableInstead(text: string): SyntaxFault | undefined {
  if (/^\s*[[{"]/u.test(text)) return undefined;
  const [head = '', next = ''] = text
    .slice(0, headLength)
    .split(/\r\n?|\n/u)
    .filter((line) => line.trim() !== '');
  const delimiter = delimiters.find((mark) => head.includes(mark) && next.includes(mark));
  if (delimiter === undefined || /[:{}]/u.test(head)) return undefined;
  const other = ownTable(head.split(delimiter));
  return {
    offset: text.indexOf(head),
    length: head.length,
    message: `this is ${other?.called ?? 'a table'}, where a file in JSON is wanted`,
    hint:
      other?.option === undefined
        ? 'readings are named by themselves, and the file in JSON after its option: are the two exchanged?'
        : takenAs(other),
  };
}

/** Enough for two lines. */
const headLength = 4096;
