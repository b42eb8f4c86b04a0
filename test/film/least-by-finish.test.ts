/** A panel of a finish that nobody knows, by what factories paint of each that it may have. */
import { describe, expect, it } from 'vitest';
import { uncertain } from '../../src/base/uncertainty.ts';
import { micrometres } from '../../src/base/units.ts';
import type { CarBaseline } from '../../src/film/car-baseline.ts';
import { type CarContext, carContext, leastByFinish } from '../../src/film/car-context.ts';
import type { Finish, StatedLayer } from '../../src/film/film-model.ts';
import { gatherPanel } from '../../src/film/gathered-panel.ts';
import { filmModel } from '../../src/formats/models.ts';
import {
  fiveAround,
  knownFacts,
  plainPanel,
  panelOf as surveyedPanel,
  surveyOf,
} from './car-builder.ts';

const panelOf = (finish: 'unknown' | 'clear-over-base') =>
  gatherPanel(plainPanel('roof'), { ...knownFacts, finish }, fiveAround('roof', 110));
const unknown = panelOf('unknown');

function usual(): CarBaseline {
  const { baseline } = carContext([unknown], [unknown], filmModel);
  if (baseline === null) throw new Error('one panel of factory film has a baseline');
  return baseline;
}

const others = (): Readonly<Record<string, CarBaseline>> => {
  const same = usual();
  const { other, galvanised } = same.factories;
  const thinner = micrometres(70);
  const wider = uncertain(other.value, { cars: { contribution: 20, dof: 8 } });
  return {
    'what factories paint': {
      ...same,
      factories: { galvanised, other: { ...other, value: thinner } },
    },
    'what they paint over zinc': {
      ...same,
      factories: { other, galvanised: { ...galvanised, value: thinner } },
    },
    'how that varies over cars': {
      ...same,
      factories: { galvanised, other: { ...other, uncertain: wider } },
    },
    'how its panels vary about it': { ...same, about: { ...same.about, variance: 100 } },
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
  it.each(Object.keys(others()))(
    'is judged again by a finish of which nothing is different but %s',
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

it('is left alone where by one finish its car may be painted over, whose panels show no other film', () => {
  // 135 µm: clear over base by usual film, and over the line of repaint to single-stage (95 + 40 µm) by half a chance.
  const clear = (mean: number): StatedLayer => ({
    mean: micrometres(mean),
    sd: micrometres(0.5),
    of: 'panel',
    within: { sd: micrometres(0.5), dof: 20 },
  });
  const others = Array.from({ length: 8 }, (_, i) => `p${i}`);
  const budgetAs = (finish: Finish): number =>
    surveyedPanel(
      surveyOf({
        panels: [...others, 'roof'].map((id) => plainPanel(id)),
        readings: [...others, 'roof'].flatMap((id) => fiveAround(id, 135)),
        // What the clear of each is known to lack is put back: none shows factory film under a repaint.
        factsOf: (id) => (id === 'roof' ? { finish, clear: clear(26) } : { clear: clear(24) }),
      }),
      'roof',
    ).budget;
  expect(budgetAs('clear-over-base')).toBeGreaterThan(1);
  expect(budgetAs('unknown')).toBe(0);
});
