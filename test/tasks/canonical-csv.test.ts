import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { Reading } from '../../src/film/reading.ts';
import { builtInTemplates } from '../../src/formats/data/templates.ts';
import { filmModel } from '../../src/formats/models.ts';
import { renderCsv } from '../../src/render/csv.ts';
import { readingsTable } from '../../src/report/read/readings-table.ts';
import type { ReadRequest, ReadVehicles } from '../../src/tasks/read/read-request.ts';
import { readVehicles } from '../../src/tasks/read/read-vehicles.ts';
import { allKinds } from '../intake/corpus/all-kinds.ts';
import { written } from '../intake/corpus/run-corpus.ts';

/** Files of each kind of the corpus; `CORPUS_N=50` looks further. */
const turns = Number(process.env['CORPUS_N'] ?? 1);

const readBytes = (bytes: Uint8Array, intake: Partial<ReadRequest['intake']> = {}) =>
  readVehicles({
    files: [{ name: 'export.csv', bytes, sha256: '' }],
    templates: builtInTemplates,
    templateId: undefined,
    intake: { plausible: filmModel.measurement, ...intake },
    vehicle: undefined,
    keepUnknownPanels: true,
  });

const readText = (text: string) => readBytes(new TextEncoder().encode(text));

/** All of a reading but where its file had it, and how it was written there: in mil, say. */
const known = ({ vehicles }: ReadVehicles) =>
  vehicles.flatMap(({ readings }) =>
    readings.map(({ origin: _, decimals: __, thickness, ...rest }: Reading) => ({
      ...rest,
      thickness: Math.round(thickness * 1e9) / 1e9,
    })),
  );

test('every file of the corpus that is read reads alike from the CSV made of it', async () => {
  let tried = 0;
  const faults: string[] = [];
  for (const kind of allKinds.filter(({ group }) => group !== 'sizes')) {
    // Lets the runner speak in between.
    await new Promise((resolve) => setImmediate(resolve));
    for (let turn = 0; turn < turns; turn += 1) {
      const { bytes, options } = written(kind, turn);
      const { value } = readBytes(bytes, options);
      if (value === undefined) continue;
      tried += 1;
      const again = readText(renderCsv(readingsTable(value.vehicles)));
      const [first] = again.diagnostics.filter(({ severity }) => severity === 'error');
      const same =
        again.value !== undefined &&
        JSON.stringify(known(again.value)) === JSON.stringify(known(value));
      if (!same) faults.push(`${kind.title} (${turn}): ${first?.message ?? 'other readings'}`);
    }
  }
  expect(faults).toEqual([]);
  expect(tried).toBeGreaterThan(100);
}, 300_000);

const nasty = fc
  .string({ unit: fc.constantFrom(...'=+-@\'"#,;|\\u{}0a \t\n\u200b\u001b\u202eé') })
  .map((text) => text.trim())
  // A quoted cell that begins with the delimiter and goes on over lines is refused, aloud.
  .filter((text) => !/^,.*\n/s.test(text));

test('a note of any signs, a formula among them, comes back as it was', () => {
  fc.assert(
    fc.property(fc.array(nasty, { minLength: 1, maxLength: 8 }), (notes) => {
      const vehicle = vehicleWith(notes.map((note) => ({ note })));
      const again = readText(renderCsv(readingsTable([vehicle]))).value;
      const got = again?.vehicles[0]?.readings.map(({ note = '' }) => note);
      expect(got).toEqual(notes);
    }),
  );
});

function vehicleWith(some: readonly Partial<Reading>[]) {
  const { value } = readText('panel,point,reading_um\nroof,1,101\n');
  const [vehicle] = value?.vehicles ?? [];
  const [reading] = vehicle?.readings ?? [];
  if (vehicle === undefined || reading === undefined) throw new Error('one reading is read');
  return { ...vehicle, readings: some.map((one, k) => ({ ...reading, repeat: k + 1, ...one })) };
}

test('in another file an apostrophe and an escape are the text of its writer', () => {
  const note = "'=1 \\u{41}";
  const { value } = readText(`panel,point,reading_um,note\nroof,1,101,${note}\n`);
  expect(value?.vehicles[0]?.readings[0]?.note).toBe(note);
});

test('columns stand only where some reading fills them', () => {
  const plain = readText('panel,point,reading_um\nroof,1,101\n').value;
  expect(readingsTable(plain?.vehicles ?? []).columns).toEqual([
    ...['panel', 'point', 'repeat', 'reading_um'],
  ]);
  const full = readText(
    'panel,point,reading_um,vehicle,marked,place\nroof,1,101,A,yes,face\nroof,2,99,A,no,edge\n',
  ).value;
  const table = readingsTable(full?.vehicles ?? []);
  expect(table.columns).toEqual([
    ...['vehicle', 'panel', 'point', 'repeat', 'reading_um', 'place', 'marked'],
  ]);
  expect(table.rows).toEqual([
    ['A', 'roof', '1', 1, 101, null, 'yes'],
    ['A', 'roof', '2', 1, 99, 'edge', null],
  ]);
});
