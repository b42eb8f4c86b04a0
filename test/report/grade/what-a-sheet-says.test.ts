/** Sentences and figures of a sheet beside each other, as the one who may fail by it reads them. */

import { describe, expect, test } from 'vitest';
import type { Reading } from '../../../src/film/reading.ts';
import { readGauge } from '../../../src/formats/gauge.ts';
import { readRubric } from '../../../src/formats/rubric.ts';
import { renderText } from '../../../src/render/text.ts';
import { gradeBlocks } from '../../../src/report/grade/grade-blocks.ts';
import { gradeSheet } from '../../../src/report/grade/grade-sheet.ts';
import { gradeFiles } from '../../../src/tasks/grade/grade-files.ts';
import type { GradedClass, GradeFilesRequest } from '../../../src/tasks/grade/grade-request.ts';
import type { NamedGauge } from '../../../src/tasks/settings/gauge-in-use.ts';
import { seededRandom } from '../../samples/seeded-random.ts';
import { gradeRequest, loaded } from '../../tasks/grading.ts';
import {
  changed,
  drawCar,
  type Habit,
  readCar,
  settings,
  usualHabit,
} from '../../training/true-class.ts';

const csv = (readings: readonly Reading[], operator?: string): string =>
  `panel,point,repeat,reading_um,marked${operator === undefined ? '' : ',operator'}\n${readings
    .map(
      ({ panel, point, repeat, thickness, marked }) =>
        `${panel},${point},${repeat},${thickness.toFixed(1)},${marked ? 'yes' : 'no'}${operator === undefined ? '' : `,${operator}`}`,
    )
    .join('\n')}\n`;

function classOf(
  reference: string,
  trainees: Readonly<Record<string, string>>,
  more: Partial<GradeFilesRequest> = {},
): GradedClass {
  const { value, diagnostics } = gradeFiles(requestOf(reference, trainees, more));
  if (value === undefined) throw new Error(JSON.stringify(diagnostics));
  return value;
}

const requestOf = (
  reference: string,
  trainees: Readonly<Record<string, string>>,
  more: Partial<GradeFilesRequest> = {},
): GradeFilesRequest =>
  gradeRequest({
    reference: loaded('reference.csv', reference),
    trainees: Object.entries(trainees).map(([name, text]) => loaded(`${name}.csv`, text)),
    settings,
    ...more,
  });

const page = { unit: 'um', verbose: false } as const;
const plain = { width: 80, paint: (text: string) => text };
const told = (blocks: ReturnType<typeof gradeBlocks>): string =>
  renderText(blocks, plain).replaceAll(/\s+/g, ' ');
const traineeOf = (graded: GradedClass, name: string) => {
  const one = graded.trainees.find((some) => some.name === name);
  if (one === undefined) throw new Error(name);
  return one;
};
const sheetOf = (graded: GradedClass, name: string): string =>
  told(gradeSheet(traineeOf(graded, name), graded, page));

const random = seededRandom(2_031);
const car = drawCar(random);
const habit: Habit = { ...usualHabit, marked: true, repeats: 2 };
const reference = readCar(random, car, { ...habit, repeats: 3 });
const read = (more: Partial<Habit> = {}) => readCar(random, car, { ...habit, ...more });
const over = (readings: readonly Reading[], on: string, by: number) =>
  changed(readings, ({ panel, thickness }) => (panel === on ? thickness + by : thickness));

