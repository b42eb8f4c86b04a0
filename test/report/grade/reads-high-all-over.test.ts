/** A hand or gauge that reads off all over the car, by what is allowed: what class page and sheet say of it. */
import { describe, expect, test } from 'vitest';
import type { Reading } from '../../../src/film/reading.ts';
import { renderText } from '../../../src/render/text.ts';
import { gradeBlocks } from '../../../src/report/grade/grade-blocks.ts';
import { gradeSheet } from '../../../src/report/grade/grade-sheet.ts';
import { gradeFiles } from '../../../src/tasks/grade/grade-files.ts';
import { normal, seededRandom } from '../../samples/seeded-random.ts';
import { gradeRequest, loaded } from '../../tasks/grading.ts';
import {
  changed,
  panelIds,
  readingAt,
  rounded,
  settings,
  usualHabit,
} from '../../training/true-class.ts';

const random = seededRandom(4_471);
const LOW = 'wing-front-left';
/** Factory film, and one wing that was sanded down at one point: thin by that alone. */
const film = new Map(
  panelIds.map((id) => [
    id,
    Array.from({ length: 5 }, (_, k) => (id === LOW && k === 3 ? 78 : 110 + 3 * normal(random))),
  ]),
);
const read = (bias: number, sd = 0.8): readonly Reading[] =>
  [...film].flatMap(([panel, points]) =>
    points.flatMap((thickness, k) =>
      [1, 2, 3].map((repeat) =>
        readingAt(
          panel,
          `${k + 1}`,
          repeat,
          rounded(thickness + bias + sd * normal(random), usualHabit.step),
        ),
      ),
    ),
  );

const csv = (readings: readonly Reading[], marked: boolean): string =>
  `panel,point,repeat,reading_um,marked\n${readings
    .map(
      ({ panel, point, repeat, thickness }) =>
        `${panel},${point},${repeat},${thickness.toFixed(1)},${marked ? 'yes' : 'no'}`,
    )
    .join('\n')}\n`;

const page = { unit: 'um', verbose: false } as const;
const told = (blocks: ReturnType<typeof gradeBlocks>): string =>
  renderText(blocks, { width: 80, paint: (text: string) => text }).replaceAll(/\s+/g, ' ');

const reference = read(0, 0.3);
function pagesOf(own: readonly Reading[], marked = true, by = reference) {
  const { value, diagnostics } = gradeFiles(
    gradeRequest({
      reference: loaded('reference.csv', csv(by, marked)),
      trainees: [loaded('joel.csv', csv(own, marked))],
      settings,
    }),
  );
  const [joel] = value?.trainees ?? [];
  if (value === undefined || joel === undefined) throw new Error(JSON.stringify(diagnostics));
  return {
    ofClass: told(gradeBlocks(value, page)),
    sheet: told(gradeSheet(joel, value, page)),
    joel,
  };
}

describe('who reads 6 µm high all over, which is allowed,', () => {
  const high =
    /reads [56]\.\d µm more than the reference all over the car, which is more than chance and no more than is allowed: check the gauge’s zero and a shim/;

  test('has a line on the page of the class, though nothing else is to mend', () => {
    const { ofClass, joel } = pagesOf(read(5.4), false);
    expect(joel.grade).toMatchObject({ verdict: 'satisfactory', reasons: [] });
    expect(ofClass).toMatch(new RegExp(`joel: satisfactory: ${high.source}`));
  });
  test('has it beside panels that are questionable, and on the sheet the gauge before any of them', () => {
    const { ofClass, sheet, joel } = pagesOf(read(5.8));
    expect(joel.grade?.reasons.map(({ code }) => code)).toContain('panel-doubtful');
    expect(ofClass).toMatch(high);
    expect(sheet).toMatch(
      /What to do first check the gauge’s zero and a shim: you read [56]\.\d µm more than the reference all over the car; then what follows [a-z ]+: 1\d\d\.\d µm, the reference .*: read it again/,
    );
  });
  test('and who reads as much low has it the other way round', () => {
    expect(pagesOf(read(-5.4), false).ofClass).toMatch(
      /joel: satisfactory: reads 5\.\d µm less than the reference all over the car/,
    );
  });
  test('is told nothing where hands differ by as much, however sure it is', () => {
    const { joel, ofClass, sheet } = pagesOf(read(2));
    const { low = 0, high: most = 0 } = joel.grade?.bias ?? {};
    expect(low * most).toBeGreaterThan(0);
    expect(ofClass).not.toContain('check the gauge');
    expect(sheet).toContain('What to do: nothing to mend.');
  });
  test('is told of a gauge that drifts in its place', () => {
    const all = read(0);
    const { joel, ofClass, sheet } = pagesOf(
      changed(all, ({ thickness }, i) => thickness + (10 * i) / all.length),
    );
    expect(joel.grade?.reasons.map(({ code }) => code)).toContain('gauge-drift');
    expect(ofClass).not.toContain('no more than is allowed');
    expect(sheet).not.toContain('first check the gauge’s zero');
  });
});

