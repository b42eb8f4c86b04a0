/**
 * A list of defects seen on the vehicle: `panel,defect,grade,extent,depth_um,note` → rows.
 *
 * The grade counts 0 (none) to 5 (severe), half steps allowed, in the sense of ISO 4628-1. The name
 * of the defect is kept as written: which defects there are is not a question of the file.
 */
import { error, found, type Outcome, refused } from '../base/diagnostics.ts';
import { type Micrometres, micrometres, milToMicrometres } from '../base/units.ts';
import type { ReadingOrigin } from '../film/reading.ts';
import { type DecimalDecision, decideDecimal } from './decimal.ts';
import { decode, type GaugeFileText } from './decode.ts';
import { chooseDialect } from './dialect.ts';
import { createFindings } from './findings.ts';
import { type DefectRole, defectVocabulary, headerReader } from './header.ts';
import { explainHeader } from './layout-questions.ts';
import { numberShape } from './numbers.ts';
import { settleNumber } from './settled-number.ts';
import { cellSpan, type Row, tokenize } from './tokens.ts';
import { largestIn, type ReadingUnit, unitNamed, unitSign } from './unit.ts';
import { meansNoReading } from './words.ts';

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

const readCell = headerReader(defectVocabulary);
const readHeader = (cells: readonly string[]) => cells.map(readCell);
const needed = ['panel', 'defect'] as const;

function score(cells: readonly string[]): number {
  const roles = new Set(readHeader(cells).flatMap(({ role }) => role ?? []));
  return needed.every((role) => roles.has(role)) ? roles.size : 0;
}

