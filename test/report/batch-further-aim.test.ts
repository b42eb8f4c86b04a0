import { expect, test } from 'vitest';
import { renderText } from '../../src/render/text.ts';
import { batchBlocks } from '../../src/report/batch/batch-page.ts';
import { summaryColumns, summaryRow } from '../../src/report/batch/batch-summary.ts';
import type { MachineRecord } from '../../src/report/model.ts';

type Option = { readonly aim: string; readonly note?: readonly [code: string, text: string] };

const ALONE =
  'correct costs 189.52 GBP less than 80 %, for 3.0 h less: stronger steps take less time on roof; it takes 0.61 µm more (--aim correct)';
const BESIDE = 'full costs 12.00 GBP less than correct: it leaves bonnet';

function rowOf(job: string, aim: string, options: readonly Option[]) {
  const quoted = options.map(({ aim, note }) => ({
    ...{ aim, total_minor: 100, time: { p50_h: 1, p80_h: 2 } },
    notes: note === undefined ? [] : [{ code: note[0], text: note[1] }],
  }));
  const result = { aim, options: quoted, currency: 'GBP', currency_digits: 2, exclusions: [] };
  const record = { job, status: 'done', diagnostics: [], result } as unknown as MachineRecord;
  const cells = summaryRow('quote', record);
  return new Map(summaryColumns('quote').map((name, i) => [name, cells[i] ?? null]));
}

const alone = rowOf('c5', '80 %', [{ aim: '80 %', note: ['further-aim-costs-less', ALONE] }]);
const beside = rowOf('c6', 'correct', [
  { aim: 'enhance', note: ['aim-clears-less', 'enhance clears less'] },
  { aim: 'correct' },
  { aim: 'full', note: ['aim-costs-less', BESIDE] },
]);
const other = rowOf('c7', 'full', [
  { aim: 'enhance' },
  { aim: 'correct' },
  { aim: 'full', note: ['aim-costs-less', BESIDE] },
]);
const unasked = rowOf('c8', '70 %', [
  { aim: 'correct' },
  { aim: 'full', note: ['aim-costs-less', BESIDE] },
]);

const page = (...rows: readonly ReturnType<typeof rowOf>[]): string =>
  renderText(batchBlocks('quote', rows, { unit: 'mil' }), {
    width: 200,
    paint: (text) => text,
  }).replaceAll('\u00a0', ' ');

test('the summary says of the aim that was asked for that a further one costs less, in the words of the quote', () => {
  expect(alone.get('further_aim_costs_less')).toBe(ALONE);
  expect(beside.get('further_aim_costs_less')).toBe(BESIDE);
  expect(other.get('further_aim_costs_less')).toBeNull();
  expect(unasked.get('further_aim_costs_less')).toBeNull();
});

test('the page names each job of which it is so, with what is saved; the rest stands in the record', () => {
  expect(page(alone, beside, other)).toContain(
    [
      'A further aim costs less',
      '  c5: correct costs 189.52 GBP less than 80 %, for 3.0 h less',
      '  c6: full costs 12.00 GBP less than correct',
    ].join('\n'),
  );
  expect(page(alone)).not.toContain('µm');
  expect(page(other, unasked)).not.toContain('further aim');
});
