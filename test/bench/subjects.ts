/** What is timed against what, on the same bytes. A comparison more is an entry more. */
import { type Options, parse } from 'csv-parse/sync';
import { panelRecogniser } from '../../src/film/template/panel-names.ts';
import { builtInTemplates } from '../../src/formats/data/templates.ts';
import { filmModel } from '../../src/formats/models.ts';
import { readGaugeFile } from '../../src/intake/read-gauge-file.ts';
import { createLongFile } from '../../src/intake/read-long-file.ts';

export type Subject = {
  readonly name: string;
  /** Gives the number of readings, so that no side may do less than its work. */
  readonly run: (bytes: Uint8Array) => number;
};
export type Comparison = {
  readonly title: string;
  readonly bytes: () => Uint8Array;
  readonly ours: Subject;
  readonly plain: Subject;
  /** The ratio not to exceed; none where it is only looked at. */
  readonly atMost?: number;
};

const isPanel = panelRecogniser(builtInTemplates);
const LONG_FILE_BYTES = 40_000_000;

/** A clean long file of many vehicles: every row a reading of one decimal. */
export function longFile(size = LONG_FILE_BYTES): Uint8Array {
  const panels = builtInTemplates[0]?.panels.map(({ id }) => id) ?? [];
  // Written into its bytes car by car, so that making it leaves next to nothing in memory.
  const bytes = Buffer.alloc(size + 64 * 1024);
  let length = bytes.write('vehicle,panel,point,reading_um\n');
  for (let vehicle = 1; length < size; vehicle += 1) {
    for (const panel of panels) {
      for (let point = 1; point <= 5; point += 1) {
        const tenths = 1001 + ((vehicle * 7919 + point * 104729 + panel.length * 31) % 400);
        const line = `car-${vehicle},${panel},${point},${(tenths / 10).toFixed(1)}\n`;
        length += bytes.write(line, length);
      }
    }
  }
  return bytes.subarray(0, length);
}

const ours: Subject = {
  name: 'readGaugeFile',
  run: (bytes) =>
    readGaugeFile({ name: 'long.csv', bytes }, { isPanel, plausible: filmModel.measurement }).value
      ?.readings.length ?? 0,
};

/** The same file as it comes from a disk, its vehicles counted and let go. */
const inPieces: Subject = {
  name: 'createLongFile',
  run: (bytes) => {
    const file = createLongFile('long.csv', { isPanel, plausible: filmModel.measurement });
    let readings = 0;
    for (let at = 0; at < bytes.length; at += CHUNK_BYTES) {
      const end = at + CHUNK_BYTES;
      const read = file.push(bytes.subarray(at, end), end >= bytes.length).value ?? [];
      for (const { readings: own } of read) readings += own.length;
    }
    return readings;
  },
};
const CHUNK_BYTES = 128 * 1024;

const asBuffer = (bytes: Uint8Array): Buffer =>
  Buffer.from(bytes.buffer, bytes.byteOffset, bytes.byteLength);

/** csv-parse as its users call it first: each record an object under its header. */
const byRecord: Subject = {
  name: 'csv-parse, records',
  run: (bytes) => {
    const options: Options = { columns: true };
    return parse(asBuffer(bytes), options).length;
  },
};
/** The same with a callback that sees each record and keeps none. */
const byCallback: Subject = {
  name: 'csv-parse, on_record',
  run: (bytes) => {
    let count = -1;
    parse(asBuffer(bytes), {
      on_record: () => {
        count += 1;
        return null;
      },
    });
    return count;
  },
};

export const comparisons: readonly Comparison[] = [
  { title: 'a clean long file of 40 MB', bytes: longFile, ours, plain: byRecord, atMost: 1.5 },
  {
    title: 'the same in pieces, vehicle by vehicle',
    bytes: longFile,
    ours: inPieces,
    plain: byRecord,
    atMost: 1.5,
  },
  {
    title: 'a long file of 160 MB in pieces',
    bytes: () => longFile(4 * LONG_FILE_BYTES),
    ours: inPieces,
    plain: byCallback,
  },
  {
    title: 'a clean long file, records seen and not kept',
    bytes: longFile,
    ours,
    plain: byCallback,
  },
];
