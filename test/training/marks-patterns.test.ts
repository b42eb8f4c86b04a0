/** Where, and when, a trainee reads off at marks that the reference has as well. */
import { describe, expect, test } from 'vitest';
import { micrometres } from '../../src/base/units.ts';
import type { Reading } from '../../src/film/reading.ts';
import { gradeTrainee } from '../../src/training/grade-trainee.ts';
import { expertReference } from '../../src/training/reference.ts';
import { normal, seededRandom } from '../samples/seeded-random.ts';
import {
  changed,
  drawCar,
  gradeAgainst,
  marking,
  model,
  oneGauge,
  panelIds,
  readCar,
  sigmaPt,
  surveyOf,
  usualHabit,
} from './true-class.ts';

const random = seededRandom(8_088);
const car = drawCar(random);
const marked = { ...usualHabit, marked: true };
const expert = expertReference(surveyOf(readCar(random, car, { ...marked, repeats: 3 })));
const own = readCar(random, car, marked);
const three = own.filter(({ panel }) => /^(bonnet|roof|boot)$/.test(panel));

const told = (readings: readonly Reading[]) => gradeAgainst(surveyOf(readings), expert).reasons;
const codes = (readings: readonly Reading[]) => told(readings).map(({ code }) => code);
const textOf = (readings: readonly Reading[], code: string): string =>
  told(readings).find((one) => one.code === code)?.text ?? '';
/** From nothing at the first reading to all of it at the last. */
const creeping = (by: number, readings: readonly Reading[]) =>
  changed(readings, ({ thickness }, i) => thickness + (by * i) / (readings.length - 1));
const onPanels = (by: Readonly<Record<string, number>>, readings: readonly Reading[]) =>
  changed(readings, ({ panel, thickness }) => thickness + (by[panel] ?? 0));

