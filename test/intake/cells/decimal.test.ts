import { expect, test } from 'vitest';
import { decideDecimal } from '../../../src/intake/cells/decimal.ts';

const decide = (counts: Readonly<Record<string, number>>, given?: '.' | ',', largest = 5000) =>
  decideDecimal(new Map(Object.entries(counts)), () => largest, given);

test('the mark with more votes is the decimal mark, and the votes are told', () => {
  expect(decide({ '101,5': 17, '99': 2, '1.24': 1 })).toEqual({
    mark: ',',
    proven: true,
    threes: false,
    thousands: '',
    signsBehind: false,
    both: false,
    evidence: '17 of 20 readings fit only a decimal comma',
  });
});

test('both marks stand before decimals where every number has as many of them, one or two', () => {
  expect(decide({ '101,5': 3, '99': 2, '99.4': 1 })).toMatchObject({
    both: true,
    evidence:
      'readings 1 with a decimal point and 3 with a decimal comma, as in "99.4" and "101,5": ' +
      'fewer than three digits behind a mark are decimals',
  });
  expect(decide({ '101,5': 3, '99.41': 1 }).both).toBe(false);
  expect(decide({ '101,541': 3, '99.412': 1 }).both).toBe(false);
  expect(decide({ '101,5': 3, '1.099,5': 1, '99.4': 1 }).both).toBe(false);
  expect(decide({ '101,5': 3, '99.4': 1 }, ',').both).toBe(false);
});

test.each<[string, Readonly<Record<string, number>>, string]>([
  ['the other mark', { '101,5': 17, '99': 2, '1.234': 1 }, '.'],
  ['a grouped number with decimals', { '1,234.5': 1, '101.5': 2 }, ','],
  ['apostrophes', { "1'234": 1, '99': 5 }, "'"],
  ['blanks', { '1 234': 1, '99': 5 }, ' '],
  ['blanks that keep a line together', { '1\u202f234,5': 1, '99': 5 }, '\u00a0'],
  ['the range of a film', { '1.234': 1, '99': 5, '102': 3 }, '.'],
])('what stands between thousands is known by %s', (_by, counts, thousands) =>
  expect(decide(counts).thousands).toBe(thousands),
);

test.each<[string, Readonly<Record<string, number>>]>([
  ['alone', { '1.234': 1 }],
  ['as many as the others', { '1.234': 2, '99': 2 }],
  ['beside a decimal point', { '1.234': 1, '99.5': 7 }],
  ['beside the same with a comma', { '1.234': 1, '1,234': 1, '99': 7 }],
  ['beside a thousand without a mark', { '1.234': 1, '1234': 1, '99': 7 }],
  ['beside readings that are no paint', { '1.234': 1, '2': 4, '3': 3 }],
  ['among numbers of both marks', { '1.234': 1, '99,5': 7, '98.5': 1 }],
])('1.234 %s settles nothing between thousands', (_how, counts) =>
  expect(decide(counts).thousands).toBe(''),
);

test('the evidence says in words what decides', () => {
  expect(decide({ '1.234': 1, '99': 5, '102': 6 }).evidence).toBe(
    'no reading of 12 needs a decimal mark; point between thousands: "1.234" is 1234, for 1.234 is ' +
      'no film and the middle reading is 102',
  );
  expect(decide({ '101,5': 17, '1.234': 1 }).evidence).toBe(
    '17 of 18 readings fit only a decimal comma; point between thousands: "1.234" is 1234',
  );
  expect(decide({ "1'234": 1, '99': 5 }).evidence).toBe(
    'no reading of 6 needs a decimal mark; apostrophe between thousands, as in "1\'234"',
  );
  expect(decide({ '١٠٢٫٥': 3, '٩٨': 1 }).evidence).toBe(
    '3 of 4 readings have the Arabic decimal mark',
  );
  expect(decide({ '99': 5 }).evidence).toBe('no reading of 5 needs a decimal mark');
  expect(decide({ '101,5': 1 }, '.').evidence).toBe('decimal point as asked');
});

test('a mark that the user names leaves the other one for thousands', () => {
  expect(decide({ '1.234': 1 }, ',')).toMatchObject({ mark: ',', thousands: '.' });
  expect(decide({ '1.234': 1 }, '.')).toMatchObject({ mark: '.', thousands: '', threes: true });
});

test('a column that is no film has no range to decide by', () => {
  const counts = new Map(Object.entries({ '1.234': 1, '99': 5, '102': 6 }));
  expect(decideDecimal(counts, () => 5000, undefined, 0).thousands).toBe('');
});

test('sentinels and words have no vote', () => {
  const { mark, evidence } = decide({ '9.9E37': 9, '>1.5': 9, OL: 9, '101,5': 2 });
  expect(mark).toBe(',');
  expect(evidence).toBe('2 of 2 readings fit only a decimal comma');
});
