import { expect, test } from 'vitest';
import { briefs, values } from './helpers.ts';

const rows = 'panel,reading_um\nbonnet,101\nroof,99\n';

test('words of a letter below the table are left out, and said', () => {
  expect(values(`${rows}\nRegards\nAnn\n`)).toHaveLength(2);
  expect(briefs(`${rows}\nRegards\nAnn\n`)).toEqual([
    '5:1+7 warning line-left-out',
    '6:1+3 warning line-left-out',
  ]);
});

test('the title of a summary below the table is left out, and said', () => {
  const text = `${rows}\nSummary\nPanel,Mean,Min,Max\nbonnet,101,101,101\nroof,99,99,99\n`;
  expect(values(text)).toHaveLength(2);
  expect(briefs(text)).toContain('5:1+7 warning line-left-out');
});

test('a panel without its reading is no such word', () => {
  expect(briefs(`${rows}\nboot\n`)).toEqual(['5:1+4 error row-too-short']);
  expect(briefs(`${rows}bo\n`)).toEqual(['4:1+2 error row-too-short']);
});

test.each([
  'Höchstwert',
  'Kleinster Wert',
  'Valeur max',
  'Valor mínimo',
  'Hoogste waarde',
  'Overall',
  'CV %',
  'USL',
  'Lower limit',
])('a row called "%s" is no panel', (name) => {
  const text = `panel;reading_um\nbonnet;101\nroof;99\n${name};101\n`;
  expect(values(text)).toHaveLength(2);
  expect(briefs(text)).toContain(`4:1+${name.length} note statistics-left-out`);
});

test('the front left door of a French car is a panel and no average', () => {
  const text = 'panel;reading_um\nPorte AVG;101\nPorte AVD;99\nroof AVG;98\nroof;98\n';
  expect(values(text)?.map(([panel]) => panel)).toEqual(['Porte AVG', 'Porte AVD', 'roof']);
});

test.each(['After polishing', 'Nachher,', 'Après', 'Stage 2', '--- after ---'])(
  'rows below the line "%s" are not joined to those above it',
  (line) => {
    expect(briefs(`panel,reading_um\nbefore,\nbonnet,101\n${line}\nbonnet,98\n`)).toContain(
      `4:1+${line.replace(/,$/, '').length} error tables-apart`,
    );
  },
);

test('a remark of a later hour is no later survey where no rows follow it', () => {
  expect(values(`${rows}After lunch I washed it\n`)).toHaveLength(2);
});
