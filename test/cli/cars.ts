/** Readings of invented cars, as many as a test needs. */
const panels = ['bonnet', 'roof', 'boot lid', 'left quarter', 'right quarter'] as const;

/** Canonical CSV of `count` cars, five points on each of five panels. */
export function carsCsv(count: number): string {
  const rows = Array.from({ length: count }, (_, car) =>
    panels.flatMap((panel, i) =>
      [1, 2, 3, 4, 5].map(
        (point) => `FH ${car + 1},${panel},${point},${110 + ((car + 7 * i + 3 * point) % 9)}\n`,
      ),
    ),
  );
  return `vehicle,panel,point,reading_um\n${rows.flat().join('')}`;
}
