import { describe, expect, it } from 'vitest';
import { micrometres } from '../../../src/base/units.ts';
import {
  chooseSteps,
  inClasses,
  type RatedCandidate,
  ranked,
  within,
} from '../../../src/correction/plan/choose-steps.ts';
import { combination } from '../spot-trials.ts';

const choice = { equalShortfall: 0.01, removalBin: micrometres(0.1) };

type Figures = { readonly takes: number; readonly clears: number } & Partial<
  Pick<RatedCandidate, 'strongest' | 'pace' | 'mean' | 'heldTo'>
>;

const way = (name: string, { takes, clears, ...rest }: Figures): RatedCandidate => ({
  steps: [{ combination: { ...combination('da/foam-soft/fine'), id: name }, sets: 1 }],
  removal: { median: micrometres(takes), logSd: 0.5, withDepth: 0 },
  mean: takes,
  strongest: 0,
  pace: 10,
  correction: clears,
  heldTo: 0.5,
  ...rest,
});

const allowing = (all: readonly RatedCandidate[], allowed: (heldTo: number) => number) =>
  within(
    ranked(inClasses(all, choice), [...new Set(all.map(({ heldTo }) => heldTo))], (one) => one),
    allowed,
  );
const namesOf = (some: readonly RatedCandidate[]): readonly string[] =>
  some.flatMap(({ steps }) => steps.map((step) => step.combination.id));
const climbOf = (...args: Parameters<typeof allowing>) =>
  allowing(...args).climb.map(({ members }) => namesOf(members));
const chosen = (all: readonly RatedCandidate[], aim: number, area = 1) =>
  chooseSteps(
    allowing(all, () => 9),
    { aim, area, ...choice },
  );

describe('what a part allows', () => {
  it('is what takes just as much as may go, and nothing that takes more', () => {
    const all = [way('a', { takes: 1, clears: 0.5 }), way('b', { takes: 2, clears: 0.8 })];
    expect(climbOf(all, () => 2)).toEqual([['a'], ['b']]);
    expect(climbOf(all, () => 1.99)).toEqual([['a']]);
    expect(climbOf(all, () => 1)).toEqual([['a']]);
    expect(climbOf(all, () => 0.99)).toEqual([]);
  });

  it('is asked at the ln-SD that each is held to', () => {
    const all = [
      way('sure', { takes: 1.5, clears: 0.5, heldTo: 0.4 }),
      way('unsure', { takes: 1.5, clears: 0.5, heldTo: 0.6 }),
    ];
    expect(climbOf(all, (heldTo) => (heldTo > 0.5 ? 1 : 2))).toEqual([['sure']]);
    expect(climbOf(all, () => 1.5)).toEqual([['sure', 'unsure']]);
  });

  it('counts what is as strong and takes as much, to the tenth of a micrometre, as equally mild', () => {
    const all = [
      way('a', { takes: 1.04, clears: 0.5 }),
      way('b', { takes: 1.09, clears: 0.51 }),
      way('c', { takes: 1.11, clears: 0.52 }),
      way('d', { takes: 1.06, clears: 0.53, strongest: 1 }),
    ];
    expect(climbOf(all, () => 9)).toEqual([['a', 'b'], ['c'], ['d']]);
    expect(allowing(all, () => 9)).toMatchObject({ lookedAt: 4, mostCleared: 0.53 });
  });

  it('has everything by a milder strongest step before anything by a harsher one, however much it takes', () => {
    const mild = [0.05, 1.15, 3.05].map((takes, i) =>
      way(`mild-${i}`, { takes, clears: 0.1 + i / 10 }),
    );
    const harsh = [0.05, 1.15].map((takes, i) =>
      way(`harsh-${i}`, { takes, clears: 0.5 + i / 10, strongest: 1 }),
    );
    const harshest = way('harshest', { takes: 0.05, clears: 0.8, strongest: 2 });
    expect(climbOf([harshest, ...harsh, ...mild], () => 9)).toEqual([
      ['mild-0'],
      ['mild-1'],
      ['mild-2'],
      ['harsh-0'],
      ['harsh-1'],
      ['harshest'],
    ]);
  });

  it('is looked for between the least and the most that one of a class takes', () => {
    // As the mean says which class; the median may be another's.
    const all = [1.04, 1.01, 1.08, 1.05].map((takes) =>
      way(`${takes}`, { takes, clears: 0.5, mean: 1.2 }),
    );
    expect(inClasses([...all, way('c', { takes: 3, clears: 0.9 })], choice)).toMatchObject({
      count: 5,
      leastRemoval: [1.01, 3],
      mostRemoval: [1.08, 3],
    });
  });

  it('leaves out a class of which what may go clears no more, though what may not would', () => {
    const all = [
      way('mild', { takes: 1, clears: 0.5 }),
      way('strong', { takes: 1, clears: 0.5, strongest: 1 }),
      way('too-much', { takes: 1.05, clears: 0.9, strongest: 1 }),
    ];
    expect(climbOf(all, () => 1.04)).toEqual([['mild']]);
    expect(climbOf(all, () => 1.05)).toEqual([['mild'], ['strong', 'too-much']]);
  });

  it('leaves out what clears no more than something milder', () => {
    const mild = way('mild', { takes: 1, clears: 0.5 });
    const strong = (clears: number) => way('strong', { takes: 1, clears, strongest: 1 });
    expect(climbOf([strong(0.5), mild], () => 9)).toEqual([['mild']]);
    expect(climbOf([strong(0.51), mild], () => 9)).toEqual([['mild'], ['strong']]);
  });

  it('is a way even where it clears nothing, if nothing milder is', () => {
    expect(climbOf([way('a', { takes: 1, clears: 0 })], () => 9)).toEqual([['a']]);
    expect(allowing([way('a', { takes: 1, clears: 0 })], () => 0.5)).toEqual({
      lookedAt: 1,
      mostCleared: 0,
      isHeldByFilm: true,
      climb: [],
    });
  });

  it('is held by the film as soon as one way takes more than may go, and else by what there is', () => {
    const all = [way('mild', { takes: 1, clears: 0.3 }), way('most', { takes: 2, clears: 0.6 })];
    const isHeld = (may: number) => allowing(all, () => may).isHeldByFilm;
    expect([1.5, 1.99, 2, 9].map(isHeld)).toEqual([true, true, false, false]);
    expect(allowing([], () => 9).isHeldByFilm).toBe(false);
  });
});

