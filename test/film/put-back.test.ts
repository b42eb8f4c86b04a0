/** Panels are compared for the film that they were painted with: what is known as taken is put back before. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { micrometres } from '../../src/base/units.ts';
import type { PanelFacts, RecordedRemoval } from '../../src/film/film-model.ts';
import type { PanelSurvey, Survey } from '../../src/film/survey.ts';
import { amongSound, fiveAround, onFace, panelOf, plainPanel, surveyOf } from './car-builder.ts';

const OTHERS = ['a', 'b', 'c', 'd', 'e', 'f'] as const;
const UNTOUCHED = 'untouched';

type Other = {
  readonly films: readonly number[];
  readonly taken: number;
  readonly sd: number;
};

type Car = { readonly own: readonly number[]; readonly others: readonly Other[] };

const recordOf = ({ taken, sd }: Pick<Other, 'taken' | 'sd'>): RecordedRemoval | null =>
  taken === 0 ? null : { mean: micrometres(taken), sd: micrometres(sd) };

type KnownOf = (one: Other) => Partial<PanelFacts>;

/** The car as it was, or once film came off the others and is known to have. */
function surveyed({ own, others }: Car, knownOf: KnownOf | null): Survey {
  const isAfter = knownOf !== null;
  const panels = OTHERS.slice(0, others.length);
  const factsOf = (id: string) => {
    const other = others[(panels as readonly string[]).indexOf(id)];
    return { taken: null, ...(other === undefined || !isAfter ? {} : knownOf(other)) };
  };
  return surveyOf({
    panels: [...panels, UNTOUCHED].map((id) => plainPanel(id)),
    readings: [
      ...others.flatMap(({ films, taken }, i) =>
        onFace(panels[i] ?? '', ...films.map((film) => film - (isAfter ? taken : 0))),
      ),
      ...onFace(UNTOUCHED, ...own),
    ],
    factsOf,
  });
}

const recordedExactly: KnownOf = (one) => ({ recorded: recordOf({ ...one, sd: 0 }) });
const asRecorded: KnownOf = (one) => ({ recorded: recordOf(one) });
const asStated: KnownOf = (one) => ({ taken: micrometres(one.taken) });
/** Some of it on record, the rest stated besides. */
const asBoth: KnownOf = (one) => ({
  recorded: recordOf({ taken: Math.floor(one.taken / 3), sd: 0 }),
  taken: micrometres(one.taken - Math.floor(one.taken / 3)),
});

/** Whole micrometres, so that the display's step stays what it was; factory film, thin, repaint and filler. */
const films = fc
  .tuple(
    fc.oneof(
      { weight: 8, arbitrary: fc.integer({ min: 96, max: 130 }) },
      { weight: 1, arbitrary: fc.integer({ min: 84, max: 520 }) },
    ),
    fc.array(fc.integer({ min: -5, max: 5 }), { minLength: 3, maxLength: 5 }),
  )
  .map(([centre, about]) => about.map((one) => centre + one));

const cars: fc.Arbitrary<Car> = fc.record({
  // Neither five nor ten is the step of these.
  own: films.map((own) => [...own, 113]),
  others: fc.array(
    fc.record({
      films,
      taken: fc.integer({ min: 0, max: 14 }),
      sd: fc.integer({ min: 0, max: 30 }).map((tenths) => tenths / 10),
    }),
    { minLength: 1, maxLength: OTHERS.length },
  ),
});

const untouched = (survey: Survey): PanelSurvey => panelOf(survey, UNTOUCHED);
const partBudgets = ({ zones, budget }: PanelSurvey): readonly number[] =>
  zones.length === 0 ? [budget] : zones.map((zone) => zone.budget);

