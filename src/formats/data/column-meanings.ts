/**
 * What columns of csv mean whose name is no word of the glossary and no key of a settings file. A column
 * that holds what a key of the record holds is explained as that key is.
 */
import { recordKeyMeanings } from './record-key-meanings.ts';

const asInRecord = [
  'against_plan',
  'aimed_pct',
  'allowed_um',
  'amount_minor',
  'baseline_um',
  'budget_left_um',
  'compared_by',
  'condition_sure',
  'conformance_prob',
  'currency_digits',
  'curved',
  'difference_um',
  'exit',
  'expected_pct',
  'file',
  'gained',
  'if_word_holds_um',
  'mark_pct',
  'max_um',
  'median_um',
  'min_um',
  'n_after',
  'n_before',
  'n_pairs',
  'n_points',
  'n_readings',
  'operator',
  'overrun',
  'p50_h',
  'p80_h',
  'per',
  'permitted_um',
  'place',
  'planned_sets',
  'quantity',
  'reading_um',
  'reference_um',
  'removal_high_um',
  'removal_low_um',
  'residual_um',
  'seen_surely_um',
  'seq',
  'shared_points',
  'subtotal_minor',
  'total_minor',
  'used_up',
  'verdict_because',
  'repeatability_um',
  'worked_sets',
] as const;

const own: Readonly<Record<string, string>> = {
  also: 'What else is true of the panel besides its condition, such as “thin”; several with blanks between.',
  bias_um:
    'How much the trainee reads more than the reference over the whole car, in µm; empty where fewer than three panels show it.',
  check: 'Whether the shim was read before the work or after it.',
  clear_sd_um: 'Standard deviation of the clear on the thinnest part of the panel, in µm.',
  clear_um:
    'The clear that is taken to lie on the thinnest part of the panel, in µm; after work, what is left of it.',
  command: 'What was done with the job: survey, plan or quote.',
  cost_minor:
    'What the packs to buy cost without tax, in the least unit of the currency; empty where nobody knows how many.',
  date: 'The day of the readings, as their file writes it; empty where it does not.',
  error: 'Of a job that is not done, the first thing that is wrong.',
  evidence: 'What the condition of the panel rests on.',
  job: 'The name of the job in its list.',
  jobs: 'How many jobs of the list use it.',
  kind: 'What the quote is: an estimate, which may change, or a quotation, a fixed offer.',
  least_p50_h:
    'Of the aims side by side, the least of the hours that half of such jobs take at most.',
  least_total: 'Of the aims side by side, the least total, tax and all, in the currency itself.',
  least_total_minor: 'The same least total in the least unit of the currency.',
  line: 'What the line of the quote is: labour, material, fixed, discount, or minimum (up to the least that a job costs).',
  line_tax_minor: 'The tax of the line, in the least unit of the currency.',
  material: 'What is to be bought or washed; of a job that was left out, that it was, and why.',
  mean_um: 'Mean of the points, or of the readings of a shim, in µm.',
  most_p80_h:
    'Of the aims side by side, the most of the hours that eight of ten such jobs take at most.',
  most_total: 'Of the aims side by side, the highest total, tax and all, in the currency itself.',
  most_total_minor: 'The same highest total in the least unit of the currency.',
  n: 'How many points were read, or how often a shim was.',
  needed: 'How much of it must lie ready for the jobs, in its unit.',
  one_more_um: 'What one more set takes off, the middle of it, in µm.',
  otherwise:
    'What the panel would be on the other side of its line; empty where it is not near one.',
  pack_price_minor: 'The price of a pack without tax, in the least unit of the currency.',
  packs_to_buy:
    'Packs to buy so that stock and packs cover the jobs; empty where nobody says what is on the shelf.',
  planned_um: 'What the plan foretold to come off, the middle of it, in µm; empty without a plan.',
  removal_um: 'What the plan takes off the panel, the middle of it, in µm.',
  removed_high_um: 'Upper end of the 95 % interval of what came off, in µm.',
  removed_low_um: 'Lower end of the 95 % interval of what came off, in µm.',
  removed_um:
    'What came off the panel by the readings before and after, the middle of it, in µm; empty where it cannot be told.',
  reasons:
    'What the survey falls short in, by its codes with blanks between; explain says what each is.',
  repeat: 'Which reading it is at its point, counted from 1.',
  score:
    'Whether the panel is scored by z or by z′: z where the same marked points were read and the reference is known well enough; z-prime allows besides for what the comparison is uncertain by.',
  sd_um: 'Standard deviation of the points, in µm; empty from one point.',
  shop: 'The shop whose price list the row goes by, as its file calls it.',
  status:
    'Of a job: done, refused (what was given cannot be used) or failed. On a list of what to buy: buy, in-stock, no-stock-given, not-on-price-list, wash, counted-at (the aim that jobs are counted at), or job-left-out.',
  stock: 'What is on the shelf, in the unit of the row; empty where nobody says.',
  tax_minor: 'The tax of the whole quote, in the least unit of the currency.',
  time: 'When the reading was taken, as its file writes it.',
  time_min: 'Machine time of all steps on the panel, in minutes.',
  trainee_verdict:
    'The verdict on the trainee’s survey as a whole; that on the panel is in the column verdict.',
  u: 'How far across its panel the point lies, 0 front or left to 1, as its file writes it.',
  unit: 'The unit that the amounts of the row are in.',
  v: 'How far down its panel the point lies, 0 top to 1 bottom, as its file writes it.',
  worked_um:
    'What the sets that were worked were to take, the middle of it, in µm; empty without a plan.',
};

export const columnMeanings: Readonly<Record<string, string>> = {
  ...Object.fromEntries(
    asInRecord.flatMap((name) => {
      const meaning = recordKeyMeanings[name];
      return meaning === undefined ? [] : [[name, meaning]];
    }),
  ),
  ...own,
};
