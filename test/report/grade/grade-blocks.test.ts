import { describe, expect, test } from 'vitest';
import type { Reading } from '../../../src/film/reading.ts';
import { renderHtml } from '../../../src/render/html.ts';
import { renderText } from '../../../src/render/text.ts';
import { hardPanels } from '../../../src/report/grade/class-findings.ts';
import { gradeBlocks } from '../../../src/report/grade/grade-blocks.ts';
import { gradeRecord } from '../../../src/report/grade/grade-record.ts';
import { gradeSheet } from '../../../src/report/grade/grade-sheet.ts';
import { gradeFiles } from '../../../src/tasks/grade/grade-files.ts';
import type { GradedClass } from '../../../src/tasks/grade/grade-request.ts';
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

const csv = (readings: readonly Reading[]): string =>
  `panel,point,repeat,reading_um,marked\n${readings
    .map(
      ({ panel, point, repeat, thickness }) =>
        `${panel},${point},${repeat},${thickness.toFixed(1)},yes`,
    )
    .join('\n')}\n`;

const classOf = (reference: string, trainees: Readonly<Record<string, string>>): GradedClass =>
  graded(
    loaded('reference.csv', reference),
    Object.entries(trainees).map(([name, text]) => loaded(name, text)),
  );

type Loaded = ReturnType<typeof loaded>;

function graded(reference: Loaded, trainees: readonly Loaded[]): GradedClass {
  const { value, diagnostics } = gradeFiles(
    gradeRequest({
      reference,
      trainees,
      settings,
    }),
  );
  if (value === undefined) throw new Error(JSON.stringify(diagnostics));
  return value;
}

/** Twelve on one car: eight read well, three made a mistake, one file cannot be read. */
function twelve(): GradedClass {
  const random = seededRandom(12);
  const car = drawCar(random);
  const habit: Habit = { ...usualHabit, marked: true, repeats: 2 };
  const read = (more: Partial<Habit> = {}) => readCar(random, car, { ...habit, ...more });
  const well = Array.from({ length: 8 }, (_, k) => loaded(`student-${k + 1}.csv`, csv(read())));
  const slipped = changed(read(), ({ thickness }, i) => (i === 7 ? 10 * thickness : thickness));
  return graded(loaded('reference.csv', csv(read())), [
    ...well,
    loaded('student-9.csv', csv(read({ bias: 10 }))),
    loaded('student-10.csv', csv(slipped)),
    loaded('student-11.csv', csv(read().filter(({ panel }) => !panel.startsWith('door')))),
    loaded('student-12.csv', 'panel,point,reading_um\nroof,1,1.134\n'),
  ]);
}

const page = { unit: 'um', verbose: false } as const;
const plain = { width: 80, paint: (text: string) => text };
const class_ = twelve();
const text = renderText(gradeBlocks(class_, page), plain);
const lines = text.trimEnd().split('\n');

describe('the page of a class of twelve', () => {
  test('is one page of 48 lines and 80 columns', () => {
    expect(lines.length).toBeLessThanOrEqual(48);
    expect(lines.filter((line) => line.length > 80)).toEqual([]);
  });
  test('has a row for everybody, and a paragraph only for those with something to mend', () => {
    expect(text.replaceAll('\n', ' ')).toMatch(
      /^Grading: 12 trainees, 8 satisfactory, 2 questionable, 1 unsatisfactory, 1 not read /,
    );
    for (let k = 1; k <= 12; k += 1) expect(text).toContain(`\nstudent-${k} `);
    const named = [...text.matchAll(/^(student-\d+):/gm)].map(([, name]) => name);
    expect(named).toEqual(
      expect.arrayContaining(['student-9', 'student-10', 'student-11', 'student-12']),
    );
    expect(named.length).toBeLessThan(7);
  });
  test('says what went wrong in the file that could not be read', () => {
    expect(text).toContain('student-12: not read: "1.134" may be 1.134 or 1,134 (line 2)');
  });
});

describe('what the page says of the class', () => {
  test('is of all surveys together where it counts conditions, and names who has the fewest right', () => {
    const each = class_.trainees.flatMap(({ grade }) => grade?.conditions ?? []);
    const [alike, of] = (['alike', 'of'] as const).map((key) =>
      each.reduce((sum, one) => sum + one[key], 0),
    );
    expect(text).toContain(`Conditions: ${alike} of ${of} panels as the reference says`);
  });
  test('names whom the gauge R&R leaves out, and why', () => {
    expect(text.replaceAll(/\s+/g, ' ')).toContain(
      '(without student-10, with slips in the readings; student-11, with few of these marked points read twice)',
    );
  });
  test('gives the grounds of every verdict that is not satisfactory', () => {
    for (const { name, grade } of class_.trainees) {
      if (grade === null || grade.verdict === 'satisfactory') continue;
      expect(text.replaceAll(/\s+/g, ' ')).toContain(`${name}: ${grade.verdict}, as `);
    }
  });
});

