/** A batch as a page for people: a row a job, and what went wrong in full below. */

import { counted } from '../../base/counted.ts';
import { rangeShown, shown } from '../../base/rounding.ts';
import { thicknessText, unitName } from '../../base/sentence.ts';
import type { LengthUnit } from '../../base/units.ts';
import { column } from '../columns.ts';
import {
  type Block,
  type Cell,
  type Column,
  cell,
  type DataCell,
  gap,
  list,
  paragraph,
  title,
} from '../model.ts';
import { amountText } from '../quote/money-text.ts';
import { savedBy } from './further-aim.ts';

/** A row of the summary, each figure by the name of its column. */
export type SummaryRow = ReadonlyMap<string, DataCell>;

type ShownColumn = Column & { readonly of: (row: SummaryRow) => string };

const NONE = '–';

const numberOf = (row: SummaryRow, name: string): number | null => {
  const value = row.get(name);
  return typeof value === 'number' ? value : null;
};

const figure =
  (name: string, textOf: (value: number) => string) =>
  (row: SummaryRow): string => {
    const value = numberOf(row, name);
    return value === null ? NONE : textOf(value);
  };

/** `17.8–34.9`, or the one where both print alike. */
const range =
  (least: string, most: string, textOf: (value: number, row: SummaryRow) => string) =>
  (row: SummaryRow): string => {
    const ends = [numberOf(row, least), numberOf(row, most)].filter((value) => value !== null);
    return ends.length === 0 ? NONE : rangeShown(ends, (value) => textOf(value, row));
  };

const of =
  (part: string, whole: string) =>
  (row: SummaryRow): string => {
    const [some, all] = [numberOf(row, part), numberOf(row, whole)];
    return some === null || all === null ? NONE : `${some} of ${all}`;
  };

const hours = (value: number): string => shown(value, 1);

/** Money as its currency writes it, with the currency: a batch may hold several. */
const money = (minor: number, row: SummaryRow): string =>
  amountText(BigInt(minor), { digits: numberOf(row, 'currency_digits') ?? 0 });

const priced = (row: SummaryRow): string => {
  const amounts = range('least_total_minor', 'most_total_minor', money)(row);
  const currency = row.get('currency');
  return amounts === NONE || typeof currency !== 'string' ? NONE : `${amounts}\u00a0${currency}`;
};

/** From the mildest to the strongest. */
const aims = (row: SummaryRow): string => {
  const [first, ...more] = String(row.get('aims') ?? NONE).split(' ');
  return [first, ...more.slice(-1)].join('–').replace('%', '\u00a0%');
};

const isOneOfSeveral = (row: SummaryRow): boolean =>
  String(row.get('aims') ?? '').includes(' ') && numberOf(row, 'aim_total_minor') !== null;

/** `correct 1,350.31`, in the currency beside it: of the aims side by side the one that was asked for. */
function atItsAim(row: SummaryRow): string {
  const total = numberOf(row, 'aim_total_minor');
  return total === null
    ? NONE
    : `${String(row.get('aim')).replace('%', '\u00a0%')}\u00a0${money(total, row)}`;
}

/** Hours are of what is worked: none where nothing may be, or nothing wants it. */
const isUnworked = (row: SummaryRow): boolean =>
  row.get('status') === 'done' &&
  (row.get('least_time_p50_h') === null || row.get('n_panels_worked') === 0);

const right = (heading: string, textOf: ShownColumn['of']): ShownColumn => ({
  title: heading,
  align: 'right',
  of: textOf,
});