describe('film taken off other panels and known of', () => {
  it.each([
    ['the record is exact', recordedExactly],
    ['the job states it by panel', asStated],
    ['record and job state a part each', asBoth],
  ])('changes nothing of an untouched panel where %s', (_, knownOf) => {
    fc.assert(
      fc.property(cars, (car) => {
        const before = untouched(surveyed(car, null));
        const after = untouched(surveyed(car, knownOf));
        expect(after.condition).toBe(before.condition);
        expect(after.also).toEqual(before.also);
        expect(after.baseline).toBeCloseTo(before.baseline ?? Number.NaN, 9);
        expect(partBudgets(after).length).toBe(partBudgets(before).length);
        partBudgets(after).forEach((budget, i) => {
          expect(budget).toBeCloseTo(partBudgets(before)[i] ?? Number.NaN, 6);
        });
      }),
      { numRuns: 100 },
    );
  });

  it('never frees film of it where the record is not, however unsure that is', () => {
    fc.assert(
      fc.property(cars, (car) => {
        const before = untouched(surveyed(car, null));
        const after = untouched(surveyed(car, asRecorded));
        expect(after.condition).toBe(before.condition);
        partBudgets(after).forEach((budget, i) => {
          expect(budget).toBeLessThanOrEqual((partBudgets(before)[i] ?? Number.NaN) + 1e-6);
        });
      }),
      { numRuns: 100 },
    );
  });
});

describe('what a job states of panels', () => {
  it('says of every panel of the car what an exact record of the same says', () => {
    fc.assert(
      fc.property(cars, (car) => {
        const known = [
          (one: Other) => ({ ...recordedExactly(one), taken: micrometres(0) }),
          asStated,
          asBoth,
        ].map((of) => figuresOf(surveyed(car, of)));
        expect(known[1]).toEqual(known[0]);
        expect(known[2]).toEqual(known[0]);
      }),
      { numRuns: 60 },
    );
  });
  it('is told with the panels that it is put back on, or that it is all of them', () => {
    const told = (factsOf: (id: string) => Partial<PanelFacts>) =>
      amongSound(fiveAround('tested', 110), { factsOf }).survey.notes.map(({ text }) => text);
    const three = { taken: micrometres(3) };
    expect(told(() => three)).toEqual([expect.stringContaining('3.0 µm put back on every panel.')]);
    expect(told((id) => (id === 'tested' ? three : {}))).toEqual([
      expect.stringContaining('3.0 µm put back on tested.'),
    ]);
    expect(told(() => ({ taken: null }))).toEqual([]);
  });
  it('changes no comparison where it is a history of the whole car', () => {
    const panel = (taken: number) =>
      amongSound(fiveAround('tested', 103), { facts: { taken: micrometres(taken) } }).panel;
    const chances = (taken: number) =>
      panel(taken).sureness?.comparisons.map(({ condition, otherSide }) => [
        condition,
        condition === 'refinished' ? 0 : rounded(otherSide),
      ]);
    expect(chances(6)).toEqual(chances(0));
    expect(panel(6).baseline).toBe((panel(0).baseline ?? Number.NaN) + 6);
  });
  it('is of the paint that is there: nothing is put back on one that was painted since', () => {
    const painted = amongSound(fiveAround('tested', 110), {
      factsOf: (id) => (id === 'tested' ? { taken: micrometres(9), paintedDaysAgo: 400 } : {}),
    });
    expect(painted.survey.notes).toEqual([]);
    expect(painted.panel.evidence.map(({ text }) => text).join()).not.toContain('put back');
  });
});

/** What a survey says of each panel, but for the words and facts that tell where it is from. */
const figuresOf = ({ panels, baseline, notes }: Survey) => ({
  baseline: rounded(baseline),
  notes: notes.map(({ code, value }) => [code, value]),
  panels: panels.flatMap((panel) =>
    [panel, ...panel.zones].map((part) => ({
      condition: part.condition,
      also: part.also,
      chances: part.sureness?.comparisons.map(({ otherSide }) => rounded(otherSide)),
      limits: part.limits.map(({ code, value }) => [code, rounded(value)]),
      budget: rounded(part.budget),
      thinnest: rounded(part.thinnest),
      otherSide: rounded(part.otherSide?.budget ?? null),
    })),
  ),
});

/** Sums of the same parts in another order differ in their last digits. */
const rounded = (value: number | null): number | null =>
  value === null ? null : Math.round(value * 1e6) / 1e6;

const cutBackLine = ({ sureness }: PanelSurvey) =>
  sureness?.comparisons.find(({ condition }) => condition === 'cut-back');

const taken = (mean: number, sd = 0): RecordedRemoval => ({
  mean: micrometres(mean),
  sd: micrometres(sd),
});

