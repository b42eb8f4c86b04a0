/** Cells that stand where a reading would and are none. */
import { inventSurvey, type Shot } from './invented-survey.ts';
import { type ExcludedClass, instance, type Kind, kindsOf, readingsOf } from './kind.ts';
import { type LongStyle, longTable, shown } from './write-table.ts';

const kind = kindsOf('not readings', 'cells');

/** Some cells of the column hold `text`; the rest are read, these are counted in one of the classes. */
function holding(
  text: string,
  classes: readonly ExcludedClass[],
  expected: Kind['expected'] = 'read',
  style: LongStyle = {},
): Kind {
  return kind(
    `${JSON.stringify(text)} among the readings${style.decimal === ',' ? ', decimal commas' : ''}`,
    expected,
    (random) => {
      const survey = inventSurvey(random, { panelCount: 4, points: 5 });
      const first = random.int(0, 4);
      const out = (i: number): boolean => i === first || i === 8 || i === 13;
      const row: LongStyle['row'] = ({ panel, point, value }, show, i) => [
        panel,
        point,
        out(i) ? text : show(value),
      ];
      const kept = survey.shots.filter((_, i) => !out(i));
      return instance(
        longTable(survey, { row, ...style }),
        readingsOf({ ...survey, shots: kept }),
        {
          excluded: [classes, classes, classes],
        },
      );
    },
  );
}

const over: readonly ExcludedClass[] = ['over-range'];
const wrong: readonly ExcludedClass[] = ['error'];
const none: readonly ExcludedClass[] = ['missing'];
const sentinel: readonly ExcludedClass[] = ['over-range', 'error', 'missing'];
const semicolons: LongStyle = { delimiter: ';', decimal: ',' };

const marked = (
  title: string,
  expected: Kind['expected'],
  header: string,
  mark: (out: boolean) => string,
): Kind =>
  kind(
    title,
    expected,
    (random) => {
      const survey = inventSurvey(random, { panelCount: 4, points: 5 });
      const out = (i: number): boolean => i % 7 === 3;
      const row: LongStyle['row'] = ({ panel, point, value }, show, i) => [
        panel,
        point,
        show(value),
        mark(out(i)),
      ];
      const kept = survey.shots.filter((_, i) => !out(i));
      const gone = survey.shots.flatMap((_, i): (readonly ExcludedClass[])[] =>
        out(i) ? [['deleted', 'error']] : [],
      );
      return instance(
        longTable(survey, { header: ['panel', 'point', 'reading_um', header], row }),
        readingsOf({ ...survey, shots: kept }),
        { excluded: gone },
      );
    },
    'layout',
  );

/** A reading that a spreadsheet took for a date: 1.5 is the first of May. */
const dated = (text: string): Kind =>
  kind(`a reading that became the date ${text}`, 'refused', (random) => {
    const survey = inventSurvey(random, { panelCount: 4, points: 4 });
    const row: LongStyle['row'] = ({ panel, point, value }: Shot, show, i) => [
      panel,
      point,
      i === 6 ? text : show(value),
    ];
    return instance(
      longTable(survey, { row, delimiter: ';' }),
      readingsOf({ ...survey, shots: survey.shots.filter((_, i) => i !== 6) }),
      { refusedAt: 8 },
    );
  });

