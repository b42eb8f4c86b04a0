/** Rows of a test-spots file → trials: what belongs together, told apart from what contradicts itself. */
import {
  type Diagnostic,
  error,
  found,
  hasErrors,
  type Outcome,
  refused,
} from '../../base/diagnostics.ts';
import { suggest } from '../../base/did-you-mean.ts';
import { groupBy } from '../../base/group-by.ts';
import { degreesCelsius } from '../../base/units.ts';
import type { Defect } from '../../correction/defects.ts';
import { type Combination, ladder } from '../../correction/removal/combination.ts';
import type { SpotMark, SpotTrial } from '../../correction/spot/spot-trial.ts';
import { readSpotsFile, type SpotRow } from '../../intake/read-spots-file.ts';
import { defectNamed, unknownDefect, usualDefect } from '../plan/recorded-defects.ts';
import { listed } from '../read/match-panels.ts';
import type { LoadedFile } from '../read/read-request.ts';
import type { Settings } from '../settings/settings.ts';
import { panelsAlike } from './panels-alike.ts';
import type { PlacedTrial } from './placed-trial.ts';
import { lossDoubted, thinDoubted } from './spot-doubts.ts';
import { spotGains } from './spot-gains.ts';
import { keyingSlipsOf } from './spot-slips.ts';

type Known = Pick<Settings, 'film' | 'correction'>;

/** Trials in the order of the file; every mistake of it at once. */
export function readTrials(file: LoadedFile, settings: Known): Outcome<readonly PlacedTrial[]> {
  const rows = readSpotsFile(file, settings.film.measurement.largestReading);
  if (rows.value === undefined) return refused(...rows.diagnostics);
  const rungs = ladder(settings.correction);
  const alike = panelsAlike();
  const own = rows.value.map((row) => ({ ...row, panel: alike(row.panel) }));
  const trials = [...groupBy(own, ({ spot }) => spot).values()].map((ofSpot) =>
    toTrial(ofSpot, rungs, settings),
  );
  const diagnostics = [...rows.diagnostics, ...trials.flatMap((one) => one.diagnostics)];
  if (rows.value.length === 0) {
    diagnostics.push(
      error('no-readings', 'the file holds no test spot', {
        at: { file: file.name },
        hint: 'write a row for each marked point of a spot',
      }),
    );
  }
  return hasErrors(diagnostics)
    ? refused(...diagnostics)
    : found(
        trials.flatMap(({ value }) => value ?? []),
        diagnostics,
      );
}

function toTrial(
  rows: readonly SpotRow[],
  rungs: readonly Combination[],
  { film, correction: model }: Known,
): Outcome<PlacedTrial> {
  const [first] = rows;
  if (first === undefined) return { diagnostics: [] };
  const combination = rungs.find(
    ({ machine, pad, product }) =>
      machine.id === first.machine && pad.id === first.pad && product.id === first.product,
  );
  const named = first.defect === '' ? (firstSaid(rows, 'defect') ?? '') : first.defect;
  const kind = named === '' ? usualDefect(model) : defectNamed(named, model);
  const slips = keyingSlipsOf(rows);
  const gains = spotGains(rows, film.measurement.repeatability);
  const diagnostics = [
    ...(combination === undefined ? unknownMethods(first, model) : []),
    ...(kind === undefined ? [unknownDefect(named, first.placeOf('defect'), model)] : []),
    ...unsaidSets(rows),
    ...disagreements(rows),
    ...doubledMarks(rows),
    ...(slips.length > 0 ? slips : [...thinDoubted(rows, film.measurement), ...gains.diagnostics]),
  ];
  const sets = firstSaid(rows, 'sets');
  const place = firstSaid(rows, 'place');
  if (combination === undefined || kind === undefined || sets === undefined) {
    return refused(...diagnostics);
  }
  const temperatures = rows.flatMap(({ temperature }) => temperature ?? []);
  const colours = rows.flatMap(({ colourOnPad }) => colourOnPad ?? []);
  const trial: SpotTrial = {
    spot: first.spot,
    panel: first.panel,
    ...(place === undefined ? {} : { place }),
    combination,
    sets,
    marks: rows.flatMap((row, i) => (gains.out.has(row) ? [] : toMark(row, i))),
    gained: rows.flatMap((row, i) => (gains.out.has(row) ? toMark(row, i) : [])),
    defect: { kind, grade: model.correction.assumedGrade, depth: null },
    cleared: firstSaid(rows, 'cleared') ?? null,
    haze: firstSaid(rows, 'haze') ?? null,
    colourOnPad: colours.length === 0 ? null : colours.includes(true),
    temperature: temperatures.length === 0 ? null : degreesCelsius(Math.max(...temperatures)),
    notes: rows.flatMap(({ note }) => (note === '' ? [] : [note])),
  };
  const placed = { trial, at: first.placeOf('spot') };
  const doubts = hasErrors(diagnostics) ? [] : lossDoubted(placed, { film, correction: model });
  return found(placed, [...diagnostics, ...doubts]);
}

