import { expect, test } from 'vitest';
import { isErrorCode } from '../../../src/intake/cells/error-codes.ts';
import { briefs, values } from '../helpers.ts';

test.each(['E-12 sonda', 'Err 07: no probe', 'F03 (low battery)', 'Fehler 3 Sonde', 'ERR-4 sonde'])(
  '%j is an error code with its words',
  (text) => expect(isErrorCode(text)).toBe(true),
);

test.each(['E 102 mil', 'E 102 µm', 'A2 bonnet', 'P1 roof', 'E 101.5 probe', 'sonda', '102 E'])(
  '%j is no error code',
  (text) => expect(isErrorCode(text)).toBe(false),
);

test('a cell with an error code is left out aloud, and its number is no reading', () => {
  const text = 'panel,reading_um\nroof,101\nroof,E-12 sonda\nboot,99\n';
  expect(values(text)?.map((one) => one[3])).toEqual([101, 99]);
  expect(briefs(text)).toEqual(['3:6+10 warning reading-error']);
  expect(values(text.replace('E-12 sonda', 'E 102 mil'))).toBeUndefined();
});
