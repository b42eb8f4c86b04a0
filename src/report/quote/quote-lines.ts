/** The lines of a quote as people read them: what is alike together, in one order for every aim. */
import { total } from '../../work/money.ts';
import type { LineKind, PricedJob, QuoteLine } from '../../work/price-job.ts';
import type { PriceList } from '../../work/price-list.ts';
import type { Skill } from '../../work/work-model.ts';
import { type Cell, cell } from '../model.ts';
import { amountText, shareText } from './money-text.ts';

const SKILL_WORDS: Readonly<Record<Skill, string>> = {
  wash: 'washing and cleaning the paint',
  survey: 'measuring and inspecting',
  polish: 'polishing',
  interior: 'interior',
  protect: 'protection',
};

/** A row of the table of parts; an amount for each aim, null where the aim has no price. */
type PartRow = {
  readonly kind: LineKind | 'subtotal' | 'tax' | 'total' | 'payable' | 'deposit';
  readonly name: string;
  readonly amounts: readonly (bigint | null)[];
};

type Priced = PricedJob | null;

/** Each part that any of the aims has, then the sums; labour by skill, or in one row. */
export const partCells = (
  priced: readonly Priced[],
  list: PriceList,
  bySkill: boolean,
): readonly (readonly Cell[])[] =>
  partRows(priced, list, bySkill).map(({ kind, name, amounts }) => {
    const tone = kind === 'total' ? 'strong' : 'plain';
    const textOf = (amount: bigint | null): string =>
      amount === null ? '–' : amountText(amount, list.currency);
    return [cell(name, tone), ...amounts.map((amount) => cell(textOf(amount), tone))];
  });

function partRows(
  priced: readonly Priced[],
  list: PriceList,
  bySkill: boolean,
): readonly PartRow[] {
  const keyOf = (line: QuoteLine): string => partOf(line, bySkill);
  const keys = [...new Set(priced.flatMap((one) => (one?.lines ?? []).map(keyOf)))];
  const first = (key: string): QuoteLine | undefined =>
    priced.flatMap((one) => one?.lines ?? []).find((line) => keyOf(line) === key);
  const parts = keys.flatMap((key): readonly PartRow[] => {
    const line = first(key);
    return line === undefined
      ? []
      : [
          {
            kind: line.kind,
            name: nameOf(line, bySkill),
            amounts: priced.map((one) =>
              one === null
                ? null
                : total(
                    one.lines.filter((each) => keyOf(each) === key).map(({ amount }) => amount),
                  ),
            ),
          },
        ];
  });
  return [...parts, ...sums(priced, list)];
}

/** Materials stand together; in records and tables each has its own line. */
const partOf = ({ kind, id }: QuoteLine, bySkill: boolean): string =>
  kind === 'fixed' || (kind === 'labour' && bySkill) ? `${kind} ${id}` : kind;

const nameOf = ({ kind, id, name }: QuoteLine, bySkill: boolean): string => {
  if (kind === 'labour') return bySkill ? SKILL_WORDS[id as Skill] : 'labour';
  return kind === 'material' ? 'materials' : name;
};

function sums(
  priced: readonly Priced[],
  { tax, cashStep, deposit }: PriceList,
): readonly PartRow[] {
  const row = (
    kind: PartRow['kind'],
    name: string,
    amountOf: (one: PricedJob) => bigint | null,
  ): PartRow => ({
    kind,
    name,
    amounts: priced.map((one) => (one === null ? null : amountOf(one))),
  });
  const rates = new Set(
    priced.flatMap((one) => (one?.lines ?? []).map(({ taxShare }) => taxShare)),
  );
  const taxName = rates.size === 1 ? `${tax.name} ${shareText(tax.share)}` : tax.name;
  const taxed = [...rates].some((share) => share > 0n);
  return [
    ...(taxed
      ? [row('subtotal', 'subtotal', (one) => one.subtotal), row('tax', taxName, (one) => one.tax)]
      : []),
    row('total', 'total', (one) => one.total),
    ...(cashStep === null ? [] : [row('payable', 'to pay in cash', (one) => one.payable)]),
    ...(deposit === 0n
      ? []
      : [row('deposit', `deposit ${shareText(deposit)}`, (one) => one.deposit)]),
  ];
}
