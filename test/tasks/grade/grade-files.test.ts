import { describe, expect, test } from 'vitest';
import { error, hasErrors } from '../../../src/base/diagnostics.ts';
import { MICROMETRES_PER_MIL, micrometres } from '../../../src/base/units.ts';
import { readGauge } from '../../../src/formats/gauge.ts';
import { readJob } from '../../../src/formats/job/read-job.ts';
import { readRubric } from '../../../src/formats/rubric.ts';
import { copiedBlocks } from '../../../src/report/grade/class-doubts.ts';
import { gradeRecord } from '../../../src/report/grade/grade-record.ts';
import { gradeSheet } from '../../../src/report/grade/grade-sheet.ts';
import { gradeTable } from '../../../src/report/grade/grade-table.ts';
import { gradeFiles } from '../../../src/tasks/grade/grade-files.ts';
import type {
  GradedClass,
  GradeFilesRequest,
  HandedFile,
} from '../../../src/tasks/grade/grade-request.ts';
import type { NamedGauge } from '../../../src/tasks/settings/gauge-in-use.ts';
import { normal, seededRandom } from '../../samples/seeded-random.ts';
import { drawCar, type Habit, readCar, settings, usualHabit } from '../../training/true-class.ts';
import { gradeRequest, loaded } from '../grading.ts';

type Row = {
  readonly panel: string;
  readonly point: string;
  readonly repeat: number;
  readonly value: number;
};

const random = seededRandom(4);
const car = drawCar(random);
const habit: Habit = { ...usualHabit, marked: true, repeats: 2 };
const rowsOf = (bias = 0): readonly Row[] =>
  readCar(random, car, { ...habit, bias }).map(({ panel, point, repeat, thickness }) => ({
    panel,
    point,
    repeat,
    value: thickness,
  }));
const reference = rowsOf();
const own = rowsOf();
const biased = rowsOf(9);

const csv = (rows: readonly Row[], extra = '', more = ''): string =>
  `panel,point,repeat,reading_um,marked${extra}\n${rows
    .map(
      ({ panel, point, repeat, value }) =>
        `${panel},${point},${repeat},${value.toFixed(1)},yes${more}`,
    )
    .join('\n')}\n`;
const inMil = (rows: readonly Row[]): string =>
  `panel,point,repeat,reading_mil,marked\n${rows
    .map(
      ({ panel, point, repeat, value }) =>
        `${panel},${point},${repeat},${(value / MICROMETRES_PER_MIL).toFixed(6)},yes`,
    )
    .join('\n')}\n`;

function request(
  trainees: Readonly<Record<string, string>>,
  more: Partial<GradeFilesRequest> = {},
): GradeFilesRequest {
  return gradeRequest({
    reference: loaded('reference.csv', csv(reference)),
    trainees: Object.entries(trainees).map(([name, text]) => loaded(name, text)),
    settings,
    ...more,
  });
}

const graded = (
  trainees: Readonly<Record<string, string>>,
  more: Partial<GradeFilesRequest> = {},
): GradedClass => {
  const { value, diagnostics } = gradeFiles(request(trainees, more));
  if (value === undefined) throw new Error(JSON.stringify(diagnostics));
  return value;
};
const codesOf = (
  trainees: Readonly<Record<string, string>>,
  more: Partial<GradeFilesRequest> = {},
) => gradeFiles(request(trainees, more)).diagnostics.map(({ code }) => code);
const gauge = (fixed: number, name = 'own.json'): NamedGauge => {
  const text = `{"schema":"leastcut/gauge/1","verdict":"pass","permitted_error":{"fixed_um":${fixed},"proportional_pct":1}}`;
  const file = readGauge(name, text).value;
  if (file === undefined) throw new Error('a gauge file was refused');
  return { file, name, origin: 'flag' };
};
const broken = 'panel,point,reading_um\nbonnet,1,1.134\nroof,1,119\n';

describe('the template of a class', () => {
  const few = csv(reference.filter(({ panel }) => panel === 'bonnet' || panel === 'roof'));
  const read = { ...request({}).read, templateId: undefined };
  const by = (text: string, trainees: Readonly<Record<string, string>>) =>
    gradeFiles(request(trainees, { read, reference: loaded('reference.csv', text) }));
  const byFew = (trainees: Readonly<Record<string, string>>) => by(few, trainees);

  test('is one that has the panels of all files where the reference has few', () => {
    const { value, diagnostics } = byFew({ 'a.csv': csv(own), 'b.csv': few.replace('yes', 'no') });
    expect(diagnostics.filter(({ severity }) => severity === 'error')).toEqual([]);
    expect(value?.template.id).toBe('saloon');
    expect(value?.trainees.map(({ grade }) => grade?.scores.length)).toEqual([2, 2]);
    expect(value?.assumptions.find(({ code }) => code === 'template')?.text).toMatch(
      /^template saloon, which the panel names fit/,
    );
  });

  test('is never one whose panels the reference has otherwise', () => {
    const boot = csv(reference.filter(({ panel }) => panel === 'boot'));
    const hatch = csv(own).replaceAll('boot,', 'tailgate,');
    const { value } = by(boot, { 'a.csv': hatch, 'b.csv': csv(own) });
    expect(value?.template.panels.map(({ id }) => id)).toContain('boot');
  });

  test('is as it was with files that cannot be read', () => {
    const alone = byFew({ 'a.csv': few.replace('yes', 'no') }).value?.template.id;
    const beside = byFew({ 'a.csv': few.replace('yes', 'no'), 'b.csv': 'nothing' }).value;
    expect(beside?.template.id).toBe(alone);
  });
});

