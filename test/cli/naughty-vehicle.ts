/** A vehicle, its shop and its class in which every text that people may write is one and the same label. */
export type Files = ReadonlyMap<string, string>;

const POINTS = [1, 2, 3, 4, 5];

/** Letters and a number stand behind the label, so that two panels are two; what it begins with stays. */
export const panelNamed = (label: string, number: number): string => `${label} side ${number}`;

const quoted = (text: string): string => `"${text.replaceAll('"', '""')}"`;

export function naughtyFiles(label: string): Files {
  const panels = [1, 2].map((number) => panelNamed(label, number));
  const readings = (of: (panel: number, point: number) => number): string =>
    panels
      .flatMap((panel, i) =>
        POINTS.map((point) =>
          [
            quoted(panel),
            quoted(`${label} ${point}`),
            of(i, point).toFixed(1),
            quoted(label),
            quoted(label),
          ].join(','),
        ),
      )
      .reduce((text, row) => `${text}${row}\n`, 'panel,point,reading_um,operator,note\n');
  const film = (panel: number, point: number): number => 117 + 3 * panel + point * 0.7;
  const json = (kind: string, keys: object): string =>
    JSON.stringify({ schema: `leastcut/${kind}/1`, ...keys });
  const [first = ''] = panels;
  return new Map([
    ['readings.csv', readings(film)],
    ['after.csv', readings((panel, point) => film(panel, point) - 2.5)],
    ['student.csv', readings((panel, point) => film(panel, point) + 0.4 * (point - 3))],
    [
      'defects.csv',
      `panel,defect,grade,extent,depth_um,note\n${panels.map((panel) => `${quoted(panel)},swirl-marks,3,${quoted(label)},,${quoted(label)}\n`).join('')}`,
    ],
    [
      'spots.csv',
      `spot,panel,machine,pad,product,sets,mark,before_um,after_um,defect,cleared_pct,haze_grade,colour_on_pad,panel_c,note\n${POINTS.map((point) => `${quoted(label)},${quoted(first)},own-da,own-pad,own-polish,2,${quoted(`${label} ${point}`)},118.${point},116.${point},swirl marks,40,1,no,30,${quoted(label)}\n`).join('')}`,
    ],
    [
      'gloss.csv',
      `panel,point,angle_deg,before_gu,after_gu\n${quoted(first)},${quoted(label)},60,80.1,90.2\n`,
    ],
    [
      'template.json',
      json('template', {
        id: 'own',
        name: label,
        note: label,
        panels: panels.map((name, i) => ({
          id: `side-${i + 1}`,
          name,
          also: [`${label} also ${i}`],
          area_m2: 1,
          substrate: 'steel',
          facing: 'vertical',
          flat_width_mm: 400,
          trim_m: 1,
          points: POINTS.map((point) => ({ point: `${label} ${point}`, u: point / 6, v: 0.5 })),
        })),
      }),
    ],
    [
      'job.json',
      json('job', {
        vehicle: {
          id: label,
          make: label,
          model: label,
          year: 2001,
          colour: label,
          owner: label,
          note: label,
        },
        template: 'template.json',
        panels: { [first]: { note: label } },
        note: label,
      }),
    ],
    [
      'gauge.json',
      json('gauge', {
        instrument: label,
        serial: label,
        permitted_error: { fixed_um: 1, proportional_pct: 1 },
        note: label,
      }),
    ],
    [
      'rubric.json',
      json('rubric', {
        name: label,
        pass_mark_pct: 75,
        weights: { accuracy: 4, coverage: 2, low_points: 2, repairs: 1, repeatability: 1 },
        note: label,
      }),
    ],
    [
      'shop.json',
      json('shop', {
        name: label,
        note: label,
        machines: [{ id: 'own-da', name: label, like: 'da' }],
        pads: [{ id: 'own-pad', name: label, like: 'foam-medium' }],
        products: [{ id: 'own-polish', name: label, like: 'medium' }, 'fine'],
        prices: {
          currency: 'GBP',
          labour_minor_per_h: { polish: 5400, other: 4200 },
          materials: [{ id: 'fine', pack: 1000, unit: 'ml', price_minor: 3450, note: label }],
          fixed: [{ name: label, price_minor: 2500 }],
          tax: {
            name: label,
            rate_pct: 20,
            level: 'total',
            rounding: 'half-up',
            included: false,
            note: label,
          },
          terms: [label, label],
          note: label,
        },
      }),
    ],
  ]);
}

/** Every page, by the words that ask for it. */
export const naughtyPages = (label: string): readonly (readonly string[])[] => {
  const job = ['--job', 'job.json', '--shop', 'shop.json'];
  const template = ['--template', 'template.json'];
  const panel = panelNamed(label, 1);
  const grade = ['grade', 'readings.csv', 'student.csv', ...template, '--rubric', 'rubric.json'];
  return [
    ['read', 'readings.csv', ...template],
    ['survey', 'readings.csv', ...job, '--gauge', 'gauge.json', '-v'],
    ['survey', 'readings.csv', ...job, '--why', panel],
    ['plan', 'readings.csv', ...job, '--defects', 'defects.csv', '--spots', 'spots.csv', '-v'],
    ['plan', 'readings.csv', ...job, '--card'],
    ['plan', 'readings.csv', ...job, '--why', panel],
    ['quote', 'readings.csv', ...job, '--defects', 'defects.csv', '-v'],
    ['spot', 'spots.csv', ...job],
    ['compare', 'readings.csv', 'after.csv', ...job, '--marked', '--gloss', 'gloss.csv'],
    grade,
    [...grade, '--trainee', label],
    ['template', 'show', 'template.json'],
    ['template', 'sheet', 'template.json'],
    ['template', 'list', '--shop', 'shop.json'],
    ['methods', 'list', '--shop', 'shop.json'],
    ['methods', 'show', 'own-da/own-pad/own-polish', '--shop', 'shop.json'],
    ['doctor', '--shop', 'shop.json'],
  ];
};
