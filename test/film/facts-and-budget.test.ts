/**
 * What each fact of the job does to a panel, on five panels read alike at 112 µm: sample SD 4 at five
 * points, so that s̃ = 4 on ν = 6 + 4 = 10, v = 16/2 = 8, u = (1 + .02·112)/√3 = 1.8706.
 * By the built-in layers A = 36 − 8 = 28, B = 100 − 8 = 92, g = 28/(28 + 92 + u² + 16/5) = .22100, clear on the
 * thinnest 5 %: 42 − 1.6449·√8 = 37.348, SD √(28·(1 − g) + 2.7055·8/20) = 4.785.
 */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { LEAST_TOLD } from '../../src/base/rounding.ts';
import { micrometres } from '../../src/base/units.ts';
import type { Finish, PanelFacts, StatedLayer } from '../../src/film/film-model.ts';
import { allowanceAgain } from '../../src/film/limits/allowance-at.ts';
import type { LimitCode } from '../../src/film/limits/limit.ts';
import { type PanelSurvey, partsOf } from '../../src/film/survey.ts';
import { evenly } from '../evenly.ts';
import {
  amongSound,
  atLeastPanels,
  byItsPanels,
  byItsWord,
  fiveAround,
  onFace,
  reading,
  standardTerms,
  UNTRIED_LOG_SD,
} from './car-builder.ts';
import { gridBudget } from './grid-risk.ts';

const um = micrometres;
const stated = (mean: number, sd: number, of: StatedLayer['of'] = 'panel'): StatedLayer => ({
  mean: um(mean),
  sd: um(sd),
  of,
});

const tested = (facts: Partial<PanelFacts>, centre = 112): PanelSurvey =>
  amongSound(fiveAround('tested', centre), { factsOf: (id) => (id === 'tested' ? facts : {}) })
    .panel;

const limitOf = (panel: Pick<PanelSurvey, 'limits'>, code: LimitCode): number =>
  panel.limits.find((limit) => limit.code === code)?.value ?? Number.NaN;

/** 1.6449·√8: from the mean of the clear to its thinnest 5 %. */
const TO_THINNEST = 4.6523;
/** e^(−1.6449·.55227): the median that a ceiling of 1 µm allows at 5 % risk. */
const OF_CEILING = 0.403169;

type Row = {
  readonly fact: string;
  readonly facts: Partial<PanelFacts>;
  readonly clear: readonly [mean: number, sd: number];
  readonly floor?: number;
  readonly life: number;
  readonly boundBy: LimitCode;
  readonly effect: 'less' | 'same' | 'more';
  readonly says: string;
};

