/** Names are taken out of what a file said, and our own sentences stay as they are. */
import { describe, expect, test } from 'vitest';
import { namelessDiagnostic, namelessText } from '../../../src/tasks/grade/grade-anonymous.ts';

const names = new Map([
  ['a', 'Trainee 1'],
  ['unit', 'Trainee 2'],
  ['Ann Lee', 'Trainee 3'],
  ['2', 'Trainee 4'],
  ['csv', 'Trainee 5'],
  ['ann.json', 'gauge of Trainee 3'],
]);

describe('a name that is a word', () => {
  test('is no name in a sentence of ours, and is one in what the file says', () => {
    expect(namelessText('a decimal mark or a unit is wrong in line 2', names)).toBe(
      'a decimal mark or a unit is wrong in line 2',
    );
    expect(namelessText('a panel: "a", "read by: unit" and "area" are none', names)).toBe(
      'a panel: "Trainee 1", "read by: Trainee 2" and "area" are none',
    );
  });

  test('is not read again in what stands for names of people and of files', () => {
    expect(namelessText('"survey-2.csv" is of "Trainee 2", "2"', names)).toBe(
      '"survey-2.csv" is of "Trainee 2", "Trainee 4"',
    );
    const at = (file: string) =>
      namelessDiagnostic(
        { code: 'grade-not-read', severity: 'warning', message: '', at: { file } },
        names,
      ).at?.file;
    expect(at('survey-2.csv')).toBe('survey-2.csv');
    expect(at('ann.json')).toBe('gauge of Trainee 3');
  });
});

test('a name that no sentence of ours holds is taken out wherever it stands', () => {
  expect(namelessText('read by Ann Lee, with ann.json', names)).toBe(
    'read by Trainee 3, with gauge of Trainee 3',
  );
  expect(namelessText('the line "operator "Ann Lee" is never closed', names)).not.toContain('Ann');
});
