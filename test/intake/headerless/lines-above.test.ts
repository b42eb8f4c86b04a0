import { describe, expect, test } from 'vitest';
import { read, values } from '../helpers.ts';

const LIST = 'Bonnet;112 µm\nBonnet;114 µm\nRoof;110 µm\nRoof;111 µm\n';

describe('a line of two cells straight above a list', () => {
  test.each([
    'Location;Leeds',
    'Note;after wash',
    'Operator;Sam\nLocation;Leeds',
    'Date;27.11.2026',
    'Colour;red',
    'Probe;F2',
  ])('is let by where it says something of the whole: %s', (line) => {
    expect(values(`${line}\n${LIST}`)).toHaveLength(4);
  });

  test.each(['Panel;Target', 'Foo;Sollwert', 'Bauteil;Soll', 'Panel;Before', 'Foo;Limit'])(
    'is refused where it says that the numbers are no readings: %s',
    (line) => {
      expect(values(`${line}\n${LIST}`)).toBeUndefined();
      expect(read(`${line}\n${LIST}`).diagnostics).not.toEqual([]);
    },
  );
});
