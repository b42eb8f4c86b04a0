/**
 * Where the readings of a file begin, and how its rows are split: the header that names panel and
 * reading; else a header without a panel under a line that names it; else rows that prove
 * themselves without a header. The first of these that the file has is taken.
 */
import { type Diagnostic, error, found, type Outcome, refused } from '../../base/diagnostics.ts';
import { numberShape } from '../cells/numbers.ts';
import { type Layout, type LayoutContext, layoutOf } from '../header/layout.ts';
import { namelessSentence } from '../headerless/free-table.ts';
import { panelNamedBy } from '../headerless/headerless.ts';
import { headerlessTable, strangeNote } from '../headerless/headerless-table.ts';
import {
  columnsByNumber,
  type IntakeOptions,
  layoutContext,
  missingColumns,
} from '../intake-options.ts';
import { backslashSentence, withDoubledQuotes } from '../rows/backslash-quotes.ts';
import { barePairsSentence, withBarePairs } from '../rows/bare-pairs.ts';
import { uncommentHeader } from '../rows/commented-header.ts';
import { chooseDialect, type Dialect, delimiters } from '../rows/dialect.ts';
import { withOneDelimiter } from '../rows/header-delimiter.ts';
import { withPlainHeadings } from '../rows/headings.ts';
import { otherMarks } from '../rows/other-marks.ts';
import type { Source } from '../rows/source.ts';
import { type Delimiter, type Row, tokenize } from '../rows/tokens.ts';
import { settleCounter } from '../tables/counting-column.ts';
import { panelByCells } from '../tables/panel-column.ts';
import { readingByUnit } from '../tables/reading-by-unit.ts';
import { placeOf } from '../tables/table.ts';
import { explainGaugeHeader } from '../tables/why-no-header.ts';
import { unitOverNothing } from '../units/unit-over-nothing.ts';
import { headerOfTwo, tableUnderTwoRows } from './header-of-two.ts';
import { panelByLegend } from './panel-by-legend.ts';
import { rowNamesSentence, withoutRowNames } from './row-names.ts';
import type { Split } from './section-state.ts';
import { isSortedIn, sortedHeaderSentence } from './sorted-header.ts';

export function findTable(written: Source, options: IntakeOptions): Outcome<Split> {
  const found = tableIn(written, options);
  if (found.value !== undefined) return found;
  const plain = withPlainHeadings(written, layoutContext(options).isPanel);
  const again = plain === undefined ? undefined : tableIn(plain, options);
  return again?.value === undefined ? found : again;
}

function tableIn(written: Source, options: IntakeOptions): Outcome<Split> {
  const context = layoutContext(options);
  const { split: headed, hasHeader } = headedTable(written, options, context);
  const unescaped = headed.value === undefined ? withDoubledQuotes(written) : undefined;
  if (unescaped !== undefined) {
    const { split } = headedTable(unescaped, options, context);
    if (split.value !== undefined) return withEvidence(split.value, backslashSentence);
  }
  const paired =
    headed.value === undefined ? tableBelowPairs(written, options, context) : undefined;
  if (paired !== undefined) return paired;
  if (hasHeader || !lacksHeader(headed.diagnostics)) return headed;
  const marked = otherwiseMarked(written, options, context);
  if (marked !== undefined) return marked;
  const nameless = panelByCells(written, context);
  if (nameless !== undefined) {
    const { split } = headedTable(written, options, nameless.context);
    return split.value === undefined ? split : withEvidence(split.value, nameless.evidence);
  }
  const coded = panelByLegend(written, context);
  if (coded !== undefined) {
    const { split } = headedTable(written, options, coded.context);
    if (split.value !== undefined) return withEvidence(split.value, coded.evidence);
  }
  const double = tableUnderTwoRows(written, options, context);
  if (double !== undefined) return found(double);
  const unnamed = readingByUnit(written, context);
  if (unnamed !== undefined) {
    const { split } = headedTable(written, options, unnamed.context);
    if (split.value !== undefined) return found({ ...split.value, context }, [unnamed.told]);
  }
  const captioned = headedTable(written, options, { ...context, captions: true }).split;
  if (captioned.value !== undefined && hasCaption(captioned.value)) return captioned;
  if (captioned.value !== undefined && isNameless(captioned.value)) {
    const { start, evidence } = captioned.value;
    const panel = options.panelNames?.get('');
    return found({
      ...captioned.value,
      start: { ...start, panel: panel ?? '' },
      evidence: panel === undefined ? [...evidence, namelessSentence] : evidence,
    });
  }
  const namedByUser =
    options.columns !== undefined && columnsByNumber(options.columns) === undefined;
  if (options.headerLine !== undefined || namedByUser) return headed;
  const bare = headerlessTable(written, options, context);
  if (bare.value !== undefined || bare.diagnostics.length > 0) return bare;
  const isNamed = headed.diagnostics.some(({ code }) => code !== 'header-missing');
  const strange = isNamed ? undefined : strangeNote(written, options, context);
  return strange === undefined ? headed : refused(strange);
}

