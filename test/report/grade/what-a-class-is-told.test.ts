/** Words of a class and of a sheet: what is told once, to whom, and against what. */
import { describe, expect, test } from 'vitest';
import type { Reading } from '../../../src/film/reading.ts';
import { glossary } from '../../../src/formats/data/glossary.ts';
import { readGauge } from '../../../src/formats/gauge.ts';
import { readRubric } from '../../../src/formats/rubric.ts';
import { renderText } from '../../../src/render/text.ts';
import { gradeBlocks } from '../../../src/report/grade/grade-blocks.ts';
import { gradeRecord } from '../../../src/report/grade/grade-record.ts';
import { gradeSheet } from '../../../src/report/grade/grade-sheet.ts';
import { gradeFiles } from '../../../src/tasks/grade/grade-files.ts';
import type { GradedClass, GradeFilesRequest } from '../../../src/tasks/grade/grade-request.ts';
import type { NamedGauge } from '../../../src/tasks/settings/gauge-in-use.ts';
import { normal, seededRandom } from '../../samples/seeded-random.ts';
import { gradeRequest, loaded } from '../../tasks/grading.ts';
import {
  changed,
  drawCar,
  type Habit,
  panelIds,
  readCar,
  settings,
  usualHabit,
} from '../../training/true-class.ts';

const random = seededRandom(40_961);
const car = drawCar(random);
const habit: Habit = { ...usualHabit, marked: true, repeats: 3, repeatability: 0.5 };
const read = (more: Partial<Habit> = {}) => readCar(random, car, { ...habit, ...more });
const csv = (readings: readonly Reading[]): string =>
  `panel,point,repeat,reading_um,marked\n${readings
    .map(({ panel, point, repeat, thickness }) => `${panel},${point},${repeat},${thickness},yes\n`)
    .join('')}`;
const reference = read();
type Files = Readonly<Record<string, readonly Reading[]>>;
const classOf = (files: Files, more: Partial<GradeFilesRequest> = {}): GradedClass => {
  const { value, diagnostics } = gradeFiles(
    gradeRequest({
      reference: loaded('reference.csv', csv(reference)),
      trainees: Object.entries(files).map(([name, all]) => loaded(`${name}.csv`, csv(all))),
      settings,
      ...more,
    }),
  );
  if (value === undefined) throw new Error(JSON.stringify(diagnostics));
  return value;
};
const page = { unit: 'um', verbose: true } as const;
const told = (blocks: ReturnType<typeof gradeBlocks>): string =>
  renderText(blocks, { width: 80, paint: (text) => text }).replaceAll(/\s+/g, ' ');
const pageOf = (graded: GradedClass): string => told(gradeBlocks(graded, page));
const sheetOf = (graded: GradedClass, name: string): string => {
  const one = graded.trainees.find((some) => some.name === name);
  if (one === undefined) throw new Error(name);
  return told(gradeSheet(one, graded, page));
};

const last = panelIds.slice(-3);
const taking = (own: readonly Reading[], from: readonly Reading[], panels: readonly string[]) =>
  changed(own, ({ panel, thickness }, i) =>
    panels.includes(panel) ? (from[i]?.thickness ?? thickness) : thickness,
  );

