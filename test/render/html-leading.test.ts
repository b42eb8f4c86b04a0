import { expect, test } from 'vitest';
import { tableHtml } from '../../src/render/html-table.ts';
import { cell } from '../../src/report/model.ts';

test('what a table is read for stands next to the name of the row, the rest behind it in order', () => {
  const html = tableHtml(
    [
      { title: 'panel', align: 'left' },
      { title: 'n', align: 'right' },
      { title: 'mean', align: 'right' },
      { title: 'may go', align: 'right', leads: true },
      { title: 'condition', align: 'left', leads: true },
    ],
    [[cell('roof'), cell('5'), cell('106.8'), cell('2.59'), cell('original')]],
  );
  const texts = [...html.matchAll(/<t[hd][^>]*>([^<]*)</g)]
    .map(([, text]) => text)
    .filter((text) => text !== '');
  expect(texts).toEqual([
    ...['panel', 'may go', 'condition', 'n', 'mean'],
    ...['roof', '2.59', 'original', '5', '106.8'],
  ]);
});