const rows: readonly Row[] = [
  {
    // 112 is just what is expected: 42 − 4.652; life 12.7·.40317 = 5.120
    fact: 'nothing but the readings',
    facts: {},
    clear: [42 - TO_THINNEST, 4.7848],
    life: 12.7 * OF_CEILING,
    boundBy: 'clear',
    effect: 'same',
    says: 'clear on the thinnest 5 %: 37.3 ± 4.8 µm expected, 22.3 must stay',
  },
  {
    // e = 3 off the clear, 12.7 − 3 of the life limit
    fact: '3 µm taken before',
    facts: { taken: um(3) },
    clear: [39 - TO_THINNEST, 4.7848],
    life: 9.7 * OF_CEILING,
    boundBy: 'clear',
    effect: 'less',
    says: "at most 12.7 µm off over the panel's life, 3.0 µm of it gone",
  },
  {
    // e = 2 off the clear, 4 of the life limit
    fact: 'history unknown',
    facts: { taken: null },
    clear: [40 - TO_THINNEST, 4.7848],
    life: 8.7 * OF_CEILING,
    boundBy: 'clear',
    effect: 'less',
    says: '4.0 µm of it taken to be gone',
  },
  {
    // Held to 112 + 7 it is 5 µm over the line of cut-back film: near it, as zinc varies by √(11² − 10²).
    // U ~ N(77, 11²): B = 121 − 8 = 113, g = 28/147.70 = .18957; 112 is 7 short of 119: 42 − 7·g − 4.652
    fact: 'galvanised',
    facts: { galvanised: true },
    clear: [42 - 7 * 0.18957 - TO_THINNEST, 4.8759],
    life: 12.7 * OF_CEILING,
    boundBy: 'near-line',
    effect: 'less',
    says: 'clear on the thinnest 5 %: 36.0 ± 4.9 µm expected',
  },
  {
    // topcoat N(40, 6²) over N(55, 10²): 112 is thick, which says nothing; life 1 mil
    fact: 'single-stage-solid',
    facts: { finish: 'single-stage-solid' },
    clear: [40 - TO_THINNEST, 4.7848],
    floor: 20,
    life: 25.4 * OF_CEILING,
    boundBy: 'clear',
    effect: 'more',
    says: 'topcoat on the thinnest 5 %: 35.3 ± 4.8 µm expected, 20.0 must stay',
  },
  {
    fact: 'single-stage-metallic',
    facts: { finish: 'single-stage-metallic' },
    clear: [40 - TO_THINNEST, 4.7848],
    floor: 20,
    life: 12.7 * OF_CEILING,
    boundBy: 'clear',
    effect: 'more',
    says: '60 must stay',
  },
  {
    fact: 'lacquer',
    facts: { finish: 'lacquer' },
    clear: [40 - TO_THINNEST, 4.7848],
    floor: 20,
    life: 12.7 * OF_CEILING,
    boundBy: 'clear',
    effect: 'more',
    says: '60 must stay',
  },
  {
    // the clear over base allows less (4.590 against 4.747), and keeps 80 of the total
    fact: 'finish unknown',
    facts: { finish: 'unknown' },
    clear: [42 - TO_THINNEST, 4.7848],
    life: 12.7 * OF_CEILING,
    boundBy: 'clear',
    effect: 'same',
    says: '80 must stay',
  },
  {
    // C ~ N(50, 2²) in place of the prior: g = 4/(4 + 98.70) = .03895, 112 is 8 short of 50 + 70
    fact: 'a clear of 50 ± 2 µm stated of the panel',
    facts: { clear: stated(50, 2) },
    clear: [50 - 8 * 0.03895 - TO_THINNEST, 2.2196],
    life: 12.7 * OF_CEILING,
    boundBy: 'life',
    effect: 'more',
    says: 'clear on the thinnest 5 % by the clear stated: 45.0 ± 2.2 µm expected',
  },
  {
    // what is there now is what was measured: nothing more is taken off it, but the life limit knows
    fact: 'the same, 3 µm taken before',
    facts: { clear: stated(50, 2), taken: um(3) },
    clear: [50 - 8 * 0.03895 - TO_THINNEST, 2.2196],
    life: 9.7 * OF_CEILING,
    boundBy: 'life',
    effect: 'less',
    says: '3.0 µm of it gone',
  },
  {
    // C ~ N(36 − 3, 2² + 3²): g = 13/111.70; 112 is over 33 + 70 and says nothing
    fact: 'a clear of 36 ± 2 µm stated of the car, 3 µm taken before',
    facts: { clear: stated(36, 2, 'car'), taken: um(3) },
    clear: [33 - TO_THINNEST, 3.5453],
    life: 9.7 * OF_CEILING,
    boundBy: 'clear',
    effect: 'less',
    says: 'by the clear stated of the car',
  },
  {
    // C = 112 − 74 = 38 with variance 4² + u² + 3.2 = 22.699
    fact: '74 ± 4 µm under the clear stated of the panel',
    facts: { under: stated(74, 4) },
    clear: [38 - TO_THINNEST, 4.8766],
    life: 12.7 * OF_CEILING,
    boundBy: 'clear',
    effect: 'less',
    says: 'by the total less what is stated under it',
  },
  {
    // the same with 3² more for panels about their car
    fact: '64 ± 4 µm under the clear stated of the car',
    facts: { under: stated(64, 4, 'car') },
    clear: [48 - TO_THINNEST, 5.7255],
    life: 12.7 * OF_CEILING,
    boundBy: 'life',
    effect: 'more',
    says: 'by the total less what is stated of the car under it',
  },
  {
    // zinc is under the paint and in the reading: 112 − (64 + 7), variance 16 + 21 + 6.699
    fact: '64 ± 4 µm under the clear stated of a galvanised panel',
    facts: { under: stated(64, 4), galvanised: true },
    clear: [41 - TO_THINNEST, 6.6919],
    life: 12.7 * OF_CEILING,
    boundBy: 'near-line',
    effect: 'less',
    says: 'by the total less what is stated under it',
  },
  {
    // inverse variances: g = 9/(9 + 22.699) = .28392 of the way from 34 to 112 − 74 = 38
    fact: '34 ± 3 µm of clear and 74 ± 4 µm under it',
    facts: { clear: stated(34, 3), under: stated(74, 4) },
    clear: [34 + 4 * 0.28392 - TO_THINNEST, 2.7435],
    life: 12.7 * OF_CEILING,
    boundBy: 'clear',
    effect: 'less',
    says: 'by the clear stated and the total less what is stated under it',
  },
];

