/**
 * Rows that no line of names stands above, split and taken as the table they prove to be; or why
 * they cannot be.
 */

import { type Diagnostic, error, found, type Outcome, refused } from '../../base/diagnostics.ts';
import { sayingOf } from '../beside/sayings.ts';
import { isThickness } from '../beside/unit-lines.ts';
import { numberShape } from '../cells/numbers.ts';
import { unitNamed } from '../cells/unit.ts';
import type { Layout, LayoutContext } from '../header/layout.ts';
import { columnsByNumber, type IntakeOptions } from '../intake-options.ts';
import type { Split } from '../parts/section-state.ts';
import { delimiterName, delimiters } from '../rows/dialect.ts';
import { cellText } from '../rows/row.ts';
import type { Source } from '../rows/source.ts';
import { type Delimiter, type Row, tokenize } from '../rows/tokens.ts';
import { widest } from '../tables/table.ts';
import { consoleLines } from './console-lines.ts';
import { freeLines } from './free-lines.ts';
import {
  countsBetweenCommas,
  headerlessLayout,
  isBare,
  panelNamedBy,
  withoutHeader,
} from './headerless.ts';
import { keyedLines } from './keyed-lines.ts';
import { headsReadings, titleOfOthers } from './lines-above.ts';
import { listRows, spoiledPiece } from './list-lines.ts';
import { strangeLine } from './strange-line.ts';

export function headerlessTable(
  source: Source,
  options: IntakeOptions,
  context: LayoutContext,
): Outcome<Split> {
  const tries = (options.delimiter === undefined ? delimiters : [options.delimiter]).flatMap(
    (delimiter) => {
      const rows = tokenize(source, delimiter, { offset: 0, line: 1 }).value;
      const own = withoutRules(source, rows ?? []);
      return own.length === 0 ? [] : [{ delimiter, rows: own }];
    },
  );
  const list = listTable(source, tries[0]?.rows ?? [], context);
  if (list !== undefined) return found(list);
  const keyed = keyedTable(source, tries[0]?.rows ?? [], options, context);
  if (keyed !== undefined) return found(keyed);
  const splits = tries.flatMap(({ delimiter, rows }): readonly Split[] => {
    const proved = provedLayout(rows, delimiter, options, context);
    if (proved === undefined) return [];
    const { layout, line, panel, why } = proved;
    const evidence = [`${delimiterName[delimiter]} as delimiter`, why];
    const start = { layout, header: undefined, line, panel };
    return [{ source, delimiter, shown: delimiter, rows, start, context, evidence }];
  });
  const [best] = splits.sort((a, b) => surer(b) - surer(a));
  const title =
    best === undefined ? titleOfOthers(source, tries[0]?.rows ?? [], context) : undefined;
  if (title !== undefined) return refused(title);
  const shots = best ?? consoleTable(source, tries[0]?.rows ?? [], options, context);
  const free = shots ?? freeTable(source, tries[0]?.rows ?? [], options, context);
  const spoiled =
    shots === undefined && free !== undefined
      ? undefined
      : spoiledPiece(source, tries[0]?.rows ?? [], context.isPanel);
  if (spoiled !== undefined) return refused(noNumber(source, spoiled));
  if (free !== undefined) return found(free);
  const bare = tries.findLast(
    ({ rows }) =>
      rows.some(isBare) &&
      rows.every((row) => isBare(row) || sayingOf(row) !== undefined || isUnitAlone(row)),
  );
  return bare === undefined ? refused() : refused(noPanel(source, bare.rows, context));
}

/** Why notes that most lines read as are not read: the line that is none. */
export function strangeNote(
  source: Source,
  { delimiter, leftOpen }: IntakeOptions,
  { isPanel }: LayoutContext,
): Diagnostic | undefined {
  if (delimiter !== undefined) return undefined;
  const rows = tokenize(source, delimiters[0] ?? ',', { offset: 0, line: 1 }).value ?? [];
  return strangeLine(source, withoutRules(source, rows), { isPanel, leftOpen });
}

