import { expect, test } from 'vitest';
import { briefs, values } from '../helpers.ts';

const block = (...points: readonly number[]) =>
  `Point;Value (µm)\n${points.map((point) => `${point};11${point},4\n`).join('')}\n`;

test('a block without a name whose points start anew is refused', () => {
  expect(briefs(`Bonnet\n${block(1, 2)}${block(1, 2)}Roof\n${block(1)}`)).toEqual([
    '6:1+5 error panel-missing',
  ]);
});

test('names of columns that stand again above further points of the panel are read on', () => {
  expect(values(`Bonnet\n${block(1, 2)}${block(3, 4)}`)?.map(([, point]) => point)).toEqual([
    '1',
    '2',
    '3',
    '4',
  ]);
});

test('a block that a line names anew is no doubt', () => {
  expect(briefs(`Bonnet\n${block(1, 2)}Roof\n${block(1, 2)}`)).toEqual([]);
});

test('a block without a name whose readings have no points is read on and told', () => {
  const text = 'Bonnet\nValue (µm);Note\n112,4;\n109,1;\n\nValue (µm);Note\n98,6;\n';
  expect(briefs(text)).toEqual(['6:1+10 warning reading-doubted']);
  expect(values(text)?.map((own) => own[0])).toEqual(['Bonnet', 'Bonnet', 'Bonnet']);
});
