import fc from 'fast-check';
import { expect, test } from 'vitest';
import { readGaugeFile } from '../../src/intake/read-gauge-file.ts';
import { options, panelNames, utf8 } from './helpers.ts';

type Delimiter = ',' | ';' | '\t' | '|';
type Written = {
  readonly layout: 'long' | 'wide' | 'repeats' | 'blocks' | 'list';
  readonly delimiter: Delimiter;
  readonly mark: '.' | ',';
  readonly preamble: readonly string[];
  readonly foot: readonly string[];
  readonly trailing: boolean;
};

const written: fc.Arbitrary<Written> = fc.record({
  layout: fc.constantFrom('long', 'wide', 'repeats', 'blocks', 'list'),
  delimiter: fc.constantFrom(',', ';', '\t', '|'),
  mark: fc.constantFrom('.', ','),
  preamble: fc.subarray(['Gauge report', 'Serial: 0042', 'Operator = Ann', '']),
  foot: fc.subarray(['', 'End of report', 'Checked by: Bob']),
  trailing: fc.boolean(),
});

/** Two to five points of each of four panels, in tenths of a µm: 50.1 to 900.9, all with a decimal. */
const readings = fc.integer({ min: 2, max: 5 }).chain((points) =>
  fc.array(
    fc.array(
      fc.integer({ min: 501, max: 9009 }).filter((n) => n % 10 > 0),
      { minLength: points, maxLength: points },
    ),
    { minLength: panelNames.length, maxLength: panelNames.length },
  ),
);

function write(panels: readonly (readonly number[])[], how: Written): string {
  const cell = (text: string): string => (text.includes(how.delimiter) ? `"${text}"` : text);
  const number = (tenths: number): string => cell((tenths / 10).toFixed(1).replace('.', how.mark));
  const row = (cells: readonly string[]): string =>
    [...cells, ...(how.trailing ? ['', ''] : [])].join(how.delimiter);
  const named = panels.map((values, k) => ({ name: panelNames[k] ?? '', values }));
  const points = (panels[0] ?? []).map((_, k) => String(k + 1));
  const lines = {
    long: () => [
      row(['panel', 'point', 'reading_um']),
      ...named.flatMap(({ name, values }) =>
        values.map((value, k) => row([name, String(k + 1), number(value)])),
      ),
    ],
    wide: () => [
      row(['point', ...named.map(({ name }) => `${name} (µm)`)]),
      ...points.map((point, k) =>
        row([point, ...named.map(({ values }) => number(values[k] ?? 0))]),
      ),
    ],
    repeats: () => [
      row(['panel', ...points.map((point) => `P${point} (µm)`)]),
      ...named.map(({ name, values }) => row([name, ...values.map(number)])),
    ],
    blocks: () =>
      named.flatMap(({ name, values }) => [
        `Panel: ${name}`,
        row(['point', 'reading_um']),
        ...values.map((value, k) => row([String(k + 1), number(value)])),
      ]),
    list: () => [
      'Unit: µm',
      ...named.map(
        ({ name, values }) =>
          `${name}: ${values.map((value) => (value / 10).toFixed(1).replace('.', how.mark)).join('; ')}`,
      ),
    ],
  }[how.layout]();
  return [...how.preamble, ...lines, ...how.foot].join('\n');
}

const readBack = (text: string) => readGaugeFile({ name: 'f', bytes: utf8(text) }, options);

test('the same readings come back from every layout, dialect, preamble and foot', () => {
  fc.assert(
    fc.property(readings, written, (panels, how) => {
      const { value, diagnostics } = readBack(write(panels, how));
      const key = (panel: string | undefined, point: string, thickness: number) =>
        `${panel} ${point} ${thickness}`;
      const back = value?.readings.map((r) => key(r.panel, r.point, Number(r.thickness)));
      const meant = panels.flatMap((values, p) =>
        values.map((n, k) => key(panelNames[p], String(k + 1), n / 10)),
      );
      expect(back?.sort(), JSON.stringify(diagnostics[0])).toEqual(meant.sort());
      expect(value?.excluded).toEqual([]);
      expect(value?.decisions).toMatchObject({ layout: how.layout, decimal: how.mark, unit: 'um' });
    }),
    { numRuns: 500 },
  );
});

test('a comma twin and a point twin of any layout give the same readings', () => {
  fc.assert(
    fc.property(readings, written, (panels, how) => {
      const twins = (['.', ','] as const).map(
        (mark) => readBack(write(panels, { ...how, mark })).value,
      );
      const [point, comma] = twins.map((twin) =>
        twin?.readings.map(({ origin: _, ...reading }) => reading),
      );
      expect(comma).toEqual(point);
      expect(comma).toHaveLength(panels.flat().length);
    }),
    { numRuns: 200 },
  );
});