describe('hard panels', () => {
  const panelsRead = (...satisfactory: readonly number[]) => ({
    panels: satisfactory.map((share, k) => ({
      reference: { panel: { name: `panel ${k + 1}` } },
      count: 10,
      robust: null,
      satisfactory: share,
      usual: 1,
    })),
  });
  const said = (view: unknown, leastSurveys = 3): string =>
    JSON.stringify(
      hardPanels(
        { view, settings: { models: { training: { class: { leastSurveys } } } } } as never,
        'um',
      ),
    );

  test('are named with how many read them well, up to four of them', () => {
    const four = said(panelsRead(1, 0.8, 0.7, 1, 1, 0.6, 0.5, 1, 1));
    expect(four).toContain(
      'fewest satisfactory on panel 7 (5 of 10), panel 6 (6 of 10), panel 3 (7 of 10), panel 2 (8 of 10)"',
    );
  });
  test('of more are counted: no list is cut without a word', () => {
    const five = said(panelsRead(1, 0.8, 0.8, 1, 1, 0.7, 0.6, 1, 1, 0.5, 1, 1));
    expect(five).toContain(
      'panel 10 (5 of 10), panel 7 (6 of 10), panel 6 (7 of 10), and fewer than usual on 2 more"',
    );
  });
  test('are none where those who read a panel read others no better', () => {
    const { panels } = panelsRead(1, 0.8, 1);
    const view = { panels: panels.map((panel, k) => (k === 1 ? { ...panel, usual: 0.8 } : panel)) };
    expect(said(view)).toBe('[]');
  });
  test('are those that as many read as a class needs to say something', () => {
    expect(said(panelsRead(1, 0.8, 1), 10)).toContain('panel 2 (8 of 10)');
    expect(said(panelsRead(1, 0.8, 1), 11)).toBe('[]');
  });
  test('are none for the sake of one trainee', () => {
    expect(said(panelsRead(1, 0.9, 1))).toBe('[]');
    expect(said(panelsRead(1, 0.8, 1))).toContain('panel 2 (8 of 10)');
  });
});