describe('a panel that is compared at some of its marks', () => {
  const low = [...reference]
    .filter(({ panel }) => panel === 'roof')
    .toSorted((a, b) => a.thickness - b.thickness)[0]?.point;
  const own = over(read(), 'roof', 11).filter(
    ({ panel, point }) => panel !== 'roof' || point !== low,
  );
  const graded = classOf(csv(reference), { mia: csv(own), bo: csv(read()) });
  const [score] = (traineeOf(graded, 'mia').grade?.scores ?? []).filter(
    ({ panel }) => panel.id === 'roof',
  );

  test('is told by what it differs by there, not by means over other points', () => {
    expect(score).toMatchObject({ shared: 4, verdict: 'unsatisfactory' });
    const by = score?.difference.toFixed(1);
    expect(sheetOf(graded, 'mia')).toContain(
      `roof: ${by} µm more than the reference at the 4 marks that both read (z `,
    );
  });
  test('has a word under the table why mean and reference are not as far apart', () => {
    expect(sheetOf(graded, 'mia')).toContain(
      'Differs: for roof by the marks that both read; the means are over all points.',
    );
    expect(sheetOf(graded, 'bo')).not.toContain('Differs:');
  });
});

test('a score is printed with as many figures as its verdict takes', () => {
  const biases = [5.9, 5.96, 6.02, 6.1, 8.9, 8.96, 8.99, 9.02, -5.97, -8.98];
  const exact = { ...habit, repeatability: 0, step: 0.01, repeats: 1 };
  const same = readCar(random, car, exact);
  const files = biases.map((bias, k): [string, string] => [
    `t${k}`,
    csv(changed(same, ({ thickness, panel }) => thickness + (panel === 'roof' ? bias : 0))),
  ]);
  const graded = classOf(csv(same), Object.fromEntries(files));
  const pages = graded.trainees.map((one) => renderText(gradeSheet(one, graded, page), plain));
  const rows = pages.flatMap((text) => [
    ...text.matchAll(/ (−?\d+\.\d+)′? (satisfactory|questionable|unsatisfactory)$/gm),
  ]);
  expect(rows.length).toBeGreaterThan(100);
  const said = new Set<string>();
  for (const [, figure = '', verdict = ''] of rows) {
    const z = Math.abs(Number(figure.replace('−', '-')));
    said.add(verdict);
    expect(`${figure} ${z >= 3 ? 'unsatisfactory' : z > 2 ? 'questionable' : 'satisfactory'}`).toBe(
      `${figure} ${verdict}`,
    );
  }
  expect(said.size).toBe(3);
});

describe('a survey that is in another unit as a whole', () => {
  const own = read();
  const graded = classOf(csv(reference), {
    flo: csv(changed(own, ({ thickness }) => thickness / 25.4)).replaceAll(/,(\d\.\d),/g, ',$1,'),
    bo: csv(own),
  });
  const sheet = sheetOf(graded, 'flo');

  test('has found as much as its mark counts', () => {
    const shares = traineeOf(graded, 'flo').grade?.mark.criteria ?? [];
    expect(shares.find(({ criterion }) => criterion === 'lowPoints')?.share).toBe(0);
    expect(sheet).toMatch(/Found: 0 of \d low spots .*; 0 of \d repaired panels/);
    expect(told(gradeBlocks(graded, page))).toMatch(/flo unsatisfactory .*? 0\/1 0\/1 bo/);
  });
  test('has no bias, no limits and no repeats in a unit that they are not in', () => {
    expect(sheet).not.toContain('over the whole car you read');
    expect(sheet).not.toContain('Repeats differ');
    expect(sheet).not.toContain('read each point three times');
    expect(sheet).toContain('No limits of agreement: 11 of 11 panels are void');
    expect(sheet).not.toContain('the mean over the car is off');
  });
});

test('a low spot between points of one’s own is told as missed, and that it costs nothing', () => {
  const own = read({ marked: false }).filter(({ panel }) => panel !== 'wing-front-right');
  const wing = read({ points: 3 })
    .filter(({ panel }) => panel === 'wing-front-right')
    .map((one) => ({ ...one, marked: false }));
  const graded = classOf(csv(reference), { ida: csv([...own, ...wing]) });
  const free = 'it may lie between points of your own, and takes no marks';
  expect(sheetOf(graded, 'ida')).toContain(free);
  const marked = classOf(csv(reference), {
    ida: csv(read().filter(({ panel, point }) => panel !== 'wing-front-right' || point !== '4')),
  });
  expect(sheetOf(marked, 'ida')).toContain('was not found, your lowest reading');
  expect(sheetOf(marked, 'ida')).not.toContain(free);
});

