/** The head of the page for the owner of the car: what it is, whose, of which day; what nobody says is left to write on. */
import type { QuoteResult } from '../../tasks/quote/quote-vehicle.ts';
import { joined } from '../facts.ts';
import { type Block, paragraph, title } from '../model.ts';
import { holdsText } from './quote-validity.ts';
import { isPriced } from './quote-words.ts';

export const ownerHead = (result: QuoteResult, date: string | null): readonly Block[] => [
  title(headingText(result)),
  ...addressBlocks(result),
  ...dateBlocks(result, date),
];

function headingText(result: QuoteResult): string {
  const what = result.settings.money.kind.value === 'estimate' ? 'Estimate' : 'Quotation';
  const of = carName(result);
  return `${what}: paint correction${of === '' ? '' : ` of ${of}`}`;
}

function carName({ vehicle, identity }: QuoteResult): string {
  const car = [identity?.make, identity?.model, identity?.year].filter(Boolean).join(' ');
  return [car, vehicle].filter(Boolean).join(', ');
}

/** Who offers it, and to whom; of a car that nobody names, by which readings. */
function addressBlocks(result: QuoteResult): readonly Block[] {
  const { money } = result.settings;
  const from = [money.shop, ...(money.prices.value?.contact ?? [])].filter(Boolean).join(', ');
  const to = result.identity?.owner ?? '';
  const readings = carName(result) === '' ? readingNames(result) : '';
  return [
    ...(from === '' ? [] : [paragraph('From', from)]),
    ...(to === '' ? [] : [paragraph('For', to)]),
    ...(readings === '' ? [] : [paragraph('Readings', readings)]),
  ];
}

/** Without their folders, which are the shop's own; what was piped has no name. */
const readingNames = ({ inputs }: QuoteResult): string =>
  inputs
    .filter(({ file, decisions }) => decisions !== null && file !== '-')
    .map(({ file }) => file.replace(/^.*[/\\]/, ''))
    .join(', ');

/** Lines to write on what nobody says: the day, and whose car it is and which. */
function unsaidForm(result: QuoteResult, date: string | null): readonly Block[] {
  const isCarUnnamed = carName(result) === '';
  const fields = [
    ...(isCarUnnamed && (result.identity?.owner ?? '') === '' ? ['For'] : []),
    ...(isCarUnnamed ? ['Car'] : []),
    ...(date === null ? ['Date'] : []),
  ];
  return fields.length === 0 ? [] : [{ kind: 'form', fields }];
}

/** What is offered holds from its day; without a price nothing is. */
function dateBlocks(result: QuoteResult, date: string | null): readonly Block[] {
  const { options, settings } = result;
  const form = unsaidForm(result, date);
  const holds = isPriced(options) ? holdsText(settings.money.prices.value, date) : null;
  const held = holds === null ? [] : [holds];
  if (date !== null) return [...form, paragraph('Date', joined([date, ...held], '; '))];
  return [...form, ...held.map((text) => paragraph('This offer', text))];
}