describe('who is graded', () => {
  test('is named by the file, by a line above the table, or by a column', () => {
    const [ann, ben, cor, dee] = graded({
      'class/Ann.csv': csv(own),
      'b.csv': `Operator: Ben\n${csv(own)}`,
      'c.csv': `${csv(own, ',operator', ',Cor')}${csv(rowsOf(), '', ',Dee').split('\n').slice(1).join('\n')}`,
    }).trainees;
    expect([ann?.name, ben?.name, cor?.name, dee?.name]).toEqual(['Ann', 'Ben', 'Cor', 'Dee']);
  });

  test('has attempts in the order of the files, whatever the case of the name', () => {
    const { trainees, view } = graded({
      'one.csv': csv(biased, ',operator', ',Ann Lee'),
      'two.csv': csv(own, ',operator', ',ann  lee'),
    });
    expect(trainees).toMatchObject([
      { name: 'Ann Lee', attempt: 1, attempts: 2 },
      { name: 'Ann Lee', attempt: 2, attempts: 2 },
    ]);
    // The class is seen by the latest attempt alone.
    expect(view.panels[0]?.count).toBe(1);
  });

  test('is taken for one person aloud where only the names of the files agree', () => {
    expect(codesOf({ 'monday/ann.csv': csv(own), 'friday/ann.csv': csv(biased) })).toContain(
      'grade-attempts',
    );
    expect(codesOf({ 'ann-1.csv': csv(own), 'ann-2.csv': csv(biased) })).toEqual([]);
  });

  test('keeps the day that the readings or the file name', () => {
    const { trainees } = graded({
      'a.csv': csv(own, ',time', ',2026-10-06 09:15'),
      'b.csv': `Date: 2026-10-07\n${csv(own)}`,
      'c.csv': csv(own),
    });
    expect(trainees.map(({ date }) => date)).toEqual(['2026-10-06 09:15', '2026-10-07', null]);
  });
});

describe('the reference among the trainees’ files', () => {
  const again = ({ diagnostics }: ReturnType<typeof gradeFiles>) =>
    diagnostics.filter(({ code }) => code === 'grade-reference-again').map(({ at }) => at?.file);

  test('is told and graded as nobody’s, whatever it is called', () => {
    const outcome = gradeFiles(
      request({ 'ann.csv': csv(own), 'students/expert.csv': csv(reference) }),
    );
    expect(outcome.value?.trainees.map(({ name }) => name)).toEqual(['ann']);
    expect(again(outcome)).toEqual(['students/expert.csv']);
    expect(outcome.value?.view.panels[0]?.count).toBe(1);
  });

  test('is known by its readings and its assessor where it was saved anew', () => {
    const marit = { reference: loaded('r.csv', csv(reference, ',operator', ',Marit Hale')) };
    const saved = `${csv(reference.toReversed(), ',operator', ',marit  hale')}`;
    const outcome = gradeFiles(request({ 'ann.csv': csv(own), 'copy.csv': saved }, marit));
    expect(outcome.value?.trainees.map(({ name }) => name)).toEqual(['ann']);
    expect(again(outcome)).toEqual(['copy.csv']);
    // Another survey of the same assessor is a survey.
    const second = csv(own, ',operator', ',Marit Hale');
    expect(again(gradeFiles(request({ 'ann.csv': second }, marit)))).toEqual([]);
  });

  test('alone is no class', () => {
    expect(codesOf({ 'expert.csv': csv(reference) })).toEqual([
      'grade-reference-again',
      'usage-missing-input',
    ]);
  });

  test('names nobody of a nameless class', () => {
    const { diagnostics } = gradeFiles(
      request({ 'ann.csv': csv(own), 'marit-hale.csv': csv(reference) }, { anonymous: true }),
    );
    expect(JSON.stringify(diagnostics)).not.toContain('marit');
  });
});

describe('a file that cannot be read', () => {
  test('costs its own trainee the grade, as a warning, and nobody else', () => {
    const { value, diagnostics } = gradeFiles(request({ 'ann.csv': csv(own), 'ben.csv': broken }));
    expect(value?.trainees.map(({ name, grade }) => [name, grade?.verdict ?? null])).toEqual([
      ['ann', 'satisfactory'],
      ['ben', null],
    ]);
    expect(hasErrors(diagnostics)).toBe(false);
    expect(diagnostics.map(({ code }) => code)).toEqual(['reading-ambiguous', 'grade-not-read']);
    expect(value?.trainees[1]?.notRead[0]).toMatchObject({ severity: 'error', at: { line: 2 } });
  });

  test('is refused where every one is such, or the reference is', () => {
    expect(gradeFiles(request({ 'ben.csv': broken })).value).toBeUndefined();
    expect(hasErrors(gradeFiles(request({ 'ben.csv': broken })).diagnostics)).toBe(true);
    const other = gradeFiles(
      request({ 'ann.csv': csv(own) }, { reference: loaded('reference.csv', broken) }),
    );
    expect(other.value).toBeUndefined();
    expect(other.diagnostics[0]).toMatchObject({
      severity: 'error',
      at: { file: 'reference.csv' },
    });
  });

  test('is one of another vehicle, of two, or of a reference of two', () => {
    const of = (id: string): string => csv(own, ',vehicle', `,${id}`);
    const ours = { reference: loaded('reference.csv', of('FH-1')) };
    expect(codesOf({ 'a.csv': of('FH-2') }, ours)).toContain('grade-other-vehicle');
    expect(graded({ 'a.csv': of('fh-1') }, ours).trainees[0]?.grade).not.toBeNull();
    expect(graded({ 'a.csv': csv(own) }, ours).vehicle).toBe('FH-1');
    const two = of('FH-1') + of('FH-2').split('\n').slice(1).join('\n');
    expect(codesOf({ 'a.csv': two })).toContain('grade-other-vehicle');
    expect(codesOf({ 'a.csv': csv(own) }, { reference: loaded('r.csv', two) })).toContain(
      'usage-several-vehicles',
    );
  });
});

test('a job of another vehicle is not lent to the class, and one of this vehicle names it', () => {
  const job = (id: string) =>
    readJob('job.json', `{"schema":"leastcut/job/1","vehicle":{"id":"${id}","make":"Orrindale"}}`)
      .value;
  const ours = { reference: loaded('reference.csv', csv(reference, ',vehicle', ',FH-1')) };
  expect(codesOf({ 'a.csv': csv(own) }, { ...ours, job: job('FH-2') })).toEqual(['job-mismatch']);
  expect(graded({ 'a.csv': csv(own) }, { ...ours, job: job('FH-1') }).identity?.make).toBe(
    'Orrindale',
  );
  expect(graded({ 'a.csv': csv(own) }, { job: job('FH-3') }).vehicle).toBe('FH-3');
});

