/**
 * A column that is not read and parts the readings: each point stands once under each of its words, `before` and
 * `after`. Read together they would be averaged. Words of before and after are refused; of others (`Ann`, `Ben`)
 * it is told. Words of before and after alone, and a column called after visits, are refused where they part the
 * readings of any point, or panel where none has one.
 */

import { groupBy } from '../../base/group-by.ts';
import { hasLetter } from '../../base/letters.ts';
import { numbersVisits, saysBeforeOrAfter, visitsHint } from '../cells/visit-words.ts';
import type { Findings } from '../findings.ts';
import { columnTexts } from '../rows/column-texts.ts';
import { cellText } from '../rows/row.ts';
import type { Row } from '../rows/tokens.ts';
import { placeOf, type Table } from '../tables/table.ts';

const mostWords = 6;

export function doubtParted(table: Table, findings: Findings): void {
  const { layout, rows } = table;
  const [panelAt, pointAt] = [layout.columns.get('panel'), layout.columns.get('point')];
  const statusAt = layout.columns.get('status');
  if (panelAt === undefined) return;
  for (const column of statusAt === undefined ? layout.unknown : [...layout.unknown, statusAt]) {
    if (tellVisits(table, column, panelAt, findings) || pointAt === undefined) continue;
    const words = [...columnTexts(rows, column).keys()].filter((text) => hasLetter(text));
    if (words.length < 2 || words.length > mostWords) continue;
    const second = partedRow(rows, [panelAt, pointAt], column, words.length);
    if (second === undefined) continue;
    const isStage = words.some((word) => saysBeforeOrAfter(word));
    const told = words.map((word) => `"${word}"`).join(', ');
    findings.add(
      isStage ? 'error' : 'warning',
      isStage ? 'tables-apart' : 'reading-doubted',
      () => ({
        message: isStage
          ? `"${layout.header[column]?.text ?? ''}" parts the readings of each point: ${told}`
          : `each point is read under ${told}, and all are read together`,
        at: placeOf(table, second, column),
        hint: 'if they are not of one survey, put each in a file of its own',
      }),
    );
  }
}

/** Whether a column of visits has readings of one point, or of a panel without points, under two of its texts. */
function tellVisits(table: Table, column: number, panelAt: number, findings: Findings): boolean {
  const { layout, rows } = table;
  const texts = [...columnTexts(rows, column).keys()].filter((text) => text !== '');
  if (texts.length < 2 || texts.length > mostWords) return false;
  const label = layout.header[column]?.text ?? '';
  if (!numbersVisits(label) && !texts.every((text) => saysBeforeOrAfter(text))) return false;
  const pointAt = layout.columns.get('point');
  const seen = new Map<string, string>();
  const second = rows.find((row) => {
    const [panel, point, text] = [panelAt, pointAt ?? -1, column].map((at) => cellText(row, at));
    const place = `${panel}\0${point}`;
    const first = seen.get(place) ?? text ?? '';
    if (first !== '') seen.set(place, first);
    return panel !== '' && text !== '' && first !== text;
  });
  if (second === undefined) return false;
  const told = texts.map((text) => `"${text}"`).join(', ');
  const whose = pointAt === undefined ? 'panels' : 'points';
  findings.add('error', 'tables-apart', () => ({
    message: `"${label}" parts the readings of the same ${whose}: ${told}`,
    at: placeOf(table, second, column),
    hint: visitsHint,
  }));
  return true;
}

/** The second row of the first point, if every point stands under all of the words, once under each. */
function partedRow(
  rows: readonly Row[],
  by: readonly number[],
  column: number,
  count: number,
): Row | undefined {
  const points = groupBy(rows, (row) => by.map((at) => cellText(row, at)).join('\0'));
  if (points.size * count !== rows.length) return undefined;
  const parted = [...points.values()].every(
    (own) => new Set(own.map((row) => cellText(row, column))).size === count,
  );
  return parted ? [...points.values()][0]?.[1] : undefined;
}
