/** What must not happen on paper: a row or a drawing in two pieces, a table that goes on without its heading. */
import { type Part, type PrintedPage, partsOf } from './tagged-pdf.ts';

const WHOLE = { TR: 'a row', Figure: 'a drawing', LI: 'a point of a list' } as const;

export function printFaults({ sheets, root }: PrintedPage): readonly string[] {
  const cut = Object.entries(WHOLE).flatMap(([role, name]) =>
    partsOf(root, role)
      .filter((part) => part.sheets.length > 1 && !isHeading(part))
      .map((part) => `${name} is cut between sheets ${part.sheets.join(' and ')}`),
  );
  const headless = partsOf(root, 'Table').flatMap((table) => {
    const heading = new Set(
      partsOf(table, 'TR')
        .filter(isHeading)
        .flatMap((row) => row.sheets),
    );
    const without = table.sheets.filter((sheet) => !heading.has(sheet));
    return heading.size === 0
      ? []
      : without.map((sheet) => `sheet ${sheet} has a table whose heading does not repeat`);
  });
  const used = new Set(root.sheets);
  const empty = Array.from({ length: sheets }, (_, at) => at + 1).filter((one) => !used.has(one));
  return [...cut, ...headless, ...empty.map((sheet) => `sheet ${sheet} is empty`)];
}

/** The row of headings stands on every sheet that its table reaches. */
const isHeading = ({ parts }: Part): boolean =>
  parts.length > 0 && parts.every(({ role }) => role === 'TH');
