import { describe, expect, test } from 'vitest';
import { read } from '../helpers.ts';

const told = (text: string, code = 'days-several') =>
  read(text)
    .diagnostics.filter((one) => one.code === code)
    .map(({ message, at }) => [at?.line, message]);
const refusedAt = (text: string) => {
  const { value, diagnostics } = read(text);
  const [first] = diagnostics.filter(({ code }) => code === 'visits-together');
  return value === undefined
    ? [first?.at?.line, first?.hint?.includes('leastcut compare')]
    : 'read';
};

describe('readings of two days', () => {
  test('of other panels are told, at the line that says the second day', () => {
    const text = 'Date: 2024-01-01\npanel,um\nbonnet,101\nDate: 2024-06-01\npanel,um\nroof,97\n';
    expect(told(text)).toEqual([
      [4, 'readings of 2024-01-01 and 2024-06-01 are taken together, as one survey'],
    ]);
  });

  test('of other panels are told, at the first row of the second day', () => {
    const text =
      'panel,reading_um,date\nbonnet,101,01.02.2024 10:15\nroof,99,01.02.2024 10:16\nboot,97,03.06.2024 9:00\n';
    expect(told(text)).toEqual([
      [4, 'readings of 01.02.2024 and 03.06.2024 are taken together, as one survey'],
    ]);
  });

  test('of the same panels are two visits, whatever they read', () => {
    const rows = (second: string) =>
      `panel,reading_um,date\nbonnet,101,2024-02-01\nroof,99,2024-02-01\n${second}`;
    expect(refusedAt(rows('bonnet,101,2024-06-03\nroof,99,2024-06-03\n'))).toEqual([4, true]);
    expect(refusedAt(rows('roof,95,2024-06-03\n'))).toEqual([4, true]);
    const lines = 'Date: 2024-01-01\npanel,um\nbonnet,101\nDate: 2024-06-01\npanel,um\nbonnet,97\n';
    expect(refusedAt(lines)).toEqual([4, true]);
  });

  test('of further points of one panel, begun the day before, are told', () => {
    const text =
      'panel,point,reading_um,date\nbonnet,1,101,2024-02-01\nbonnet,2,99,2024-02-01\nbonnet,3,97,2024-02-02\n';
    expect(told(text)).toHaveLength(1);
    expect(refusedAt(text)).toBe('read');
  });

  test('with numbered repeats, or of two people, are no two visits', () => {
    const numbered =
      'panel,point,repeat,reading_um,date\nbonnet,1,1,101,2024-02-01\nbonnet,1,2,101.5,2024-02-02\n';
    expect(refusedAt(numbered)).toBe('read');
    const people =
      'panel,point,reading_um,operator,date\nbonnet,1,101,Ada,2024-02-01\nbonnet,1,102,Bo,2024-02-02\n';
    expect(refusedAt(people)).toBe('read');
  });
});

test('one day is nothing to speak of, nor are times without a day', () => {
  expect(told('panel,reading_um,date\nbonnet,101,2024-01-01\nroof,99,2024-01-01\n')).toEqual([]);
  expect(told('panel,reading_um,time\nbonnet,101,10:15\nroof,99,10:17\n')).toEqual([]);
  expect(told('Date: 2024-01-01\npanel,um\nbonnet,101\n')).toEqual([]);
});

test('vehicles read on days of their own are no doubt', () => {
  const text = 'vehicle,panel,reading_um,date\nA,bonnet,101,2024-01-01\nB,bonnet,99,2024-01-02\n';
  expect(told(text)).toEqual([]);
});

describe('names of columns that stand again', () => {
  const twice = (second: string) =>
    `panel,point,reading_um\nbonnet,1,122\nbonnet,2,125\nroof,1,111\npanel,point,reading_um\n${second}`;

  test('over the same points that read less are another visit', () => {
    expect(refusedAt(twice('bonnet,1,117\nbonnet,2,119\nroof,1,106\n'))).toEqual([5, true]);
  });

  test('over the same points that read as before are told to be a second round', () => {
    const text = twice('bonnet,1,121\nbonnet,2,126\nroof,1,111\n');
    expect(refusedAt(text)).toBe('read');
    expect(told(text, 'reading-doubted')).toEqual([
      [
        5,
        'the points below stand above already, and agree with what was read there: they are taken as a second round',
      ],
    ]);
  });

  test('over the rest of a list are no more than a note', () => {
    expect(told(twice('roof,2,109\nboot,1,117\n'), 'reading-doubted')).toEqual([]);
    const unnumbered = 'panel,um\nbonnet,122\nroof,111\npanel,um\nroof,108\nboot,112\n';
    expect(told(unnumbered, 'reading-doubted')).toEqual([]);
    expect(refusedAt(unnumbered)).toBe('read');
  });

  test('over panels without points are compared reading by reading, as walked', () => {
    const text = (less: number) =>
      `panel,um\nbonnet,122\nbonnet,125\nroof,111\nroof,109\npanel,um\n${[122, 125]
        .map((um) => `bonnet,${um - less}\n`)
        .join('')}${[111, 109].map((um) => `roof,${um - less}\n`).join('')}`;
    expect(refusedAt(text(12))).toEqual([6, true]);
    expect(told(text(0.5), 'reading-doubted')).toHaveLength(1);
  });
});

describe('a column that is not read', () => {
  const cars = (second: readonly number[]) =>
    `bay,panel,point,um\nK-101,bonnet,1,112\nK-101,roof,1,101\n${second
      .map((um, k) => `K-102,${k === 0 ? 'bonnet' : 'roof'},1,${um}\n`)
      .join('')}`;

  test('by which the same points are read twice, and otherwise, may name the vehicle', () => {
    const { value, diagnostics } = read(cars([132, 121]));
    expect(value).toBeUndefined();
    expect(diagnostics.find(({ severity }) => severity === 'error')).toMatchObject({
      code: 'visits-together',
      at: { line: 4 },
      hint: expect.stringContaining('--columns "vehicle=bay"'),
    });
  });

  test('by which they are read twice alike is only told not to be read', () => {
    expect(read(cars([112.5, 100.5])).value?.readings).toHaveLength(4);
  });
});

test.each([
  ['02-Mar-2026', '09-Mar-2026'],
  ['"March 2, 2026"', '"March 9, 2026"'],
  ['20260302T0910', '20260309T0910'],
  ['20260302', '20260309'],
  ['2 Mar 26', '9 Mar 26'],
  ['2. März 2026', '9. März 2026'],
  ['Mon 2 Mar 2026 9:10', 'Mon 9 Mar 2026 9:10'],
  ['2 de marzo de 2026', '9 de marzo de 2026'],
  ['2026-061', '2026-068'],
  ['2026-W10-1', '2026-W11-1'],
  ['2026年3月2日', '2026年3月9日'],
])('a day is known as %s', (first, second) => {
  const rows = (day: string) => `bonnet,1,101,${day}\nroof,1,99,${day}\n`;
  expect(refusedAt(`panel,point,um,date\n${rows(first)}${rows(second)}`)).toEqual([4, true]);
  expect(refusedAt(`panel,point,um,date\n${rows(first)}`)).toBe('read');
});

test('a count of seconds, or a part of the day, is no day', () => {
  const text = (one: string, other: string) =>
    `panel,point,um,time\nbonnet,1,101,${one}\nbonnet,1,100,${other}\n`;
  expect(refusedAt(text('46083', '46085'))).toBe('read');
  expect(refusedAt(text('091000', '091010'))).toBe('read');
});
