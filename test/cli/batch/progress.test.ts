import { describe, expect, test } from 'vitest';
import { showProgress } from '../../../src/cli/batch/progress.ts';

/** What is said of three jobs where some of the outputs are terminals. */
function shown(terminals: readonly number[], options: Parameters<typeof showProgress>[1]): string {
  const said: string[] = [];
  const progress = showProgress(3, options, {
    terminalOn: (descriptor) => ({ isTTY: terminals.includes(descriptor) }),
    writeError: (text) => said.push(text),
  });
  progress.show(1);
  progress.show(3);
  progress.end();
  progress.end();
  return said.join('');
}

describe('how far a batch has come', () => {
  const AS_IT_GOES = '\r1 of 3 jobs\r3 of 3 jobs\r\u001b[K';

  test('is written over in one line of a terminal, and taken away once', () => {
    expect(shown([2], {})).toBe(AS_IT_GOES);
    expect(shown([1, 2], { out: 'records.ndjson' })).toBe(AS_IT_GOES);
  });

  test('is not said where the records themselves come to the terminal, as one would stand behind it', () => {
    expect(shown([1, 2], {})).toBe('');
    expect(shown([1, 2], { format: 'csv' })).toBe('');
  });

  test('is said where a page comes to the terminal when all is done', () => {
    expect(shown([1, 2], { format: 'text' })).toBe(AS_IT_GOES);
  });

  test('is not said to a file, nor to who wants no words', () => {
    expect(shown([1], {})).toBe('');
    expect(shown([2], { quiet: true })).toBe('');
  });
});