/** `largest` is the most that a gauge shows, in µm: no defect is deeper. */
export function readDefectsFile(
  file: GaugeFileText,
  largest: Micrometres,
): Outcome<readonly DefectRow[]> {
  const decoded = decode(file);
  if (decoded.value === undefined) return refused(...decoded.diagnostics);
  const { source } = decoded.value;
  const dialect = chooseDialect(source, undefined, score, (rows, delimiter) =>
    explainHeader(source, rows, delimiter, {
      vocabulary: defectVocabulary,
      read: readHeader,
      needed,
      otherwise: 'the first line names the columns: panel,defect,grade,extent,depth_um,note',
    }),
  );
  if (dialect.value === undefined) return refused(...dialect.diagnostics);
  const { delimiter, start, header: headerRow } = dialect.value;
  const split = tokenize(source, delimiter, start);
  if (split.value === undefined) return refused(...split.diagnostics);

  const findings = createFindings(file.name);
  const header = readHeader(headerRow.cells);
  const rows = split.value.filter(({ line }) => line > headerRow.line);
  const placeOf = (row: Row, column: number) => {
    const { offset, length } = cellSpan(source, row, column, delimiter);
    return source.placeAt(offset, length);
  };
  const columnOf = (role: DefectRole): number => header.findIndex((cell) => cell.role === role);
  const textOf = (row: Row, role: DefectRole): string => (row.cells[columnOf(role)] ?? '').trim();
  const invalid = (row: Row, column: number, message: string, hint: string): null => {
    findings.add('error', 'cell-invalid', () => ({ message, at: placeOf(row, column), hint }));
    return null;
  };

  for (const [column, cell] of header.entries()) {
    const first = cell.role === undefined ? column : columnOf(cell.role);
    if (first !== column) {
      const message = `"${cell.text}" and "${header[first]?.text}" both name the ${cell.role}`;
      findings.add('error', 'column-repeated', () => ({ message, at: placeOf(headerRow, column) }));
    }
    if (cell.role === undefined && cell.text !== '') {
      const message = `column "${cell.text}" is not read`;
      findings.add('warning', 'column-unknown', () => ({
        message,
        at: placeOf(headerRow, column),
      }));
    }
  }

  const unit = depthUnit();
  // A depth of 1.234 µm is well possible: no thinnest film decides what its mark means.
  const decimal = decideDecimal(countTexts(), largestIn(unit ?? 'um', largest), undefined, 0);
  const result = rows.flatMap((row) => readRow(row, decimal) ?? []);
  return findings.hasErrors() ? refused(...findings.list()) : found(result, findings.list());

  function depthUnit(): ReadingUnit | undefined {
    const column = columnOf('depth');
    const cell = header[column];
    if (cell === undefined) return undefined;
    if (cell.unit === 'um' || cell.unit === 'mil') return cell.unit;
    const at = placeOf(headerRow, column);
    findings.addAll([
      cell.unit === 'other'
        ? error('unit-unknown', `"${cell.unitText}" is not a unit of film thickness`, { at })
        : error('unit-missing', 'nothing says whether the depth is in µm or mil', {
            at,
            hint: 'name the column depth_um or depth_mil',
          }),
    ]);
    return undefined;
  }

  function countTexts(): ReadonlyMap<string, number> {
    const counts = new Map<string, number>();
    for (const row of rows) {
      for (const text of [textOf(row, 'grade'), textOf(row, 'depth')]) {
        counts.set(text, (counts.get(text) ?? 0) + 1);
      }
    }
    return counts;
  }

  function readRow(row: Row, rules: DecimalDecision): DefectRow | undefined {
    const extra = row.cells.findIndex((cell, k) => k >= header.length && cell.trim() !== '');
    if (extra !== -1) {
      findings.add('error', 'row-too-long', () => ({
        message: `the row has ${row.cells.length} cells, the header names ${header.length} columns`,
        at: placeOf(row, extra),
        hint: 'quote a cell that holds the delimiter',
      }));
      return undefined;
    }
    const [panel, defect] = [textOf(row, 'panel'), textOf(row, 'defect')];
    const panelAt = placeOf(row, columnOf('panel'));
    if (panel === '') {
      findings.add('error', 'panel-missing', () => ({
        message: 'the row names no panel',
        at: panelAt,
      }));
    }
    if (defect === '') {
      invalid(row, columnOf('defect'), 'the row names no defect', 'name it, or remove the row');
    }
    const grade = readGrade(row, rules);
    const depth = readDepth(row, rules);
    const { file: name, line = row.line, column = 1, lineText = '' } = panelAt;
    const origin = { file: name, line, column };
    const [extent, note] = [textOf(row, 'extent'), textOf(row, 'note')];
    return { panel, defect, grade, extent, depth, note, origin, lineText };
  }

  function readGrade(row: Row, rules: DecimalDecision): number | null {
    const text = textOf(row, 'grade');
    if (meansNoReading(text)) return null;
    const hint = 'grades run from 0 (none) to 5 (severe), half steps allowed';
    const shape = numberShape(text);
    const message = `"${text}" is not a grade`;
    if (shape === undefined || shape.suffix !== '')
      return invalid(row, columnOf('grade'), message, hint);
    const settled = settleNumber(text, shape, () => 0, rules);
    const grade = settled.value;
    if (grade === undefined) return invalid(row, columnOf('grade'), settled.message, hint);
    const allowed = grade >= 0 && grade <= 5 && Number.isInteger(grade * 2);
    return allowed ? grade : invalid(row, columnOf('grade'), message, hint);
  }

  function readDepth(row: Row, rules: DecimalDecision): Micrometres | null {
    const text = textOf(row, 'depth');
    if (unit === undefined || meansNoReading(text)) return null;
    const column = columnOf('depth');
    const hint = `a depth is a number of ${unitSign[unit]}, or empty where it is not known`;
    const shape = numberShape(text);
    const foreign = shape !== undefined && shape.suffix !== '' && unitNamed(shape.suffix) !== unit;
    if (shape === undefined || foreign)
      return invalid(row, column, `"${text}" is not a depth`, hint);
    const settled = settleNumber(text, shape, largestIn(unit, largest), rules);
    const depth = settled.value;
    if (depth === undefined) return invalid(row, column, settled.message, settled.hint);
    if (depth < 0 || depth > largestIn(unit, largest)()) {
      return invalid(row, column, `"${text}" ${unitSign[unit]} is no depth of a defect`, hint);
    }
    return unit === 'mil' ? milToMicrometres(depth) : micrometres(depth);
  }
}
