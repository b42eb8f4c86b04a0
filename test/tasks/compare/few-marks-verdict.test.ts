/**
 * Little was taken of film that has enough to spare, and read honestly: what is said of a panel of which too few points
 * were read, beside panels that were surveyed.
 */
import { describe, expect, test } from 'vitest';
import { normalQuantile } from '../../../src/base/stats/normal.ts';
import { createRandom } from '../../intake/corpus/random.ts';
import { compared } from '../comparing.ts';

const IDS = [
  ...['bonnet', 'roof', 'boot', 'door-front-left', 'door-front-right'],
  ...['door-rear-left', 'door-rear-right'],
] as const;
const ODD = 'door-rear-right';

/** How many points the odd panel has before and after the work; the others have `others`. */
type Points = { readonly others: number; readonly before: number; readonly after: number };

function comparedCar({ others, before, after }: Points, seed: number) {
  const { next } = createRandom(seed);
  const normal = (): number => normalQuantile((next() * 1e6 + 0.5) / (1e6 + 1));
  const rows = IDS.flatMap((id) => {
    const mean = 118 + 2 * normal();
    const count = id === ODD ? before : others;
    return Array.from({ length: count }, (_, i) => {
      const film = mean + 3 * normal();
      const read = (gone: number): string =>
        `${id},${i + 1},${(film - gone + 1.1 * normal()).toFixed(1)}`;
      const isRead = id !== ODD || i < after;
      return { first: read(0), last: isRead ? [read(0.2)] : [] };
    });
  });
  const text = (lines: readonly string[]): string =>
    `panel,point,reading_um\n${lines.join('\n')}\n`;
  const visits = [text(rows.map(({ first }) => first)), text(rows.flatMap(({ last }) => last))];
  return compared({ visits, job: { finish: 'clear-over-base', taken_um: 0 } });
}

const CARS = Array.from({ length: 12 }, (_, i) => i + 1);
const partsOf = (points: Points) =>
  CARS.flatMap((seed) =>
    comparedCar(points, seed).panels.map((panel) => ({
      isOdd: panel.comparison.panel.id === ODD,
      verdict: panel.verdict,
      isOver: panel.overruns.length > 0,
    })),
  );

const some: readonly Points[] = [
  { others: 5, before: 1, after: 1 },
  { others: 5, before: 2, after: 2 },
  { others: 3, before: 2, after: 1 },
  { others: 2, before: 2, after: 2 },
];

describe('a panel with fewer marks than machine work takes', () => {
  test.each(some)('is neither gone on with nor stopped for want of readings: %o', (points) => {
    const odd = partsOf(points).filter(({ isOdd, isOver }) => isOdd && !isOver);
    expect(odd.length).toBeGreaterThan(CARS.length / 2);
    expect(new Set(odd.map(({ verdict }) => verdict))).toEqual(new Set(['unresolved']));
  });

  test('stops no panel beside it that has enough of them', () => {
    const others = some
      .filter((points) => points.others > 2)
      .flatMap(partsOf)
      .filter(({ isOdd }) => !isOdd);
    const stopped = others.filter(({ verdict }) => verdict === 'stop');
    expect(stopped.length).toBeLessThanOrEqual(0.05 * others.length);
    expect(others.filter(({ verdict }) => verdict === 'go-on').length).toBeGreaterThan(
      0.9 * others.length,
    );
  });
});

test('a panel surveyed before, of which few marks were read again, goes by what might go then', () => {
  const odd = partsOf({ others: 5, before: 5, after: 2 }).filter(({ isOdd }) => isOdd);
  expect(odd.filter(({ verdict }) => verdict === 'go-on').length).toBeGreaterThan(0.7 * odd.length);
  expect(odd.some(({ verdict }) => verdict === 'stop')).toBe(false);
});
