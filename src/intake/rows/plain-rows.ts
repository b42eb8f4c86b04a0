/**
 * What stands around every row of a table and is no part of it, taken off: line ends that are none of a
 * text file, the `> ` of an answered mail, quotes around a line as a whole, “ ” and « » for quotes.
 *
 * Each is taken off only where every line has it. What is taken off becomes blanks, and what stands for
 * another sign that sign: no place in the text moves.
 */
export type PlainRows = { readonly text: string; readonly evidence: readonly string[] };

type Taken = { readonly text: string; readonly said: string };

export function plainRows(written: string): PlainRows {
  const evidence: string[] = [];
  let text = written;
  for (const take of [
    withLineEnds,
    withoutMailMarks,
    withoutBoxes,
    withPlainQuotes,
    withoutRowQuotes,
  ]) {
    const taken = take(text);
    if (taken === undefined) continue;
    text = taken.text;
    evidence.push(taken.said);
  }
  return { text, evidence };
}

/** U+2028, U+0085 and the record separator end lines in a text that has no other line end. */
function withLineEnds(text: string): Taken | undefined {
  const sign = ['\u2028', '\u0085', '\u001e'].find((one) => text.includes(one));
  if (sign === undefined || text.trim().includes('\n')) return undefined;
  const code = (sign.codePointAt(0) ?? 0).toString(16).toUpperCase().padStart(4, '0');
  return { text: text.replaceAll(sign, '\n'), said: `U+${code} ends each line` };
}

/** `> bonnet;1;104`, as programs for mail show what they answer. */
function withoutMailMarks(text: string): Taken | undefined {
  const filled = filledLines(text);
  if (filled.length < 2 || !filled.every((line) => /^(?:> ?)+/u.test(line))) return undefined;
  return {
    text: text.replace(/^(?:> ?)+/gmu, (marks) => ' '.repeat(marks.length)),
    said: 'every line begins with the ">" of an answered mail: it is taken off',
  };
}

/** A table drawn in lines: `│` between its columns, `├──┼──┤` between its rows. */
function withoutBoxes(text: string): Taken | undefined {
  const bars = filledLines(text).filter((line) => /^\s*[│┃║].*[│┃║]\s*$/u.test(line));
  if (bars.length < 2) return undefined;
  return {
    text: text
      .replace(/^[\s┌┬┐├┼┤└┴┘─━═╔╦╗╠╬╣╚╩╝╒╤╕╞╪╡╘╧╛┏┳┓┣╋┫┗┻┛]+$/gmu, (rule) =>
        rule.replace(/[^\n]/gu, ' '),
      )
      .replace(/[│┃║]/gu, '|'),
    said: 'the lines drawn around the cells are taken off',
  };
}

const pairs = [
  ['“', '”'],
  ['„', '“'],
  ['«', '»'],
  ['»', '«'],
] as const;

/** Cells in the quotes of print; a file that has plain ones as well says two things. */
function withPlainQuotes(text: string): Taken | undefined {
  if (text.includes('"')) return undefined;
  const pair = pairs.find(([open, close]) => {
    const cell = new RegExp(
      `(?:^|[,;\\t|]) *${open}[^${open}${close}\\n]*${close} *(?=[,;\\t|]|$)`,
      'gmu',
    );
    const closed = text.match(cell)?.length ?? 0;
    return closed > 1 && [open, close].every((sign) => countOf(text, sign) === closed);
  });
  if (pair === undefined) return undefined;
  const [open, close] = pair;
  return {
    text: text.replaceAll(open, '"').replaceAll(close, '"'),
    said: `cells stand in ${open} ${close}, which are taken for quotes`,
  };
}

const countOf = (text: string, sign: string): number => text.split(sign).length - 1;

/** Every line in a pair of quotes; quotes doubled within are those of its cells, two to a cell. */
function withoutRowQuotes(text: string): Taken | undefined {
  const filled = filledLines(text);
  if (filled.length < 2 || !filled.every((line) => /^\s*"(?:[^"]|"")*"\s*$/u.test(line)))
    return undefined;
  // Four in a row are a quote within a cell, and what does not pair closes no cell.
  const pairs = filled.map((line) => countOf(line.trim().slice(1, -1), '""'));
  if (text.includes('""""') || pairs.some((count) => count % 2 === 1)) return undefined;
  const inner = text.replace(/^( *)"(.*)"( *)$/gmu, '$1 $2 $3');
  const bare = inner.replace(/""([^"\n]*)""/gu, ' "$1" ');
  return { text: bare, said: 'every row stands in quotes as a whole: they are taken off' };
}

const filledLines = (text: string): readonly string[] =>
  text.split('\n').filter((line) => line.trim() !== '');
