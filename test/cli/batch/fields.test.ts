import { describe, expect, test } from 'vitest';
import { carsCsv } from '../cars.ts';
import { runLeastcut } from '../run-leastcut.ts';

const batch = (...words: readonly string[]) =>
  runLeastcut(['batch', '-', '--command', 'survey', '--format', 'csv', ...words], {
    stdin: carsCsv(2),
  });

describe('the columns of a batch', () => {
  test('are those that were asked for, in that order', async () => {
    const { out } = await batch('--fields', 'exit, job');
    expect(out).toBe('exit,job\n0,FH 1\n0,FH 2\n');
  });

  test('are listed where nothing is asked for, and no job is begun', async () => {
    const { code, out, err } = await batch('--fields=');
    expect(code).toBe(0);
    expect(out.split('\n').slice(0, 3)).toEqual(['field', 'job', 'seq']);
    expect(err).toBe('');
  });

  test('are named where one is asked for that is none', async () => {
    const { code, out, err } = await batch('--fields', 'job,n_panles');
    expect(code).toBe(2);
    expect(out).toBe('');
    expect(err).toContain('did you mean "n_panels"?');
  });
});
