/** Points that the gauge could not show because the film is beyond its range: no reading, and filler all the same. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { assessFilm } from '../../../src/film/assess-film.ts';
import type { OverRange } from '../../../src/film/condition/over-range.ts';
import type { PanelFacts } from '../../../src/film/film-model.ts';
import type { Reading } from '../../../src/film/reading.ts';
import type { Panel } from '../../../src/film/template/template.ts';
import {
  byItsPanels,
  fiveAround,
  knownFacts,
  onFace,
  panelOf,
  plainPanel,
  plainTemplate,
  reading,
  standardTerms,
} from '../car-builder.ts';

const SOUND = ['a', 'b', 'c', 'd'] as const;

type Tested = {
  readonly panel?: Partial<Panel>;
  readonly facts?: Partial<PanelFacts>;
  readonly others?: readonly Reading[];
};

const over = (point: string | null, rest: Partial<OverRange> = {}): OverRange => ({
  panel: 'tested',
  point,
  text: 'OL',
  place: 'face',
  ...rest,
});

const others = SOUND.flatMap((id) => fiveAround(id, 112));

const surveyed = (
  readings: readonly Reading[],
  overRange: readonly OverRange[],
  rest: Tested = {},
) =>
  assessFilm({
    template: plainTemplate(
      ...SOUND.map((id) => plainPanel(id)),
      plainPanel('tested', rest.panel ?? {}),
    ),
    readings: [...(rest.others ?? others), ...readings],
    overRange,
    factsOf: () => ({ ...knownFacts, ...rest.facts }),
    terms: standardTerms,
    model: byItsPanels(),
  });

const tested = (...args: Parameters<typeof surveyed>) => panelOf(surveyed(...args), 'tested');

const FOUR = [
  ...onFace('tested', 112, 113),
  reading('tested', '4', 110),
  reading('tested', '5', 111),
];

describe('a point beyond the range of the gauge', () => {
  it('makes a panel of metal filler, as a point read far over the line does', () => {
    const panel = tested(FOUR, [over('3')]);
    const read = tested([...FOUR, reading('tested', '3', 1500)], []);
    expect(panel.condition).toBe('filler');
    expect(panel.budget).toBe(0);
    expect([panel.condition, panel.budget, panel.boundBy.code]).toEqual([
      read.condition,
      read.budget,
      read.boundBy.code,
    ]);
    expect(panel.advice.map(({ code }) => code)).toContain('test-spot');
  });
  it('does so on aluminium too', () => {
    expect(tested(FOUR, [over('3')], { panel: { substrate: 'aluminium' } }).condition).toBe(
      'filler',
    );
  });
  it('enters no mean and is no point', () => {
    const { points, statistics, overRange } = tested(FOUR, [over('3')]);
    expect(points).toHaveLength(4);
    expect(statistics?.max).toBe(113);
    expect(overRange.map(({ point, text }) => [point, text])).toEqual([['3', 'OL']]);
  });
  it('is to be read again before anything else', () => {
    const [first] = tested(FOUR, [over('3')]).advice;
    expect(first?.code).toBe('read-again');
    expect(first?.text).toContain('read point 3 again');
  });
  it('says which it is, what stood there, and that a lifted probe shows the same', () => {
    const { evidence } = tested(FOUR, [over('3'), over('6', { text: '>2000', place: 'edge' })]);
    expect(evidence.map(({ code, text }) => [code, text])[0]).toEqual([
      'over-range',
      'points 3, 6 (edge) are beyond the range of the gauge ("OL", ">2000"): counts as filler, unless the probe was lifted',
    ]);
  });
  it('says by what it is held, and a panel on filler that was read says what it said', () => {
    const { boundBy, limits } = tested(FOUR, [over('3')]);
    const told =
      'point 3 beyond the range of the gauge, so filler unless the probe was lifted: read again; beyond it again, a test spot comes first';
    expect([boundBy.code, boundBy.text]).toEqual(['test-spot', told]);
    expect(limits.map(({ code, value }) => [code, value])).toEqual([['test-spot', 0]]);
    const read = tested([...FOUR, reading('tested', '6', 700)], [over('3')]);
    expect(read.boundBy.text).not.toContain('range');
  });
  it('is no matter of how near a figure lies to a line', () => {
    const { sureness, otherSide } = tested(FOUR, [over('3')]);
    expect([sureness, otherSide]).toEqual([null, null]);
  });
  it('is settled by a reading at the same point, which shows that the probe was lifted', () => {
    const panel = tested([...FOUR, reading('tested', '3', 111)], [over('3')]);
    expect(panel.condition).toBe('original');
    expect(panel.overRange).toEqual([]);
    expect(panel.budget).toBeGreaterThan(3);
  });
  it('is not settled by a point of that name elsewhere, by the clear alone, or at another point', () => {
    const conditions = [
      tested([...FOUR, reading('tested', '3', 111)], [over('3', { place: 'edge' })]),
      tested([...FOUR, reading('tested', '3', 45, { layer: 'clear' })], [over('3')]),
      tested([...FOUR, reading('tested', '6', 111)], [over('3')]),
      tested(FOUR, [over(null)]),
    ].map(({ condition }) => condition);
    expect(conditions).toEqual(['filler', 'filler', 'filler', 'filler']);
  });
  it('leaves the word to points that read over the line of filler', () => {
    const { evidence, advice, sureness } = tested(
      [...FOUR, reading('tested', '6', 700)],
      [over('3')],
    );
    expect(evidence[0]?.code).toBe('filler');
    expect(advice.some(({ code }) => code === 'read-again')).toBe(false);
    expect(sureness).not.toBeNull();
  });
  it('tells nothing on plastic, or of a panel that is covered', () => {
    const plastic = tested(FOUR, [over('3')], { panel: { substrate: 'plastic' } });
    expect(plastic).toEqual(tested(FOUR, [], { panel: { substrate: 'plastic' } }));
    const covered = tested(FOUR, [over('3')], { facts: { covered: true } });
    expect([covered.condition, ...covered.also]).not.toContain('filler');
    expect(covered.advice.some(({ code }) => code === 'read-again')).toBe(false);
  });
  it('takes the panel from those that make the baseline', () => {
    const makers = (overRange: readonly OverRange[]) =>
      surveyed(FOUR, overRange).baselineMakers.map(({ id }) => id);
    expect(makers([])).toEqual(['a', 'b', 'c', 'd', 'tested']);
    expect(makers([over('3')])).toEqual(['a', 'b', 'c', 'd']);
  });
  it('leaves a panel without any reading unread, and says what the points show', () => {
    const panel = tested([], [over('1'), over('2')]);
    expect(panel.condition).toBe('unread');
    expect(panel.budget).toBe(0);
    expect(panel.evidence.map(({ code }) => code)).toEqual(['unread', 'over-range']);
    expect(panel.advice.map(({ code }) => code)).toEqual(['read-again', 'read']);
    const covered = tested([], [over('1')], { facts: { covered: true } });
    expect(covered.evidence.map(({ code }) => code)).toEqual(['unread', 'covered']);
  });
  it('keeps a panel out of two zones, as filler that is read does', () => {
    const two = onFace('tested', 96, 98, 97, 132, 134, 133);
    expect(tested(two, []).zones).toHaveLength(2);
    expect(tested(two, [over('7')]).zones).toEqual([]);
  });
});

/** Points of one to four panels, one of which is beyond the range instead. */
const cars = fc
  .array(fc.array(fc.integer({ min: 60, max: 240 }), { minLength: 3, maxLength: 6 }), {
    minLength: 1,
    maxLength: 4,
  })
  .chain((films) =>
    fc
      .nat({ max: films.length - 1 })
      .chain((panel) =>
        fc.tuple(
          fc.constant(films),
          fc.constant(panel),
          fc.nat({ max: (films[panel]?.length ?? 1) - 1 }),
        ),
      ),
  );