describe('a gauge that drifts', () => {
  test('is told with how far, and neither the car nor its panels are', () => {
    const text = textOf(creeping(12, own), 'gauge-drift');
    const [, by] = /([\d.]+) µm more at the last of 55 marks than at the first/u.exec(text) ?? [];
    expect(Math.abs(Number(by) - 12)).toBeLessThan(2.5);
    for (const code of ['car-off', 'panel-off', 'panel-doubtful']) {
      expect(codes(creeping(12, own))).not.toContain(code);
    }
    expect(textOf(creeping(-12, own), 'gauge-drift')).toContain('µm less at the last');
  });

  test('is confirmed by a gauge file whose checks moved to the same side, and by no other', () => {
    const text = (by: number, moved: number | undefined): string =>
      gradeTrainee({
        trainee: surveyOf(creeping(by, own)),
        reference: expert,
        ...{ sigmaPt, marking, model },
        gauges: { ...oneGauge, moved: moved === undefined ? moved : micrometres(moved) },
      }).reasons.find(({ code }) => code === 'gauge-drift')?.text ?? '';
    expect(text(12, 8.7)).toContain(
      '(the checks in its gauge file confirm it: 8.7 µm more at the second than at the first)',
    );
    expect(text(-12, -8.7)).toContain('confirm it: 8.7 µm less at the second than at the first)');
    for (const moved of [undefined, 0, -8.7]) expect(text(12, moved)).not.toContain('confirm');
  });

  test('is told with what follows from it: the film that it shows, the panels it puts off, the verdict', () => {
    expect(textOf(creeping(12, own), 'gauge-drift')).toMatch(
      /^reads more and more beside .* the gauge drifts, and shows film at the end that is not there \((it makes \d panels? questionable|it puts \d panels? off)\); check/u,
    );
    expect(textOf(creeping(-12, own), 'gauge-drift')).toMatch(
      /^reads less and less beside .* and misses film at the end \(/u,
    );
    const grade = gradeAgainst(surveyOf(creeping(20, own)), expert);
    const off = grade.scores.filter(({ verdict }) => verdict === 'unsatisfactory').length;
    expect(off).toBeGreaterThan(1);
    expect(textOf(creeping(20, own), 'gauge-drift')).toContain(`(it puts ${off} panels off)`);
    const slight = gradeAgainst(surveyOf(creeping(7, own)), expert);
    expect(slight).toMatchObject({ verdict: 'questionable', grounds: ['gauge-drift'] });
    const doubtful = slight.scores.filter(({ verdict }) => verdict === 'questionable');
    expect(doubtful).toHaveLength(1);
    expect(textOf(creeping(7, own), 'gauge-drift')).toContain('(it makes 1 panel questionable)');
    const aboutZero = changed(creeping(7, own), ({ thickness }) => thickness - 3.5);
    expect(textOf(aboutZero, 'gauge-drift')).toContain('(no panel is put off by it yet)');
  });

  test('shows on three panels as well', () => {
    expect(codes(creeping(14, three))).toContain('gauge-drift');
  });

  test('is followed in the order of the file, whatever that is', () => {
    const backwards = creeping(12, [...own].reverse());
    expect(textOf(backwards, 'gauge-drift')).toContain('µm more at the last');
    expect(codes([...backwards].sort((a, b) => a.point.localeCompare(b.point)))).not.toContain(
      'gauge-drift',
    );
  });

  test('is none where the last panel, or each by itself, was read wrongly', () => {
    const panels = [...new Set(own.map(({ panel }) => panel))];
    const last = panels[panels.length - 1] ?? '';
    for (const by of [8, 12, 25]) {
      expect(codes(onPanels({ [last]: by }, own))).not.toContain('gauge-drift');
      expect(codes(onPanels({ boot: by }, three))).not.toContain('gauge-drift');
      expect(codes(onPanels({ roof: by, boot: 2 * by }, three))).not.toContain('gauge-drift');
    }
  });

  test('is told of values that lie on a line to the last digit, made up of the reference’s', () => {
    const of = (by: number) =>
      changed(expert.expert?.readings.filter(({ repeat }) => repeat === 1) ?? [], (_, i) => {
        const { panel = '', point = '' } = own[i] ?? {};
        const read = expert.panels.get(panel)?.points.find((one) => one.point === point);
        return (read?.thickness ?? 0) + by * i;
      });
    expect(textOf(of(0.25), 'gauge-drift')).toContain('13.5 µm more at the last of 55 marks');
    expect(codes(of(0))).not.toContain('gauge-drift');
  });

  test('is none of one mark on each panel, whose levels nothing tells from it', () => {
    const once = own.filter(({ point }) => point === '1');
    expect(codes(creeping(30, once))).not.toContain('gauge-drift');
  });

  test('is told as well of panels read to and fro, to the last digit or not', () => {
    const order = ['bonnet', 'roof', 'boot'].flatMap((panel) =>
      own.filter((one) => one.panel === panel && Number(one.point) < 5),
    );
    const [there, back] = [/[12]/, /[34]/].map((points) =>
      order.filter(({ point }) => points.test(point)),
    );
    const exact = changed([...(there ?? []), ...(back ?? []).reverse()], ({ panel, point }, i) => {
      const read = expert.panels.get(panel)?.points.find((one) => one.point === point);
      return (read?.thickness ?? 0) + 2 * i;
    });
    expect(textOf(exact, 'gauge-drift')).toContain('22.0 µm more at the last of 12 marks');
  });

  test('is none of a steady hand, nor of one that reads more everywhere', () => {
    expect(codes(own)).not.toContain('gauge-drift');
    expect(codes(changed(own, ({ thickness }) => thickness + 9))).toEqual(
      expect.arrayContaining(['car-off']),
    );
    expect(codes(changed(own, ({ thickness }) => thickness + 9))).not.toContain('gauge-drift');
  });

  test('takes marks: points of one’s own show none', () => {
    const unmarked = creeping(12, own).map((one) => ({ ...one, marked: false }));
    expect(codes(unmarked)).not.toContain('gauge-drift');
  });
});

describe('a probe at the edge', () => {
  const atEdges = (readings: readonly Reading[], by = -10, middle: readonly string[] = ['3']) =>
    changed(
      readings,
      ({ point, thickness }) => thickness + (middle.includes(point) ? 0 : by + normal(random)),
    );

  test('is told by its marks, and not as a car that reads less all over', () => {
    const text = textOf(atEdges(three), 'marks-off');
    expect(text).toMatch(
      /^reads (9|10|11)(\.\d)? µm less than the reference at marks 1, 2, 4 and 5 of the panels.*, and like it at mark 3: /u,
    );
    expect(codes(atEdges(three))).not.toContain('car-off');
    const [first] = three;
    expect(told(atEdges(three)).find(({ code }) => code === 'marks-off')).toMatchObject({
      file: first?.origin.file,
      line: first?.origin.line,
    });
    expect(codes(atEdges(own))).toContain('marks-off');
    expect(textOf(atEdges(three, 10), 'marks-off')).toMatch(/µm more than the reference at/u);
  });

  test('is no car that is followed to a panel and no more, where it is held so from there on', () => {
    const later = panelIds.slice(4);
    const told = Array.from({ length: 20 }, () => {
      const drawn = drawCar(random);
      const by = expertReference(surveyOf(readCar(random, drawn, { ...marked, repeats: 3 })));
      const readings = changed(readCar(random, drawn, marked), ({ panel, point, thickness }) =>
        later.includes(panel) && /[15]/u.test(point) ? thickness - 20 : thickness,
      );
      return gradeAgainst(surveyOf(readings), by).reasons.map(({ code }) => code);
    });
    expect(told.filter((some) => some.includes('marks-off'))).toHaveLength(20);
    expect(told.filter((some) => some.includes('not-following'))).toEqual([]);
  });

  test('is none of a hand that reads less at all marks, or at none', () => {
    expect(codes(changed(own, ({ thickness }) => thickness - 10))).not.toContain('marks-off');
    expect(codes(own)).not.toContain('marks-off');
  });

  test('is none of one panel, nor of two', () => {
    const some = (ids: RegExp) =>
      own.flatMap((one) => (ids.test(one.panel) ? atEdges([one]) : [one]));
    expect(codes(some(/^bonnet$/))).not.toContain('marks-off');
    expect(codes(atEdges(three.filter(({ panel }) => panel !== 'boot')))).not.toContain(
      'marks-off',
    );
  });
});
