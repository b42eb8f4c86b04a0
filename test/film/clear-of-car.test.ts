/** A panel whose clear nobody read, on a car where that of others was. */
import { expect, test } from 'vitest';
import { micrometres } from '../../src/base/units.ts';
import type { Finish, PanelFacts } from '../../src/film/film-model.ts';
import { whatWouldHelp } from '../../src/film/help/what-would-help.ts';
import type { Reading } from '../../src/film/reading.ts';
import type { PanelSurvey } from '../../src/film/survey.ts';
import { filmModel } from '../../src/formats/models.ts';
import { fiveAround, onFace, panelOf, plainPanel, reading, surveyOf } from './car-builder.ts';
import { helpTerms } from './help-terms.ts';

const OTHERS = ['a', 'b', 'c', 'd', 'e', 'f', 'g', 'h', 'i', 'j'];

const clearOf = (panel: string, centre: number): readonly Reading[] =>
  [0, 1, -1, 2, -2].map((off, i) => reading(panel, `${i + 1}`, centre + off, { layer: 'clear' }));

type Rest = {
  readonly total?: number;
  readonly factsOf?: (id: string) => Partial<PanelFacts>;
  readonly roof?: readonly Reading[];
};

/** Panels at 120 µm, a clear read on so many of them as figures are given, and a roof whose total alone was read. */
const roofBeside = (
  clears: readonly number[],
  { total = 120, factsOf, roof = [] }: Rest = {},
): PanelSurvey => {
  const ids = [...OTHERS, 'roof'];
  const survey = surveyOf({
    panels: ids.map((id) => plainPanel(id)),
    readings: [
      ...OTHERS.flatMap((id) => fiveAround(id, total)),
      ...onFace('roof', 120, 123, 116, 122, 119),
      ...clears.flatMap((um, i) => clearOf(OTHERS[i] as string, um)),
      ...roof,
    ],
    ...(factsOf === undefined ? {} : { factsOf }),
  });
  return panelOf(survey, 'roof');
};

const layer = (um: number, of: 'panel' | 'car', sd = 3) => ({
  mean: micrometres(um),
  sd: micrometres(sd),
  of,
});

const stated =
  (facts: Readonly<Record<string, Partial<PanelFacts>>>) =>
  (id: string): Partial<PanelFacts> =>
    facts[id] ?? {};

const onAll = (um: number): readonly number[] => OTHERS.map(() => um);

test('clear that is read at 24 µm on ten panels leaves nothing to go from the eleventh', () => {
  const { budget, limits, topcoat, facts } = roofBeside(onAll(24));
  expect(roofBeside([]).budget).toBeGreaterThan(3);
  expect(budget).toBe(0);
  expect(facts.clear).toBeNull();
  // Of the car 24 ± √(3²/10 + …), drawn a little towards 42 ± √(6² − 3²); the roof 3 µm about that.
  expect(topcoat?.told.knowledge.statedClear?.mean).toBeGreaterThan(24);
  expect(topcoat?.told.knowledge.statedClear?.mean).toBeLessThan(26);
  expect(limits.find(({ code }) => code === 'clear')?.text).toContain(
    'by the clear of the car as read on 10 panels',
  );
});

test('clear that is read on one panel is drawn towards what factories paint by the share that their variances give', () => {
  const { topcoat, facts } = roofBeside([24]);
  const [clearElsewhere] = facts.clearElsewhere ?? [];
  const share = 27 / (27 + (clearElsewhere?.sd ?? 0) ** 2);
  expect(clearElsewhere?.mean).toBeCloseTo(24, 12);
  expect(clearElsewhere?.sd).toBeGreaterThan(3);
  expect(topcoat?.told.knowledge.statedClear?.mean).toBeCloseTo(42 - share * 18, 9);
  expect(topcoat?.told.knowledge.statedClear?.sd).toBeCloseTo(Math.sqrt(27 * (1 - share)), 9);
});