export const notReadingKinds: readonly Kind[] = [
  ...[
    'OL',
    'O.L.',
    'o.l',
    '0L',
    'Over',
    'overrange',
    'over range',
    '>2000',
    '> 2000',
    '>2000 µm',
    '++++',
    '+++',
    'Inf',
    '+Inf',
    'INF',
    'Infinity',
    '∞',
    '>>>>',
    'HI',
  ].map((text) =>
    holding(
      text,
      over,
      ['0L', '>>>>', 'HI', '+++'].includes(text) ? 'either-but-never-wrong' : 'read',
    ),
  ),
  holding('>2.000,0', over, 'read', semicolons),
  holding('>1500,0', over, 'read', semicolons),
  ...[
    'Err',
    'Error',
    'ERR',
    'Err 03',
    'E-04',
    'E04',
    'ERROR 5',
    'Fehler',
    '#N/A',
    '#VALUE!',
    '#DIV/0!',
    '#NV',
    '#WERT!',
    'NaN',
  ].map((text) =>
    holding(
      text,
      ['error', 'missing'],
      ['#NV', '#WERT!', 'E04'].includes(text) ? 'either-but-never-wrong' : 'read',
    ),
  ),
  ...[
    '-',
    '--',
    '---',
    '----',
    '- - -',
    '—',
    '–',
    '',
    ' ',
    'n/a',
    'N/A',
    'null',
    'NULL',
    'none',
    'k.A.',
    's/o',
    '.',
    '...',
    '?',
    'x',
  ].map((text) =>
    holding(
      text,
      [...none, ...wrong, ...(text === 'x' ? (['deleted'] as const) : [])],
      ['k.A.', 's/o', '.', '...', '?', 'x', '- - -'].includes(text)
        ? 'either-but-never-wrong'
        : 'read',
    ),
  ),
  holding('', none, 'read', semicolons),
  holding('----', none, 'read', semicolons),
  holding('#####', sentinel, 'either-but-never-wrong'),
  ...[
    '9.9E37',
    '9.90000E+37',
    '9.91E37',
    '-9.9E37',
    '65535',
    '6553.5',
    '-9999',
    '-999',
    '99999',
    '9999',
    '-1',
    '32767',
    '9999.9',
  ].map((text) =>
    holding(
      text,
      [...sentinel, 'not-film', 'deleted'],
      ['9.9E37', '9.90000E+37', '65535', '-9999', '9.91E37'].includes(text)
        ? 'read'
        : 'either-but-never-wrong',
    ),
  ),
  holding('9,9E37', [...sentinel, 'not-film'], 'read', semicolons),
  holding('0', [...sentinel, 'not-film'], 'either-but-never-wrong'),
  holding('0.0', [...sentinel, 'not-film'], 'either-but-never-wrong'),
  holding('<5', [...sentinel, 'not-film'], 'either-but-never-wrong'),
  holding('skipped', [...none, ...wrong, 'deleted'], 'either-but-never-wrong'),
  holding('plastic', [...none, ...wrong, 'not-film'], 'either-but-never-wrong'),
  holding('deleted', ['deleted'], 'either-but-never-wrong'),
  marked('a column "deleted" of yes and no', 'read', 'deleted', (out) => (out ? 'yes' : 'no')),
  marked('a column "Deleted" with an x', 'read', 'Deleted', (out) => (out ? 'x' : '')),
  marked('a column "excluded" of true and false', 'read', 'excluded', (out) => String(out)),
  marked('a column "excluded" of 1 and 0', 'read', 'excluded', (out) => (out ? '1' : '0')),
  marked('a column "status" of ok and deleted', 'either-but-never-wrong', 'status', (out) =>
    out ? 'deleted' : 'ok',
  ),
  marked('a column "valid" of 1 and 0', 'either-but-never-wrong', 'valid', (out) =>
    out ? '0' : '1',
  ),
  marked('a column "Gültig" of ja and nein', 'read', 'Gültig', (out) => (out ? 'nein' : 'ja')),
  marked('a column "valid" of да and нет', 'read', 'valid', (out) => (out ? 'нет' : 'да')),
  marked('a column "gelöscht" of ja and nein', 'either-but-never-wrong', 'gelöscht', (out) =>
    out ? 'ja' : 'nein',
  ),
  ...[
    '01-May',
    '1. Mai',
    'May-01',
    '01.05.2026',
    '2026-05-01',
    '2026-05-01 00:00:00',
    '01/05/2026',
    '10.Mai',
    'Mai 26',
    '12:30',
    '4 févr.',
  ].map(dated),
  kind('readings that nearly all became dates', 'either-but-never-wrong', (random) => {
    const survey = inventSurvey(random, { panelCount: 3, points: 4 });
    const row: LongStyle['row'] = ({ panel, point, value }, _, i) => [
      panel,
      point,
      i % 4 === 0 ? shown(value) : `${String((i % 28) + 1).padStart(2, '0')}.May`,
    ];
    return instance(
      longTable(survey, { row }),
      readingsOf({ ...survey, shots: survey.shots.filter((_, i) => i % 4 === 0) }),
    );
  }),
  kind('a whole column of OL', 'either-but-never-wrong', (random) => {
    const survey = inventSurvey(random);
    return instance(longTable(survey, { row: ({ panel, point }) => [panel, point, 'OL'] }), []);
  }),
  kind('a whole column of empty cells', 'either-but-never-wrong', (random) => {
    const survey = inventSurvey(random);
    return instance(longTable(survey, { row: ({ panel, point }) => [panel, point, ''] }), []);
  }),
];
