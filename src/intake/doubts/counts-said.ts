/**
 * `Readings: 4` in a line beside three rows: how many readings there should be, held against those that are there. Of
 * what it counts is not said, so all that it may be of are tried: the file, what stands below or above, each panel,
 * the cells left out with them or not, points, rows.
 */

import { warning } from '../../base/diagnostics.ts';
import { groupBy } from '../../base/group-by.ts';
import type { Reading } from '../../film/reading.ts';
import { foldedText } from '../cells/doubting-words.ts';
import { wordsIn } from '../cells/word-list.ts';
import type { Findings } from '../findings.ts';
import { linePlace } from '../readings/reading-place.ts';
import type { Source } from '../rows/source.ts';
import { statisticNamed } from '../statistics/statistic-words.ts';
import type { ExcludedCell, Metadatum } from '../tables/table.ts';

const ofReadings: ReadonlySet<string> = new Set(
  wordsIn(
    `readings|measurements|measured points|messwerte|messungen|anzahl werte|mesures|lecturas|medidas|mediciones|misure|
    letture|metingen|leituras|pomiary|matningar|malinger|mereni|измерения|замеры`,
  ),
);

const countsReadings = (key: string): boolean =>
  statisticNamed(key) === 'count' || ofReadings.has(foldedText(key).trim());

type Read = {
  readonly readings: readonly Reading[];
  readonly excluded: readonly ExcludedCell[];
};

export function tellCounts(
  metadata: readonly Metadatum[],
  { readings, excluded }: Read,
  source: Source,
  findings: Findings,
): void {
  const said = metadata.filter(({ key, value }) => /^\d{1,6}$/u.test(value) && countsReadings(key));
  for (const { key, value, line } of said) {
    const counts = countsOf(readings, excluded, line);
    if (readings.length === 0 || counts.has(Number(value))) continue;
    const message = `the count in the file, "${key}: ${value}", disagrees with its readings, which are ${readings.length}`;
    const hint = 'is a reading missing, or a part of the file?';
    findings.addAll([
      warning('statistics-disagree', message, { at: linePlace(source, line), hint }),
    ]);
  }
}

function countsOf(
  readings: readonly Reading[],
  excluded: readonly ExcludedCell[],
  line: number,
): ReadonlySet<number> {
  const above = ({ line: own }: { readonly line: number }): boolean => own < line;
  const sides = [
    [readings, excluded],
    [readings.filter(({ origin }) => above(origin)), excluded.filter(above)],
    [readings.filter(({ origin }) => !above(origin)), excluded.filter((cell) => !above(cell))],
  ] as const;
  const panels = groupBy(readings, ({ vehicle, panel }) => `${vehicle ?? ''}\0${panel}`);
  const vehicles = groupBy(readings, ({ vehicle }) => vehicle);
  const points = groupBy(readings, ({ vehicle, panel, point }) =>
    [vehicle ?? '', panel, point].join('\0'),
  );
  return new Set([
    ...sides.flatMap(([own, out]) => [own.length, own.length + out.length]),
    ...[...panels.values(), ...vehicles.values()].map(({ length }) => length),
    ...[points.size, new Set(readings.map(({ origin }) => origin.line)).size],
  ]);
}
