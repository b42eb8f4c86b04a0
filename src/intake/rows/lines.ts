/** Lines of a text, by where they start. */

/** Where the line ends that goes on at `from`: at its line end, or with the text. */
export const endOfLine = (text: string, from: number): number => {
  const at = text.indexOf('\n', from);
  return at === -1 ? text.length : at;
};

/** What is left of the line at `start`, all of it where it starts there. */
export const lineFrom = (text: string, start: number): string =>
  text.slice(start, endOfLine(text, start));

export function countLineEnds(text: string, from: number, to: number): number {
  let count = 0;
  for (let at = text.indexOf('\n', from); at !== -1 && at < to; at = text.indexOf('\n', at + 1)) {
    count += 1;
  }
  return count;
}
