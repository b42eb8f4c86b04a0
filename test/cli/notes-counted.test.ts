import { expect, test } from 'vitest';
import { type Diagnostic, error, note, warning } from '../../src/base/diagnostics.ts';
import { saidAtEnd } from '../../src/cli/ending.ts';
import { askLeastcut } from './ask-leastcut.ts';

/** What a run with these ends with on standard error. */
const said = (notes: readonly Diagnostic[]): string => saidAtEnd(notes, {});

const missing = note('reading-missing', 'an empty cell is no reading');
const leftOut = note('statistics-left-out', 'a row of means is no reading');

test('notes that all say the same are counted with what they say, and told one by one with -v', async () => {
  const car = ['survey', 'samples/plastic-bumpers/readings.tsv'];
  const [counted, told] = await Promise.all([askLeastcut(car), askLeastcut([...car, '-v'])]);
  expect(counted.err).toBe('leastcut: 10 notes (an empty cell is no reading), -v shows them\n');
  expect(told.err.match(/an empty cell is no reading/g)).toHaveLength(10);
});

test('notes of several kinds are counted by their kinds, the most frequent first', () => {
  expect(said([leftOut, missing, missing])).toBe(
    'leastcut: 3 notes (2 reading-missing, statistics-left-out), -v shows them\n',
  );
});

test('a note of many words is counted by its kind', () => {
  expect(said([note('reading-missing', 'a cell '.repeat(20))])).toBe(
    'leastcut: 1 note (reading-missing), -v shows them\n',
  );
});

test('more messages than are taken in at a glance end with how many there were', () => {
  const faults = Array.from({ length: 9 }, (_, i) => error('cell-invalid', `cell ${i}`));
  const doubts = Array.from({ length: 150 }, (_, i) => warning('reading-doubted', `cell ${i}`));
  expect(said([...faults, doubts[0] as Diagnostic])).not.toMatch(/^leastcut: \d/m);
  expect(
    said([...faults, ...doubts])
      .split('\n')
      .slice(-2),
  ).toEqual(['leastcut: 9 errors and 150 warnings', '']);
  expect(
    said([...faults, ...faults, missing])
      .split('\n')
      .slice(-3),
  ).toEqual([
    'leastcut: 18 errors',
    'leastcut: 1 note (an empty cell is no reading), -v shows them',
    '',
  ]);
  expect(saidAtEnd([...faults, ...doubts], { quiet: true })).not.toContain('warnings');
});
