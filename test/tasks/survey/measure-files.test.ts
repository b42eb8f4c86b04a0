/** Columns that ask only what was read say the same whether or not the rest of the survey is worked out. */
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { builtInTemplates } from '../../../src/formats/data/templates.ts';
import {
  areMeasured,
  measuredTable,
  surveyTable,
} from '../../../src/report/survey/survey-table.ts';
import { resolveSettings } from '../../../src/tasks/settings/settings.ts';
import {
  measureFiles,
  type SurveyFilesRequest,
  surveyFiles,
} from '../../../src/tasks/survey/survey-files.ts';

const settings = resolveSettings({ typed: {}, job: undefined, shops: [] });

const requestOf = (text: string, panels: readonly string[] = []): SurveyFilesRequest => ({
  files: [{ name: 'cars.csv', bytes: new TextEncoder().encode(text), sha256: '' }],
  templates: builtInTemplates,
  templateId: undefined,
  intake: { plausible: settings.film.measurement },
  vehicle: undefined,
  keepUnknownPanels: false,
  settings,
  job: undefined,
  filmRecord: undefined,
  panels,
});

/** Every column of a survey that follows from readings alone, and all that is told. */
function bothWays(text: string, panels?: readonly string[]) {
  const request = requestOf(text, panels);
  const [judged, read] = [surveyFiles(request), measureFiles(request)];
  const all = surveyTable(judged.value ?? []);
  const names = all.columns.filter((name) => areMeasured([name]));
  const places = names.map((name) => all.columns.indexOf(name));
  return {
    judged: {
      columns: names,
      rows: all.rows.map((row) => places.map((place) => row[place])),
      told: judged.diagnostics,
    },
    read: { ...measuredTable(read.value ?? [], names), told: read.diagnostics },
  };
}

/** Films of which some are repaint, some a slip of the key, and some of two levels on one panel. */
const film = fc.oneof(
  { weight: 10, arbitrary: fc.integer({ min: 900, max: 1300 }) },
  { weight: 2, arbitrary: fc.integer({ min: 2000, max: 2600 }) },
  { weight: 1, arbitrary: fc.constantFrom(0, 105, 11_000) },
);
const names = [
  'bonnet',
  'Hood',
  'roof',
  'boot',
  'front left door',
  'front-right-door',
  'front bumper',
];
const row = fc.tuple(
  fc.constantFrom('CAR 1', 'CAR 2'),
  fc.constantFrom(...names),
  fc.integer({ min: 1, max: 7 }),
  film,
  fc.constantFrom('', '', '', 'edge', 'face'),
  fc.constantFrom('', '', '', 'clear'),
  fc.constantFrom('', '', 'steel', 'aluminium'),
);
const table = fc.array(row, { minLength: 20, maxLength: 90 }).map((rows) => {
  const lines = rows.map(([vehicle, panel, point, tenths, ...rest]) =>
    [vehicle, panel, point, (tenths / 10).toFixed(1), ...rest].join(','),
  );
  return `vehicle,panel,point,reading_um,place,layer,substrate\n${lines.join('\n')}\n`;
});

test('a table of readings gives the same figures and is told the same of, judged or not', () => {
  let [rows, zones] = [0, 0];
  fc.assert(
    fc.property(table, (text) => {
      const { judged, read } = bothWays(text);
      expect(read).toEqual(judged);
      rows += read.rows.length;
      zones += read.rows.filter((cells) => cells[2] !== null).length;
    }),
    { numRuns: 60 },
  );
  expect(rows).toBeGreaterThan(500);
  expect(zones).toBeGreaterThan(0);
});

const car = (bonnet: readonly number[]): string => {
  const whole = ['roof', 'boot', 'front left door', 'front right door'].flatMap((panel, k) =>
    [1, 2, 3, 4, 5, 6].map((point) => `${panel},${point},${110 + k + point / 2}`),
  );
  const rows = bonnet.map((value, k) => `bonnet,${k + 1},${value}`);
  return `panel,point,reading_um\n${[...rows, ...whole].join('\n')}\n`;
};

test('a panel in two zones has a row for each of them, judged or not', () => {
  const { judged, read } = bothWays(car([110, 111, 112, 113, 230, 232, 231, 234]));
  expect(read).toEqual(judged);
  const zones = read.rows.filter((cells) => cells[1] === 'bonnet').map((cells) => cells[2]);
  expect(zones).toEqual(['thinner', 'thicker']);
});

test('a value that looks keyed wrongly is asked about, judged or not', () => {
  const { judged, read } = bothWays(car([110, 111, 11.2, 113, 114, 112]));
  expect(read).toEqual(judged);
  expect(read.told.map(({ code }) => code)).toContain('keying-slip');
});

test('only panels that are asked for are given, judged or not', () => {
  const { judged, read } = bothWays(car([110, 111, 112, 113]), ['roof', 'boot']);
  expect(read).toEqual(judged);
  expect(read.rows.map((cells) => cells[1])).toEqual(['boot', 'roof']);
});

test('a panel that no template has is refused, judged or not', () => {
  const text = car([110, 111]).replaceAll('boot', 'flux capacitor');
  const { judged, read } = bothWays(text);
  expect(read).toEqual(judged);
  expect(read.rows).toEqual([]);
});
