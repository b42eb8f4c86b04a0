import { describe, expect, test } from 'vitest';
import { micrometres } from '../../../src/base/units.ts';
import type { Reading } from '../../../src/film/reading.ts';
import { filmModel } from '../../../src/formats/models.ts';
import { laterRound } from '../../../src/intake/doubts/later-rounds.ts';
import { normal, seededRandom } from '../../samples/seeded-random.ts';
import { panelNames, read } from '../helpers.ts';

type Round = { readonly shift?: number; readonly only?: string; readonly beside?: string };
const POINTS = 5;

/** Twenty points of four panels as one person reads them, each rounded to 0.1 µm. */
function rounds(seed: number, later: Round, points = POINTS): readonly [string[], string[]] {
  const random = seededRandom(seed);
  const film = panelNames.flatMap((panel) =>
    Array.from({ length: points }, (_, k) => ({ panel, k, um: 115 + 6 * normal(random) })),
  );
  const round = ({ shift = 0, only, beside = '' }: Round): string[] =>
    film.map(({ panel, k, um }) => {
      const own = only === undefined || only === panel ? shift : 0;
      return `${panel},${k + 1},${(um + own + normal(random)).toFixed(1)}${beside}`;
    });
  return [round({ beside: later.beside === undefined ? '' : ',a' }), round(later)];
}

const file = (lines: readonly string[], header = 'panel,point,um'): string =>
  `${[header, ...lines].join('\n')}\n`;
const told = (text: string) => {
  const { value, diagnostics } = read(text);
  const one = diagnostics.find(
    ({ code, message }) =>
      code === 'visits-together' || /second round|more than chance/u.test(message),
  );
  return [value === undefined ? 'refused' : 'read', one?.at?.line, one?.message];
};

describe('points that are read again further down', () => {
  const [first, less] = rounds(1, { shift: -6 });

  test('and read less all over are of another visit, though nothing sets them apart', () => {
    const [kind, line, message] = told(file([...first, ...less]));
    expect([kind, line]).toEqual(['refused', 22]);
    expect(message).toMatch(
      /^from here on the same points as above read 6\.\d µm less on the mean of 20 points: another visit/u,
    );
  });

  test('are so without names of points, panel by panel', () => {
    const bare = (lines: readonly string[]) => lines.map((line) => line.replace(/,\d+,/u, ','));
    const [kind, line, message] = told(file([...bare(first), ...bare(less)], 'panel,um'));
    expect([kind, line]).toEqual(['refused', 22]);
    expect(message).toContain('the same panels as above read 6');
  });

  test('name the line, or the text of a column, that sets them apart', () => {
    const line = told(file([...first, 'Jones saloon', ...less]));
    expect(line[2]).toContain('from here on, below "Jones saloon", the same points');
    const [before, after] = rounds(1, { shift: -6, beside: ',b' });
    const column = told(file([...before, ...after], 'panel,point,um,comment'));
    expect(column[2]).toContain('from here on, where "comment" says "b", the same points');
  });

  test('are told by the clock where two rounds of a day are sorted by point', () => {
    const sorted = first.flatMap((row, k) => [
      `${row},2026-03-02 9:${10 + k} AM`,
      `${less[k]},2026-03-02 4:${10 + k} PM`,
    ]);
    const [kind, line] = told(file(sorted, 'panel,point,um,time'));
    expect([kind, line]).toEqual(['refused', 3]);
  });

  test('on one panel alone tell that it was worked', () => {
    const [kind, line, message] = told(file(rounds(2, { shift: -7, only: 'roof' }).flat()));
    expect([kind, line]).toEqual(['refused', 27]);
    expect(message).toContain('the same points of "roof" as above read 7');
  });

  test('and read as before are a second round, which is told', () => {
    const [kind, line, message] = told(file(rounds(3, {}).flat()));
    expect([kind, line]).toEqual(['read', 22]);
    expect(message).toContain('they are taken as a second round');
  });

  test('under numbers of repeats are read, and a shift of them is told', () => {
    const numbered = [...first.map((row) => `${row},1`), ...less.map((row) => `${row},2`)];
    const [kind, line, message] = told(file(numbered, 'panel,point,um,repeat'));
    expect([kind, line]).toEqual(['read', 22]);
    expect(message).toMatch(/repeats from here on read 6\.\d µm less on the mean of 20 points/u);
    const honest = rounds(3, {}).flatMap((round, k) => round.map((row) => `${row},${k + 1}`));
    expect(told(file(honest, 'panel,point,um,repeat'))).toEqual(['read', undefined, undefined]);
  });

  test('straight after each other are repeats of one round, whatever they drift by', () => {
    const straight = first.flatMap((row, k) => [row, less[k] ?? '']);
    expect(told(file(straight))[0]).toBe('read');
  });

  test('on fewer than eight points are too few to tell', () => {
    const few = rounds(4, { shift: -6 }, 1).flat();
    expect(told(file(few))).toEqual(['read', undefined, undefined]);
  });
});

/** The same as readings, for many files. */
const readingsOf = (lines: readonly string[]): readonly Reading[] =>
  lines.map((line, k) => {
    const [panel = '', point = '', um] = line.split(',');
    return {
      ...{ vehicle: null, panel, point, repeat: k < lines.length / 2 ? 1 : 2, layer: '' },
      ...{ thickness: micrometres(Number(um)), place: 'face', marked: false, curved: false },
      origin: { file: 'r.csv', line: k + 2, column: 1 },
    };
  });

test('of 2,000 honest second rounds, of 20 to 60 points, two at most are refused', () => {
  const { measurement: scatter } = filmModel;
  let refused = 0;
  for (let seed = 1; seed <= 2000; seed += 1) {
    const readings = readingsOf(rounds(seed, {}, POINTS + (seed % 11)).flat());
    const round = laterRound(readings, {
      pointsAreNamed: true,
      repeatsAreNumbered: false,
      scatter,
    });
    expect(round).toBeDefined();
    if (round?.agrees === false) refused += 1;
  }
  expect(refused).toBeLessThanOrEqual(2);
});

test('of 200 second rounds 3 µm lower none is read', () => {
  let quiet = 0;
  for (let seed = 1; seed <= 200; seed += 1) {
    if (read(file(rounds(seed, { shift: -3 }).flat())).value !== undefined) quiet += 1;
  }
  expect(quiet).toBe(0);
});

describe('a line between rows that says something else than the one above', () => {
  const cars = (second: string, um: readonly number[]) =>
    `Customer: Miller\npanel,um\nbonnet,112\nroof,121\n${second}\nbonnet,${um[0]}\nroof,${um[1]}\n`;

  test('sets two cars apart, however few their readings', () => {
    const { value, diagnostics } = read(cars('Customer: Jones', [142, 151]));
    expect(value).toBeUndefined();
    expect(diagnostics.find(({ code }) => code === 'visits-together')).toMatchObject({
      at: { line: 5 },
      message: expect.stringContaining('30.0 µm more'),
    });
  });

  test('over readings that agree is a second round, and told', () => {
    expect(read(cars('Customer: Jones', [112, 121])).diagnostics).toContainEqual(
      expect.objectContaining({ code: 'reading-doubted', severity: 'warning' }),
    );
  });

  test('and over the same panels of the same one says nothing new', () => {
    expect(read(cars('Customer: Miller', [112, 121])).diagnostics).toEqual([]);
  });
});
