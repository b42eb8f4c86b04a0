/**
 * Every file of the samples, and what is true of their cars.
 *
 * All of it is invented and comes from a seeded generator, so the truth behind each reading is known:
 * `truth.json` holds it for tests. `npm run samples` writes the files anew; without it, the tests
 * compare them byte by byte.
 */
import { classFiles } from './class.ts';
import { gaugeChecks } from './gauge-checks.ts';
import type { InventedCar, PanelTruth, Sample } from './invented-film.ts';
import { olderCoupe } from './older-coupe.ts';
import { plasticBumpers } from './plastic-bumpers.ts';
import { shopRates } from './shop-rates.ts';
import { soundSaloon } from './sound-saloon.ts';
import { json, lines } from './text-files.ts';

const samples = (): readonly Sample[] => [soundSaloon(), olderCoupe(), plasticBumpers()];

const shop = {
  schema: 'leastcut/shop/1',
  name: 'Fernhollow Paintwork',
  machines: ['rotary', 'da', 'da-small'],
  pads: ['foam-soft', 'foam-medium', 'microfibre', 'wool'],
  products: ['fine', 'medium', 'heavy'],
  risk_pct: 5,
  policy: 'standard',
  minutes: {
    wipe_min_per_section: 0.8,
    pad_cleaning_min_per_section: 1,
    setup_min_per_combination: 12,
  },
  prices: {
    currency: 'GBP',
    kind: 'estimate',
    labour_minor_per_h: { polish: 5400, other: 4200 },
    materials: [
      { id: 'fine', pack: 1000, unit: 'ml', price_minor: 3450, stock: 640 },
      { id: 'medium', pack: 1000, unit: 'ml', price_minor: 3750, stock: 210 },
      { id: 'foam-soft-150', pack: 1, unit: 'pieces', price_minor: 1150, stock: 4 },
      { id: 'foam-medium-150', pack: 1, unit: 'pieces', price_minor: 1150, stock: 9 },
      { id: 'masking-tape', pack: 50, unit: 'm', price_minor: 420, stock: 30 },
      { id: 'wax', pack: 250, unit: 'ml', price_minor: 2600, stock: 180 },
    ],
    markup_pct: 20,
    fixed: [{ name: 'collection and return', price_minor: 2500 }],
    minimum_minor: 18000,
    tax: { preset: 'uk-vat' },
    deposit_pct: 25,
    validity_days: 30,
    contact: ['4 Kiln Lane, Fernhollow', 'telephone 0555 0142'],
    terms: ['Bring the car empty, with half a tank.', 'The rest is due when you collect it.'],
  },
};

/** A saloon with two long doors: the built-in one without its rear doors. */
const twoDoor = {
  schema: 'leastcut/template/1',
  id: 'two-door',
  name: 'two-door saloon',
  base: 'saloon',
  remove: ['door-rear-left', 'door-rear-right'],
  change: {
    'door-front-left': { area_m2: 1.1 },
    'door-front-right': { area_m2: 1.1 },
  },
};

/** A workshop with things and numbers of its own: a polisher, a pad, a polish, a rate it measured. */
const ownThings = {
  schema: 'leastcut/shop/1',
  name: 'Fernhollow Paintwork, annexe',
  machines: [
    'hand',
    {
      id: 'long-throw',
      name: 'long-throw polisher',
      like: 'da',
      throw_mm: 21,
      min_per_section: 4,
    },
  ],
  pads: ['foam-soft', { id: 'waffle', name: 'waffle foam', like: 'foam-medium', factor: 1.1 }],
  products: ['fine', { id: 'house-polish', factor: 0.8, stages: ['cut', 'refine'] }],
  rates: {
    'long-throw/waffle/house-polish': { rate_um_per_set: 0.7, note: 'six marked spots in spring' },
  },
  templates: ['two-door.json'],
  numbers: { 'film.earlier.unknown_clear_um': 3 },
};

/** The three cars as a list of jobs. */
const week = [
  'job,readings,job_file,defects,aim',
  'meridew,../sound-saloon/readings.csv,../sound-saloon/job.json,../sound-saloon/defects.csv,',
  'quillon,../older-coupe/readings.csv,../older-coupe/job.json,,',
  'pipkin,../plastic-bumpers/readings.tsv,../plastic-bumpers/job.json,,enhance',
];

/** The sound saloon again, by an owner who knows more of it. */
const knownHistory = {
  schema: 'leastcut/job/1',
  vehicle: { id: 'FH-1042', make: 'Orrindale', year: 1988 },
  template: 'saloon',
  finish: 'clear-over-base',
  taken_um: 0,
  film_record: 'film-record.json',
  panels: {
    bonnet: { clear_um: { value: 46, sd: 2 } },
    'left front wing': { painted_days_ago: 30 },
    'right front wing': { galvanised: true, taken_um: 'unknown' },
    'boot lid': { finish: 'matte' },
    roof: { covered: true },
    'front bumper': { substrate: 'steel' },
    'rear bumper': { substrate: 'steel' },
  },
};

const filmRecord = {
  schema: 'leastcut/film-record/1',
  vehicle: 'FH-1042',
  visits: [
    {
      date: '2023-04-11',
      panels: [
        { panel: 'front left door', taken_um: 3.1, taken_sd_um: 0.9 },
        { panel: 'rear left door', taken_um: 2.8, taken_sd_um: 0.9 },
      ],
    },
    {
      date: '2025-09-02',
      panels: [{ panel: 'front left door', taken_um: 2.4, taken_sd_um: 0.9 }],
    },
  ],
};

