/** No number is only for show: each of them, set otherwise, changes what some command says. */
import { expect, test } from 'vitest';
import { listAllDefaults } from '../../src/formats/data/all-defaults.ts';
import { normal, seededRandom } from '../samples/seeded-random.ts';
import { classNearTheRules } from './class-witness.ts';
import {
  compareText,
  gaugeText,
  gradeText,
  historyText,
  methodsText,
  planText,
  quoteText,
  ratesText,
  type Scenario,
  spotText,
  surveyText,
  templateText,
  unusualText,
  workText,
} from './witnesses.ts';

const rows = (panel: string, values: readonly number[], curved = ''): readonly string[] =>
  values.map((value, i) => `${panel},${i + 1},${value},,${curved}`);
const table = (...panels: readonly (readonly string[])[]): string =>
  `${['panel,point,reading_um,repeat,curved', ...panels.flat()].join('\n')}\n`;
const around = (centre: number, spread: number): readonly number[] =>
  [-1.2, -0.4, 0.1, 0.5, 1].map((step) => Math.round(10 * (centre + spread * step)) / 10);

/** A car that has a bit of everything. */
const mixed: Scenario = {
  readings: table(
    rows('bonnet', around(112, 5)),
    rows('roof', [111, 111, 111, 111, 111]),
    rows('boot', around(110, 15)),
    rows('wing front left', around(110, 4)),
    rows('wing front right', around(136, 4)),
    rows('door front left', around(110, 3), 'yes'),
    rows('door front right', around(133, 4)),
    rows('door rear left', around(98.5, 3)),
    rows('door rear right', [210, 216, 222, 219, 212]),
    rows('quarter left', around(155, 3)),
    rows('quarter right', [120, 330, 520, 140, 160]),
    rows('front bumper', [108]),
  ),
  job: { panels: { 'front bumper': { substrate: 'steel' } } },
};
/** A low point that just stands out; three panels to pool, and few degrees of repeats. */
const outlying: Scenario = {
  readings: table(
    rows('bonnet', [112, 112.6, 111.4, 112.2, 106.5]),
    rows('roof', around(112, 1.6)),
    rows('boot', around(111, 1.5)),
    rows('wing front left', around(111, 1.7)),
  ),
};
const repeated: Scenario = {
  readings: `panel,point,repeat,reading_um\n${['bonnet', 'roof', 'boot']
    .flatMap((panel) => [110, 110, 110].map((value, i) => `${panel},${i + 1},1,${value}`))
    .concat(
      ['roof', 'boot'].flatMap((panel) =>
        [1, 2].map((point) => `${panel},${point},2,${110 + 3 * point}`),
      ),
      'bonnet,1,2,106',
    )
    .join('\n')}\n`,
};
/** Uneven film all over, and two panels that just fall into zones. */
const uneven: Scenario = {
  readings: table(
    ...['bonnet', 'boot', 'door front left', 'door front right'].map((panel) =>
      rows(panel, around(112, 8)),
    ),
    rows('roof', [100, 101, 102, 136, 137]),
    rows('wing front left', [90, 92, 110, 122, 140, 142]),
  ),
};
const twoPanels: Scenario = {
  readings: table(rows('bonnet', around(112, 5)), rows('roof', around(60, 4))),
};
/** Alike, and thicker than most factories paint. */
const twoThick: Scenario = {
  readings: table(rows('bonnet', around(150, 5)), rows('roof', around(148, 4))),
};
/** Thick panels, and one that shows the factory's film or was cut back. */
const oneThin = (thick: number, thin: number): Scenario => ({
  readings: table(
    ...['roof', 'boot', 'door front left', 'door front right'].map((panel) =>
      rows(panel, around(thick, 4)),
    ),
    rows('bonnet', around(thin, 4)),
  ),
});
const thinFilm: Scenario = { readings: table(rows('bonnet', [50, 52, 48, 49, 51])) };
const small: Scenario = { readings: table(rows('bonnet', [16, 17, 15.5, 16, 15.8])) };
const large: Scenario = { readings: table(rows('bonnet', [1400, 4000, 1300, 1350, 1380])) };
const with_ = (scenario: Scenario, job: object, shop: object = {}): Scenario => ({
  ...scenario,
  job: { ...scenario.job, ...job },
  shop: { ...scenario.shop, ...shop },
});

