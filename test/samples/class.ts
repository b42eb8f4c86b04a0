/**
 * A class of five on one car, for the trainer: crosses of masking tape at four points of each of the eleven
 * metal panels, every cross read twice, one gauge for everybody.
 *
 * Factory film, a rear quarter painted again and a low spot on the bonnet. Anneke reads well. Bram presses and
 * reads 8 µm too much everywhere. Caja forgets two panels and misplaces a decimal mark. Dov mixes up left and
 * right. Elif reads well, in mil.
 */
import { micrometres, micrometresToMil } from '../../src/base/units.ts';
import { panelsToRead } from './invented-film.ts';
import { normal, seededRandom } from './seeded-random.ts';
import { json, table } from './text-files.ts';

const SEED = 2026;
const POINTS = ['1', '2', '3', '4'];
const REPEATS = 2;

type Film = ReadonlyMap<string, readonly number[]>;
type Row = { readonly panel: string; readonly point: string; readonly value: number };

const isMetal = (panel: string): boolean => !panel.startsWith('bumper');

/** Film at the crosses. */
function drawFilm(random: () => number): Film {
  return new Map(
    panelsToRead('saloon')
      .filter(isMetal)
      .map((panel) => {
        const repainted = panel === 'quarter-left';
        const centre = repainted ? 236 : 116 + 4 * normal(random);
        const points = POINTS.map(() => centre + (repainted ? 9 : 3.5) * normal(random));
        if (panel === 'bonnet') points[2] = 84;
        return [panel, points] as const;
      }),
  );
}

function read(
  random: () => number,
  film: Film,
  { bias = 0, repeatability = 1.2 } = {},
): readonly Row[] {
  return [...film].flatMap(([panel, points]) =>
    points.flatMap((at, k) =>
      Array.from({ length: REPEATS }, () => ({
        panel,
        point: POINTS[k] ?? '',
        value: at + bias + repeatability * normal(random),
      })),
    ),
  );
}

const otherSide = (panel: string): string =>
  panel.endsWith('-left') ? panel.replace(/-left$/, '-right') : panel.replace(/-right$/, '-left');

const HEADER = ['panel', 'point', 'repeat', 'reading_um', 'marked'];
const micrometreRows = (rows: readonly Row[]): readonly (readonly string[])[] =>
  rows.map(({ panel, point, value }, i) => [panel, point, repeatOf(i), value.toFixed(1), 'yes']);
const repeatOf = (index: number): string => String((index % REPEATS) + 1);
const file = (rows: readonly Row[], operator?: string): string => {
  const [header, ...cells] = [HEADER, ...micrometreRows(rows)];
  return operator === undefined
    ? table([header ?? [], ...cells], ',')
    : table(
        [
          [...(header ?? []), 'operator', 'time'],
          ...cells.map((row) => [...row, operator, '2026-10-05']),
        ],
        ',',
      );
};

const inMil = (rows: readonly Row[]): string =>
  table(
    [
      ['panel', 'point', 'repeat', 'reading_mil', 'marked'],
      ...rows.map(({ panel, point, value }, i) => [
        panel,
        point,
        repeatOf(i),
        micrometresToMil(micrometres(value)).toFixed(2),
        'yes',
      ]),
    ],
    ',',
  );

/** One reading of Caja’s, ten times what it was. */
const slipped = (rows: readonly Row[]): readonly Row[] =>
  rows.map((row, i) =>
    row.panel === 'roof' && i === rows.findIndex(({ panel }) => panel === 'roof') + 3
      ? { ...row, value: 10 * row.value }
      : row,
  );

export function classFiles(): Readonly<Record<string, string>> {
  const random = seededRandom(SEED);
  const film = drawFilm(random);
  const reference = read(random, film, { repeatability: 0.8 });
  const anneke = read(random, film);
  const bram = read(random, film, { bias: 8 });
  const caja = read(random, film).filter(
    ({ panel }) => panel !== 'boot' && panel !== 'door-rear-left',
  );
  const dov = read(random, film).map((row) => ({ ...row, panel: otherSide(row.panel) }));
  const elif = read(random, film);
  return {
    'reference.csv': file(reference, 'Marit Hale'),
    'anneke.csv': file(anneke),
    'bram.csv': file(bram),
    'caja.csv': file(slipped(caja)),
    'dov.csv': file(dov),
    'elif.csv': inMil(elif),
    'rubric.json': json({
      schema: 'leastcut/rubric/1',
      name: 'second week',
      pass_mark_pct: 75,
      weights: { accuracy: 4, coverage: 2, low_points: 2, repairs: 1, repeatability: 1 },
      sigma_pt_um: 3,
    }),
  };
}
