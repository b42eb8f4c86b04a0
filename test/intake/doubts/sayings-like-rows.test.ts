import { describe, expect, test } from 'vitest';
import { briefs, read, values } from '../helpers.ts';

const lines = (...rows: readonly string[]): string => `${rows.join('\n')}\n`;
const list = ['bonnet: 112 115 µm', 'roof: 101 99 µm'];
const told = (text: string) => read(text).diagnostics.map(({ message }) => message);

describe('a line that is not read, of a name and a number as large as the readings', () => {
  test('is told below a list, above it, and below a table', () => {
    expect(briefs(lines(...list, 'Spoiler: 109'))).toEqual(['3:1+12 warning line-left-out']);
    expect(briefs(lines('Spoiler: 109', ...list))).toEqual(['1:1+12 warning line-left-out']);
    const table = lines('panel;reading_um', 'bonnet;112', 'roof;101', 'Spoiler: 109');
    expect(briefs(table)).toEqual(['4:1+12 warning line-left-out']);
    expect(values(table)).toHaveLength(2);
  });

  test('says what it may be, and what makes it a reading', () => {
    const [only] = read(lines(...list, 'Spoiler: 109 (matt)')).diagnostics;
    expect(only?.message).toBe(
      '"Spoiler: 109 (matt)" is not read: it may be a panel that is not known, and its reading',
    );
    expect(only?.hint).toBe('if it is a panel: --panel-names Spoiler=PANEL');
    const one = lines('µm', 'bonnet: 112', 'roof: 101', 'Rear lip: 109');
    expect(read(one).diagnostics[0]?.hint).toBe('if it is a panel: --panel-names "Rear lip=PANEL"');
    const isPanel = (name: string): boolean => /^(?:bonnet|roof|rear lip)$/iu.test(name);
    expect(briefs(one, { isPanel })).toEqual([]);
    expect(values(one, { isPanel })).toHaveLength(3);
  });

  test('is told of a list in mil in its own size', () => {
    const mil = ['bonnet: 4.4 4.6 mil', 'roof: 4.0 3.9 mil'];
    expect(told(lines(...mil, 'Spoiler: 4.2'))).toHaveLength(1);
    expect(told(lines(...mil, 'Spoiler: 109'))).toEqual([]);
  });

  test('is passed over where its name or its number says that it is none', () => {
    for (const said of [
      'Humidity: 99',
      'Mileage: 109',
      'Order: 109',
      'Tel: 109',
      'Year: 2019',
      'Tyres: 32',
      'Date: 2026-01-09',
      'Operator: 109',
      'Readings: 4',
    ])
      expect(told(lines(...list, said)), said).toEqual([]);
    expect(told(lines('Paint code;109', 'panel;reading_um', 'bonnet;112', 'roof;101'))).toEqual([]);
  });

  test('is told under a name that only holds the letters of such a word', () => {
    for (const name of ['Vorderwand', 'Mittelteil', 'Specchio'])
      expect(told(lines(...list, `${name}: 109`)), name).toHaveLength(1);
  });
});