describe('of what may go', () => {
  const mild = (clears: number) => way('mild', { takes: 1, clears });
  const strong = way('strong', { takes: 2, clears: 0.9, strongest: 1 });

  it('the mildest that reaches the aim, or lacks a point of it, is taken', () => {
    const taken = (clears: number) => namesOf(chosen([strong, mild(clears)], 0.8)?.equals ?? []);
    expect(taken(0.85)).toEqual(['mild']);
    expect(taken(0.8 - 0.01)).toEqual(['mild']);
    expect(taken(0.789)).toEqual(['strong']);
  });

  it('what lacks a point of the most that can be cleared is as good, where none reaches the aim', () => {
    expect(namesOf(chosen([strong, mild(0.895)], 0.99)?.equals ?? [])).toEqual(['mild']);
    expect(namesOf(chosen([strong, mild(0.885)], 0.99)?.equals ?? [])).toEqual(['strong']);
  });

  it('one that clears less than its equals is none of them', () => {
    const all = [way('more', { takes: 1, clears: 0.82 }), way('less', { takes: 1, clears: 0.7 })];
    expect(namesOf(chosen(all, 0.8)?.equals ?? [])).toEqual(['more']);
  });

  it('the quickest in whole minutes is the best of equals, and of as quick ones the first by name', () => {
    const all = (pace: number) => [
      way('b', { takes: 1, clears: 0.8, pace: 9.6 }),
      way('a', { takes: 1, clears: 0.8, pace }),
    ];
    const best = (pace: number, area?: number) => {
      const found = chosen(all(pace), 0.8, area);
      return found && namesOf([found.best]);
    };
    expect(best(10.4)).toEqual(['a']);
    expect(best(10.6)).toEqual(['b']);
    expect(best(10.4, 3)).toEqual(['b']);
    expect(best(8)).toEqual(['a']);
  });

  it('nothing is taken where nothing may go', () => {
    const none = allowing([strong], () => 1);
    expect(chooseSteps(none, { aim: 0.8, area: 1, ...choice })).toBeUndefined();
  });
});
