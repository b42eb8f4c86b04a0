/** A quote for a spreadsheet: a row for each line of each aim; one row where an aim has no line. */
import type { Remark } from '../../base/remark.ts';
import type { QuoteResult } from '../../tasks/quote/quote-vehicle.ts';
import type { QuoteLine } from '../../work/price-job.ts';
import type { QuoteOption } from '../../work/quote-option.ts';
import type { DataCell, DataTable } from '../model.ts';
import { optionFigures, optionHours } from './option-figures.ts';
import { notesOfAim, optionNotes } from './option-notes.ts';
import { lineRecord, minorOrNull } from './quote-record.ts';

type Row = Readonly<Record<string, DataCell>>;

export function quoteTable(results: readonly QuoteResult[]): DataTable {
  const rows = results.flatMap((result) => {
    const notes = optionNotes(result);
    return result.options.flatMap((option) => {
      const lines = option.priced?.lines ?? [];
      const own = notesOfAim(notes, option.aim);
      const about = { ...quoteCells(result), ...optionCells(option), ...noteCells(own) };
      return lines.length === 0
        ? [{ ...about, ...lineCells(undefined) }]
        : lines.map((line) => ({ ...about, ...lineCells(line) }));
    });
  });
  return {
    columns: [...columns],
    rows: rows.map((row) => columns.map((name) => row[name] ?? null)),
  };
}

const columns = [
  'vehicle',
  'kind',
  'currency',
  'aim',
  'aimed_pct',
  'expected_pct',
  'spent_um',
  'left_um',
  'risk_prob',
  'time_p50_h',
  'time_p80_h',
  'days',
  'line_kind',
  'id',
  'name',
  'quantity',
  'unit',
  'price_minor',
  'per',
  'markup_pct',
  'tax_pct',
  'amount_minor',
  'line_tax_minor',
  'subtotal_minor',
  'tax_minor',
  'total_minor',
  'notes',
  'notes_text',
] as const;

const quoteCells = ({ vehicle, settings: { money } }: QuoteResult): Row => ({
  vehicle,
  kind: money.kind.value,
  currency: money.prices.value?.list.currency.code ?? null,
});

function optionCells(option: QuoteOption): Row {
  const { work, charged, priced } = option;
  return {
    ...optionFigures(option),
    time_p50_h: optionHours(option, 0.5),
    time_p80_h: optionHours(option, 0.8),
    days: charged === null ? null : work.days.length,
    subtotal_minor: minorOrNull(priced?.subtotal),
    tax_minor: minorOrNull(priced?.tax),
    total_minor: minorOrNull(priced?.total),
  };
}

const noteCells = (notes: readonly Remark[]): Row => ({
  notes: notes.map(({ code }) => code).join(' '),
  notes_text: notes.map(({ text }) => text).join('; '),
});

function lineCells(line: QuoteLine | undefined): Row {
  if (line === undefined) return {};
  const { kind, tax_minor: lineTax, ...rest } = lineRecord(line);
  return { ...rest, line_kind: kind, line_tax_minor: lineTax };
}
