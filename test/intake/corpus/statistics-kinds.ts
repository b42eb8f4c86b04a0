/** Means, extremes, deviations and counts among the readings, in many languages. */
import { inventSurvey, panelsOf, pointsOf, type Survey, valuesAt } from './invented-survey.ts';
import { instance, type Kind, kindsOf } from './kind.ts';
import { csv, longTable, shown } from './write-table.ts';

const kind = kindsOf('statistics', 'layout');

export const mean = (values: readonly number[]): number =>
  values.reduce((sum, value) => sum + value, 0) / values.length;
const deviation = (values: readonly number[]): number => {
  const centre = mean(values);
  return Math.sqrt(
    values.reduce((sum, value) => sum + (value - centre) ** 2, 0) / (values.length - 1),
  );
};

export type Words = {
  readonly mean: string;
  readonly min: string;
  readonly max: string;
  readonly sd: string;
  readonly count: string;
};
export const languages: Readonly<Record<string, Words>> = {
  English: { mean: 'Mean', min: 'Min', max: 'Max', sd: 'SD', count: 'Count' },
  'long English': {
    mean: 'Average',
    min: 'Minimum',
    max: 'Maximum',
    sd: 'Standard deviation',
    count: 'Number of readings',
  },
  'short English': { mean: 'Avg.', min: 'Min.', max: 'Max.', sd: 'Std. Dev.', count: 'n' },
  German: {
    mean: 'Mittelwert',
    min: 'Minimum',
    max: 'Maximum',
    sd: 'Standardabweichung',
    count: 'Anzahl',
  },
  'short German': { mean: 'Ø', min: 'Min', max: 'Max', sd: 'Stabw.', count: 'Anz.' },
  French: { mean: 'Moyenne', min: 'Minimum', max: 'Maximum', sd: 'Écart type', count: 'Nombre' },
  Spanish: {
    mean: 'Media',
    min: 'Mínimo',
    max: 'Máximo',
    sd: 'Desviación estándar',
    count: 'Número',
  },
  Italian: {
    mean: 'Media',
    min: 'Minimo',
    max: 'Massimo',
    sd: 'Deviazione standard',
    count: 'Numero',
  },
  Dutch: {
    mean: 'Gemiddelde',
    min: 'Minimum',
    max: 'Maximum',
    sd: 'Standaardafwijking',
    count: 'Aantal',
  },
  Portuguese: {
    mean: 'Média',
    min: 'Mínimo',
    max: 'Máximo',
    sd: 'Desvio padrão',
    count: 'Contagem',
  },
  Polish: {
    mean: 'Średnia',
    min: 'Minimum',
    max: 'Maksimum',
    sd: 'Odchylenie standardowe',
    count: 'Liczba',
  },
  Czech: {
    mean: 'Průměr',
    min: 'Minimum',
    max: 'Maximum',
    sd: 'Směrodatná odchylka',
    count: 'Počet',
  },
  Turkish: { mean: 'Ortalama', min: 'En az', max: 'En çok', sd: 'Std sapma', count: 'Sayı' },
  Finnish: {
    mean: 'Keskiarvo',
    min: 'Minimi',
    max: 'Maksimi',
    sd: 'Keskihajonta',
    count: 'Lukumäärä',
  },
  Hungarian: { mean: 'Átlag', min: 'Minimum', max: 'Maximum', sd: 'Szórás', count: 'Darab' },
  Danish: {
    mean: 'Gennemsnit',
    min: 'Mindste',
    max: 'Største',
    sd: 'Standardafvigelse',
    count: 'Antal',
  },
  Norwegian: {
    mean: 'Gjennomsnitt',
    min: 'Laveste',
    max: 'Høyeste',
    sd: 'Standardavvik',
    count: 'Antall',
  },
  Swedish: { mean: 'Medelvärde', min: 'Min', max: 'Max', sd: 'Standardavvikelse', count: 'Antal' },
  Japanese: { mean: '平均', min: '最小', max: '最大', sd: '標準偏差', count: '個数' },
  Chinese: { mean: '平均值', min: '最小值', max: '最大值', sd: '标准偏差', count: '数量' },
  Russian: {
    mean: 'Среднее',
    min: 'Минимум',
    max: 'Максимум',
    sd: 'Стандартное отклонение',
    count: 'Количество',
  },
};

export const summary = (
  words: Words,
  values: readonly number[],
  show: (value: number) => string,
): readonly (readonly [string, string])[] => [
  [words.mean, show(mean(values))],
  [words.min, show(Math.min(...values))],
  [words.max, show(Math.max(...values))],
  [words.sd, show(deviation(values))],
  [words.count, String(values.length)],
];
export const valuesOf = ({ shots }: Survey): readonly number[] => shots.map(({ value }) => value);
export const two = (value: number): string => shown(value, { digits: 2 });
const deTwo = (value: number): string => shown(value, { digits: 2, decimal: ',' });

