/** Names that are harmless text here, dates that are no readings, and files of an extreme size. */
import { inventSurvey } from './invented-survey.ts';
import { instance, type Kind, kindsOf, readingsOf } from './kind.ts';
import { longTable } from './write-table.ts';

const label = kindsOf('labels', 'layout');
const date = kindsOf('dates', 'layout');
const size = kindsOf('sizes', 'bytes');

const called = (
  title: string,
  panels: readonly string[],
  expected: Kind['expected'] = 'read',
  quote: 'needed' | 'all' = 'needed',
): Kind =>
  label(`labels: ${title}`, expected, (random) => {
    const survey = inventSurvey(random, { panels });
    return instance(longTable(survey, { quote }), survey);
  });
const points = (
  title: string,
  names: readonly string[],
  expected: Kind['expected'] = 'read',
): Kind =>
  label(`points: ${title}`, expected, (random) => {
    const survey = inventSurvey(random, { points: names });
    return instance(longTable(survey), survey);
  });

const labelKinds: readonly Kind[] = [
  label('composed and decomposed letters are one panel', 'read', (random) => {
    const survey = inventSurvey(random, { panels: ['Tür vorn', 'Kotflügel'], points: 4 });
    return instance(
      longTable(survey, {
        row: ({ panel, point, value }, show, i) => [
          i % 2 === 0 ? panel.normalize('NFC') : panel.normalize('NFD'),
          point,
          show(value),
        ],
      }),
      survey,
    );
  }),
  called(
    'decomposed letters only',
    ['Tür vorn', 'portière'].map((name) => name.normalize('NFD')),
  ),
  called('formulas', [
    '=1+1',
    '=HYPERLINK("http://example.invalid","bonnet")',
    '+roof',
    '@boot',
    '-door',
  ]),
  called(
    'escape sequences',
    ['\u001b[31mbonnet\u001b[0m', 'roof\u001b]0;x\u0007'],
    'either-but-never-wrong',
  ),
  called('HTML', ['<b>bonnet</b>', '<script>alert(1)</script>', 'roof & boot']),
  called('Markdown', ['**bonnet**', '[roof](x)', 'boot | lid', '`door`']),
  called('names of built-in things', ['__proto__', 'constructor', 'toString', 'hasOwnProperty']),
  called(
    'right-to-left marks',
    ['\u202ebonnet\u202c', 'roof\u200f', '\u2066boot\u2069'],
    'either-but-never-wrong',
  ),
  called(
    'zero-width characters',
    ['bon\u200bnet', 'ro\u2060of', 'boot\u200d'],
    'either-but-never-wrong',
  ),
  called('emoji', ['🚗 bonnet', 'roof ☀️', '👩‍🔧 boot']),
  called('numbers', ['911', '320', '17']),
  called('words for nothing', ['null', 'undefined', 'NaN', 'true'], 'either-but-never-wrong'),
  called('slashes and dots', ['door f/l', 'wing r.h.', 'A/B pillar']),
  called('line breaks', ['bonnet\nfront', 'roof']),
  called('a delimiter of another dialect', ['bonnet; front', 'roof | rear', 'boot\tlid']),
  called('quotes in plenty', ['"', '""', '"a" "b"']),
  called(
    'two names that differ in capitals',
    ['Bonnet', 'bonnet', 'BONNET'],
    'either-but-never-wrong',
  ),
  called('a long name', ['bonnet '.repeat(60).trim(), 'roof']),
  called('Japanese names', ['ボンネット', 'ルーフ', 'ドア']),
  called('Russian names', ['капот', 'крыша']),
  called('a # in front', ['#1 bonnet', '#2 roof'], 'either-but-never-wrong', 'all'),
  called('a # in front, bare', ['#1 bonnet', 'roof', 'boot'], 'either-but-never-wrong'),
  label('labels: blanks round a name and within', 'read', (random) => {
    const survey = inventSurvey(random, { panels: ['bonnet', 'roof'] });
    return instance(
      longTable(survey, {
        row: ({ panel, point, value }, show, i) => [
          i % 2 === 0 ? ` ${panel} ` : panel,
          point,
          show(value),
        ],
      }),
      survey,
    );
  }),
  points('leading zeros', ['001', '002', '010']),
  points('leading zeros that differ only so', ['1', '01', '001']),
  points('ids of twenty digits', [
    '12345678901234567890',
    '12345678901234567891',
    '12345678901234567892',
  ]),
  points('letters and numbers', ['A1', 'A2', 'B1', 'B2']),
  points('words', ['top left', 'centre', 'bottom right']),
  points('decimals', ['1.1', '1.2', '1.10']),
  points('exponents', ['1e5', '1E05', '100000']),
  points('dates', ['1-May', '2-May', '3-Jun']),
  points('negative numbers', ['-1', '0', '1']),
  points('names of built-in things', ['__proto__', 'constructor', 'valueOf']),
  label('vehicles with leading zeros and twenty digits', 'read', (random) => {
    const survey = inventSurvey(random, {
      vehicles: ['007', '7', '12345678901234567890'],
      panelCount: 2,
      points: 2,
    });
    return instance(
      longTable(survey, {
        header: ['vehicle', 'panel', 'point', 'reading_um'],
        row: ({ vehicle, panel, point, value }, show) => [vehicle ?? '', panel, point, show(value)],
      }),
      survey,
    );
  }),
  label('vehicles called __proto__ and constructor', 'read', (random) => {
    const survey = inventSurvey(random, {
      vehicles: ['__proto__', 'constructor'],
      panelCount: 2,
      points: 2,
    });
    return instance(
      longTable(survey, {
        header: ['vehicle', 'panel', 'point', 'reading_um'],
        row: ({ vehicle, panel, point, value }, show) => [vehicle ?? '', panel, point, show(value)],
      }),
      survey,
    );
  }),
];

