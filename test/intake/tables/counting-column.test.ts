import { describe, expect, test } from 'vitest';
import { briefs, read, values } from '../helpers.ts';

const saysOf = (text: string): string => read(text).value?.decisions.evidence.join('; ') ?? '';

describe('of two columns that name the reading, the one that counts numbers the points', () => {
  test.each([
    ['first, in Portuguese', 'Peça;Leitura;Valor;Unidade\n', ';µm'],
    ['first, with a unit for the other’s name', 'Paneel;Meting;µm\n', ''],
    ['first, in Italian', 'Pezzo;Misura;Spessore µm\n', ''],
  ])('%s', (_, header, unit) => {
    const rows = ['roof;1;137', 'roof;2;143', 'bonnet;1;162', 'bonnet;2;164'];
    const text = `${header}${rows.map((row) => `${row}${unit}\n`).join('')}`;
    expect(values(text)).toEqual([
      ['roof', '1', 1, 137],
      ['roof', '2', 1, 143],
      ['bonnet', '1', 1, 162],
      ['bonnet', '2', 1, 164],
    ]);
    expect(saysOf(text)).toMatch(/counts 1, 2, 3 and numbers the points: ".*" holds the readings/u);
  });

  test('where it stands behind the readings', () => {
    const text =
      'panel,thickness (µm),reading\nroof,137,1\nroof,139,2\nbonnet,111,1\nbonnet,118,2\n';
    expect(values(text)?.map(([, point, , value]) => [point, value])).toEqual([
      ['1', 137],
      ['2', 139],
      ['1', 111],
      ['2', 118],
    ]);
  });

  test('where the newest reading stands first, on each panel or in the whole file', () => {
    const panels = ['roof;3;137', 'roof;2;139', 'roof;1;138', 'boot;2;111', 'boot;1;118'];
    const text = `Panel;Reading;Value (µm)\n${panels.join('\n')}\n`;
    const numbered = [
      ['3', 137],
      ['2', 139],
      ['1', 138],
      ['2', 111],
      ['1', 118],
    ];
    expect(values(text)?.map(([, point, , value]) => [point, value])).toEqual(numbered);
    expect(saysOf(text)).toContain('"Reading" counts down to 1 and numbers the points');
    const file = ['5;roof;137', '4;roof;139', '3;roof;138', '2;boot;111', '1;boot;118'];
    const whole = `Reading;Panel;Value (µm)\n${file.join('\n')}\n`;
    expect(values(whole)?.map(([, point]) => point)).toEqual(['5', '4', '3', '2', '1']);
  });

  test('where statistics stand among its numbers', () => {
    const own = ['roof;1;120', 'roof;2;122', 'roof;gemiddelde;121', 'boot;1;110', 'boot;2;112'];
    const text = `Paneel;Meting;µm\n${own.join('\n')}\nboot;gemiddelde;111\n`;
    expect(values(text)?.map(([, , , value]) => value)).toEqual([120, 122, 110, 112]);
  });

  test('where it counts within each point, and numbers its repeats', () => {
    const own = ['roof,1,1,137', 'roof,1,2,136', 'roof,2,1,139', 'roof,2,2,138'];
    expect(values(`panel,point,reading,value µm\n${own.join('\n')}\n`)).toEqual([
      ['roof', '1', 1, 137],
      ['roof', '1', 2, 136],
      ['roof', '2', 1, 139],
      ['roof', '2', 2, 138],
    ]);
  });

  test('where the readings stand in numbered columns behind it', () => {
    const text = 'panel;reading;r1;r2\nroof;1;137;138\nroof;2;136;139\nboot;1;117;118\nunit;µm\n';
    expect(values(text)?.map(([panel, point, , value]) => [panel, point, value])).toEqual([
      ['roof', '1', 137],
      ['roof', '1', 138],
      ['roof', '2', 136],
      ['roof', '2', 139],
      ['boot', '1', 117],
      ['boot', '1', 118],
    ]);
    expect(briefs(text)).toEqual([]);
  });

  test('where words name the points, each once on a panel', () => {
    const own = ['roof;oben;137', 'roof;unten;139', 'bonnet;oben;127', 'bonnet;unten;129'];
    const text = `Bauteil;Messung;µm\n${own.join('\n')}\n`;
    expect(values(text)?.map(([, point, , value]) => [point, value])).toEqual([
      ['oben', 137],
      ['unten', 139],
      ['oben', 127],
      ['unten', 129],
    ]);
  });

  test.each([
    ['neither counts', 'roof,137,141\nroof,139,140\nbonnet,111,112\n'],
    ['both count', 'roof,1,1\nroof,2,2\nbonnet,1,1\nbonnet,2,2\n'],
    ['the other holds one number all over', 'roof,1,100\nroof,2,100\nbonnet,1,100\n'],
    ['it counts up on one panel and down on the other', 'roof,1,9\nroof,2,9\nboot,2,8\nboot,1,8\n'],
    ['too few rows show it', 'roof,1,137\nroof,2,139\n'],
  ])('and the file is refused where %s', (_, rows) => {
    const text = `panel,reading,value,unit\n${rows.replaceAll('\n', ',µm\n')}`;
    expect(values(text)).toBeUndefined();
    expect(briefs(text)).toContain('1:15+5 error column-repeated');
  });
});