describe('a low spot that was found on a panel that reads as original', () => {
  const joined =
    /of such\); front left wing has its low spot found and reads as original all the same, the reference as thin: (\d\.\d) µm may go by your readings, (\d\.\d) µm by the reference; that takes no marks\./;

  test('is told as that beside what was found, and costs no marks', () => {
    const { sheet, ofClass, joel } = pagesOf(read(5.6));
    expect(joel.grade?.lowSpots).toMatchObject({ of: 1, found: 1 });
    const shares = joel.grade?.mark.criteria ?? [];
    expect(shares.find(({ criterion }) => criterion === 'lowPoints')?.share).toBe(1);
    expect(ofClass).toContain('front left wing has its low spot found and reads as original');
    const [, own, theirs] = joined.exec(sheet) ?? [];
    expect(Number(own)).toBeGreaterThan(Number(theirs));
  });
  test('is not, where the panel reads as the reference does or lets no more go', () => {
    for (const bias of [0, -5]) {
      const { sheet, ofClass } = pagesOf(read(bias));
      expect(sheet).toContain('Found: 1 of 1 low spots');
      expect(`${sheet}${ofClass}`).not.toContain('all the same');
    }
  });
  test('is not, where it was missed: then that is told', () => {
    const filled = changed(read(0), ({ panel, point, thickness }) =>
      panel === LOW && point === '4' ? thickness + 30 : thickness,
    );
    const { sheet, joel } = pagesOf(filled);
    expect(joel.grade?.conditions?.otherwise).toMatchObject([{ own: 'original', theirs: 'thin' }]);
    expect(sheet).toContain('Found: 0 of 1 low spots');
    expect(sheet).not.toContain('all the same');
  });
});

describe('a panel that reads as original where the reference reads it as cut back', () => {
  const asRoof = (readings: readonly Reading[], by: number) =>
    changed(readings, ({ panel, thickness }) => thickness - (panel === 'roof' ? by : 0));
  const low = asRoof(reference, 15);

  test('is told on the page of the class and under what to do, with both means where nothing may go in doubt', () => {
    const { sheet, ofClass, joel } = pagesOf(asRoof(read(5.4), 15), true, low);
    expect(joel.grade?.reasons.filter(({ panels }) => panels.includes('roof'))).toEqual([]);
    const said =
      /roof reads as original, the reference as cut-back \(mean (\d+\.\d) µm and (\d+\.\d) µm\): 0\.0 µm may go by either as long as that is in doubt, and more once it counts as original/;
    const [text = '', own, theirs] = said.exec(ofClass) ?? [];
    expect(Number(own) - Number(theirs)).toBeGreaterThan(4);
    expect(ofClass).toContain(`${text}; that takes no marks`);
    expect(sheet.slice(sheet.indexOf('What to do'))).toContain(
      `${text}; read it again before any of it comes off (that takes no marks)`,
    );
    expect(sheet).not.toContain('nothing else to mend');
  });
  test('is told with what may go by either where that differs', () => {
    const { sheet, ofClass } = pagesOf(asRoof(read(0), 6), true, low);
    const said =
      /roof reads as original, the reference as cut-back: (\d+\.\d) µm may go by your readings, (\d+\.\d) µm by the reference/;
    const [text = '', own, theirs] = said.exec(ofClass) ?? [];
    expect(Number(own)).toBeGreaterThan(Number(theirs));
    expect(sheet.slice(sheet.indexOf('What to do'))).toContain(`${text}; read it again`);
  });
  test('is not, where it reads as the reference does, or lets less go', () => {
    for (const one of [asRoof(read(0), 15), asRoof(read(-5), 15)])
      expect(pagesOf(one, true, low).sheet).not.toContain('may go by');
    expect(pagesOf(low, true, reference).sheet).not.toContain('may go by');
  });
});
