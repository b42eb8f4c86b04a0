/**
 * Less film never allows more: neither on the panel that reads less, nor on another.
 *
 * Held while most panels agree: panels that read like repaint to a third of the others were painted over, as these show
 * (see `car-baseline.ts`). What one panel reads moves the usual film of the car: every micrometre by which that falls
 * makes a repaint of all less likely, and the others less thin, which may free up to `PER_MICROMETRE`. Besides, it moves
 * what the usual film is uncertain by (the scatter of few panels about it), and how much film is held to vary over a
 * panel: `OWN` on the panel itself, `OTHERS` on one beside it, where nine cars in ten keep to `MOSTLY`.
 */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { PanelFacts } from '../../src/film/film-model.ts';
import type { Survey } from '../../src/film/survey.ts';
import { fiveAround, onFace, panelOf, plainPanel, surveyOf } from './car-builder.ts';

const OWN = 0.5;
const OTHERS = 0.5;
const PER_MICROMETRE = 1;
/** What nine cars in ten keep to. */
const MOSTLY = 0.2;

type Car = {
  /** Each panel's points. */
  readonly films: readonly (readonly number[])[];
  /** Panels that were lowered or raised: under a third. */
  readonly odd: number;
  readonly galvanised: boolean;
};

const tenth = (value: number): number => Math.round(10 * value) / 10;
const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });

/** Six to twelve panels of one usual film, of which fewer than a third read up to 60 µm less or more. */
const cars: fc.Arbitrary<Car> = fc
  .record({
    base: fc.integer({ min: 90, max: 175 }),
    panels: fc.integer({ min: 6, max: 12 }),
    points: fc.integer({ min: 2, max: 6 }),
    moved: fc.array(fc.integer({ min: -60, max: 60 }), { minLength: 0, maxLength: 3 }),
    galvanised: fc.boolean(),
  })
  .chain(({ base, panels, points, moved, galvanised }) => {
    // The first panel is the one that is lowered or raised by the law.
    const odd = moved.slice(0, Math.ceil(panels / 3) - 2);
    return fc
      .array(
        fc.tuple(
          between(-4, 4),
          fc.array(between(-3, 3), { minLength: points, maxLength: points }),
        ),
        { minLength: panels, maxLength: panels },
      )
      .map((drawn) => ({
        films: drawn.map(([own, within], i) =>
          within.map((one) => tenth(base + own + one + (i === 0 ? 0 : (odd[i - 1] ?? 0)))),
        ),
        odd: odd.length,
        galvanised,
      }));
  });

const idOf = (i: number): string => `p${i}`;

function surveyed(
  films: Car['films'],
  facts: Partial<PanelFacts>,
  factsOf: (id: string) => Partial<PanelFacts> = () => ({}),
): Survey {
  return surveyOf({
    panels: films.map((_, i) => plainPanel(idOf(i))),
    readings: films.flatMap((points, i) => onFace(idOf(i), ...points)),
    facts: { taken: null, ...facts },
    factsOf,
  });
}

const withFirst = (films: Car['films'], by: number): Car['films'] =>
  films.map((points, i) => (i === 0 ? points.map((one) => tenth(one + by)) : points));

const budgets = (survey: Survey): readonly number[] => survey.panels.map(({ budget }) => budget);

/** By each step of a ladder what may go, panel by panel. */
const ladder = ({ films, galvanised }: Car, steps: readonly number[]) =>
  steps.map((by) => {
    const survey = surveyed(withFirst(films, by), { galvanised });
    return { by, usual: survey.baseline ?? Number.NaN, allowed: budgets(survey) };
  });

const DEPTHS = Array.from({ length: 21 }, (_, i) => -3 * i);
const HEIGHTS = Array.from({ length: 21 }, (_, i) => 6 * i);