/** Without the rules between blocks, `--` or `====`; a dash among numbers alone stands for one that is missing. */
function withoutRules(source: Source, rows: readonly Row[]): readonly Row[] {
  const isRule = ({ start }: Row): boolean =>
    /^[ \t]*([-=_*~–—])\1+[ \t]*(?:\n|$)/uy.test(source.text.slice(start, start + 200));
  const others = rows.filter((row) => !isRule(row));
  const isBlock = ({ cells }: Row): boolean =>
    cells.some((cell) => /\p{L}.*\p{L}/u.test(cell) && unitNamed(cell.trim()) === undefined);
  return others.length < rows.length && others.some(isBlock) ? others : rows;
}

/** `µm` in a line of its own above the numbers. */
const isUnitAlone = ({ cells }: Row): boolean =>
  cells.length === 1 && unitNamed((cells[0] ?? '').trim()) !== undefined;

/** A comma may be a decimal mark: another delimiter that proves the same comes first, but where numbers count before it. */
function surer({ delimiter, start: { layout }, rows }: Split): number {
  const isDoubted = delimiter === ',' && !(layout.kind === 'blocks' && countsBetweenCommas(rows));
  const sure = delimiter === ',' ? 200 : 100;
  return (isDoubted ? 0 : sure) + layout.columns.size + layout.readings.length;
}

type Proved = {
  readonly layout: Layout;
  readonly line: number;
  readonly panel?: string | undefined;
  readonly why: string;
};

function provedLayout(
  rows: readonly Row[],
  delimiter: Delimiter,
  options: IntakeOptions,
  context: LayoutContext,
): Proved | undefined {
  const given = columnsByNumber(options.columns);
  const reading = given?.get('reading');
  const [first] = rows;
  const inFirst = numberShape((first?.cells[reading ?? -1] ?? '').trim()) !== undefined;
  if (given !== undefined && reading !== undefined && given.has('panel')) {
    if (!inFirst) return undefined;
    const columns = new Map([...given].filter(([role]) => role !== 'reading'));
    const why = 'no line names the columns, which are taken as asked';
    return { layout: withoutHeader('long', columns, [reading]), line: 0, why };
  }
  const panel = options.panelNames?.get('');
  const layout =
    headerlessLayout(rows, delimiter, context) ??
    (panel !== undefined && rows.some(isBare) ? bareList(rows, delimiter) : undefined);
  if (layout === undefined || !allowed(layout, options)) return undefined;
  const line = layout.columns.has('panel')
    ? firstPanelLine(rows, layout, context)
    : (rows.find((row) => isBare(row) || panelNamedBy(row, context) !== undefined)?.line ?? 0);
  if (rows.some((row) => row.line < line && headsReadings(row, layout, line))) return undefined;
  const why =
    layout.kind === 'blocks'
      ? 'no line names the columns: lines name the panels of the numbers below them'
      : listSentence(layout);
  return { layout, line, panel, why };
}

/** What the columns of a list are taken for, and on what ground. */
function listSentence({ columns, readings }: Layout): string {
  const name = (column: number | undefined): string => `column ${(column ?? 0) + 1}`;
  const point = columns.get('point');
  const counts = point === undefined ? '' : `, ${name(point)} counts up`;
  const films =
    readings.length === 1
      ? `the numbers of ${name(readings[0]?.column)}`
      : `the numbers of ${readings.length} columns`;
  return `no line names the columns: ${name(columns.get('panel'))} holds known panels${counts}, and ${films} are as large as films and taken for readings`;
}

const allowed = ({ kind }: Layout, { layout }: IntakeOptions): boolean =>
  layout === undefined || layout === kind || (layout === 'long' && kind === 'list');

const bareList = (rows: readonly Row[], delimiter: Delimiter): Layout | undefined => {
  const width = widest(rows.filter(isBare));
  if (width > 1 && delimiter === ',') return undefined;
  return withoutHeader(
    'blocks',
    new Map(),
    Array.from({ length: width }, (_, k) => k),
  );
};

const firstPanelLine = (
  rows: readonly Row[],
  { columns }: Layout,
  { isPanel }: LayoutContext,
): number => {
  const at = columns.get('panel') ?? 0;
  return rows.find((row) => isPanel(cellText(row, at)))?.line ?? 0;
};

