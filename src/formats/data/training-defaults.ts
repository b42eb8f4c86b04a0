/** How surveys of trainees are scored and marked, each number with its grounds. */
import { once } from '../../base/kept.ts';
import { type Micrometres, micrometres } from '../../base/units.ts';
import type { Marking, TrainingModel } from '../../training/training-model.ts';
import { number, pure } from '../default.ts';

const ISO_13528 = 'ISO 13528 and ISO/IEC 17043: |z| ≤ 2 satisfactory, under 3 questionable';
const weight = (value: number, meaning: string) =>
  number(value, '1', 'assumption', '', meaning, [0, 1000]);

const HONEST = 'test/simulation/honest-trainees.test.ts';
const HELD_OUT = 'test/simulation/GRADING.md';
const PATTERNS = 'test/simulation/MARKS.md';

export const trainingDefaults = once(
  () =>
    ({
      scores: {
        sigmaPt: number<Micrometres>(
          micrometres(3),
          'µm',
          'assumption',
          '',
          'standard deviation that a trainee’s mean of a panel may have: z is the difference in units of it',
          [0.1, 50],
        ),
        sigmaPtFilm: number<Micrometres>(
          micrometres(120),
          'µm',
          'assumption',
          'about as thick as factory film; two gauges permitted ± 2 % differ there by 2 µm (SD), which σ_pt holds',
          'film up to which σ_pt holds what gauges are off by that nobody named; over it a score allows for their share of the rest',
          [0, 5000],
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
        questionableShare: pure(
          0.5,
          'assumption',
          '',
          'what a questionable panel, or one numbered from the other end, counts as in the mark, of a satisfactory one',
          [0, 1],
        ),
        slippedShare: pure(
          0,
          'assumption',
          'whoever works by the sheet meets another film there than it says',
          'what a panel with a slip (another unit, a decimal mark, panels swapped) counts as at the most, of a satisfactory one',
          [0, 1],
        ),
        sharedMarks: pure(
          3,
          'assumption',
          'fewer are no basis for the mean of a panel',
          'marked points that trainee and reference must share on a panel to be compared point by point',
          [1, 20],
        ),
        carPanels: pure(
          3,
          'derived',
          'test/training/car-bias.test.ts: intervals from three panels on hold in 97 of 100',
          'scored panels from which something is said of the whole car',
          [2, 20],
        ),
      },
      verdict: {
        panelsAtFault: pure(
          2,
          'derived',
          'an honest survey of 13 panels at three points of its own exceeds |z| 3 on some panel in 42 of 100',
          'panels at fault from which a survey fails, or unread ones from which it is questionable',
          [2, 20],
        ),
        readShare: pure(
          0.5,
          'assumption',
          '',
          'share of the panels up to which a survey read is questionable, and under which the class leaves it out',
          [0, 0.99],
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
        provedAlarm: number(
          0.00001,
          '1',
          'assumption',
          `a hundredth of false_alarm: ${HONEST} marks no honest survey down by it`,
          'chance under which made-up values count as not read in the mark; up to false_alarm they are told, and cost nothing',
          [1e-12, 0.05],
        ),
        wholeSurvey: pure(
          2 / 3,
          'assumption',
          '',
          'share of the readings from which a unit or decimal slip is one of the whole survey',
          [0.5, 1],
        ),
        evenPanel: pure(
          0.02,
          'derived',
          HELD_OUT,
          'chance under which a panel counts as one that reads too even; so many of them are then judged by the binomial law',
          [0.001, 0.2],
        ),
        honestRest: pure(
          0.1,
          'derived',
          'drawn surveys (100 cars): who read only the middles is told so of all panels in 88 of 100, and honest panels beside made-up ones are taken along in none of 200',
          'chance from which the panels that do not read too even by themselves look honest together; under it all panels count as too regular',
          [0.0001, 0.5],
        ),
        madeUpSpread: pure(
          1 / 3,
          'assumption',
          '',
          'spread of made-up values, as a share of the film’s, that too few points would not show',
          [0.01, 0.9],
        ),
        finestStep: number<Micrometres>(
          micrometres(0.1),
          'µm',
          'common practice',
          'the last figure of a finer display is noise',
          'step that a display counts as at the least where values that are the same are counted',
          [0.01, 2],
        ),
      },
      copies: {
        samePoints: pure(
          10,
          'derived',
          HONEST,
          'points in common from which the same values may prove a copy',
          [3, 200],
        ),
        mostAlike: pure(
          0.7,
          'assumption',
          HONEST,
          'share of points at which two honest readings show the same figure, at the most',
          [0.01, 0.99],
        ),
        nearPoints: pure(
          20,
          'derived',
          HELD_OUT,
          'points in common from which values that lie near may prove a copy',
          [3, 200],
        ),
        others: pure(
          3,
          'derived',
          HELD_OUT,
          'others of the class that must share those points, to say what is usual',
          [2, 20],
        ),
        steadyHand: pure(
          3,
          'assumption',
          HONEST,
          'how many times better than usual a steady hand repeats, where the trainee’s own repeats tell nothing',
          [1, 20],
        ),
        setDownBeside: pure(
          2,
          'assumption',
          `drawn surveys (20,000 a row): a hand twice as unsteady as its repeats is told not to follow the panels no more often than the false alarm`,
          'how many times their repeats two hands at one mark differ by (SD), at the most',
          [1, 10],
        ),
        ownRepeats: pure(
          5,
          'assumption',
          '',
          'repeats (degrees of freedom) from which a trainee’s own repeatability is taken',
          [1, 100],
        ),
      },
      patterns: {
        driftMarks: pure(
          10,
          'derived',
          PATTERNS,
          'marks in common from which a drift of the gauge, or values that do not follow the panels, are looked for',
          [5, 200],
        ),
        levelsChance: pure(
          0.01,
          'derived',
          PATTERNS,
          'chance under which a level of each panel’s own fits better than a drift, which is then not told',
          [0.0001, 0.5],
        ),
        levelSd: number<Micrometres>(
          micrometres(1.5),
          'µm',
          'assumption',
          `${PATTERNS}: at most 2 honest surveys in 1,000 are then told to drift, 5 where it is 2 µm`,
          'how far an honest hand reads panels apart (SD), a drift aside',
          [0.1, 20],
        ),
        offPanels: pure(
          3,
          'derived',
          PATTERNS,
          'panels read at the same marks from which marks that read off, or values that do not follow the panels, are looked for',
          [2, 20],
        ),
        offMarks: pure(
          3,
          'assumption',
          '',
          'marks on each panel from which marks that read off are looked for',
          [2, 20],
        ),
        panelShare: pure(
          0.5,
          'assumption',
          `${HELD_OUT}: doors swapped at marks are named in 90 of 100`,
          'share of what a hand reads a mark off by (variance) that is in all marks of its panel, where names of panels are compared',
          [0, 0.95],
        ),
        followedChance: pure(
          0.02,
          'assumption',
          `drawn surveys (20,000 a row): unsteady hands of 4 µm are told in 6 of 1,000 at the most`,
          'chance under which pairs of places show that values follow the film after all',
          [0.0001, 0.5],
        ),
        followedUsual: pure(
          0.05,
          'assumption',
          'who reads unsteadily does so all over the car; of honest hands one in twenty comes out worse, and is told nothing by it',
          'chance from which the panels before follow the film as usual, where a survey is looked through for a panel from which on it does not',
          [0.0001, 0.9],
        ),
        panelsAlarm: pure(
          0.0003,
          'derived',
          `drawn surveys: few pairs of panels have longer tails than the normal law, so that this holds honest surveys to 1 in 1,000`,
          'chance that panels of an honest survey are told not to follow the car, by the normal law',
          [1e-9, 0.05],
        ),
      },
    }) as const,
);

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
