import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { micrometres, seconds } from '../../src/base/units.ts';
import { ladder } from '../../src/correction/removal/combination.ts';
import { cutsFasterThan, methodChain } from '../../src/correction/removal/method.ts';
import {
  foretell,
  hardnessWord,
  paintKnowledge,
  removalLogSd,
} from '../../src/correction/removal/removal-knowledge.ts';
import { moreEvidence } from '../../src/correction/spot/more-evidence.ts';
import { chanceWithin, spotLadder } from '../../src/correction/spot/spot-ladder.ts';
import {
  observationOf,
  observationsOf,
  removedFilm,
  type SpotTrial,
} from '../../src/correction/spot/spot-trial.ts';
import type { TrialObservation } from '../../src/correction/spot/trial-observation.ts';
import { correctionModel, filmModel } from '../../src/formats/models.ts';
import { defect, shopWith, untried } from './shop.ts';
import { combination, marks, model, trial } from './spot-trials.ts';

const gauge = filmModel.measurement;
const rungs = ladder(model);

describe('what the gauge says of a trial', () => {
  it('tells with ten marks and s = 1.5 µm 1.3 µm half of the time, and 2.4 for sure (2.4: 3.6·s·√(2/n))', () => {
    // Differences that scatter by exactly √2·1.5: ± 2.0125 alternately, Σ = 9·4.5.
    const d = Math.sqrt((9 * 4.5) / 10);
    const film = removedFilm(
      marks(...Array.from({ length: 10 }, (_, i) => [110, 109 - (i % 2 ? d : -d)] as const)),
      gauge,
      6,
    );
    expect(film?.mean).toBeCloseTo(1, 12);
    expect(film?.resolvable).toBeCloseTo(1.96 * 1.5 * Math.sqrt(2 / 10), 3);
    expect(film?.sure).toBeCloseTo(3.6 * 1.5 * Math.sqrt(2 / 10), 2);
  });

  it('does not widen as marks are added that scatter as the gauge does', () => {
    const errors = [2, 3, 5, 8, 12].map((n) => {
      const d = Math.sqrt(((n - 1) * 4.5) / (n - (n % 2)));
      const pairs = Array.from({ length: n }, (_, i) => {
        const off = n % 2 === 1 && i === n - 1 ? 0 : i % 2 ? d : -d;
        return [110, 109 - off] as const;
      });
      return removedFilm(marks(...pairs), gauge, 6)?.standardError ?? Number.NaN;
    });
    for (const [i, error] of errors.slice(1).entries()) expect(error).toBeLessThan(errors[i] ?? 0);
  });

  it('pools the scatter of the marks with the gauge’s repeatability', () => {
    // Δ = 0 and 6: s² = 18 on one degree of freedom; (6·4.5 + 18)/7 = 6.4286; /2 = 3.2143
    const film = removedFilm(marks([110, 110], [110, 104]), { ...gauge, proportional: 0 }, 6);
    expect(film?.standardError).toBeCloseTo(Math.sqrt(3.2143), 4);
    // Student's t of 97.5 % at 6 + 1 degrees of freedom: 2.3646 (NIST/SEMATECH e-Handbook, 1.3.6.7.2: 2.365).
    expect(film?.low).toBeCloseTo(3 - 2.3646 * Math.sqrt(3.2143), 3);
    expect(film?.high).toBeCloseTo(3 + 2.3646 * Math.sqrt(3.2143), 3);
  });

  it('lets the gauge’s proportional error act on the difference alone', () => {
    const at = (film: number) => removedFilm(marks([film, film - 3]), gauge, 6)?.standardError;
    expect(at(80)).toBeCloseTo(at(160) ?? 0, 12);
    expect(at(80)).toBeCloseTo(Math.hypot(1.5 * Math.SQRT2, (0.02 * 3) / Math.sqrt(3)), 12);
  });

  it('is nothing without marks', () => {
    expect(removedFilm([], gauge, 6)).toBeNull();
    expect(observationOf(trial('da/foam-medium/medium', { cleared: 0.5 }), null)).toMatchObject({
      removed: null,
      cleared: { share: 0.5, depth: 1.1 },
    });
  });

  it('is learned from with its error, and what was seen of a defect without depth is not', () => {
    const film = removedFilm(marks([110, 109], [110, 107]), gauge, 6);
    const unmarked = trial('da/foam-medium/medium', {
      cleared: 0.5,
      defect: defect('swirl-marks', 0),
    });
    expect(observationOf(unmarked, film)).toEqual({
      combination: 'da/foam-medium/medium',
      foretold: 2 * combination('da/foam-medium/medium').perSet,
      removed: { value: 2, standardError: film?.standardError },
      cleared: null,
      haze: null,
    });
  });
});