const timed = (
  title: string,
  write: (i: number) => string,
  heading = 'time',
  expected: Kind['expected'] = 'read',
): Kind =>
  date(`times: ${title}`, expected, (random) => {
    const survey = inventSurvey(random);
    return instance(
      longTable(survey, {
        delimiter: ';',
        header: [heading, 'panel', 'point', 'reading_um'],
        row: ({ panel, point, value }, show, i) => [write(i), panel, point, show(value)],
      }),
      survey,
    );
  });
const pad = (n: number): string => String(n).padStart(2, '0');

const dateKinds: readonly Kind[] = [
  timed('ISO with a zone', (i) => `2026-11-25T10:${pad(i)}:00Z`),
  timed('ISO without a zone', (i) => `2026-11-25 10:${pad(i)}:00`),
  timed('day first, proved by the 25th', (i) => `25.11.2026 10:${pad(i)}`),
  timed('month first, proved by the 25th', (i) => `11/25/2026 10:${pad(i)} AM`),
  timed('an order that nothing proves', (i) => `03/04/2026 10:${pad(i)}`),
  timed(
    'orders that contradict each other',
    (i) => (i % 2 === 0 ? '25/11/2026' : '11/25/2026'),
    'time',
    'either-but-never-wrong',
  ),
  timed('serial numbers of a spreadsheet', (i) => String(46351 + i / 100)),
  timed('serial numbers of a spreadsheet under "Date"', (i) => String(46351 + i / 100), 'Date'),
  timed('seconds since 1970', (i) => String(1795600000 + i)),
  timed('hours only', (i) => `10:${pad(i)}`, 'Uhrzeit'),
  timed('two digits of a year', (i) => `25.11.26 10:${pad(i)}`, 'Datum'),
  timed('a French month', (i) => `25 nov. 2026 10:${pad(i)}`, 'Date'),
  date('date and time in two columns between the readings', 'read', (random) => {
    const survey = inventSurvey(random);
    return instance(
      longTable(survey, {
        header: ['panel', 'date', 'time', 'point', 'reading_um'],
        row: ({ panel, point, value }, show, i) => [
          panel,
          '2026-11-25',
          `10:${pad(i)}`,
          point,
          show(value),
        ],
      }),
      survey,
    );
  }),
  date('a time that is empty in some rows', 'read', (random) => {
    const survey = inventSurvey(random);
    return instance(
      longTable(survey, {
        header: ['panel', 'point', 'reading_um', 'time'],
        row: ({ panel, point, value }, show, i) => [
          panel,
          point,
          show(value),
          i % 3 === 0 ? '' : '10:00',
        ],
      }),
      survey,
    );
  }),
];

/** The goal for what is refused for its size. */
const A_SECOND = 1000;

