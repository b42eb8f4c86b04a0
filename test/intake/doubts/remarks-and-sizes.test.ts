import { describe, expect, test } from 'vitest';
import { briefs, values } from '../helpers.ts';

const noted = (note: string): string =>
  `panel,point,reading_um,note\nbonnet,1,104,\nbonnet,2,98,${note}\nroof,1,101,\n`;

describe('a note that says something else than its row is told, and the row is read as it stands', () => {
  test.each([
    'actually roof',
    'outlier',
    'Ausreißer',
    'eigentlich Dach',
    'in mil!',
    'roof!',
    '外れ値',
  ])('%s', (note) => {
    expect(briefs(noted(note))).toEqual([`3:13+${note.length} warning reading-doubted`]);
    expect(values(noted(note))).toHaveLength(3);
  });

  test.each(['2 mil chip', 'in µm', 'bonnet', 'near the edge', 'ok'])('but not "%s"', (note) => {
    expect(briefs(noted(note))).toEqual([]);
  });
});

describe('a file whose every reading is ten times a film, or a tenth of one', () => {
  const table = (...values: readonly number[]): string =>
    `panel,point,reading_um\n${values.map((um, k) => `${k % 2 === 0 ? 'roof' : 'boot'},${k},${um}`).join('\n')}\n`;

  test('is told', () => {
    expect(briefs(table(1124, 1091, 986, 1187))).toEqual(['1:13+10 warning unit-doubtful']);
    expect(briefs(table(22, 19, 17, 18))).toEqual(['1:13+10 warning unit-doubtful']);
  });

  test('is not where some reading is a film, or only one panel was measured', () => {
    expect(briefs(table(1124, 120, 986, 1187)).join()).not.toContain('unit-doubtful');
    expect(briefs('panel,point,reading_um\nroof,1,1124\nroof,2,1091\nroof,3,986\n')).toEqual([]);
  });
});
