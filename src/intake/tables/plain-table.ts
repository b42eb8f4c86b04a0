/**
 * A table that asks nothing: `panel,point,reading_um` above rows such as `roof,1,108.2`, of known panels one after
 * the other, whose points count from 1. All that is asked of a table is known of such a one by its looks, and it is
 * the one that is read most. Anything else is no plain table, and is asked.
 *
 * What its numbers say about themselves (a reading that is the mean of others, a far one) is asked of it as of any.
 */

import { micrometres } from '../../base/units.ts';
import type { Reading } from '../../film/reading.ts';
import { pointInEach } from '../cells/decimal.ts';
import type { GaugeRole } from '../header/gauge-vocabulary.ts';
import type { HeaderCell } from '../header/header.ts';
import type { Layout } from '../header/layout-shape.ts';
import { type IntakeOptions, layoutContext } from '../intake-options.ts';
import type { Parts, Split } from '../parts/section-state.ts';
import type { SettledTable } from '../readings/readings.ts';
import type { Row } from '../rows/row.ts';
import type { Source } from '../rows/source.ts';
import type { SettledTables } from './settle-tables.ts';
import { type ExcludedCell, nothingGiven, type Table } from './table.ts';

/** What the tables of a text give. */
export type Collected = {
  readonly readings: readonly Reading[];
  readonly excluded: readonly ExcludedCell[];
  /** The panels met, where the user names some anew. */
  readonly panelsSeen: ReadonlySet<string>;
  /** The readings of each table. */
  readonly byTable: readonly (readonly Reading[])[];
};

export type PlainTable = {
  readonly split: Split;
  readonly parts: Parts;
  readonly settled: SettledTables;
  readonly collected: Collected;
};

const head = 'panel,point,reading_um\n';
/** A panel, a point, and a number with one decimal, as gauges show them; from 800 on it may be one for no value. */
const rowForm = /([a-z]+(?:[ -][a-z]+)*),([1-9]\d?),((?:[1-7]\d|[1-9])\d\.\d)\n/y;
const largestOfForm = 799.9;
const fewestPanels = 2;
/** In a longer file what it takes to ask is nothing beside what its rows take. */
const mostText = 20_000;

/** Undefined where the file, or the user, says anything that must be looked into. */
export function plainTable(source: Source, options: IntakeOptions): PlainTable | undefined {
  if (!source.text.startsWith(head) || !asksNothing(source, options)) return undefined;
  const rows = plainRowsOf(source, options.isPanel);
  return rows === undefined ? undefined : settledPlain(source, rows, options);
}

const asksNothing = (
  { text, firstLine, quote, omitted, written, split }: Source,
  { unit, delimiter, decimal, layout, headerLine, columns, panelNames, plausible }: IntakeOptions,
): boolean =>
  text.length <= mostText &&
  firstLine === 1 &&
  quote === '"' &&
  [omitted, written, split].every((one) => one === undefined) &&
  [unit, delimiter, decimal, layout, headerLine, columns].every((one) => one === undefined) &&
  (panelNames === undefined || panelNames.size === 0) &&
  plausible.largestReading > largestOfForm;

/** Each panel in one run of rows, its points counted from 1 up. */
function plainRowsOf(
  { text }: Source,
  isPanel: (label: string) => boolean,
): readonly Row[] | undefined {
  const rows: Row[] = [];
  const panels = new Set<string>();
  let panel = '';
  let point = 0;
  for (let start = head.length; start < text.length; start = rowForm.lastIndex) {
    rowForm.lastIndex = start;
    const found = rowForm.exec(text);
    if (found === null) return undefined;
    const [, name = '', number = '', reading = ''] = found;
    if (name !== panel) {
      if (panels.has(name) || !isPanel(name)) return undefined;
      panels.add(name);
      panel = name;
      point = 0;
    }
    point += 1;
    if (String(point) !== number) return undefined;
    rows.push({ cells: [panel, number, reading], line: rows.length + 2, start, quoted: false });
  }
  return panels.size < fewestPanels ? undefined : rows;
}

const header: readonly HeaderCell<GaugeRole>[] = [
  { text: 'panel', label: 'panel', role: 'panel' },
  { text: 'point', label: 'point', role: 'point' },
  { text: 'reading_um', label: 'reading', unit: 'um', unitText: 'um', role: 'reading' },
];
const layout: Layout = {
  kind: 'long',
  header,
  columns: new Map(header.flatMap(({ role }, k) => (role === undefined ? [] : [[role, k]]))),
  readings: [{ column: 2, panel: null, number: null }],
  series: 'reading',
  unknown: [],
  repeated: [],
};
const asRead = { unitByRow: false, rowsArePoints: false, placesArePoints: false };

function settledPlain(source: Source, rows: readonly Row[], options: IntakeOptions): PlainTable {
  const names: Row = { cells: header.map(({ text }) => text), line: 1, start: 0, quoted: false };
  const table: Table = {
    ...{ source, delimiter: ',', layout, header: names, given: nothingGiven, rows },
  };
  const decimal = pointInEach(rows.length);
  const readings = rows.map(readingOf(source.name));
  const rules: SettledTable['rules'] = {
    ...{ unit: 'um', decimal, largest: options.plausible.largestReading, cellsNameUnits: false },
    ...{ legend: new Map(), declared: new Map(), fewNegative: true, minusOneIsNone: false },
    ownUnits: false,
  };
  return {
    split: {
      ...{ source, delimiter: ',', shown: ',', rows: [names, ...rows] },
      context: layoutContext(options),
      evidence: ['comma as delimiter, it alone makes line 1 a header'],
      start: { layout, header: names, line: 1 },
    },
    parts: {
      ...{ metadata: [], units: [], evidence: [], statistics: [], summaries: [], above: [] },
      tables: [table],
    },
    settled: {
      ...{ tables: [{ table, rules, ...asRead }], excluded: [], claims: [] },
      ...{ decimal: decimal.mark, declaring: new Set() },
      evidence: ['the header says µm', decimal.evidence],
    },
    collected: { readings, byTable: [readings], excluded: [], panelsSeen: new Set() },
  };
}

const readingOf =
  (file: string) =>
  ({ cells: [panel = '', point = '', text = ''], line }: Row): Reading => ({
    ...{
      vehicle: null,
      panel,
      point,
      repeat: 1,
      thickness: micrometres(Number(text)),
      decimals: 1,
    },
    ...{ layer: '', place: 'face', marked: false, curved: false },
    origin: { file, line, column: panel.length + point.length + 3 },
  });
