/** Vehicles whose rows stand in turn: the file is read whole, and each has its own faults. */
import { describe, expect, test } from 'vitest';
import { runLeastcut } from '../run-leastcut.ts';

type JobRecord = {
  readonly job: string;
  readonly seq: number;
  readonly status: string;
  readonly exit: number;
  readonly diagnostics: readonly {
    readonly severity: string;
    readonly at: { readonly line: number };
  }[];
  readonly result: Readonly<Record<string, unknown>> | null;
};

type Cells = [vehicle: string, panel: string, point: string, reading: string];

const vehicles = ['A 1', 'B 2', 'C 3', 'D 4'];
const panels = ['bonnet', 'roof', 'boot lid', 'left front door'];

/** Five points on each panel, a vehicle in each row after the other; `spoil` may change a row. */
function inTurn(spoil: (row: Cells, index: number) => readonly string[] = (row) => row): string {
  const rows = [1, 2, 3, 4, 5].flatMap((point) =>
    panels.flatMap((panel, i) =>
      vehicles.map(
        (vehicle, k): Cells =>
          [
            ...[vehicle, panel].concat(String(point), String(106 + ((5 * point + 3 * i + k) % 11))),
          ] as Cells,
      ),
    ),
  );
  const lines = rows.map((row, index) => spoil(row, index).join(','));
  return `vehicle,panel,point,reading_um\n${lines.join('\n')}\n`;
}

async function survey(stdin: string, ...words: readonly string[]) {
  const run = await runLeastcut(['batch', '-', '--command', 'survey', ...words], { stdin });
  const records = run.out
    .split('\n')
    .filter((line) => line !== '')
    .map((line) => JSON.parse(line) as JobRecord);
  return { ...run, records };
}

/** What is found of the vehicle, apart from the file it stands in. */
const foundOf = (records: readonly JobRecord[], job: string) => {
  const { inputs: _, ...rest } = records.find((one) => one.job === job)?.result ?? {};
  return rest;
};

/** Row 5 is of B 2, row 6 of C 3. */
const at =
  (index: number, change: (row: Cells) => readonly string[]) => (row: Cells, own: number) =>
    own === index ? change(row) : row;
const thick = ([vehicle, panel, point]: Cells) => [vehicle, panel, point, 'thick'];

describe('a file of vehicles in turn', () => {
  test.each([
    ['a cell that is no number', thick],
    ['a reading of two signs', ([v, panel, point]: Cells) => [v, panel, point, '11O.5']],
    ['a row that ends too early', ([v, panel]: Cells) => [v, panel]],
    ['a reading of no panel', ([v, , point, um]: Cells) => [v, '', point, um]],
  ])(
    'with %s refuses that vehicle, in its place, and answers the others as without it',
    async (_, change) => {
      const spoiled = await survey(inTurn(at(5, change)));
      const without = await survey(
        inTurn()
          .split('\n')
          .filter((line) => !line.startsWith('B 2'))
          .join('\n'),
      );
      expect(spoiled.code).toBe(3);
      expect(spoiled.records.map(({ job, seq, status }) => [job, seq, status])).toEqual([
        ['A 1', 1, 'done'],
        ['B 2', 2, 'refused'],
        ['C 3', 3, 'done'],
        ['D 4', 4, 'done'],
      ]);
      expect(spoiled.records[1]).toMatchObject({ exit: 65, result: null });
      expect(spoiled.records[1]?.diagnostics.map((one) => one.at.line)).toEqual([7]);
      expect(spoiled.err).toContain('4 jobs: 3 done, 1 refused');
      for (const job of ['A 1', 'C 3', 'D 4']) {
        expect(foundOf(spoiled.records, job)).toEqual(foundOf(without.records, job));
      }
    },
  );

  test('tells the faults of several vehicles each with its own, however many there are', async () => {
    const { code, records } = await survey(
      inTurn((row, index) => (row[0] === 'B 2' || index === 79 ? thick(row) : row)),
    );
    expect(code).toBe(3);
    expect(records.map(({ status }) => status)).toEqual(['done', 'refused', 'done', 'refused']);
    expect(records[3]?.diagnostics.map((one) => one.at.line)).toEqual([81]);
  });

  test('refuses a vehicle that fits no template, and no other', async () => {
    const { code, records } = await survey(
      inTurn(([vehicle, panel, ...rest]) =>
        vehicle === 'C 3' ? [vehicle, `part ${panel.length}`, ...rest] : [vehicle, panel, ...rest],
      ),
    );
    expect(code).toBe(3);
    expect(records.map(({ status }) => status)).toEqual(['done', 'done', 'refused', 'done']);
  });

  test('has a record for each when none is in order', async () => {
    const { code, records } = await survey(inTurn(thick));
    expect(code).toBe(65);
    expect(records.map(({ status }) => status)).toEqual(vehicles.map(() => 'refused'));
  });

  test('begins none after a failure where that was asked for', async () => {
    const { code, records, err } = await survey(inTurn(at(5, thick)), '--fail-fast');
    expect(code).toBe(3);
    expect(records.map(({ status }) => status)).toEqual(['done', 'refused']);
    expect(err).toContain('2 not begun');
  });

  test.each([
    ['names no vehicle', at(5, ([, ...rest]) => ['', ...rest])],
    [
      'is the only one of its vehicle, as one that is misspelt',
      at(5, (row) => ['B2', ...thick(row).slice(1)]),
    ],
    [
      'has its panel where the vehicle stands',
      at(5, ([, panel, point, um]) => [panel, point, um, 'B 2']),
    ],
    [
      'is two rows in one',
      at(5, (row) => [...row.slice(0, 3), `118${row[0]}`, 'roof', '1', '117']),
    ],
  ])('is refused where a row %s', async (_, spoil) => {
    const { code, out } = await survey(inTurn(spoil));
    expect(code).toBe(65);
    expect(out).toBe('');
  });

  test('is refused for what is of the file as a whole, also beside a fault of one vehicle', async () => {
    const spoiled = inTurn(at(5, thick)).replace('reading_um', 'reading');
    const { code, out, err } = await survey(spoiled);
    expect(code).toBe(65);
    expect(out).toBe('');
    expect(err).toContain('unit-missing');
  });
});
