import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { isSampled, type Mutant } from './sample.ts';
import { type Tried, tally, unkilledLine } from './tally.ts';

const mutant = (line: number, rest: Partial<Tried> = {}): Tried => ({
  fileName: '/home/me/leastcut/src/work/packs.ts',
  mutatorName: 'EqualityOperator',
  replacement: 'a <= b',
  location: { start: { line, column: 8 }, end: { line, column: 13 } },
  status: 'Killed',
  ...rest,
});
const lines = Array.from({ length: 6000 }, (_, i) => i + 1);

describe('a sample of mutants', () => {
  const taken = (
    every: number,
    seed: number,
    of: readonly Mutant[] = lines.map((n) => mutant(n)),
  ) => of.filter((one) => isSampled(one, { every, seed }));

  test('of one in one is all of them', () => {
    expect(taken(1, 7)).toHaveLength(lines.length);
  });

  test('holds about one in so many', () => {
    // Binomial, 6000 of 1/20: 300 with an SD of 16.9.
    for (const seed of [1, 2, 1126]) {
      expect(taken(20, seed).length).toBeGreaterThan(300 - 4 * 16.9);
      expect(taken(20, seed).length).toBeLessThan(300 + 4 * 16.9);
    }
  });

  test('is the same again, in whatever folder the tree lies, and another by another seed', () => {
    const elsewhere = lines.map((n) => mutant(n, { fileName: 'C:\\tree\\src\\work\\packs.ts' }));
    const places = (some: readonly Mutant[]) => some.map(({ location }) => location.start.line);
    expect(places(taken(20, 1, elsewhere))).toEqual(places(taken(20, 1)));
    const by1 = new Set(places(taken(20, 1)));
    const both = places(taken(20, 2)).filter((line) => by1.has(line));
    // Of 300 one in 20 is in the other sample too: 15.
    expect(both.length).toBeLessThan(40);
  });

  test('tells mutants of one place apart', () => {
    const chances = ['a > b', 'a >= b', 'a < b', 'true', 'false'].map(
      (replacement) =>
        taken(
          2,
          1,
          lines.map((n) => mutant(n, { replacement })),
        ).length,
    );
    for (const count of chances) expect(Math.abs(count - 3000)).toBeLessThan(4 * 38.8);
    const alike = lines.filter(
      (n) =>
        isSampled(mutant(n), { every: 2, seed: 1 }) ===
        isSampled(mutant(n, { replacement: 'true' }), { every: 2, seed: 1 }),
    );
    expect(Math.abs(alike.length - 3000)).toBeLessThan(4 * 38.8);
  });
});

describe('the tally of a room', () => {
  const with_ = (count: number, status: string, statusReason?: string): readonly Tried[] =>
    Array.from({ length: count }, (_, i) =>
      mutant(i + 1, { status, ...(statusReason === undefined ? {} : { statusReason }) }),
    );
  const tried = [
    ...with_(88, 'Killed'),
    ...with_(2, 'Timeout', 'Hit limit reached (501/500)'),
    ...with_(3, 'Timeout'),
    ...with_(5, 'Survived'),
    ...with_(2, 'NoCoverage'),
    ...with_(1, 'RuntimeError'),
    ...with_(4, 'Ignored'),
    ...with_(900, 'CompileError'),
  ];

  test('counts as killed what a test or its own endlessness ended, and not what ran out of time', () => {
    expect(tally('work', tried, { every: 1, seed: 1 })).toBe(
      'work, all mutants: 90 of 100 killed, 90.0 %, 2 endless, 3 out of time, 5 survived, 2 not covered, 1 failed to run, 4 static, 900 left out',
    );
  });

  test('of a sample has the exact interval (Clopper and Pearson: 82.4 to 95.1 % of 90 in 100)', () => {
    expect(tally('work', tried, { every: 10, seed: 1126 })).toContain(
      'work, 1 mutant in 10 by seed 1126: 90 of 100 killed, 90.0 % (95 % interval 82.4 % to 95.1 %)',
    );
  });

  test('of no mutant has no share', () => {
    expect(tally('base', [], { every: 1, seed: 1 })).toMatch(
      /^base, all mutants: 0 of 0 killed, 0 endless/,
    );
  });

  test('is never better than the tests were', () => {
    const counts = fc.record({ killed: fc.nat(60), survived: fc.nat(60), late: fc.nat(20) });
    fc.assert(
      fc.property(counts, ({ killed, survived, late }) => {
        const all = [
          ...with_(killed, 'Killed'),
          ...with_(survived, 'Survived'),
          ...with_(late, 'Timeout'),
        ];
        expect(tally('film', all, { every: 3, seed: 1 })).toContain(
          `${killed} of ${killed + survived + late} killed`,
        );
      }),
    );
  });
});

describe('a mutant that no test killed', () => {
  const source = 'const one = 1;\nreturn a < b\n  || long;\n';

  test('is told with its place, what stands there and what it puts in its stead', () => {
    expect(unkilledLine(mutant(2, { status: 'Survived' }), source)).toBe(
      'src/work/packs.ts:2:8 survived, EqualityOperator: a < b → a <= b',
    );
  });

  test('is told on one line where it stands on several', () => {
    const location = { start: { line: 2, column: 8 }, end: { line: 3, column: 10 } };
    expect(
      unkilledLine(mutant(2, { status: 'NoCoverage', location, replacement: 'true' }), source),
    ).toBe('src/work/packs.ts:2:8 not covered, EqualityOperator: a < b || long → true');
  });

  test('is cut short where it is long', () => {
    const replacement = 'x'.repeat(300);
    const line = unkilledLine(mutant(2, { status: 'Timeout', replacement }), source);
    expect(line).toBe(
      `src/work/packs.ts:2:8 out of time, EqualityOperator: a < b → ${'x'.repeat(100)}…`,
    );
  });

  test('is none that was killed, left out or not tried', () => {
    for (const status of ['Killed', 'Ignored', 'CompileError', 'RuntimeError'])
      expect(unkilledLine(mutant(2, { status }), source), status).toBeUndefined();
    const endless = mutant(2, { status: 'Timeout', statusReason: 'Hit limit reached (501/500)' });
    expect(unkilledLine(endless, source)).toBeUndefined();
  });
});
