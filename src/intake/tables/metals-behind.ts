/**
 * `112 F`, `109.0 µm NFe`: a metal behind every number of the readings, by which principle the gauge read it. The signs
 * are of one kind throughout, and a letter alone is a metal only where the other stands behind some number as well: `F`
 * behind all of them may be anything.
 *
 * What is taken off becomes blanks, so that every cell keeps its length and its place. Where a row has one reading, its
 * metal is that of the row.
 */
import { hasDigit } from '../../base/letters.ts';
import { cellText } from '../rows/row.ts';
import { rewrittenCells } from './dressed-numbers.ts';
import { type Table, widest } from './table.ts';

const behind = /(?<=^[\d.,]+(?:\s*[µμ\p{L}]{2,7}\.?\s)?\s*)(?:N?Fe|NF|[FN])$/u;
const kinds: readonly (readonly string[])[] = [
  ['Fe', 'NFe'],
  ['Fe', 'NF'],
  ['F', 'NF'],
  ['F', 'N'],
];

export function takeMetalsBehind(
  table: Table,
): { readonly table: Table; readonly evidence: string } | undefined {
  const columns = table.layout.readings.map(({ column }) => column);
  const [first] = columns;
  const some = table.rows.find((row) => columns.some((k) => hasDigit(cellText(row, k))));
  if (first === undefined || some === undefined) return undefined;
  if (!columns.some((k) => behind.test(cellText(some, k)))) return undefined;
  const numbers = table.rows
    .flatMap((row) => columns.map((k) => cellText(row, k)))
    .filter((text) => /^\d/u.test(text));
  const metals = new Set(numbers.map(metalOf));
  const own = kinds.find((pair) => [...metals].every((metal) => pair.includes(metal)));
  if (own === undefined || (metals.size < own.length && !metals.has('Fe') && !metals.has('NFe')))
    return undefined;
  const bare = rewrittenCells(table, columns, withoutMetal);
  const said = `behind every reading stands its metal, ${[...metals].join(' or ')}`;
  return columns.length > 1 || table.layout.columns.has('substrate')
    ? { table: bare, evidence: `${said}: it is not read` }
    : { table: withMetals(bare, table, first), evidence: said };
}

const metalOf = (text: string): string => behind.exec(text)?.[0] ?? '';

const withoutMetal = (cell: string): string => {
  const metal = metalOf(cell.trim());
  return metal === '' ? cell : cell.replace(/\p{L}+(\s*)$/u, `${' '.repeat(metal.length)}$1`);
};

/** The metals in a column of their own behind all others. */
function withMetals({ layout, rows, ...table }: Table, written: Table, reading: number): Table {
  const column = Math.max(widest(rows), layout.header.length);
  const padded = <T>(own: readonly T[], none: T): readonly T[] =>
    Array.from({ length: column }, (_, k) => own[k] ?? none);
  return {
    ...table,
    layout: {
      ...layout,
      header: [
        ...padded(layout.header, { text: '', label: '' }),
        { text: '', label: '', role: 'substrate' },
      ],
      columns: new Map(layout.columns).set('substrate', column),
    },
    rows: rows.map((row, k) => {
      const from = written.rows[k];
      const metal = from === undefined ? '' : metalOf(cellText(from, reading));
      return { ...row, cells: [...padded(row.cells, ''), metal] };
    }),
  };
}