test('a reference of two assessors names both, and readings of nobody beside those of others are refused', () => {
  const [half, rest] = [reference.slice(0, 60), reference.slice(60)];
  const both = `${csv(half, ',operator', ',Marit')}${csv(rest, '', ',Osk').split('\n').slice(1).join('\n')}`;
  expect(graded({ 'a.csv': csv(own) }, { reference: loaded('r.csv', both) }).assessor).toBe(
    'Marit, Osk',
  );
  const { diagnostics } = gradeFiles(
    request({ 'a.csv': `${csv(own, ',operator', ',Ann')}roof,9,1,120,yes,\n` }),
  );
  expect(diagnostics).toMatchObject([{ code: 'grade-nameless', at: { line: own.length + 2 } }]);
});

describe('scores of one trainee', () => {
  const bySome = (more: number) => biased.map((row) => ({ ...row, value: row.value + more }));
  const scores = (class_: GradedClass, name: string) =>
    class_.trainees.find((one) => one.name === name)?.grade?.scores.map(({ z }) => z) ?? [];

  test('do not hang on the order of the files nor on who else is in the class', () => {
    const files = { 'ann.csv': csv(own), 'ben.csv': csv(biased) };
    const [one, other] = [graded(files), graded({ 'ben.csv': csv(biased), 'ann.csv': csv(own) })];
    expect(scores(other, 'ann')).toEqual(scores(one, 'ann'));
    expect(scores(graded({ 'ann.csv': csv(own) }), 'ann')).toEqual(scores(one, 'ann'));
  });

  test('are the same in mil as in µm', () => {
    const class_ = graded({ 'ann.csv': csv(own), 'twin.csv': inMil(own) });
    const [one, twin] = [scores(class_, 'ann'), scores(class_, 'twin')];
    expect(twin).toHaveLength(11);
    twin.forEach((z, i) => {
      expect(z).toBeCloseTo(one[i] ?? Number.NaN, 4);
    });
  });

  test('allow for the calibration of a gauge of one’s own, for that trainee alone', () => {
    const files = {
      'ann.csv': csv(bySome(-6)),
      'ben.csv': csv(bySome(-5.9)),
    };
    const alone = graded(files);
    const withOwn = graded(files, { traineeGauges: new Map([['Ann', gauge(3)]]) });
    const size = (class_: GradedClass, name: string) => Math.abs(scores(class_, name)[0] ?? 0);
    expect(size(withOwn, 'ann')).toBeLessThan(size(alone, 'ann') - 0.1);
    expect(size(withOwn, 'ben')).toBe(size(alone, 'ben'));
    expect(withOwn.assumptions.map(({ code }) => code)).toContain('own-gauge');
    expect(codesOf(files, { traineeGauges: new Map([['Cor', gauge(3)]]) })).toEqual([
      'usage-unknown-trainee',
    ]);
  });

  test('allow nothing for a gauge that was checked where it cannot explain the difference', () => {
    const files = { 'ann.csv': csv(biased) };
    const withOwn = graded(files, { traineeGauges: new Map([['Ann', gauge(3)]]) });
    expect(scores(withOwn, 'ann')[0]).toBe(scores(graded(files), 'ann')[0]);
  });

  test('allow nothing for the gauge of the reference where only one’s own was checked', () => {
    const files = { 'ann.csv': csv(bySome(-6)) };
    const traineeGauges = new Map([['Ann', gauge(3)]]);
    const [first] = scores(graded(files, { traineeGauges }), 'ann');
    const [both] = scores(graded(files, { traineeGauges, gauge: gauge(3, 'all.json') }), 'ann');
    expect(Math.abs(both ?? 0)).toBeLessThan(Math.abs(first ?? 0) - 0.05);
  });

  test('by readings that a gauge’s check put right say so', () => {
    const { file, ...named } = gauge(3);
    const value = { ...file.value, adjustment: { offset: micrometres(-6), slope: 1 } };
    const traineeGauges = new Map([['Ann', { ...named, file: { ...file, value } }]]);
    const { assumptions } = graded({ 'ann.csv': csv(own) }, { traineeGauges });
    expect(assumptions.find(({ code }) => code === 'own-gauge')?.text).toMatch(
      /; every reading put right by its gauge’s check: 1 × reading − 6\.00 µm/u,
    );
  });

  test('allow nothing for a gauge that failed its check, and say so', () => {
    const files = { 'ann.csv': csv(biased) };
    const own_ = gauge(3);
    const value = { ...own_.file.value, verdict: 'fail' as const };
    const failed = { ...own_, file: { ...own_.file, value } };
    const withOwn = graded(files, { traineeGauges: new Map([['Ann', failed]]) });
    expect(scores(withOwn, 'ann')).toEqual(scores(graded(files), 'ann'));
    expect(withOwn.assumptions.find(({ code }) => code === 'own-gauge')?.text).toContain(
      'failed its check on shims',
    );
  });

  test('allow for it as well where the files name gauges by different serial numbers', () => {
    const numbered = (serial: string, rows: readonly Row[]) => `Serial no: ${serial}\n${csv(rows)}`;
    const with_ = { reference: loaded('reference.csv', numbered('0042', reference)) };
    const [same, other] = ['0042', '0077'].map((serial) =>
      graded({ 'ann.csv': numbered(serial, bySome(-6)) }, with_),
    );
    const first = (class_: GradedClass | undefined) =>
      Math.abs(class_?.trainees[0]?.grade?.scores[0]?.z ?? 0);
    expect(first(other)).toBeLessThan(first(same));
    expect(other?.assumptions.map(({ code }) => code)).not.toContain('one-gauge');
  });

  test('allow on thick film for gauges that nobody named, and say so; not for one that is named', () => {
    const thick = (rows: readonly Row[]): readonly Row[] =>
      rows.map((row) => ({ ...row, value: row.value + 150 }));
    const with_ = { reference: loaded('reference.csv', csv(thick(reference))) };
    const files = { 'ann.csv': csv(thick(bySome(-6))) };
    const [unnamed, named] = [with_, { ...with_, gauge: gauge(1, 'g.json') }].map((one) =>
      graded(files, one),
    );
    const first = (class_: GradedClass | undefined) =>
      Math.abs(class_?.trainees[0]?.grade?.scores[0]?.z ?? 0);
    expect(first(unnamed)).toBeLessThan(first(named));
    expect(unnamed?.assumptions.find(({ code }) => code === 'one-gauge')?.text).toBe(
      'one gauge for everybody, so what it is off by cancels, but for ± 2 % of what film is over 120 µm, as nobody named it',
    );
  });

  test('have E_n where the gauge of everybody is stated', () => {
    const class_ = graded({ 'ann.csv': csv(own) }, { gauge: gauge(1, 'g.json') });
    expect(class_.trainees[0]?.grade?.scores.every(({ en }) => en !== null)).toBe(true);
    expect(class_.assumptions.map(({ code }) => code)).toContain('gauge');
  });

  test('compare points by their names where --marked says that these are places', () => {
    const bare = (rows: readonly Row[]) => csv(rows).replaceAll(',yes', ',no');
    const plain = { reference: loaded('reference.csv', bare(reference)) };
    const [apart, marked] = [false, true].map((isMarked) =>
      graded({ 'ann.csv': bare(own) }, { ...plain, marked: isMarked }),
    );
    expect(apart?.trainees[0]?.grade?.scores[0]).toMatchObject({ shared: 0, kind: 'z-prime' });
    expect(apart?.assumptions.map(({ code }) => code)).toContain('own-points');
    expect(marked?.assumptions.map(({ code }) => code)).not.toContain('own-points');
    expect(marked?.trainees[0]?.grade?.scores[0]).toMatchObject({ shared: 5, kind: 'z' });
  });
});

