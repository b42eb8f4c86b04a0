/** The mark of a survey and what it comes to as a whole, one ground at a time. */
import { describe, expect, test } from 'vitest';
import { chiSquareQuantile } from '../../src/base/stats/chi-square.ts';
import { micrometres } from '../../src/base/units.ts';
import type { CarBias } from '../../src/training/car-bias.ts';
import type { Coverage } from '../../src/training/coverage.ts';
import type { Found } from '../../src/training/found.ts';
import { conditionWord, type ReadPanel } from '../../src/training/graded-survey.ts';
import { allowedRepeatability, type Judged, markOf } from '../../src/training/mark.ts';
import type { MarksPattern } from '../../src/training/marks-pattern.ts';
import { overallVerdict, type VerdictGround } from '../../src/training/overall-verdict.ts';
import type { PanelScore } from '../../src/training/panel-score.ts';
import type { Reason } from '../../src/training/reasons.ts';
import type { ReferencePanel } from '../../src/training/reference.ts';
import type { ScoreVerdict } from '../../src/training/scores.ts';
import type { Criterion } from '../../src/training/training-model.ts';
import type { VoidPanel } from '../../src/training/void-panels.ts';
import { plainPanel } from '../film/car-builder.ts';
import { marking, model } from './true-class.ts';

const um = micrometres;
const panels = (...ids: readonly string[]) => ids.map((id) => plainPanel(id));
/** Nothing else of a score makes a mark or a verdict. */
const scoresOf = (...verdicts: readonly ScoreVerdict[]): readonly PanelScore[] =>
  verdicts.map((verdict, k) => ({ panel: plainPanel(`p${k}`), verdict }) as unknown as PanelScore);
const missing = (...ids: readonly string[]): readonly ReferencePanel[] =>
  panels(...ids).map((panel) => ({ panel }) as unknown as ReferencePanel);

const coverage: Coverage = {
  panelsRead: 10,
  panelsWithSpread: 10,
  panels: 10,
  pointsRead: 50,
  points: 50,
  share: 1,
  unread: [],
  short: [],
  extra: [],
};
const nothing: Found<never> = { found: 0, of: 0, interval: null, blamed: 0, missed: [] };
const sound: Judged = {
  scores: scoresOf('satisfactory', 'satisfactory'),
  coverage,
  lowSpots: nothing,
  repairs: nothing,
  repeatability: null,
};

describe('the mark', () => {
  const shareOf = (criterion: Criterion, judged: Partial<Judged>) =>
    markOf({ ...sound, ...judged }, { ...marking, ...model.scores }).criteria.find(
      (one) => one.criterion === criterion,
    )?.share;

  test('gives a panel a half where it is questionable and nothing where it is unsatisfactory', () => {
    const accuracy = (...verdicts: readonly ScoreVerdict[]) =>
      shareOf('accuracy', { scores: scoresOf(...verdicts), coverage: { ...coverage, panels: 4 } });
    expect(accuracy('satisfactory', 'questionable', 'unsatisfactory', 'satisfactory')).toBe(
      2.5 / 4,
    );
    expect(accuracy()).toBe(0);
  });

  test('gives nothing for a panel of the reference that was not read, however well the others were', () => {
    const scores = scoresOf('satisfactory', 'satisfactory', 'satisfactory');
    expect(shareOf('accuracy', { scores })).toBeCloseTo(0.3, 15);
  });

  test('gives nothing for repeats that are one figure throughout, and passes over repeats that are not there', () => {
    const { criteria } = markOf(sound, { ...marking, ...model.scores, repeatsAlike: true });
    expect(criteria.find(({ criterion }) => criterion === 'repeatability')?.share).toBe(0);
  });

  test('gives a hand no more for repeating better than is usual, and less for worse by their ratio', () => {
    const share = (sd: number) =>
      shareOf('repeatability', { repeatability: { sd: um(sd), dof: 10, allowed: um(2) } });
    expect([share(0.5), share(2), share(4), share(8)]).toEqual([1, 1, 0.5, 0.25]);
    expect(shareOf('repeatability', {})).toBeNull();
  });

  test('allows repeats what 95 of 100 usual hands keep to: s_r·√(χ²(.95; ν)/ν)', () => {
    const { allowed } = allowedRepeatability({ sd: um(3), dof: 10 }, um(1.5));
    // χ²(.95; 10) = 18.307 (tables).
    expect(chiSquareQuantile(0.95, 10)).toBeCloseTo(18.307, 3);
    expect(allowed).toBeCloseTo(1.5 * Math.sqrt(1.8307), 4);
  });

  test('gives the weight of what there was nothing to judge by to the others', () => {
    const weights = { accuracy: 60, coverage: 20, lowPoints: 10, repairs: 10, repeatability: 0 };
    const judged = {
      ...sound,
      scores: scoresOf('unsatisfactory'),
      lowSpots: { ...nothing, found: 1, of: 4, blamed: 3 },
    };
    const { share } = markOf(judged, { weights, ...model.scores });
    // 0 of 60, 20 of 20, a quarter of 10; no repair on the car.
    expect(share).toBeCloseTo(22.5 / 90, 12);
    expect(
      markOf(judged, { weights, ...model.scores }).criteria.map(({ share: one }) => one),
    ).toEqual([0, 1, 0.25, null, null]);
  });
});