describe('the trials of one paint', () => {
  it('are learned from one by one, each with the error of its own marks', () => {
    const trials = [
      trial('da/foam-medium/medium', { marks: marks([110, 108], [110, 107]), cleared: 0.5 }),
      trial('da/foam-soft/fine', { cleared: 0.2 }),
    ];
    expect(observationsOf(trials, gauge, model)).toEqual(
      trials.map((one) => observationOf(one, removedFilm(one.marks, gauge, model.spot.scatterDof))),
    );
    expect(observationsOf(trials, gauge, model).map(({ removed }) => removed?.value)).toEqual([
      2.5,
      undefined,
    ]);
  });
});

const observed = (id: string, sets: number, value: number, se = 0.6): TrialObservation => ({
  combination: id,
  foretold: combination(id).perSet * sets,
  removed: { value, standardError: se },
  cleared: null,
});

describe('a paint after its test spots', () => {
  it('foretells a plan of untried combinations with the ln-SD of hardness, own rate and step', () => {
    const steps = [{ combination: combination('da/foam-medium/medium'), sets: 2 }];
    const { logSd, median } = foretell(steps, untried, 0.15);
    expect(logSd).toBeCloseTo(removalLogSd(model.removal), 12);
    expect(median).toBeCloseTo(2 * 0.8965, 3);
  });

  it('foretells nothing of no steps', () => {
    expect(foretell([], untried, 0.15)).toEqual({ median: 0, logSd: 0.15, withDepth: 0 });
  });

  it('weighs what is known of each step by its share', () => {
    const [a, b] = ['da/microfibre/heavy', 'da/foam-soft/fine'];
    const paint = paintKnowledge([observed(a, 2, 3.2, 0.3)], 'unknown', model);
    const [one, two] = [combination(a), combination(b)];
    const { logSd } = foretell(
      [
        { combination: one, sets: 1 },
        { combination: two, sets: 1 },
      ],
      paint,
      0.15,
    );
    const share = one.perSet / (one.perSet + two.perSet);
    const mixed = share * paint.removal.of(a).sd + (1 - share) * paint.removal.of(b).sd;
    expect(logSd).toBeCloseTo(Math.hypot(mixed, 0.15), 12);
    expect(paint.removal.of(a).sd).toBeLessThan(paint.removal.of(b).sd);
  });

  it('believes a rate that the shop measured as far as it states', () => {
    const rates = new Map([['da/foam-medium/medium', { rate: micrometres(0.9), logSd: 0.1 }]]);
    const paint = paintKnowledge([], 'unknown', { ...model, rates });
    expect(paint.removal.of('da/foam-medium/medium').sd).toBeCloseTo(Math.hypot(0.35, 0.1), 12);
    expect(paint.removal.of('da/foam-soft/medium').sd).toBeCloseTo(Math.hypot(0.35, 0.4), 12);
  });

  it('is called by the declared word whose factor is nearest', () => {
    const word = (removed: number) =>
      hardnessWord(
        paintKnowledge(
          ['da/foam-medium/medium', 'da/microfibre/heavy', 'rotary/foam-soft/heavy'].map((id) =>
            observed(id, 3, combination(id).perSet * 3 * removed, 0.2),
          ),
          'unknown',
          model,
        ),
        model.removal,
      );
    expect([word(0.4), word(1), word(2.2)]).toEqual(['hard', 'medium', 'soft']);
  });

  it('is one and the same as long as nobody tried it, for each declared hardness', () => {
    const [hard, again, soft] = (['hard', 'hard', 'soft'] as const).map((hardness) =>
      paintKnowledge([], hardness, model),
    );
    expect(again).toBe(hard);
    expect(soft?.removal.hardness.mean).toBeCloseTo(Math.log(1.5), 12);
    expect(hard?.removal.hardness.mean).toBeCloseTo(Math.log(0.65), 12);
  });

  it('is provisional until film was read on a spot', () => {
    const eye = { ...observed('da/foam-medium/medium', 1, 1), removed: null };
    const seen = { ...eye, cleared: { share: 0.5, depth: 1.1 } };
    expect(paintKnowledge([seen], 'unknown', model).provisional).toBe(true);
    expect(
      paintKnowledge([seen, observed('da/foam-medium/medium', 1, 1)], 'unknown', model).provisional,
    ).toBe(false);
  });

  it('is known no worse with another trial that comes out as expected', () => {
    fc.assert(
      fc.property(
        fc.array(fc.tuple(fc.constantFrom(...rungs.slice(4, 20)), fc.integer({ min: 1, max: 3 })), {
          minLength: 1,
          maxLength: 3,
        }),
        (tried) => {
          const all = tried.map(([{ id, perSet }, sets]) => observed(id, sets, perSet * sets));
          const before = paintKnowledge(all.slice(1), 'unknown', model).removal;
          const after = paintKnowledge(all, 'unknown', model).removal;
          expect(after.hardness.sd).toBeLessThanOrEqual(before.hardness.sd + 1e-6);
        },
      ),
      { numRuns: 30 },
    );
  });

  it('would be known better with more marks, with repeats and with stacked sets', () => {
    const one = combination('da/foam-medium/medium');
    const offers = moreEvidence(one, one.perSet, {
      observations: [],
      hardness: 'unknown',
      model,
      gauge,
    });
    const sds = offers.map(({ logSd }) => logSd);
    expect(sds).toEqual([...sds].sort((a, b) => b - a));
    expect(sds[0]).toBeLessThan(Math.hypot(0.35, 0.4));
  });

  it('would be known after more marks as if a trial had come out as it is foretold now', () => {
    const one = combination('da/foam-medium/medium');
    const known = [observed(one.id, 2, 2.6)];
    const now = { ...one, perSet: micrometres(1.2) };
    const offers = moreEvidence(now, one.perSet, {
      observations: known,
      hardness: 'hard',
      model,
      gauge,
    });
    expect(offers.map(({ marks, repeats, sets }) => [marks, repeats, sets])).toEqual([
      [5, 1, 1],
      [10, 1, 1],
      [10, 1, 2],
      [10, 3, 2],
    ]);
    for (const { marks, repeats, sets, logSd } of offers) {
      // s = 1.5 µm a reading, before and after.
      const error = 1.5 * Math.sqrt(2 / (marks * repeats));
      const trials = [...known, observed(one.id, sets, 1.2 * sets, error)];
      const { removal } = paintKnowledge(trials, 'hard', model);
      expect(logSd).toBeCloseTo(removal.of(one.id).sd, 12);
    }
  });
});

