/**
 * Checks of a gauge on shims: `shim_um,shim_uncertainty_um,reading_um,repeat,check` → readings.
 *
 * A shim of 0 is the bare plate. Its uncertainty is the expanded one of a certificate, k = 2; a shim has
 * one, and which shims there are is not a question of the file. `check` parts what was read before the work
 * from what was read after it.
 */
import { error, found, type Outcome, type Place, refused } from '../base/diagnostics.ts';
import { type Micrometres, micrometres } from '../base/units.ts';
import type { ShimReading } from '../film/gauge/gauge-check.ts';
import type { GaugeFileText } from './bytes/decode.ts';
import type { DecimalDecision } from './cells/decimal.ts';
import { type ReadingUnit, unitSign } from './cells/unit.ts';
import { meansNoReading } from './cells/words.ts';
import { gaugeVocabulary } from './header/gauge-vocabulary.ts';
import type { Vocabulary } from './header/header.ts';
import type { Row } from './rows/tokens.ts';
import { readLength, readSmallTable, type SmallTable } from './tables/small-table.ts';

export type GaugeCheckTime = 'before' | 'after';

export type GaugeCheckReading = ShimReading & {
  /** Null where the file has no such column. */
  readonly check: GaugeCheckTime | null;
};

export type GaugeCheckOptions = {
  /** Of columns whose names say none. */
  readonly unit?: ReadingUnit;
  /** Expanded (k = 2), of shims for which the file states none. */
  readonly shimUncertainty?: Micrometres;
};

const checkVocabulary = {
  shim: `foil|shims|shim thickness|foil thickness|shim value|foil value|
    nominal|reference|standard|certified|certified value|true value`,
  shim_uncertainty: 'foil uncertainty|uncertainty|expanded uncertainty|u95',
  reading: gaugeVocabulary.reading,
  repeat: gaugeVocabulary.repeat,
  check: 'when|run',
} as const satisfies Vocabulary<string>;
type Role = keyof typeof checkVocabulary;
type CheckTable = SmallTable<Role>;

/** Thicker than any shim for a paint gauge, in µm; what a gauge may show there, and a certificate state. */
const MOST = { shim: 3000, reading: 3500, uncertainty: 50 } as const;
/** On the bare plate a gauge may show a little less than nothing. */
const LEAST_READING = -50;

const COLUMNS = 'shim_um,shim_uncertainty_um,reading_um,repeat';

export type GaugeChecks = {
  readonly readings: readonly GaugeCheckReading[];
  /** In which the gauge showed them. */
  readonly unit: ReadingUnit;
};

export function readGaugeChecks(
  file: GaugeFileText,
  options: GaugeCheckOptions,
): Outcome<GaugeChecks> {
  const { value: table, diagnostics } = readSmallTable<Role>(file, {
    vocabulary: checkVocabulary,
    needed: ['shim', 'reading'],
    columns: COLUMNS,
  });
  if (table === undefined) return refused(...diagnostics);
  const { findings } = table;
  const reader = rowReader(table, options);
  const rows = table.rows.flatMap((row) => {
    const reading = reader(row);
    return reading === undefined ? [] : [{ row, reading }];
  });
  tellUncertaintiesApart(table, rows);
  tellTwice(table, rows);
  if (rows.length === 0 && !findings.hasErrors()) {
    findings.addAll([error('no-readings', `${file.name} holds no reading of a shim`)]);
  }
  return findings.hasErrors()
    ? refused(...findings.list())
    : found(
        {
          readings: rows.map(({ reading }) => reading),
          unit: table.unitOf('reading', options.unit) ?? 'um',
        },
        findings.list(),
      );
}

type ReadRow = { readonly row: Row; readonly reading: GaugeCheckReading };

