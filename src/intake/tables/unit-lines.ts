/** Lines that are a unit of film thickness and nothing else: `µm`, `(mil)`. */
import { unitNamed } from '../cells/unit.ts';
import type { Row } from '../rows/tokens.ts';

export const isThickness = (word: string | undefined): word is string => {
  const unit = word === undefined ? undefined : unitNamed(word);
  return unit === 'um' || unit === 'mil';
};

export const bareUnit = ({ cells }: Row): string =>
  (cells[0] ?? '').trim().replace(/^[([]\s*|\s*[)\]]$/gu, '');

export const isUnitAlone = (row: Row): boolean =>
  row.cells.length === 1 && isThickness(bareUnit(row));