describe('what a fact does to a panel', () => {
  const before = tested({}).budget;

  it.each(rows)('$fact: the budget is $effect', (row) => {
    const panel = tested(row.facts);
    expect(panel.topcoat?.clear.mean).toBeCloseTo(row.clear[0], 3);
    expect(panel.topcoat?.clear.sd).toBeCloseTo(row.clear[1], 3);
    const byClear = gridBudget(...row.clear, row.floor ?? 22.3, UNTRIED_LOG_SD);
    expect(limitOf(byItsWord(panel), 'clear')).toBeCloseTo(byClear, 2);
    expect(limitOf(byItsWord(panel), 'life')).toBeCloseTo(row.life, 3);
    expect(panel.boundBy.code).toBe(row.boundBy);
    expect(panel.budget).toBe(Math.min(...panel.limits.map(({ value }) => value)));
    expect(Math.sign(panel.budget - before)).toBe({ less: -1, same: 0, more: 1 }[row.effect]);
    expect(panel.limits.map(({ text }) => text).join('\n')).toContain(row.says);
  });

  it.each<[string, Partial<PanelFacts>, LimitCode, string]>([
    ['matte', { finish: 'matte' }, 'finish', 'a matte finish is never polished'],
    ['covered', { covered: true }, 'covered', 'covered by film, wrap or coating'],
    ['painted 89 days ago', { paintedDaysAgo: 89 }, 'fresh-paint', 'painted 89 days ago, under 90'],
  ])('%s: nothing may go, whatever the film', (_, facts, code, text) => {
    for (const centre of [70, 90, 112, 150]) {
      const { budget, boundBy } = tested(facts, centre);
      expect(budget).toBe(0);
      expect(boundBy.code).toBe(code);
      expect(boundBy.text).toContain(text);
    }
  });

  it('paint of 90 days is hard, and a repaint that a test spot comes before', () => {
    expect(tested({ paintedDaysAgo: 90 }).boundBy.code).toBe('test-spot');
  });

  it('what is on record adds to what was taken before, with its own uncertainty', () => {
    const panel = tested({ recorded: { mean: um(3), sd: um(1.2) } });
    // A = 28 + 1.44, g = 29.44/(29.44 + 98.70): SD √(29.44·(1 − g) + 1.0822) = 4.8743; life N(9.7, 1.2²) over 0
    expect(panel.topcoat?.clear.mean).toBeCloseTo(39 - TO_THINNEST, 3);
    expect(panel.topcoat?.clear.sd).toBeCloseTo(4.8743, 3);
    expect(limitOf(panel, 'life')).toBeCloseTo(gridBudget(9.7, 1.2, 0, UNTRIED_LOG_SD), 2);
    expect(panel.limits.map(({ text }) => text).join()).toContain(
      '3.0 µm of it gone, 3.0 µm by the film record',
    );
    const unknown = tested({ taken: null, recorded: { mean: um(3), sd: um(1.2) } });
    expect(unknown.topcoat?.clear.mean).toBeCloseTo(37 - TO_THINNEST, 3);
    expect(limitOf(unknown, 'life')).toBeCloseTo(gridBudget(5.7, 1.2, 0, UNTRIED_LOG_SD), 2);
  });

  it('under film or wrap there is one reason to leave a panel, and no talk of a test spot', () => {
    expect(tested({ covered: true }).limits.map(({ code }) => code)).toEqual(['covered']);
  });

  it('a matte or fresh panel does not lower what a test spot may allow on a repaired one', () => {
    const capOf = (facts: Partial<PanelFacts>): number | undefined =>
      amongSound(fiveAround('tested', 320), {
        factsOf: (id) => (id === 'sound-a' ? facts : {}),
      }).panel.evidence.find(({ code }) => code === 'sound-panel-cap')?.value;
    expect(capOf({})).toBeGreaterThan(3);
    expect(capOf({ finish: 'matte' })).toBe(capOf({}));
    expect(capOf({ paintedDaysAgo: 10 })).toBe(capOf({}));
    expect(capOf({ taken: um(3) })).toBeLessThan(capOf({}) ?? 0);
  });

  it('only steel carries zinc', () => {
    const { panel } = amongSound(fiveAround('tested', 112), {
      panel: { substrate: 'aluminium' },
      factsOf: (id) => ({ galvanised: id === 'tested' }),
    });
    expect(panel.budget).toBe(before);
  });

  it('a covered panel says nothing of what the others read like', () => {
    const { survey } = amongSound(fiveAround('tested', 100), {
      factsOf: (id) => ({ covered: id !== 'tested' && id !== 'sound-a' }),
      model: atLeastPanels(2),
    });
    // median of 100 and the one sound panel at 112
    expect(survey.baseline).toBe(106);
  });
});