describe('a reading replaced by a point beyond the range', () => {
  const budgets = (films: readonly (readonly number[])[], at?: readonly [number, number]) => {
    const ids = films.map((_, k) => `p${k}`);
    const all = films.flatMap((ums, k) => onFace(`p${k}`, ...ums));
    const out = at === undefined ? undefined : { panel: `p${at[0]}`, point: `${at[1] + 1}` };
    const { panels } = assessFilm({
      template: plainTemplate(...ids.map((id) => plainPanel(id))),
      readings: all.filter(({ panel, point }) => panel !== out?.panel || point !== out.point),
      overRange: out === undefined ? [] : [{ ...out, text: 'OL', place: 'face' }],
      factsOf: () => knownFacts,
      terms: standardTerms,
      model: byItsPanels(),
    });
    return panels.map(({ budget }) => budget);
  };
  it('lets nothing go from its panel, whatever that and the others read', () => {
    fc.assert(
      fc.property(cars, ([films, panel, point]) => {
        expect(budgets(films, [panel, point])[panel]).toBe(0);
      }),
      { numRuns: 300 },
    );
  });
  it('lets as much go elsewhere as that point read far over the line of filler', () => {
    fc.assert(
      fc.property(cars, ([films, panel, point]) => {
        const withFiller = films.map((ums, k) =>
          k === panel ? ums.map((um, n) => (n === point ? 5000 : um)) : ums,
        );
        expect(budgets(films, [panel, point])).toEqual(budgets(withFiller));
      }),
      { numRuns: 300 },
    );
  });
});