describe('whole panels of another survey', () => {
  const ann = read();
  const graded = classOf({ ann, ben: taking(read(), ann, last), cy: read() });
  const record = gradeRecord(graded, { version: '0', diagnostics: [] }) as unknown as {
    readonly class: { readonly copied: readonly unknown[] };
  };

  test('are named on the page, in the record, and to both, who lose no marks by it', () => {
    expect(pageOf(graded)).toMatch(
      /Too alike: ann and ben have all 45 readings of 3 panels \([^)]*\) in common, figure for figure\./u,
    );
    for (const name of ['ann', 'ben']) {
      expect(sheetOf(graded, name)).toContain('are those of another survey of this class, figure');
    }
    expect(sheetOf(graded, 'cy')).not.toContain('figure for figure');
    expect(record.class.copied).toEqual([
      expect.objectContaining({ trainees: ['ann', 'ben'], copied_panels: expect.any(Array) }),
    ]);
    const marks = graded.trainees.map(({ grade }) => [grade?.verdict, grade?.mark.share]);
    expect(marks.map(([verdict]) => verdict)).toEqual([
      'questionable',
      'questionable',
      'satisfactory',
    ]);
    expect(marks[1]?.[1]).toBe(marks[2]?.[1]);
  });

  test('of one trainee twice are no copy', () => {
    const twice = classOf({ ann, cy: read() });
    const again = gradeFiles(
      gradeRequest({
        reference: loaded('reference.csv', csv(reference)),
        trainees: [
          loaded('one/ann.csv', csv(ann)),
          loaded('two/ann.csv', csv(taking(read(), ann, last))),
        ],
        settings,
      }),
    ).value;
    expect(pageOf(twice)).not.toContain('figure for figure');
    if (again === undefined) throw new Error('not graded');
    expect(pageOf(again)).toMatch(/Handed in twice: ann \(all 45 readings of 3 panels .* same\)/u);
  });
});

test('who copied from several is told so in one sentence, with what to do once', () => {
  const [ann, ben] = [read(), read()];
  const dee = taking(taking(read(), ann, last), ben, panelIds.slice(0, 3));
  const eve = taking(dee, reference, panelIds.slice(4, 7));
  const graded = classOf({ ann, ben, eve });
  const reasons = graded.trainees[2]?.grade?.reasons.filter(({ code }) => code === 'survey-copied');
  expect(reasons).toHaveLength(1);
  const text = reasons?.[0]?.text ?? '';
  expect(text.split('each reads the car alone')).toHaveLength(2);
  for (const whose of ['another survey of this class', 'yet another survey', 'the reference']) {
    expect(text.split(`those of ${whose}`)).toHaveLength(2);
  }
  expect(new Set(reasons?.[0]?.panels).size).toBe(9);
});

test('who has single values of two others in common is told of the second in few words', () => {
  const [ann, ben, cy] = [read(), read(), read()];
  const eve = read().map((one, i) => {
    const from = panelIds.indexOf(one.panel) % 2 === 0 ? ann : ben;
    return one.point === '5' ? one : (from[i] ?? one);
  });
  const graded = classOf({ ann, ben, cy, eve });
  const text = graded.trainees[3]?.grade?.reasons.find(
    ({ code }) => code === 'survey-copied',
  )?.text;
  expect(text).toMatch(
    /^2\d of 55 values are those of another survey of this class, more than two who measure have in common; 2\d of 55 those of yet another survey of it: each/u,
  );
});

test('a class that is held against itself has no reference in its words', () => {
  const off = changed(read(), ({ panel, thickness }) =>
    /^(roof|boot|door-rear-left)$/.test(panel) ? thickness + 14 : thickness,
  );
  const swapped = read().map((one) => ({
    ...one,
    panel:
      one.panel === 'wing-front-left'
        ? 'quarter-left'
        : one.panel === 'quarter-left'
          ? 'wing-front-left'
          : one.panel,
  }));
  const files = {
    ...{ ann: read(), ben: read(), cy: read(), dee: read(), eve: read() },
    ...{ off, swapped, high: read({ bias: 5 }), far: read({ bias: 12 }) },
    short: read().filter(({ panel, point }) => panel !== 'roof' && point !== '5'),
    mil: changed(read(), ({ thickness }) => thickness / 25.4),
  };
  const graded = classOf(files, { reference: undefined });
  const texts = [pageOf(graded), ...Object.keys(files).map((name) => sheetOf(graded, name))];
  const codes = new Set(
    graded.trainees.flatMap(({ grade }) => (grade?.reasons ?? []).map(({ code }) => code)),
  );
  expect([...codes]).toEqual(
    expect.arrayContaining([
      'panel-doubtful',
      'panels-swapped',
      'car-off',
      'unit-slip',
      'few-points',
      'panels-unread',
    ]),
  );
  for (const text of texts) {
    expect(text.replace('the file of an expert as reference', '')).not.toContain('reference');
    expect(text).toContain('the class');
  }
  expect(pageOf(classOf(files))).toContain('the reference');
});