describe('the rubric', () => {
  const rubric = (text: string) => {
    const file = readRubric('r.json', text).value;
    if (file === undefined) throw new Error('a rubric was refused');
    return { name: 'r.json', value: file.value };
  };
  const weights = '"weights": { "coverage": 1 }';

  test('decides the weights and the pass mark', () => {
    const { trainees, rubric: name } = graded(
      { 'ann.csv': csv(biased) },
      { rubric: rubric(`{"schema":"leastcut/rubric/1","pass_mark_pct":90,${weights}}`) },
    );
    expect(trainees[0]?.grade?.mark.share).toBe(1);
    expect(name).toBe('r.json');
  });

  test('may state σ_pt, or take it from the class, which is told where the class is too small', () => {
    const stated = rubric(
      `{"schema":"leastcut/rubric/1","pass_mark_pct":70,${weights},"sigma_pt_um":6}`,
    );
    expect(graded({ 'ann.csv': csv(own) }, { rubric: stated }).sigmaPt).toEqual({
      value: 6,
      from: 'stated',
    });
    const ofClass = rubric(
      `{"schema":"leastcut/rubric/1","pass_mark_pct":70,${weights},"sigma_pt_um":"class"}`,
    );
    const three = { 'a.csv': csv(rowsOf()), 'b.csv': csv(rowsOf()), 'c.csv': csv(rowsOf()) };
    expect(graded(three, { rubric: ofClass }).sigmaPt.from).toBe('class');
    const one = graded({ 'a.csv': csv(own) }, { rubric: ofClass });
    expect(one.sigmaPt).toEqual({ value: 3, from: 'stated' });
    expect(one.assumptions.map(({ code }) => code)).toContain('sigma-pt-class');
  });
});

describe('a class that is its own reference', () => {
  const three = { 'a.csv': csv(rowsOf()), 'b.csv': csv(rowsOf()), 'c.csv': csv(rowsOf()) };
  test('takes all files as trainees’, and each one’s name', () => {
    const class_ = graded(three, { reference: undefined });
    expect(class_.reference.kind).toBe('consensus');
    expect(class_.trainees.map(({ grade }) => grade?.verdict)).toEqual([
      'satisfactory',
      'satisfactory',
      'satisfactory',
    ]);
    expect([class_.referenceFile, class_.assessor]).toEqual([null, null]);
  });
  test('says that it compares no marks, where there are any', () => {
    const plain = (rows: readonly Row[]) => csv(rows).replaceAll(',yes', ',');
    const codes = (write: (rows: readonly Row[]) => string, marked: boolean) =>
      graded(
        { 'ann.csv': write(own), 'ben.csv': write(reference), 'cor.csv': write(rowsOf()) },
        { reference: undefined, marked },
      ).assumptions.map(({ code }) => code);
    expect(codes(plain, true)).toContain('consensus-marks');
    expect(codes(csv, false)).toContain('consensus-marks');
    expect(codes(plain, false)).not.toContain('consensus-marks');
  });

  test('is refused where too few read the same', () => {
    const two = { 'a.csv': csv(own), 'b.csv': csv(own) };
    expect(codesOf(two, { reference: undefined })).toContain('grade-no-consensus');
    expect(codesOf({ 'a.csv': broken }, { reference: undefined })).toContain('reading-ambiguous');
    // Of three files two are one: said as the reason.
    const three = { 'a.csv': csv(own), 'b.csv': csv(reference), 'c.csv': csv(own) };
    const [refused] = gradeFiles(request(three, { reference: undefined })).diagnostics;
    expect(refused?.message).toContain('the readings of c.csv are those of another file');
  });

  test('judges what a panel is by one baseline, so that who read three panels of a thick car invents no repair', () => {
    const thick = (): readonly Row[] =>
      rowsOf().map((row) =>
        row.panel === 'quarter-left' ? row : { ...row, value: 1.5 * row.value },
      );
    const few = thick().filter(({ panel }) => /^(bonnet|roof|quarter-left)$/.test(panel));
    const mil = inMil(own).replace('reading_mil', 'reading_um');
    // One who read in mil and wrote µm makes no baseline.
    const files = { a: csv(thick()), b: csv(thick()), few: csv(few), c: csv(thick()), mil };
    const { trainees, view } = graded(files, { reference: undefined });
    const fewOf = trainees.find(({ name }) => name === 'few')?.grade;
    expect(fewOf?.reasons.map(({ code }) => code)).not.toContain('repair-invented');
    expect(fewOf?.conditions).toMatchObject({ of: 3, alike: 3 });
    expect(view.repairs).toMatchObject({ found: 4, of: 5 });
  });
});