function listTable(
  source: Source,
  rows: readonly Row[],
  context: LayoutContext,
): Split | undefined {
  const list = listRows(source, rows, context.isPanel);
  if (list === undefined) return undefined;
  const own = list.filter((row, k) => row !== rows[k]);
  const width = widest(own);
  const numbers = Array.from({ length: width - 1 }, (_, k) => k + 1);
  const layout = withoutHeader('list', new Map([['panel', 0]]), numbers);
  const line = own[0]?.line ?? 0;
  return {
    // The cells are as long as in the text, with one mark between them: any delimiter places them.
    ...{ source, delimiter: '|', shown: ':', rows: list, context },
    start: { layout, header: undefined, line },
    evidence: ['each line names a panel, and its readings behind a colon'],
  };
}

/** Lines of keys and values. */
function keyedTable(
  source: Source,
  rows: readonly Row[],
  { delimiter, layout }: IntakeOptions,
  context: LayoutContext,
): Split | undefined {
  if (delimiter !== undefined || layout !== undefined) return undefined;
  const own = keyedLines(source, rows, context);
  if (own === undefined) return undefined;
  return {
    ...{ source, delimiter: '|', shown: 'keys', rows: own.rows, context },
    start: { layout: own.layout, header: undefined, line: own.line },
    evidence: [own.evidence],
  };
}

/** Lines as a gauge sends them to a terminal. */
function consoleTable(
  source: Source,
  rows: readonly Row[],
  { panelNames, delimiter }: IntakeOptions,
  context: LayoutContext,
): Split | undefined {
  const own = delimiter === undefined ? consoleLines(source, rows, context.isPanel) : undefined;
  if (own === undefined) return undefined;
  const { layout, line } = own;
  return {
    ...{ source, delimiter: '|', shown: 'blanks', rows: own.rows, context },
    start: { layout, header: undefined, line, panel: panelNames?.get('') },
    evidence: ['each line is one shot, as a gauge sends it to a terminal'],
  };
}

/** Lines as people type them. */
function freeTable(
  source: Source,
  rows: readonly Row[],
  { delimiter, layout, panelNames }: IntakeOptions,
  context: LayoutContext,
): Split | undefined {
  const isAskedOtherwise = layout !== undefined && layout !== 'list';
  if (delimiter !== undefined || isAskedOtherwise) return undefined;
  const own = freeLines(source, rows, context.isPanel);
  if (own === undefined) return undefined;
  return {
    ...{ source, delimiter: '|', shown: 'words', rows: own.rows, context },
    start: {
      ...{ layout: own.layout, header: undefined, line: own.line },
      ...(own.nameless ? { panel: panelNames?.get('') ?? '' } : {}),
    },
    evidence: own.nameless && panelNames?.has('') === true ? [] : own.evidence,
  };
}

function noNumber(source: Source, { offset, text }: { offset: number; text: string }): Diagnostic {
  return error('reading-not-a-number', `"${text}" is not a number`, {
    at: source.placeAt(offset, text.length),
    hint: 'correct it, or leave it out where there is no reading',
  });
}

function noPanel(source: Source, rows: readonly Row[], { isPanel }: LayoutContext): Diagnostic {
  const row = rows.find(isBare);
  const inUnit = rows.find((one) => {
    const saying = sayingOf(one);
    return saying !== undefined && isPanel(saying.key) && isThickness(saying.value);
  });
  if (inUnit !== undefined) {
    const { key = '', value = '' } = sayingOf(inUnit) ?? {};
    return error('panel-missing', `"${key}" and "${value}" in one line name a panel and a unit`, {
      at: source.placeAt(inUnit.start, key.length),
      hint: `write "${key}" alone above its numbers, and once for the file "Unit: ${value}"`,
    });
  }
  return error('panel-missing', 'the numbers are no panel’s: no line and no column names one', {
    at: source.placeAt(row?.start ?? 0, row?.cells[0]?.length ?? 1),
    hint: 'write a line such as "Panel: bonnet" above them, or add a column "panel"',
  });
}