const ladderOf = (trials: readonly SpotTrial[], budget: number | null = null) =>
  spotLadder({
    trials,
    paint: paintKnowledge(
      trials.map((one) => observationOf(one, null)),
      'unknown',
      model,
    ),
    defect: defect('swirl-marks', 3),
    aim: 0.85,
    budgetAt: budget === null ? null : () => budget,
    model,
  });

describe('the ladder', () => {
  it('starts mild: rungs go by what a set takes, small pads and hands are for tight places', () => {
    const all = ladderOf([]);
    const takes = all.map((rung) => rung.combination.perSet);
    expect(takes).toEqual([...takes].sort((a, b) => a - b));
    expect(all[0]?.combination.id).toBe('da/foam-soft/fine');
    expect(all.every((rung) => rung.combination.machine.padDiameter === 150)).toBe(true);
  });

  it('has no finishing by rotary on it, which would leave holograms', () => {
    const ids = ladderOf([]).map((rung) => rung.combination.id);
    expect(ids).toContain('da/foam-soft/fine');
    expect(ids).toContain('rotary/foam-soft/heavy');
    expect(ids).not.toContain('rotary/foam-soft/fine');
  });

  it('is one of small pads, and of no hand, where the shop has no larger one', () => {
    const small = shopWith('da-small', 'hand');
    const [pad, hand] = small.machines.map(({ padDiameter }) => padDiameter);
    expect(Math.min(pad ?? 0, hand ?? 0)).toBeLessThan(Math.max(pad ?? 0, hand ?? 0));
    const terms = { paint: untried, defect: defect('swirl-marks', 3), aim: 0.85, budgetAt: null };
    const all = spotLadder({ ...terms, trials: [], model: small });
    expect(all.length).toBeGreaterThan(5);
    expect(new Set(all.map((rung) => rung.combination.machine.id))).toEqual(new Set(['da-small']));
  });

  it('after medium pad and medium polish by dual action on old hard clear goes on to rungs that include a stronger product on a softer pad by rotary', () => {
    // Two sets of it took next to nothing and cleared a quarter.
    const tried = trial('da/foam-medium/medium', { cleared: 0.25 });
    const open = ladderOf([tried]).filter(({ state }) => state === 'open');
    const softer = open.find(({ combination: { id } }) => id === 'rotary/foam-soft/heavy');
    expect(softer?.chance).toBeGreaterThan(0.2);
    expect(open.map(({ combination: { id } }) => id)).not.toContain('da/foam-soft/medium');
  });

  it('leaves out what is milder than a combination that did not clear', () => {
    const states = ladderOf([trial('da/foam-medium/medium', { cleared: 0.3 })]);
    const at = states.findIndex(({ tried }) => tried);
    expect(states.slice(0, at + 1).every(({ state }) => state === 'too-mild')).toBe(true);
    expect(states.slice(at + 1).some(({ state }) => state === 'too-mild')).toBe(false);
  });

  const statesAfter = (one: SpotTrial) => {
    const states = ladderOf([one]);
    const at = states.findIndex(({ tried }) => tried);
    return {
      milder: new Set(states.slice(0, at).map(({ state }) => state)),
      own: states[at]?.state,
      stronger: new Set(states.slice(at + 1).map(({ state }) => state)),
    };
  };

  it('has a combination that cleared as such, and what is milder still open', () => {
    expect(statesAfter(trial('da/foam-medium/medium', { cleared: 0.9 }))).toEqual({
      milder: new Set(['open']),
      own: 'cleared',
      stronger: new Set(['open']),
    });
  });

  it('takes just what is aimed at as cleared', () => {
    expect(statesAfter(trial('da/foam-medium/medium', { cleared: 0.85 })).own).toBe('cleared');
    expect(statesAfter(trial('da/foam-medium/medium', { cleared: 0.84 })).own).toBe('too-mild');
  });

  it('rules nothing out by a trial that nobody judged by eye', () => {
    expect(statesAfter(trial('da/foam-medium/medium'))).toEqual({
      milder: new Set(['open']),
      own: 'open',
      stronger: new Set(['open']),
    });
  });

  it('keeps a combination open of which one more set may clear, and rules out what is milder', () => {
    expect(statesAfter(trial('da/foam-medium/medium', { cleared: 0.6, sets: 1 }))).toEqual({
      milder: new Set(['too-mild']),
      own: 'open',
      stronger: new Set(['open']),
    });
  });

  it('rules a combination out after one set where another has little chance either', () => {
    const little = statesAfter(trial('da/foam-soft/fine', { cleared: 0.02, sets: 1 }));
    expect(little.own).toBe('too-mild');
  });

  it('has a chance of one to clear what is not there', () => {
    const paint = untried;
    const nothing = defect('swirl-marks', 0);
    const mildest = combination('da/foam-soft/fine');
    expect(chanceWithin(mildest, 1, { paint, defect: nothing, aim: 0.85, model })).toBe(1);
  });

  it('shows beside what a set takes now what it was to take before any trial', () => {
    const taken = { value: 0.9, standardError: 0.2 };
    const one = trial('da/foam-medium/medium', { cleared: 0.5 });
    const paint = paintKnowledge(
      [{ ...observationOf(one, null), removed: taken }],
      'unknown',
      model,
    );
    const defects = { defect: defect('swirl-marks', 3), aim: 0.85 };
    for (const rung of spotLadder({ trials: [one], paint, ...defects, budgetAt: null, model })) {
      const { id, perSet } = rung.combination;
      expect(rung.before).toBe(combination(id).perSet);
      expect(perSet / rung.before).toBeCloseTo(Math.exp(paint.removal.of(id).mean), 12);
      expect(rung.low).toBeLessThan(perSet);
      expect(rung.high).toBeGreaterThan(perSet);
    }
  });

  it('says of which rungs one set takes more than may go', () => {
    const over = ladderOf([], 1.5).filter(({ state }) => state === 'over-budget');
    expect(over.every(({ combination: { perSet } }) => perSet > 1.5)).toBe(true);
    expect(over.length).toBeGreaterThan(0);
  });

  it('reckons the chance to reach the aim as a normal probability (hand-worked)', () => {
    // ln(2·.8965/1.1) = .48862; needed .6·1.03643 = .62186; √(.5523² + .5²) = .74500: Φ(−.17885) = .42903
    expect(
      chanceWithin(combination('da/foam-medium/medium'), 2, {
        paint: untried,
        defect: defect('swirl-marks', 3),
        aim: 0.85,
        model,
      }),
    ).toBeCloseTo(0.429, 3);
  });
});

describe('common practice', () => {
  it('has it that a rotary cuts faster, and must travel faster for its heat', () => {
    const chain = (id: string) => methodChain(combination(id), correctionModel, seconds(0));
    const [rotary, da] = ['rotary/foam-medium/medium', 'da/foam-medium/medium'].map(chain);
    if (rotary === undefined || da === undefined) throw new Error('both are in the shop');
    expect(cutsFasterThan(rotary, da)).toBeGreaterThan(2);
    expect(rotary.combination.machine.armSpeed).toBeGreaterThan(da.combination.machine.armSpeed);
    // At the arm speed of the dual action it would stay on each place 1.6 times as long and warm it so.
    const slow = { ...rotary.combination.machine, armSpeed: da.combination.machine.armSpeed };
    const slowly = methodChain(
      { ...rotary.combination, machine: slow },
      correctionModel,
      seconds(0),
    );
    const steel = (one: typeof rotary) =>
      one.heat.find(({ skin }) => skin === 'steel')?.perPass ?? 0;
    expect(steel(slowly)).toBeGreaterThan(1.5 * steel(rotary));
  });
});
