/** Delimiters, quotes, line ends, blanks and comments. */
import { inventSurvey, type Survey } from './invented-survey.ts';
import { instance, type Kind, kindsOf, readingsOf } from './kind.ts';
import type { Random } from './random.ts';
import { csv, type LongStyle, longRows, longTable, quoted, showing } from './write-table.ts';

const kind = kindsOf('dialect', 'bytes');

const written = (title: string, style: LongStyle, owner: 'bytes' | 'layout' = 'bytes'): Kind =>
  kind(
    title,
    'read',
    (random) => {
      const survey = inventSurvey(random);
      return instance(longTable(survey, style), survey);
    },
    owner,
  );

/** A long table whose text is changed before it is given. */
const changed = (
  title: string,
  expected: Kind['expected'],
  change: (text: string, survey: Survey, random: Random) => string,
  style: LongStyle = {},
): Kind =>
  kind(title, expected, (random) => {
    const survey = inventSurvey(random);
    return instance(change(longTable(survey, style), survey, random), survey);
  });

const noted: LongStyle = {
  header: ['panel', 'point', 'reading_um', 'note'],
  row: ({ panel, point, value }, show) => [panel, point, show(value), 'dry'],
};
const marks = { comma: ',', semicolon: ';', tab: '\t', pipe: '|' } as const;

const delimiters: readonly Kind[] = [
  ...Object.entries(marks).flatMap(([name, delimiter]) => [
    written(`${name} and decimal points`, { delimiter }, 'layout'),
    written(
      `${name}, decimal commas where needed in quotes`,
      { delimiter, decimal: ',' },
      'layout',
    ),
    written(
      `${name}, every cell quoted, decimal commas`,
      { delimiter, decimal: ',', quote: 'all' },
      'layout',
    ),
  ]),
  written('a German spreadsheet', {
    header: ['Teil', 'Punkt', 'Schichtdicke µm'],
    delimiter: ';',
    decimal: ',',
    eol: '\r\n',
  }),
  ...[';', ',', '\t', '|'].map((delimiter) =>
    kind(`a first line sep=${JSON.stringify(delimiter)}`, 'read', (random) => {
      const survey = inventSurvey(random);
      return instance(
        `sep=${delimiter}\r\n${longTable(survey, { delimiter, decimal: delimiter === ',' ? '.' : ',', eol: '\r\n' })}`,
        survey,
      );
    }),
  ),
  changed('a quoted first line "sep=;"', 'either-but-never-wrong', (text) => `"sep=;"\n${text}`, {
    delimiter: ';',
  }),
  kind(
    'sep= that names another delimiter than the rows use',
    'either-but-never-wrong',
    (random) => {
      const survey = inventSurvey(random);
      return instance(`sep=;\n${longTable(survey)}`, survey);
    },
  ),
  kind(
    'unquoted decimal commas between commas',
    'either-but-never-wrong',
    (random) => {
      const survey = inventSurvey(random);
      return instance(longTable(survey, { decimal: ',', quote: 'never' }), survey, {
        says: /comma/,
      });
    },
    'layout',
  ),
  kind(
    'unquoted decimal commas whose tenths fall into a note',
    'refused',
    (random) => {
      const survey = inventSurvey(random);
      const text = longTable(survey, {
        decimal: ',',
        quote: 'never',
        header: ['panel', 'point', 'reading_um', 'note'],
      });
      return instance(text, survey);
    },
    'layout',
  ),
  kind(
    'unquoted decimal commas whose tenths fall into a temperature',
    'refused',
    (random) => {
      const survey = inventSurvey(random);
      const text = longTable(survey, {
        decimal: ',',
        quote: 'never',
        header: ['panel', 'point', 'reading_um', 'temperature', ''],
        row: ({ panel, point, value }, show) => [panel, point, show(value), '21'],
      });
      return instance(text, survey);
    },
    'layout',
  ),
  changed('a blank after every comma', 'read', (text) => text.replaceAll(',', ', ')),
  changed('a header with commas over rows with semicolons', 'either-but-never-wrong', (text) =>
    text
      .split('\n')
      .map((line, i) => (i === 0 ? line : line.replaceAll(',', ';')))
      .join('\n'),
  ),
  changed('rows of which the last third use semicolons', 'either-but-never-wrong', (text) => {
    const lines = text.split('\n');
    return lines
      .map((line, i) => (i < (lines.length * 2) / 3 ? line : line.replaceAll(',', ';')))
      .join('\n');
  }),
  kind('columns set apart by blanks only', 'either-but-never-wrong', (random) => {
    const survey = inventSurvey(random, { panels: ['bonnet', 'roof', 'boot'] });
    const text = longRows(survey)
      .map((row) => row.map((cell) => cell.padEnd(12)).join(''))
      .join('\n');
    return instance(text, survey);
  }),
  kind(
    'commas in labels of a table with tabs',
    'read',
    (random) => {
      const survey = inventSurvey(random, { panels: ['door, front, left', 'roof, rear', 'boot'] });
      return instance(longTable(survey, { delimiter: '\t', quote: 'never' }), survey);
    },
    'layout',
  ),
  kind(
    'semicolons in notes of a table with commas',
    'read',
    (random) => {
      const survey = inventSurvey(random);
      const text = longTable(survey, {
        ...noted,
        row: ({ panel, point, value }, show) => [panel, point, show(value), 'dry; warm; 3; 4'],
      });
      return instance(text, survey);
    },
    'layout',
  ),
  changed('every row wrapped in one pair of quotes', 'either-but-never-wrong', (text) =>
    text.trimEnd().split('\n').map(quoted).join('\n'),
  ),
  kind('a delimiter named by a flag', 'read', (random) => {
    const survey = inventSurvey(random);
    return instance(longTable(survey, { delimiter: '|' }), survey, { options: { delimiter: '|' } });
  }),
  kind(
    'a table drawn with pipes and dashes',
    'either-but-never-wrong',
    (random) => {
      const survey = inventSurvey(random);
      const [head = [], ...rows] = longRows(survey);
      const line = (row: readonly string[]) => `| ${row.join(' | ')} |`;
      return instance([line(head), '|---|---|---|', ...rows.map(line)].join('\n'), survey);
    },
    'layout',
  ),
];

