/** What stands above and below a table: key and value lines, notes, another table. */
import { inventSurvey } from './invented-survey.ts';
import { instance, type Kind, kindsOf } from './kind.ts';
import { longTable } from './write-table.ts';

const kind = kindsOf('preamble', 'layout');

type Facts = readonly (readonly [string, string])[];
const english: Facts = [
  ['Serial', '004711'],
  ['Date', '25.11.2026'],
  ['Operator', 'Kim'],
  ['Temperature', '21.5'],
  ['Readings', '24'],
];
const german: Facts = [
  ['Seriennummer', '004711'],
  ['Datum', '25.11.2026'],
  ['Bediener', 'Kim'],
  ['Temperatur', '21,5'],
];

const above = (
  title: string,
  text: string,
  expected: Kind['expected'] = 'read',
  delimiter = ',',
): Kind =>
  kind(title, expected, (random) => {
    const survey = inventSurvey(random);
    return instance(text + longTable(survey, { delimiter }), survey);
  });
const below = (
  title: string,
  text: string,
  expected: Kind['expected'] = 'read',
  delimiter = ',',
): Kind =>
  kind(title, expected, (random) => {
    const survey = inventSurvey(random);
    return instance(longTable(survey, { delimiter }) + text, survey);
  });
const lines = (facts: Facts, between: string, front = ''): string =>
  facts.map(([key, value]) => `${front}${key}${between}${value}\n`).join('');

export const preambleKinds: readonly Kind[] = [
  above('a preamble of "key: value"', `${lines(english, ': ')}\n`),
  above('a preamble of "key: value" without a blank line', lines(english, ': ')),
  above('a preamble of "key,value"', `${lines(english, ',')}\n`),
  above(
    'a preamble of "key,value" padded to three cells',
    `${lines(
      english.map(([k, v]) => [k, `${v},`]),
      ',',
    )},,\n`,
  ),
  above('a preamble of "key;value" over semicolons', `${lines(german, ';')}\n`, 'read', ';'),
  above('a preamble of "key;value" over commas', `${lines(english, ';')}\n`),
  above('a preamble of "key = value"', `${lines(english, ' = ')}\n`),
  above('a preamble of "key=value" in sections', `[Device]\n${lines(english, '=')}\n[Data]\n`),
  above('a preamble with tabs', `${lines(english, '\t')}\n`, 'read', '\t'),
  above('a preamble with "key:" and a tab', `${lines(english, ':\t')}\n`, 'read', '\t'),
  above('a preamble behind #', lines(english, ': ', '# ')),
  above('a preamble behind //', lines(english, ': ', '// ')),
  above('a preamble with dots to the colon', lines(english, ' ..........: ')),
  above('a preamble of quoted pairs', `${english.map(([k, v]) => `"${k}","${v}"\n`).join('')}\n`),
  above('a title of one line', 'Paint report of a saloon\n'),
  above('a title with numbers and commas', 'Paint report, job 12, 25.11.2026, 14:30\n\n'),
  above('a title underlined with dashes', 'Paint report\n============\n\n'),
  above(
    'a preamble that speaks of panels and readings',
    'Panel readings of the vehicle\nPanel: all; point: five each; reading: single\n\n',
  ),
  above(
    'a preamble of a hundred lines',
    `${lines(
      Array.from({ length: 100 }, (_, i) => [`Setting ${i}`, String(i)]),
      ',',
    )}\n`,
  ),
  above('a small table of calibration above', 'Shim,Nominal,Shown\n1,50.0,50.4\n2,125.0,125.3\n\n'),
  above('a preamble with an unpaired inch mark', 'Disc: 5" pad\nDevice: 2 m cable\n\n'),
  above('a preamble with a limit in µm', 'Limit: 100 µm\n\n'),
  below('a note after a blank line', '\nAll points were dry.\n'),
  below('"End of report"', '\nEnd of report\n'),
  below('a page number', '\nPage 1 of 1\n', 'read'),
  below('a page number straight after the rows', 'Page 1 of 1\n', 'either-but-never-wrong'),
  below('key and value lines at the foot', `\n${lines(english, ': ')}`),
  below('key and value cells at the foot', `\n${lines(english, ',')}`, 'either-but-never-wrong'),
  below(
    'key and value cells at the foot, semicolons',
    `\n${lines(german, ';')}`,
    'either-but-never-wrong',
    ';',
  ),
  below('a line of dashes at the end', '----------\n', 'either-but-never-wrong'),
  below(
    'a second table of calibration',
    '\nshim,nominal_um,shown_um\n1,50.0,50.4\n2,125.0,125.3\n',
    'either-but-never-wrong',
  ),
  below(
    'a second table of as many columns',
    '\nshim,number,gloss\nA,1,88.4\nB,2,91.3\n',
    'either-but-never-wrong',
  ),
  below(
    'a second table without a blank line',
    'shim,number,gloss\nA,1,88.4\nB,2,91.3\n',
    'either-but-never-wrong',
  ),
  below(
    'a table of gloss under a heading',
    '\nGloss\npanel,point,gloss_gu\nbonnet,1,88.4\nroof,1,91.3\n',
    'either-but-never-wrong',
  ),
  below(
    'a table of temperatures under its caption',
    '\nTemperatures\npanel,temperature_c\nbonnet,21.4\nroof,21.3\n',
    'either-but-never-wrong',
  ),
  ...(['mil', 'µm'] as const).map((unit) =>
    kind(`a preamble with the unit ${unit} among other facts`, 'read', (random) => {
      const survey = inventSurvey(random, { unit: unit === 'mil' ? 'mil' : 'um' });
      const facts = [...english.slice(0, 3), ['Unit', unit] as const, ...english.slice(3)];
      return instance(
        `${lines(facts, ': ')}\n${longTable(survey, { header: ['panel', 'point', 'reading'] })}`,
        survey,
      );
    }),
  ),
  ...(
    [
      ['Einheit', ': '],
      ['Unité', ' : '],
      ['Unidad', ': '],
      ['Eenheid', ': '],
      ['Unità', ': '],
      ['単位', ': '],
      ['Единица', ': '],
      ['单位', '：'],
    ] as const
  ).map(([word, between]) =>
    kind(
      `the unit in a preamble as "${word}"`,
      ['Eenheid', 'Unità', 'Unidad', '単位', 'Единица', '单位'].includes(word)
        ? 'either-but-never-wrong'
        : 'read',
      (random) => {
        const survey = inventSurvey(random);
        return instance(
          `${word}${between}µm\n\n${longTable(survey, { header: ['panel', 'point', 'reading'] })}`,
          survey,
        );
      },
    ),
  ),
  kind('two units in a preamble', 'refused', (random) => {
    const survey = inventSurvey(random);
    return instance(
      `Unit: µm\nDisplay unit: mil\nUnit: mil\n\n${longTable(survey, { header: ['panel', 'point', 'reading'] })}`,
      survey,
    );
  }),
  kind('a vehicle named in the preamble', 'read', (random) => {
    const survey = inventSurvey(random);
    return instance(`Vehicle: VX01ABC\n\n${longTable(survey)}`, survey, {
      others: [
        {
          readings: survey.shots.map(({ panel, point, value }) => ({
            vehicle: 'VX01ABC',
            panel,
            point,
            um: value,
          })),
          says: /VX01ABC|vehicle/i,
        },
      ],
    });
  }),
];
