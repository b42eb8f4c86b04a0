/**
 * Records of test spots: `spot,panel,machine,pad,product,sets,mark,before_um,after_um,defect,cleared_pct,
 * haze_grade,colour_on_pad,panel_c,place,note` → rows, one for each marked point.
 *
 * Names of things stay as written: what a shop has is not a question of the file. A trial judged by eye
 * alone has empty film columns, or none. Sets are never guessed: a rate is what went by set.
 */
import { found, type Outcome, type Place, refused } from '../base/diagnostics.ts';
import { type DegreesCelsius, degreesCelsius, type Micrometres } from '../base/units.ts';
import type { GaugeFileText } from './bytes/decode.ts';
import type { DecimalDecision } from './cells/decimal.ts';
import { numberShape } from './cells/numbers.ts';
import { settleNumber } from './cells/settled-number.ts';
import { type ReadingUnit, unitSign } from './cells/unit.ts';
import { flagNamed, meansNoReading } from './cells/words.ts';
import type { Vocabulary } from './header/header.ts';
import type { Row } from './rows/tokens.ts';
import { readLength, readSmallTable, type SmallTable } from './tables/small-table.ts';

const spotVocabulary = {
  spot: 'test spot|spot name|trial',
  panel: 'panel name|part|body part|area|location',
  machine: 'tool|polisher',
  pad: 'pad type',
  product: 'polish|compound|liquid',
  sets: 'set|number of sets',
  mark: 'point|marked point',
  before: 'film before|reading before',
  after: 'film after|reading after',
  defect: 'defects|damage|fault',
  cleared: 'cleared pct|cleared %|removed pct|corrected pct',
  haze: 'haze grade',
  colour: 'colour on pad|color on pad|pad colour',
  temperature: 'panel c|panel temperature|panel temp',
  place: 'spot place|place on panel',
  note: 'notes|comment|comments|remark|remarks',
} as const satisfies Vocabulary<string>;
type SpotRole = keyof typeof spotVocabulary;

export type SpotRow = {
  readonly spot: string;
  readonly panel: string;
  readonly machine: string;
  readonly pad: string;
  readonly product: string;
  /** Null where another row of the spot says it. */
  readonly sets: number | null;
  /** Empty where the marks have no names. */
  readonly mark: string;
  readonly before: Micrometres | null;
  readonly after: Micrometres | null;
  /** Empty where it is not said. */
  readonly defect: string;
  /** Share of the defect that went, by eye. */
  readonly cleared: number | null;
  /** 0 mirror … 4 heavy. */
  readonly haze: number | null;
  readonly colourOnPad: boolean | null;
  readonly temperature: DegreesCelsius | null;
  /** Where on the panel; empty where it is not said. */
  readonly place: string;
  readonly note: string;
  /** A cell of the row as it is written, without blanks around it. */
  readonly textOf: (role: SpotRole) => string;
  /** Where a cell of the row stands. */
  readonly placeOf: (role: SpotRole) => Place;
};

const NAMES = ['spot', 'panel', 'machine', 'pad', 'product'] as const;
const MOST_SETS = 9;

/** `largest` is the most that a gauge shows, in µm. */
export function readSpotsFile(
  file: GaugeFileText,
  largest: Micrometres,
): Outcome<readonly SpotRow[]> {
  const { value: table, diagnostics } = readSmallTable<SpotRole>(file, {
    vocabulary: spotVocabulary,
    needed: [...NAMES, 'sets'],
    columns:
      'spot,panel,machine,pad,product,sets,mark,before_um,after_um,defect,cleared_pct,haze_grade,colour_on_pad,panel_c,place,note',
  });
  if (table === undefined) return refused(...diagnostics);
  const units = { before: table.unitOf('before'), after: table.unitOf('after') };
  const decimal = table.decimalOf(
    ['before', 'after', 'cleared', 'haze', 'temperature', 'sets'],
    units.before ?? units.after ?? 'um',
    largest,
  );
  const rows = table.rows.map((row) => readRow(cellsOf(table, row, decimal), units, largest));
  const { findings } = table;
  return findings.hasErrors() ? refused(...findings.list()) : found(rows, findings.list());
}

type Units = Readonly<Record<'before' | 'after', ReadingUnit | undefined>>;

/** One row's cells, and what a number in them means. */
const cellsOf = (table: SmallTable<SpotRole>, row: Row, decimal: DecimalDecision) => ({
  text: (role: SpotRole): string => table.textOf(row, role),
  placeOf: (role: SpotRole): Place => table.placeOf(row, table.has(role) ? role : 'spot'),
  refuse: (role: SpotRole, message: string, hint: string): null =>
    table.invalid(row, role, message, hint),
  decimal,
});
type Cells = ReturnType<typeof cellsOf>;

