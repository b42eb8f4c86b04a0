/**
 * `Spoiler: 109` beside `bonnet: 112 115 µm`, and below a table: a line that says something of the file, or the one
 * reading of a panel that nobody knows. It is not read, and told where its numbers are as large as the readings and its
 * name is none of those that speak of a file.
 */
import { warning } from '../../base/diagnostics.ts';
import type { Reading } from '../../film/reading.ts';
import { aboutFile, roleOfKey } from '../beside/sayings.ts';
import { numberOf, numberShape } from '../cells/numbers.ts';
import { inMicrometres, type TableUnit, unitNamed } from '../cells/unit.ts';
import type { Findings } from '../findings.ts';
import { linePlace } from '../readings/reading-place.ts';
import type { SettledTable } from '../readings/readings.ts';
import { lineAt } from '../rows/source.ts';
import { namesStatistic } from '../statistics/statistic-words.ts';
import { shellWord } from '../tables/nearest-header.ts';
import type { Metadatum } from '../tables/table.ts';

/** Panels of one car seldom differ by more from the least and the largest reading; filler does, and has its unit mostly. */
const AS_LARGE = 2;

export function tellSayingsLikeRows(
  metadata: readonly Metadatum[],
  [first]: readonly SettledTable[],
  readings: readonly Reading[],
  findings: Findings,
): void {
  if (first === undefined || metadata.length === 0) return;
  const { table, rules } = first;
  // What stands above names of columns speaks of the file.
  const from = table.header?.line ?? 0;
  const said = metadata.filter(({ key, line }) => line > from && mayNamePanel(key));
  if (said.length === 0) return;
  const isFilm = filmsLike(readings);
  for (const { key, value, line } of said) {
    const numbers = numbersIn(value, rules.unit);
    if (numbers.length === 0 || !numbers.every(isFilm)) continue;
    const text = lineAt(table.source, line)?.trim() ?? `${key}: ${value}`;
    const message = `"${text}" is not read: it may be a panel that is not known, and its reading`;
    const hint =
      table.header === undefined
        ? `if it is a panel: --panel-names ${shellWord(`${key}=PANEL`)}`
        : 'if it is a panel, write the line as the rows are written';
    findings.addAll([
      warning('line-left-out', message, { at: linePlace(table.source, line), hint }),
    ]);
  }
}

const mayNamePanel = (key: string): boolean =>
  roleOfKey(key) === undefined && !aboutFile.test(key) && !namesStatistic(key);

function filmsLike(readings: readonly Reading[]): (um: number) => boolean {
  const films = readings.map(({ thickness }) => Number(thickness));
  const least = films.reduce((one, other) => Math.min(one, other), Number.POSITIVE_INFINITY);
  const most = films.reduce((one, other) => Math.max(one, other), 0);
  return (um) => um * AS_LARGE >= least && um <= most * AS_LARGE;
}

/** `109`, `109 111 µm`, `109 (matt)` in µm; none where the value holds anything else. */
function numbersIn(value: string, unit: TableUnit): readonly number[] {
  const pieces = value
    .replace(/\(\D*\)\s*$/u, '')
    .trim()
    .split(/[\s;|/]+|,\s+/u);
  const last = unitNamed(pieces.at(-1) ?? '') === undefined ? pieces : pieces.slice(0, -1);
  const shapes = last.map((piece) => numberShape(piece));
  const known = shapes.flatMap((shape) =>
    shape === undefined || (shape.suffix !== '' && unitNamed(shape.suffix) === undefined)
      ? []
      : [inMicrometres(numberOf(shape), unit)],
  );
  return known.length === shapes.length ? known.map(Number) : [];
}
