/**
 * The columns of the tables people fill in or export as CSV, in the canonical names. `role` is what a
 * column is to the program, whatever an export calls it: the name without its unit.
 */
import { filmDefaults } from './data/film-defaults.ts';

export type CsvKind =
  | 'readings'
  | 'defects'
  | 'test-spots'
  | 'gauge-checks'
  | 'gloss'
  | 'worked'
  | 'history';

export type CsvColumn = {
  readonly name: string;
  readonly role: string;
  /** Null for text and plain counts. */
  readonly unit: string | null;
  readonly type: 'text' | 'number' | 'whole number';
  readonly required: boolean;
  readonly meaning: string;
  /** The least and the most it takes; null where nothing but its type bounds it. */
  readonly range: readonly [number, number] | null;
  /** The only words it takes, where it does not take any. */
  readonly words: readonly string[] | null;
};

export type CsvTable = {
  readonly kind: CsvKind;
  readonly title: string;
  readonly columns: readonly CsvColumn[];
};

type Rest = Partial<Omit<CsvColumn, 'name' | 'role' | 'meaning'>>;

const UNITS = { um: 'µm', pct: '%', c: '°C', gu: 'GU', deg: '°', min: 'min' } as const;

function column(name: string, meaning: string, rest: Rest = {}): CsvColumn {
  const [, role = name, suffix] = /^(.+)_(um|pct|c|gu|deg|min)$/.exec(name) ?? [];
  const unit = suffix === undefined ? null : UNITS[suffix as keyof typeof UNITS];
  const type = unit === null && rest.range === undefined ? 'text' : 'number';
  const rests = { type, required: false, range: null, words: null, ...rest } as const;
  return { name, role, unit, meaning, ...rests };
}

const required = { required: true } as const;
const share = { range: [0, 1] } as const;
const yesOrNo = { words: ['yes', 'no', 'true', 'false'] } as const;
const count = (least: number, most = 1000): Rest => ({
  type: 'whole number',
  range: [least, most],
});
const film = { range: [0, filmDefaults.measurement.largestReading.value] } as const;

const panel = column('panel', 'Which panel it is.', required);
const note = column('note', 'Anything you want to remember; nothing is read from it.');

export const readingColumns: readonly CsvColumn[] = [
  panel,
  column('point', 'Which point of the panel; without it each reading is a point of its own.'),
  column('reading_um', 'What the gauge showed, in µm: all layers unless "layer" names one.', {
    ...required,
    ...film,
  }),
  column('repeat', 'Which reading it is at this point.', count(1)),
  column('vehicle', 'Which vehicle it is, where a file holds several.'),
  column('operator', 'Who measured.'),
  column('time', 'When it was measured.'),
  column('substrate', 'What is under the paint.'),
  column('layer', 'Empty for the whole film, or the layer: clear, base, primer …'),
  column('unit', 'The unit of the readings, where the heading does not say it.', {
    words: ['um', 'mil'],
  }),
  column('u', 'How far across the panel the point lies.', share),
  column('v', 'How far down the panel the point lies.', share),
  note,
  column('place', 'Where the point lies; only the face enters the statistics.', {
    words: ['face', 'edge', 'shut'],
  }),
  column('marked', 'Whether the point is marked, so that it can be found again.', yesOrNo),
  column('curved', 'Whether the surface is curved there.', yesOrNo),
];

const defectColumns: readonly CsvColumn[] = [
  panel,
  column('defect', 'What was seen, by any of its names.', required),
  column('grade', 'How bad it is, 0 none to 5 severe, in the sense of ISO 4628-1.', {
    range: [0, 5],
  }),
  column('extent', 'How far it goes, in your words.'),
  column('depth_um', 'How deep it is, where that was measured.', film),
  note,
];

