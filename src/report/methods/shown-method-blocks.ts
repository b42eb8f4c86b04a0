/** One machine, pad, product or combination with everything behind it, as a page. */

import { counted } from '../../base/counted.ts';
import { figure, shown } from '../../base/rounding.ts';
import { unitName } from '../../base/sentence.ts';
import type { LengthUnit } from '../../base/units.ts';
import type { MethodChain } from '../../correction/removal/method.ts';
import type { MethodNumber } from '../../tasks/methods/method-numbers.ts';
import type { ShownMethod } from '../../tasks/methods/methods.ts';
import type { RatesReport } from '../../tasks/methods/rates-report.ts';
import { column, figures } from '../columns.ts';
import { joined } from '../facts.ts';
import { type Block, cell, gap, list, paragraph, title } from '../model.ts';
import { chainBlocks } from './chain-blocks.ts';
import { combinationTable, rangeLegend } from './combination-table.ts';
import { filesBehind, fromText, rangeText } from './method-words.ts';
import { observationTable, ratesBlocks } from './rates-blocks.ts';

/** One thing with everything behind it. */
export function shownMethodBlocks(
  method: ShownMethod,
  unit: LengthUnit,
  rates: RatesReport | null = null,
): readonly Block[] {
  return [
    title(headingOf(method)),
    ...(method.owned ? [] : [paragraph(null, 'Built in; this shop does not list it as its own.')]),
    ...(method.kind === 'combination' ? combinationBlocks(method, unit, rates) : []),
    gap,
    numberTable(method.numbers),
    ...fileLine(method.numbers),
    ...chainBlocks(method, unit),
    ...(method.kind === 'combination' ? comparison(method) : []),
    ...sourceList(method.numbers),
    ...changeList(method.numbers),
    ...(method.kind === 'combination' || method.combinations.length === 0
      ? []
      : [
          gap,
          combinationTable(method.combinations, unit),
          gap,
          paragraph(null, rangeLegend(unit)),
        ]),
  ];
}

const headingOf = ({ kind, id, name }: ShownMethod): string => {
  const what = `${kind[0]?.toUpperCase()}${kind.slice(1)} ${id}`;
  return name === id ? what : `${what}: ${name}`;
};

type ShownCombination = Extract<ShownMethod, { kind: 'combination' }>;

function combinationBlocks(
  { chain, measuredAt }: ShownCombination,
  unit: LengthUnit,
  rates: RatesReport | null,
): readonly Block[] {
  const { rate, derived, own, combination, stages } = chain;
  const measured =
    own === null
      ? []
      : [
          paragraph(
            'Measured by the shop',
            joined(
              [
                joined(
                  [
                    `${rangeText(own.range, unit)} ${unitName(unit)} a set${measuredAt === null ? '' : ` (${measuredAt})`}${own.note === undefined ? '' : `, ${own.note}`}`,
                    reckoned(derived, unit),
                  ],
                  '; ',
                  '.',
                ),
                rates === null ? 'What was measured counts.' : 'From there the own rates start.',
              ],
              ' ',
            ),
          ),
        ];
  const uses = stages.length === 0 ? 'serves no stage' : `serves to ${stages.join(', ')}`;
  return [
    paragraph(
      null,
      joined(
        [
          joined(
            [
              `Takes ${rangeText(rate, unit)} ${unitName(unit)} a set in nine cases of ten`,
              `${shown(chain.sectionMinutes, 1)} min a section, ${shown(chain.minutesPerSquareMetre, 1)} min/m²`,
            ],
            '; ',
            '.',
          ),
          joined([`Leaves haze of grade ${figure(combination.haze)}`, uses], '; ', '.'),
        ],
        ' ',
      ),
    ),
    ...measured,
    ...(rates === null ? [] : learnedBlocks(chain, rates, unit)),
  ];
}

function learnedBlocks(
  { learned, derived, combination }: MethodChain,
  rates: RatesReport,
  unit: LengthUnit,
): readonly Block[] {
  if (learned === null || learned.observations === 0) {
    const text = [
      `none of the observations in ${rates.name} is of this combination; they move it as far as it shares its machine, pad or product with others, and by the paint that comes here.`,
      `Reckoned it would be ${rangeText(derived, unit)}.`,
    ];
    return [paragraph('Not observed', joined(text, ' ')), ...ratesBlocks(rates, unit)];
  }
  const { range, observations, vehicles } = learned;
  const text = [
    `${rangeText(range, unit)} ${unitName(unit)} a set, from ${counted(observations, 'observation')} on ${counted(vehicles, 'vehicle')}`,
    reckoned(derived, unit),
  ];
  return [
    paragraph('Learned', joined(text, '; ', '.')),
    ...ratesBlocks(rates, unit),
    gap,
    ...observationTable(rates, combination.id, unit),
  ];
}

/** What it would take by the numbers alone. */
const reckoned = (derived: MethodChain['derived'], unit: LengthUnit): string =>
  `reckoned it would be ${rangeText(derived, unit)}`;

/** Which files the lines are of. */
const fileLine = (numbers: readonly MethodNumber[]): readonly Block[] => {
  const files = filesBehind(numbers);
  return files.length === 0 ? [] : [paragraph('Lines', files.join(', '))];
};

const numberTable = (numbers: readonly MethodNumber[]): Block => ({
  kind: 'table',
  columns: [column('setting'), figures('value'), column('unit'), column('basis'), column('from')],
  rows: numbers.map(({ name, value, unit, basis, origin, where }) => [
    cell(name),
    cell(figure(value)),
    cell(unit === '1' ? '' : unit),
    cell(basis),
    cell(fromText({ origin, where })),
  ]),
});

/** Said from the faster one. */
function comparison({ id, compared }: ShownCombination): readonly Block[] {
  if (compared === null) return [];
  const { times } = compared;
  const [faster, slower, ratio] =
    times >= 1 ? [id, compared.with, times] : [compared.with, id, 1 / times];
  const text = `${faster} takes ${shown(ratio, 2)} times as much film a minute as ${slower}`;
  return [gap, paragraph('Compared', text)];
}

const sourceList = (numbers: readonly MethodNumber[]): readonly Block[] => {
  const items = numbers
    .filter(({ source }) => source !== '')
    .map(({ name, source }) => `${name}: ${source}`);
  return items.length === 0 ? [] : [gap, list('Sources', items)];
};

const changeList = (numbers: readonly MethodNumber[]): readonly Block[] => {
  const items = numbers.flatMap(({ id, value }) => (id === null ? [] : [`"${id}": ${value}`]));
  const label = {
    text: 'To change a number, write it under "numbers" in the shop file',
    short: 'To change a number',
  };
  return items.length === 0 ? [] : [list(label, items)];
};