test('a latest attempt that cannot be read leaves the class the one before it', () => {
  const by = (rows: readonly Row[], who: string): string => csv(rows, ',operator', `,${who}`);
  const files = {
    'a.csv': by(rowsOf(), 'Ann'),
    'b.csv': by(rowsOf(), 'Ben'),
    'c.csv': by(rowsOf(), 'Cor'),
  };
  const broken = `panel,point,reading_um,operator\nroof,1,1.134,Ann\n`;
  const class_ = graded({ ...files, 'd.csv': broken }, { reference: undefined });
  expect(class_.view.panels[0]?.count).toBe(3);
});

describe('copied surveys', () => {
  test('are found as well where every value was changed a little, and told by how near they lie', () => {
    const spread = (rows: readonly Row[]) =>
      rows.map((row) => ({ ...row, value: row.value + 8 * normal(random) }));
    const honest = ['ann', 'ben', 'cor', 'dot', 'eve'].map(
      (name) => [`${name}.csv`, spread(rowsOf())] as const,
    );
    const [, ofBen] = honest[1] ?? ['', []];
    const copy = ofBen.map((row) => ({ ...row, value: row.value + 0.6 * normal(random) }));
    const class_ = graded(
      Object.fromEntries(
        [...honest, ['fay.csv', copy] as const].map(([n, rows]) => [n, csv(rows)]),
      ),
    );
    expect(class_.copied).toMatchObject([{ trainees: ['ben', 'fay'] }]);
    const { sd, usual } = class_.copied[0]?.apart ?? { sd: 0, usual: 0 };
    expect(sd).toBeGreaterThan(0.3);
    expect(sd).toBeLessThan(1.2);
    // However far the rest is off, at marks two who measure differ by twice their repeats: two readings of 1.5 µm each.
    expect(usual).toBeCloseTo(2 * 1.5, 9);
    const told = class_.trainees.map(({ grade }) =>
      (grade?.reasons ?? []).filter(({ code }) => code === 'survey-copied'),
    );
    expect(told.map(({ length }) => length)).toEqual([0, 1, 0, 0, 0, 1]);
    expect(told.flat()[0]?.text).toMatch(
      /^at 55 points your values lie 0\.\d µm \(SD\) from those/u,
    );
  });

  test('are none of two who both wrote mil under µm: their values lie near for that', () => {
    const asUm = (text: string): string => text.replace('reading_mil', 'reading_um');
    const files = { a: csv(rowsOf()), b: csv(rowsOf()), c: csv(rowsOf()), d: csv(rowsOf()) };
    const { trainees, copied } = graded({
      ...files,
      e: asUm(inMil(rowsOf())),
      f: asUm(inMil(rowsOf())),
    });
    expect(copied).toEqual([]);
    expect(trainees.map(({ grade }) => grade?.reasons[0]?.code).slice(4)).toEqual([
      'unit-slip',
      'unit-slip',
    ]);
  });

  test('are told to both without a name, and to the trainer with both', () => {
    const copy = own.map((row, i) =>
      i % 9 === 0 ? { ...row, value: row.value + normal(random) } : row,
    );
    const class_ = graded({ 'ann.csv': csv(own), 'ben.csv': csv(rowsOf()), 'cor.csv': csv(copy) });
    expect(class_.copied).toMatchObject([{ trainees: ['ann', 'cor'], of: 55 }]);
    const texts = class_.trainees.map(({ grade }) =>
      (grade?.reasons ?? []).filter(({ code }) => code === 'survey-copied').map(({ text }) => text),
    );
    expect(texts.map((some) => some.length)).toEqual([1, 0, 1]);
    expect(texts.flat().join(' ')).not.toMatch(/ann|cor/);
    expect(class_.trainees[0]?.grade?.verdict).toBe('questionable');
  });
});

describe('names', () => {
  const files = {
    'class/Annemarie.csv': csv(own),
    'Bertram.csv': broken,
    'c.csv': csv(biased, ',operator', ',Cordelia'),
  };
  const hidden = /annemarie|bertram|cordelia/i;
  const nameless = (): { readonly class_: GradedClass; readonly text: string } => {
    const { value, diagnostics } = gradeFiles(
      request(files, {
        anonymous: true,
        traineeGauges: new Map([['Cordelia', gauge(3, 'Cordelia-gauge.json')]]),
      }),
    );
    if (value === undefined) throw new Error(JSON.stringify(diagnostics));
    const context = { version: '0', diagnostics };
    const sheets = value.trainees.map((one) =>
      gradeSheet(one, value, { unit: 'um', verbose: true }),
    );
    return {
      class_: value,
      text: JSON.stringify([gradeRecord(value, context), gradeTable(value), sheets, diagnostics]),
    };
  };

  test('are nowhere where --anonymous hides them, nor in names of files', () => {
    const { class_, text } = nameless();
    expect(class_.trainees.map(({ name }) => name)).toEqual([
      'Trainee 1',
      'Trainee 2',
      'Trainee 3',
    ]);
    expect(text).not.toMatch(hidden);
    expect(text).toContain('survey-2.csv');
  });

  test('that are words of sentences are taken out where they are said, and leave the sentences whole', () => {
    const said = (anonymous: boolean, names: readonly [string, string, string]) =>
      gradeFiles(
        request(
          {
            [`${names[0]}.csv`]: csv(own),
            [`${names[1]}.csv`]: broken,
            [`${names[2]}.csv`]: csv(own),
          },
          { anonymous },
        ),
      )
        .diagnostics.filter(({ at }) => at?.line !== undefined)
        .map(({ message, hint, at }) => [message, hint, at?.file]);
    const plain = said(true, ['Annemarie', 'Bertram', 'Cordelia']);
    expect(plain.length).toBeGreaterThan(0);
    expect(said(true, ['a', 'or', 'decimal'])).toEqual(plain);
    expect(said(true, ['survey', '2', 'csv'])).toEqual(plain);
  });

  test('are found by what they are told as, and by what the files say', () => {
    const asked = (trainee: string, anonymous: boolean) =>
      gradeFiles(request(files, { trainee, anonymous })).value?.asked;
    expect(asked('annemarie', false)).toBe('Annemarie');
    expect(asked('trainee 3', true)).toBe('Trainee 3');
    expect(asked('Cordelia', true)).toBe('Trainee 3');
    expect(codesOf(files, { trainee: 'Nobody' })).toContain('usage-unknown-trainee');
  });

  test('of others are not on a sheet nor in a record of one trainee', () => {
    const { value, diagnostics } = gradeFiles(request(files, { trainee: 'Cordelia' }));
    if (value === undefined) throw new Error('refused');
    const record = JSON.stringify(gradeRecord(value, { version: '0', diagnostics }));
    expect(record).toContain('Cordelia');
    expect(record).not.toMatch(/annemarie|bertram/i);
    const sheet = JSON.stringify(
      value.trainees
        .filter(({ name }) => name === 'Cordelia')
        .map((one) => gradeSheet(one, value, { unit: 'um', verbose: false })),
    );
    expect(sheet).not.toMatch(/annemarie|bertram/i);
  });
});

