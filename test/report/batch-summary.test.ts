import { expect, test } from 'vitest';
import { summaryColumns, summaryRow } from '../../src/report/batch/batch-summary.ts';
import type { MachineRecord } from '../../src/report/model.ts';

/** Of a quote of three aims, the figures of the one that is asked for. */
function asked(aim: string, totals: readonly (number | null)[] = [106_322, 130_000, 146_230]) {
  const options = ['enhance', 'correct', '70 %'].map((name, i) => ({
    ...{ aim: name, total_minor: totals[i] ?? null, time: { p50_h: 1, p80_h: 2 } },
  }));
  const result = { aim, options, currency: 'EUR', currency_digits: 2, exclusions: [] };
  const record = { job: 'a', status: 'done', diagnostics: [], result } as unknown as MachineRecord;
  const row = summaryRow('quote', record);
  return ['aim', 'aim_total_minor', 'aim_total'].map(
    (name) => row[summaryColumns('quote').indexOf(name)],
  );
}

test('the total of the aim that the shop names stands in columns of its own, to be added up', () => {
  expect(asked('correct')).toEqual(['correct', 130_000, '1300.00']);
  expect(asked('70 %')).toEqual(['70%', 146_230, '1462.30']);
});

test('there is none of an aim that is not among those side by side, or has no price', () => {
  expect(asked('full')).toEqual(['full', null, null]);
  expect(asked('correct', [])).toEqual(['correct', null, null]);
});
