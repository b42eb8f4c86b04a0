/** What the user may settle by hand, and what it makes of a row of names. */
import { type Diagnostic, error } from '../base/diagnostics.ts';
import { suggest } from '../base/did-you-mean.ts';
import { shownFile } from '../base/file-name.ts';
import type { FilmModel } from '../film/film-model.ts';
import type { LeftOpen } from '../film/template/panel-names.ts';
import type { Limits } from './bytes/limits.ts';
import type { TableUnit } from './cells/unit.ts';
import { type GaugeRole, gaugeVocabulary } from './header/gauge-vocabulary.ts';
import type { LayoutContext, LayoutName } from './header/layout.ts';
import type { Source } from './rows/source.ts';
import type { Row } from './rows/tokens.ts';

/** What readings of vehicle paint can be, and how far two of one place may differ. */
export type PlausibleReadings = Pick<
  FilmModel['measurement'],
  | 'largestReading'
  | 'doubtfulUnder'
  | 'doubtfulOver'
  | 'fixed'
  | 'proportional'
  | 'repeatability'
  | 'rounds'
>;

/**
 * Role → a header of the file, or the number of a column from 1. Several where texts of two columns
 * are read as one, as date and time are.
 */
export type ColumnsGiven = ReadonlyMap<string, string | readonly string[]>;

export type IntakeOptions = {
  readonly unit?: TableUnit;
  /** The unit where neither the user nor the file says one: that of a shop. */
  readonly usualUnit?: TableUnit;
  readonly delimiter?: ',' | ';' | '\t' | '|';
  readonly decimal?: '.' | ',';
  /** A name of the encoding, where the bytes do not tell. */
  readonly encoding?: string;
  readonly layout?: LayoutName;
  /** The line that names the columns, from 1. */
  readonly headerLine?: number;
  readonly columns?: ColumnsGiven;
  /** A panel's name in the file → the name it is to have; the empty name, that of a bare list. */
  readonly panelNames?: ReadonlyMap<string, string>;
  readonly plausible: PlausibleReadings;
  /** Whether some template knows the name: used only to recognise the columns of a wide layout. */
  readonly isPanel: (label: string) => boolean;
  /** Whether a name is that of a panel, or says where on the car and leaves several open: `LF`. */
  readonly mayBePanel?: (label: string) => boolean;
  /** The panels that a name leaves open, and why. */
  readonly leftOpen?: ((label: string) => LeftOpen | undefined) | undefined;
  /**
   * Whether a unit that fits no reading of a table as this program lays it out is told and not refused: who wrote such a
   * table in mil is graded by it.
   */
  readonly ownUnitTold?: boolean;
  /** How large the parts of a file may be, where the usual limits are too narrow. */
  readonly limits?: Limits;
};

const plain = (text: string): string => text.trim().normalize('NFC').toLowerCase();

/** How rows of names are looked at under these options. */
export function layoutContext(options: IntakeOptions): LayoutContext {
  const { panelNames, columns } = options;
  const named = new Set([...(panelNames?.keys() ?? [])].map(plain));
  const isPanel = (label: string): boolean =>
    options.isPanel(label) || (label !== '' && named.has(plain(label)));
  const mayBePanel = (label: string): boolean =>
    isPanel(label) || options.mayBePanel?.(label) === true;
  const context = { isPanel, mayBePanel, captions: false, layout: options.layout };
  return columns === undefined ? context : { ...context, given: rolesGiven(columns) };
}

export const columnRoles = Object.keys(gaugeVocabulary) as readonly GaugeRole[];
const roleNamed = (name: string): GaugeRole | undefined =>
  columnRoles.find((role) => role === name);

const pairsOf = (columns: ColumnsGiven): readonly (readonly [string, string])[] =>
  [...columns].flatMap(([role, names]) =>
    (typeof names === 'string' ? [names] : names).map((name) => [role, name] as const),
  );