const surveys: readonly Scenario[] = [
  mixed,
  uneven,
  outlying,
  repeated,
  twoPanels,
  twoThick,
  thinFilm,
  small,
  large,
  with_(mixed, { galvanised: true }),
  with_(mixed, { finish: 'single-stage-solid' }),
  with_(mixed, { policy: 'strict' }),
  with_(mixed, { painted_days_ago: 89 }),
  with_(mixed, { clear_um: 44 }),
  with_(mixed, { under_um: 66 }),
  with_(mixed, { galvanised: true, under_um: 66 }),
  with_(mixed, { vehicle: { length_m: 4.4 } }),
];

/** The same points by two people who differ by a little more or less than chance; and two rounds, with names and without. */
const TWICE = ['bonnet', 'roof', 'boot'] as const;
const byTwo = (by: number): Scenario => ({
  readings: `panel,point,operator,reading_um\n${['Ann', 'Ben']
    .flatMap((name, k) =>
      TWICE.flatMap((panel) =>
        around(112, 3).map(
          (value, i) => `${panel},${i + 1},${name},${value + k * (by + ((i * 7) % 3) / 2)}`,
        ),
      ),
    )
    .join('\n')}\n`,
});
const inRounds = (by: number, points: number): Scenario => {
  const rows = [0, by].flatMap((more) =>
    TWICE.slice(0, 2).flatMap((panel) =>
      around(112, 3)
        .slice(0, points)
        .map((value, i) => `${panel},${i + 1},${value + more + (more && (i % 2) / 4)}`),
    ),
  );
  return { readings: `panel,point,reading_um\n${rows.join('\n')}\n` };
};
const withoutNames = (by: number): Scenario => {
  const round = (more: number): string =>
    `panel,reading_um\n${TWICE.flatMap((panel) => around(112, 3).map((value) => `${panel},${value + more}`)).join('\n')}\n`;
  return { readings: `${round(0)}\n${round(by)}` };
};
const together =
  (...scenarios: readonly Scenario[]): Witness =>
  (numbers) =>
    scenarios.map((one) => surveyText(one, numbers)).join('\n');
const rounds: readonly Witness[] = [
  together(...[1.2, 1.5, 1.7, 1.9, 2.1, 2.3].map(byTwo)),
  together(inRounds(6, 4), inRounds(6, 5)),
  together(...[3, 4, 5, 6, 7, 8].map(withoutNames)),
];

const deep = (kind: string, grades: readonly number[]): string =>
  `panel,defect,grade\n${['bonnet', 'roof', 'boot', 'wing front left', 'door front left']
    .flatMap((panel, i) => (grades[i] === undefined ? [] : [`${panel},${kind},${grades[i]}`]))
    .join('\n')}\n`;
const everyGrade = [1, 2, 3, 4, 5];
const sound: Scenario = {
  readings: table(
    ...['bonnet', 'roof', 'boot', 'wing front left', 'door front left'].map((panel) =>
      rows(panel, around(124, 3)),
    ),
    rows('door front right', [120, 121, 119, 122, 118]),
  ),
  job: { taken_um: 0 },
  shop: { machines: ['da'], pads: ['foam-soft', 'foam-medium'] },
};
const swirled = { ...sound, defects: deep('swirl-marks', everyGrade) };

const everything = { machines: ['rotary', 'da', 'da-forced', 'da-small', 'hand'] };
const everyMachine = [
  ...everything.machines.map((id) => `${id}/foam-medium/medium`),
  'rotary/wool/heavy',
];

/** Numbers that change nothing in any of these runs, each with the reason why not. */
const idle: Readonly<Record<string, string>> = {
  'correction.heat.plastic_stop_c': 'no method with the built-in figures warms plastic that far',
};

/** Values away from the built-in one, within the range: a little, then far. */
const otherValues = (
  value: number,
  [least, most]: readonly [number, number],
): readonly number[] => {
  const whole = Number.isInteger(value) && most - least < 50;
  const near = whole ? [value + 1, value - 1] : [value * 1.3, value * 0.7];
  const far = [(value + most) / 2, (value + least) / 2].map((other) =>
    whole ? Math.round(other) : other,
  );
  return [...near, ...far].filter((other) => other !== value && other >= least && other <= most);
};

