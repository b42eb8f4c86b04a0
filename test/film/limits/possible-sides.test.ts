/** What a panel may be besides is left out under a 250th of the stated risk: what that moves is reckoned here. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { at } from '../../../src/base/at.ts';
import { micrometres } from '../../../src/base/units.ts';
import {
  chancesOfLost,
  type PossibleSides,
  withChances,
} from '../../../src/film/condition/possible-sides.ts';
import type { PanelFacts } from '../../../src/film/film-model.ts';
import { allowanceAgain } from '../../../src/film/limits/allowance-at.ts';
import { topcoatRisk } from '../../../src/film/limits/topcoat-risk.ts';
import type { PanelSurvey } from '../../../src/film/survey.ts';
import { filmModel } from '../../../src/formats/models.ts';
import { amongSound, fiveAround, onFace, standardTerms, UNTRIED_LOG_SD } from '../car-builder.ts';

const um = micrometres;
const NO_FLOOR = { ...standardTerms, totalFloor: um(1) };

type Drawn = {
  readonly spread: number;
  readonly count: number;
  readonly facts: Partial<PanelFacts>;
};

const surveyed = ({ spread, count, facts }: Drawn, centre: number, risk: number): PanelSurvey =>
  amongSound(
    onFace('tested', ...Array.from({ length: count }, (_, k) => centre + spread * ((k % 3) - 1))),
    { factsOf: (id) => (id === 'tested' ? facts : {}), terms: { ...NO_FLOOR, risk } },
  ).panel;

/** Whatever the risk, all that the panel may be: nothing is under a 250th of next to none. */
const allSides = (drawn: Drawn, centre: number): PossibleSides =>
  surveyed(drawn, centre, 1e-12).sides;

/** The film at which a chance is just under the share: there what is left out moves the most. */
function justLeftOut(
  [certain, line]: readonly [number, number],
  chanceAt: (centre: number) => number,
  share: number,
): number {
  let [low, high] = [certain, line];
  for (let k = 0; k < 14; k += 1) {
    const middle = (low + high) / 2;
    if (chanceAt(middle) < share) low = middle;
    else high = middle;
  }
  return low;
}

const LINES = {
  refinished: {
    between: [115, 151.9],
    chance: ({ lost }: PossibleSides) =>
      lost.find(({ condition }) => condition === 'refinished')?.otherSide ?? 0,
  },
  'cut-back': {
    between: [125, 100.1],
    chance: ({ cutBack }: PossibleSides) => cutBack?.otherSide ?? 0,
  },
} as const;

const layer = fc.option(
  fc.record({
    mean: fc.double({ min: 30, max: 70, noNaN: true }).map(um),
    sd: fc.double({ min: 0.5, max: 15, noNaN: true }).map(um),
    of: fc.constantFrom('panel' as const, 'car' as const),
  }),
  { freq: 2 },
);
const drawn: fc.Arbitrary<Drawn> = fc.record({
  spread: fc.double({ min: 0.3, max: 8, noNaN: true }),
  count: fc.integer({ min: 2, max: 7 }),
  facts: fc.record({
    taken: fc.constantFrom(null, um(0), um(3)),
    clear: layer,
    finish: fc.constantFrom('clear-over-base' as const, 'single-stage-solid' as const),
  }),
});

/** What may go, with what is left out less without: a panel on the edge of being reckoned with. */
function movedBy(one: Drawn, line: keyof typeof LINES, risk: number): number {
  const { between, chance } = LINES[line];
  const centre = justLeftOut(between, (film) => chance(allSides(one, film)), risk / 250);
  const panel = surveyed(one, centre, risk);
  const whole = allowanceAgain(
    { ...panel, sides: allSides(one, centre) },
    { terms: { ...NO_FLOOR, risk }, model: filmModel },
  );
  return panel.budget - whole.budget;
}