describe('a clear read by itself', () => {
  const layered = (facts: Partial<PanelFacts> = {}, layer = 'clear') =>
    amongSound(
      [
        ...fiveAround('tested', 112),
        ...[36, 34, 35, 33, 37].map((value, i) => reading('tested', `${i + 1}`, value, { layer })),
      ],
      { factsOf: (id) => (id === 'tested' ? facts : {}) },
    );

  it('stands in the place of the estimate, with its own spread and its gauge’s calibration', () => {
    const { panel, survey } = layered();
    // mean 35; s² = max(2.5, 1.5²) on 4, prior 4² on 6: s̃² = (6·16 + 4·2.5)/10 = 10.6 on ν = 10;
    // s_c² = ((1 + .7)/√3)² + 10.6/5 = .9633 + 2.12 = 3.0833; g = 3.0833/(3.0833 + 94.6 + 6.6992), B = 100 − (16 − 10.6)
    // 112 is over 35 + 70 and says nothing
    const g = 3.0833 / (3.0833 + 94.6 + 6.6992);
    expect(panel.topcoat?.clear.mean).toBeCloseTo(35 - 1.6448536 * Math.sqrt(10.6), 4);
    expect(panel.topcoat?.clear.sd).toBeCloseTo(
      Math.sqrt(3.0833 * (1 - g) + (2.7055 * 10.6) / 20),
      3,
    );
    expect(panel.limits[0]?.text).toContain('thinnest 5 %, as its own layer was read:');
    expect(panel.statistics?.mean).toBe(112);
    expect(survey.notes.map(({ text }) => text)).toEqual([
      '5 readings are of a single layer, not of the whole film: kept apart, used for the clear',
    ]);
  });

  it('gives way to what the job states of the panel, and stands above what it states of the car', () => {
    expect(layered({ clear: stated(50, 2) }).panel.facts.clear).toEqual(stated(50, 2));
    expect(layered({ clear: stated(50, 2, 'car') }).panel.facts.clear?.mean).toBe(35);
  });

  it('is the clear by whichever name the instrument gives it, and no other layer is', () => {
    for (const name of ['clear', 'clear coat', 'clearcoat', 'clear_coat']) {
      expect(layered({}, name).panel.facts.clear?.mean).toBe(35);
    }
    const { panel, survey } = layered({}, 'primer');
    expect(panel.facts.clear).toBeNull();
    expect(survey.notes[0]?.text).toContain('kept apart, not used');
  });

  it('is of the face alone', () => {
    const { panel } = amongSound([
      ...fiveAround('tested', 112),
      reading('tested', 'e', 20, { layer: 'clear', place: 'edge' }),
    ]);
    expect(panel.facts.clear).toBeNull();
  });
});

