/** Points beyond the range of the gauge in the surveys of a class, or in the reference: filler, or a lifted probe. */
import { describe, expect, test } from 'vitest';
import { gradeFiles } from '../../../src/tasks/grade/grade-files.ts';
import { settings } from '../../training/true-class.ts';
import { gradeRequest, loaded } from '../grading.ts';

/** Six panels; the point 3 of the bonnet as it is said, all others a little off by `shift`. */
const survey = (bonnet: string, shift: readonly number[]): string =>
  [
    'panel,point,reading_um',
    ...['bonnet', 'roof', 'boot', 'door-front-left', 'door-front-right', 'wing-front-left'].flatMap(
      (panel, k) =>
        [118.4, 121.2, 119.7, 117.9, 120.3].map((film, i) => {
          const off = shift[(k * 3 + i * 2) % shift.length] ?? 0;
          const read = (film - 2 * k + off).toFixed(1);
          return `${panel},${i + 1},${panel === 'bonnet' && i === 2 ? bonnet : read}`;
        }),
    ),
  ].join('\n');

function graded(ofReference: string, ofTrainee: string) {
  const { value, diagnostics } = gradeFiles(
    gradeRequest({
      reference: loaded('reference.csv', survey(ofReference, [0.3, -0.6, 0.9, -0.2, 0.5])),
      trainees: [loaded('ann.csv', survey(ofTrainee, [-1.1, 0.7, 1.3, -0.8, 0.2, -0.5, 1.6]))],
      settings,
    }),
  );
  const [trainee] = value?.trainees ?? [];
  const grade = trainee?.grade ?? null;
  if (grade === null) throw new Error(diagnostics.map(({ message }) => message).join('; '));
  return {
    grade,
    doubts: diagnostics.filter(({ code }) => code === 'grade-reference-doubted'),
  };
}

const codesOf = ({ grade }: ReturnType<typeof graded>): readonly string[] =>
  grade.reasons.map(({ code }) => code);

describe('of a trainee', () => {
  test('finds filler that the reference read', () => {
    expect(graded('900', 'OL').grade.repairs).toMatchObject({ of: 1, found: 1 });
    expect(graded('900', '119.4').grade.repairs).toMatchObject({ of: 1, found: 0 });
  });
  test('is no invented repair, as the probe may have been lifted', () => {
    expect(codesOf(graded('119.7', 'OL'))).toEqual(codesOf(graded('119.7', '')));
    expect(codesOf(graded('119.7', '600'))).not.toEqual(codesOf(graded('119.7', '')));
  });
});

describe('of the reference', () => {
  test('is no repair that anybody must find, and is doubted', () => {
    const { grade, doubts } = graded('OL', '119.4');
    expect(grade.repairs.of).toBe(0);
    expect(doubts.map(({ message, at }) => [message, at?.file])).toEqual([
      [
        'the reference is in doubt: bonnet, point 3 beyond the range of the gauge ("OL"): filler, or the probe was lifted; no repair is looked for there',
        'reference.csv',
      ],
    ]);
    expect(graded('119.7', '119.4').doubts).toEqual([]);
  });
  test('makes nobody who reads filler there inventor of a repair', () => {
    expect(graded('119.7', '600').grade.reasons.map(({ code }) => code)).toContain(
      'repair-invented',
    );
    expect(codesOf(graded('OL', '600'))).not.toContain('repair-invented');
  });
});
