/** Panels of which nobody knows whether their names are swapped or their points renumbered: on the class page and the sheet. */
import { expect, test } from 'vitest';
import { at } from '../../../src/base/at.ts';
import { renderText } from '../../../src/render/text.ts';
import { gradeBlocks } from '../../../src/report/grade/grade-blocks.ts';
import { gradeSheet } from '../../../src/report/grade/grade-sheet.ts';
import { gradeFiles } from '../../../src/tasks/grade/grade-files.ts';
import { gradeRequest, loaded } from '../../tasks/grading.ts';
import { settings } from '../../training/true-class.ts';

const FILM: Readonly<Record<string, readonly number[]>> = {
  bonnet: [121, 117, 123, 119],
  roof: [119, 121, 120, 122],
  'door-front-right': [120, 115, 122, 118],
  'door-front-left': [118, 118, 119, 121],
};
const NOISE = [0.6, -0.8, 0.9, -0.4, -0.7, 0.5];
const csv = (of: Readonly<Record<string, string>>, noise: number): string => {
  const rows = Object.keys(FILM).flatMap((panel, i) =>
    (FILM[of[panel] ?? panel] ?? []).flatMap((value, k) =>
      [0, 1, 2].map((r) => {
        const read = value + noise * at(NOISE, (i + k + r) % 6);
        return `${panel},${k + 1},${r + 1},${read.toFixed(1)},yes`;
      }),
    ),
  );
  return `panel,point,repeat,reading_um,marked\n${rows.join('\n')}\n`;
};

test('both pages say that each counts as questionable, for the one or the other, and never that nothing is to mend', () => {
  const { value } = gradeFiles(
    gradeRequest({
      reference: loaded('reference.csv', csv({}, 0.1)),
      trainees: [loaded('joel.csv', csv({ bonnet: 'roof', roof: 'bonnet' }, 1))],
      settings,
    }),
  );
  const joel = value?.trainees[0];
  if (value === undefined || joel === undefined) throw new Error('not graded');
  const page = { unit: 'um', verbose: false } as const;
  const told = (blocks: ReturnType<typeof gradeBlocks>): string =>
    renderText(blocks, { width: 80, paint: (text: string) => text }).replaceAll(/\s+/g, ' ');
  const [ofClass, sheet] = [gradeBlocks(value, page), gradeSheet(joel, value, page)].map(told);
  for (const text of [ofClass, sheet]) {
    expect(text).toMatch(
      /counted as questionable, for names swapped or points numbered otherwise: (bonnet and roof|roof and bonnet) \(scored as it stands, the mark would be 100 %\)/,
    );
    expect(text).toContain('bonnet and roof are swapped, or points of them are numbered');
  }
  expect(sheet).toMatch(/bonnet 4 [^a-z]+ name or numbers/);
  expect(sheet).not.toContain('nothing to mend');
});
