/**
 * The delimiter of a table, from what each candidate makes of its first rows.
 *
 * A candidate fits if one of the rows it yields names the columns. Of those that fit, the one that
 * names most and splits the rows below into as many cells is taken; two that do so equally well are
 * refused, not chosen between. A first line `sep=;` settles it, an option settles it before that.
 */

import { type Diagnostic, error, found, type Outcome, refused } from '../../base/diagnostics.ts';
import { lineFrom } from './lines.ts';
import type { Source } from './source.ts';
import { type Delimiter, type Row, type Start, tokenize } from './tokens.ts';

export type Dialect = {
  readonly delimiter: Delimiter;
  /** Where the table starts: after a `sep=` line. */
  readonly start: Start;
  readonly header: Row;
  readonly evidence: readonly string[];
};

/** How many columns of a row are known, 0 if it is no header. */
export type HeaderScore = (cells: readonly string[], line: number) => number;
/** Says why no row of the best split is a header. */
export type ExplainHeader = (rows: readonly Row[], delimiter: Delimiter) => readonly Diagnostic[];

export const delimiterName: Readonly<Record<Delimiter, string>> = {
  ',': 'comma',
  ';': 'semicolon',
  '\t': 'tab',
  '|': 'pipe',
};
/** What is said of one that the caller named. */
export const delimiterAsked = (delimiter: Delimiter): string =>
  `${delimiterName[delimiter]} as delimiter, as asked`;
export const delimiters: readonly Delimiter[] = [',', ';', '\t', '|'];
/** The header is looked for among these first rows; where none of them is one, in many more. */
const headRows = 60;
const longHeadRows = 5000;

type Fit = { readonly header: Row; readonly score: number; readonly regular: number };
type Trial = {
  readonly delimiter: Delimiter;
  readonly rows: readonly Row[];
  readonly fit: Fit | undefined;
  readonly diagnostics: readonly Diagnostic[];
};

export function chooseDialect(
  source: Source,
  given: Delimiter | undefined,
  score: HeaderScore,
  explain: ExplainHeader,
): Outcome<Dialect> {
  const line = separatorLine(source);
  if (line !== undefined && line.delimiter === undefined && given === undefined) {
    return refused(
      error('cell-invalid', `"sep=${line.mark}" names a separator that is not read`, {
        at: source.placeAt(0, line.start.offset - 1),
        hint: 'separate the columns by a comma, a semicolon, a tab or a pipe',
      }),
    );
  }
  const start = line?.start ?? { offset: 0, line: 1 };
  const settled = given ?? line?.delimiter;
  const tryAll = (rows: number): readonly Trial[] =>
    settled === undefined
      ? tryEach(source, start, score, rows)
      : [tryDelimiter(source, settled, start, score, rows)];
  const nearby = tryAll(headRows);
  const asSaid = nearby.some(({ fit }) => fit !== undefined) ? nearby : tryAll(longHeadRows);
  // A line sep=, that makes no line a header, where another mark does, is a slip of a program.
  const others =
    given === undefined && line !== undefined && asSaid.every(({ fit }) => fit === undefined)
      ? tryEach(source, start, score, headRows)
      : [];
  const belied = others.some(({ fit }) => fit !== undefined);
  const trials = belied ? others : asSaid;
  const best = bestTrials(trials);
  const [first, second] = best;
  if (first?.fit === undefined) return refused(...whyNone(trials, explain));
  if (second !== undefined) return refused(tie(source, first.fit.header, best));
  const { delimiter, fit } = first;
  const reason = belied
    ? `not the "${line?.mark ?? ''}" of the sep= line, which makes no line a header`
    : line !== undefined
      ? 'named by the sep= line'
      : `it alone makes line ${fit.header.line} a header`;
  const evidence = [
    given === undefined
      ? `${delimiterName[delimiter]} as delimiter, ${reason}`
      : delimiterAsked(delimiter),
  ];
  return found({ delimiter, start, header: fit.header, evidence });
}

