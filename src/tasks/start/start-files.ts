/**
 * A shop file and a job file to start from. JSON has no comments, so each key is a real example that
 * holds the built-in value, and `note` says what may stand there: nothing changes until it is edited.
 * The JSON Schemas of both stand beside them, for editors that check while one types.
 */
import { listAllDefaults } from '../../formats/data/all-defaults.ts';
import { jsonSchemaOf } from '../../formats/json-schemas.ts';
import { correctionModel, workModel } from '../../formats/models.ts';
import { USUAL_MACHINES } from '../settings/shop-catalogue.ts';

export type StartFile = {
  readonly name: string;
  /** What it is for, in a few words. */
  readonly purpose: string;
  readonly text: string;
};

/** A number that a shop is likely to know better, as an example of how any of them is set. */
const EXAMPLE_NUMBER = 'film.earlier.unknown_clear_um';

const exampleNumbers = (): Readonly<Record<string, number>> =>
  Object.fromEntries(
    listAllDefaults().flatMap(({ id, value }) => (id === EXAMPLE_NUMBER ? [[id, value]] : [])),
  );

/** Where an editor finds what a file may hold: written beside it, so that no network is needed. */
const schemaFile = (kind: 'job' | 'shop'): string => `schemas/${kind}.schema.json`;

const shopStart = () => ({
  $schema: `./${schemaFile('shop')}`,
  schema: 'leastcut/shop/1',
  note: [
    'What the workshop has and how it works. Every value but the prices is the built-in one.',
    'Change what is different, take out what is not needed: only schema must stay.',
    'machines, pads, products: what you own. leastcut methods list shows all that is known.',
    'One of your own: { "id": "my-da", "name": "my polisher", "like": "da", "throw_mm": 21 }.',
    'risk_pct: chance, a panel, of too little clear that you accept. policy: standard or strict.',
    'aim: enhance, correct, full, or per cent of the marks to clear.',
    'minutes: how long the small recurring jobs take here.',
    'numbers: any number of the model by its id; leastcut explain lists them with their grounds.',
    'Named leastcut.json, this file is found by itself from its folder and those below.',
  ],
  machines: USUAL_MACHINES,
  pads: correctionModel.pads.map(({ id }) => id),
  products: correctionModel.products.map(({ id }) => id),
  aim: 'correct',
  risk_pct: 5,
  policy: 'standard',
  minutes: {
    wipe_min_per_section: workModel.perSection.wipe,
    pad_cleaning_min_per_section: workModel.perSection.padCleaning,
    setup_min_per_combination: workModel.setUp,
  },
  numbers: exampleNumbers(),
  prices: examplePrices,
});

/** Made up, and marked so: a price list to fill in, of which no quote makes a price. */
const examplePrices = {
  example: true,
  note: [
    'Made-up prices: put yours in, then take example out. Until then a quote has no price.',
    'Amounts are whole numbers of the least unit: pence, cents, yen. 5000 is 50.00 an hour.',
    'labour_minor_per_h: one price, or by skill: wash, survey, polish, interior, protect, other.',
    'materials: packs by id; leastcut methods materials lists every id with its unit.',
    'tax: a preset (uk-vat, au-gst, eu-e-invoice, none), or name, rate_pct, level, rounding.',
    'More: minimum_minor, discount_pct, discount_minor, deposit_pct, validity_days, terms.',
  ],
  currency: 'EUR',
  kind: 'estimate',
  labour_minor_per_h: { polish: 5000, other: 4000 },
  materials: [{ id: 'medium', pack: 1000, unit: 'ml', price_minor: 4000, stock: 0 }],
  markup_pct: 0,
  fixed: [{ name: 'collection and return', price_minor: 2000 }],
  tax: { preset: 'none' },
};

const jobStart = () => ({
  $schema: `./${schemaFile('job')}`,
  schema: 'leastcut/job/1',
  note: [
    'What is known of one vehicle. Every value here is the built-in one: what is not known.',
    'finish: clear-over-base, single-stage-solid, single-stage-metallic, lacquer, matte, unknown.',
    'taken_um: film that earlier work took, in µm; 0 if there never was any; "unknown";',
    '  { "value": 3, "sd": 1 } if that may be off.',
    'galvanised: true if the steel is. covered: true under film or wrap.',
    'painted_days_ago: days since it was painted, if that is not long ago.',
    'clear_um, under_um: the clear, all under it, if measured: 45 or { "value": 45, "sd": 3 }.',
    'hardness: soft, medium, hard, unknown. colour_depth: light or dark.',
    'template: the kind of vehicle; leastcut template list shows them.',
    'film_record: path of the record of earlier visits.',
  ],
  vehicle: {
    note: 'id as in the readings, make, model, year, colour, owner, length_m, width_m, height_m.',
  },
  finish: 'clear-over-base',
  taken_um: 'unknown',
  galvanised: false,
  covered: false,
  hardness: 'unknown',
  colour_depth: 'light',
  panels: {
    bonnet: {
      note: [
        'A panel that differs: any of the keys above, of finish to under_um; substrate:',
        'steel, aluminium, plastic, composite; clear_coat_failure: true if it peels.',
        'Write below this note what differs; without any the panel is as the car.',
      ],
    },
  },
});

export const startFiles = (): readonly StartFile[] => [
  { name: 'shop.json', purpose: 'what the workshop has', text: printed(shopStart()) },
  { name: 'job.json', purpose: 'what is known of one vehicle', text: printed(jobStart()) },
  schemaStart('shop'),
  schemaStart('job'),
];

const schemaStart = (kind: 'job' | 'shop'): StartFile => ({
  name: schemaFile(kind),
  purpose: `what editors know of ${kind}.json`,
  text: `${JSON.stringify(jsonSchemaOf(kind), null, 2)}\n`,
});

const WIDTH = 80;

/** JSON as people write it: what fits on a line stands on one. */
const printed = (value: unknown): string => `${lines(value, '')}\n`;

function lines(value: unknown, indent: string, used = 0): string {
  const flat = flatJson(value);
  const isObject = typeof value === 'object' && value !== null;
  if (!isObject || (indent !== '' && indent.length + used + flat.length < WIDTH)) return flat;
  const inner = `${indent}  `;
  const [open, close] = Array.isArray(value) ? ['[', ']'] : ['{', '}'];
  const entries = Object.entries(value).map(([key, child]) => {
    const name = Array.isArray(value) ? '' : `${JSON.stringify(key)}: `;
    return `${inner}${name}${lines(child, inner, name.length + 1)}`;
  });
  return `${open}\n${entries.join(',\n')}\n${indent}${close}`;
}

function flatJson(value: unknown): string {
  if (Array.isArray(value)) return `[${value.map(flatJson).join(', ')}]`;
  if (typeof value !== 'object' || value === null) return JSON.stringify(value);
  const entries = Object.entries(value).map(
    ([key, child]) => `${JSON.stringify(key)}: ${flatJson(child)}`,
  );
  return entries.length === 0 ? '{}' : `{ ${entries.join(', ')} }`;
}