/** What eight jobs of the workshop took against their estimates, two of them stage by stage. */
const hours = lines([
  'job,stage,estimated_min,actual_min,date',
  'FH-0981,,620,700,2025-10-07',
  'FH-0990,,1150,1240,2025-11-03',
  'FH-1003,,540,660,2025-12-01',
  'FH-1009,,890,980,2026-01-12',
  'FH-1017,,1310,1560,2026-02-09',
  'FH-1024,,700,745,2026-02-23',
  'FH-1031,clay,42,55,2026-03-09',
  'FH-1031,cut,430,505,2026-03-09',
  'FH-1031,finish,150,160,2026-03-10',
  'FH-1036,clay,40,58,2026-03-16',
  'FH-1036,cut,380,400,2026-03-16',
  'FH-1036,finish,140,170,2026-03-17',
]);

/** Two trials on the boot lid of the older coupé: one too mild, one that dusted and did not clear. */
const testSpots = lines([
  'spot,panel,machine,pad,product,sets,mark,before_um,after_um,defect,cleared_pct,haze_grade,colour_on_pad,panel_c,note',
  'A,boot lid,da,foam-soft,medium,1,1,117.2,116.9,swirl marks,20,0,no,27,',
  'A,boot lid,da,foam-soft,medium,1,2,114.6,115.1,swirl marks,20,0,no,27,',
  'A,boot lid,da,foam-soft,medium,1,3,116.0,115.4,swirl marks,20,0,no,28,',
  'A,boot lid,da,foam-soft,medium,1,4,113.9,113.2,swirl marks,20,0,no,28,',
  'A,boot lid,da,foam-soft,medium,1,5,115.5,115.8,swirl marks,20,0,no,29,',
  'B,boot lid,da,foam-medium,medium,2,1,115.1,114.0,swirl marks,45,1,no,31,',
  'B,boot lid,da,foam-medium,medium,2,2,116.4,114.6,swirl marks,45,1,no,31,',
  'B,boot lid,da,foam-medium,medium,2,3,112.8,112.9,swirl marks,45,1,no,32,',
  'B,boot lid,da,foam-medium,medium,2,4,114.9,113.1,swirl marks,45,1,no,33,',
  'B,boot lid,da,foam-medium,medium,2,5,117.0,116.2,swirl marks,45,1,no,34,',
  'B,boot lid,da,foam-medium,medium,2,6,115.8,114.7,swirl marks,45,1,no,34,dusting a little',
]);

/** Exports as they come back from spreadsheets and printouts; the page of the samples says why each. */
const spoiled: Readonly<Record<string, string>> = {
  'thousands.csv': 'panel;point;reading_um\nbonnet;1;1.234\nroof;1;118\n',
  'dates.csv': 'panel,point,reading_mil\nbonnet,1,04-May\nroof,1,4.6\n',
  'no-unit.csv': 'panel,point,reading\nbonnet,1,112.4\nroof,1,121.3\n',
  'wrong-mean.csv': 'panel,1,2,3,unit,mean\nbonnet,112,109,115,µm,121\nroof,121,119,119,µm,119.7\n',
  'unclosed-quote.csv': 'panel,point,reading_um,note\nbonnet,1,112.4,"chip\nroof,1,121.3,\n',
  'printout.csv': `Inspection of FH-1042;;
Unit: µm;;

Panel;Point;Thickness
Bonnet;1;112,4
Bonnet;2;OL
Bonnet;3;109,8
Mean;;111,1
Roof;1;121,3
Roof;2;---
`,
};

/** Text by path from the top of the project. */
export function sampleFiles(): ReadonlyMap<string, string> {
  const made = samples();
  const inFolders = made.flatMap(({ folder, files }) =>
    Object.entries(files).map(([name, text]) => [`samples/${folder}/${name}`, text] as const),
  );
  const truth = Object.fromEntries(made.map(({ folder, car }) => [folder, carTruth(car)]));
  return new Map([
    ...inFolders,
    ['samples/older-coupe/spots.csv', testSpots],
    ['samples/shop.json', json(shop)],
    ['samples/two-door.json', json(twoDoor)],
    ['samples/gauge-checks.csv', gaugeChecks()],
    ['samples/own-things.json', json(ownThings)],
    ['samples/known-history.json', json(knownHistory)],
    ['samples/week/jobs.csv', lines(week)],
    ['samples/film-record.json', json(filmRecord)],
    ['samples/hours.csv', hours],
    ['samples/rates.json', shopRates()],
    ...Object.entries(classFiles()).map(([name, text]) => [`samples/class/${name}`, text] as const),
    ...Object.entries(spoiled).map(([name, text]) => [`samples/spoiled/${name}`, text] as const),
    ['test/samples/truth.json', `${JSON.stringify(truth, null, 2)}\n`],
  ]);
}

const carTruth = ({ seed, gauge, panels }: InventedCar) => ({
  seed,
  gauge: { gain: gauge.gain, offset_um: gauge.offset },
  panels: Object.fromEntries(panels.map((truth) => [truth.panel, panelTruth(truth)])),
});

const panelTruth = ({ condition, clear, under, sd, local }: PanelTruth) => ({
  condition,
  clear_mean_um: clear,
  under_mean_um: under,
  sd_um: sd,
  ...(local.length === 0
    ? {}
    : { local: local.map(({ point, layer, by }) => ({ point, layer, by_um: by })) }),
});
