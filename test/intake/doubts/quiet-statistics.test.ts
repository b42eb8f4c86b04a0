import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { briefs, read } from '../helpers.ts';

const long = (...rows: readonly string[]) => `panel,point,reading_um\n${rows.join('\n')}\n`;

test('rows without a point that are the means of their panels on three panels refuse the file', () => {
  const text = long(
    ...['bonnet,1,101', 'bonnet,2,103', 'bonnet,,102', 'roof,1,99', 'roof,2,96', 'roof,,97.5'],
    ...['boot,1,104', 'boot,2,107', 'boot,,105.5'],
  );
  expect(briefs(text)).toEqual(['4:9+3 error statistics-unnamed']);
});

test('on fewer panels they are read, and told', () => {
  expect(briefs(long('bonnet,1,101', 'bonnet,2,103', 'bonnet,,102'))).toEqual([
    '4:9+3 warning statistics-unnamed',
  ]);
});

test('one such row that is no mean shows that the others are none either', () => {
  const text = long('bonnet,1,101', 'bonnet,2,103', 'bonnet,,102', 'roof,1,99', 'roof,,120');
  expect(read(text).diagnostics.filter(({ code }) => code === 'statistics-unnamed')).toEqual([]);
});

test('the last of nameless columns that is the mean of the others in every row refuses the file', () => {
  const text = 'bonnet,101,103,102\nroof,99,96,97.5\nboot,104,107,105.5\n';
  expect(read(text, { unit: 'um' }).diagnostics.map(({ code }) => code)).toContain(
    'statistics-unnamed',
  );
});

test('readings that are drawn at random are hardly ever taken for means', () => {
  let told = 0;
  const panel = fc.array(fc.integer({ min: 900, max: 1300 }), { minLength: 4, maxLength: 4 });
  fc.assert(
    fc.property(panel, panel, panel, (a, b, c) => {
      const row = (name: string, values: readonly number[]) =>
        [name, ...values.map((value) => value / 10)].join(',');
      const text = `${row('bonnet', a)}\n${row('roof', b)}\n${row('boot', c)}\n`;
      const { diagnostics } = read(text, { unit: 'um' });
      told += diagnostics.some(({ code }) => code === 'statistics-unnamed') ? 1 : 0;
    }),
    { numRuns: 300 },
  );
  expect(told).toBeLessThanOrEqual(1);
});

test('a word of state that says nothing of whether a reading counts is told', () => {
  const text = 'panel,reading_um,state\nbonnet,101,early\nbonnet,98,late\n';
  const [told] = read(text).diagnostics;
  expect(told).toMatchObject({ code: 'column-unknown', severity: 'warning', at: { line: 2 } });
  expect(told?.message).toContain('"early"');
  expect(briefs('panel,reading_um,state\nbonnet,101,ok\nbonnet,98,ok\n')).toEqual([]);
});

const names = ['bonnet', 'roof', 'boot', 'door front left'];
const tenth = fc.integer({ min: 950, max: 1300 }).map((value) => value / 10);
const survey = fc.array(fc.uniqueArray(tenth, { minLength: 4, maxLength: 6 }), {
  minLength: 4,
  maxLength: 4,
});
const rounded = (value: number): string => value.toFixed(1);
const meanOf = (own: readonly number[]): number =>
  own.reduce((sum, value) => sum + value, 0) / own.length;
const deviationOf = (own: readonly number[]): number =>
  Math.sqrt(own.reduce((sum, value) => sum + (value - meanOf(own)) ** 2, 0) / (own.length - 1));
const figures = {
  mean: (own: readonly number[]) => rounded(meanOf(own)),
  least: (own: readonly number[]) => rounded(Math.min(...own)),
  most: (own: readonly number[]) => rounded(Math.max(...own)),
  deviation: (own: readonly number[]) => rounded(deviationOf(own)),
  count: (own: readonly number[]) => String(own.length),
  range: (own: readonly number[]) => rounded(Math.max(...own) - Math.min(...own)),
};
type Name = keyof typeof figures;
const someFigures = fc.shuffledSubarray(Object.keys(figures) as Name[], {
  minLength: 0,
  maxLength: 3,
});
/** Each layout of readings in which nothing names what a number is. */
const layouts: Readonly<Record<string, (groups: readonly (readonly string[])[]) => string>> = {
  'a list': (groups) => groups.map((own, k) => `${names[k]};${own.join(';')}`).join('\n'),
  blocks: (groups) => groups.map((own, k) => [names[k], ...own].join('\n')).join('\n'),
  'rows under names of columns': (groups) =>
    `panel;value\n${groups.flatMap((own, k) => own.map((text) => `${names[k]};${text}`)).join('\n')}`,
  'rows with a cell for the panel that is merged': (groups) =>
    `panel;value\n${groups.flatMap((own, k) => own.map((text, at) => `${at === 0 ? names[k] : ''};${text}`)).join('\n')}`,
  'round after round': (groups) =>
    `panel;value\n${Array.from({ length: 12 }, (_, at) =>
      groups.flatMap((own, k) => (own[at] === undefined ? [] : [`${names[k]};${own[at]}`])),
    )
      .flat()
      .join('\n')}`,
};