/** The most that a panel gained over any earlier step of its ladder, beyond what the usual film fell by. */
function mostGained(
  steps: ReturnType<typeof ladder>,
  of: (panel: number) => boolean,
): { readonly gain: number; readonly said: string } {
  let most = { gain: 0, said: '' };
  for (const [i, later] of steps.entries()) {
    for (const before of steps.slice(0, i)) {
      const fell = Math.max(0, before.usual - later.usual);
      for (const [panel, now] of later.allowed.entries()) {
        const then = before.allowed[panel] ?? Number.NaN;
        const gain = now - then - PER_MICROMETRE * fell;
        if (!of(panel) || gain <= most.gain) continue;
        most = { gain, said: `panel ${panel} from ${before.by} to ${later.by}: ${then} to ${now}` };
      }
    }
  }
  return most;
}

const runs = { numRuns: 30, seed: 20_261_126, endOnFailure: true };

const gainOf = (car: Car, steps: readonly number[], of: (panel: number) => boolean) =>
  mostGained(ladder(car, steps), of);

describe('a car most of whose panels agree', () => {
  it('allows no more on a panel for reading less, at whatever depth', () => {
    fc.assert(
      fc.property(cars, (car) => {
        const { gain, said } = gainOf(car, DEPTHS, (panel) => panel === 0);
        expect(gain, said).toBeLessThanOrEqual(OWN);
      }),
      runs,
    );
  });

  it.each([
    ['less', DEPTHS],
    ['more', HEIGHTS],
  ] as const)('allows hardly more on any other panel for one that reads %s', (_, steps) => {
    const gains: number[] = [];
    fc.assert(
      fc.property(cars, (car) => {
        const { gain, said } = gainOf(car, steps, (panel) => panel !== 0);
        gains.push(gain);
        expect(gain, said).toBeLessThanOrEqual(OTHERS);
      }),
      runs,
    );
    gains.sort((a, b) => a - b);
    expect(gains[Math.floor(0.9 * gains.length)]).toBeLessThanOrEqual(MOSTLY);
  });

  it('allows nothing on a panel that reads far less than they do', () => {
    fc.assert(
      fc.property(cars, fc.integer({ min: 20, max: 60 }), (car, depth) => {
        const films = withFirst(car.films, -depth - 8);
        expect(budgets(surveyed(films, { galvanised: car.galvanised }))[0]).toBe(0);
      }),
      runs,
    );
  });

  it('allows no more for its steel being galvanised', () => {
    fc.assert(
      fc.property(cars, ({ films }) => {
        const [plain, zinc] = [false, true].map((galvanised) =>
          budgets(surveyed(films, { galvanised })),
        );
        for (const [i, budget] of (zinc ?? []).entries()) {
          expect(budget).toBeLessThanOrEqual((plain?.[i] ?? Number.NaN) + 1e-6);
        }
      }),
      runs,
    );
  });
});

/** Panels about so many µm, five points each; those of which the job says that they were painted again. */
const read = (films: readonly number[], painted: readonly number[] = []): Survey =>
  surveyOf({
    panels: films.map((_, i) => plainPanel(idOf(i))),
    readings: films.flatMap((film, i) => fiveAround(idOf(i), film)),
    factsOf: (id) => (painted.some((i) => idOf(i) === id) ? { paintedDaysAgo: 900 } : {}),
  });

const THICK = [142, 145, 141, 143, 140, 146, 142, 144, 141, 143];

