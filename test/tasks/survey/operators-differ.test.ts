import { expect, test } from 'vitest';
import type { Reading } from '../../../src/film/reading.ts';
import { filmModel } from '../../../src/formats/models.ts';
import type { ReadInput } from '../../../src/tasks/read/read-request.ts';
import { withOperators } from '../../../src/tasks/survey/operators-differ.ts';
import { reading } from '../../film/car-builder.ts';

const rowsOf = (file: string, off: number, operator?: string): readonly Reading[] =>
  [1, 2, 3, 4, 5, 6, 7, 8].map((point) =>
    reading('roof', `${point}`, 110 + (point % 3) + off, {
      ...(operator === undefined ? {} : { operator }),
      origin: { file, line: point + 1, column: 9 },
    }),
  );

const inputOf = (file: string, operator?: string): ReadInput => ({
  file,
  sha256: '',
  decisions: {
    columns: new Map([['point', ['point']]]),
    layout: 'long',
    metadata: operator === undefined ? [] : [{ key: 'Operator', value: operator, line: 1 }],
  } as never,
});
const toldOf = (readings: readonly Reading[], ...inputs: readonly ReadInput[]) =>
  withOperators(readings, inputs, filmModel).diagnostics.map(({ code, message, at }) => [
    code,
    message,
    at?.line,
  ]);

test('a column of operators who differ is told, and its model counts it', () => {
  const readings = [...rowsOf('a.csv', 0, 'Ann'), ...rowsOf('a.csv', 5, 'Ben')];
  expect(toldOf(readings, inputOf('a.csv'))).toEqual([
    [
      'operators-differ',
      expect.stringMatching(/^Ben reads 5\.0 ± \d\.\d µm \(95 %\) more than Ann on the 8 points/u),
      2,
    ],
  ]);
  const { model } = withOperators(readings, [inputOf('a.csv')], filmModel);
  expect(model.measurement.betweenOperators).toBeGreaterThan(3);
});

test('two files of one visit are told apart by the operator that a line of each names, else by their names', () => {
  const readings = [...rowsOf('a.csv', 5), ...rowsOf('b.csv', 0)];
  const by = toldOf(readings, inputOf('a.csv', 'Ann'), inputOf('b.csv', 'Ben'));
  expect(by[0]?.[1]).toContain('Ann reads 5.0');
  const [[, message] = []] = toldOf(readings, inputOf('a.csv'), inputOf('b.csv'));
  expect(message).toMatch(/^"a\.csv" reads 5\.0 .* more than "b\.csv"/u);
});

test('one operator, and two who read alike, say nothing and change no model', () => {
  const alike = [...rowsOf('a.csv', 0, 'Ann'), ...rowsOf('a.csv', 0.4, 'Ben')];
  expect(withOperators(alike, [inputOf('a.csv')], filmModel)).toEqual({
    model: filmModel,
    diagnostics: [],
    assumptions: [],
  });
  expect(toldOf(rowsOf('a.csv', 0), inputOf('a.csv'))).toEqual([]);
});

test('points without names need more to tell operators apart', () => {
  const readings = [...rowsOf('a.csv', 0, 'Ann'), ...rowsOf('a.csv', 4, 'Ben')];
  const nameless = {
    ...inputOf('a.csv'),
    decisions: { columns: new Map(), layout: 'long', metadata: [] },
  };
  expect(toldOf(readings, inputOf('a.csv'))).toHaveLength(1);
  expect(toldOf(readings, nameless as never)).toEqual([]);
});

test('files of their own that differ are perhaps of two cars; operators of one file are not', () => {
  const doubted = (readings: readonly Reading[], ...inputs: readonly ReadInput[]) =>
    withOperators(readings, inputs, filmModel).assumptions.map(({ code, text }) => [code, text]);
  const apart = [...rowsOf('a.csv', 5), ...rowsOf('b.csv', 0)];
  expect(doubted(apart, inputOf('a.csv'), inputOf('b.csv'))).toEqual([
    [
      'files-doubted',
      expect.stringMatching(
        /^"a\.csv" reads 5\.0 ± \d\.\d µm more than "b\.csv" on the 8 points that both read$/u,
      ),
    ],
  ]);
  const together = [...rowsOf('a.csv', 0, 'Ann'), ...rowsOf('a.csv', 5, 'Ben')];
  expect(doubted(together, inputOf('a.csv'))).toEqual([]);
});