function readRow(cells: Cells, units: Units, largest: Micrometres): SpotRow {
  const named = (role: (typeof NAMES)[number]): string => {
    const text = cells.text(role);
    if (text === '') cells.refuse(role, `the row names no ${role}`, 'name it, or remove the row');
    return text;
  };
  const film = (role: 'before' | 'after') => readFilm(cells, role, units[role], largest);
  const [before, after] = [film('before'), film('after')];
  const temperature = readNumber(cells, 'temperature', temperatures);
  if ((before === null) !== (after === null)) {
    const hint = 'give both readings of a mark, or neither';
    const [has, lacks] = before === null ? ['after', 'before'] : ['before', 'after'];
    cells.refuse(before === null ? 'after' : 'before', `a reading ${has}, and none ${lacks}`, hint);
  }
  return {
    spot: named('spot'),
    panel: named('panel'),
    machine: named('machine'),
    pad: named('pad'),
    product: named('product'),
    sets: readNumber(cells, 'sets', setCounts),
    mark: cells.text('mark'),
    before,
    after,
    defect: meansNoReading(cells.text('defect')) ? '' : cells.text('defect'),
    cleared: readShare(cells),
    haze: readNumber(cells, 'haze', hazeGrades),
    colourOnPad: readFlag(cells),
    temperature: temperature === null ? null : degreesCelsius(temperature),
    place: meansNoReading(cells.text('place')) ? '' : cells.text('place'),
    note: cells.text('note'),
    textOf: cells.text,
    placeOf: cells.placeOf,
  };
}

type NumberRule = {
  readonly what: string;
  readonly allowed: (value: number) => boolean;
  readonly hint: string;
  readonly suffix: RegExp;
};

const setCounts: NumberRule = {
  what: 'a number of sets',
  allowed: (sets) => Number.isInteger(sets) && sets >= 1 && sets <= MOST_SETS,
  hint: `whole sets, 1 to ${MOST_SETS}: a set is one working of the spot with one load of product`,
  suffix: /^$/,
};
const shares: NumberRule = {
  what: 'a share cleared',
  // Nobody sees one in a hundred: it is a share of one.
  allowed: (share) => share === 0 || (share > 1 && share <= 100),
  hint: 'in per cent, from 0 (nothing went) to 100 (all of it): 85, not 0.85',
  suffix: /^%?$/,
};
const hazeGrades: NumberRule = {
  what: 'a grade of haze',
  allowed: (grade) => grade >= 0 && grade <= 4,
  hint: 'grades of haze run from 0 (mirror) to 4 (heavy, holograms)',
  suffix: /^$/,
};
const temperatures: NumberRule = {
  what: 'the temperature of a panel',
  allowed: (degrees) => degrees >= -20 && degrees <= 150,
  hint: 'degrees Celsius, -20 to 150, or empty where it was not read',
  suffix: /^(?:°?\s*c)?$/i,
};

function readNumber(
  { text: textOf, refuse, decimal }: Cells,
  role: SpotRole,
  { what, allowed, hint, suffix }: NumberRule,
): number | null {
  const text = textOf(role);
  if (meansNoReading(text)) return null;
  const shape = numberShape(text);
  if (shape === undefined || !suffix.test(shape.suffix.trim())) {
    return refuse(role, `"${text}" is not ${what}`, hint);
  }
  const settled = settleNumber(text, shape, () => 0, decimal);
  if (settled.value === undefined) return refuse(role, settled.message, settled.hint);
  return allowed(settled.value) ? settled.value : refuse(role, `"${text}" is not ${what}`, hint);
}

function readShare(cells: Cells): number | null {
  const percent = readNumber(cells, 'cleared', shares);
  return percent === null ? null : percent / 100;
}

function readFlag({ text: textOf, refuse }: Cells): boolean | null {
  const text = textOf('colour');
  if (meansNoReading(text)) return null;
  const flag = flagNamed(text);
  return flag ?? refuse('colour', `"${text}" is neither yes nor no`, 'write yes or no');
}

function readFilm(
  { text: textOf, refuse, decimal }: Cells,
  role: 'before' | 'after',
  unit: ReadingUnit | undefined,
  largest: Micrometres,
): Micrometres | null {
  const text = textOf(role);
  if (unit === undefined || meansNoReading(text)) return null;
  const film = readLength(text, unit, decimal, { what: 'a reading', least: 0, most: largest });
  const hint = `a reading is a number of ${unitSign[unit]}, or empty where the film was not read`;
  return film.value ?? refuse(role, film.message, film.hint ?? hint);
}