type Numbers = Readonly<Record<string, number>>;
type Witness = (numbers: Numbers) => string;

const surveyOf =
  (scenario: Scenario): Witness =>
  (numbers) =>
    surveyText(scenario, numbers);
const planOf =
  (scenario: Scenario): Witness =>
  (numbers) =>
    planText(scenario, numbers);
const methods: Witness = (numbers) => methodsText(everything, numbers, everyMachine);

/** Prices in both kinds of document; the assumptions, which name the numbers, are left out. */
const quotes: readonly Witness[] = ['estimate', 'quotation'].map((kind) => (numbers) => {
  const prices = { currency: 'EUR', kind, labour_minor_per_h: 4500, cash_rounding_minor: 1500 };
  return quoteText(with_(sound, {}, { prices }), numbers).replace(/"assumptions":\[.*?\]/g, '');
});
/** Packs near what is asked about: by how many a job takes, by what one holds, by what it costs. */
const packs: readonly Witness[] = [
  { pack: 12, price_minor: 3333 },
  { pack: 30, price_minor: 3333 },
  { pack: 1, price_minor: 80 },
].map((pack) => (numbers) => {
  const materials = [{ id: 'fine', unit: 'ml', ...pack }];
  const prices = { currency: 'EUR', labour_minor_per_h: 4500, materials };
  return quoteText(with_(sound, {}, { prices }), numbers).replace(/"assumptions":\[.*?\]/g, '');
});

/** Two combinations with a pad in common, on two vehicles. */
const rates: Witness = (numbers) =>
  ratesText(
    ['FH-1', 'FH-2'].flatMap((vehicle) =>
      ['da/foam-medium/medium', 'rotary/foam-medium/heavy'].map((combination) => ({
        date: '2026-01-15',
        vehicle,
        combination,
        sets: 2,
        removed_um: 3,
        standard_error_um: 0.4,
      })),
    ),
    numbers,
  );

/** Two sets of one trial, one of another; film of scattered marks, and what the eye saw. */
const spots: Witness = (numbers) =>
  spotText(
    [
      'spot,panel,machine,pad,product,sets,mark,before_um,after_um,cleared_pct',
      'A,roof,da,foam-medium,medium,1,1,112,110.2,30',
      'A,roof,da,foam-medium,medium,1,2,112,111.9,30',
      'B,roof,da,foam-firm,medium,2,1,112,109.2,50',
      '',
    ].join('\n'),
    numbers,
  );
/** A spot that lost nearly too much, and one with a mark that lies off what its panel reads, if not too far. */
const SPOT_HEAD = 'spot,panel,machine,pad,product,sets,mark,before_um,after_um\n';
const doubtfulSpots: readonly Witness[] = [
  (numbers) => spotText(`${SPOT_HEAD}A,roof,da,foam-medium,medium,1,1,112,102\n`, numbers),
  surveyOf({ ...sound, spots: `${SPOT_HEAD}A,roof,da,foam-medium,medium,1,1,147,146\n` }),
];
const softPlan = planOf(with_(sound, { hardness: 'soft' }));
const hardPlan = planOf(with_(sound, { hardness: 'hard' }));
const thinPlan = planOf(with_({ ...sound, defects: deep('oxidation', [5, 5]) }, { taken_um: 5 }));
const deepMarks = planOf({ ...sound, defects: deep('deep-scratches', everyGrade) });
/** Hard paint, deep marks, and what cuts most. */
const harshPlan = planOf(
  with_(
    { ...sound, defects: deep('oxidation', [5, 5, 5, 5, 5]) },
    { hardness: 'hard', taken_um: 0 },
    { machines: ['rotary', 'da'], pads: ['wool', 'foam-soft', 'foam-medium'] },
  ),
);
const plans = [
  planOf(sound),
  planOf(with_(swirled, { aim: 'enhance' })),
  planOf(with_(swirled, { aim: 'full' })),
  softPlan,
  hardPlan,
  thinPlan,
  planOf(with_({ ...sound, defects: deep('oxidation', [5]) }, {}, { machines: ['rotary', 'da'] })),
  harshPlan,
];
const ownTemplate = {
  id: 'own',
  name: 'own',
  base: 'saloon',
  change: { roof: { area_m2: 3.9 }, bonnet: { area_m2: 0.7 }, boot: { edge_m: 9 } },
};
/** The whole job in every scope there is, on vehicles of every class. */
const workOf =
  (scenario: Scenario): Witness =>
  (numbers) =>
    workText(scenario, numbers);
