import { describe, expect, test } from 'vitest';
import { briefs, values } from '../helpers.ts';

const table = (name: string, yes: string, no: string): string =>
  `panel,point,reading_um,${name}\nroof,1,104,${yes}\nroof,2,14,${no}\nroof,3,106,${yes}\n`;
const kept = (text: string) => values(text)?.map(([, , , value]) => value);

describe('a column that says which rows count is obeyed where each cell is a plain yes or no', () => {
  test.each([
    ['Include', 'Y', 'N'],
    ['Keep', 'TRUE', 'FALSE'],
    ['verwenden', 'ja', 'nein'],
    ['Omit', '', 'yes'],
    ['Ignorieren', '', 'x'],
    ['Skip', '', 'skip'],
    ['In Mittelwert', 'ja', 'nein'],
  ])('%s: %s, %s', (name, yes, no) => {
    expect(kept(table(name, yes, no))).toEqual([104, 106]);
    expect(briefs(table(name, yes, no)).join()).toContain('warning reading-deleted');
  });

  test.each([
    ['Include', 'Y', 'perhaps'],
    ['Include', 'Y', ''],
    ['Use', '1', '0'],
  ])('and asked about else: %s: %s, %j', (name, yes, no) => {
    expect(briefs(table(name, yes, no)).join()).toContain('error reading-ambiguous');
  });
});

describe('a second column that can be none of its role is none', () => {
  test('a result without numbers is no reading', () => {
    const text = 'panel,reading_um,Result\nroof,104,pass\nboot,106,pass\n';
    expect(kept(text)).toEqual([104, 106]);
    expect(briefs(text).join()).toContain('warning column-unknown');
    expect(kept(text.replace('104,pass', '104,105'))).toBeUndefined();
  });

  test('marks beside the panels under "Del." take readings back', () => {
    const text = (mark: string) => `panel,reading_um,Del.\nroof,104,\nboot,14,${mark}\n`;
    expect(kept(text('x'))).toEqual([104]);
    expect(kept(text('Tür'))).toBeUndefined();
  });
});
