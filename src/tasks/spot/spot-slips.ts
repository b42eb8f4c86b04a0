/** Readings of a trial that look keyed wrongly. Its marks lie on one place of one panel: no film there is ten times another. */
import { type Diagnostic, error } from '../../base/diagnostics.ts';
import { median } from '../../base/stats/summary.ts';
import type { SpotRow } from '../../intake/read-spots-file.ts';

/** How near to ten or a tenth of the others a reading must be, as a factor either way. */
const TOLERANCE = 1.25;

type Film = { readonly row: SpotRow; readonly role: 'before' | 'after'; readonly value: number };

/** Averaged in, a single one would make all that the trial teaches worthless: the file is refused, and what was meant is asked. */
export function keyingSlipsOf(rows: readonly SpotRow[]): readonly Diagnostic[] {
  const films = rows.flatMap((row) =>
    (['before', 'after'] as const).flatMap((role): readonly Film[] => {
      const value = row[role];
      return value === null ? [] : [{ row, role, value }];
    }),
  );
  return films.flatMap((film) => {
    const others = films.filter((one) => one !== film).map(({ value }) => value);
    if (others.length === 0) return [];
    const ratio = film.value / median(others);
    const factor = ([10, 0.1] as const).find((one) => isNear(ratio / one));
    return factor === undefined ? [] : [slip(film, factor)];
  });
}

const isNear = (ratio: number): boolean => ratio > 1 / TOLERANCE && ratio < TOLERANCE;

function slip({ row, role }: Film, factor: 10 | 0.1): Diagnostic {
  const text = row.textOf(role);
  const meant = shifted(text, factor);
  const asked = meant === undefined ? 'keyed wrongly?' : `${text} or ${meant}?`;
  const than = factor === 10 ? 'ten times' : 'a tenth of';
  return error(
    'spot-keying-slip',
    `"${text}" ${role} is ${than} the other readings of spot "${row.spot}": ${asked}`,
    {
      at: row.placeOf(role),
      hint: 'correct the cell; if the gauge did show so, leave before and after of this mark empty',
    },
  );
}

/** The number as it was meant, written as its cell is. */
function shifted(text: string, factor: 10 | 0.1): string | undefined {
  if (!/^\d+(?:[.,]\d+)?$/.test(text)) return undefined;
  const value = Number(text.replace(',', '.')) / factor;
  const plain = String(Number(value.toPrecision(12)));
  return text.includes(',') ? plain.replace('.', ',') : plain;
}
