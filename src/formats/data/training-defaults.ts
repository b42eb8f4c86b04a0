/** How surveys of trainees are scored and marked, each number with its grounds. */
import { type Micrometres, micrometres } from '../../base/units.ts';
import type { Marking, TrainingModel } from '../../training/training-model.ts';
import { number } from '../default.ts';

const ISO_13528 = 'ISO 13528 and ISO/IEC 17043: |z| ≤ 2 satisfactory, under 3 questionable';
const weight = (value: number, meaning: string) =>
  number(value, '1', 'assumption', '', meaning, [0, 1000]);

export const trainingDefaults = {
  scores: {
    sigmaPt: number<Micrometres>(
      micrometres(3),
      'µm',
      'assumption',
      '',
      'standard deviation that a trainee’s mean of a panel may have: z is the difference in units of it',
      [0.1, 50],
    ),
    questionable: number(
      2,
      '1',
      'published',
      ISO_13528,
      'a score is questionable beyond this',
      [0.5, 10],
    ),
    unsatisfactory: number(
      3,
      '1',
      'published',
      ISO_13528,
      'a score is unsatisfactory from this on',
      [1, 20],
    ),
    plainUpTo: number(
      0.3,
      '1',
      'published',
      'ISO 13528, 9.2: a reference that is uncertain by no more is taken as exact',
      'share of sigma_pt up to which the reference may be uncertain for a plain z; beyond it z′',
      [0, 1],
    ),
  },
  marks: {
    passPct: number(
      70,
      '%',
      'assumption',
      '',
      'the share of the marks that a survey needs, where no rubric says',
      [0, 100],
    ),
    accuracy: weight(3, 'weight of the panel scores in the mark, where no rubric says'),
    coverage: weight(1, 'weight of the points that were read, where no rubric says'),
    lowPoints: weight(2, 'weight of the low spots found, where no rubric says'),
    repairs: weight(2, 'weight of the repaired panels found, where no rubric says'),
    repeatability: weight(1, 'weight of how well repeats agree, where no rubric says'),
  },
  class: {
    leastSurveys: number(
      3,
      '1',
      'assumption',
      '',
      'surveys of a panel from which a class has a consensus and a spread of its own',
      [2, 100],
    ),
  },
  slips: {
    likeness: number(
      1.25,
      '1',
      'assumption',
      '',
      'how near to 25.4, ten or a hundred times the reference a reading counts as a slip, as a factor either way',
      [1.01, 1.5],
    ),
    falseAlarm: number(
      0.001,
      '1',
      'assumption',
      '',
      'chance that a check for swapped, copied or made-up values speaks of an honest survey',
      [1e-9, 0.05],
    ),
  },
} as const;

/** How surveys are marked where no rubric says. */
export function usualMarking({ marks: { passPct, ...weights } }: TrainingModel): Marking {
  const whole = Object.values(weights).reduce((sum, one) => sum + one, 0);
  const share = (one: number): number => (whole === 0 ? 0 : one / whole);
  return {
    passMark: passPct / 100,
    weights: {
      accuracy: share(weights.accuracy),
      coverage: share(weights.coverage),
      lowPoints: share(weights.lowPoints),
      repairs: share(weights.repairs),
      repeatability: share(weights.repeatability),
    },
  };
}