const ofNobody: ReadonlySet<string | undefined> = new Set([
  'point',
  'repeat',
  'reading',
  'time',
  'unit',
]);

/** `No;µm`, `Time;Reading;Unit`: no column can be the panel's, for each is known to be something else. */
const isNameless = ({ start: { layout } }: Split): boolean =>
  layout.unknown.length === 0 &&
  layout.repeated.length === 0 &&
  layout.header.every(
    ({ text, role, label }) => text === '' || ofNobody.has(role) || /^\d+$/u.test(label),
  );

/** The table under quoted pairs of a preamble, which are written in another way than its rows. */
function tableBelowPairs(
  written: Source,
  options: IntakeOptions,
  context: LayoutContext,
): Outcome<Split> | undefined {
  const bared = withBarePairs(written);
  if (bared === undefined) return undefined;
  const { split, hasHeader } = headedTable(bared.source, options, context);
  if (split.value === undefined) return hasHeader ? split : undefined;
  return split.value.start.line <= bared.last
    ? undefined
    : withEvidence(split.value, barePairsSentence);
}

const withEvidence = (split: Split, sentence: string): Outcome<Split> =>
  found({ ...split, evidence: [...split.evidence, sentence] });

/** The table of a file whose columns are set apart in a way that no delimiter is. */
function otherwiseMarked(
  written: Source,
  options: IntakeOptions,
  context: LayoutContext,
): Outcome<Split> | undefined {
  const { delimiter, headerLine, columns } = options;
  if (delimiter !== undefined || headerLine !== undefined || columns !== undefined)
    return undefined;
  const other = otherMarks(written, (cells) => layoutOf(cells, context) !== undefined);
  if (other === undefined) return undefined;
  const { value: marks } = other;
  if (marks === undefined) return refused(...other.diagnostics);
  const { split } = headedTable(marks.source, options, context);
  const { value } = split;
  if (value === undefined) return split;
  const evidence =
    marks.shown === undefined
      ? [marks.evidence, ...value.evidence]
      : [marks.evidence, ...value.evidence.slice(1)];
  return { ...split, value: { ...value, shown: marks.shown ?? value.shown, evidence } };
}

/** A quote that seems misplaced may stand so only for the delimiter that was tried. */
const lacksHeader = (diagnostics: readonly Diagnostic[]): boolean =>
  diagnostics.every(({ code }) => headerFaults.has(code));
const headerFaults: ReadonlySet<string> = new Set([
  'header-missing',
  'column-missing',
  'cell-invalid',
  'quote-unclosed',
]);

const hasCaption = ({ rows, context }: Split): boolean =>
  rows.some((row) => panelNamedBy(row, context) !== undefined);

