import { describe, expect, test } from 'vitest';
import { read } from '../helpers.ts';

const shots = [
  { panel: 'bonnet', value: 112.1 },
  { panel: 'roof', value: 104.5 },
];

describe('JSON of another program', () => {
  test.each([
    ['on lines of its own', JSON.stringify({ date: '2026-03-01', shots }, null, 2)],
    ['on one line', JSON.stringify(shots)],
    ['behind blanks', `\n  ${JSON.stringify({ shots })}\n`],
  ])('%s is named as such', (_, text) => {
    const { diagnostics } = read(text);
    expect(diagnostics).toHaveLength(1);
    expect(diagnostics[0]).toMatchObject({ code: 'file-other-kind', severity: 'error' });
    expect(diagnostics[0]?.message).toContain('JSON');
  });

  test('is none where brackets stand in a table, or each line is an object with known keys', () => {
    const lines = shots.map(({ panel, value }) => `{"panel": "${panel}", "reading_um": ${value}}`);
    expect(read(`${lines.join('\n')}\n`).value?.readings).toHaveLength(2);
    const text = '[Export 7]\npanel;reading µm\nbonnet;112.1\n';
    expect(read(text).diagnostics.map(({ code }) => code)).not.toContain('file-other-kind');
  });
});