const everyPart = { interior: true, engine_bay: true, trim: true };
const jobs: readonly Witness[] = [
  sound,
  with_(sound, {}, { machines: ['rotary', 'da'], pads: ['microfibre', 'wool'] }),
  with_(sound, { scope: everyPart, arrival: 'heavy' }),
  with_(sound, { scope: { wheels: 'off', protection: 'coating' }, arrival: 'light' }),
  with_(sound, { scope: { protection: 'sealant' } }),
  ...[3.8, 5.4, 7.5].map((length_m) => with_(sound, { scope: everyPart, vehicle: { length_m } })),
].map(workOf);
const hours: Witness = (numbers) =>
  historyText(
    `job,stage,estimated_min,actual_min\n${[1, 2, 3, 4, 5, 6]
      .flatMap((i) => [`J${i},,500,${560 + i}`, `J${i},clay,40,${55 + i}`])
      .join('\n')}\n`,
    numbers,
  );
const byLength = [4.4, 2.9, 7.6].map((length_m) =>
  surveyOf(with_(mixed, { vehicle: { length_m } })),
);
const largeRoof: Witness = (numbers) =>
  templateText({ ...ownTemplate, change: { roof: { area_m2: 7.9 } } }, numbers);
const templates: readonly Witness[] = [
  ...byLength,
  unusualText,
  (numbers) => templateText(ownTemplate, numbers),
  largeRoof,
];
/** A panel that is doubtful, one that is off, a slip that is nearly none, values that are nearly too alike. */
const marked = (...panels: readonly (readonly [string, readonly number[]])[]): string =>
  `panel,point,reading_um,repeat,marked\n${panels
    .flatMap(([panel, values]) =>
      values.flatMap((value, i) => [
        `${panel},${i + 1},${value},1,yes`,
        `${panel},${i + 1},${value + 1},2,yes`,
      ]),
    )
    .join('\n')}\n`;
const film = [108, 117, 110, 113];
const shifted = (by: number): readonly number[] => film.map((value) => value + by);
const classFiles = {
  'reference.csv': marked(
    ['bonnet', film],
    ['roof', film],
    ['boot', film],
    ['wing front left', [250, 262, 255, 247]],
    ['wing front right', [108, 117, 84, 113]],
  ),
  'a.csv': marked(
    ['bonnet', shifted(7)],
    ['roof', shifted(-10)],
    ['boot', [108, 117, 1340, 113]],
    ['wing front left', shifted(0)],
    ['wing front right', shifted(0)],
  ),
  'b.csv': marked(['bonnet', [112, 112, 112, 112]], ['roof', film], ['boot', film.slice(1)]),
  'c.csv': marked(['bonnet', film], ['roof', film], ['boot', film]),
  'd.csv': `panel,point,reading_um,repeat,marked\nroof,1,108,1,yes\nroof,1,121,2,yes\n`,
  // Of four points two are marks that the reference has.
  'e.csv': `panel,point,reading_um,repeat,marked\nroof,1,108,1,yes\nroof,2,117,1,yes\nroof,3,121,1,\nroof,4,124,1,\n`,
};
const nearTheRules: Witness = (numbers) => gradeText(classNearTheRules, numbers);

/**
 * A car read whole, by some who follow its film, some who follow it the less, and some who swapped two doors that are
 * more or less alike. In the second class nobody reads the marks of the reference: only panels can be followed.
 */
const PANELS = [
  ...['bonnet', 'roof', 'boot', 'wing front left', 'wing front right', 'quarter left'],
  ...['quarter right', 'door front left', 'door front right', 'door rear left', 'door rear right'],
];
const random = seededRandom(7);
const tenth = (um: number): number => Math.round(10 * um) / 10;
const readBy = (of: (i: number, k: number) => number): string =>
  marked(
    ...PANELS.map((panel, i) => [panel, [0, 1, 2, 3, 4].map((k) => tenth(of(i, k)))] as const),
  );