const quotes: readonly Kind[] = [
  kind('doubled quotes inside a label', 'read', (random) => {
    const survey = inventSurvey(random, { panels: ['the "new" bonnet', 'roof', '"boot"'] });
    return instance(longTable(survey), survey);
  }),
  kind('cells in single quotes', 'either-but-never-wrong', (random) => {
    const survey = inventSurvey(random);
    return instance(
      longRows(survey)
        .map((row) => row.map((cell) => `'${cell}'`).join(','))
        .join('\n'),
      survey,
    );
  }),
  kind('single quotes round cells that hold the delimiter', 'either-but-never-wrong', (random) => {
    const survey = inventSurvey(random, { panels: ['door, front', 'roof, rear'] });
    return instance(
      longRows(survey)
        .map((row) => row.map((cell) => `'${cell}'`).join(','))
        .join('\n'),
      survey,
    );
  }),
  kind('an inch mark inside a bare cell', 'read', (random) => {
    const survey = inventSurvey(random, { points: ['3" from edge', '6" from edge', 'middle'] });
    return instance(longTable(survey, { quote: 'never' }), survey);
  }),
  kind('an inch mark at the end of a bare cell', 'read', (random) => {
    const survey = inventSurvey(random, { points: ['3"', '6"', '12"'] });
    return instance(longTable(survey, { quote: 'never' }), survey);
  }),
  kind('an inch mark alone in one bare note', 'read', (random) => {
    const survey = inventSurvey(random);
    const text = longTable(survey, {
      ...noted,
      quote: 'never',
      row: ({ panel, point, value }, show, i) => [
        panel,
        point,
        show(value),
        i === 2 ? 'chip of 1/8" here' : '',
      ],
    });
    return instance(text, survey);
  }),
  kind('an inch mark that opens a bare cell', 'either-but-never-wrong', (random) => {
    const survey = inventSurvey(random);
    const text = longTable(survey, {
      ...noted,
      quote: 'never',
      row: ({ panel, point, value }, show, i) => [
        panel,
        point,
        show(value),
        i === 2 ? '" here' : '',
      ],
    });
    return instance(text, survey);
  }),
  kind('an inch mark in a quoted cell', 'read', (random) => {
    const survey = inventSurvey(random, { points: ['3", left', '6", right'] });
    return instance(longTable(survey), survey);
  }),
  kind('a line break inside a quoted note', 'read', (random) => {
    const survey = inventSurvey(random);
    const text = longTable(survey, {
      ...noted,
      row: ({ panel, point, value }, show, i) => [
        panel,
        point,
        show(value),
        i % 3 === 0 ? 'seen\ntwice, "dry"' : '',
      ],
    });
    return instance(text, survey);
  }),
  kind('a line break inside the quoted header', 'read', (random) => {
    const survey = inventSurvey(random);
    return instance(longTable(survey, { header: ['panel', 'point', 'Thickness\n(µm)'] }), survey);
  }),
  kind('a line break with CRLF inside a quoted label', 'read', (random) => {
    const survey = inventSurvey(random);
    const text = longTable(survey, {
      ...noted,
      eol: '\r\n',
      row: ({ panel, point, value }, show) => [panel, point, show(value), 'a\r\nb'],
    });
    return instance(text, survey);
  }),
  ...(['in the middle', 'in the last row'] as const).map((where) =>
    kind(`a quote that is never closed ${where}`, 'refused', (random) => {
      const survey = inventSurvey(random);
      const row =
        where === 'in the last row' ? survey.shots.length - 1 : Math.floor(survey.shots.length / 2);
      const text = longTable(survey, {
        ...noted,
        quote: 'never',
        row: ({ panel, point, value }, show, i) => [
          panel,
          point,
          show(value),
          i === row ? '"left open' : 'dry',
        ],
      });
      return instance(text, survey, { refusedAt: row + 2 });
    }),
  ),
  kind('a quote never closed, and a proper quoted note later', 'refused', (random) => {
    const survey = inventSurvey(random, { panelCount: 4, points: 4 });
    const text = longTable(survey, {
      ...noted,
      quote: 'never',
      row: ({ panel, point, value }, show, i) => [
        panel,
        point,
        show(value),
        i === 3 ? '"left open' : i === 9 ? '"closed"' : 'dry',
      ],
    });
    return instance(text, survey, { refusedAt: 5 });
  }),
  kind('a stray quote inside a bare label', 'read', (random) => {
    const survey = inventSurvey(random, { panels: ['bon"net', 'roof', 'boot'] });
    return instance(longTable(survey, { quote: 'never' }), survey);
  }),
  kind('text behind a closing quote', 'either-but-never-wrong', (random) => {
    const survey = inventSurvey(random, { panels: ['bonnet', 'roof', 'boot'] });
    return instance(longTable(survey, { quote: 'never' }).replace('bonnet,', '"bonnet"x,'), survey);
  }),
  changed(
    'quotes with blanks round them',
    'read',
    (text) => text.replace(/^([^,\n]+),(\d+)/gm, '"$1" , "$2" '),
    {},
  ),
  changed('a quoted header over bare rows', 'read', (text) =>
    text.replace(/^.*$/m, (line) => line.split(',').map(quoted).join(',')),
  ),
  kind('only text is quoted', 'read', (random) => {
    const survey = inventSurvey(random);
    const text = longRows(survey)
      .map((row, i) => row.map((cell, c) => (i === 0 || c === 0 ? quoted(cell) : cell)).join(','))
      .join('\n');
    return instance(text, survey);
  }),
];

