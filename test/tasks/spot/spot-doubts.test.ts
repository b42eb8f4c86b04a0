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

  it('that begins where another ended, with the same combination, is to be one spot', () => {
    const on: Marks = usual.map(([, after]) => [after, after - 1.1] as const);
    expect(codes(spot('A', 2, usual), spot('B', 1, on))).toEqual(['spot-doubted']);
    expect(read(spot('A', 2, usual), spot('B', 1, on)).diagnostics[0]?.hint).toMatch(
      /one spot with all its sets/,
    );
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

  it('that begins where another combination ended is taken, as all that was done counts', () => {
    const on: Marks = usual.map(([, after]) => [after, after - 1.1] as const);
    const harsher = spot('B', 1, on, 'foam-firm');
    expect(codes(spot('A', 2, usual), harsher)).toEqual([]);
    expect(marksOf(harsher)).toEqual([3]);
    expect(codes(spot('A', 2, usual), spot('B', 2, usual, 'foam-firm'))).toEqual(['spot-doubted']);
  });

  it('that begins where another ended is asked about where its file calls them two places', () => {
    const on: Marks = usual.map(([, after]) => [after, after - 1.1] as const);
    const at = (rows: string, place: string): string => rows.replaceAll(',50\n', `,50,${place}\n`);
    const asked = (here: string, there: string) => {
      const rows = [at(spot('A', 2, usual), here), at(spot('B', 1, on, 'foam-firm'), there)];
      const bytes = new TextEncoder().encode(`${header},place\n${rows.join('')}`);
      return joinedTrials([{ name: 'spots.csv', bytes, sha256: '' }], settings).diagnostics;
    };
    const [doubt, ...others] = asked('left', 'front');
    expect([doubt?.code, others]).toEqual(['spot-doubted', []]);
    expect(doubt?.hint).toMatch(/^one place: call it the same in the column place at both; two/);
    for (const [here, there] of [
      ['left', 'Left'],
      ['left', ''],
      ['', 'left'],
    ] as const)
      expect(asked(here, there)).toEqual([]);
  });

  it('that begins where another ended is one place in whole µm as well, once enough of its marks had moved', () => {
    const whole: Marks = [
      [118, 116],
      [119, 117],
      [120, 118],
    ];
    const on = (marks: Marks): Marks => marks.map(([, after]) => [after, after - 2] as const);
    expect(codes(spot('A', 2, whole), spot('B', 2, on(whole)))).toEqual(['spot-doubted']);
    // One that shows no decimal hides nothing of the others.
    const mixed: Marks = [...usual, [118, 116]];
    expect(codes(spot('A', 2, mixed), spot('B', 2, on(mixed)))).toEqual(['spot-doubted']);
    // Where hardly anything moved, a fresh place reads so by chance.
    const still: Marks = whole.map(([, after], i) => [i === 0 ? after + 1 : after, after] as const);
    expect(codes(spot('A', 1, still), spot('B', 2, on(still)))).toEqual([]);
    expect(codes(spot('A', 2, whole), spot('B', 2, on(whole).slice(1)))).toEqual([]);
  });

  it('whose marks read nothing like its panel is of another, unless a point of the panel reads so', () => {
    const [placed] = read(spot('A', 2, usual)).value ?? [];
    if (placed === undefined) throw new Error('the spot is read');
    const off = (...films: readonly number[]): readonly string[] =>
      marksDoubted(placed, onFace('boot', ...films), settings.correction.spot).map(
        ({ code }) => code,
      );
    expect(off(112, 118, 125)).toEqual([]);
    expect(off(180, 185, 192)).toEqual(['spot-doubted']);
    expect(off(180, 185, 120)).toEqual([]);
    expect(off(60, 65)).toEqual(['spot-doubted']);
    expect(marksDoubted(placed, [], settings.correction.spot)).toEqual([]);
  });

  it('whose marks read nothing like its panel is asked about by the likeliest reason', () => {
    const [placed] = read(spot('A', 2, usual)).value ?? [];
    if (placed === undefined) throw new Error('the spot is read');
    const hint = (...films: readonly number[]): string | undefined =>
      marksDoubted(placed, onFace('boot', ...films), settings.correction.spot)[0]?.hint;
    expect(hint(180, 185, 192)).toMatch(
      /^was the panel painted since the spot\? .*; another panel or car\?/,
    );
    expect(hint(60, 65)).toMatch(
      /^was paint taken off since the spot, or is it of another panel or car\?/,
    );
    expect(hint(2900, 3000)).toMatch(/^other units \(1 mil is 25\.4 µm\)\? /);
  });

  it('whose film no paint has is refused where it stands, as mil under a name of µm', () => {
    const mil = usual.map(([before, after]) => [before / 25.4, after / 25.4] as const);
    const [first, ...others] = read(spot('A', 2, mil)).diagnostics;
    expect([first, ...others].map((one) => one?.code)).toEqual(Array(3).fill('spot-doubted'));
    expect(first?.message).toMatch(
      /^"4\.57.*" before of spot "A" is under 15 µm, which no paint is$/,
    );
    expect(first?.at?.line).toBe(2);
    expect(codes(spot('A', 2, [[15.9, 15]]))).toEqual([]);
    expect(codes(spot('A', 2, [[15.9, 14.9]]))).toEqual(['spot-doubted']);
    expect(codes(spot('A', 2, []).concat('A,boot,da,foam-medium,medium,2,,,,50\n'))).toEqual([]);
  });

  it('that reads at every mark what another reads is a copy, in whatever order it is written', () => {
    const again = read(spot('A', 2, usual), spot('B', 2, usual.toReversed()));
    expect(again.diagnostics.map(({ code }) => code)).toEqual(['spot-doubted']);
    expect(again.diagnostics[0]?.message).toMatch(/spot "B" reads what spot "A" reads/);
    const [one, two, three] = usual;
    const other: Marks = [one ?? [0, 0], two ?? [0, 0], [three?.[0] ?? 0, 116.2]];
    expect(codes(spot('A', 2, usual), spot('B', 2, other))).toEqual([]);
    // On another panel it is no proof of a copy; two whole figures meet by chance, six hardly.
    expect(codes(spot('A', 2, usual), spot('B', 2, usual).replaceAll('boot', 'roof'))).toEqual([]);
    const whole: Marks = [
      [118, 117],
      [121, 119],
      [116, 115],
    ];
    const pair = whole.slice(1);
    expect(codes(spot('A', 2, pair), spot('B', 2, pair))).toEqual([]);
    expect(codes(spot('A', 2, whole), spot('B', 2, whole))).toEqual(['spot-doubted']);
  });
});