const car = PANELS.map(() => {
  const level = 114 + 5 * normal(random);
  return [0, 1, 2, 3, 4].map(() => level + 5 * normal(random));
});
const filmAt = (i: number, k: number): number => car[i]?.[k] ?? Number.NaN;
const trainees = (
  count: number,
  name: string,
  read: (n: number) => string,
): Readonly<Record<string, string>> =>
  Object.fromEntries(Array.from({ length: count }, (_, n) => [`${name}-${n}.csv`, read(n)]));
const classOfMarks = {
  'reference.csv': readBy(filmAt),
  ...trainees(7, 'steady', () => readBy((i, k) => filmAt(i, k) + normal(random))),
  ...trainees(6, 'follows', (n) =>
    readBy((i, k) => 114 + (n / 14) * (filmAt(i, k) - 114) + (1 - n / 14) * 5.5 * normal(random)),
  ),
  ...trainees(12, 'doors', (n) =>
    readBy((i, k) => {
      const other = i === 7 ? 8 : i === 8 ? 7 : i;
      return filmAt(i, k) + (0.3 + 0.06 * n) * (filmAt(other, k) - filmAt(i, k)) + normal(random);
    }),
  ),
};
const levelAt = (i: number): number => 100 + ((5 * i) % 11) * 3;
const filmByLevel = (i: number, k: number): number => levelAt(i) + filmAt(i, k) - 114;
const classOfPanels = {
  'reference.csv': readBy(filmByLevel),
  ...trainees(7, 'steady', () => readBy((i, k) => filmByLevel(i, k) + normal(random))),
  ...trainees(7, 'levels', (n) => {
    const own = PANELS.map((_, i) => 115 + (n / 12) * (levelAt(i) - 115) + 8 * normal(random));
    return readBy((i) => (own[i] ?? Number.NaN) + 5 * normal(random))
      .replaceAll(',yes', ',no')
      .replaceAll(/^([^,\n]+),(\d),/gm, '$1,x$2,');
  }),
};
/** Two doors of which one reads in part, more and more, as the other: at some point they are told as swapped. */
const finer = seededRandom(23);
const classOfDoors = {
  'reference.csv': readBy(filmAt),
  ...trainees(30, 'doors', (n) =>
    readBy((i, k) => {
      const other = i === 7 ? 8 : i === 8 ? 7 : i;
      const share = 0.5 + 0.02 * n;
      return filmAt(i, k) + share * (filmAt(other, k) - filmAt(i, k)) + normal(finer);
    }),
  ),
};
const doorsSwapped: Witness = (numbers) => gradeText(classOfDoors, numbers);
/** Some who read the first six panels, less and less steadily, and no panel after them. */
const unsteady = seededRandom(11);
const classThatStops = {
  'reference.csv': readBy(filmAt),
  ...trainees(8, 'stops', (n) =>
    readBy((i, k) =>
      i < 6 ? filmAt(i, k) + (1 + 0.4 * n) * normal(unsteady) : 114 + 5 * normal(unsteady),
    ),
  ),
};
/** Panels that vary by a little less than film does, beside four that hardly vary. */
const classTooEven = {
  'reference.csv': readBy(filmAt),
  ...trainees(12, 'even', (n) =>
    readBy((i, k) => {
      const middle = filmAt(i, 2);
      return middle + (i % 3 === 0 ? 0.1 : 0.2 + 0.05 * n) * (filmAt(i, k) - middle);
    }),
  ),
};
const tooEven: Witness = (numbers) => gradeText(classTooEven, numbers);
const stopsReading: Witness = (numbers) => gradeText(classThatStops, numbers);
const carReadWhole: readonly Witness[] = [classOfMarks, classOfPanels].map(
  (files) => (numbers) => gradeText(files, numbers),
);
const classes: readonly Witness[] = [
  (numbers) => gradeText(classFiles, numbers),
  (numbers) => gradeText(classFiles, numbers, true),
  nearTheRules,
];

/** One shim that is as thick as a film, if only just. */
const shims: Witness = (numbers) =>
  gaugeText(
    `shim_um,shim_uncertainty_um,reading_um\n${[0, 49.6].map((shim) => `${shim},0.2,${shim}\n`.repeat(3)).join('')}`,
    numbers,
  );

