/**
 * A column that counts the rows of each panel by another name than that of a point: `Index`, `Seq`, `Idx`, from 0 or 1.
 * Its numbers are the points; where it counts the rows of the file they are none.
 */

import { plainNames, plainWords } from '../header/header.ts';
import { countsUp } from './counting-column.ts';
import type { Table } from './table.ts';

const names = plainNames(
  `index|idx|i|seq|seq no|sequence|sequence no|sequence number|counter|count no|lfd|lfdnr|laufende nummer|zähler|indice|indice n|
  ordre|rang|índice|orden|secuencia|ordine|sequenza|volgnr|volgnummer|indeks|lp|l.p.|kolejność|pořadí|sorszám|индекс|
  порядковый номер|№ п/п|序号|序號|連番|通番|순번`,
);

export type IndexColumn = { readonly table: Table; readonly evidence: string };

export function takeIndex(table: Table): IndexColumn | undefined {
  const { layout, rows, given } = table;
  if (layout.kind !== 'long' || layout.columns.has('point') || given.point !== null)
    return undefined;
  const keys = (['vehicle', 'panel', 'layer'] as const).flatMap(
    (role) => layout.columns.get(role) ?? [],
  );
  const column = layout.unknown.find(
    (k) => names.has(plainWords(layout.header[k]?.label ?? '')) && countsUp(rows, k, keys),
  );
  const cell = column === undefined ? undefined : layout.header[column];
  if (column === undefined || cell === undefined) return undefined;
  const columns = new Map(layout.columns).set('point', column);
  const header = layout.header.with(column, { ...cell, role: 'point' });
  const unknown = layout.unknown.filter((k) => k !== column);
  return {
    table: { ...table, layout: { ...layout, header, columns, unknown } },
    evidence: `"${cell.text}" counts the rows of each panel and numbers its points`,
  };
}
