/** What each panel gains by each thing, as a table; panels of the same figures share a row. */

import { groupBy } from '../../base/group-by.ts';
import { thicknessText } from '../../base/sentence.ts';
import type { LengthUnit } from '../../base/units.ts';
import type { Help, HelpCode } from '../../film/help/what-would-help.ts';
import { type PanelSurvey, partName } from '../../film/survey.ts';
import { column, filmFigures } from '../columns.ts';
import { type Block, cell } from '../model.ts';

export type Gain = Help & { readonly part: PanelSurvey };

/** Gains that differ from panel to panel have a column each. */
const COLUMNS = ['history', 'clear', 'test-spot'] as const satisfies readonly HelpCode[];
export type ColumnCode = (typeof COLUMNS)[number];

/** `coat` is what is read by itself. */
export const titleOf = (code: ColumnCode, coat: string): string =>
  ({ history: 'history', clear: `${coat} read`, 'test-spot': 'test spot' })[code];

/** Read alone, a cell must not sound like something that was measured. */
const wouldHelp = (code: ColumnCode, coat: string): string => {
  const what = {
    history: 'knowing its history',
    clear: `reading the ${coat}`,
    'test-spot': 'a test spot',
  };
  return `would help: ${what[code]}: more may go`;
};

/** Those that help, that of most first. */
export function columnsOf(worth: readonly Gain[]): readonly ColumnCode[] {
  const total = (code: HelpCode): number =>
    worth.reduce((sum, one) => (one.code === code ? sum + one.gain : sum), 0);
  return COLUMNS.filter((code) => worth.some((one) => one.code === code)).sort(
    (one, other) => total(other) - total(one),
  );
}

type GainRow = { readonly names: string; readonly cells: readonly string[] };

export function gainRows(
  gains: readonly Gain[],
  columns: readonly ColumnCode[],
  unit: LengthUnit,
): readonly GainRow[] {
  const rows = [...groupBy(gains, ({ part }) => part)].map(([part, own]) => ({
    part,
    cells: columns.map((code) => {
      const found = own.find((one) => one.code === code);
      return found === undefined ? '–' : `+${thicknessText(found.gain, unit, 2)}`;
    }),
  }));
  const same = groupBy(
    rows.filter(({ cells }) => cells.some((text) => text !== '–')),
    ({ cells }) => cells.join(' '),
  );
  return [...same.values()].map((group) => ({
    names: group.map(({ part }) => partName(part)).join(', '),
    cells: group[0].cells,
  }));
}

export const gainTable = (
  rows: readonly GainRow[],
  columns: readonly ColumnCode[],
  { coat, unit }: { readonly coat: string; readonly unit: LengthUnit },
): Block => ({
  kind: 'table',
  columns: [
    column('panel'),
    ...columns.map((code) => ({
      ...filmFigures(titleOf(code, coat), unit),
      said: wouldHelp(code, coat),
    })),
  ],
  rows: rows.map(({ names, cells }) => [cell(names), ...cells.map((text) => cell(text))]),
});
