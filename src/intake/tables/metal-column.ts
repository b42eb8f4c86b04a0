/**
 * A column by another name than one of substrates, `Mode`, `Probe`, that holds the principle by which the gauge read in
 * every row: `Fe` on steel, `NFe` on aluminium. Their signs mean nothing else.
 */
import { columnTexts } from '../rows/column-texts.ts';
import type { Table } from './table.ts';

const principle = /^(?:n|non)?[-\s]?fe(?:rrous)?$/iu;

export function adoptMetalColumn({
  layout,
  ...table
}: Table): { readonly table: Table; readonly evidence: string } | undefined {
  if (layout.header.some(({ role }) => role === 'substrate')) return undefined;
  const column = layout.unknown.find((k) => {
    const texts = [...columnTexts(table.rows, k).keys()].filter((text) => text !== '');
    return texts.length > 0 && texts.every((text) => principle.test(text));
  });
  const cell = column === undefined ? undefined : layout.header[column];
  if (column === undefined || cell === undefined || cell.text === '') return undefined;
  const columns = new Map(layout.columns).set('substrate', column);
  const header = layout.header.with(column, { ...cell, role: 'substrate' });
  const unknown = layout.unknown.filter((k) => k !== column);
  return {
    table: { ...table, layout: { ...layout, header, columns, unknown } },
    evidence: `"${cell.text}" says of each reading what metal lies below the paint`,
  };
}
