/** A command line → its words, as a shell splits them: blanks between, "…" and '…' around. */
export function shellWords(line: string): readonly string[] {
  const words: string[] = [];
  for (const [word] of line.matchAll(/(?:"[^"]*"|'[^']*'|[^\s"'])+/g)) {
    words.push(word.replaceAll(/"([^"]*)"|'([^']*)'/g, (_, double, single) => double ?? single));
  }
  return words;
}
