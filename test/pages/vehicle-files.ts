/** The files of an invented vehicle with as many panels as asked for: what its pages are made from. */

export type VehicleFiles = Readonly<
  Record<
    'template' | 'readings' | 'after' | 'defects' | 'job' | 'anneke' | 'bram' | 'elif',
    { readonly name: string; readonly text: string }
  >
>;

const POINTS = [1, 2, 3, 4, 5];
const SUBSTRATES = ['steel', 'steel', 'steel', 'aluminium'];

type Reading = (panel: number, point: number) => number;

/** About 118 µm; every fifth panel thin at a point, every seventh painted again. */
const film: Reading = (panel, point) =>
  panel % 7 === 6
    ? 252 + ((panel * 13 + point * 29) % 31)
    : 118 + ((panel * 7 + point * 11) % 13) - 6 - (panel % 5 === 4 && point === 2 ? 21 : 0);

const plainName = (panel: number): string =>
  panel === 0
    ? 'bonnet'
    : `side section ${Math.ceil(panel / 2)} ${panel % 2 === 0 ? 'right' : 'left'}`;
const panelId = (panel: number): string => plainName(panel).replaceAll(' ', '-');

/** Of a long vehicle some are one long word, wide letters, or run from right to left. */
const ODD_NAMES: Readonly<Record<number, string>> = {
  13: 'Vorderwagenquerträgerverstärkung',
  24: '右フロントドアの取っ手の下',
  35: 'الجناح الأمامي الأيمن',
  46: 'Μπροστινή δεξιά πόρτα κάτω από τη χειρολαβή',
};
const panelName = (panel: number): string => ODD_NAMES[panel] ?? plainName(panel);

export function vehicleFiles(panels: number): VehicleFiles {
  const all = Array.from({ length: panels }, (_, at) => at);
  const readings = (of: Reading): string =>
    all.reduce(
      (text, panel) =>
        POINTS.reduce(
          (rows, point) => `${rows}${panelName(panel)},${point},${of(panel, point).toFixed(1)}\n`,
          text,
        ),
      'panel,point,reading_um\n',
    );
  const scatter: Reading = (panel, point) => ((panel * 5 + point * 3) % 7) / 2 - 1.5;
  return {
    template: { name: 'template.json', text: templateText(all) },
    readings: { name: 'readings.csv', text: readings(film) },
    after: {
      name: 'after.csv',
      text: readings((panel, point) => film(panel, point) - 2.4 + scatter(panel, point) / 3),
    },
    anneke: {
      name: 'anneke.csv',
      text: readings((panel, point) => film(panel, point) + scatter(panel, point) / 2),
    },
    bram: {
      name: 'bram.csv',
      text: readings((panel, point) => film(panel, point) + 8 + scatter(panel, point)),
    },
    elif: {
      name: 'elif.csv',
      text: readings((panel, point) => film(panel, point) + (panel % 3 === 2 ? 30 : 0)),
    },
    defects: {
      name: 'defects.csv',
      text: `panel,defect,grade,extent,depth_um,note\n${all
        .map((panel) => `${panelName(panel)},swirl-marks,${1 + (panel % 4)},whole panel,,\n`)
        .join('')}bonnet,deep-scratch,4,spot,7,a fingernail catches\n`,
    },
    job: {
      name: 'job.json',
      text: JSON.stringify({
        schema: 'leastcut/job/1',
        vehicle: {
          id: 'FH-1060',
          make: 'Orrindale',
          model: 'Longmere',
          year: 2011,
          owner: 'Odalys Brackenthorp',
        },
        template: 'template.json',
        aim: 'correct',
        finish: 'clear-over-base',
      }),
    },
  };
}

const templateText = (panels: readonly number[]): string =>
  JSON.stringify({
    schema: 'leastcut/template/1',
    id: 'longmere',
    name: 'long vehicle',
    length_m: 11,
    width_m: 2.5,
    height_m: 3.1,
    panels: panels.map((panel) => ({
      id: panelId(panel),
      name: panelName(panel),
      area_m2: 0.9,
      substrate: SUBSTRATES[panel % SUBSTRATES.length],
      facing: panel === 0 ? 'horizontal' : 'vertical',
      flat_width_mm: 400,
      trim_m: 1.2,
    })),
  });
