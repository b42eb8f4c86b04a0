import { describe, expect, test } from 'vitest';
import { briefs, read, values } from '../helpers.ts';

const head = 'panel,point,reading_um,note\n';

describe('a note that speaks against its reading', () => {
  test.each([
    'deleted',
    'falsch, gelöscht',
    'do not use',
    'WRONG POINT - see 3',
    'mis-read: ignore',
    'à refaire',
    'non usare',
    'ошибка',
    '誤測定',
  ])('%j is told, and the reading kept', (note) => {
    const text = `${head}roof,1,101,\nroof,2,188,"${note}"\n`;
    expect(briefs(text).filter((one) => one.startsWith('3:'))).toEqual([
      expect.stringMatching(/^3:\d+\+\d+ warning reading-doubted$/),
    ]);
    expect(values(text)).toHaveLength(2);
  });

  test.each([
    'repainted in 2019',
    'no errors',
    'trim removed',
    'suspect filler',
    'old stone chips',
  ])('a note of the film, "%s", is none', (note) =>
    expect(briefs(`${head}roof,1,101,\nroof,2,118,${note}\n`)).toEqual([]),
  );
});

describe('a sign or a word at a panel', () => {
  test.each([
    '// roof',
    '!roof',
    '✗ roof',
    '@roof',
    '(roof)',
    'roof?',
    'roof old',
    'NOT roof',
    'REM roof',
  ])('%j among rows of roof is told at its row', (panel) => {
    const text = `${head}roof,1,101,\n${panel},2,188,\n`;
    expect(briefs(text)).toEqual([`3:1+${panel.length} warning reading-doubted`]);
  });

  test('is how the panels are called where all have it', () => {
    expect(briefs(`${head}- roof,1,101,\n- bonnet,1,104,\n`)).toEqual([]);
  });

  test('is none in a side within brackets, a code or a number', () => {
    expect(briefs(`${head}door (left),1,101,\nP-01,1,104,\n1. roof,1,99,\n`)).toEqual([]);
  });
});

describe('a point named by a word', () => {
  const numbered = (name: string) => `${head}roof,1,101,\nroof,2,103,\nroof,${name},131,\n`;

  test('among numbers is told where a line calls it a point and its word says no more', () => {
    expect(briefs(numbered('badge'))).toEqual(['4:6+5 warning reading-doubted']);
  });

  test.each(['Vorige', '%', 'Usual'])('%j among the numbers of a block stops the file', (name) => {
    const block = (panel: string) => `${panel}\n1;112.4\n2;108.9\n${name};111\n`;
    expect(briefs(`Unit: µm\n${block('Bonnet')}Roof\n1;121.3\n2;118.8\n`)).toContain(
      `5:1+${name.length} error panel-missing`,
    );
  });

  test.each(['prev.', 'x', 'zinc', 'limit', 'Soll', 'foil', 'temp', 'Δ'])(
    '%j is none, and stops the file',
    (name) => {
      expect(briefs(numbered(name))).toContain(`4:6+${name.length} error panel-missing`);
    },
  );

  test.each(['oben links', 'A1', '3b'])('%j is a place like any', (name) => {
    expect(briefs(numbered(name))).toEqual([]);
  });

  test('is as the others where none has a number, unless it names a state', () => {
    const text = (name: string) => `${head}roof,nose,101,\nroof,tail,103,\nroof,${name},131,\n`;
    expect(briefs(text('spine'))).toEqual([]);
    expect(briefs(text('old'))).toEqual(['4:6+3 warning reading-doubted']);
  });
});

describe('a few marks in a column of an unknown name', () => {
  const table = (name: string, mark: string) =>
    `Panel;Point;µm;${name}\nroof;1;112;\nroof;2;114;${mark}\nroof;3;115;\nbonnet;1;121;\n`;

  test.each(['x', 'X', '✓', '*', 'yes', 'oui'])(
    '"%s" are told: their rows may be struck out',
    (mark) => {
      const { diagnostics } = read(table('Foo', mark));
      const own = diagnostics.find(({ code }) => code === 'reading-doubted');
      expect(own?.message).toContain('may be struck out');
      expect(own?.hint).toContain('--columns deleted=Foo');
      expect(values(table('Foo', mark))).toHaveLength(4);
    },
  );

  test('are not told where the cells hold words of another matter', () => {
    expect(briefs(table('Foo', 'red')).join()).not.toContain('reading-doubted');
  });

  test.each([
    ...['Eliminada', 'Suprimida', 'Eliminata', 'Supprimée', 'Doorgehaald', 'Entfernt', 'Skreślona'],
    ...['Struken', 'Udeladt', 'Rejeitada'],
  ])('take their rows back under "%s"', (name) => {
    expect(values(table(name, 'x'))).toHaveLength(3);
  });
});

describe('a number alone in the note of a row without a reading', () => {
  test('may be the reading, and is told', () => {
    expect(briefs(`${head}roof,1,101,\nroof,2,,118\n`)).toEqual([
      '3:8+1 note reading-missing',
      '3:9+3 warning reading-doubted',
    ]);
  });

  test('is none beside a reading, and a note in words says nothing of it', () => {
    expect(briefs(`${head}roof,1,101,\nroof,2,118,118\n`).join()).not.toContain('may be one');
    expect(briefs(`${head}roof,1,101,\nroof,2,,edge 3\n`)).toEqual(['3:8+1 note reading-missing']);
  });
});
