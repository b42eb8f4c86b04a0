/** A batch as rows for a spreadsheet: a row a job, with the few figures that are looked at first. */
import type { DataCell, MachineRecord } from '../model.ts';
import { plainAmount } from '../quote/money-text.ts';
import { furtherAimCostsLess } from './further-aim.ts';
import { at, list, plain } from './record-paths.ts';

type Figures = readonly {
  readonly name: string;
  readonly of: (result: MachineRecord) => DataCell;
}[];

const numbers = (values: readonly unknown[]): readonly number[] =>
  values.filter((value): value is number => typeof value === 'number');

const leastOf = (values: readonly unknown[]): DataCell => {
  const own = numbers(values);
  return own.length === 0 ? null : Math.min(...own);
};
const mostOf = (values: readonly unknown[]): DataCell => {
  const own = numbers(values);
  return own.length === 0 ? null : Math.max(...own);
};

const panels = (result: MachineRecord) => list(result, 'panels');
const steps = (panel: MachineRecord) => [
  ...list(panel, 'steps'),
  ...list(panel, 'zones').flatMap((zone) => list(zone, 'steps')),
];
const worked = (result: MachineRecord) => panels(result).filter((panel) => steps(panel).length > 0);

const surveyFigures: Figures = [
  { name: 'n_panels', of: (result) => panels(result).length },
  {
    name: 'n_panels_read',
    of: (result) => panels(result).filter((panel) => at(panel, 'mean_um') !== null).length,
  },
  {
    name: 'thinnest_um',
    of: (result) => leastOf(panels(result).map((panel) => at(panel, 'thinnest_um'))),
  },
  {
    name: 'least_budget_um',
    of: (result) =>
      leastOf(
        panels(result)
          .filter((panel) => at(panel, 'mean_um') !== null)
          .map((panel) => at(panel, 'budget_um')),
      ),
  },
];

const planFigures: Figures = [
  { name: 'n_panels', of: (result) => panels(result).length },
  { name: 'n_panels_worked', of: (result) => worked(result).length },
  {
    name: 'least_expected_pct',
    of: (result) => leastOf(worked(result).map((panel) => at(panel, 'correction', 'expected_pct'))),
  },
  {
    name: 'largest_risk_prob',
    of: (result) => mostOf(worked(result).map((panel) => at(panel, 'risk_prob'))),
  },
  { name: 'time_p50_h', of: (result) => plain(at(result, 'time', 'p50_h')) },
  { name: 'time_p80_h', of: (result) => plain(at(result, 'time', 'p80_h')) },
];

const options = (result: MachineRecord) => list(result, 'options');

const totals = (result: MachineRecord) =>
  options(result).map((option) => at(option, 'total_minor'));

/** As a spreadsheet adds it up, with every digit that the currency has: 118600 pence are 1186.00 pounds. */
function inCurrency(result: MachineRecord, minor: DataCell): DataCell {
  const digits = at(result, 'currency_digits');
  return typeof minor === 'number' && typeof digits === 'number'
    ? plainAmount(BigInt(minor), { digits })
    : null;
}

/** A share to clear is one word: 70%. */
const aimWord = (from: MachineRecord): string => String(at(from, 'aim')).replace(/\s/, '');

/** Of the aim that the shop, the job or the command asks for; none where it is not among those side by side. */
const totalOfAim = (result: MachineRecord): DataCell => {
  const asked = options(result).find((option) => at(option, 'aim') === at(result, 'aim'));
  return asked === undefined ? null : plain(at(asked, 'total_minor'));
};

/** Of the aims side by side, the least and the most, and the one that is asked for. */
const quoteFigures: Figures = [
  { name: 'kind', of: (result) => plain(at(result, 'kind')) },
  {
    name: 'aims',
    of: (result) => options(result).map(aimWord).join(' '),
  },
  { name: 'currency', of: (result) => plain(at(result, 'currency')) },
  { name: 'currency_digits', of: (result) => plain(at(result, 'currency_digits')) },
  {
    name: 'least_total_minor',
    of: (result) => leastOf(totals(result)),
  },
  {
    name: 'most_total_minor',
    of: (result) => mostOf(totals(result)),
  },
  {
    name: 'least_total',
    of: (result) => inCurrency(result, leastOf(totals(result))),
  },
  {
    name: 'most_total',
    of: (result) => inCurrency(result, mostOf(totals(result))),
  },
  { name: 'aim', of: aimWord },
  { name: 'aim_total_minor', of: totalOfAim },
  { name: 'aim_total', of: (result) => inCurrency(result, totalOfAim(result)) },
  { name: 'further_aim_costs_less', of: furtherAimCostsLess },
  {
    name: 'least_time_p50_h',
    of: (result) => leastOf(options(result).map((option) => at(option, 'time', 'p50_h'))),
  },
  {
    name: 'most_time_p80_h',
    of: (result) => mostOf(options(result).map((option) => at(option, 'time', 'p80_h'))),
  },
  { name: 'n_exclusions', of: (result) => list(result, 'exclusions').length },
];

const figuresOf: Readonly<Record<string, Figures>> = {
  survey: surveyFigures,
  plan: planFigures,
  quote: quoteFigures,
};

const jobColumns: readonly string[] = ['job', 'seq', 'command', 'status', 'exit'];

/** The template may have been guessed, for each vehicle by itself. */
const resultColumns: readonly string[] = ['vehicle', 'template'];

export const summaryColumns = (command: string): readonly string[] => [
  ...jobColumns,
  ...resultColumns,
  ...(figuresOf[command] ?? []).map(({ name }) => name),
  'n_warnings',
  'error_code',
  'error',
];

/** The row of a job, from its record `leastcut/batch/1`. */
export function summaryRow(command: string, record: MachineRecord): readonly DataCell[] {
  const result = at(record, 'result');
  const isResult = typeof result === 'object' && result !== null;
  const told = list(record, 'diagnostics');
  const error = told.find((one) => at(one, 'severity') === 'error');
  return [
    ...jobColumns.map((key) => plain(at(record, key))),
    ...resultColumns.map((key) => (isResult ? plain(at(result, key)) : null)),
    ...(figuresOf[command] ?? []).map(({ of }) => (isResult ? of(result as MachineRecord) : null)),
    told.filter((one) => at(one, 'severity') === 'warning').length,
    plain(at(error, 'code')),
    plain(at(error, 'message')),
  ];
}