const sizeKinds: readonly Kind[] = [
  size('an empty file', 'refused', () => instance('', [])),
  size('a byte order mark and nothing else', 'refused', () => instance('\ufeff', [])),
  size('one line end', 'refused', () => instance('\n', [])),
  size('blanks only', 'refused', () => instance('   \n \t\n', [])),
  size('NUL bytes only', 'refused', () => instance('\0'.repeat(300), [])),
  size('one byte', 'refused', () => instance('x', [])),
  size('a megabyte in a note', 'either-but-never-wrong', (random) => {
    const survey = inventSurvey(random);
    return instance(
      longTable(survey, {
        header: ['panel', 'point', 'reading_um', 'note'],
        row: ({ panel, point, value }, show, i) => [
          panel,
          point,
          show(value),
          i === 1 ? 'x'.repeat(1e6) : '',
        ],
      }),
      survey,
      { withinMs: A_SECOND },
    );
  }),
  size('a megabyte of quoted lines in a note', 'either-but-never-wrong', (random) => {
    const survey = inventSurvey(random);
    return instance(
      longTable(survey, {
        header: ['panel', 'point', 'reading_um', 'note'],
        row: ({ panel, point, value }, show, i) => [
          panel,
          point,
          show(value),
          i === 1 ? 'x,"y"\n'.repeat(150000) : '',
        ],
      }),
      survey,
      { withinMs: A_SECOND },
    );
  }),
  size('a megabyte of digits as a reading', 'refused', (random) => {
    const survey = inventSurvey(random);
    return instance(
      longTable(survey, {
        row: ({ panel, point, value }, show, i) => [
          panel,
          point,
          i === 1 ? '1'.repeat(1e6) : show(value),
        ],
      }),
      survey,
      { withinMs: A_SECOND },
    );
  }),
  size('a quote opened and a megabyte behind it', 'refused', (random) => {
    const survey = inventSurvey(random);
    return instance(
      `${longTable(survey)}bonnet,1,"101.5\n${'roof,1,99.5\n'.repeat(80000)}`,
      survey,
      { withinMs: 2 * A_SECOND, refusedAt: survey.shots.length + 2 },
    );
  }),
  size('ten thousand columns', 'either-but-never-wrong', (random) => {
    const survey = inventSurvey(random, { panelCount: 2, points: 2 });
    const extra = Array.from({ length: 10000 }, (_, i) => `extra${i}`);
    return instance(
      longTable(survey, {
        header: ['panel', 'point', 'reading_um', ...extra],
        row: ({ panel, point, value }, show) => [
          panel,
          point,
          show(value),
          ...extra.map(() => '7'),
        ],
      }),
      survey,
      { withinMs: 2 * A_SECOND },
    );
  }),
  size('an endless line of digits', 'refused', () =>
    instance('1'.repeat(2e7), [], { withinMs: A_SECOND }),
  ),
  size('an endless line of cells', 'refused', () =>
    instance('101.5,'.repeat(4e6), [], { withinMs: A_SECOND }),
  ),
  size('an endless line behind a good table', 'either-but-never-wrong', (random) => {
    const survey = inventSurvey(random);
    return instance(longTable(survey) + 'x'.repeat(2e7), readingsOf(survey), {
      withinMs: A_SECOND,
    });
  }),
  size('a hundred thousand blank lines', 'read', (random) => {
    const survey = inventSurvey(random);
    return instance(longTable(survey) + '\n'.repeat(1e5), survey, { withinMs: 2 * A_SECOND });
  }),
  size('twenty thousand readings', 'read', (random) => {
    const survey = inventSurvey(random, {
      panelCount: 6,
      points: Array.from({ length: 3300 }, (_, i) => `p${i}`),
    });
    return instance(longTable(survey), survey);
  }),
  size('two hundred thousand readings', 'read', (random) => {
    const survey = inventSurvey(random, {
      panelCount: 4,
      points: Array.from({ length: 50000 }, (_, i) => `p${i}`),
    });
    return instance(longTable(survey), survey);
  }),
  size('a file of quotes only', 'either-but-never-wrong', () => instance('"'.repeat(100001), [])),
  size('a file of delimiters only', 'refused', () => instance(',;\t|'.repeat(5000), [])),
];

export const labelDateSizeKinds: readonly Kind[] = [...labelKinds, ...dateKinds, ...sizeKinds];