describe('values that are another’s', () => {
  const own = read();
  const graded = classOf(csv(reference), {
    ann: csv(own),
    bea: csv(changed(own, ({ thickness }, i) => thickness + 4 + 0.1 * (2 * (i % 2) - 1))),
    ...Object.fromEntries(['cor', 'dov', 'elif'].map((name) => [name, csv(read())])),
  });
  test('and a little more all over are told with how much more, as whoever looks will see', () => {
    const apart = /your values lie 0\.\d µm \(SD\) from those of another survey of this class/;
    expect(sheetOf(graded, 'ann')).toMatch(apart);
    expect(sheetOf(graded, 'ann')).toContain('4.0 µm less all over aside');
    expect(sheetOf(graded, 'bea')).toContain('4.0 µm more all over aside');
    expect(told(gradeBlocks(graded, page))).toContain('4.0 µm all over aside');
  });
  test('are told without it where there is none', () => {
    const near = classOf(csv(reference), {
      ann: csv(own),
      bea: csv(
        changed(
          own,
          ({ thickness }, i) => thickness + ([-0.4, -0.2, 0.2, 0.4][Math.floor(i / 2) % 4] ?? 0),
        ),
      ),
      ...Object.fromEntries(['cor', 'dov', 'elif'].map((name) => [name, csv(read())])),
    });
    expect(sheetOf(near, 'bea')).toContain('from those of another survey of this class, nearer');
    expect(told(gradeBlocks(near, page))).not.toContain('all over aside');
  });
});

test('one repeat that is far off is told as that, not as an unsteady hand', () => {
  const own = read();
  const at = own.findIndex(({ panel, point }) => panel === 'roof' && point === '2');
  const slipped = changed(own, ({ thickness }, i) => (i === at ? thickness + 27 : thickness));
  const unsteady = read({ repeatability: 4 });
  const graded = classOf(csv(reference), { mia: csv(slipped), bo: csv(unsteady) });
  expect(sheetOf(graded, 'mia')).toMatch(
    /readings of one point differ by .* usual: most of it is point 2 of the roof \(\d+\.\d and \d+\.\d µm\), without it they differ by 1\.\d\d µm: read it again, and look at the gauge before you write/,
  );
  expect(sheetOf(graded, 'bo')).toContain('lift and set the probe down at the very same place');
});

describe('the gauge of one', () => {
  const gauge = (verdict: 'pass' | 'fail'): NamedGauge => {
    const text = `{"schema":"leastcut/gauge/1","verdict":"${verdict}","permitted_error":{"fixed_um":1,"proportional_pct":1}}`;
    const file = readGauge('own.json', text).value;
    if (file === undefined) throw new Error('a gauge file was refused');
    return { file, name: 'own.json', origin: 'flag' };
  };
  const files = { a: csv(read(), 'Ann'), b: csv(read(), 'Ann Lee') };

  test('stands on no sheet of another whose name begins the same', () => {
    const traineeGauges = new Map([['Ann Lee', gauge('pass')]]);
    const graded = classOf(csv(reference), files, { traineeGauges });
    expect(sheetOf(graded, 'Ann Lee')).toContain('Gauge: you have a gauge of your own');
    expect(sheetOf(graded, 'Ann')).not.toContain('Gauge:');
    expect(sheetOf(graded, 'Ann')).not.toContain('Lee');
  });
  test('that failed its check makes nobody say that all had one', () => {
    const traineeGauges = new Map([['Ann Lee', gauge('fail')]]);
    const text = told(gradeBlocks(classOf(csv(reference), files, { traineeGauges }), page));
    expect(text).toContain('compared as if one gauge had read all, so what it is off by cancels');
    expect(text).not.toContain('one gauge for everybody');
    expect(told(gradeBlocks(classOf(csv(reference), files), page))).toContain(
      'one gauge for everybody, so what it is off by cancels',
    );
  });
});