const lines: readonly Kind[] = [
  written('LF', {}),
  written('CRLF', { eol: '\r\n' }),
  written('CR alone', { eol: '\r' }),
  written('CR CR LF of a serial conversion', { eol: '\r\r\n' }),
  written('no final newline', { finalEnd: false }),
  changed('mixed line ends', 'read', (text, _, random) =>
    text.replaceAll('\n', () => random.pick(['\n', '\r\n', '\r'])),
  ),
  changed('Ctrl-Z at the end', 'read', (text) => `${text}\u001a`, { eol: '\r\n' }),
  changed('Ctrl-Z and padding behind it', 'read', (text) => `${text}\u001a${'\u001a'.repeat(100)}`),
  changed('NUL padding at the end', 'read', (text) => text + '\0'.repeat(512)),
  changed(
    'NUL padding to a block before the last line end',
    'either-but-never-wrong',
    (text) => `${text.trimEnd()}${'\0'.repeat(37)}\n`,
  ),
  changed('a NUL inside a reading', 'refused', (text) => text.replace(/(\d)(\.\d)/, '$1\0$2')),
  changed(
    'a NUL inside a note',
    'either-but-never-wrong',
    (text) => text.replace('dry', 'd\0ry'),
    noted,
  ),
  changed('blank lines between rows', 'read', (text, _, random) =>
    text.replaceAll('\n', () => (random.chance(0.3) ? '\n\n' : '\n')),
  ),
  changed('lines of blanks between rows', 'read', (text, _, random) =>
    text.replaceAll('\n', () => (random.chance(0.3) ? '\n   \t \n' : '\n')),
  ),
  changed('blank lines before the header', 'read', (text) => `\n\n\n${text}`),
  changed('lines of nothing but delimiters', 'read', (text) => text.replaceAll('\n', '\n;;\n'), {
    delimiter: ';',
  }),
  changed('quoted empty rows at the end', 'read', (text) => `${text}"","",""\n"","",""\n`),
  changed('a delimiter at the end of every line', 'read', (text) => text.replaceAll('\n', ';\n'), {
    delimiter: ';',
    decimal: ',',
  }),
  changed('delimiters at the end of every line, many', 'read', (text) =>
    text.replaceAll('\n', ',,,,\n'),
  ),
  changed('a delimiter at the end of the rows only', 'read', (text) =>
    text.replaceAll('\n', ',\n').replace(',\n', '\n'),
  ),
  kind('cells padded with blanks', 'read', (random) => {
    const survey = inventSurvey(random);
    return instance(
      longRows(survey)
        .map((row) => row.map((cell) => `  ${cell.padEnd(20)}`).join(';'))
        .join('\n'),
      survey,
    );
  }),
  kind('numbers padded on the left, as a report prints them', 'read', (random) => {
    const survey = inventSurvey(random);
    return instance(
      longTable(survey, {
        row: ({ panel, point, value }, show) => [
          panel,
          point.padStart(4),
          show(value).padStart(12),
        ],
      }),
      survey,
    );
  }),
  kind('cells padded with hard spaces', 'read', (random) => {
    const survey = inventSurvey(random);
    return instance(
      longTable(survey, {
        delimiter: '\t',
        row: ({ panel, point, value }, show) => [
          `\u00a0${panel}`,
          point,
          `\u00a0${show(value)}\u00a0`,
        ],
      }),
      survey,
    );
  }),
  changed(
    'comments above the header',
    'read',
    (text) => `# made by hand\n# second line, with commas, 3\n${text}`,
  ),
  changed('comments between rows', 'read', (text) =>
    text.replace('\n', '\n# the sunny side first\n'),
  ),
  changed('the header behind a #', 'either-but-never-wrong', (text) => `# ${text}`),
  kind('a row of readings behind a #', 'either-but-never-wrong', (random) => {
    const survey = inventSurvey(random);
    const lines = longTable(survey).split('\n');
    const text = lines.map((line, i) => (i === 3 ? `#${line}` : line)).join('\n');
    const kept = readingsOf(survey);
    return instance(text, survey, {
      others: [{ readings: kept.filter((_, i) => i !== 2), says: /#|comment/ }],
    });
  }),
  changed('an indented header and rows', 'read', (text) => text.replace(/^(?=.)/gm, '    '), {
    delimiter: ';',
  }),
  kind('a decimal flag against nothing to decide', 'read', (random) => {
    const survey = inventSurvey(random);
    const show = showing(survey, { decimal: ',' });
    const rows = survey.shots.map(({ panel, point, value }) => [panel, point, show(value)]);
    return instance(csv([['panel', 'point', 'reading_um'], ...rows], { delimiter: ';' }), survey, {
      options: { decimal: ',' },
    });
  }),
];

export const dialectKinds: readonly Kind[] = [...delimiters, ...quotes, ...lines];
