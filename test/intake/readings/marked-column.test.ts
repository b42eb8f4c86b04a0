/** A column that says which points are marked, in the words of several languages. */
import { expect, test } from 'vitest';
import { briefs, read } from '../helpers.ts';

const marks = (head: string, yes: string, no: string) =>
  read(
    `panel;point;reading_um;${head}\nbonnet;1;101;${yes}\nbonnet;2;99;${no}\n`,
  ).value?.readings.map(({ marked }) => marked === true);

test.each([
  ['markiert', 'ja', 'nein'],
  ['Point marqué', 'oui', 'non'],
  ['Marcado', 'sí', 'no'],
  ['Punto segnato', 'sì', 'no'],
  ['Gemarkeerd', 'ja', 'nee'],
  ['Assinalado', 'sim', 'não'],
  ['Zaznaczony', 'tak', 'nie'],
  ['Markerad', 'ja', 'nej'],
  ['Afmærket', 'ja', 'nej'],
  ['Označeno', 'ano', 'ne'],
  ['Merkitty', 'kyllä', 'ei'],
  ['Отмечено', 'да', 'нет'],
  ['マーク済み', '✓', ''],
  ['marked', '☑', '✗'],
])('"%s" is read: %s and %s', (head, yes, no) => {
  expect(marks(head, yes, no)).toEqual([true, false]);
});

test('a word that is neither yes nor no is refused', () => {
  const text = 'panel;point;reading_um;markiert\nbonnet;1;101;vielleicht\n';
  expect(briefs(text)).toEqual(['2:14+10 error cell-invalid']);
});

test.each(['Marke', 'Marque', 'Repère'])(
  '"%s" is a make of cars or any point, and none such',
  (head) => {
    expect(marks(head, 'x', '')).toEqual([false, false]);
  },
);
