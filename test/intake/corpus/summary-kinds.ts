/** Summaries of the readings by words in many languages, by words that nobody knows, and by no word. */
import { inventSurvey, panelsOf, pointsOf, type Survey, valuesAt } from './invented-survey.ts';
import { instance, type Kind, kindsOf } from './kind.ts';
import { languages, mean, summary, two, valuesOf, type Words } from './statistics-kinds.ts';
import { csv, longTable, shown } from './write-table.ts';

const kind = kindsOf('summaries', 'layout');

const unknown: Words = { mean: 'Qvo', min: 'Qla', max: 'Qsu', sd: 'Qde', count: 'Qnu' };

/** A column for each panel under a counter of the rows, with the summary of each below. */
function wideWithSummary(
  survey: Survey,
  words: Words,
  change: (value: string, row: number) => string = (value) => value,
): string {
  const panels = panelsOf(survey);
  const rows = pointsOf(survey).map((point, k) => [
    String(k + 1),
    ...panels.map((panel) =>
      valuesAt(survey, panel, point)
        .map((v) => shown(v))
        .join(''),
    ),
  ]);
  const columns = panels.map((panel) => summary(words, valuesAt(survey, panel), two));
  const foot = (columns[0] ?? []).map(([word], row) => [
    word,
    ...columns.map((own, column) => {
      const value = own[row]?.[1] ?? '';
      return column === 0 ? change(value, row) : value;
    }),
  ]);
  return csv([['No', ...panels.map((panel) => `${panel} (µm)`)], ...rows, ...foot]);
}

const below = (survey: Survey, words: Words): readonly string[] =>
  summary(words, valuesOf(survey), two).map(([word, value]) => `${word},,${value}\n`);

export const summaryKinds: readonly Kind[] = [
  ...Object.entries({ ...languages, 'no known language': unknown }).map(([language, words]) =>
    kind(`a summary under the counter of one column per panel, ${language}`, 'read', (random) => {
      const survey = inventSurvey(random, { panelCount: 3, points: 5 });
      return instance(wideWithSummary(survey, words), survey, { points: 'open' });
    }),
  ),
  kind(
    'a summary by unknown words under a counter, one value of it changed',
    'refused',
    (random) => {
      const survey = inventSurvey(random, { panelCount: 3, points: 5 });
      const text = wideWithSummary(survey, unknown, (value, row) => (row === 3 ? '77.77' : value));
      return instance(text, survey, { refusedAt: 10 });
    },
  ),
  kind('a "Min" under a counter that is not the least of its column', 'refused', (random) => {
    const survey = inventSurvey(random, { panelCount: 3, points: 5 });
    const words = languages['English'] ?? unknown;
    const text = wideWithSummary(survey, words, (value, row) =>
      row === 1 ? two(Number(value) + 9) : value,
    );
    return instance(text, survey, { refusedAt: 8 });
  }),
  kind('a summary by unknown words below rows with points', 'read', (random) => {
    const survey = inventSurvey(random, { panelCount: 3, points: 4 });
    return instance(longTable(survey) + below(survey, unknown).join(''), survey, {
      says: /are the mean of the readings above/,
    });
  }),
  kind('a mean by an unknown word below rows with points', 'read', (random) => {
    const survey = inventSurvey(random, { panelCount: 3, points: 4 });
    return instance(`${longTable(survey)}Qvo,,${two(mean(valuesOf(survey)))}\n`, survey);
  }),
  kind('a summary by unknown words with one value that is none of it', 'refused', (random) => {
    const survey = inventSurvey(random, { panelCount: 3, points: 4 });
    const [first = '', ...rest] = below(survey, unknown);
    const text = `${longTable(survey)}${first}Qxx,,777.77\n${rest.join('')}`;
    return instance(text, survey, { refusedAt: 15 });
  }),
  kind('a mean without a word in the last row', 'read', (random) => {
    const survey = inventSurvey(random, { panelCount: 3, points: 4 });
    return instance(`${longTable(survey)},,${two(mean(valuesOf(survey)))}\n`, survey, {
      says: /mean of the readings above/,
    });
  }),
  kind('a last row without a panel that is no mean', 'refused', (random) => {
    const survey = inventSurvey(random, { panelCount: 3, points: 4 });
    return instance(`${longTable(survey)},,${two(mean(valuesOf(survey)) + 1.3)}\n`, survey, {
      refusedAt: 14,
    });
  }),
  kind('means of every panel under an unknown word among its points', 'refused', (random) => {
    const survey = inventSurvey(random, { panelCount: 4, points: 4 });
    const rows = panelsOf(survey).flatMap((panel) => [
      ...survey.shots
        .filter((shot) => shot.panel === panel)
        .map(({ point, value }) => [panel, point, shown(value)]),
      [panel, 'Qvo', two(mean(valuesAt(survey, panel)))],
    ]);
    return instance(csv([['panel', 'point', 'reading_um'], ...rows]), survey, { refusedAt: 6 });
  }),
  kind('a row of "Calibration foil" among the panels', 'read', (random) => {
    const survey = inventSurvey(random, { panelCount: 3, points: 4 });
    return instance(`${longTable(survey)}Calibration foil,,21.5\n`, survey, {
      ...{ says: /is a check of the gauge, and no panel/, excluded: [['not-film']] },
    });
  }),
  ...['Temperature', 'Target', 'Signed: A. Smith'].map((label) =>
    kind(`a row of "${label}" among the panels`, 'refused', (random) => {
      const survey = inventSurvey(random, { panelCount: 3, points: 4 });
      return instance(`${longTable(survey)}${label},,21.5\n`, survey, { refusedAt: 14 });
    }),
  ),
  kind('a panel that nobody knows, read once at the end', 'read', (random) => {
    const survey = inventSurvey(random, { panelCount: 3, points: 4 });
    const value = two(mean(valuesOf(survey)) + 3.1);
    const last = { vehicle: null, panel: 'front spoiler lip', point: '1', value: Number(value) };
    const all = { ...survey, shots: [...survey.shots, { ...last, repeat: 1 }] };
    return instance(`${longTable(survey)}front spoiler lip,1,${value}\n`, all);
  }),
];
