/**
 * A list of defects seen on the vehicle: `panel,defect,grade,extent,depth_um,note` → rows.
 *
 * The grade counts 0 (none) to 5 (severe), half steps allowed, in the sense of ISO 4628-1. The name
 * of the defect is kept as written: which defects there are is not a question of the file.
 */
import { found, type Outcome, refused } from '../base/diagnostics.ts';
import type { Micrometres } from '../base/units.ts';
import type { ReadingOrigin } from '../film/reading.ts';
import type { GaugeFileText } from './bytes/decode.ts';
import type { DecimalDecision } from './cells/decimal.ts';
import { numberShape } from './cells/numbers.ts';
import { settleNumber } from './cells/settled-number.ts';
import { type ReadingUnit, unitSign } from './cells/unit.ts';
import { meansNoReading } from './cells/words.ts';
import { type DefectRole, defectVocabulary } from './header/header.ts';
import type { Row } from './rows/tokens.ts';
import { readLength, readSmallTable, type SmallTable } from './tables/small-table.ts';

export type DefectRow = {
  readonly panel: string;
  readonly defect: string;
  readonly grade: number | null;
  readonly extent: string;
  readonly depth: Micrometres | null;
  readonly note: string;
  /** Where the row's panel cell stands. */
  readonly origin: ReadingOrigin;
  readonly lineText: string;
};

/** What a number of the file is read by. */
type Rules = {
  readonly decimal: DecimalDecision;
  readonly unit: ReadingUnit | undefined;
  /** The most that a gauge shows: no defect is deeper. */
  readonly largest: Micrometres;
};

/** `largest` is the most that a gauge shows, in µm: no defect is deeper. */
export function readDefectsFile(
  file: GaugeFileText,
  largest: Micrometres,
): Outcome<readonly DefectRow[]> {
  const { value: table, diagnostics } = readSmallTable<DefectRole>(file, {
    vocabulary: defectVocabulary,
    needed: ['panel', 'defect'],
    columns: 'panel,defect,grade,extent,depth_um,note',
  });
  if (table === undefined) return refused(...diagnostics);
  const unit = table.unitOf('depth');
  const decimal = table.decimalOf(['grade', 'depth'], unit ?? 'um', largest);
  const rows = table.rows.map((row) => readRow(table, row, { decimal, unit, largest }));
  const { findings } = table;
  return findings.hasErrors() ? refused(...findings.list()) : found(rows, findings.list());
}

type DefectTable = SmallTable<DefectRole>;

function readRow(table: DefectTable, row: Row, rules: Rules): DefectRow {
  const [panel, defect] = [table.textOf(row, 'panel'), table.textOf(row, 'defect')];
  const panelAt = table.placeOf(row, 'panel');
  if (panel === '') {
    table.findings.add('error', 'panel-missing', () => ({
      message: 'the row names no panel',
      at: panelAt,
    }));
  }
  if (defect === '') {
    table.invalid(row, 'defect', 'the row names no defect', 'name it, or remove the row');
  }
  const { file, line = row.line, column = 1, lineText = '' } = panelAt;
  return {
    panel,
    defect,
    grade: readGrade(table, row, rules),
    depth: readDepth(table, row, rules),
    extent: table.textOf(row, 'extent'),
    note: table.textOf(row, 'note'),
    origin: { file, line, column },
    lineText,
  };
}

function readGrade(table: DefectTable, row: Row, { decimal }: Rules): number | null {
  const text = table.textOf(row, 'grade');
  if (meansNoReading(text)) return null;
  const hint = 'grades run from 0 (none) to 5 (severe), half steps allowed';
  const message = `"${text}" is not a grade`;
  const refuse = (why: string): null => table.invalid(row, 'grade', why, hint);
  const shape = numberShape(text);
  if (shape === undefined || shape.suffix !== '') return refuse(message);
  const settled = settleNumber(text, shape, () => 0, decimal);
  const grade = settled.value;
  if (grade === undefined) return refuse(settled.message);
  const allowed = grade >= 0 && grade <= 5 && Number.isInteger(grade * 2);
  return allowed ? grade : refuse(message);
}

function readDepth(
  table: DefectTable,
  row: Row,
  { decimal, unit, largest }: Rules,
): Micrometres | null {
  const text = table.textOf(row, 'depth');
  if (unit === undefined || meansNoReading(text)) return null;
  const hint = `a depth is a number of ${unitSign[unit]}, or empty where it is not known`;
  const depth = readLength(text, unit, decimal, { what: 'a depth', least: 0, most: largest });
  return depth.value ?? table.invalid(row, 'depth', depth.message, depth.hint ?? hint);
}
