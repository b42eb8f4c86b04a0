/** What is timed against what, on the same bytes. A comparison more is an entry more. */
import { type Options, parse } from 'csv-parse/sync';
import { panelRecogniser } from '../../src/film/panel-names.ts';
import { builtInTemplates } from '../../src/formats/data/templates.ts';
import { filmModel } from '../../src/formats/models.ts';
import { readGaugeFile } from '../../src/intake/read-gauge-file.ts';

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
  const lines = ['vehicle,panel,point,reading_um'];
  let length = 0;
  for (let vehicle = 1; length < size; vehicle += 1) {
    for (const panel of panels) {
      for (let point = 1; point <= 5; point += 1) {
        const tenths = 1001 + ((vehicle * 7919 + point * 104729 + panel.length * 31) % 400);
        const line = `car-${vehicle},${panel},${point},${(tenths / 10).toFixed(1)}`;
        lines.push(line);
        length += line.length + 1;
      }
    }
  }
  return new TextEncoder().encode(`${lines.join('\n')}\n`);
}

const ours: Subject = {
  name: 'readGaugeFile',
  run: (bytes) =>
    readGaugeFile({ name: 'long.csv', bytes }, { isPanel, plausible: filmModel.measurement }).value
      ?.readings.length ?? 0,
};

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
  { title: 'the same, records seen and not kept', bytes: longFile, ours, plain: byCallback },
];
