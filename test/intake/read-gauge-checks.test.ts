import { describe, expect, test } from 'vitest';
import { micrometres } from '../../src/base/units.ts';
import { type GaugeCheckOptions, readGaugeChecks } from '../../src/intake/read-gauge-checks.ts';
import { brief, utf8 } from './helpers.ts';

const read = (text: string, options: GaugeCheckOptions = {}) =>
  readGaugeChecks({ name: 'c.csv', bytes: utf8(text) }, options);
const values = (text: string, options: GaugeCheckOptions = {}) =>
  read(text, options).value?.readings.map((one) => [
    one.shim,
    one.shimUncertainty,
    one.reading,
    one.check,
  ]);

test('a row of a check is read whole', () => {
  expect(
    values('shim_um,shim_uncertainty_um,reading_um,repeat,check\n100,0.5,101.2,1,before'),
  ).toEqual([[100, 0.5, 101.2, 'before']]);
});

test('without a column for it, nothing says whether it was before or after', () => {
  expect(values('shim_um,shim_uncertainty_um,reading_um\n100,0.5,101.2')).toEqual([
    [100, 0.5, 101.2, null],
  ]);
});

test('the bare plate is a shim of 0, and may read a little less than nothing', () => {
  expect(values('shim_um,shim_uncertainty_um,reading_um\n0,0,-0.3')).toEqual([[0, 0, -0.3, null]]);
});

test('the unit that the gauge showed is kept: its step is one in that unit', () => {
  expect(read('shim_um,shim_uncertainty_um,reading_mil\n100,1,4.1').value?.unit).toBe('mil');
  expect(read('shim_mil,shim_uncertainty_um,reading_um\n4,1,102').value?.unit).toBe('um');
});

test('another dialect, other names and mil are read like those of readings', () => {
  const text = 'Foil [mil];Uncertainty (µm);Schichtdicke µm\n4,0;0,5;101,2\n2,0;0,5;50,4';
  expect(values(text)).toEqual([
    [expect.closeTo(101.6, 10), 0.5, 101.2, null], // 4 mil = 101.6 µm
    [expect.closeTo(50.8, 10), 0.5, 50.4, null],
  ]);
});

test('a unit that no heading says may be given', () => {
  const text = 'shim,shim_uncertainty,reading\n4,0.02,4.1';
  expect(read(text).diagnostics.map(({ code }) => code)).toContain('unit-missing');
  expect(values(text, { unit: 'mil' })).toEqual([
    [expect.closeTo(101.6, 10), expect.closeTo(0.508, 10), expect.closeTo(104.14, 10), null],
  ]);
});

describe('what the shims may be off by', () => {
  test('is asked for where nothing says it, with the remedy', () => {
    const { value, diagnostics } = read('shim_um,reading_um\n100,101.2');
    expect(value).toBeUndefined();
    expect(diagnostics.map(brief)).toEqual(['1:1+7 error column-missing']);
    expect(diagnostics[0]?.hint).toContain('--shim-uncertainty-um');
  });
  test('may be given for all of them', () => {
    const options = { shimUncertainty: micrometres(0.8) };
    expect(values('shim_um,reading_um\n100,101.2', options)).toEqual([[100, 0.8, 101.2, null]]);
  });
  test('as the file states it stands, and fills only what is empty', () => {
    const text = 'shim_um,shim_uncertainty_um,reading_um\n100,0.5,101.2\n50,,50.4';
    expect(values(text, { shimUncertainty: micrometres(0.8) })).toEqual([
      [100, 0.5, 101.2, null],
      [50, 0.8, 50.4, null],
    ]);
    expect(read(text).diagnostics.map(brief)).toEqual(['3:4+1 error cell-invalid']);
  });
  test('is one of a shim, not two', () => {
    const text = 'shim_um,shim_uncertainty_um,reading_um\n100,0.5,101.2\n100,0.6,101.4';
    expect(read(text).diagnostics.map(brief)).toEqual(['3:5+3 error cell-invalid']);
  });
});

test('a row pasted twice is refused: it would pass for a perfect repeat', () => {
  const text = 'shim_um,shim_uncertainty_um,reading_um,repeat\n100,0.5,101.2,1\n100,0.5,101.2,1';
  expect(read(text).diagnostics.map(brief)).toEqual(['3:15+1 error cell-invalid']);
});

test('an empty reading is left out, and said', () => {
  const { value, diagnostics } = read('shim_um,shim_uncertainty_um,reading_um\n100,0.5,\n50,1,50');
  expect(value?.readings.map(({ shim }) => Number(shim))).toEqual([50]);
  expect(diagnostics.map(({ severity, code }) => `${severity} ${code}`)).toEqual([
    'warning reading-missing',
  ]);
});

test.each([
  ['shim_um,shim_uncertainty_um,reading_um\n-5,0.5,1', '2:1+2 error cell-invalid'],
  ['shim_um,shim_uncertainty_um,reading_um\n100,0.5,high', '2:9+4 error cell-invalid'],
  ['shim_um,shim_uncertainty_um,reading_um\n100,0.5,9999', '2:9+4 error cell-invalid'],
  ['shim_um,shim_uncertainty_um,reading_um\n100,-1,101', '2:5+2 error cell-invalid'],
  ['shim_um,shim_uncertainty_um,reading_um,check\n100,1,101,noon', '2:11+4 error cell-invalid'],
  ['shim_um,shim_uncertainty_um,readng_um\n100,1,101', '1:29+9 error column-missing'],
  ['shim_um,shim_um,shim_uncertainty_um,reading_um\n1,1,1,1', '1:9+7 error column-repeated'],
  ['shim_mm,shim_uncertainty_um,reading_um\n1,1,1', '1:1+7 error unit-unknown'],
])('%j is refused', (text, told) => {
  const { value, diagnostics } = read(text);
  expect(value).toBeUndefined();
  expect(diagnostics.map(brief)).toContain(told);
});

test('a file without a reading is refused', () => {
  const { diagnostics } = read('shim_um,shim_uncertainty_um,reading_um\n');
  expect(diagnostics.map(({ code }) => code)).toEqual(['no-readings']);
});
