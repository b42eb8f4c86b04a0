/** Readings as keys and values or under their panel's name, headers of two rows, units and footers beside the rows. */
import { inventSurvey, type Shot, type Survey } from './invented-survey.ts';
import { instance, type Kind, kindsOf, type Rest } from './kind.ts';
import { longTable, shown } from './write-table.ts';

const kind = kindsOf('keys and lines', 'layout');
const panels = ['bonnet', 'roof', 'boot lid'];

const written = (
  title: string,
  write: (survey: Survey, of: (panel: string) => readonly Shot[]) => string,
  rest: Rest = {},
  expected: Kind['expected'] = 'read',
): Kind =>
  kind(title, expected, (random) => {
    const survey = inventSurvey(random, { panels, points: 3 });
    const of = (panel: string) => survey.shots.filter((shot) => shot.panel === panel);
    return instance(write(survey, of), survey, rest);
  });

const lines = (survey: Survey, write: (shot: Shot) => string): string =>
  `${survey.shots.map(write).join('\n')}\n`;
const blocks = (of: (panel: string) => readonly Shot[], write: (shot: Shot) => string): string =>
  `${panels.map((panel) => [panel, ...of(panel).map(write), ''].join('\n')).join('\n')}\n`;
const named = { says: /the keys are taken for the names of columns/ };
const below = { says: /of the panel that a line above names/ };

export const keyedKinds: readonly Kind[] = [
  written(
    'keys and values between blanks',
    (survey) =>
      lines(
        survey,
        ({ panel, point, value }) => `panel=${panel} point=${point} um=${shown(value)}`,
      ),
    named,
  ),
  written(
    'keys and values between semicolons',
    (survey) =>
      lines(
        survey,
        ({ panel, point, value }) =>
          `Panel: ${panel}; Point: ${point}; Reading: ${shown(value)} µm`,
      ),
    named,
  ),
  written(
    'an object of JSON in each line',
    (survey) =>
      lines(
        survey,
        ({ panel, point, value }) =>
          `{"panel":"${panel}","point":${point},"reading_um":${shown(value)}}`,
      ),
    named,
  ),
  written(
    'a key and a value in each line',
    (survey) =>
      lines(
        survey,
        ({ panel, point, value }) =>
          `Panel: ${panel}\nPoint: ${point}\nThickness (µm): ${shown(value)}\n`,
      ),
    below,
  ),
  written(
    'numbered readings below the name of their panel',
    (_, of) => blocks(of, ({ point, value }) => `${point}: ${shown(value)} µm`),
    below,
  ),
  written(
    'a list with stars below the name of each panel',
    (_, of) => blocks(of, ({ value }) => `* ${shown(value)} µm`),
    below,
  ),
  written(
    'keys and values without a unit',
    (survey) =>
      lines(
        survey,
        ({ panel, point, value }) => `panel=${panel} point=${point} value=${shown(value)}`,
      ),
    { refusedAt: 1 },
    'refused',
  ),
  written('a name of readings merged over their numbers', (_, of) => {
    const rows = panels.map((panel) =>
      [panel, ...of(panel).map(({ value }) => shown(value, { decimal: ',' }))].join(';'),
    );
    return ['Panel;Readings (µm);;', ';1;2;3', ...rows, ''].join('\n');
  }),
  written(
    'a unit below the last row',
    (survey) =>
      `${longTable(survey, { header: ['panel', 'point', 'reading'], delimiter: ';' })}\nUnit: µm\n`,
    { says: /line 12 says µm/ },
  ),
  written(
    'a battery and a count in cells below the last row',
    (survey) => `${longTable(survey, { delimiter: ';' })}\nEnd of export;9 records\nBattery;76 %\n`,
  ),
  written(
    'a panel and a number in cells below the last row',
    (survey) => `${longTable(survey, { delimiter: ';' })}\nleft front wing;118\n`,
    { refusedAt: 12 },
    'refused',
  ),
];