describe('a gauge of one’s own that drifted', () => {
  const drifting = changed(read(), ({ thickness }, i) =>
    Number((thickness + 0.055 * i).toFixed(1)),
  );
  const gauge = (change: number, proved = true): NamedGauge => {
    const text = JSON.stringify({
      ...{ schema: 'leastcut/gauge/1', verdict: 'fail' },
      permitted_error: { fixed_um: 1, proportional_pct: 1 },
      drift: [
        { shim_um: 50, change_um: change / 2, expanded_um: 0.7, proved },
        { shim_um: 125, change_um: change, expanded_um: 0.7, proved },
      ],
    });
    const file = readGauge('own.json', text).value;
    if (file === undefined) throw new Error('a gauge file was refused');
    return { file, name: 'own.json', origin: 'flag' };
  };
  const by = (own: NamedGauge) =>
    classOf({ ann: read(), drew: drifting }, { traineeGauges: new Map([['drew', own]]) });

  test('is said to confirm the drift, on the page and the sheet', () => {
    const graded = by(gauge(8.7));
    const confirms =
      'the gauge drifts (the checks in its gauge file confirm it: 8.7 µm more at the second than at the first)';
    expect(pageOf(graded)).toContain(confirms);
    expect(sheetOf(graded, 'drew')).toContain(confirms);
    expect(pageOf(graded)).toContain('it moved by 8.7 µm at 125 µm between its two checks');
  });

  test('confirms nothing to the other side, nor where its checks prove no change', () => {
    expect(pageOf(by(gauge(-8.7)))).not.toContain('confirm');
    expect(pageOf(by(gauge(-8.7)))).toContain('it moved by 8.7 µm');
    expect(pageOf(by(gauge(8.7, false)))).not.toMatch(/confirm|moved by/u);
  });

  test('is the trainee’s on a sheet, which names nobody in the third person', () => {
    const sheet = sheetOf(by(gauge(8.7)), 'drew');
    expect(sheet).toContain('Gauge: you have a gauge of your own that failed its check');
    expect(sheet).not.toContain('drew has');
    expect(pageOf(by(gauge(8.7)))).toContain('drew has a gauge of their own');
  });
});

describe('the repeatability of a class', () => {
  const steady = { ann: read(), ben: read(), cy: read() };

  test('is said to be one’s, where one makes more of it than all others', () => {
    const nils = read({ repeatability: 4 });
    expect(pageOf(classOf({ ...steady, nils }))).toMatch(
      /repeatability \d\.\d\d µm \(most of it by nils: [34]\.\d\d µm, the others 0\.\d\d µm\)/u,
    );
  });

  test('is nobody’s where all are alike, nor of two', () => {
    expect(pageOf(classOf(steady))).not.toContain('most of it');
    const two = { ann: steady.ann, nils: read({ repeatability: 4 }) };
    expect(pageOf(classOf(two))).not.toContain('most of it');
  });
});

test('the table counts what the mark counts', () => {
  const middles = changed(read(), ({ panel }, i) => {
    const middle = car.get(panel)?.marks[2] ?? 0;
    return Number((middle + 0.4 * normal(random) + (i % 2) * 0.1).toFixed(1));
  });
  const graded = classOf({ ann: read(), pia: middles });
  const void_ = graded.trainees[1]?.grade?.voided.length ?? 0;
  expect(void_).toBeGreaterThan(3);
  expect(pageOf(graded)).toContain(` ${11 - void_}/11 ${55 - 5 * void_}/55 `);
});

test('the word rubric is explained with an example that can be read', () => {
  const meaning = glossary.find(({ term }) => term === 'rubric')?.meaning ?? '';
  const example = /\{"schema".*\}\}/u.exec(meaning)?.[0] ?? '';
  const { value, diagnostics } = readRubric('rubric.json', example);
  expect(diagnostics).toEqual([]);
  expect(value?.value.weights.accuracy).toBeCloseTo(1 / 3, 9);
  for (const key of ['pass_mark_pct', 'sigma_pt_um', 'low_points', 'repairs', 'repeatability']) {
    expect(meaning).toContain(key);
  }
});