describe('what z′ allows besides', () => {
  const passed: NamedGauge = (() => {
    const text =
      '{"schema":"leastcut/gauge/1","verdict":"pass","permitted_error":{"fixed_um":1,"proportional_pct":3}}';
    const file = readGauge('own.json', text).value;
    if (file === undefined) throw new Error('a gauge file was refused');
    return { file, name: 'own.json', origin: 'flag' };
  })();
  const rubricOf = (sigma: string) => {
    const text = `{"schema":"leastcut/rubric/1","pass_mark_pct":70,"weights":{"accuracy":1},"sigma_pt_um":${sigma}}`;
    const value = readRubric('rubric.json', text).value?.value;
    if (value === undefined) throw new Error('a rubric was refused');
    return { name: 'rubric.json', value };
  };
  const own = { ...usualHabit, points: 3 };
  const ownPoints = () => csv(readCar(random, car, own));
  const allowed = (graded: GradedClass): string =>
    /in units of σ_pt \([\d.]+ µm\)(.*?)\. Up to/u.exec(sheetOf(graded, 'mia'))?.[1] ?? 'nothing';
  const withClass = (mia: string, more: Partial<GradeFilesRequest> = {}): GradedClass => {
    const others = { bo: ownPoints(), cy: ownPoints(), di: ownPoints() };
    return classOf('', { mia, ...others }, { reference: undefined, ...more });
  };

  test('is no word where no panel has one, at marks that one gauge read', () => {
    expect(allowed(classOf(csv(reference), { mia: csv(read()) }, { gauge: passed }))).toBe('');
  });

  test('is what gauges that nobody named may be off by, where film is thick', () => {
    expect(allowed(classOf(csv(reference), { mia: csv(read()) }))).toBe(
      '; z′ allows besides for what gauges may be off by on thick film',
    );
  });

  test('is the film between points of one’s own', () => {
    const graded = classOf(csv(readCar(random, car, own)), { mia: ownPoints() }, { gauge: passed });
    expect(allowed(graded)).toBe(
      '; z′ allows besides for the film between your points and the reference’s',
    );
  });

  test('is what two gauges may be off by, at marks', () => {
    const traineeGauges = new Map([['mia', passed]]);
    expect(allowed(classOf(csv(reference), { mia: csv(read(), 'mia') }, { traineeGauges }))).toBe(
      '; z′ allows besides for what the gauges may be off by',
    );
  });

  test('is how well the reference repeats where that is what it is unsure of', () => {
    const once = csv(readCar(random, car, { ...habit, repeats: 1, points: 3 }));
    const graded = classOf(
      once,
      { mia: csv(read({ points: 3 })) },
      { rubric: rubricOf('1'), gauge: passed },
    );
    expect(allowed(graded)).toBe('; z′ allows besides for how well the reference repeats');
  });

  test('is what a class is unsure of, and the film between one’s points where σ_pt has it not', () => {
    expect(allowed(withClass(ownPoints(), { gauge: passed }))).toBe(
      '; z′ allows besides for the film between your points and what the class is unsure of',
    );
    expect(allowed(withClass(ownPoints(), { rubric: rubricOf('"class"'), gauge: passed }))).toBe(
      '; z′ allows besides for what the class is unsure of',
    );
  });
});

test('a nameless class takes names out, and no letters out of other words', () => {
  const rows = read();
  const { diagnostics } = gradeFiles(
    requestOf(
      csv(reference),
      {
        first: csv(rows, 'n').replace('roof,1,', 'rooof,1,'),
        second: csv(read(), 'Ann Lee'),
        third: csv(read(), 'Ann'),
      },
      { anonymous: true },
    ),
  );
  const messages = diagnostics.map(({ message, hint }) => `${message} ${hint ?? ''}`).join(' ');
  expect(messages).toContain('is not a panel of the saloon template');
  expect(messages).toContain('Trainee 1 is not graded');
  expect(messages).not.toContain('Ann');
});
