import { describe, expect, it } from 'vitest';
import { micrometres } from '../../../src/base/units.ts';
import { usefulAdvice } from '../../../src/film/help/useful-advice.ts';
import { type HelpTerms, whatWouldHelp } from '../../../src/film/help/what-would-help.ts';
import { filmModel } from '../../../src/formats/models.ts';
import {
  amongSound,
  type CarOptions,
  fiveAround,
  onFace,
  standardTerms,
  UNTRIED_LOG_SD,
} from '../car-builder.ts';
import { helpTerms } from '../help-terms.ts';

const terms: HelpTerms = helpTerms;
type Options = Omit<Partial<CarOptions>, 'readings' | 'panels'>;

const helpFor = (points: ReturnType<typeof onFace>, options: Options = {}) =>
  whatWouldHelp(amongSound(points, options).panel, terms, filmModel);
const gainOf = (code: string, help: ReturnType<typeof helpFor>) =>
  help.find((one) => one.code === code)?.gain ?? 0;

/** The budget of the tested panel with one thing more known. */
const budget = (points: ReturnType<typeof onFace>, options: Options = {}) =>
  amongSound(points, options).panel.budget;

const unknownHistory = { facts: { taken: null } } as Options;
const five = fiveAround('tested', 106);

describe('what would let more come off a panel', () => {
  it('is told with the budget it frees: for history, that of a panel known to be untouched', () => {
    const gain = gainOf('history', helpFor(five, unknownHistory));
    const untouched = budget(five, { facts: { taken: micrometres(0) } } as Options);
    expect(gain).toBeCloseTo(untouched - budget(five, unknownHistory), 10);
    expect(gain).toBeGreaterThan(0.5);
  });
  it('is told for a test spot by the budget at the ln-SD that a spot leaves', () => {
    expect(UNTRIED_LOG_SD).toBeGreaterThan(terms.logSdAfterSpot);
    const after = budget(five, {
      ...unknownHistory,
      terms: { ...standardTerms, logSd: terms.logSdAfterSpot },
    });
    expect(gainOf('test-spot', helpFor(five, unknownHistory))).toBeCloseTo(
      after - budget(five, unknownHistory),
      10,
    );
  });
  it('is more points until nine, and not beyond', () => {
    const at = (n: number) =>
      helpFor(
        onFace('tested', ...Array.from({ length: n }, (_, k) => 106 + 6 * (k % 3))),
        unknownHistory,
      ).find(({ code }) => code === 'points')?.points;
    expect([at(2), at(3), at(5), at(9)]).toEqual([3, 5, 9, undefined]);
  });
  it('is not history where it is known, and not zinc where that is', () => {
    const known = whatWouldHelp(
      amongSound(five, { facts: { taken: micrometres(1) } } as Options).panel,
      { ...terms, withZinc: null },
      filmModel,
    ).map(({ code }) => code);
    expect(known).not.toContain('history');
    expect(known).not.toContain('zinc');
  });
  it('says of zinc what it would take away', () => {
    const points = fiveAround('tested', 104);
    const { panel } = amongSound(points, unknownHistory);
    const least = micrometres(panel.budget - 0.5);
    const help = whatWouldHelp(panel, { ...terms, withZinc: () => least }, filmModel);
    expect(gainOf('zinc', help)).toBeCloseTo(-0.5, 10);
  });
  it('comes in order of what it gains, points read again among it', () => {
    const again = { code: 'read-again', gain: micrometres(0.4), time: null, points: null } as const;
    const { panel } = amongSound(five, unknownHistory);
    const help = whatWouldHelp(panel, { ...terms, readAgain: () => [again] }, filmModel);
    expect(help).toContain(again);
    const gains = help.map(({ gain }) => gain);
    expect(gains).toEqual([...gains].sort((a, b) => b - a));
    expect(gains.length).toBeGreaterThan(3);
  });
  it('is nothing where the total says nothing of the clear', () => {
    expect(helpFor(onFace('tested', 260, 262, 258, 261, 259), unknownHistory)).toEqual([]);
    expect(helpFor([], unknownHistory)).toEqual([]);
  });
  it('is nothing that leaves a panel as likely a repaint as the risk that may be taken', () => {
    const near = fiveAround('tested', 150);
    const { panel } = amongSound(near, unknownHistory);
    expect([panel.condition, panel.budget]).toEqual(['original', 0]);
    expect(gainOf('history', helpFor(near, unknownHistory))).toBe(0);
    expect(gainOf('test-spot', helpFor(near, unknownHistory))).toBe(0);
  });
  it('is nothing that frees less than a hundredth of a micrometre', () => {
    const matte = { facts: { taken: null, finish: 'matte' } } as Options;
    expect(helpFor(five, matte)).toEqual([]);
  });

  it('is not the clear where that is stated or was read by itself', () => {
    const clear = { mean: micrometres(38), sd: micrometres(2), of: 'panel' } as const;
    const codes = helpFor(five, { facts: { clear } }).map(({ code }) => code);
    expect(codes).not.toContain('clear');
    expect(helpFor(five).map(({ code }) => code)).toContain('clear');
  });
  it('is no test spot where a spot would foretell the removal no better', () => {
    const codes = (logSdAfterSpot: number) =>
      whatWouldHelp(amongSound(five).panel, { ...terms, logSdAfterSpot }, filmModel).map(
        ({ code }) => code,
      );
    expect(codes(UNTRIED_LOG_SD)).not.toContain('test-spot');
    expect(codes(UNTRIED_LOG_SD - 0.1)).toContain('test-spot');
  });
  it('is a test spot elsewhere where its patch takes more than may go from this panel', () => {
    const { panel } = amongSound(five, unknownHistory);
    const isElsewhere = (spotTakes: number | null) =>
      whatWouldHelp(
        panel,
        { ...terms, spotTakes: spotTakes === null ? null : micrometres(spotTakes) },
        filmModel,
      ).find(({ code }) => code === 'test-spot')?.isElsewhere;
    expect(isElsewhere(panel.budget)).toBe(false);
    expect(isElsewhere(panel.budget + 0.01)).toBe(true);
    expect(isElsewhere(null)).toBe(false);
  });
  it('has the time of points and of a clear read by itself, and what an unknown history is at worst', () => {
    const help = helpFor(five, unknownHistory);
    const { measuring, earlier } = filmModel;
    const timeOf = (code: string) => help.find((one) => one.code === code)?.time;
    expect(timeOf('points')).toBe(4 * measuring.pointTime);
    expect(timeOf('clear')).toBe(measuring.clearTime);
    expect(timeOf('test-spot')).toBe(measuring.testSpotTime);
    expect(timeOf('history')).toBeNull();
    const twice = 2 * earlier.unknownClear;
    const history = help.find(({ code }) => code === 'history');
    expect(history?.otherwise?.taken).toBe(twice);
    expect(history?.otherwise?.gain).toBeCloseTo(
      budget(five, { facts: { taken: micrometres(twice) } }) - budget(five, unknownHistory),
      10,
    );
  });

  describe('from a gauge that is checked on shims', () => {
    const unchecked = (points: ReturnType<typeof onFace>, options: Options = {}) =>
      whatWouldHelp(
        amongSound(points, options).panel,
        { ...terms, gaugeKnown: false },
        options.model ?? filmModel,
      ).find(({ code }) => code === 'gauge');
    it('is the budget that a gauge without any error would free, and next to nothing', () => {
      const exact = { ...filmModel.measurement, fixed: micrometres(0), proportional: 0 };
      const freed =
        budget(five, { ...unknownHistory, model: { ...filmModel, measurement: exact } }) -
        budget(five, unknownHistory);
      const found = unchecked(five, unknownHistory);
      expect(found?.gain).toBeCloseTo(freed, 10);
      expect(found?.gain).toBeGreaterThan(0);
      expect(found?.gain).toBeLessThan(0.1);
      expect(found?.doubtShare).toBeLessThan(0.01);
    });
    it('is nothing where another limit binds, and not told once the gauge is known', () => {
      const limits = { ...filmModel.limits, life: micrometres(6) };
      const shortLife: Options = { ...unknownHistory, model: { ...filmModel, limits } };
      const measurement = { ...filmModel.measurement, fixed: micrometres(0), proportional: 0 };
      const exact: Options = { ...unknownHistory, model: { ...filmModel, limits, measurement } };
      expect(amongSound(five, shortLife).panel.boundBy.code).toBe('life');
      expect(budget(five, exact)).toBeCloseTo(budget(five, shortLife), 3);
      expect(unchecked(five, shortLife)?.gain).toBeCloseTo(0, 3);
      expect(helpFor(five, unknownHistory).some(({ code }) => code === 'gauge')).toBe(false);
    });
    it('is not told of a panel from which nothing may go', () => {
      expect(unchecked(fiveAround('tested', 70), unknownHistory)).toBeUndefined();
    });
  });
});