/** A panel that gained a little more than paint adds at least, and one visit on record of which just enough is known again. */
const firstFilm = [...film, 111, 116, 109, 112, 114, 118];
const visitOf = (before: readonly number[]) => ({
  date: '2026-03-01',
  panels: [
    {
      ...{ panel: 'bonnet', taken_um: 2, taken_sd_um: 0.3 },
      points: before.map((value, i) => ({
        ...{ point: `${i + 1}`, before_um: value, after_um: value - 2 },
      })),
    },
  ],
});
const comparedWith = (before: readonly number[], points: number): Witness => {
  const own = firstFilm.slice(0, points);
  const visits = [0, 1].map((by) => marked(['bonnet', own.map((value) => value - by + 0.5)]));
  return (numbers) =>
    compareText([visits[0] ?? '', visits[1] ?? ''], numbers, [visitOf(before.slice(0, points))]);
};
const asMeans = firstFilm.map((value) => value + 1);
/** Of many panels alike, a point of one that may stand out; or a panel of which so much came off that it is uneven. */
const alike = ['roof', 'boot', 'wing front left', 'wing front right'] as const;
const oneApart =
  (by: number, taken = 2): Witness =>
  (numbers) =>
    compareText(
      [
        marked(['bonnet', firstFilm], ...alike.map((panel) => [panel, firstFilm] as const)),
        marked(
          [
            'bonnet',
            firstFilm.map((value, i) => value - taken + ((i * 7) % 3) / 4 + (i === 3 ? by : 0)),
          ],
          ...alike.map(
            (panel) => [panel, firstFilm.map((value, i) => value - 2 + ((i * 7) % 3) / 4)] as const,
          ),
        ),
      ],
      numbers,
    );
/** Two panels of which it is not plain whether they were exchanged. */
const perhapsExchanged =
  (by: number): Witness =>
  (numbers) => {
    const [one, other] = [firstFilm, firstFilm.map((value, i) => value + (i % 2 === 0 ? by : -by))];
    return compareText(
      [marked(['bonnet', one], ['roof', other]), marked(['bonnet', other], ['roof', one])],
      numbers,
    );
  };
const comparisons: readonly Witness[] = [
  oneApart(1.8),
  oneApart(10, 12),
  perhapsExchanged(1.5),
  (numbers) => compareText([marked(['bonnet', film]), marked(['bonnet', shifted(17)])], numbers),
  comparedWith(asMeans, 5),
  comparedWith(
    asMeans.map((value, i) => (i < 3 ? value + 0.25 : value)),
    10,
  ),
];

