import { displayWidth } from './printable.ts';

/** Where a line may end: not between a number and its degrees or its ±, nor after ±, nor at a no-break space. */
const BREAK = /(?<!±) (?!°C|(?<=\d )± )/;

/** Words filled into lines; the second and later lines are indented. */
export function wrap(text: string, width: number, indent: string): readonly string[] {
  const lines: string[] = [];
  let line = '';
  for (const word of text.split(BREAK)) {
    const longer = line === '' ? word : `${line} ${word}`;
    if (line !== '' && line !== indent && displayWidth(longer) > width) {
      lines.push(line);
      line = indent + word;
    } else line = longer;
  }
  return [...lines, line];
}

/** The same of a line that is set in: the blanks it begins with stay. */
export const wrapSetIn = (text: string, width: number, indent: string): readonly string[] => {
  const lead = /^ */.exec(text)?.[0].length ?? 0;
  const [first = '', ...more] = wrap(HELD.repeat(lead) + text.slice(lead), width, indent);
  return [' '.repeat(lead) + first.slice(lead), ...more];
};

const HELD = '\u00a0';