describe('the verdict on a survey as a whole', () => {
  const bias = (verdict: ScoreVerdict): CarBias => ({
    mean: um(1),
    low: um(0),
    high: um(2),
    z: 1,
    verdict,
  });
  const slip: Reason = { code: 'values-alike', text: '', panels: [] } as unknown as Reason;
  const verdictOn = (
    judged: Partial<Judged>,
    rest: {
      readonly bias?: CarBias;
      readonly blunders?: readonly Reason[];
      readonly voided?: readonly VoidPanel[];
      readonly pattern?: Partial<MarksPattern>;
      readonly mark?: number;
    } = {},
  ): readonly [ScoreVerdict, ...VerdictGround[]] => {
    const { verdict, grounds } = overallVerdict(
      {
        judged: { ...sound, ...judged },
        bias: rest.bias ?? null,
        blunders: rest.blunders ?? [],
        voided: rest.voided ?? [],
        pattern: { drift: null, marksOff: null, notFollowed: null, ...rest.pattern },
        sigmaPt: 3,
        mark: { share: rest.mark ?? 1, criteria: [] },
      },
      { passMark: 0.7 },
      model,
    );
    return [verdict, ...grounds];
  };

  test('is satisfactory without any ground', () => {
    expect(verdictOn({})).toEqual(['satisfactory']);
    expect(verdictOn({}, { bias: bias('satisfactory'), mark: 0.7 })).toEqual(['satisfactory']);
    // The sum of weights may miss a whole mark by the last digit.
    expect(verdictOn({}, { mark: 0.1 + 0.6 - 1e-12 })).toEqual(['satisfactory']);
  });

  test('is unsatisfactory by two panels that are, and questionable by one', () => {
    const one = scoresOf('unsatisfactory', 'satisfactory');
    const two = scoresOf('unsatisfactory', 'unsatisfactory');
    expect(verdictOn({ scores: one })).toEqual(['questionable', 'one-panel-off']);
    expect(verdictOn({ scores: two })).toEqual(['unsatisfactory', 'panels-off']);
  });

  test('is questionable by two panels that are, and not by one', () => {
    expect(verdictOn({ scores: scoresOf('questionable', 'satisfactory') })).toEqual([
      'satisfactory',
    ]);
    expect(verdictOn({ scores: scoresOf('questionable', 'questionable') })).toEqual([
      'questionable',
      'panels-doubtful',
    ]);
  });

  test('is that of the car read off as a whole', () => {
    expect(verdictOn({}, { bias: bias('questionable') })).toEqual(['questionable', 'car-doubtful']);
    expect(verdictOn({}, { bias: bias('unsatisfactory') })).toEqual(['unsatisfactory', 'car-off']);
  });

  test('is questionable by a slip, by a repair that was missed, and by two panels or half of the car unread', () => {
    expect(verdictOn({}, { blunders: [slip] })).toEqual(['questionable', 'slip']);
    const repairs = { ...nothing, of: 1, blamed: 1, missed: missing('roof') };
    expect(verdictOn({ repairs })).toEqual(['questionable', 'repair-missed']);
    const unread = (...ids: readonly string[]) => ({
      coverage: { ...coverage, unread: panels(...ids) },
    });
    expect(verdictOn(unread('roof'))).toEqual(['satisfactory']);
    expect(verdictOn(unread('roof', 'boot'))).toEqual(['questionable', 'panels-unread']);
    const half = (panelsWithSpread: number) => ({ coverage: { ...coverage, panelsWithSpread } });
    expect(verdictOn(half(5))).toEqual(['questionable', 'half-unread']);
    expect(verdictOn(half(6))).toEqual(['satisfactory']);
  });

  test('is questionable by a drift of over two σ_pt and by marks that read off, and fails by neither', () => {
    const drift = (total: number) =>
      verdictOn({}, { pattern: { drift: { total: um(total), marks: 50, onPanel: new Map() } } });
    expect(drift(6)).toEqual(['satisfactory']);
    expect(drift(6.1)).toEqual(['questionable', 'gauge-drift']);
    expect(drift(-30)).toEqual(['questionable', 'gauge-drift']);
    const marksOff = { off: ['1'], agreeing: ['2'], mean: um(-9), atEdges: true };
    expect(verdictOn({}, { pattern: { marksOff } })).toEqual(['questionable', 'marks-off']);
    const notFollowed = {
      ...{ places: 55, groups: 11, pairs: 110, alike: 53, expected: 88 },
      ...{ at: 'marks' as const, from: [], chance: 0.0001 },
    };
    expect(verdictOn({}, { pattern: { notFollowed } })).toEqual(['questionable', 'not-following']);
  });

  test('is questionable by values too like another’s, which is no blunder', () => {
    const copied = { ...slip, code: 'survey-copied' } as Reason;
    expect(verdictOn({}, { blunders: [copied] })).toEqual(['questionable', 'copied']);
    expect(verdictOn({}, { blunders: [copied, slip] })).toEqual(['questionable', 'slip', 'copied']);
  });

  test('under the pass mark counts panels that are void as panels at fault', () => {
    const voided = panels('roof', 'boot').map((panel) => ({ panel, as: 'unread' as const }));
    const under = (some: readonly VoidPanel[]) => verdictOn({}, { voided: some, mark: 0.69 });
    expect(under(voided.slice(1))).toEqual(['questionable', 'under-pass-mark']);
    expect(under(voided)).toEqual(['unsatisfactory', 'under-pass-mark']);
    expect(verdictOn({}, { voided })).toEqual(['satisfactory']);
  });

  test('under the pass mark is unsatisfactory with two panels at fault, whatever is wrong with them', () => {
    const under = (judged: Partial<Judged>) => verdictOn(judged, { mark: 0.69 });
    expect(under({})).toEqual(['questionable', 'under-pass-mark']);
    const spots = { ...nothing, of: 1, blamed: 1, missed: missing('wing') as never };
    const repairs = { ...nothing, of: 1, blamed: 1, missed: missing('roof') };
    const unread = { ...coverage, unread: panels('roof', 'boot') };
    const short = { ...coverage, short: panels('roof', 'boot') };
    const all: readonly Partial<Judged>[] = [
      { coverage: unread },
      { coverage: short },
      { coverage: { ...coverage, unread: panels('roof'), short: panels('boot') } },
      { lowSpots: spots, repairs },
      { scores: scoresOf('questionable', 'satisfactory'), lowSpots: spots },
      { scores: scoresOf('questionable', 'unsatisfactory') },
    ];
    for (const judged of all)
      expect(under(judged), JSON.stringify(judged)).toEqual(['unsatisfactory', 'under-pass-mark']);
    // One panel may be at fault in more than one way.
    const once = { lowSpots: { ...spots, missed: missing('roof') as never }, repairs };
    expect(under(once)).toEqual(['questionable', 'repair-missed', 'under-pass-mark']);
  });
});

describe('the word for a panel in a class', () => {
  const word = (min: number, condition: string, ...also: readonly string[]) =>
    conditionWord({
      condition,
      also,
      statistics: { min },
      totalFloor: 80,
    } as unknown as ReadPanel);

  test('is thin by a point under the floor alone, not by what is credible of points too few', () => {
    expect(word(79.9, 'thin')).toBe('thin');
    expect(word(80, 'thin')).toBe('original');
    expect(word(85, 'thin', 'cut-back')).toBe('cut-back');
    expect(word(79.9, 'thin', 'cut-back')).toBe('thin');
    expect(word(85, 'refinished', 'thin')).toBe('refinished');
  });
});