/** Column → role in a row that has every column named by the user; by number alone any row has. */
function rolesGiven(columns: ColumnsGiven): NonNullable<LayoutContext['given']> {
  const pairs = pairsOf(columns);
  return (cells) => {
    const given = new Map<number, GaugeRole>();
    for (const [name, wanted] of pairs) {
      const role = roleNamed(name);
      const column = columnOf(cells, wanted);
      if (role === undefined || column === undefined) return undefined;
      given.set(column, role);
    }
    return given;
  };
}

function columnOf(cells: readonly string[], wanted: string): number | undefined {
  const named = cells.findIndex((cell) => plain(cell) === plain(wanted));
  if (named !== -1) return named;
  const number = /^[1-9]\d{0,4}$/u.test(wanted) ? Number(wanted) - 1 : -1;
  return number >= 0 && number < cells.length ? number : undefined;
}

/** Columns the user gave by their numbers alone, as a table without a header may have them. */
export function columnsByNumber(
  columns: ColumnsGiven | undefined,
): ReadonlyMap<GaugeRole, number> | undefined {
  const numbers = new Map<GaugeRole, number>();
  for (const [name, wanted] of pairsOf(columns ?? new Map())) {
    const role = roleNamed(name);
    if (role === undefined || !/^[1-9]\d{0,4}$/u.test(wanted)) return undefined;
    numbers.set(role, Number(wanted) - 1);
  }
  return numbers.size === 0 ? undefined : numbers;
}

/** Roles that do not exist. */
export const unknownRoles = ({ columns }: IntakeOptions): readonly Diagnostic[] =>
  [...(columns?.keys() ?? [])]
    .filter((name) => roleNamed(name) === undefined)
    .map((name) =>
      error('usage-option-value', `"${name}" is no role of a column`, {
        hint: suggest(name, columnRoles) ?? `one of ${columnRoles.join(', ')}`,
      }),
    );

/** Columns that the user named and no row has. */
export function missingColumns(
  source: Source,
  rows: readonly Row[],
  { columns, headerLine }: IntakeOptions,
): readonly Diagnostic[] {
  const wanted = pairsOf(columns ?? new Map()).map(([, name]) => name);
  const count = ({ cells }: Row): number =>
    wanted.filter((w) => columnOf(cells, w) !== undefined).length;
  const own = headerLine === undefined ? rows : rows.filter(({ line }) => line === headerLine);
  const [nearest] = [...own].sort((a, b) => count(b) - count(a));
  if (nearest === undefined) return [];
  const names = nearest.cells.map((cell) => cell.trim()).filter((name) => name !== '');
  return wanted
    .filter((name) => columnOf(nearest.cells, name) === undefined)
    .map((name) =>
      error('column-missing', `there is no column "${name}", which was asked for`, {
        at: source.placeAt(nearest.start, 1),
        hint: suggest(name, names) ?? `columns found: ${names.join(', ')}`,
      }),
    );
}

/** Names of panels that the user gave and no file has: `seen` are those of all files. */
export const unusedPanelNames = (
  files: readonly string[],
  names: Iterable<string>,
  seen: ReadonlySet<string>,
): readonly Diagnostic[] =>
  [...names]
    .filter((name) => name !== '' && !seen.has(plain(name)))
    .map((name) =>
      error(
        'usage-option-value',
        `no panel of ${files.map(shownFile).join(', ')} is called "${name}"`,
        {
          hint: suggest(name, seen) ?? `panels found: ${[...seen].join(', ')}`,
        },
      ),
    );

/** The name a panel is to have, and a record of the names that were met. */
export function panelSpelling(panelNames: ReadonlyMap<string, string> | undefined): {
  readonly spell: (text: string) => string;
  readonly seen: ReadonlySet<string>;
} {
  const seen = new Set<string>();
  if (panelNames === undefined || panelNames.size === 0) return { spell: (text) => text, seen };
  const wanted = new Map([...panelNames].map(([name, panel]) => [plain(name), panel]));
  return {
    spell: (text) => {
      const name = plain(text);
      seen.add(name);
      return wanted.get(name) ?? text;
    },
    seen,
  };
}