/** Where to look first, so that most numbers are seen to act in one run. */
const surveyWith = (job: object): Witness => surveyOf(with_(mixed, job));
const firstWitness: readonly (readonly [string, readonly Witness[]])[] = [
  ['price.packs', packs],
  ['film.measurement.film_shim', [shims]],
  ['film.measurement.largest', [surveyOf(large)]],
  ['film.measurement.doubtful_under', [surveyOf(small)]],
  ['film.measurement.doubtful_over', [surveyOf(large)]],
  ['film.layers.galvanised', [surveyWith({ galvanised: true })]],
  ['film.layers.single_stage', [surveyWith({ finish: 'single-stage-solid' })]],
  ['film.stated.clear', [surveyWith({ clear_um: 44 })]],
  ['film.stated', [surveyWith({ under_um: 66 })]],
  ['film.limits.clear_floor_strict', [surveyWith({ policy: 'strict' })]],
  ...['life_solid', 'total_floor_single_stage', 'single_stage_floor'].map(
    (name) => [`film.limits.${name}_um`, [surveyWith({ finish: 'single-stage-solid' })]] as const,
  ),
  ['film.measurement.repeatability_least_dof', [surveyOf(repeated)]],
  ['film.measurement.rounds.fewest', rounds.slice(1)],
  ['film.measurement.rounds.false_alarm', rounds.slice(2)],
  ['film.measurement.rounds.film_um', rounds.slice(2)],
  ['film.measurement.rounds', rounds],
  ['film.conditions.about_its_car', [surveyOf(oneThin(150, 124))]],
  ['film.conditions.about_its_car_dof', [surveyOf(oneThin(112, 104))]],
  ['film.conditions.painted_over_most', [surveyOf(oneThin(170, 112))]],
  ['film.fresh', [surveyWith({ painted_days_ago: 89 })]],
  ['film.zones', [surveyOf(uneven)]],
  ...['far_better', 'least_of_paint_um', 'least_alike', 'share_alike'].map(
    (name, i) => [`film.compare.${name}`, comparisons.slice(i + 2)] as const,
  ),
  ['film.compare', comparisons],
  ['training.copies.most_alike', classes],
  ['training.patterns.followed_usual', [stopsReading]],
  ['training.slips.honest_rest', [tooEven]],
  ['training.patterns.panel_share', [doorsSwapped]],
  ...['copies.set_down', 'patterns.panel', 'patterns.followed'].map(
    (id) => [`training.${id}`, carReadWhole] as const,
  ),
  ...[
    'slips.whole_survey',
    'slips.even_panel',
    'slips.finest_step',
    'slips.made_up_spread',
    'copies',
    'patterns',
  ].map((id) => [`training.${id}`, [nearTheRules]] as const),
  ['correction.heat.stop_c', [harshPlan]],
  ['correction.least_correction', [thinPlan]],
  ['correction.least_for_place', [deepMarks]],
  ['correction.removal.hard_factor', [hardPlan]],
  ['correction.removal.soft_factor', [softPlan]],
  ['work.vibration.rotary', [harshPlan]],
  ['template.areas.largest', [largeRoof]],
  ['template.points.fewest', [unusualText]],
  ['template.points', [largeRoof]],
  ['template.scaling', byLength.slice(2)],
  ['template.unusual', [unusualText]],
  ['film.edge_width_mm', [planOf(with_(mixed, {}, { machines: ['da'] }))]],
];
const surveyWitnesses = [...surveys.map(surveyOf), planOf(with_(mixed, {}, { machines: ['da'] }))];
const defectPlans = new Map<string, Witness>();

/** The runs that rest on a number, going by its name: the likeliest first. */
function witnessesOf(id: string): readonly Witness[] {
  const hinted = firstWitness.find(([prefix]) => id.startsWith(prefix))?.[1];
  if (id.startsWith('training.')) return hinted ?? classes;
  return [...new Set([...(hinted ?? []), ...witnessesOfSection(id)])];
}

function witnessesOfSection(id: string): readonly Witness[] {
  const [section = '', branch = '', name = ''] = id.split('.');
  if (section === 'film') return surveyWitnesses;
  if (section === 'template') return templates;
  if (section === 'price') return quotes;
  if (branch === 'defects' || branch === 'grain') {
    const kind = branch === 'grain' ? `sanding-marks-${name.replace('_um', '')}` : name;
    const plan = defectPlans.get(kind) ?? planOf({ ...sound, defects: deep(kind, everyGrade) });
    defectPlans.set(kind, plan);
    return [plan];
  }
  if (section === 'work') return branch === 'history' ? [hours] : [...jobs, ...plans];
  if (branch === 'spot') return [spots, ...doubtfulSpots];
  if (branch === 'local_section_m2') {
    return [deepMarks];
  }
  if (branch === 'shop_rates') return [rates];
  if (branch === 'sanding') return [planOf({ ...sound, defects: deep('sanding-marks-p800', [3]) })];
  return section === 'correction' ? [methods, ...plans] : plans;
}

const usual = new Map<Witness, string>();
const usually = (witness: Witness): string => {
  const known = usual.get(witness) ?? witness({});
  usual.set(witness, known);
  return known;
};

test('each number of the model, set otherwise, changes what some command says', async () => {
  const silent: string[] = [];
  for (const { id, value, range } of listAllDefaults()) {
    // Lets the runner speak in between.
    await new Promise((resolve) => setImmediate(resolve));
    // One value is enough to see that an idle one is still idle where it is looked for first.
    const others = otherValues(value, range).slice(0, Object.hasOwn(idle, id) ? 1 : undefined);
    // What one witness makes of every value before the next one is asked: the likeliest come first.
    const acts = witnessesOf(id).some((witness) =>
      others.some((other) => witness({ [id]: other }) !== usually(witness)),
    );
    if (!acts) silent.push(id);
  }
  expect(silent).toEqual(Object.keys(idle));
}, 240_000);