describe('a gain', () => {
  it('ends at the next limit: what is printed can be had', () => {
    // Only the clear is in doubt; once it is read, the limit over the panel's life is what binds.
    const help = helpFor(fiveAround('tested', 112), unknownHistory);
    const { panel } = amongSound(fiveAround('tested', 112), unknownHistory);
    const life = panel.limits.find(({ code }) => code === 'life')?.value ?? Number.NaN;
    expect(panel.boundBy.code).toBe('clear');
    expect(gainOf('clear', help)).toBeCloseTo(life - panel.budget, 6);
  });
  it('of a test spot is had at the limit over the panel’s life too, by the factor on removal that it narrows', () => {
    const shortLife = { ...filmModel, limits: { ...filmModel.limits, life: micrometres(6) } };
    const { panel } = amongSound(five, { model: shortLife });
    expect(panel.boundBy.code).toBe('life');
    const [help] = whatWouldHelp(panel, terms, shortLife).filter(
      ({ code }) => code === 'test-spot',
    );
    // 6 ÷ e^(1.6449·σ), before and after.
    const allowed = (logSd: number) => 6 * Math.exp(-1.6448536 * logSd);
    expect(help?.gain).toBeCloseTo(allowed(0.37) - allowed(UNTRIED_LOG_SD), 6);
  });
  it('of a panel near its line is told from what is worked to, held to both sides again', () => {
    const options: Options = { terms: { totalFloor: micrometres(1) } };
    const near = fiveAround('tested', 102);
    const { panel } = amongSound(near, options);
    expect(panel.boundBy.code).toBe('near-line');
    const help = whatWouldHelp(
      panel,
      { ...terms, removal: { ...standardTerms, totalFloor: micrometres(1) } },
      filmModel,
    );
    const spot = budget(near, { terms: { ...options.terms, logSd: terms.logSdAfterSpot } });
    expect(gainOf('test-spot', help)).toBeCloseTo(spot - panel.budget, 3);
    // A clear that is read reads as on one side or the other: what it frees on each.
    const readAs = (mean: number | undefined): number =>
      budget(near, {
        ...options,
        facts: {
          clear: {
            mean: micrometres(mean ?? Number.NaN),
            sd: filmModel.stated.clearSd,
            of: 'panel',
          },
        },
      }) - panel.budget;
    const clear = help.find(({ code }) => code === 'clear');
    const other = panel.topcoat?.besides.find(({ condition }) => condition === 'cut-back');
    expect(clear?.gain).toBeCloseTo(readAs(panel.topcoat?.meanClear.mean), 6);
    expect(clear?.otherwise?.gain).toBeCloseTo(readAs(other?.topcoat?.meanClear.mean), 6);
    expect(clear?.otherwise?.gain).toBeLessThan(clear?.gain ?? Number.NaN);
  });
  it('is a clear that is read where it frees film only if it comes out the other way', () => {
    const { panel } = amongSound(fiveAround('tested', 97), unknownHistory);
    expect([panel.condition, panel.budget]).toEqual(['cut-back', 0]);
    expect(panel.sides.cutBack?.otherSide).toBeGreaterThan(0.05);
    const help = whatWouldHelp(panel, terms, filmModel);
    const clear = help.find(({ code }) => code === 'clear');
    expect(clear?.gain).toBe(0);
    expect(clear?.otherwise?.gain).toBeGreaterThan(1);
    expect(usefulAdvice(panel, help).map(({ code }) => code)).not.toContain('beyond-help');
  });
});