/** The same trial where the defect's grade is on record. */
export const withRecordedGrade = (trial: SpotTrial, defects: readonly Defect[]): SpotTrial => {
  const recorded = defects.find(({ kind }) => kind.id === trial.defect.kind.id);
  return recorded === undefined ? trial : { ...trial, defect: recorded };
};

const toMark = ({ mark, before, after }: SpotRow, i: number): readonly SpotMark[] =>
  before === null || after === null
    ? []
    : [{ name: mark === '' ? `${i + 1}` : mark, before, after }];

/** What the first row that speaks of it says. */
function firstSaid<Key extends 'sets' | 'defect' | 'cleared' | 'haze' | 'place'>(
  rows: readonly SpotRow[],
  key: Key,
): NonNullable<SpotRow[Key]> | undefined {
  const said = rows.map((row) => row[key]).find((value) => value !== null && value !== '');
  return said ?? undefined;
}

/** Taken for one, stacked sets would make a soft paint of a usual one, in the shop's rates for good. */
function unsaidSets(rows: readonly SpotRow[]): readonly Diagnostic[] {
  const [first] = rows;
  return first === undefined || firstSaid(rows, 'sets') !== undefined
    ? []
    : [
        error('cell-invalid', `no row of spot "${first.spot}" says how many sets were worked`, {
          at: first.placeOf('sets'),
          hint: 'write the number into one row of the spot: a rate is what went by set',
        }),
      ];
}

function unknownMethods(row: SpotRow, model: Settings['correction']): readonly Diagnostic[] {
  const kinds = [
    ['machine', model.machines],
    ['pad', model.pads],
    ['product', model.products],
  ] as const;
  return kinds.flatMap(([kind, things]) => {
    const ids = things.map(({ id }) => id);
    return ids.includes(row[kind])
      ? []
      : [
          error('spot-method-unknown', `"${row[kind]}" is no ${kind} of this shop`, {
            at: row.placeOf(kind),
            hint: suggest(row[kind], ids) ?? `one of ${listed(ids)}`,
          }),
        ];
  });
}

/** A spot is one trial: its rows name one combination, and where they judge, they judge alike. */
function disagreements([first, ...others]: readonly SpotRow[]): readonly Diagnostic[] {
  if (first === undefined) return [];
  const always = ['panel', 'machine', 'pad', 'product'] as const;
  const whereSaid = ['sets', 'defect', 'cleared', 'haze', 'place'] as const;
  const differs = (row: SpotRow): (typeof always | typeof whereSaid)[number] | undefined =>
    always.find((key) => row[key] !== first[key]) ??
    whereSaid.find((key) => {
      const said = firstSaid([first, ...others], key);
      return row[key] !== null && row[key] !== '' && row[key] !== said;
    });
  return others.flatMap((row) => {
    const key = differs(row);
    return key === undefined
      ? []
      : [
          error('spot-disagrees', `the rows of spot "${row.spot}" disagree about ${SAID[key]}`, {
            at: row.placeOf(key),
            hint: 'a spot is one trial: give another trial a name of its own',
          }),
        ];
  });
}

const SAID = {
  panel: 'the panel',
  machine: 'the machine',
  pad: 'the pad',
  product: 'the product',
  sets: 'the sets',
  defect: 'the defect',
  cleared: 'what was cleared',
  haze: 'the haze',
  place: 'the place',
} as const;

function doubledMarks(rows: readonly SpotRow[]): readonly Diagnostic[] {
  return rows.flatMap((row, i) =>
    row.mark !== '' && rows.findIndex(({ mark }) => mark === row.mark) < i
      ? [
          error('spot-mark-twice', `mark "${row.mark}" of spot "${row.spot}" stands here again`, {
            at: row.placeOf('mark'),
            hint: 'one row for each mark: average readings of the same mark first',
          }),
        ]
      : [],
  );
}
