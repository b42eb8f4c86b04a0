import { expect, test } from 'vitest';
import { micrometres } from '../../../src/base/units.ts';
import { whyNotCoarse } from '../../../src/intake/cells/coarse-units.ts';
import { inMicrometres, largestIn } from '../../../src/intake/cells/unit.ts';

const why = (texts: readonly string[], unit: 'mm' | 'inch'): string | undefined =>
  whyNotCoarse(new Map(texts.map((text) => [text, 1])), unit, largestIn(unit, micrometres(5000)))
    ?.message;

test('numbers that are paint in the unit, to a µm or so, prove it; a word and a 0 among them say nothing', () => {
  expect(why(['0.101', '0.098', 'OL', '0', '1.250'], 'mm')).toBeUndefined();
  expect(why(['0,101', '0,098'], 'mm')).toBeUndefined();
  expect(why(['0.0040', '0.0051'], 'inch')).toBeUndefined();
});

test('numbers that are no paint in the unit do not', () => {
  expect(why(['101', '98'], 'mm')).toContain('here it is');
  expect(why(['0.0040', '0.0051'], 'mm')).toContain('here it is');
  expect(why(['0.101', '0.098'], 'inch')).toContain('here it is');
  expect(why(['4.1', '3.9'], 'inch')).toContain('here it is');
  expect(why(['OL'], 'mm')).toContain('0.05 to 0.6');
});

test('numbers rounded to more than a film can be planned by do not', () => {
  expect(why(['0.10', '0.12'], 'mm')).toBe('readings in mm need 3 decimals, and here they have 2');
  expect(why(['0.004', '0.005'], 'inch')).toContain('need 4 decimals');
});

test('a factor adds no digits: 0.1015 mm are 101.5 µm, 0.0041 inch are 104.14 µm', () => {
  expect(inMicrometres(0.1015, 'mm')).toBe(101.5);
  expect(inMicrometres(0.0041, 'inch')).toBe(104.14);
});