test('the table for the mark book has a row for each trainee and panel, and one where nothing was read', () => {
  const some = csv(own.filter(({ panel }) => panel !== 'roof'));
  const { columns, rows } = gradeTable(graded({ 'ann.csv': some, 'ben.csv': broken }));
  const at = (name: string): number => columns.indexOf(name);
  expect(rows).toHaveLength(12);
  const roof = rows.find((row) => row[at('panel')] === 'roof');
  expect([roof?.[at('z')], roof?.[at('verdict')]]).toEqual([null, null]);
  expect(rows[11]?.[at('trainee')]).toBe('ben');
  expect(rows[11]?.[at('trainee_verdict')]).toBe('not-read');
});

describe('what a panel is', () => {
  /** A car of eleven panels of which few are read: some of these make the door repaint, and some do not. */
  const light = reference.map((row) => ({
    ...row,
    // A repaint that reads 165 µm: over the line of this car, and under the one for any car.
    value: row.panel === 'quarter-left' ? 165 + row.value / 100 : row.value,
  }));
  const panels = (ids: readonly string[], by = 0): string =>
    csv(
      light
        .filter(({ panel }) => ids.includes(panel))
        .map((row) => ({ ...row, value: row.value + by })),
    );
  const few = ['quarter-left', 'roof', 'boot'];
  const wordsOf = (more: Parameters<typeof graded>[0], theirs: string) =>
    graded(more, {
      reference: loaded('reference.csv', theirs),
      read: { ...request({}).read, templateId: 'saloon' },
    }).trainees[0]?.grade;

  test('is the same by the same readings, however few panels a trainee reads', () => {
    for (const ids of [few, ['quarter-left'], ['quarter-left', 'door-front-left', 'bonnet']]) {
      const grade = wordsOf({ 'part.csv': panels(ids, 0.2) }, csv(light));
      expect(grade?.conditions).toMatchObject({ of: ids.length, otherwise: [] });
      expect(grade?.repairs).toMatchObject({ of: 1, found: 1 });
      expect(grade?.reasons.map(({ code }) => code)).not.toContain('repair-missed');
    }
  });

  test('is the same by the same readings where the trainee read panels that the reference lacks', () => {
    for (const ids of [few, ['quarter-left', 'bonnet'], ['roof', 'boot', 'wing-front-right']]) {
      const grade = wordsOf({ 'whole.csv': csv(light) }, panels(ids));
      expect(grade?.conditions).toMatchObject({ of: ids.length, otherwise: [] });
      expect(grade?.reasons.map(({ code }) => code)).not.toContain('repair-invented');
    }
  });

  test('is named with both words where they differ, on the sheet and in the record', () => {
    const painted = csv(
      reference.map((row) => ({ ...row, value: row.value + (row.panel === 'roof' ? 150 : 0) })),
    );
    const class_ = graded({ 'ann.csv': painted, 'ben.csv': csv(own) });
    const [ann] = class_.trainees;
    if (ann === undefined) throw new Error('Ann was graded');
    const sheet = JSON.stringify(gradeSheet(ann, class_, { unit: 'um', verbose: false }));
    expect(sheet).toContain('10 of 11 panels as the reference says');
    expect(sheet).toContain('roof reads as refinished, the reference as original');
    const record = JSON.stringify(gradeRecord(class_, { version: '0', diagnostics: [] }));
    expect(record).toContain(
      '"otherwise":[{"panel":"roof","condition":"refinished","reference_condition":"original"}]',
    );
  });
});

describe('one file that was given twice', () => {
  test('is told as that, and is no blunder of its trainee', () => {
    const twice = csv(own, ',operator', ',Zed');
    const class_ = graded({ 'zed.csv': twice, 'zed-2.csv': twice, 'ben.csv': csv(rowsOf()) });
    expect(class_.copied.map(({ trainees }) => trainees)).toEqual([['Zed', 'Zed']]);
    const codes = class_.trainees.flatMap(({ grade }) => grade?.reasons ?? []);
    expect(codes.map(({ code }) => code)).not.toContain('survey-copied');
    const [block, ...more] = copiedBlocks(class_, 'um');
    expect(more).toEqual([]);
    expect(block).toMatchObject({
      label: 'Handed in twice',
      text: { text: 'Zed (the same file under two names): it is no second attempt.' },
    });
  });
});

