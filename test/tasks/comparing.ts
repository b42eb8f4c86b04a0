/** Comparisons of readings given as text, with what a job, a plan or a record says of the vehicle. */

import { createHash } from 'node:crypto';
import { builtInTemplates } from '../../src/formats/data/templates.ts';
import { readFilmRecord } from '../../src/formats/film-record.ts';
import { readGauge } from '../../src/formats/gauge.ts';
import { readJob } from '../../src/formats/job/read-job.ts';
import { readPlanFile } from '../../src/formats/plan-file.ts';
import {
  type CompareRequest,
  type CompareResult,
  compareFiles,
} from '../../src/tasks/compare/compare-files.ts';
import { withGauge } from '../../src/tasks/settings/gauge-in-use.ts';
import { resolveSettings } from '../../src/tasks/settings/settings.ts';

type Keys = Readonly<Record<string, unknown>>;

export type Comparing = {
  /** Files of readings in their order. */
  readonly visits: readonly string[];
  readonly marked?: boolean;
  readonly job?: Keys;
  /** As `leastcut plan --format json` writes it. */
  readonly plan?: string;
  readonly workedSets?: string;
  readonly filmRecord?: string;
  /** Test spots, as a table. */
  readonly spots?: string;
  readonly gauge?: Keys;
  readonly gaugeAfter?: Keys;
  readonly gloss?: string;
  readonly panels?: readonly string[];
  readonly vehicle?: string;
};

const fileOf = (name: string, text: string) => ({
  name,
  bytes: new TextEncoder().encode(text),
  sha256: createHash('sha256').update(text).digest('hex'),
});

const present = <T>(value: T | undefined): T => {
  if (value === undefined) throw new Error('refused');
  return value;
};

function namedGauge(keys: Keys | undefined, name: string) {
  if (keys === undefined) return undefined;
  const text = JSON.stringify({ schema: 'leastcut/gauge/1', ...keys });
  return { file: present(readGauge(name, text).value), name, origin: 'flag' as const };
}

export function requestOf(comparing: Comparing): CompareRequest {
  const {
    visits,
    marked = true,
    job = {},
    plan,
    workedSets,
    filmRecord,
    spots,
    gloss,
    panels = [],
  } = comparing;
  const text = JSON.stringify({ schema: 'leastcut/job/1', template: 'saloon', ...job });
  const file = present(readJob('job.json', text).value);
  const plain = resolveSettings({ typed: {}, job: { file, folder: '' }, shops: [] });
  const before = namedGauge(comparing.gauge, 'gauge.json');
  const after = namedGauge(comparing.gaugeAfter, 'gauge-after.json');
  const settings = present(withGauge(plain, before).value);
  return {
    files: visits.map((visit, i) => fileOf(`visit-${i + 1}.csv`, visit)),
    templates: builtInTemplates,
    templateId: 'saloon',
    intake: { plausible: settings.film.measurement },
    vehicle: comparing.vehicle,
    keepUnknownPanels: false,
    settings,
    settingsAfter: after === undefined ? settings : present(withGauge(plain, after).value),
    gauges: { before, after },
    job: file,
    filmRecord:
      filmRecord === undefined
        ? undefined
        : present(readFilmRecord('record.json', filmRecord).value),
    spots: spots === undefined ? [] : [fileOf('spots.csv', spots)],
    marked,
    plan: plan === undefined ? undefined : planOf(plan),
    planFile: plan === undefined ? undefined : fileOf('plan.json', plan),
    workedFile: workedSets === undefined ? undefined : fileOf('worked.csv', workedSets),
    gloss: gloss === undefined ? undefined : fileOf('gloss.csv', gloss),
    panels,
  };
}

function planOf(text: string) {
  const { value, diagnostics } = readPlanFile('plan.json', text);
  if (value === undefined) throw new Error(diagnostics.map(({ message }) => message).join('; '));
  return value;
}

export const compared = (comparing: Comparing): CompareResult =>
  present(compareFiles(requestOf(comparing)).value);

export const toldBy = (comparing: Comparing): readonly string[] =>
  compareFiles(requestOf(comparing)).diagnostics.map(({ code, message }) => `${code}: ${message}`);

export const panelLeft = ({ panels }: CompareResult, id: string) =>
  present(panels.find(({ comparison }) => comparison.panel.id === id));

export type Film = Readonly<Record<string, readonly number[]>>;

/** Readings of panels at points 1, 2, 3 … as a file. */
export const readingsText = (film: Film, unit: 'um' | 'mil' = 'um', decimals = 1): string =>
  [
    `panel,point,reading_${unit}`,
    ...Object.entries(film).flatMap(([panel, values]) =>
      values.map((value, i) => `${panel},${i + 1},${value.toFixed(decimals)}`),
    ),
  ].join('\n');

/** Five panels of even film about 118 µm. */
export const soundFilm: Film = {
  bonnet: [117, 121, 115, 119, 118],
  roof: [119, 116, 120, 117, 122],
  boot: [116, 114, 119, 118, 113],
  'door-front-left': [121, 118, 116, 122, 119],
  'door-front-right': [113, 117, 119, 116, 118],
};

/** So much off each panel, a little more and less from point to point. */
export const worked = (film: Film, removed: (panel: string) => number, scatter = 1): Film =>
  Object.fromEntries(
    Object.entries(film).map(([panel, values]) => [
      panel,
      values.map(
        (value, i) => value - removed(panel) + scatter * ([0.4, -0.4, 0.2, -0.3, 0.1][i] ?? 0),
      ),
    ]),
  );
