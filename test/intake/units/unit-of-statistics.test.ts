import { describe, expect, test } from 'vitest';
import { briefs, read, values } from '../helpers.ts';

const last = (text: string) => values(text)?.map(([, , , value]) => value);

describe('a unit that stands at a statistic alone is that of the readings', () => {
  test('where they give it, in a column', () => {
    const text = 'Panel;1;2;3;Mean (µm);n\nBonnet;112;110;108;110;3\nRoof;102;100;98;100;3\n';
    expect(last(text)).toEqual([112, 110, 108, 102, 100, 98]);
    expect(read(text).value?.decisions.evidence).toContain(
      '"Mean (µm)" is in µm, and the readings give its numbers: they are in µm',
    );
  });

  test('where they give it, in a row or behind its number', () => {
    const row = ';Bonnet;Roof\n1;4.12;4.02\n2;4.10;4.02\nMean (mil);4.11;4.02\n';
    expect(last(row)?.[0]).toBe(4.12 * 25.4);
    const cells = 'Panel;1;2;Mean\nBonnet;112;110;111 µm\nRoof;102;100;101 µm\n';
    expect(last(cells)).toEqual([112, 110, 102, 100]);
  });

  test.each([
    ['they do not give it', 'Panel;1;2;Mean (mil)\nBonnet;112;110;4.37\nRoof;102;100;3.98\n'],
    ['one row is another', 'Panel;1;2;Mean (µm)\nBonnet;112;110;111\nRoof;102;100;111\n'],
    ['it is a count', 'Panel;1;2;n (µm)\nBonnet;112;110;2\nRoof;102;100;2\n'],
    ['two of them differ', 'Panel;1;2;Mean (µm);Max (mil)\nBonnet;112;110;111;112\n'],
    ['it is a length', 'Panel;1;2;Mean (mm)\nBonnet;112;110;111\nRoof;102;100;101\n'],
  ])('and nothing is read where %s', (_, text) => {
    expect(values(text)).toBeUndefined();
    expect(briefs(text).join()).toContain('error unit-missing');
  });

  test('nor where some cells name a unit of their own', () => {
    const text = 'Panel;1;2;Mean (µm)\nBonnet;112 µm;110;111\nRoof;102;100;101\n';
    expect(briefs(text)).toContain('2:15+3 error unit-missing');
  });
});
