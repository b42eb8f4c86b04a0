/**
 * What was worked of a plan: `panel,zone,step,sets`, a row a step. `step` is its number in the plan or its
 * `machine/pad/product`; left empty it is the whole panel, which only says something with 0 sets.
 */
import { error, found, type Outcome, type Place, refused } from '../base/diagnostics.ts';
import type { ZoneName } from '../film/survey.ts';
import type { GaugeFileText } from './bytes/decode.ts';
import type { Vocabulary } from './header/header.ts';
import type { Row } from './rows/tokens.ts';
import { readSmallTable, type SmallTable } from './tables/small-table.ts';

const workedVocabulary = {
  panel: 'panel name|part|body part|area|location',
  zone: 'part of panel',
  step: 'step number|combination',
  sets: 'sets done|done|sets worked',
  note: 'notes|comment|comments|remark|remarks',
} as const satisfies Vocabulary<string>;
type Role = keyof typeof workedVocabulary;

export type WorkedRow = {
  /** As the file names it. */
  readonly panel: string;
  /** Null for the panel, or both of its zones. */
  readonly zone: ZoneName | null;
  /** Null for all steps. */
  readonly step: string | null;
  readonly sets: number;
  readonly at: Place;
};

const MOST_SETS = 1000;
const zoneNames: Readonly<Record<string, ZoneName | null>> = {
  '': null,
  thinner: 'thinner',
  thicker: 'thicker',
};

export function readWorkedFile(file: GaugeFileText): Outcome<readonly WorkedRow[]> {
  const { value: table, diagnostics } = readSmallTable<Role>(file, {
    vocabulary: workedVocabulary,
    needed: ['panel', 'sets'],
    columns: 'panel,zone,step,sets',
  });
  if (table === undefined) return refused(...diagnostics);
  const rows = table.rows.flatMap((row) => readRow(table, row) ?? []);
  const { findings } = table;
  if (rows.length === 0 && !findings.hasErrors()) {
    findings.addAll([
      error('no-readings', 'the file says of no panel what was worked', {
        at: { file: file.name },
      }),
    ]);
  }
  return findings.hasErrors() ? refused(...findings.list()) : found(rows, findings.list());
}

function readRow(table: SmallTable<Role>, row: Row): WorkedRow | null {
  const [panel, step] = [table.textOf(row, 'panel'), table.textOf(row, 'step')];
  if (panel === '') {
    return table.invalid(row, 'panel', 'the row names no panel', 'name it, or remove the row');
  }
  const zoneText = table.textOf(row, 'zone').toLowerCase();
  const zone = zoneNames[zoneText];
  if (zone === undefined) {
    return table.invalid(
      row,
      'zone',
      `"${zoneText}" is no zone`,
      'thinner, thicker, or nothing for the whole panel',
    );
  }
  const text = table.textOf(row, 'sets');
  const sets = Number(/^\d{1,4}$/.exec(text)?.[0] ?? Number.NaN);
  if (!(sets <= MOST_SETS)) {
    return table.invalid(
      row,
      'sets',
      `"${text}" is no count of sets`,
      `how many sets were worked, 0 to ${MOST_SETS}`,
    );
  }
  if (step === '' && sets > 0) {
    return table.invalid(
      row,
      table.has('step') ? 'step' : 'panel',
      'the row names no step',
      'give its number in the plan, or its machine/pad/product; only 0 sets stand for all steps',
    );
  }
  return { panel, zone, step: step === '' ? null : step, sets, at: table.placeOf(row, 'panel') };
}