describe('what a blunder voids', () => {
  const random = seededRandom(12);
  const car = drawCar(random);
  const habit: Habit = { ...usualHabit, marked: true, repeats: 2, step: 1 };
  const reference = readCar(random, car, { ...habit, repeats: 3 });
  const own = readCar(random, car, habit);
  const figures = [112, 115, 109, 114, 111];
  const invented = changed(own, ({ panel, point, thickness }) =>
    /^(door-rear|boot|roof)/.test(panel) ? (figures[Number(point) - 1] ?? 0) : thickness,
  );
  const biased = changed(own, ({ thickness }) => thickness + 4);
  const mil = changed(own, ({ panel, thickness }) =>
    /^(roof|boot|door)/.test(panel) ? thickness / 25.4 : thickness,
  );
  const one = classOf(csv(reference), {
    'ida.csv': csv(invented),
    'bo.csv': csv(biased),
    'mia.csv': csv(mil),
    'flo.csv': csv(changed(own, ({ thickness }) => thickness / 25.4)),
  });
  const told = (blocks: ReturnType<typeof gradeBlocks>): string =>
    renderText(blocks, plain).replaceAll(/\s+/g, ' ');
  const sheetOf = (name: string): string => {
    const trainee = one.trainees.find((some) => some.name === name);
    if (trainee === undefined) throw new Error(name);
    return told(gradeSheet(trainee, one, page));
  };

  test('is named on both pages, with the mark that it would be without', () => {
    const counted =
      /counted as not read: rear right door, boot lid, rear left door and roof \(scored as it stands, the mark would be \d+ %\)/;
    expect(told(gradeBlocks(one, page))).toMatch(counted);
    expect(sheetOf('ida')).toMatch(counted);
    expect(sheetOf('ida')).toContain(
      'If you read these panels at the car, say so to your trainer.',
    );
    expect(sheetOf('ida')).toMatch(/roof 5 [^a-z]* not counted/);
    expect(sheetOf('ida')).toMatch(/of it, rear right door, .* left out as void/);
  });

  test('is named for a slip, and where it is all of the survey without a list', () => {
    expect(sheetOf('mia')).toContain('Void: counted as off, for a slip: front right door, rear');
    expect(sheetOf('mia')).toMatch(/roof 5 [^a-z]* slip/);
    expect(sheetOf('mia')).not.toContain('If you read these panels');
    expect(sheetOf('mia')).toMatch(/No limits of agreement: 6 of 11 panels are void \(/);
    expect(sheetOf('flo')).toContain('counted as off, for a slip: all 11 panels');
  });

  test('leaves no doubt why a survey fails whose mark would pass', () => {
    const passes = 'The mark would pass: the verdict is for what is told above.';
    const { grade } = one.trainees.find(({ name }) => name === 'mia') ?? {};
    expect(grade?.verdict).toBe('unsatisfactory');
    expect(sheetOf('mia').includes(passes)).toBe((grade?.mark.share ?? 0) >= 0.7);
    expect(sheetOf('bo')).not.toContain(passes);
    const two = changed(own, ({ panel, thickness }) =>
      /^(roof|boot)/.test(panel) ? thickness + 14 : thickness,
    );
    const [failed] = classOf(csv(reference), { 'una.csv': csv(two) }).trainees;
    if (failed === undefined) throw new Error('nobody was graded');
    expect(failed.grade).toMatchObject({ verdict: 'unsatisfactory', grounds: ['panels-off'] });
    expect(told(gradeSheet(failed, one, page))).toContain(passes);
  });

  test('is nothing of a small bias, which is told beside the gauge and costs no marks', () => {
    expect(sheetOf('bo')).toContain(
      'That is more than chance and no more than is allowed: check the gauge’s zero and a shim before the next car.',
    );
    expect(sheetOf('bo')).toContain(
      'What to do: check the gauge’s zero and a shim; nothing else to mend.',
    );
    expect(sheetOf('bo')).not.toContain('Void');
    expect(sheetOf('ida')).not.toContain('That is more than chance');
    const { trainees } = gradeRecord(one, { version: '0', diagnostics: [] });
    const hintOf = (name: string) =>
      (trainees as readonly { trainee: string; bias: { hint: string | null } }[]).find(
        ({ trainee }) => trainee === name,
      )?.bias.hint;
    expect(hintOf('bo')).toBe('check the gauge’s zero and a shim');
    expect(hintOf('ida')).toBeNull();
  });
});

describe('sheets', () => {
  test('say which panels their limits of agreement leave out', () => {
    const sheetOf = (name: string): string => {
      const one = class_.trainees.find((trainee) => trainee.name === name);
      if (one === undefined) throw new Error(name);
      return renderText(gradeSheet(one, class_, page), plain).replaceAll(/\s+/g, ' ');
    };
    expect(sheetOf('student-10')).toMatch(/% of panels from .* of it, bonnet left out as void/);
    expect(sheetOf('student-1')).not.toContain('a slip');
  });

  test('have weights and marks that add up as they are printed', () => {
    for (const one of class_.trainees) {
      if (one.grade === null) continue;
      const sheet = renderText(gradeSheet(one, class_, page), plain);
      const rows = [...sheet.matchAll(/^[a-z ]+ +(\d+) % +\d+ % +(\d+) %$/gm)];
      const added = (at: 1 | 2): number => rows.reduce((sum, row) => sum + Number(row[at]), 0);
      expect(rows.length).toBeGreaterThan(2);
      expect(added(1)).toBe(100);
      expect(sheet).toContain(`, ${added(2)} %`);
    }
  });

  const sheets = class_.trainees.map((one) => gradeSheet(one, class_, page));
  test('name nobody but the one they are of', () => {
    sheets.forEach((sheet, k) => {
      const own = class_.trainees[k]?.name ?? '';
      const others = class_.trainees.filter(({ name }) => name !== own);
      const words = new Set(renderText(sheet, plain).split(/[\s:;,.]+/));
      expect(others.filter(({ name }) => words.has(name))).toEqual([]);
    });
  });
  test('fit a page each, and begin a new one in print', () => {
    for (const sheet of sheets) {
      expect(renderText(sheet, plain).split('\n').length).toBeLessThanOrEqual(49);
    }
    const html = renderHtml([...gradeBlocks(class_, page), ...sheets.flat()]);
    expect(html.match(/<h[12] class="title">/g)).toHaveLength(13);
    expect(html.match(/<section class="sheet">/g)).toHaveLength(13);
    expect(html).toContain('.sheet:not(.head) + .sheet { margin: 0; break-before: page; }');
  });
});