type SeparatorLine = {
  readonly mark: string;
  readonly delimiter: Delimiter | undefined;
  readonly start: Start;
};

function separatorLine({ text }: Source): SeparatorLine | undefined {
  const match = /^\s*"?sep=([^\n]?)"?[ ,;]*(?:\n|$)/iu.exec(text);
  if (match === null) return undefined;
  const mark = match[1] ?? '';
  const delimiter = delimiters.find((candidate) => candidate === mark);
  const line = match[0].split('\n').length;
  return { mark, delimiter, start: { offset: match[0].length, line } };
}

/** All marks that stand nowhere make the same of the rows: one trial is that of each. */
function tryEach(source: Source, start: Start, score: HeaderScore, most: number): readonly Trial[] {
  const absent = delimiters.filter((delimiter) => !source.text.includes(delimiter));
  const [first] = absent;
  const uncut = first === undefined ? undefined : tryDelimiter(source, first, start, score, most);
  return delimiters.map((delimiter) =>
    uncut !== undefined && absent.includes(delimiter)
      ? { ...uncut, delimiter }
      : tryDelimiter(source, delimiter, start, score, most),
  );
}

function tryDelimiter(
  source: Source,
  delimiter: Delimiter,
  start: Start,
  score: HeaderScore,
  most: number,
): Trial {
  const { value: rows = [], diagnostics } = readHead(source, delimiter, start, most);
  const at = rows.findIndex(({ cells, line }) => score(cells, line) > 0);
  const header = rows[at];
  if (header === undefined) return { delimiter, rows, fit: undefined, diagnostics };
  const below = rows.slice(at + 1);
  const regular = below.filter(({ cells }) => cells.length === header.cells.length).length;
  return {
    delimiter,
    rows,
    fit: { header, score: score(header.cells, header.line), regular },
    diagnostics,
  };
}

/** The first rows, or as many of them as stand before a fault; the whole table tells the fault. */
function readHead(
  source: Source,
  delimiter: Delimiter,
  start: Start,
  most: number,
): Outcome<readonly Row[]> {
  let head = tokenize(source, delimiter, start, most);
  const { diagnostics } = head;
  for (let n = most >> 1; n > 0 && head.value === undefined; n >>= 1) {
    head = tokenize(source, delimiter, start, n);
  }
  return head.value === undefined ? head : { ...head, diagnostics };
}

function bestTrials(trials: readonly Trial[]): readonly Trial[] {
  const weight = ({ fit }: Trial): number =>
    fit === undefined ? 0 : fit.score * (headRows + 1) + Math.min(fit.regular, headRows);
  const most = Math.max(...trials.map(weight));
  return most === 0 ? [] : trials.filter((trial) => weight(trial) === most);
}

function whyNone(trials: readonly Trial[], explain: ExplainHeader): readonly Diagnostic[] {
  const beyond = trials
    .flatMap(({ diagnostics }) => diagnostics)
    .find(({ code }) => code === 'row-too-long');
  if (beyond !== undefined) return [beyond];
  const cells = ({ rows }: Trial): number => rows.reduce((sum, own) => sum + own.cells.length, 0);
  const [widest] = [...trials].sort((a, b) => cells(b) - cells(a));
  if (widest !== undefined && widest.rows.length > 0 && widest.diagnostics.length === 0) {
    return explain(widest.rows, widest.delimiter);
  }
  const faults = trials.flatMap(({ diagnostics }) => diagnostics).slice(0, 1);
  return faults.length > 0 ? faults : explain([], ',');
}

function tie(source: Source, header: Row, best: readonly Trial[]): Diagnostic {
  const names = best.map(({ delimiter }) => delimiterName[delimiter]).join(' and ');
  return error('delimiter-ambiguous', `${names} split the file equally well`, {
    at: source.placeAt(header.start, lineFrom(source.text, header.start).length),
    hint: 'keep one of them as delimiter and quote the cells that hold the other',
  });
}
