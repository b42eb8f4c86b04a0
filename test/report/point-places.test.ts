/** Where a point lies, in the words of who stands before the panel. */
import { describe, expect, test } from 'vitest';
import { builtInTemplates } from '../../src/formats/data/templates.ts';
import { pointsWithPlaces } from '../../src/report/point-places.ts';

const saloon = builtInTemplates.find(({ id }) => id === 'saloon');
const placesIn = (id: string, ...names: readonly string[]): string => {
  const panel = saloon?.panels.find((one) => one.id === id);
  if (panel === undefined) throw new Error(id);
  return pointsWithPlaces(
    panel,
    names.map((point) => ({ point })),
  ).replaceAll('\u00a0', ' ');
};

describe('the place of a point', () => {
  test('is front or rear, top or foot on a side, whichever side it is', () => {
    const places = '1 (front top), 2 (rear top), 3 (middle), 4 (front foot), 5 (rear foot)';
    expect(placesIn('quarter-right', '1', '2', '3', '4', '5')).toBe(places);
    expect(placesIn('quarter-left', '1', '2', '3', '4', '5')).toBe(places);
  });

  test('is left or right, front or rear on what lies flat', () => {
    expect(placesIn('roof', '1', '2', '3')).toMatch(/^1 \(left front\), 2 \((right )?front\), 3 /);
  });

  test('is left or right of the vehicle on a bumper', () => {
    expect(placesIn('bumper-front', '1', '2')).toBe('1 (left top), 2 (right top)');
  });

  test('is not said where the template does not know all of the names', () => {
    expect(placesIn('quarter-right', '1', 'by the lamp')).toBe('1, by the lamp');
  });
});
