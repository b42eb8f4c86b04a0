import { describe, expect, test } from 'vitest';
import {
  concerning,
  type Diagnostic,
  error,
  found,
  hasErrors,
  note,
  ofVehicle,
  refused,
  warning,
} from '../../src/base/diagnostics.ts';
import { inPlaceOrder } from '../../src/base/place-order.ts';

const at = (file: string, line?: number, column?: number) => ({
  file,
  ...(line === undefined ? {} : { line }),
  ...(column === undefined ? {} : { column }),
});

describe('a diagnostic', () => {
  test('is of the severity that it is made with, with place and hint only where they are known', () => {
    const place = at('a.csv', 3, 5);
    expect(error('batch-empty', 'no job', { at: place, hint: 'add one' })).toEqual({
      ...{ code: 'batch-empty', severity: 'error', message: 'no job', at: place, hint: 'add one' },
    });
    expect(warning('batch-empty', 'no job', { at: undefined, hint: undefined })).toStrictEqual({
      ...{ code: 'batch-empty', severity: 'warning', message: 'no job' },
    });
    expect(note('batch-empty', 'no job')).toStrictEqual({
      ...{ code: 'batch-empty', severity: 'note', message: 'no job' },
    });
  });

  test('is an error or not, and one of many is enough', () => {
    const [mild, grave] = [warning('batch-empty', 'a'), error('batch-empty', 'b')];
    expect(hasErrors([mild, note('batch-empty', 'c')])).toBe(false);
    expect(hasErrors([mild, grave])).toBe(true);
    expect(hasErrors([])).toBe(false);
  });

  test('is told of its vehicle where there are several, and of the input where there is one', () => {
    const all = [warning('batch-empty', 'a')];
    expect(ofVehicle('FH', 1, all)).toBe(all);
    expect(ofVehicle('FH', 2, all).map(({ vehicle }) => vehicle)).toEqual(['FH']);
    expect(ofVehicle(null, 2, all).map(({ vehicle }) => vehicle)).toEqual([null]);
  });

  test('concerns the vehicle that it is told of, and every vehicle where it is told of none', () => {
    const one = { ...warning('batch-empty', 'a'), vehicle: 'FH' };
    const nameless = { ...warning('batch-empty', 'b'), vehicle: null };
    const whole = warning('batch-empty', 'c');
    expect(concerning('FH', [one, nameless, whole])).toEqual([one, whole]);
    expect(concerning(null, [one, nameless, whole])).toEqual([nameless, whole]);
  });
});

test('an outcome has a value with what was noticed, or none with why', () => {
  const noticed = warning('batch-empty', 'a');
  expect(found(0)).toEqual({ value: 0, diagnostics: [] });
  expect(found(0, [noticed])).toEqual({ value: 0, diagnostics: [noticed] });
  expect(refused(noticed, noticed)).toStrictEqual({ diagnostics: [noticed, noticed] });
});

describe('diagnostics in the order of their places', () => {
  const of = (name: string, place?: ReturnType<typeof at>): Diagnostic =>
    warning('batch-empty', name, { at: place });
  const ordered = (...all: readonly Diagnostic[]) =>
    inPlaceOrder(all).map(({ message }) => message);

  test('go file by file as the files come first, then by line and by column', () => {
    expect(
      ordered(
        of('b 9', at('b.csv', 9)),
        of('a 2:7', at('a.csv', 2, 7)),
        of('b 1', at('b.csv', 1)),
        of('a 2:3', at('a.csv', 2, 3)),
        of('a 10', at('a.csv', 10)),
      ),
    ).toEqual(['b 1', 'b 9', 'a 2:3', 'a 2:7', 'a 10']);
  });

  test('begin a file with what is of no line of it, and end with what is of no file', () => {
    expect(
      ordered(of('nowhere'), of('a 1', at('a.csv', 1)), of('a', at('a.csv')), of('b', at('b.csv'))),
    ).toEqual(['a', 'a 1', 'b', 'nowhere']);
    expect(
      ordered(
        of('a 3', at('a.csv', 3)),
        of('a 3:2', at('a.csv', 3, 2)),
        of('a 3 too', at('a.csv', 3)),
      ),
    ).toEqual(['a 3', 'a 3 too', 'a 3:2']);
  });

  test('keep their order where they speak of no place', () => {
    expect(ordered(of('first'), of('second'), of('third'))).toEqual(['first', 'second', 'third']);
  });

  test('keep their order where their places are the same, and change nothing given', () => {
    const all = [of('first', at('a.csv', 1)), of('second', at('a.csv', 1))];
    const given = [...all].reverse();
    expect(ordered(...given)).toEqual(['second', 'first']);
    expect(given.map(({ message }) => message)).toEqual(['second', 'first']);
  });
});