describe('a chance under a 250th of the stated risk', () => {
  test.each([
    ['refinished', 0.05, 0.01],
    ['cut-back', 0.05, 0.01],
    ['refinished', 0.2, 0.02],
    ['cut-back', 0.2, 0.02],
  ] as const)(
    'of film that is %s moves what may go at a risk of %d by under %d µm, wherever it lies',
    (line, risk, most) => {
      const moved: number[] = [];
      fc.assert(
        fc.property(drawn, (one) => {
          const by = movedBy(one, line, risk);
          moved.push(by);
          expect(by).toBeLessThan(most);
          expect(by).toBeGreaterThan(-1e-6);
        }),
        { numRuns: 12 },
      );
      // It does leave something out: a share ten times as large would be over the line.
      expect(Math.max(...moved)).toBeGreaterThan(most / 10);
    },
  );

  test('is left out, and one over it is not', () => {
    const sidesAt = (centre: number) =>
      amongSound(fiveAround('tested', centre), { terms: NO_FLOOR }).panel.sides;
    const chance = (centre: number) =>
      LINES['cut-back'].chance(
        amongSound(fiveAround('tested', centre), { terms: { ...NO_FLOOR, risk: 1e-12 } }).panel
          .sides,
      );
    const centre = justLeftOut([125, 100.1], chance, 0.05 / 250);
    expect(sidesAt(centre).cutBack).toBeNull();
    expect(sidesAt(centre - 0.01).cutBack?.otherSide).toBeGreaterThanOrEqual(0.05 / 250);
  });
});

describe('the chances that nothing may go', () => {
  const line = at(amongSound(fiveAround('tested', 150)).panel.sides.lost, 0);
  const of = (condition: 'filler' | 'refinished', otherSide: number) => ({
    ...line,
    condition,
    otherSide,
  });

  test('are each that of the first line that holds, and what is left is that none does', () => {
    const sides = { lost: [of('filler', 0.2), of('refinished', 0.5)], cutBack: null };
    const { each, none } = chancesOfLost(sides);
    expect(each).toEqual([
      { condition: 'filler', chance: 0.2 },
      { condition: 'refinished', chance: 0.4 },
    ]);
    expect(none).toBeCloseTo(0.4, 12);
    expect(chancesOfLost({ lost: [], cutBack: null })).toEqual({ each: [], none: 1 });
  });

  test('are told anew of every line where more is known', () => {
    const sides = { lost: [of('filler', 0.2), of('refinished', 0.5)], cutBack: line };
    const anew = withChances(sides, ({ otherSide }) => otherSide / 2);
    expect(anew.lost.map(({ otherSide }) => otherSide)).toEqual([0.1, 0.25]);
    expect(anew.cutBack?.otherSide).toBe(line.otherSide / 2);
    expect(withChances({ lost: [], cutBack: null }, () => 1)).toEqual({ lost: [], cutBack: null });
  });

  test('count as a risk whole once anything comes off, and as none before', () => {
    const { topcoat } = amongSound(fiveAround('tested', 146)).panel;
    if (topcoat === null) throw new Error('factory film has a topcoat');
    const [besides] = topcoat.besides;
    expect(besides?.topcoat).toBeNull();
    const at = (median: number) =>
      topcoatRisk(topcoat, { median: um(median), logSd: UNTRIED_LOG_SD });
    expect(at(1e-6) - at(0)).toBeCloseTo(besides?.chance ?? Number.NaN, 8);
  });
});

describe('what a panel may be besides', () => {
  test('is told beside its own word, of film that is thin as well as of film cut back', () => {
    const textOf = (centre: number, totalFloor: number) => {
      const { panel } = amongSound(fiveAround('tested', centre), {
        terms: { totalFloor: um(totalFloor) },
      });
      return [panel.condition, panel.limits[0]?.text];
    };
    const [thin, said] = textOf(102, 97.9);
    expect(thin).toBe('thin');
    expect(said).toMatch(/expected if thin, .* if cut-back \(/);
    expect(textOf(102, 1)[1]).toMatch(/expected if original, .* if cut-back \(/);
    expect(textOf(99, 1)[1]).toMatch(/expected if cut-back, .* if original \(/);
  });
});
