/**
 * What a column of csv means. Most hold a key of the record, and mean what that means in its place
 * (`table-columns.ts`). Here stand those that hold something else, or hold it in another way: by their
 * name, with the table before it where the same name means something else in another.
 */
import { recordMeaning } from './record-meanings.ts';
import { tableColumns } from './table-columns.ts';

export const ownColumnMeanings: Readonly<Record<string, string>> = {
  'batch/aim':
    'The aim that the command, the job or the shop asks for, or else the usual one; its total stands in aim_total where it is among the aims.',
  aim_total:
    'The total of the aim that is asked for, tax and all, in the currency itself; empty without a price.',
  aim_total_minor: 'The same total in the least unit of the currency.',
  further_aim_costs_less:
    'That a further aim costs less than the one that is asked for, by how much and why, in words; empty where none does.',
  aims: 'The aims that are quoted, from the mildest to the strongest, with blanks between.',
  bias_mean_um:
    'How much the trainee reads more than the reference over the whole car, in µm; empty where fewer than three panels show it.',
  clear_um:
    'The clear that is left on the thinnest part of the panel, in µm, the middle of it; empty where the total tells nothing of it.',
  cost_minor:
    'What the packs to buy cost without tax, in the least unit of the currency: to_buy times price_minor. Empty where nobody knows how many.',
  error: 'Of a job that is not done, the first thing that is wrong, in words; empty of any other.',
  error_code:
    'Of a job that is not done, the first thing that is wrong, by its code; empty of any other.',
  evidence: 'What the condition of the panel rests on, by its codes with blanks between.',
  evidence_text: 'What the condition of the panel rests on, in words.',
  if_otherwise_condition:
    'What the panel would be on the other side of its line; empty where it is not near one.',
  if_word_holds_um:
    'What might go if the condition of the panel was settled, in µm; budget_um is what to work to until then. Empty where it is not near a line.',
  largest_risk_prob: 'The highest risk of a panel that is worked, 0 to 1; empty where none is.',
  least_budget_um: 'The least that may go from a panel that was read, in µm; empty where none was.',
  least_expected_pct:
    'The least share of the marks that goes on a panel that is worked, in per cent; empty where none is.',
  least_time_p50_h:
    'Of the aims side by side, the least of the hours that half of such jobs take at most.',
  least_total: 'Of the aims side by side, the least total, tax and all, in the currency itself.',
  least_total_minor: 'The same least total in the least unit of the currency.',
  most_time_p80_h:
    'Of the aims side by side, the most of the hours that eight of ten such jobs take at most.',
  most_total: 'Of the aims side by side, the highest total, tax and all, in the currency itself.',
  most_total_minor: 'The same highest total in the least unit of the currency.',
  n_exclusions: 'How many things the quote does not promise.',
  n_panels: 'How many panels it is about.',
  n_warnings:
    'How many warnings the job has, of its readings and of its files: they stand in its record, and are told where it is run alone.',
  n_panels_read: 'How many of the panels were read.',
  n_panels_worked: 'How many of the panels are worked.',
  overrun:
    'What of the work went too far, by its codes with blanks between; empty where all was kept.',
  planned_um: 'What the plan foretold to come off, the middle of it, in µm; empty without a plan.',
  'plan/reasons': 'Why the verdict is what it is, by its codes with blanks between.',
  'compare/reasons': 'Why the verdict is what it is, by its codes with blanks between.',
  'grade/reasons':
    'What the survey falls short in, by its codes with blanks between; explain says what each is.',
  reasons_text: 'Why the verdict is what it is, in words.',
  removal_um: 'What the plan takes off the panel, the middle of it, in µm.',
  removal_low_um: 'What comes off at least, in nineteen cases of twenty, in µm.',
  removal_high_um: 'What comes off at most, in nineteen cases of twenty, in µm.',
  removed_um:
    'What came off the panel by the readings before and after, the middle of it, in µm; empty where it cannot be told.',
  removed_low_um: 'Lower end of the 95 % interval of what came off, in µm.',
  removed_high_um: 'Upper end of the 95 % interval of what came off, in µm.',
  'plan/steps':
    'What to do, in order: machine/pad/product and how many sets of it; empty where the panel is left alone.',
  'plan/time_min': 'Machine time of all steps on the panel, in minutes.',
  'batch/thinnest_um':
    'The thinnest credible film of the whole car, in µm; empty where too little was read.',
  trainee_verdict:
    'The verdict on the trainee’s survey as a whole; that on the panel is in the column verdict.',
  worked_um:
    'What the sets that were worked were to take, the middle of it, in µm; empty without a plan.',
  'template sheet/repeat': 'Which reading of the point is to stand there, counted from 1.',
  'template sheet/reading_um': 'Empty, for the reading to be typed in, in µm.',
  'template sheet/note': 'Empty, for a note.',
  'batch/vehicle': 'Which vehicle it is; empty where nobody says.',
  'batch/template': 'The template that its panels are named by; empty where there is no result.',
  'batch/kind': 'What the quote is: an estimate, which may change, or a quotation, a fixed offer.',
  'batch/currency': 'The currency by its three letters (ISO 4217); empty without prices.',
  'batch/currency_digits':
    'How many digits of an amount stand after the point; empty without prices.',
  'batch/time_p50_h': 'Hours of the correction that half of such jobs take at most.',
  'batch/time_p80_h': 'Hours of the correction that eight of ten such jobs take at most.',

  // What to buy for all jobs together.
  'batch --reorder/status':
    'On a list of what to buy: buy, in-stock, no-stock-given, not-on-price-list, wash, counted-at (the aim that jobs are counted at), or job-left-out.',
  'batch --reorder/id':
    'The material by the id of the price list; of other rows what they are about.',
  'batch --reorder/material':
    'What is to be bought or washed; of a job that was left out, that it was, and why.',
  'batch --reorder/unit': 'The unit that the amounts of the row are in.',
  'batch --reorder/quantity': 'How much of it must lie ready for the jobs, in its unit.',
  'batch --reorder/used_up': 'What is gone of it after the jobs, in its unit.',
  'batch --reorder/stock': 'What is on the shelf, in the unit of the row; empty where nobody says.',
  'batch --reorder/pack': 'What a pack holds, in the unit of the row; empty where nobody says.',
  'batch --reorder/to_buy':
    'Packs to buy so that stock and packs cover the jobs; empty where nobody says what is on the shelf.',
  'batch --reorder/price_minor':
    'The price of a pack without tax, in the least unit of the currency; where the prices of the list hold their tax it is taken out of each pack, to the nearest unit. Empty where nobody says.',
  'batch --reorder/currency': 'The currency by its three letters (ISO 4217).',
  'batch --reorder/jobs': 'How many jobs of the list use it.',
  'batch --reorder/shop': 'The shop whose price list the row goes by, as its file calls it.',
};

/** The command that writes a table. */
export const commandOf = (table: string): string => table.split(' ')[0] ?? '';

const ownMeaning = (table: string, column: string): string | undefined => {
  const names = [`${table}/${column}`, `${commandOf(table)}/${column}`, column];
  const name = names.find((one) => Object.hasOwn(ownColumnMeanings, one));
  return name === undefined ? undefined : ownColumnMeanings[name];
};

/** One that means what its key of the record does, under its name, is explained as that key. */
export type ColumnMeaning = { readonly meaning: string; readonly isKey: boolean };

export function columnMeaning(table: string, column: string): ColumnMeaning | undefined {
  const own = ownMeaning(table, column);
  if (own !== undefined) return { meaning: own, isKey: false };
  const path = tableColumns[table]?.[column]?.split('.');
  const meaning = path && recordMeaning(commandOf(table), path)?.meaning;
  if (path === undefined || meaning === undefined) return undefined;
  return { meaning, isKey: path.at(-1)?.replace('[]', '') === column };
}
