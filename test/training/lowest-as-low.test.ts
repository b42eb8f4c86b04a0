/** Of the points that read as low as a spot the lowest is told, by hand. */
import { expect, test } from 'vitest';
import { micrometres } from '../../src/base/units.ts';
import { pointAsLow } from '../../src/training/found.ts';

test('of several points that read as low as a spot the lowest is told, wherever it stands', () => {
  // Nearer to 80 than to 120: 100 µm or less.
  const point = (name: string, thickness: number) => ({
    point: name,
    thickness: micrometres(thickness),
    repeats: [micrometres(thickness)],
    place: 'face' as const,
    curved: false,
  });
  const wanted = {
    lowSpot: { point: '2', thickness: micrometres(80) },
    median: micrometres(120),
  } as unknown as Parameters<typeof pointAsLow>[0];
  const points = [point('1', 118), point('2', 95), point('3', 82), point('4', 90)];
  const reference = { repeatability: 1 } as unknown as Parameters<typeof pointAsLow>[2];
  expect(pointAsLow(wanted, { points }, reference)?.point).toBe('3');
});
