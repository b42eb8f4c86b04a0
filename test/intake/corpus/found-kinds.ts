/** Files as workshops have them: notes off a phone, tables with the unit in an odd place, lists of objects. */
import { inventSurvey, type Survey } from './invented-survey.ts';
import { instance, type Kind, kindsOf } from './kind.ts';
import type { Random } from './random.ts';
import { longTable, showing } from './write-table.ts';

const layout = kindsOf('as found: tables', 'layout');
const cells = kindsOf('as found: notes', 'cells');

const panels = ['bonnet', 'roof', 'boot lid'];
const invented = (random: Random): Survey =>
  inventSurvey(random, { panels, points: 4, unit: 'um' });

/** A row for each panel, what is stated of them behind. */
const stated = (random: Random, name: string, factor: number) => {
  const survey = invented(random);
  const show = showing(survey);
  const rows = panels.map((panel) => {
    const own = survey.shots.filter((shot) => shot.panel === panel).map(({ value }) => value);
    const mean = own.reduce((sum, value) => sum + value, 0) / own.length;
    return [panel, ...own.map(show), (mean / factor).toFixed(2)].join(';');
  });
  return { survey, text: `${[`Panel;1;2;3;4;${name}`, ...rows].join('\n')}\n` };
};

/** A column for each panel; `name` is what a row is called. */
const inColumns = (random: Random, name: (point: string) => string) => {
  const survey = invented(random);
  const show = showing(survey);
  const rows = ['1', '2', '3', '4'].map((point) => {
    const own = survey.shots.filter((shot) => shot.point === point);
    return [name(point), ...own.map(({ value }) => show(value))].join(';');
  });
  return { survey, text: `${[`Point;${panels.join(';')}`, ...rows].join('\n')}\n` };
};

/** Rows counted by a column that is called as the readings may be. */
const counted = (random: Random, isDown: (panel: string) => boolean) => {
  const written = invented(random);
  const shots = written.shots.map((shot) =>
    isDown(shot.panel) ? { ...shot, point: String(5 - Number(shot.point)) } : shot,
  );
  const survey = { ...written, shots };
  const header = ['Panel', 'Reading', 'Value (µm)'];
  return { survey, text: longTable(survey, { header, delimiter: ';' }) };
};

const objects = (random: Random, open: string, close: string) => {
  const survey = invented(random);
  const rows = survey.shots.map(
    ({ panel, point, value }) => `{"panel":"${panel}","point":${point},"reading_um":${value}}`,
  );
  return { survey, text: `${open}${rows.join(',\n')}${close}\n` };
};

/** A note in which one line, the second, is spoiled. */
const note = (title: string, line: string): Kind =>
  cells(title, 'refused', () =>
    instance(`all in µm\n${line}\nroof 98 97\nboot lid 104 106\n`, [], { refusedAt: 2 }),
  );

export const foundKinds: readonly Kind[] = [
  layout('points that count down on each panel', 'read', (random) => {
    const { survey, text } = counted(random, () => true);
    return instance(text, survey, { says: /counts down to 1 and numbers the points/ });
  }),
  layout('points that count down on one panel and up on the others', 'refused', (random) => {
    const { survey, text } = counted(random, (panel) => panel === 'roof');
    return instance(text, survey, { refusedAt: 1 });
  }),
  layout('the unit at the mean of each row alone', 'read', (random) => {
    const { survey, text } = stated(random, 'Mean (µm)', 1);
    return instance(text, survey, { says: /"Mean \(µm\)" is in µm, and the readings give its/ });
  }),
  layout('a mean in mil beside readings that name no unit', 'refused', (random) => {
    const { survey, text } = stated(random, 'Mean (mil)', 25.4);
    return instance(text, survey, { refusedAt: 1, hint: /--reading-unit/ });
  }),
  layout('the unit behind the name of each point', 'read', (random) => {
    const { survey, text } = inColumns(random, (point) => `${point} (µm)`);
    return instance(text, survey, { says: /each name of a point says µm/ });
  }),
  layout('two units behind the names of points', 'refused', (random) => {
    const { survey, text } = inColumns(
      random,
      (point) => `${point} (${point === '3' ? 'mil' : 'µm'})`,
    );
    return instance(text, survey);
  }),
  layout('objects of JSON in a list, one to a line', 'read', (random) => {
    const { survey, text } = objects(random, '[', ']');
    return instance(text, survey, { says: /the keys are taken for the names of columns/ });
  }),
  layout('a list of objects that is cut off', 'refused', (random) => {
    const { survey, text } = objects(random, '[{"panel":"bonnet","po', '');
    return instance(text, survey);
  }),
  cells('tables side by side of before and after', 'refused', () =>
    instance('vorher;;;nachher;;\npanel;1;2;panel;1;2\nbonnet;120;121;bonnet;117;118\n', [], {
      refusedAt: 1,
      hint: /leastcut compare/,
    }),
  ),
  cells('tables side by side of two days', 'refused', () =>
    instance(
      '2026-03-02,,2026-11-20,\npanel,reading_um,panel,reading_um\nbonnet,120,bonnet,117\n',
      [],
      { refusedAt: 1, hint: /leastcut compare/ },
    ),
  ),
  cells('a row of nothing but a later day', 'refused', () =>
    instance('panel,reading_um\n2026-03-02,\nbonnet,120\n2026-11-20,\nbonnet,117\n', [], {
      refusedAt: 4,
      hint: /leastcut compare/,
    }),
  ),
  cells('a line of the second visit above names that stand again', 'refused', () =>
    instance(
      'Visit 1, 2026-03-02\npanel,point,reading_um\nbonnet,1,122\n\nVisit 2, 2026-11-20\npanel,point,reading_um\nbonnet,1,112\n',
      [],
      { refusedAt: 5, hint: /leastcut compare/ },
    ),
  ),
  cells('a grand total under a column of totals', 'read', () =>
    instance(
      'Element;Pomiar 1 (µm);Pomiar 2 (µm);Suma\nbonnet;120;121;241\nroof;130;131;261\nRazem;;;502\n',
      [
        { vehicle: null, panel: 'bonnet', point: '1', um: 120 },
        { vehicle: null, panel: 'bonnet', point: '2', um: 121 },
        { vehicle: null, panel: 'roof', point: '1', um: 130 },
        { vehicle: null, panel: 'roof', point: '2', um: 131 },
      ],
    ),
  ),
  note('letters for digits in a note', 'bonnet l12 1O9'),
  note('a crossed-out number in a note', 'bonnet x12 109'),
  note('a number that is about', 'bonnet ~112 109'),
  note('a number beyond the range in a note', 'bonnet 112 >2000'),
  note('what a reading was before, in brackets', 'bonnet 112 109 (was 125)'),
  note('a question mark behind a number of a note', 'bonnet 112? 109'),
  note('a plus behind a number of a note', 'bonnet 112+ 109'),
  note('a plus behind a number beyond the range of a note', 'bonnet 112 2000+'),
  cells('the line that is more than the others, the last one', 'refused', () =>
    instance('bonnet 112 118\nroof 120 119\nboot lid 99 101 (was 125) 100\n', [], {
      refusedAt: 3,
      hint: /leave the one number that counts/,
    }),
  ),
  note('two numbers of which one holds', 'bonnet 112 or 121'),
];
