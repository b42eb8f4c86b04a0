import { describe, expect, test } from 'vitest';
import type { IntakeDecisions } from '../../src/intake/read-gauge-file.ts';
import { decisionLines } from '../../src/report/decision-lines.ts';
import { eachFact, textOf } from '../../src/report/model.ts';

const decisions: IntakeDecisions = {
  ...{ encoding: 'windows-1252', delimiter: '\t', decimal: ',', layout: 'wide', unit: 'mil' },
  headerLine: 4,
  columns: new Map([
    ['point', ['Punkt']],
    ['time', ['Datum', 'Uhrzeit']],
    ['reading', ['reading_um']],
    ['note', ['Note']],
  ]),
  evidence: ['3 of 4 readings fit only a decimal comma'],
  metadata: [{ key: 'Serial', value: '0042', line: 1 }],
};

describe('how a file was read', () => {
  test('is one line of what was decided, then why, then what else the file says', () => {
    expect(decisionLines(decisions, 16).map(textOf)).toEqual([
      'windows-1252, tab, decimal comma, wide layout (a column for each panel), line 4 names the columns, readings in mil',
      '3 of 4 readings fit only a decimal comma',
      'columns: point "Punkt", time "Datum" and "Uhrzeit"',
      'the file also says: Serial 0042 (line 1)',
    ]);
  });

  test('is as many facts as were decided, each named where it stands alone', () => {
    expect(decisionLines(decisions, 16).flatMap(eachFact)).toEqual([
      'encoding windows-1252',
      'delimiter tab',
      'decimal comma',
      'wide layout (a column for each panel)',
      'line 4 names the columns',
      'readings in mil',
      '3 of 4 readings fit only a decimal comma',
      'columns: point "Punkt"',
      'columns: time "Datum" and "Uhrzeit"',
      'the file also says: Serial 0042 (line 1)',
    ]);
  });

  test('never takes more lines than are asked for, and says how many are left', () => {
    const evidence = Array.from({ length: 100 }, (_, k) => `line ${k} says vehicle ${k}`);
    const lines = decisionLines({ ...decisions, evidence }, 10).map(textOf);
    expect(lines).toHaveLength(10);
    expect(lines.at(-1)).toBe('and 94 further statements: --format json has them all');
    expect(lines[8]).toBe('line 7 says vehicle 7');
  });

  test('says so where no line names the columns, and shortens a long saying', () => {
    const metadata = [{ key: 'Remark', value: 'x'.repeat(80), line: 9 }];
    const [summary, ...more] = decisionLines({ ...decisions, headerLine: 0, metadata }, 16).map(
      textOf,
    );
    expect(summary).toContain('no line names the columns');
    expect(more.at(-1)).toBe(`the file also says: Remark ${'x'.repeat(49)}… (line 9)`);
  });

  test('shows twelve of the file’s own sayings and counts the others aloud', () => {
    const saying = (k: number) => ({ key: `Field ${k}`, value: `${k}`, line: k });
    const metadata = Array.from({ length: 15 }, (_, k) => saying(k + 1));
    const last = (count: number): string =>
      decisionLines({ ...decisions, metadata: metadata.slice(0, count) }, 16)
        .map(textOf)
        .at(-1) ?? '';
    expect(last(15)).toContain('Field 12 12 (line 12), and 3 more: --format json has them all');
    expect(last(15)).not.toContain('Field 13');
    expect(last(12)).toContain('Field 12 12 (line 12)');
    expect(last(12)).not.toContain('more');
  });

  test('cuts a long saying at no half of a sign', () => {
    const metadata = [{ key: 'Remark', value: `${'x'.repeat(48)}🚗 and more`, line: 9 }];
    const said = decisionLines({ ...decisions, metadata }, 16)
      .map(textOf)
      .at(-1);
    expect(said).toBe(`the file also says: Remark ${'x'.repeat(48)}… (line 9)`);
  });
});
