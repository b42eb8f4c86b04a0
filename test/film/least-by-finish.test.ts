/** A panel of a finish that nobody knows, by what factories paint of each that it may have. */
import { describe, expect, it } from 'vitest';
import { micrometres } from '../../src/base/units.ts';
import type { CarBaseline } from '../../src/film/car-baseline.ts';
import { type CarContext, carContext, leastByFinish } from '../../src/film/car-context.ts';
import { gatherPanel } from '../../src/film/gathered-panel.ts';
import { filmModel } from '../../src/formats/models.ts';
import { fiveAround, knownFacts, plainPanel } from './car-builder.ts';

const panelOf = (finish: 'unknown' | 'clear-over-base') =>
  gatherPanel(plainPanel('roof'), { ...knownFacts, finish }, fiveAround('roof', 110));
const unknown = panelOf('unknown');

/** A baseline of 110 µm, 117 with zinc, and of 80 and 87 if the usual film is repaint. */
function usual(): CarBaseline {
  const context = carContext([unknown], [unknown], filmModel);
  if (context.baseline === null) throw new Error('one panel of factory film has a baseline');
  const at = (um: number) => ({ value: micrometres(um), uncertain: null, from: 'panels' }) as const;
  const film = (um: number) => ({ value: micrometres(um), components: new Map() });
  const shownBy = { panel: plainPanel('roof'), read: micrometres(80), film: micrometres(80) };
  return {
    ...context.baseline,
    other: at(110),
    galvanised: at(117),
    paintedOver: { chance: 0.2, other: film(80), galvanised: film(87), shownBy },
  };
}

const others = (): Readonly<Record<string, CarBaseline>> => {
  const same = usual();
  const { paintedOver } = same;
  if (paintedOver === null) throw new Error('it may be repaint');
  const thinner = micrometres(70);
  return {
    film: { ...same, other: { ...same.other, value: thinner } },
    zinc: { ...same, galvanised: { ...same.galvanised, value: thinner } },
    paintedOver: {
      ...same,
      paintedOver: { ...paintedOver, other: { ...paintedOver.other, value: thinner } },
    },
  };
};

/** The baselines that a panel of this car is judged by. */
function judgedBy(byFinish: CarContext['byFinish'], panel = unknown): readonly unknown[] {
  const context = { ...carContext([panel], [panel], filmModel), baseline: usual(), byFinish };
  const seen: (CarBaseline | null)[] = [];
  leastByFinish(
    panel,
    context,
    ({ baseline }) => seen.push(baseline),
    () => micrometres(1),
  );
  return seen.slice(1);
}

describe('a panel of a finish that nobody knows', () => {
  it.each(['film', 'zinc', 'paintedOver'])(
    'is judged again by a finish of another baseline: by its %s alone',
    (which) => {
      const other = others()[which] ?? null;
      expect(judgedBy([other])).toEqual([other]);
    },
  );
  it('is not judged again by a finish of the same baseline', () => {
    expect(judgedBy([usual(), usual()])).toEqual([]);
  });
  it('is judged again without a baseline where a finish gives none', () => {
    expect(judgedBy([null])).toEqual([null]);
  });
  it('is what allows least, and of two that allow as much what it is as said', () => {
    const context = { ...carContext([unknown], [unknown], filmModel), baseline: usual() };
    const least = (...budgets: readonly number[]): number => {
      const byFinish = Object.values(others()).slice(0, budgets.length - 1);
      let n = 0;
      const judge = () => n++;
      return leastByFinish(unknown, { ...context, byFinish }, judge, (k) =>
        micrometres(budgets[k] ?? Number.NaN),
      );
    };
    expect([least(3, 2, 4), least(3, 4, 2), least(2, 3, 4), least(2, 2, 2)]).toEqual([1, 2, 0, 0]);
  });
});

it('a panel of a finish that is known is judged as said alone', () => {
  expect(judgedBy(Object.values(others()), panelOf('clear-over-base'))).toEqual([]);
});

it('a car has a baseline for each finish only where a panel of an unknown one was read', () => {
  const finishes = (...panels: readonly (typeof unknown)[]) =>
    carContext(panels, panels, filmModel).byFinish.length;
  const unread = gatherPanel(plainPanel('boot'), { ...knownFacts, finish: 'unknown' }, []);
  expect([finishes(unknown), finishes(panelOf('clear-over-base'))]).toEqual([2, 0]);
  expect(finishes(panelOf('clear-over-base'), unread)).toBe(0);
});