describe('what a record is uncertain by', () => {
  const car = (sd: number, own = 112) =>
    surveyOf({
      panels: ['a', 'b', 'c', 'd', UNTOUCHED].map((id) => plainPanel(id)),
      readings: [
        ...['a', 'b', 'c', 'd'].flatMap((id) => fiveAround(id, 116)),
        ...fiveAround(UNTOUCHED, own),
      ],
      factsOf: (id) => ({ recorded: id === UNTOUCHED ? null : taken(4, sd) }),
    });

  it('makes the baseline as uncertain as if all records erred alike: 4 of 5 panels by 2 µm, 1.6', () => {
    const [exactly, unsure] = [0, 2].map((sd) => cutBackLine(untouched(car(sd))));
    expect(unsure?.baseline).toBe(120);
    expect((unsure?.standard ?? 0) ** 2 - (exactly?.standard ?? 0) ** 2).toBeCloseTo(1.6 ** 2, 9);
    expect(unsure?.dof).toBe(exactly?.dof);
    expect(unsure?.otherSide).toBeGreaterThan(exactly?.otherSide ?? 1);
  });
  it('makes no panel beyond its line less surely so', () => {
    const [exactly, unsure] = [0, 2].map((sd) => cutBackLine(untouched(car(sd, 106))));
    expect([exactly?.isBeyond, unsure?.isBeyond]).toEqual([true, true]);
    expect(unsure?.otherSide).toBe(exactly?.otherSide);
    expect(exactly?.otherSide).toBeGreaterThan(0.1);
  });
});

describe('a panel from which film went on record', () => {
  const worked = (recorded: RecordedRemoval | null, centre: number): PanelSurvey =>
    amongSound(fiveAround('tested', centre), {
      factsOf: (id) => (id === 'tested' ? { recorded } : {}),
    }).panel;

  it('is held against the others with that put back, and says so', () => {
    const panel = worked(taken(5), 97);
    expect(worked(null, 97).condition).toBe('cut-back');
    expect(panel.condition).toBe('original');
    expect(cutBackLine(panel)?.figure).toBe(102);
    expect(cutBackLine(panel)?.putBack).toBe(5);
    expect(worked(taken(5), 94).evidence.map(({ text }) => text)).toContainEqual(
      expect.stringContaining(
        'with the 5.0 µm taken before put back, mean 99.0 µm is 13.0 µm under',
      ),
    );
  });
  it('has lost that once: what it lacks besides is what went unrecorded', () => {
    // The mean of 94 lacks 18 µm to 112: 5 of it on record, so 13 that nobody knows of.
    const lost = worked(taken(5), 94).topcoat?.told.film.taken.mean;
    expect(lost).toBe(5 + 13);
    expect(worked(null, 94).topcoat?.told.film.taken.mean).toBe(18);
  });
  it('is told the same by a record that is all but exact as by one that is', () => {
    expect(worked(taken(5, Number.MIN_VALUE), 110).budget).toBe(worked(taken(5), 110).budget);
  });
  it('keeps its limits by what is there now', () => {
    // A smallest point of 78 is under the floor of 80, whatever was there before.
    const panel = worked(taken(5), 82);
    expect(panel.also.concat(panel.condition)).toContain('thin');
    expect(panel.limits.find(({ code }) => code === 'total')?.value).toBe(0);
    expect(panel.film?.mean).toBe(82);
  });
  it('gets nothing put back of what its patches alone lost', () => {
    const panel = worked({ ...taken(5), allOver: taken(0) }, 97);
    expect(panel.condition).toBe('cut-back');
    expect(panel.topcoat?.told.film.taken.mean).toBe(5 + 15);
  });
});

describe('panels that face each other', () => {
  const differing = (recorded: RecordedRemoval | null) =>
    surveyOf({
      panels: [
        plainPanel('left', { mirror: 'right' }),
        plainPanel('right', { mirror: 'left' }),
        ...['a', 'b', 'c'].map((id) => plainPanel(id)),
      ],
      readings: [
        ...['right', 'a', 'b', 'c'].flatMap((id) => fiveAround(id, 130)),
        ...fiveAround('left', 104),
      ],
      factsOf: (id) => ({ recorded: id === 'left' ? recorded : null }),
    }).notes.filter(({ code }) => code === 'mirror-difference');

  it('do not differ by what is on record', () => {
    expect(differing(null)).toHaveLength(1);
    expect(differing(taken(6))).toEqual([]);
  });
});
