import { describe, expect, test } from 'vitest';
import { brief, read, values } from '../helpers.ts';

const told = (text: string) => read(text).diagnostics.map(({ message, hint }) => [message, hint]);
const columns = (...pairs: readonly [string, string][]) =>
  ({ columns: new Map(pairs), unit: 'um' }) as const;
const panels = (...pairs: readonly [string, string][]) =>
  ({ panelNames: new Map(pairs), unit: 'um' }) as const;

describe('a file without a name of a column that is known', () => {
  test('is told the line that comes nearest, its words, and how to say what they are', () => {
    const text = 'Visit of May\n\nDarn;Pwynt;Trwch\nboned;1;112\nto;1;98\nboned;2;110\n';
    const { diagnostics } = read(text);
    expect(diagnostics.map(brief)).toEqual(['3:1+4 error header-missing']);
    expect(told(text)).toEqual([
      [
        'line 3 comes nearest to names of columns, and none of them is known for a panel or a reading: "Darn", "Pwynt", "Trwch"',
        'say which of them is the panel and which the reading: --columns panel=Darn --columns reading=Trwch',
      ],
    ]);
    expect(values(text, columns(['panel', 'Darn'], ['reading', 'Trwch']))).toHaveLength(3);
  });

  test('is told the number of a column whose name cannot be typed in one piece', () => {
    const text = 'Tấm=bên;Dày (µm)\nNắp;112\nNóc;98\n';
    expect(told(text)[0]?.[1]).toContain('--columns panel=1 --columns "reading=Dày (µm)"');
    expect(values(text, columns(['panel', '1'], ['reading', 'Dày (µm)']))).toHaveLength(2);
  });

  test('is asked for names of its own where several columns may be readings', () => {
    const text = 'Kod;CHX;CHY\nAa;112;110\nBb;98;99\n';
    expect(told(text)[0]?.[1]).toMatch(/^write panel over .* reading 1, reading 2/u);
    const named = text.replace('Kod;CHX;CHY', 'panel;reading 1 (µm);reading 2 (µm)');
    expect(values(named)).toHaveLength(4);
  });

  test('is asked which panels its columns are where they hold nothing but numbers', () => {
    const text = 'Nr;Lid A;Lid B\n1;112;98\n2;110;99\n';
    expect(told(text)[0]?.[1]).toBe(
      'if they are panels, say which each is: --panel-names "Lid A=PANEL", and so for the others',
    );
    expect(values(text, panels(['Lid A', 'bonnet'], ['Lid B', 'roof']))).toHaveLength(4);
    expect(told('Bonet;Rof;Boot lidd\n112;98;101\n110;99;103\n')[0]?.[1]).toContain(
      '--panel-names Bonet=PANEL',
    );
  });

  test('is told the first panel that is not known where its rows begin with panels', () => {
    const text = 'apron,1,120\nroof,1,118\n';
    expect(told(text)).toEqual([
      [
        'no line names the columns, and "apron" is no panel that is known',
        'say which panel it is: --panel-names apron=PANEL; or give the columns names: panel, reading_um',
      ],
    ]);
    expect(values(text, panels(['apron', 'bonnet']))).toHaveLength(2);
    expect(values(`panel,point,reading_um\n${text}`)).toHaveLength(2);
  });

  test('is told its keys where it has keys', () => {
    const lines = 'Station: bonnet\nWand: 112 µm\n\nStation: roof\nWand: 98 µm\n';
    expect(told(lines)).toEqual([
      [
        'the lines are keys and values, and no key is known for the panel and the reading: "Station", "Wand"',
        'write panel and reading for the keys that mean them',
      ],
    ]);
    const renamed = lines.replaceAll('Station', 'panel').replaceAll('Wand', 'reading');
    expect(values(renamed)).toHaveLength(2);
    const objects = '{"where":"bonnet","film":112}\n{"where":"roof","film":98}\n';
    expect(told(objects)[0]).toEqual([
      expect.stringContaining('no key is known for the panel: "where", "film"'),
      'write panel for the key that means it',
    ]);
    expect(values(objects.replaceAll('where', 'panel'), { unit: 'um' })).toHaveLength(2);
  });

  test('is told so where no line of it holds a number', () => {
    expect(told('Dear all,\nthe car is nice.\n')[0]?.[0]).toContain('none holds a number');
  });

  test('is never told that a row of readings is near to names', () => {
    const { diagnostics } = read('Darn;Trwch\nzones;112\nto;98\n');
    expect(diagnostics.map(brief)).toEqual(['1:1+4 error header-missing']);
  });
});