describe('whatever a panel reads', () => {
  const film = fc.array(evenly(60, 190), {
    minLength: 2,
    maxLength: 6,
  });
  const thickness = evenly(0, 100);
  const sd = evenly(0.5, 12);
  const finish = fc.constantFrom<Finish>(
    'clear-over-base',
    'single-stage-solid',
    'single-stage-metallic',
    'lacquer',
    'unknown',
  );
  const layer = fc.option(
    fc.record({
      mean: thickness.map(um),
      sd: sd.map(um),
      of: fc.constantFrom('panel' as const, 'car' as const),
    }),
  );
  const facts = fc.record({
    finish,
    taken: fc.option(evenly(0, 14).map(um)),
    clear: layer,
    under: layer,
    galvanised: fc.boolean(),
  });
  const budget = (points: readonly number[], said: Partial<PanelFacts>): number =>
    amongSound(onFace('tested', ...points), { factsOf: (id) => (id === 'tested' ? said : {}) })
      .panel.budget;
  /** What a search for the largest removal leaves over clears that are unlike; a page shows hundredths. */
  const TOLERANCE = 1e-4;

  it('more taken before never raises the budget', () => {
    fc.assert(
      fc.property(film, facts, evenly(0, 8), (points, said, more) => {
        const taken = said.taken ?? 0;
        const less = budget(points, { ...said, taken: um(taken + more) });
        expect(less).toBeLessThanOrEqual(budget(points, { ...said, taken: um(taken) }) + TOLERANCE);
      }),
    );
  });

  /** What the built-in layers, or a clear in their place, would read over what was read. */
  const lacking = (points: readonly number[], said: Partial<PanelFacts>): number =>
    (said.clear?.mean ?? 42) + 70 - points.reduce((sum, one) => sum + one, 0) / points.length;

  /** Its parts if none was repaint; null where one reads so. */
  const ifNoRepaint = (
    points: readonly number[],
    said: Partial<PanelFacts>,
  ): readonly PanelSurvey[] | null => {
    const { panel } = amongSound(onFace('tested', ...points), {
      factsOf: (id) => (id === 'tested' ? said : {}),
    });
    const parts = partsOf(panel);
    if (parts.some(({ condition, also }) => [condition, ...also].includes('refinished'))) {
      return null;
    }
    return parts.map((part) => {
      const lost = part.sides.lost.filter(({ condition }) => condition !== 'refinished');
      return { ...part, sides: { ...part.sides, lost } };
    });
  };
  const leastOf = (parts: readonly PanelSurvey[]): number =>
    Math.min(
      ...parts.map(
        (part) => allowanceAgain(part, { terms: standardTerms, model: byItsPanels() }).budget,
      ),
    );

  /** Each part no likelier cut back than with zinc, where neither is so by its word. */
  const asSurely = (
    parts: readonly PanelSurvey[],
    zinc: readonly PanelSurvey[],
  ): readonly PanelSurvey[] =>
    parts.map((part, i) => {
      const { cutBack } = part.sides;
      const other = zinc[i]?.sides.cutBack ?? null;
      if (cutBack === null || cutBack.isBeyond || other?.isBeyond === true) return part;
      const otherSide = Math.min(cutBack.otherSide, other?.otherSide ?? 0);
      return { ...part, sides: { ...part.sides, cutBack: { ...cutBack, otherSide } } };
    });

  /**
   * Zinc brings film nearer to the line of cut-back and is a doubt of its own; as what zinc varies by over cars is held
   * to be known, the sum of both has the thinner tail. So far from the line that film is hardly ever cut back, zinc makes
   * it a little surer still: of that what may go rises by less than a page shows, and of nothing else.
   */
  it('zinc under the paint raises what may go of film within 40 µm of what is held of it, if it is no repaint, by nothing but a thinner tail', () => {
    fc.assert(
      fc.property(film, facts, (points, said) => {
        fc.pre(said.clear === null || said.under === null);
        fc.pre(said.under !== null || lacking(points, said) < 40);
        const plain = ifNoRepaint(points, { ...said, galvanised: false });
        const zinc = ifNoRepaint(points, { ...said, galvanised: true });
        fc.pre(plain !== null && zinc !== null);
        if (plain === null || zinc === null) return;
        expect(leastOf(zinc)).toBeLessThanOrEqual(leastOf(asSurely(plain, zinc)) + TOLERANCE);
        expect(leastOf(zinc)).toBeLessThan(leastOf(plain) + LEAST_TOLD);
      }),
    );
  });

  it('zinc makes film far over the line of cut-back a little surer, by its tail: on 14 degrees of freedom in place of 6', () => {
    const said = { taken: null, clear: stated(43.5366, 0.5, 'car') };
    const of = (galvanised: boolean) =>
      ifNoRepaint([124.31308, 153.47832, 138.44187], { ...said, galvanised }) ?? [];
    const [plain, zinc] = [of(false), of(true)];
    const [line, nearer] = [plain[0]?.sides.cutBack, zinc[0]?.sides.cutBack];
    expect([line?.line, nearer?.line]).toEqual([100, 107]);
    expect([line?.dof, nearer?.dof]).toEqual([expect.closeTo(5.5, 1), expect.closeTo(14.2, 1)]);
    // 38.7/5.90 = 6.57 SDs, and 31.7/7.47 = 4.25.
    expect(line?.otherSide).toBeCloseTo(0.000408, 6);
    expect(nearer?.otherSide).toBeCloseTo(0.000388, 6);
    const risen = leastOf(zinc) - leastOf(plain);
    expect(risen).toBeGreaterThan(0);
    expect(risen).toBeLessThan(0.001);
  });

  it('zinc may raise it where film would else be repaint: a panel that has it reads as much more', () => {
    const said = { taken: um(6.5), under: stated(0, 0.5) };
    const of = (galvanised: boolean) =>
      amongSound(onFace('tested', 123.5, 157.1), {
        factsOf: (id) => (id === 'tested' ? { ...said, galvanised } : {}),
      }).panel;
    const [plain, zinc] = [of(false), of(true)];
    expect([plain.baseline, zinc.baseline]).toEqual([112, 119]);
    expect(plain.sides.lost[0]?.otherSide).toBeGreaterThan(0.05);
    expect(plain.budget).toBe(0);
    expect(zinc.sides.lost[0]?.otherSide).toBeCloseTo(0.0211, 3);
    expect(zinc.budget).toBeGreaterThan(2);
  });

  it('zinc may raise it where both layers are stated and the total contradicts them: it is the weaker witness then', () => {
    // 42 ± 3 over 70 ± 1, and 102 read: held to the total the clear is 32; with zinc 25, but by √21 less surely.
    const said = { clear: stated(42, 3), under: stated(70, 1) };
    const clearOf = (galvanised: boolean) =>
      tested({ ...said, galvanised }, 102).topcoat?.meanClear.mean ?? Number.NaN;
    expect(clearOf(true)).toBeGreaterThan(clearOf(false));
    expect(clearOf(true)).toBeLessThan(42);
  });

  it('a larger stated clear never lowers it, but where what was read contradicts it', () => {
    fc.assert(
      fc.property(film, facts, thickness, sd, thickness, (points, said, mean, spread, more) => {
        const { of } = said.clear ?? { of: 'panel' as const };
        const clear = stated(mean + more, spread, of);
        const thick = amongSound(onFace('tested', ...points), {
          factsOf: (id) => (id === 'tested' ? { ...said, clear } : {}),
        }).panel;
        if (thick.topcoat?.apart !== undefined) return;
        expect(thick.budget).toBeGreaterThanOrEqual(
          budget(points, { ...said, clear: stated(mean, spread, of) }) - TOLERANCE,
        );
      }),
    );
  });

  it('more certainty of what lies under the clear never lowers the clear’s lower quantile', () => {
    fc.assert(
      fc.property(film, facts, thickness, sd, sd, (points, said, mean, spread, more) => {
        const low = (uncertain: number): number => {
          const under = stated(mean, uncertain);
          const { panel } = amongSound(onFace('tested', ...points), {
            factsOf: (id) => (id === 'tested' ? { ...said, clear: null, under } : {}),
          });
          const of = panel.topcoat?.clear;
          // Of a panel in zones it is that of the zone that allows least, of repaint none is known.
          fc.pre(of !== undefined && panel.zones.length === 0);
          return of === undefined ? Number.NaN : of.mean - 1.6448536 * of.sd;
        };
        expect(low(spread)).toBeGreaterThanOrEqual(low(spread + more) - TOLERANCE);
      }),
    );
  });

  it('an unknown finish allows what the stricter of clear over base and metallic single-stage does', () => {
    fc.assert(
      fc.property(film, facts, (points, said) => {
        const of = (one: Finish): number => budget(points, { ...said, finish: one });
        const both = Math.min(of('clear-over-base'), of('single-stage-metallic'));
        expect(of('unknown')).toBeLessThanOrEqual(both + TOLERANCE);
        expect(of('unknown')).toBeGreaterThanOrEqual(both - TOLERANCE);
      }),
    );
  });
});

describe('what earlier work took, with what it may be off by', () => {
  it('counts as the same on record does, and lets less go the less it is known', () => {
    const off = (taken: number, sd: number) => tested({ taken: um(taken), takenSd: um(sd) });
    fc.assert(
      fc.property(evenly(0, 6), evenly(0.1, 4), (taken, sd) => {
        const stated = off(taken, sd);
        const onRecord = tested({ taken: um(0), recorded: { mean: um(taken), sd: um(sd) } });
        expect(stated.budget).toBeCloseTo(onRecord.budget, 9);
        for (const code of ['clear', 'life'] as const) {
          expect(limitOf(stated, code)).toBeCloseTo(limitOf(onRecord, code), 9);
          expect(limitOf(stated, code)).toBeLessThan(limitOf(off(taken, 0), code));
        }
      }),
      { numRuns: 40 },
    );
  });
});