describe('one file under the names of two', () => {
  const sayings = (class_: GradedClass): readonly (string | undefined)[] =>
    class_.trainees.map(
      ({ grade }) => grade?.reasons.find(({ code }) => code === 'survey-copied')?.text,
    );
  const page = (class_: GradedClass): string => JSON.stringify(copiedBlocks(class_, 'um'));
  const others = { 'cor.csv': csv(rowsOf()), 'dee.csv': csv(rowsOf()) };

  test('is told to be one file, and the mark of both stays', () => {
    const class_ = graded({ 'ann.csv': csv(own), 'ben.csv': csv(own), ...others });
    expect(class_.copied).toMatchObject([
      { trainees: ['ann', 'ben'], identical: 'file', same: 55, of: 55 },
    ]);
    expect(page(class_)).toContain('ann and ben are the same file, byte by byte. Two who measure');
    const [ann, ben, cor] = sayings(class_);
    expect(ann).toMatch(/^your file is, byte by byte, that of another survey of this class: /u);
    expect([ben, cor]).toEqual([ann, undefined]);
    const [grade] = class_.trainees.map((one) => one.grade);
    expect(grade).toMatchObject({ verdict: 'questionable', grounds: ['copied'], voided: [] });
    const record = JSON.stringify(gradeRecord(class_, { version: '0', diagnostics: [] }));
    expect(record).toContain('"from_reference":false,"identical":"file"');
  });

  test('is told however few points it has, and written anew where its readings are the same in order', () => {
    const few = own.slice(0, 6);
    const class_ = graded({ 'ann.csv': csv(few), 'ben.csv': csv(few), ...others });
    expect(class_.copied).toMatchObject([{ trainees: ['ann', 'ben'], identical: 'file', of: 3 }]);
    const anew = graded({ 'ann.csv': csv(own), 'ben.csv': csv(own, ',note', ',wet'), ...others });
    expect(anew.copied).toMatchObject([{ trainees: ['ann', 'ben'], identical: 'readings' }]);
    expect(page(anew)).toContain('ann and ben have the same readings in the same order');
    expect(sayings(anew)[0]).toMatch(/^all your readings are those of another survey/u);
  });

  test('is not told of a few readings alike, of another order, nor of two who share one file', () => {
    const of = (one: string, other: string) =>
      graded({ 'ann.csv': one, 'ben.csv': other, ...others }).copied.map((pair) => pair.identical);
    const few = own.slice(0, 9);
    expect(of(csv(few), csv(few, ',note', ',wet'))).toEqual([]);
    expect(of(csv(own), csv([...own].reverse()))).toEqual([null]);
    expect(of(csv(own.slice(0, 10)), csv(own.slice(0, 11)))).toEqual([]);
    const shared = `${csv(own, ',operator', ',Ann')}${csv(rowsOf(), '', ',Ben').split('\n').slice(1).join('\n')}`;
    expect(graded({ 'both.csv': shared, ...others }).copied).toEqual([]);
  });

  test('in another unit is told as well, which by its values alone nobody would', () => {
    const mil = csv(own.map((row) => ({ ...row, value: row.value / MICROMETRES_PER_MIL })));
    const { copied } = graded({ 'ann.csv': mil, 'ben.csv': mil, ...others });
    expect(copied).toMatchObject([{ trainees: ['ann', 'ben'], identical: 'file' }]);
  });
});

describe('a reference', () => {
  const doubts = (rows: readonly Row[]) =>
    gradeFiles({
      ...request({ 'ann.csv': csv(own) }),
      reference: loaded('reference.csv', csv(rows)),
    }).diagnostics.filter(({ code }) => code === 'grade-reference-doubted');

  test('that was read at the car is not doubted', () => {
    expect(doubts(reference)).toEqual([]);
  });

  test('whose repeats are all one figure is doubted aloud, and the class is graded', () => {
    const alike = reference.map((row, i) => ({
      ...row,
      value: reference[i - (i % 2)]?.value ?? row.value,
    }));
    expect(doubts(alike)).toMatchObject([
      {
        severity: 'warning',
        at: { file: 'reference.csv', line: 2 },
        message: expect.stringMatching(
          /^the reference is in doubt: repeats are the same figure at 55 of 55 points: /u,
        ),
        hint: 'everybody is measured by it: grade by a reference that was read at the car',
      },
    ]);
  });

  test('with one value all over a panel, or the values of one panel on another, is doubted with the line', () => {
    const one = doubts(
      reference.map((row) => (row.panel === 'roof' ? { ...row, value: 111 } : row)),
    );
    expect(one.map(({ message }) => message)).toEqual([
      expect.stringContaining('roof: all points read the same'),
    ]);
    expect(one[0]?.at?.line).toBe(2 + reference.findIndex(({ panel }) => panel === 'roof'));
    const bonnet = reference.filter(({ panel }) => panel === 'bonnet');
    const roof = reference.filter(({ panel }) => panel === 'roof');
    const again = reference.map((row) =>
      row.panel === 'roof' ? { ...row, value: bonnet[roof.indexOf(row)]?.value ?? 0 } : row,
    );
    expect(doubts(again).map(({ message }) => message)).toEqual([
      expect.stringContaining('bonnet and roof: the same values in the same order'),
    ]);
  });
});

test('why a file cannot be read stands in the record of its trainee and in the mark book, with file and line', () => {
  const class_ = graded({ 'ann.csv': csv(own), 'zoe.csv': broken });
  const record = gradeRecord(class_, { version: '0', diagnostics: [] }) as unknown as {
    trainees: { trainee: string; reasons: unknown[] }[];
  };
  expect(record.trainees.find(({ trainee }) => trainee === 'zoe')?.reasons).toEqual([
    {
      code: 'reading-ambiguous',
      text: expect.stringMatching(/^"1\.134" may be .+: /u),
      file: 'zoe.csv',
      line: 2,
      panels: [],
    },
  ]);
  const { columns, rows } = gradeTable(class_);
  expect(rows.at(-1)?.[columns.indexOf('reasons')]).toBe('reading-ambiguous');
});

