import { describe, expect, it } from 'vitest';
import { resolveSettings } from '../../../src/tasks/settings/settings.ts';
import { joinedTrials } from '../../../src/tasks/spot/joined-trials.ts';
import { marksDoubted } from '../../../src/tasks/spot/spot-doubts.ts';
import { onFace } from '../../film/car-builder.ts';
import { layersOf } from '../layers.ts';

const settings = resolveSettings(layersOf({ job: {}, shop: {} }));
const header = 'spot,panel,machine,pad,product,sets,mark,before_um,after_um,cleared_pct';

type Marks = readonly (readonly [before: number, after: number])[];
const spot = (name: string, sets: number, marks: Marks, pad = 'foam-medium'): string =>
  marks
    .map(
      ([before, after], i) =>
        `${name},boot,da,${pad},medium,${sets},${i + 1},${before},${after},50\n`,
    )
    .join('');
const read = (...spots: readonly string[]) =>
  joinedTrials(
    [
      {
        name: 'spots.csv',
        bytes: new TextEncoder().encode(`${header}\n${spots.join('')}`),
        sha256: '',
      },
    ],
    settings,
  );
const codes = (...spots: readonly string[]): readonly string[] =>
  read(...spots).diagnostics.map(({ code }) => code);
const marksOf = (...spots: readonly string[]): readonly number[] =>
  (read(...spots).value ?? []).map(({ trial }) => trial.marks.length);

describe('a test spot', () => {
  const usual: Marks = [
    [116.3, 114.6],
    [121, 119.1],
    [118.3, 116.1],
  ];

  it('that loses what such sets take is taken as it is', () => {
    expect(codes(spot('A', 2, usual))).toEqual([]);
    expect(codes(spot('A', 9, usual))).toEqual([]);
  });

  it('that loses more than paints are held to give way by is refused, as mil read for µm', () => {
    const mil = usual.map(([before, after]) => [before * 25.4, after * 25.4] as const);
    expect(codes(spot('A', 2, mil))).toEqual(['spot-doubted']);
    expect(read(spot('A', 2, mil)).diagnostics[0]?.message).toMatch(
      /lost 49\.1 µm in 2 × .*takes 1\.8 µm as a rule/,
    );
  });

  it('of more sets than anybody works on one place, or with a share of one for per cent, is refused', () => {
    expect(codes(spot('A', 20, usual))).toEqual(['cell-invalid', 'cell-invalid', 'cell-invalid']);
    expect(codes(spot('A', 2, usual).replaceAll(',50\n', ',0.85\n'))).toContain('cell-invalid');
    expect(codes(spot('A', 2, usual).replaceAll(',50\n', ',0\n'))).toEqual([]);
    expect(codes(spot('A', 2, usual).replaceAll(',50\n', ',1.5\n'))).toEqual([]);
  });

  it('of which every mark gained teaches nothing by its film, of three marks on, and is told', () => {
    const swapped = usual.map(([before, after]) => [after, before] as const);
    expect(codes(spot('A', 2, swapped))).toEqual(['spot-film-gained']);
    expect(marksOf(spot('A', 2, swapped))).toEqual([0]);
    expect(marksOf(spot('A', 2, swapped.slice(1)))).toEqual([2]);
    expect(marksOf(spot('A', 2, [...swapped.slice(1), [118, 118]]))).toEqual([3]);
  });

  it('with a mark that gained beyond the noise goes by the others', () => {
    const one: Marks = [...usual, [118, 127]];
    expect(codes(spot('A', 2, one))).toEqual(['spot-film-gained']);
    expect(marksOf(spot('A', 2, one))).toEqual([3]);
  });

  it('that begins where another ended is one place, and is refused', () => {
    const on: Marks = usual.map(([, after]) => [after, after - 1.1] as const);
    expect(codes(spot('A', 2, usual), spot('B', 1, on))).toEqual(['spot-doubted']);
    expect(read(spot('A', 2, usual), spot('B', 1, on)).diagnostics[0]?.hint).toMatch(
      /one spot with all its sets/,
    );
    const harsher = read(spot('A', 2, usual), spot('B', 1, on, 'foam-firm'));
    expect(harsher.diagnostics[0]?.hint).toMatch(/leave out the second/);
    expect(
      codes(
        spot('A', 2, usual),
        spot(
          'B',
          1,
          on.map(([b, a], i) => [b + (i === 2 ? 0.1 : 0), a] as const),
        ),
      ),
    ).toEqual([]);
  });

  it('whose marks read nothing like its panel is of another, unless a point of the panel reads so', () => {
    const [placed] = read(spot('A', 2, usual)).value ?? [];
    if (placed === undefined) throw new Error('the spot is read');
    const off = (...films: readonly number[]): readonly string[] =>
      marksDoubted(placed, onFace('boot', ...films)).map(({ code }) => code);
    expect(off(112, 118, 125)).toEqual([]);
    expect(off(180, 185, 192)).toEqual(['spot-doubted']);
    expect(off(180, 185, 120)).toEqual([]);
    expect(off(60, 65)).toEqual(['spot-doubted']);
    expect(marksDoubted(placed, [])).toEqual([]);
  });
});
