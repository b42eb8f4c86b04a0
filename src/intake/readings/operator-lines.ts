/**
 * `Operator: Ann`, and further down `Operator: Ben`: the rows under each are that person's, as a column of operators
 * would say. One person throughout, or a name below the readings, is said of the file alone.
 */
import { type Diagnostic, error } from '../../base/diagnostics.ts';
import type { Reading } from '../../film/reading.ts';
import { roleOfKey } from '../beside/sayings.ts';
import { ownText } from '../rows/own-text.ts';
import type { Source } from '../rows/source.ts';
import type { Metadatum } from '../tables/table.ts';
import { linePlace } from './reading-place.ts';

export const operatorLines = (metadata: readonly Metadatum[]): readonly Metadatum[] =>
  metadata.filter(({ key, value }) => value !== '' && roleOfKey(key) === 'operator');

const plain = (name: string): string => name.trim().normalize('NFC').toLowerCase();

export const namesSeveral = (lines: readonly Metadatum[]): boolean =>
  new Set(lines.map(({ value }) => plain(value))).size > 1;

/**
 * The readings, each with the person of the last such line above it; as they are where they have operators, where none
 * is named above the first, or where one person has all of them.
 */
export function withOperators(
  readings: readonly Reading[],
  lines: readonly Metadatum[],
): readonly Reading[] {
  if (!namesSeveral(lines)) return readings;
  const own = readings.map((reading) => ({
    reading,
    line: lines.findLast(({ line }) => line < reading.origin.line),
  }));
  if (own.some(({ reading, line }) => reading.operator !== undefined || line === undefined))
    return readings;
  if (!namesSeveral(own.flatMap(({ line }) => line ?? []))) return readings;
  const spelling = new Map<string, string>();
  for (const { value } of lines) {
    if (!spelling.has(plain(value))) spelling.set(plain(value), ownText(value));
  }
  return own.map(({ reading, line }) => {
    const operator = spelling.get(plain(line?.value ?? ''));
    return operator === undefined ? reading : { ...reading, operator };
  });
}

/** A piece of a long file does not know whose line stands above it in another. */
export function severalInPieces(
  lines: readonly Metadatum[],
  decided: readonly Metadatum[],
  source: Source,
): readonly Diagnostic[] {
  const last = lines.at(-1) ?? decided.at(-1);
  if (last === undefined || !namesSeveral([...decided, ...lines])) return [];
  const message = `lines name several operators, here "${last.value}", each of the rows below, and the file is read piece by piece`;
  const hint = 'name the operator of each reading in a column "operator"';
  return [error('tables-apart', message, { at: linePlace(source, last.line), hint })];
}