function columnsOf(
  command: string,
  rows: readonly SummaryRow[],
  unit: LengthUnit,
): readonly ShownColumn[] {
  const film = (value: number): string => thicknessText(value, unit, 1);
  const name = unitName(unit);
  const quoted = rows.filter((row) => row.get('aims') !== null);
  switch (command) {
    case 'survey':
      return [
        right('panels read', of('n_panels_read', 'n_panels')),
        right(`least film (${name})`, figure('thinnest_um', film)),
        right(`least that may go (${name})`, figure('least_budget_um', film)),
      ];
    case 'plan':
      return [
        right('panels worked', of('n_panels_worked', 'n_panels')),
        right(
          'clears at least',
          figure('least_expected_pct', (value) => `${shown(value, 0)}\u00a0%`),
        ),
        right(
          'highest risk',
          figure('largest_risk_prob', (value) => `${shown(100 * value, 1)}\u00a0%`),
        ),
        right('hours', range('time_p50_h', 'time_p80_h', hours)),
      ];
    default:
      return [
        ...(new Set(quoted.map(aims)).size > 1 ? [{ ...column('aims'), of: aims }] : []),
        right('hours', range('least_time_p50_h', 'most_time_p80_h', hours)),
        { ...right('price', priced), none: 'no price' },
        ...(quoted.some(isOneOfSeveral) ? [{ ...right('at its aim', atItsAim), none: '' }] : []),
        right(
          'not promised',
          figure('n_exclusions', (value) => counted(value, 'thing')),
        ),
      ];
  }
}

const HEADINGS: Readonly<Record<string, string>> = {
  survey: 'Surveys',
  plan: 'Plans',
  quote: 'Quotes, least to most over the aims of each',
};

export type BatchPageOptions = {
  readonly unit: LengthUnit;
  readonly doubled?: readonly string[];
  /** How many there are in all, where some were not begun. */
  readonly jobs?: number;
};

export function batchBlocks(
  command: string,
  rows: readonly SummaryRow[],
  { unit, doubled = [], jobs = rows.length }: BatchPageOptions,
): readonly Block[] {
  const unworked = rows.filter(isUnworked);
  const wrong = rows.filter((row) => row.get('status') !== 'done');
  const warned = rows.filter((row) => (numberOf(row, 'n_warnings') ?? 0) > 0);
  const ofAll = jobs > rows.length ? ` of ${jobs}` : '';
  return [
    title(`${HEADINGS[command] ?? command}: ${counted(rows.length, 'job')}${ofAll}`),
    gap,
    jobsTable(rows, columnsOf(command, rows, unit)),
    ...(unworked.length === 0
      ? []
      : [gap, paragraph('Nothing polished', unworked.map((row) => text(row, 'job')).join(', '))]),
    ...furtherAimBlocks(rows),
    ...(warned.length === 0 ? [] : [gap, warnedBlock(warned)]),
    ...(doubled.length === 0 ? [] : [gap, list('Perhaps twice', doubled)]),
    ...(wrong.length === 0
      ? []
      : [
          gap,
          list(
            'Not done',
            wrong.map((row) => `${text(row, 'job')}: ${text(row, 'error')}`),
          ),
        ]),
    ...(jobs > rows.length ? [gap, notBegunBlock(jobs - rows.length)] : []),
  ];
}

const text = (row: SummaryRow, name: string): string => String(row.get(name) ?? NONE);

const jobsTable = (rows: readonly SummaryRow[], columns: readonly ShownColumn[]): Block => ({
  kind: 'table',
  columns: [
    column('job'),
    column('vehicle'),
    column('status'),
    ...columns.map(({ of: _, ...heads }) => heads),
  ],
  rows: rows.map((row): readonly Cell[] => [
    cell(text(row, 'job')),
    cell(text(row, 'vehicle')),
    cell(text(row, 'status'), text(row, 'status') === 'done' ? 'plain' : 'strong'),
    ...columns.map((column) => cell(column.of(row))),
  ]),
});

/** Why, and what film it takes, stands in the record. */
function furtherAimBlocks(rows: readonly SummaryRow[]): readonly Block[] {
  const told = rows.flatMap((row) => {
    const said = row.get('further_aim_costs_less');
    return typeof said === 'string' ? [`${text(row, 'job')}: ${savedBy(said)}`] : [];
  });
  return told.length === 0 ? [] : [gap, list('A further aim costs less', told)];
}

/** The page has no room for them, and nobody else tells them. */
const warnedBlock = (warned: readonly SummaryRow[]): Block => {
  const counts = warned.map((row) => `${row.get('job')} ${row.get('n_warnings')}`);
  return paragraph('Remarks', `${counts.join(', ')}: see the record of each, or run it alone`);
};

const notBegunBlock = (jobs: number): Block =>
  paragraph('Not begun', `${counted(jobs, 'job')}: the batch was stopped before`);
