import { describe, expect, test } from 'vitest';
import { brief, read } from '../helpers.ts';

const table = (name: string, ...cells: readonly string[]) =>
  `panel;L;${name};R;unit\nbonnet;112.1;${cells[0]};110.4;µm\nroof;104.2;${cells[1]};108.8;µm\nboot;99.6;${cells[2]};103.3;µm\n`;
const told = (text: string) => read(text).diagnostics.map((one) => `${brief(one)}`);

describe('a column between those of readings that no list knows', () => {
  test('is refused where it is filled as they are', () => {
    expect(told(table('K', '113.3', '107.7', '101.2'))).toEqual(['1:9+1 error column-unnamed']);
  });

  test.each([
    ['nearly empty', table('K', '113.3', '', '')],
    ['far from them', table('K', '21.3', '21.4', '21.8')],
    ['one number throughout', table('K', '120', '120', '120')],
    ['called after something else', table('Limit', '113.3', '107.7', '101.2')],
  ])('is left out aloud where it is %s', (_, text) => {
    expect(read(text).value?.readings).toHaveLength(6);
    expect(read(text).diagnostics.map(({ code }) => code)).toEqual(['column-unknown']);
  });

  test('is read where it is the middle of left and right', () => {
    for (const middle of ['M', 'C', 'Centre']) {
      expect(read(table(middle, '113.3', '107.7', '101.2')).value?.readings).toHaveLength(9);
    }
  });
});

describe('columns for left, right and centre', () => {
  const isPanel = (label: string): boolean =>
    ['bonnet', 'boot', 'roof', 'front wing left', 'front wing right'].includes(label.toLowerCase());
  const text = (half: string) =>
    `Panel,Left (µm),Right (µm),Centre (µm)\nBonnet,,,118.8\n${half}\nRoof,111.5,113.1,112.2\n`;
  const codes = (half: string) => read(text(half), { isPanel }).diagnostics.map(brief);

  test('refuse a row that names a panel of either side and has no centre', () => {
    expect(codes('Front wing,112.1,113.2,')).toContain('3:1+10 error panel-ambiguous');
  });

  test('are places on panels that are there once', () => {
    const { value } = read(text('Boot,112.1,113.2,110'), { isPanel });
    expect(value?.readings.map(({ point }) => point)).toContain('Left');
  });
});