function rowReader(
  table: CheckTable,
  { unit: stated, shimUncertainty }: GaugeCheckOptions,
): (row: Row) => GaugeCheckReading | undefined {
  const units = {
    shim: table.unitOf('shim', stated),
    reading: table.unitOf('reading', stated),
    shim_uncertainty: table.unitOf('shim_uncertainty', stated),
  };
  const rules = table.decimalOf(
    ['shim', 'shim_uncertainty', 'reading'],
    units.reading ?? 'um',
    micrometres(MOST.reading),
  );
  if (!table.has('shim_uncertainty') && shimUncertainty === undefined) {
    table.findings.addAll([noUncertainty(table.headingOf('shim'))]);
    return () => undefined;
  }
  const lengthOf = (row: Row, role: keyof typeof units, bounds: Bounds) =>
    readCell(table, row, role, { unit: units[role], rules, bounds });
  const uncertaintyOf = (row: Row): Micrometres | null => {
    const text = table.textOf(row, 'shim_uncertainty');
    return shimUncertainty !== undefined && meansNoReading(text)
      ? shimUncertainty
      : lengthOf(row, 'shim_uncertainty', A_SHIM_UNCERTAINTY);
  };
  return (row) => {
    if (meansNoReading(table.textOf(row, 'reading'))) {
      const message = 'no reading of the shim in this row';
      const at = table.placeOf(row, 'reading');
      table.findings.add('warning', 'reading-missing', () => ({ message, at }));
      return undefined;
    }
    const shim = lengthOf(row, 'shim', A_SHIM);
    const uncertainty = uncertaintyOf(row);
    const reading = lengthOf(row, 'reading', A_READING);
    const check = checkTime(table, row);
    return shim === null || uncertainty === null || reading === null || check === undefined
      ? undefined
      : { shim, shimUncertainty: uncertainty, reading, check };
  };
}

type Bounds = { readonly what: string; readonly least: number; readonly most: number };
const A_SHIM: Bounds = { what: 'the thickness of a shim', least: 0, most: MOST.shim };
const A_SHIM_UNCERTAINTY: Bounds = {
  what: 'the uncertainty of a shim',
  least: 0,
  most: MOST.uncertainty,
};
const A_READING: Bounds = {
  what: 'a reading of a shim',
  least: LEAST_READING,
  most: MOST.reading,
};

const noUncertainty = (at: Place) =>
  error('column-missing', 'nothing says what the shims may be off by', {
    at,
    hint: 'copy it from their certificate (k = 2) into a column shim_uncertainty_um, or give --shim-uncertainty-um',
  });

function readCell(
  table: CheckTable,
  row: Row,
  role: Role,
  {
    unit,
    rules,
    bounds,
  }: { unit: ReadingUnit | undefined; rules: DecimalDecision; bounds: Bounds },
): Micrometres | null {
  // The heading is refused already.
  if (unit === undefined) return null;
  const read = readLength(table.textOf(row, role), unit, rules, bounds);
  const { least, most } = bounds;
  const usual = `${bounds.what} is a number of ${unitSign[unit]}, from ${least} to ${most} µm`;
  return read.value ?? table.invalid(row, role, read.message, read.hint ?? usual);
}

/** Null without the column, undefined for a word that is neither. */
function checkTime(table: CheckTable, row: Row): GaugeCheckTime | null | undefined {
  if (!table.has('check')) return null;
  const text = table.textOf(row, 'check');
  const word = text.toLowerCase();
  if (word === 'before' || word === 'after') return word;
  table.invalid(row, 'check', `"${text}" is no check`, 'write before or after');
  return undefined;
}

/** Two uncertainties of one shim contradict each other, or are of two shims that are called the same. */
function tellUncertaintiesApart(table: CheckTable, rows: readonly ReadRow[]): void {
  const first = new Map<number, ReadRow>();
  for (const one of rows) {
    const { shim, shimUncertainty } = one.reading;
    const known = first.get(shim);
    if (known === undefined) first.set(shim, one);
    else if (known.reading.shimUncertainty !== shimUncertainty) {
      const role = table.has('shim_uncertainty') ? 'shim_uncertainty' : 'shim';
      const message = `the shim of ${shim} µm is uncertain by ${shimUncertainty} µm here, and by ${known.reading.shimUncertainty} µm in line ${known.row.line}`;
      table.invalid(one.row, role, message, 'a shim has one uncertainty: mend the cell');
    }
  }
}

/** A row pasted twice would pass for a reading that repeats perfectly. */
function tellTwice(table: CheckTable, rows: readonly ReadRow[]): void {
  if (!table.has('repeat')) return;
  const first = new Map<string, number>();
  for (const { row, reading } of rows) {
    const repeat = table.textOf(row, 'repeat');
    if (repeat === '') continue;
    const key = JSON.stringify([reading.shim, reading.check, repeat]);
    const line = first.get(key);
    if (line === undefined) first.set(key, row.line);
    else {
      const message = `repeat ${repeat} of the shim of ${reading.shim} µm stands in line ${line} already`;
      table.invalid(row, 'repeat', message, 'number the readings on, or remove the row');
    }
  }
}