const testSpotColumns: readonly CsvColumn[] = [
  column('spot', 'Which test spot it is; its rows belong together.', required),
  panel,
  column('machine', 'The machine, by its id.', required),
  column('pad', 'The pad, by its id.', required),
  column('product', 'The product, by its id.', required),
  column('sets', 'How many sets were worked; a row of each spot says it at least.', {
    ...required,
    ...count(1, 9),
  }),
  column('mark', 'Which marked point of the spot this row is of.'),
  column('before_um', 'What the mark read before.', film),
  column('after_um', 'What the mark read after.', film),
  column('defect', 'Which defect was to go.'),
  column('cleared_pct', 'How much of it went, by eye.', { range: [0, 100] }),
  column('haze_grade', 'The haze that was left, 0 mirror to 4 heavy.', { range: [0, 4] }),
  column('colour_on_pad', 'Whether the colour of the car came off on the pad.', yesOrNo),
  column('panel_c', 'How warm the panel was.', { range: [-20, 150] }),
  column(
    'place',
    'Where on the panel, in your words: spots of one panel at other places have other ones.',
  ),
  note,
];

const gaugeCheckColumns: readonly CsvColumn[] = [
  column('shim_um', 'The thickness of the shim, as its certificate states.', {
    ...required,
    range: [0, 3000],
  }),
  column(
    'shim_uncertainty_um',
    'What that thickness may be off by, as its certificate states (k = 2).',
    {
      range: [0, 50],
    },
  ),
  column('reading_um', 'What the gauge showed on the shim.', { ...required, range: [-50, 3500] }),
  column('repeat', 'Which reading of the shim it is.', count(1)),
  column('check', 'Whether it was read before the work or after it.', {
    words: ['before', 'after'],
  }),
];

const historyColumns: readonly CsvColumn[] = [
  column('job', 'Which job it was.', required),
  column('stage', 'Which stage of it, by its id; empty for the whole job.'),
  column('estimated_min', 'The minutes it was to take, in the middle (P50): more than 0.', {
    ...required,
    range: [0, 43_200],
  }),
  column('actual_min', 'The minutes it took: more than 0.', { ...required, range: [0, 43_200] }),
  column('date', 'The day, for you; nothing is read from it.'),
];

const gloss = { range: [0, 2000] } as const;

const glossColumns: readonly CsvColumn[] = [
  panel,
  column('point', 'Which marked place of the panel it is.'),
  column('angle_deg', 'The angle of the gloss meter, the same for both values of the row.', {
    ...required,
    range: [20, 85],
  }),
  column('before_gu', 'The gloss before.', { ...required, ...gloss }),
  column('after_gu', 'The gloss after.', { ...required, ...gloss }),
  column('before_haze', 'The haze before (ISO 13803).', gloss),
  column('after_haze', 'The haze after (ISO 13803).', gloss),
];

const workedColumns: readonly CsvColumn[] = [
  panel,
  column('zone', 'Which zone of a panel in two; empty for both, or for a panel in one.', {
    words: ['thinner', 'thicker'],
  }),
  column(
    'step',
    'Which step: its number in the plan, or its machine/pad/product; empty for all of them, with 0 sets.',
  ),
  column('sets', 'How many sets of it were worked, 0 for none.', { ...required, ...count(0) }),
  note,
];

export const csvTables: readonly CsvTable[] = [
  { kind: 'readings', title: 'Readings of a gauge, one a row', columns: readingColumns },
  { kind: 'defects', title: 'Defects seen on the vehicle', columns: defectColumns },
  { kind: 'test-spots', title: 'Test spots, a row for each mark', columns: testSpotColumns },
  { kind: 'gauge-checks', title: 'Checks of a gauge on shims', columns: gaugeCheckColumns },
  { kind: 'gloss', title: 'Gloss before and after, a row for each place', columns: glossColumns },
  { kind: 'worked', title: 'Sets that were worked of a plan', columns: workedColumns },
  { kind: 'history', title: 'Hours that jobs took', columns: historyColumns },
];
