import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { micrometres } from '../../../src/base/units.ts';
import {
  isQuicker,
  type RatedCandidate,
  wholeMinutes,
} from '../../../src/correction/plan/choose-steps.ts';
import { fewestSetUps, type PartChoice } from '../../../src/correction/plan/fewest-set-ups.ts';
import { ladder } from '../../../src/correction/removal/combination.ts';
import { stepsId } from '../../../src/correction/removal/step.ts';
import { correctionModel } from '../../../src/formats/models.ts';
import { inFull } from '../../in-full.ts';
import { seededRandom } from '../../samples/seeded-random.ts';

const [rung] = ladder(correctionModel);
if (rung === undefined) throw new Error('the ladder has rungs');

/** A candidate of these combinations, by letters; `pace` in minutes per square metre. */
const using = (letters: string, pace: number): RatedCandidate => ({
  steps: [...letters].map((id) => ({ combination: { ...rung, id }, sets: 1 })),
  removal: { median: micrometres(1), logSd: 0.5, withDepth: 0 },
  strongest: 0,
  pace,
  correction: 0.5,
  mean: 1,
  heldTo: 0.5,
});

/** A part whose candidates are as good for it; the quickest of them is its own best. */
function part(candidates: readonly RatedCandidate[], area = 1): PartChoice {
  const [first, ...rest] = candidates;
  if (first === undefined) throw new Error('a part has a candidate');
  const best = rest.reduce((a, b) => (isQuicker(b, a, { area }) ? b : a), first);
  return { best, equals: candidates, area };
}

const lettersOf = (taken: readonly RatedCandidate[]): readonly string[] =>
  taken.map(({ steps }) => steps.map(({ combination }) => combination.id).join(''));

describe('of ways that are as good on each panel', () => {
  it('the car takes those that need the fewest combinations', () => {
    const bonnet = part([using('ab', 10)]);
    const roof = part([using('ac', 9), using('ab', 10)]);
    const boot = part([using('d', 8), using('b', 12)]);
    expect(lettersOf(fewestSetUps([bonnet, roof, boot]))).toEqual(['ab', 'ab', 'b']);
  });

  it('each panel keeps its own best where no combination is saved', () => {
    const one = part([using('a', 9), using('b', 10)]);
    const other = part([using('ca', 9), using('cd', 10)]);
    expect(lettersOf(fewestSetUps([one, other]))).toEqual(['a', 'ca']);
  });

  it('the quicker of two that save as much is taken, and of two as quick the first by name', () => {
    const shared = (x: number, y: number) => [
      part([using('p', 1), using('x', x), using('y', y)]),
      part([using('q', 1), using('x', x), using('y', y)]),
    ];
    expect(lettersOf(fewestSetUps(shared(9, 8)))).toEqual(['y', 'y']);
    expect(lettersOf(fewestSetUps(shared(8, 8)))).toEqual(['x', 'x']);
  });

  it('the first by name is taken of as quick ones, in whatever order they are found', () => {
    // Of two combinations p with z, and q with a, would do; the bonnet is looked at first, by p before q.
    const bonnet = part([using('r', 1), using('p', 10), using('q', 10)]);
    const roof = part([using('st', 1), using('uv', 1), using('pz', 10), using('aq', 10)]);
    expect(lettersOf(fewestSetUps([bonnet, roof]))).toEqual(['q', 'aq']);
  });

  it('nothing is made of no panel at all', () => {
    expect(fewestSetUps([])).toEqual([]);
  });
});

const aPart = fc
  .record({
    candidates: fc.uniqueArray(
      fc.record({
        letters: fc
          .subarray(['a', 'b', 'c', 'd', 'e', 'f'], { minLength: 1, maxLength: 3 })
          .map((letters) => letters.join('')),
        pace: fc.integer({ min: 5, max: 30 }),
      }),
      { minLength: 1, maxLength: 5, selector: ({ letters }) => letters },
    ),
    area: fc.constantFrom(0.5, 1, 1.7),
  })
  .map(({ candidates, area }) =>
    part(
      candidates.map(({ letters, pace }) => using(letters, pace)),
      area,
    ),
  );
const aCar = fc.array(aPart, { minLength: 1, maxLength: 5 });

const setUps = (taken: readonly RatedCandidate[]): number =>
  new Set(taken.flatMap(({ steps }) => steps.map(({ combination }) => combination.id))).size;

const minutes = (taken: readonly RatedCandidate[], parts: readonly PartChoice[]): number =>
  taken.reduce((sum, one, i) => sum + wholeMinutes(one, parts[i] ?? { area: Number.NaN }), 0);

/** Every way to give each part one of its candidates. */
const everyWay = (parts: readonly PartChoice[]): readonly (readonly RatedCandidate[])[] =>
  parts.reduce<readonly (readonly RatedCandidate[])[]>(
    (ways, { equals }) => ways.flatMap((way) => equals.map((one) => [...way, one])),
    [[]],
  );

const RUNS = { numRuns: 2000, seed: 77 };

describe('the combinations of a car', () => {
  it('are as few, and take as few minutes, as any way there is', () => {
    let saved = 0;
    fc.assert(
      fc.property(aCar, (parts) => {
        const taken = fewestSetUps(parts);
        const own = parts.map(({ best }) => best);
        const ways = everyWay(parts);
        const fewest = Math.min(...ways.map(setUps));
        expect(setUps(taken)).toBe(fewest);
        if (fewest === setUps(own)) {
          expect(taken).toEqual(own);
          return;
        }
        saved += 1;
        const least = Math.min(
          ...ways.filter((way) => setUps(way) === fewest).map((way) => minutes(way, parts)),
        );
        expect(minutes(taken, parts)).toBe(least);
      }),
      RUNS,
    );
    if (inFull) expect(saved).toBeGreaterThan(400);
  });

  it('are of each part’s own equals, whatever the order of the parts', () => {
    fc.assert(
      fc.property(aCar, (parts) => {
        const taken = fewestSetUps(parts);
        taken.forEach((one, i) => {
          expect(parts[i]?.equals).toContain(one);
        });
        const turned = fewestSetUps([...parts].reverse()).map(({ steps }) => stepsId(steps));
        expect(turned.reverse()).toEqual(taken.map(({ steps }) => stepsId(steps)));
      }),
      { ...RUNS, numRuns: 500 },
    );
  });

  it('are left as they are where they are too many to look through', () => {
    const letters = [...'abcdefghijklmnopqrstuvwxyzäëïöüåæœøß'];
    const random = seededRandom(7);
    const any = (): string => letters[Math.floor(random() * letters.length)] ?? '';
    const parts = letters.map((_, place) =>
      part([
        using(String.fromCodePoint(0x4e00 + place), 1),
        ...Array.from({ length: 5 }, () => using(any(), 2)),
      ]),
    );
    const own = parts.map(({ best }) => best);
    expect(fewestSetUps(parts)).toEqual(own);
    // Of fewer parts of the same kind some are found to share.
    expect(setUps(fewestSetUps(parts.slice(0, 8)))).toBeLessThan(8);
  });
});
