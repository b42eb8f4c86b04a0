import { describe, expect, test } from 'vitest';
import { briefs, values } from './helpers.ts';

const table = (yes: string, no: string, name = 'Valid'): string =>
  `panel,reading_um,${name}\nbonnet,101,${yes}\nbonnet,500,${no}\nroof,98,${yes}\n`;
const kept = (text: string) => values(text)?.map(([, , , value]) => value);

describe('a column of valid rows', () => {
  test.each([
    ['yes', 'no'],
    ['TRUE', 'FALSE'],
    ['1', '0'],
    ['ja', 'nein'],
    ['oui', 'non'],
    ['sí', 'no'],
    ['sì', 'no'],
    ['ja', 'nee'],
    ['да', 'нет'],
    ['是', '否'],
    ['OK', 'deleted'],
    ['✓', '☐'],
  ])('keeps %s and leaves %s out', (yes, no) => {
    expect(kept(table(yes, no))).toEqual([101, 98]);
  });

  test.each(['Gültig', 'Valide', 'Válido', 'Geldig'])('is known by its name %s', (name) => {
    expect(kept(table('x', 'no', name))).toEqual([101, 98]);
  });

  test.each(['', '-', 'n/a', 'perhaps'])('does not guess what "%s" says of a row', (nothing) => {
    expect(kept(table('x', nothing))).toBeUndefined();
    expect(briefs(table('x', nothing))).toContain(
      `3:12+${Math.max(nothing.length, 1)} error cell-invalid`,
    );
  });
});