describe('one thin panel among ten that agree on 142 µm', () => {
  const car = read([115, ...THICK]);
  it('is cut back, and nothing may go from it', () => {
    expect(panelOf(car, 'p0').condition).toBe('cut-back');
    expect(panelOf(car, 'p0').budget).toBe(0);
    expect(panelOf(car, 'p0').otherSide?.condition).toBe('original');
    expect(panelOf(car, 'p0').otherSide?.budget).toBeGreaterThan(2);
  });
  it('puts the others in doubt: they may be repaint', () => {
    const other = panelOf(car, 'p1');
    expect(other.condition).toBe('original');
    expect(other.otherSide).toMatchObject({ condition: 'refinished', budget: 0 });
    expect(other.budget).toBeLessThan(read([142, ...THICK]).panels[1]?.budget ?? 0);
  });
  it('is told in both readings, with what settles them', () => {
    const text = car.notes.find(({ code }) => code === 'thin-or-painted')?.text;
    expect(text).toContain('either that is the factory’s film and p0 was cut back');
    expect(text).toContain('or they were painted over and p0 still shows the factory’s film');
    expect(text).toContain('read the clear of p0 by itself');
    expect(
      panelOf(car, 'p1')
        .advice.map(({ text: told }) => told)
        .join(),
    ).toContain('the clear of p0 read');
  });
  it('is the factory’s film once the job says that the others were painted', () => {
    const said = read([115, ...THICK], [1, 2, 3, 4, 5, 6, 7, 8, 9, 10]);
    expect(panelOf(said, 'p0').condition).toBe('original');
    // As of one panel by itself.
    expect(panelOf(said, 'p0').budget).toBeCloseTo(read([115]).panels[0]?.budget ?? 0, 9);
    expect(panelOf(said, 'p0').budget).toBeGreaterThan(0.5);
    expect(panelOf(said, 'p1').budget).toBe(0);
  });
  it('frees the others once its own clear shows that it was cut back', () => {
    const withClear = (mean: number) =>
      surveyOf({
        panels: [115, ...THICK].map((_, i) => plainPanel(idOf(i))),
        readings: [115, ...THICK].flatMap((film, i) => fiveAround(idOf(i), film)),
        factsOf: (id) => (id === 'p0' ? { clear: { mean, sd: 2, of: 'panel' } as never } : {}),
      });
    const [cut, full] = [withClear(16), withClear(44)];
    expect(panelOf(cut, 'p1').budget).toBeGreaterThan(3);
    expect(panelOf(cut, 'p0').budget).toBe(0);
    expect(cut.notes.map(({ code }) => code)).not.toContain('thin-or-painted');
    expect(panelOf(full, 'p1').budget).toBeLessThan(1);
    expect(panelOf(full, 'p0').budget).toBeGreaterThan(2);
  });
});

describe('thin panels that are a third of all', () => {
  const budgetsAt = (films: readonly number[]) => budgets(read(films)).slice(0, 2);
  it('show that the others were painted over, where these read as repaint to them', () => {
    expect(read([118, 118, 165, 165, 165, 165]).panels.map(({ condition }) => condition)).toEqual([
      ...Array(2).fill('original'),
      ...Array(4).fill('refinished'),
    ]);
    for (const budget of budgetsAt([118, 118, 165, 165, 165, 165])) {
      expect(budget).toBeGreaterThan(2);
    }
  });
  it('show nothing where these lie less than a repaint over them', () => {
    expect(budgetsAt([128, 128, 160, 160, 160, 160])).toEqual([0, 0]);
  });
  it('are no third while repaint over the line of any car is counted', () => {
    // Seven panels, of which one reads 240 µm: two in seven.
    expect(budgetsAt([118, 118, 165, 165, 165, 165, 240])).toEqual([0, 0]);
  });
});

describe('an honest car', () => {
  it('of 112 µm is as useful with one panel painted again, or with one cut back', () => {
    const usual = [112, 114, 110, 111, 113, 109, 112, 115];
    for (const odd of [165, 250, 88, 70]) {
      for (const budget of budgets(read([odd, ...usual])).slice(1)) {
        expect(budget).toBeGreaterThan(3);
      }
    }
  });
  it('of 125 µm is with one panel that lacks 25 µm', () => {
    for (const budget of budgets(read([100, ...Array(9).fill(125)])).slice(1)) {
      expect(budget).toBeGreaterThan(3);
    }
  });
});
