/**
 * Lines beside the rows that name a panel and readings, and are not written as the rows are: `bonnet 104
 * 106 µm` above `roof: 111 109 µm`. Passed over, a panel of the vehicle would be missing.
 */

import type { OutsideLine } from '../beside/lines-outside.ts';
import { numberOf, numberShape } from '../cells/numbers.ts';
import { unitNamed } from '../cells/unit.ts';
import type { Findings } from '../findings.ts';

/** No film reads less, so that `roof 2` is no row, nor `bonnet, 3 points`. */
const leastFilm = 10;

export function doubtLinesLikeRows(
  lines: readonly OutsideLine[],
  isPanel: (label: string) => boolean,
  findings: Findings,
): void {
  for (const { text, source, offset } of lines) {
    const [, label = '', rest = ''] = /^([^\d:=]*\p{L}[^\d:=]*)\s(\d.*)$/u.exec(text) ?? [];
    if (!holdsReadings(rest) || !isPanel(label.trim())) continue;
    findings.add('error', 'row-too-short', () => ({
      message: `"${text}" may be a row of readings, and is not written as the other rows are`,
      at: source.placeAt(offset, text.length),
      hint: 'write it as the rows are written, or delete it',
    }));
  }
}

/** Nothing but numbers as large as films: two and more, or one with its unit. */
function holdsReadings(text: string): boolean {
  const pieces = text.trim().split(/[\s;,|]+(?=\d)/u);
  const shapes = pieces.map((piece) => numberShape(piece.trim()));
  const last = shapes.at(-1);
  const hasUnit = unitNamed(last?.suffix.trim() ?? '') !== undefined;
  return (
    (pieces.length > 1 || hasUnit) &&
    shapes.every((shape) => shape !== undefined && numberOf(shape) >= leastFilm)
  );
}