describe('a copy of the reference', () => {
  const byZed = (rows: readonly Row[]): string => csv(rows, ',operator', ',Zed');
  const oneDigit = reference.map((row, i) => (i === 40 ? { ...row, value: row.value + 1 } : row));
  const copyOf = (rows: readonly Row[]) =>
    graded({ 'zed.csv': byZed(rows), 'ann.csv': csv(own), 'ben.csv': csv(rowsOf()) });

  test('under another name is told, with one digit changed or none', () => {
    for (const rows of [reference, oneDigit]) {
      const { trainees, copied } = copyOf(rows);
      expect(copied).toEqual([
        expect.objectContaining({ trainees: ['Zed'], fromReference: true, apart: null }),
      ]);
      const [zed, ...others] = trainees;
      expect(zed?.grade?.verdict).toBe('questionable');
      expect(zed?.grade?.grounds).toEqual(['copied']);
      expect(zed?.grade?.reasons.find(({ code }) => code === 'survey-copied')?.text).toBe(
        `${rows === reference ? 'all your readings are those of the reference, in the same order' : '54 of 55 values are those of the reference, more than two who measure have in common'}: each reads the car alone, and writes what the gauge shows; if these are your own readings, say so to your trainer`,
      );
      expect(others.map(({ grade }) => grade?.verdict)).toEqual(['satisfactory', 'satisfactory']);
    }
  });

  test('changed a little all over is known by the class', () => {
    const nearly = reference.map((row) => ({ ...row, value: row.value + 0.4 * normal(random) }));
    const class_ = graded({
      'zed.csv': byZed(nearly),
      ...Object.fromEntries(Array.from({ length: 5 }, (_, k) => [`t${k}.csv`, csv(rowsOf())])),
    });
    expect(class_.copied.map(({ trainees, fromReference }) => [trainees, fromReference])).toEqual([
      [['Zed'], true],
    ]);
  });

  test('stands in the record without a second trainee', () => {
    const record = gradeRecord(copyOf(oneDigit), { version: '0', diagnostics: [] });
    expect(JSON.stringify(record)).toContain('"trainees":["Zed"],"from_reference":true');
  });
});

describe('a file of a trainee that is not there', () => {
  const missing: HandedFile = {
    name: 'zoe.csv',
    bytes: new Uint8Array(),
    sha256: '',
    notLoaded: [error('file-missing', 'there is no file "zoe.csv"')],
  };
  const withMissing = (more: Partial<GradeFilesRequest> = {}) => {
    const all = request({
      'ann.csv': csv(own),
      'ben.csv': csv(rowsOf()),
      'cor.csv': csv(rowsOf()),
    });
    return gradeFiles({ ...all, trainees: [missing, ...all.trainees], ...more });
  };

  test('costs its own trainee the grade and nobody else, with a reference or a consensus', () => {
    for (const more of [{}, { reference: undefined }]) {
      const { value, diagnostics } = withMissing(more);
      expect(hasErrors(diagnostics)).toBe(false);
      expect(value?.trainees.map(({ name, grade }) => [name, grade?.verdict ?? null])).toEqual([
        ['zoe', null],
        ['ann', 'satisfactory'],
        ['ben', 'satisfactory'],
        ['cor', 'satisfactory'],
      ]);
      expect(diagnostics.map(({ code }) => code)).toEqual(
        expect.arrayContaining(['file-missing', 'grade-not-read']),
      );
    }
  });

  test('stops the run where nobody else is left', () => {
    const { value, diagnostics } = withMissing({ trainees: [missing] });
    expect(value).toBeUndefined();
    expect(hasErrors(diagnostics)).toBe(true);
  });

  test('is nameless where the class is', () => {
    const { value, diagnostics } = withMissing({ anonymous: true });
    expect(value?.trainees[0]?.name).toBe('Trainee 1');
    expect(JSON.stringify([diagnostics, value?.trainees[0]])).not.toContain('zoe');
  });
});

test('of many remarks of one kind on a file the first three are told, and how many more', () => {
  const strange = csv(
    own.map((row, i) => ({ ...row, panel: i < 2 * 15 ? `part ${i}` : row.panel })),
  );
  const said = gradeFiles(request({ 'ann.csv': csv(own), 'zoe.csv': strange })).diagnostics.filter(
    ({ code }) => code === 'panel-unknown',
  );
  expect(said).toHaveLength(4);
  expect(said[3]?.message).toBe('27 more places of this kind in the file');
});

test('the mark book has the bias, the repeats and the reasons, and the record what each criterion counted', () => {
  const class_ = graded({ 'ben.csv': csv(biased) });
  const { columns, rows } = gradeTable(class_);
  const cellOf = (name: string) => rows[0]?.[columns.indexOf(name)];
  expect(Math.abs(Number(cellOf('bias_mean_um')) - 9)).toBeLessThan(1.5);
  expect(Math.abs(Number(cellOf('repeatability_um')) - 1.5)).toBeLessThan(0.4);
  expect(cellOf('reasons')).toContain('car-off');
  expect(cellOf('verdict_because')).toContain('panels-off');
  const criteria = (
    gradeRecord(class_, { version: '0', diagnostics: [] }) as unknown as {
      trainees: { criteria: { counted_pct: number | null }[] }[];
    }
  ).trainees[0]?.criteria.map(({ counted_pct: counted }) => counted ?? 0);
  expect(criteria?.reduce((sum, one) => sum + one, 0)).toBeCloseTo(100, 4);
});

test('a gauge that repeats well on shims makes no hand on a car worse, and what is usual is told as assumed', () => {
  const text =
    '{"schema":"leastcut/gauge/1","permitted_error":{"fixed_um":1,"proportional_pct":1},"repeatability_um":0.3}';
  const file = readGauge('own.json', text).value;
  if (file === undefined) throw new Error('a gauge file was refused');
  const class_ = graded(
    { 'ann.csv': csv(own) },
    { traineeGauges: new Map([['ann', { file, name: 'own.json', origin: 'flag' as const }]]) },
  );
  const usual = settings.film.measurement.repeatability;
  expect(class_.trainees[0]?.grade?.repeatability?.allowed).toBeGreaterThan(usual);
  expect(class_.trainees[0]?.grade?.reasons.map(({ code }) => code)).not.toContain('repeats-apart');
  expect(class_.assumptions.find(({ code }) => code === 'usual-repeats')?.text).toBe(
    'repeats on a car usually differ by 1.5 µm (SD)',
  );
});
