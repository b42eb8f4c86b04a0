import { describe, expect, test } from 'vitest';
import { isRemark } from '../../../src/intake/cells/remark-words.ts';
import { read } from '../helpers.ts';

const table = (cell: string): string =>
  `Panel,Point,Reading_um\nBonnet,1,112\nBonnet,2,${cell}\nRoof,1,109\n`;

describe('a word for the paint behind a number', () => {
  test.each(['114 (patched)', '114 patched', '114 um (stone chip)', '114 [nachlackiert]'])(
    'leaves the reading and is kept as its note, said aloud: %s',
    (cell) => {
      const { value, diagnostics } = read(table(cell));
      expect(diagnostics).toEqual([]);
      expect(value?.readings.map(({ thickness }) => Number(thickness))).toEqual([112, 114, 109]);
      const note = value?.readings[1]?.note ?? '';
      expect(cell).toContain(note);
      expect(value?.decisions.evidence).toContain(`"${note}" behind a number is kept as a note`);
    },
  );

  test('stands behind a note that the row has already', () => {
    const { value } = read('Panel,um,Note\nBonnet,112 (patched),by the badge\nRoof,109,\n');
    expect(value?.readings.map(({ note }) => note)).toEqual(['by the badge; patched', undefined]);
  });

  test('is told in one sentence with all others, three of them by name', () => {
    const { value } = read(
      'Panel,um\nBonnet,112 (dent)\nBonnet,113 (rust)\nRoof,109 (chip)\nRoof,108 (scuff)\n',
    );
    expect(value?.decisions.evidence).toContain(
      '"dent", "rust", "chip", … behind a number are kept as notes',
    );
  });

  test.each(['114 (slipped)', '114 (edge)', '114 (low)', '114 (patched; ignore)', '114 (small)'])(
    'and any other word is refused, for it may be said of the reading: %s',
    (cell) => {
      expect(read(table(cell)).diagnostics.map(({ code }) => code)).toEqual([
        'reading-not-a-number',
      ]);
    },
  );
});

test.each([
  ['patched', true],
  ['Repainted!', true],
  ['small stone chip', true],
  ['leichter Kratzer', true],
  ['éclat', false],
  ['small', false],
  ['not repainted', false],
  ['patched and then measured again here', false],
  ['', false],
])('%j is a remark on the paint: %s', (text, is) => {
  expect(isRemark(text)).toBe(is);
});

test('behind the readings of a list the word is a note as well', () => {
  const { value } = read('Bonnet: 112, 109 (patched)\nRoof: 104, 101 µm\n', { unit: 'um' });
  expect(value?.readings.map(({ note }) => note)).toEqual([
    undefined,
    'patched',
    undefined,
    undefined,
  ]);
});
