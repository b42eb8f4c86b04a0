import { expect, test } from 'vitest';
import { notReading } from '../../../src/intake/cells/not-readings.ts';
import { saysThatItCounts, stateMeaning } from '../../../src/intake/cells/words.ts';

test.each([
  ...['entf.', 'k. A.', 'n. b.', 'ausgelassen', 'n/d', 'non relevé', 'sin med.', 's/m', 'non ril.'],
  ...[
    'niet beschikbaar',
    'nie dotyczy',
    'ej uppmätt',
    'utgår',
    'não aplicável',
    'не изм.',
    'atlandı',
  ],
])('"%s" stands for no reading', (word) => {
  expect(notReading(word)?.class).toBe('missing');
});

test('a word that is in no list stands for nothing', () => {
  expect(notReading('entzückend')).toBeUndefined();
});

test.each(['ERR 12', 'E04', 'Fehler 3', 'no signal'])(
  'a state "%s" takes its reading out',
  (word) => {
    expect(stateMeaning(word)).toBe('error');
  },
);

test.each(['FAIL', 'NG', 'low battery', 'suspect', '3'])(
  'a state "%s" may be said of the film, and says nothing of the reading',
  (word) => {
    expect(stateMeaning(word)).toBeUndefined();
  },
);

test('a state says outright that a reading counts, or leaves it open', () => {
  expect(['OK', 'i.O.', '合格'].every(saysThatItCounts)).toBe(true);
  expect(['', '-', 'good', 'ERR 12'].some(saysThatItCounts)).toBe(false);
});
