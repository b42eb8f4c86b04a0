/**
 * Gloss at the same places before and after: `panel,point,angle_deg,before_gu,after_gu`, and haze where it
 * was read, `before_haze,after_haze`. One row a place, both values at the one angle that it names, so that
 * two angles cannot be taken for one change.
 */
import { error, found, type Outcome, type Place, refused } from '../base/diagnostics.ts';
import { micrometres } from '../base/units.ts';
import type { GlossAngle, GlossPlace } from '../film/compare/compare-gloss.ts';
import type { GaugeFileText } from './bytes/decode.ts';
import type { DecimalDecision } from './cells/decimal.ts';
import { numberShape } from './cells/numbers.ts';
import { settleNumber } from './cells/settled-number.ts';
import { meansNoReading } from './cells/words.ts';
import type { Vocabulary } from './header/header.ts';
import type { Row } from './rows/tokens.ts';
import { readSmallTable, type SmallTable } from './tables/small-table.ts';

const glossVocabulary = {
  panel: 'panel name|part|body part|area|location',
  point: 'mark|marked point|place',
  angle: 'angle deg|geometry|degrees',
  before: 'before gu|gloss before',
  after: 'after gu|gloss after',
  haze_before: 'before haze|haze before',
  haze_after: 'after haze|haze after',
} as const satisfies Vocabulary<string>;
type Role = keyof typeof glossVocabulary;
type GlossTable = SmallTable<Role>;

export type GlossRow = Omit<GlossPlace, 'panel'> & {
  /** As the file names it. */
  readonly panel: string;
  readonly at: Place;
};

/** Gloss meters show up to 2000 GU on mirrors (ISO 2813). */
const MOST_GLOSS = 2000;
const ANGLES: readonly number[] = [20, 60, 85];

export function readGlossFile(file: GaugeFileText): Outcome<readonly GlossRow[]> {
  const { value: table, diagnostics } = readSmallTable<Role>(file, {
    vocabulary: glossVocabulary,
    needed: ['panel', 'angle', 'before', 'after'],
    columns: 'panel,point,angle_deg,before_gu,after_gu,before_haze,after_haze',
  });
  if (table === undefined) return refused(...diagnostics);
  const decimal = table.decimalOf(
    ['before', 'after', 'haze_before', 'haze_after'],
    'um',
    micrometres(MOST_GLOSS),
  );
  const rows = table.rows.flatMap((row, i) => readRow(table, row, i, decimal) ?? []);
  const { findings } = table;
  if (rows.length === 0 && !findings.hasErrors()) {
    findings.addAll([
      error('no-readings', 'the file holds no reading of gloss', { at: { file: file.name } }),
    ]);
  }
  return findings.hasErrors() ? refused(...findings.list()) : found(rows, findings.list());
}

function readRow(
  table: GlossTable,
  row: Row,
  index: number,
  decimal: DecimalDecision,
): GlossRow | undefined {
  const panel = table.textOf(row, 'panel');
  if (panel === '') {
    table.invalid(row, 'panel', 'the row names no panel', 'name it, or remove the row');
  }
  const angle = readAngle(table, row);
  const gloss = (role: Role): number | null => readNumber(table, row, role, decimal);
  const [before, after] = [gloss('before'), gloss('after')];
  const haze = readHaze(table, row, decimal);
  const point = table.textOf(row, 'point');
  return panel === '' || angle === null || before === null || after === null
    ? undefined
    : {
        panel,
        point: point === '' ? `${index + 1}` : point,
        angle,
        before,
        after,
        haze,
        at: table.placeOf(row, 'panel'),
      };
}

function readAngle(table: GlossTable, row: Row): GlossAngle | null {
  const text = table.textOf(row, 'angle');
  const degrees = Number(/^(\d+)\s*(?:°|deg)?$/iu.exec(text)?.[1] ?? Number.NaN);
  return ANGLES.includes(degrees)
    ? (degrees as GlossAngle)
    : table.invalid(
        row,
        'angle',
        `"${text}" is no angle of gloss`,
        'paint is read at 20, 60 or 85 degrees; before and after at the same one',
      );
}

function readHaze(table: GlossTable, row: Row, decimal: DecimalDecision): GlossRow['haze'] {
  const roles = ['haze_before', 'haze_after'] as const;
  const empty = roles.filter((role) => !table.has(role) || meansNoReading(table.textOf(row, role)));
  if (empty.length === roles.length) return null;
  const [before, after] = roles.map((role) => readNumber(table, row, role, decimal));
  return before === null || after === null || before === undefined || after === undefined
    ? null
    : { before, after };
}

function readNumber(
  table: GlossTable,
  row: Row,
  role: Role,
  decimal: DecimalDecision,
): number | null {
  if (!table.has(role)) {
    return table.invalid(row, 'panel', 'haze on one side only', 'give both, or neither');
  }
  const text = table.textOf(row, role);
  const hint = 'give the value before and the one after at the same place, in gloss units';
  if (meansNoReading(text)) return table.invalid(row, role, 'no value here', hint);
  const shape = numberShape(text);
  if (shape === undefined || shape.suffix.trim() !== '') {
    return table.invalid(row, role, `"${text}" is no value of gloss or haze`, hint);
  }
  const settled = settleNumber(text, shape, () => 0, decimal);
  if (settled.value === undefined) {
    return table.invalid(row, role, settled.message, settled.hint ?? hint);
  }
  return settled.value >= 0 && settled.value <= MOST_GLOSS
    ? settled.value
    : table.invalid(row, role, `"${text}" is out of range`, `0 to ${MOST_GLOSS} gloss units`);
}