test('clear that is read elsewhere never raises what may go, and thinner clear never does', () => {
  const before = roofBeside([]).budget;
  for (const count of [1, 3, 10]) {
    const budgets = [60, 50, 45, 42, 40, 38, 36, 34, 30, 27, 24, 15].map(
      (um) => roofBeside(onAll(um).slice(0, count)).budget,
    );
    budgets.forEach((budget, i) => {
      expect(budget).toBeLessThanOrEqual(i === 0 ? before : (budgets[i - 1] as number));
    });
    expect(budgets[0]).toBe(before);
    expect(budgets.at(-1)).toBeLessThan(before);
  }
});

test('one panel whose clear is thinner lowers it as well, and one that is thicker does not', () => {
  const [thin, alike, thick] = [26, 32, 38].map((um) => roofBeside([32, 32, um]).budget);
  expect(thin).toBeLessThan(alike as number);
  expect(thick).toBeGreaterThanOrEqual(alike as number);
});

test('a car of which no clear was read has none told by others', () => {
  expect(roofBeside([]).facts.clearElsewhere).toBeUndefined();
  expect(roofBeside([]).topcoat?.told.knowledge.statedClear).toBeNull();
});

test('a panel whose own clear is read, or stated of it, is judged by that', () => {
  const own = roofBeside(onAll(24), { roof: clearOf('roof', 45) });
  expect(own.budget).toBe(roofBeside([], { roof: clearOf('roof', 45) }).budget);
  const factsOf = stated({ roof: { clear: layer(44, 'panel') } });
  expect(roofBeside(onAll(24), { factsOf }).budget).toBe(roofBeside([], { factsOf }).budget);
});

test('clear of panels that are repaint, cut back, covered or of another finish says nothing of the rest', () => {
  const before = roofBeside([]).budget;
  const of = (facts: Partial<PanelFacts>) => (id: string) => (id === 'a' ? facts : {});
  const told = [
    { covered: true },
    { paintedDaysAgo: 400 },
    { clearCoatFailure: true },
    { finish: 'single-stage-solid' as Finish },
  ];
  for (const facts of told) {
    const { facts: found } = roofBeside([24], { factsOf: of(facts) });
    expect(found.clearElsewhere).toBeUndefined();
  }
  const readAt = (um: number): PanelSurvey =>
    panelOf(
      surveyOf({
        panels: ['a', ...OTHERS.slice(1), 'roof'].map((id) => plainPanel(id)),
        readings: [
          ...fiveAround('a', um),
          ...clearOf('a', 24),
          ...OTHERS.slice(1).flatMap((id) => fiveAround(id, 120)),
          ...onFace('roof', 120, 123, 116, 122, 119),
        ],
      }),
      'roof',
    );
  expect(readAt(120).facts.clearElsewhere?.[0]?.panels).toBe(1);
  expect(readAt(240).facts.clearElsewhere).toBeUndefined();
  expect(readAt(100).facts.clearElsewhere).toBeUndefined();
  expect(before).toBeGreaterThan(0);
});

test('what earlier work is known to have taken where the clear was read is put back', () => {
  const polished = (id: string) => (id === 'roof' ? {} : { taken: micrometres(8) });
  const { facts } = roofBeside(onAll(30), { total: 112, factsOf: polished });
  expect(facts.clearElsewhere?.[0]?.mean).toBeCloseTo(38, 12);
  expect(facts.clearElsewhere?.[0]?.panels).toBe(10);
});

test('its own clear read would free film where it reads as factories paint, and is told with both', () => {
  const clearOn = (panel: PanelSurvey) =>
    whatWouldHelp(panel, helpTerms, filmModel).find(({ code }) => code === 'clear');
  const held = clearOn(roofBeside(onAll(24)));
  expect(held?.gain).toBe(0);
  expect(held?.otherwise?.asPainted).toBe(true);
  expect(held?.otherwise?.gain).toBeGreaterThan(2);
  expect(clearOn(roofBeside([]))?.otherwise).toBeUndefined();
});
