import { displayWidth } from './printable.ts';

/** Words filled into lines, no-break spaces kept together; the second and later lines are indented. */
export function wrap(text: string, width: number, indent: string): readonly string[] {
  const lines: string[] = [];
  let line = '';
  for (const word of text.split(' ')) {
    const longer = line === '' ? word : `${line} ${word}`;
    if (line !== '' && line !== indent && displayWidth(longer) > width) {
      lines.push(line);
      line = indent + word;
    } else line = longer;
  }
  return [...lines, line];
}