describe('a mean that nothing names, with other figures before and behind the readings', () => {
  test.each(Object.entries(layouts))('refuses %s, wherever it stands', (_, layout) => {
    fc.assert(
      fc.property(survey, someFigures, someFigures, fc.boolean(), (own, first, last, isFirst) => {
        const others = last.filter((name) => !first.includes(name) && name !== 'mean');
        const before = [
          ...(isFirst ? ['mean' as const] : []),
          ...first.filter((name) => name !== 'mean'),
        ];
        const behind = [...others, ...(isFirst ? [] : ['mean' as const])];
        const kept = (some: readonly Name[]) => some.slice(0, 2);
        const groups = own.map((values) => [
          ...kept(before).map((name) => figures[name](values)),
          ...values.map(rounded),
          ...behind.slice(-2).map((name) => figures[name](values)),
        ]);
        const { diagnostics } = read(`${layout(groups)}\n`, { unit: 'um' });
        const refused = diagnostics.filter(({ severity }) => severity === 'error');
        expect(refused.length).toBeGreaterThan(0);
      }),
      { numRuns: 15 },
    );
  });

  test('is said with what it is', () => {
    const text =
      'Unit: µm\nbonnet;112.1;118.4;115.3;112.1;118.4\nroof;104.2;99.7;102.0;99.7;104.2\nboot;131.4;133.9;132.7;131.4;133.9\n';
    expect(read(text).diagnostics.map(({ message }) => message)).toEqual([
      'numbers without a name of their own are the mean, the least and the largest of the readings beside them, on all 3 panels that have one',
    ]);
  });

  test('refuses rows of a panel of which its own has no number', () => {
    const rows = names.map(
      (name, k) =>
        `1;${name};${112.1 + k}\n2;${name};${117.4 - k}\n3;${name};${109.9 + 2 * k}\n;${name};${rounded(meanOf([112.1 + k, 117.4 - k, 109.9 + 2 * k]))}\n`,
    );
    expect(briefs(`No;Panel;Value µm\n${rows.join('')}`)).toEqual([
      '5:9+5 error statistics-unnamed',
    ]);
  });
});

describe('readings that may be their own statistics by chance', () => {
  test('are read on one display with few digits', () => {
    const text = 'bonnet;4.4;4.5;4.4\nroof;4.3;4.4;4.4\nboot;4.5;4.5;4.5\n';
    expect(read(`Unit: mil\n${text}`).value?.readings).toHaveLength(9);
  });

  test('are read where they rise alike on every panel', () => {
    const rows = names.flatMap((name, k) =>
      [0, 1, 2, 3, 4].map((point) => `${name};${point + 1};${110 + k + point / 2}`),
    );
    expect(briefs(`panel;point;value µm\n${rows.join('\n')}\n`)).toEqual([]);
  });
});

describe('a figure that stands apart from the readings of its panel', () => {
  const own = [
    ['bonnet', [113, 110, 108]],
    ['roof', [114, 108, 117]],
    ['boot', [112, 118, 114]],
  ] as const;
  const blocks = (gap: string, figure: (values: readonly number[]) => number) =>
    `Unit: µm\n${own.map(([name, values]) => [name, ...values, gap, figure(values), ''].join('\n')).join('\n')}`;
  const rounded = (values: readonly number[]) => Math.round(meanOf(values));
  const codes = (text: string) =>
    read(text)
      .diagnostics.filter(({ severity }) => severity === 'error')
      .map(({ code }) => code);

  test.each(['-----', '=====', '———', '', '.....'])(
    'below %j refuses the file: a mean, or the least',
    (gap) => {
      expect(codes(blocks(gap, rounded))).toEqual(['statistics-unnamed']);
      expect(codes(blocks(gap, (values) => Math.min(...values)))).toEqual(['statistics-unnamed']);
    },
  );

  test('behind an empty column without a name does so as well', () => {
    const rows = own.map(([name, values]) => `${name};${values.join(';')};;${rounded(values)}`);
    expect(codes(`Panel;µm;;;;\n${rows.join('\n')}\n`)).toEqual(['statistics-unnamed']);
  });

  test('below an empty row of points by panels too', () => {
    const points = [0, 1, 2].map((k) => [k + 1, ...own.map(([, values]) => values[k])].join(';'));
    const last = ['4', ...own.map(([, values]) => Math.min(...values))].join(';');
    expect(codes(`µm;bonnet;roof;boot\n${points.join('\n')}\n\n${last}\n`)).toEqual([
      'statistics-unnamed',
    ]);
  });

  test.each([
    ['is none of its figures', blocks('-----', (values) => Math.max(...values) + 1)],
    [
      'stands there on one panel only',
      blocks('', rounded).replace('\n\n113', '\n113').replace('\n\n115', '\n115'),
    ],
    ['stands apart as all do', blocks('', rounded).replace(/\n(?=\d)/gu, '\n\n')],
  ])('is read where it %s', (_, text) => {
    expect(read(text).value?.readings).toHaveLength(12);
  });
});

test('a last row without a point that is the mean of all panels is told', () => {
  const text = long(...['bonnet,1,101', 'bonnet,2,103', 'roof,1,99', 'roof,2,96.5', 'all,,99.9']);
  expect(briefs(text, { panelNames: new Map() })).toContain('6:6+4 warning statistics-unnamed');
});