/** Statistics at the foot of a long table, their word in the cell that `place` puts it. */
const foot = (
  title: string,
  expected: Kind['expected'],
  words: Words,
  place: (word: string, value: string) => string,
  between = '',
): Kind =>
  kind(title, expected, (random) => {
    const survey = inventSurvey(random, { panelCount: 3, points: 4 });
    const rows = summary(words, valuesOf(survey), two).map(
      ([word, value]) => `${place(word, value)}\n`,
    );
    return instance(longTable(survey) + between + rows.join(''), survey);
  });

const english = languages['English'] ?? { mean: '', min: '', max: '', sd: '', count: '' };

export const statisticsKinds: readonly Kind[] = [
  ...Object.entries(languages).flatMap(([language, words]) => [
    foot(
      `statistics rows at the foot, ${language}`,
      'read',
      words,
      (word, value) => `${word},,${value}`,
    ),
    kind(`statistics columns beside repeats, ${language}`, 'read', (random) => {
      const survey = inventSurvey(random, { repeats: 3, points: 3 });
      const rows = panelsOf(survey).flatMap((panel) =>
        pointsOf(survey).map((point) => {
          const values = valuesAt(survey, panel, point);
          return [
            panel,
            point,
            ...values.map((v) => shown(v)),
            ...summary(words, values, two).map(([, value]) => value),
          ];
        }),
      );
      const header = [
        'panel',
        'point',
        'r1 (µm)',
        'r2 (µm)',
        'r3 (µm)',
        words.mean,
        words.min,
        words.max,
        words.sd,
        words.count,
      ];
      return instance(csv([header, ...rows]), survey);
    }),
  ]),
  foot(
    'statistics rows with the word in the column of points',
    'read',
    english,
    (word, value) => `,${word},${value}`,
  ),
  foot(
    'statistics rows after a blank line',
    'read',
    english,
    (word, value) => `${word},,${value}`,
    '\n',
  ),
  foot(
    'statistics as "word: value" after a blank line',
    'read',
    english,
    (word, value) => `${word}: ${value} µm`,
    '\n',
  ),
  foot(
    'statistics as word and value in two cells',
    'read',
    english,
    (word, value) => `${word},${value}`,
    '\n',
  ),
  foot(
    'statistics in two cells without a blank line',
    'either-but-never-wrong',
    english,
    (word, value) => `${word},${value}`,
  ),
  foot(
    'statistics with a colon behind the word',
    'read',
    english,
    (word, value) => `${word}:,,${value}`,
  ),
  foot(
    'statistics in capitals',
    'read',
    { mean: 'MEAN', min: 'MIN', max: 'MAX', sd: 'STDEV', count: 'COUNT' },
    (word, value) => `${word},,${value}`,
  ),
  foot(
    'statistics with the unit in the word',
    'read',
    { mean: 'Mean (µm)', min: 'Min (µm)', max: 'Max (µm)', sd: 'SD (µm)', count: 'Count' },
    (word, value) => `${word},,${value}`,
  ),
  foot(
    'statistics by signs',
    'either-but-never-wrong',
    { mean: 'x̄', min: '↓', max: '↑', sd: 'σ', count: 'N' },
    (word, value) => `${word},,${value}`,
  ),
  foot(
    'statistics rows with "All panels" before the word',
    'either-but-never-wrong',
    english,
    (word, value) => `All panels,${word},${value}`,
  ),
  foot(
    'statistics with = and value in one cell',
    'either-but-never-wrong',
    english,
    (word, value) => `"${word} = ${value}",,`,
    '\n',
  ),
  foot(
    'rarer statistics: range, variation, median',
    'either-but-never-wrong',
    { mean: 'Median', min: 'Range', max: 'CV %', sd: 'Variance', count: 'Total' },
    (word, value) => `${word},,${value}`,
  ),
  foot(
    'statistics without a word',
    'either-but-never-wrong',
    { mean: '', min: '', max: '', sd: '', count: '' },
    (word, value) => `${word},,${value}`,
  ),
  kind('a mean after every panel, named "panel mean"', 'read', (random) => {
    const survey = inventSurvey(random, { points: 4 });
    const rows = panelsOf(survey).flatMap((panel) => [
      ...survey.shots
        .filter((s) => s.panel === panel)
        .map(({ point, value }) => [panel, point, shown(value)]),
      [panel, 'Mean', two(mean(valuesAt(survey, panel)))],
    ]);
    return instance(csv([['panel', 'point', 'reading_um'], ...rows]), survey);
  }),
  kind('five statistics after every panel, German', 'read', (random) => {
    const survey = inventSurvey(random, { points: 4 });
    const words = languages['German'] ?? english;
    const rows = panelsOf(survey).flatMap((panel) => [
      ...survey.shots
        .filter((s) => s.panel === panel)
        .map(({ point, value }) => [panel, point, shown(value, { decimal: ',' })]),
      ...summary(words, valuesAt(survey, panel), deTwo).map(([word, value]) => [
        panel,
        word,
        value,
      ]),
    ]);
    return instance(
      csv([['Bauteil', 'Punkt', 'Schichtdicke (µm)'], ...rows], { delimiter: ';' }),
      survey,
    );
  }),
  kind('a mean under every panel, "Bonnet total"', 'either-but-never-wrong', (random) => {
    const survey = inventSurvey(random, { points: 4 });
    const rows = panelsOf(survey).flatMap((panel) => [
      ...survey.shots
        .filter((s) => s.panel === panel)
        .map(({ point, value }) => [panel, point, shown(value)]),
      [`${panel} average`, '', two(mean(valuesAt(survey, panel)))],
    ]);
    return instance(csv([['panel', 'point', 'reading_um'], ...rows]), survey);
  }),
  kind('a row of means under one column per panel', 'read', (random) => {
    const survey = inventSurvey(random, { points: 4 });
    const panels = panelsOf(survey);
    const rows = pointsOf(survey).map((point) => [
      point,
      ...panels.map((panel) =>
        valuesAt(survey, panel, point)
          .map((v) => shown(v))
          .join(''),
      ),
    ]);
    const last = ['Mean', ...panels.map((panel) => two(mean(valuesAt(survey, panel))))];
    return instance(csv([['point', ...panels.map((p) => `${p} (µm)`)], ...rows, last]), survey, {
      points: 'open',
    });
  }),
  kind('a nameless row of means under one column per panel', 'either-but-never-wrong', (random) => {
    const survey = inventSurvey(random, { points: 4 });
    const panels = panelsOf(survey);
    const rows = pointsOf(survey).map((point) =>
      panels.map((panel) =>
        valuesAt(survey, panel, point)
          .map((v) => shown(v))
          .join(''),
      ),
    );
    const last = panels.map((panel) => two(mean(valuesAt(survey, panel))));
    return instance(csv([panels.map((p) => `${p} (µm)`), ...rows, [], last]), survey, {
      points: 'open',
    });
  }),
  kind('a mean column between the repeats', 'read', (random) => {
    const survey = inventSurvey(random, { repeats: 2, points: 3 });
    const rows = panelsOf(survey).flatMap((panel) =>
      pointsOf(survey).map((point) => {
        const [a = 0, b = 0] = valuesAt(survey, panel, point);
        return [panel, point, shown(a), two((a + b) / 2), shown(b)];
      }),
    );
    return instance(csv([['panel', 'point', 'r1 (µm)', 'mean (µm)', 'r2 (µm)'], ...rows]), survey);
  }),
  kind(
    'a file whose own mean disagrees with its readings tenfold',
    'either-but-never-wrong',
    (random) => {
      const survey = inventSurvey(random, { panelCount: 3, points: 4 });
      return instance(`${longTable(survey)}Mean,,${two(mean(valuesOf(survey)) / 10)}\n`, survey, {
        says: /disagree|differ|contradict|not the mean|agree/i,
      });
    },
  ),
  kind('a file whose own mean disagrees a little', 'either-but-never-wrong', (random) => {
    const survey = inventSurvey(random, { panelCount: 3, points: 4 });
    return instance(`${longTable(survey)}Mean,,${two(mean(valuesOf(survey)) + 7)}\n`, survey, {
      says: /disagree|differ|contradict|not the mean|agree/i,
    });
  }),
  kind('a mean that settles 1.234 as thousands', 'either-but-never-wrong', (random) => {
    const survey = inventSurvey(random, { panels: ['door rear left'], points: 5, decimals: 0 });
    const shots = survey.shots.map((shot) => ({ ...shot, value: random.int(1100, 1900) }));
    const rows = shots.map(({ panel, point, value }) => [
      panel,
      point,
      shown(value, { digits: 0, thousands: '.' }),
    ]);
    const average = mean(shots.map(({ value }) => value));
    return instance(
      `${csv([['panel', 'point', 'reading_um'], ...rows], { delimiter: ';' })}Mean;;${shown(average, { digits: 1, thousands: '.', decimal: ',' })}\n`,
      { ...survey, shots },
    );
  }),
  ...(
    [
      'Mini bonnet',
      "Max's roof",
      'Average door',
      'Count Street wing',
      'media door',
      'Sum roof',
    ] as const
  ).map((panel) =>
    kind(`a panel truly called "${panel}"`, 'read', (random) => {
      const survey = inventSurvey(random, { panels: ['bonnet', panel, 'roof'], points: 4 });
      return instance(longTable(survey), survey);
    }),
  ),
  kind(
    'a point called "max" on every panel, not its maximum',
    'either-but-never-wrong',
    (random) => {
      const survey = inventSurvey(random, { points: ['max', 'low', 'mid'] });
      return instance(longTable(survey), survey);
    },
  ),
];
