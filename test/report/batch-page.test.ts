import { expect, test } from 'vitest';
import { renderText } from '../../src/render/text.ts';
import { batchBlocks } from '../../src/report/batch/batch-page.ts';
import { summaryColumns, summaryRow } from '../../src/report/batch/batch-summary.ts';
import type { MachineRecord } from '../../src/report/model.ts';

type Quoted = { readonly aim: string; readonly totals: Readonly<Record<string, number | null>> };

function page(...quotes: readonly Quoted[]): string {
  const names = summaryColumns('quote');
  const rows = quotes.map(({ aim, totals }, i) => {
    const options = Object.entries(totals).map(([name, total_minor]) => ({
      ...{ aim: name, total_minor, time: { p50_h: 1, p80_h: 2 } },
    }));
    const result = { aim, options, currency: 'EUR', currency_digits: 2, exclusions: [] };
    const record = { job: `job${i}`, status: 'done', diagnostics: [], result };
    const cells = summaryRow('quote', record as unknown as MachineRecord);
    return new Map(names.map((name, at) => [name, cells[at] ?? null]));
  });
  const style = { width: 200, paint: (text: string) => text };
  return renderText(batchBlocks('quote', rows, { unit: 'um' }), style).replaceAll('\u00a0', ' ');
}

const THREE = { enhance: 106_322, correct: 130_000, full: 146_230 };

test('of quotes of several aims the price of the one that was asked for stands beside the least and the most', () => {
  const shown = page({ aim: 'correct', totals: THREE }, { aim: 'full', totals: THREE });
  expect(shown).toMatch(/price +at its aim/u);
  expect(shown).toMatch(/job0 .* 1,063\.22–1,462\.30 EUR +correct 1,300\.00 /u);
  expect(shown).toMatch(/job1 .* 1,063\.22–1,462\.30 EUR +full 1,462\.30 /u);
});

test('of one that has no price, or is not among those side by side, there is none', () => {
  const unpriced = { enhance: 106_322, correct: null };
  const priced = { aim: 'full', totals: THREE };
  expect(page(priced, { aim: 'correct', totals: unpriced })).toMatch(/job1 .* 1,063\.22 EUR +–/u);
  expect(page(priced, { aim: 'full', totals: unpriced })).toMatch(/job1 .* 1,063\.22 EUR +–/u);
});

test('quotes of one aim have no such column, as their price says it, nor those without a price', () => {
  expect(page({ aim: 'full', totals: { full: 146_230 } })).not.toContain('at its aim');
  const unpriced = { enhance: null, correct: null };
  expect(page({ aim: 'correct', totals: unpriced })).not.toContain('at its aim');
});