function headedTable(
  written: Source,
  options: IntakeOptions,
  context: LayoutContext,
): { readonly split: Outcome<Split>; readonly hasHeader: boolean } {
  const layout = (cells: readonly string[], line: number): Layout | undefined =>
    options.headerLine === undefined || options.headerLine === line
      ? numberWhereNamed(cells, options)
        ? undefined
        : layoutOf(cells, context)
      : undefined;
  const score = (cells: readonly string[], line: number): number => {
    const own = layout(cells, line);
    return own === undefined ? 0 : own.columns.size + own.readings.length;
  };
  const choose = (source: Source): Outcome<Dialect> =>
    chooseDialect(source, options.delimiter, score, (rows, delimiter) =>
      whyNoHeader(source, rows, delimiter, options),
    );
  const asWritten = choose(written);
  const uncommented =
    asWritten.value === undefined && options.headerLine === undefined
      ? uncommentHeader(written, (cells) => score(cells, 0) > 0)
      : undefined;
  const asMarked = uncommented ?? written;
  const chosen = uncommented === undefined ? asWritten : choose(uncommented);
  const alike =
    chosen.value === undefined || options.delimiter !== undefined
      ? undefined
      : withOneDelimiter(asMarked, chosen.value.header, chosen.value.delimiter, delimiters);
  const source = alike?.source ?? asMarked;
  const dialect = alike === undefined ? chosen : choose(alike.source);
  if (dialect.value === undefined) {
    return { split: refused(...dialect.diagnostics), hasHeader: false };
  }
  const { delimiter, start, header, evidence: dialectSaid } = dialect.value;
  const evidence =
    alike === undefined
      ? dialectSaid
      : [...dialectSaid, `line ${header.line} parts its names by another mark than the rows`];
  const own = layout(header.cells, header.line);
  const rows = tokenize(source, delimiter, start);
  if (rows.value === undefined || own === undefined) {
    return { split: refused(...rows.diagnostics), hasHeader: true };
  }
  const double = headerOfTwo(rows.value, header, own, context);
  if (double !== undefined) {
    const { said, ...rest } = double;
    const split = found({
      ...{ source, delimiter, shown: delimiter, context, ...rest },
      evidence: [...evidence, said],
    });
    return { split, hasHeader: true };
  }
  if (isSortedIn(rows.value, header, own, context)) {
    const split = found({
      ...{ source, delimiter, shown: delimiter, context },
      rows: rows.value.filter(({ start: at }) => at !== header.start),
      evidence: [...evidence, sortedHeaderSentence(header.line)],
      start: { layout: own, header, line: 0 },
    });
    return { split, hasHeader: true };
  }
  const plain = withoutRowNames(source, delimiter, header, rows.value);
  const all = plain ?? rows.value;
  const first = all.findIndex(({ line }) => line > header.line);
  const below = first === -1 ? [] : all.slice(first);
  const layoutInUnit = unitOverNothing(header, below, context) ?? own;
  const counted = settleCounter(layoutInUnit, below);
  const split = found({
    ...{ source, delimiter, shown: delimiter, rows: all, context },
    evidence: [
      ...evidence,
      ...(plain === undefined ? [] : [rowNamesSentence]),
      ...(counted === undefined ? [] : [counted.evidence]),
    ],
    start: { layout: counted?.layout ?? layoutInUnit, header, line: header.line },
  });
  return { split, hasHeader: true };
}

/** What is missing from a header; or that the row or the layout that was asked for is not there. */
function whyNoHeader(
  source: Source,
  rows: readonly Row[],
  delimiter: Delimiter,
  options: IntakeOptions,
): readonly Diagnostic[] {
  const { headerLine, layout, columns } = options;
  const own = rows.filter(({ line }) => headerLine === undefined || line === headerLine);
  const why =
    columns === undefined
      ? explainGaugeHeader(source, own, delimiter, layoutContext(options).isPanel)
      : missingColumns(source, own, options);
  const plain = headerLine === undefined && layout === undefined && columns === undefined;
  if (why.length > 0 && (plain || own.length > 0)) return why;
  const [row = rows[0]] = own;
  const at =
    row === undefined
      ? source.placeAt(Math.max(0, source.text.search(/\S/u)), 1)
      : placeOf({ source, delimiter }, row, 0);
  const asked = [
    ...(headerLine === undefined ? [] : [`line ${headerLine}`]),
    ...(layout === undefined ? [] : [`layout ${layout}`]),
  ];
  const message = `no names of columns stand there as asked for${asked.length === 0 ? '' : ` (${asked.join(', ')})`}`;
  const hint = 'ask for another line or layout, or let the file say';
  return [error('header-missing', message, { at, hint })];
}

/** Columns given by number make a header of any row, unless a number stands where readings do. */
function numberWhereNamed(cells: readonly string[], options: IntakeOptions): boolean {
  if (options.columns === undefined) return false;
  const columns = columnsByNumber(options.columns);
  const text = (cells[columns?.get('reading') ?? -1] ?? '').trim();
  return (
    columns !== undefined && options.headerLine === undefined && numberShape(text) !== undefined
  );
}
