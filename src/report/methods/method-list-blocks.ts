/** What the shop works with, as a page: machines, pads, products, and what each combination of them takes. */

import { counted } from '../../base/counted.ts';
import { figure } from '../../base/rounding.ts';
import type { LengthUnit } from '../../base/units.ts';
import type { Machine, Pad, Product } from '../../correction/removal/catalogue.ts';
import type { MethodList } from '../../tasks/methods/methods.ts';
import type { RatesReport } from '../../tasks/methods/rates-report.ts';
import type { Assumption } from '../../tasks/settings/assumption.ts';
import { assumedBlocks } from '../assumption-blocks.ts';
import { column, figures, measures } from '../columns.ts';
import { type Block, cell, gap, paragraph, title } from '../model.ts';
import { combinationTable, rangeLegend } from './combination-table.ts';
import { motionText, stagesText } from './method-words.ts';
import { ratesBlocks } from './rates-blocks.ts';

export function methodListBlocks(
  methods: MethodList,
  assumptions: readonly Assumption[],
  unit: LengthUnit,
  rates: RatesReport | null = null,
): readonly Block[] {
  const { machines, pads, products, combinations, idle } = methods;
  const counts = [
    counted(machines.length, 'machine'),
    counted(pads.length, 'pad'),
    counted(products.length, 'product'),
  ];
  return [
    title(`Methods: ${counts.join(', ')}`),
    machineTable(machines),
    gap,
    thingTable('pad', pads),
    gap,
    thingTable('product', products),
    gap,
    combinationTable(combinations, unit),
    gap,
    paragraph(null, rangeLegend(unit)),
    ...(idle === 0
      ? []
      : [
          paragraph(
            null,
            `Not listed: ${counted(idle, 'combination')} whose pad and product serve no stage together.`,
          ),
        ]),
    ...ratesBlocks(rates, unit),
    ...assumedBlocks(
      assumptions.filter(({ code }) => code !== STANDS_WITH_RATES),
      unit,
    ),
    paragraph(null, 'leastcut methods show with one of the ids says how its numbers come about.'),
  ];
}

/** What the own rates rest on stands with them. */
const STANDS_WITH_RATES = 'rates';

const machineTable = (machines: readonly Machine[]): Block => ({
  kind: 'table',
  columns: [
    column('machine'),
    column('what it is'),
    column('motion'),
    measures('pad', 'mm'),
    measures('force', 'N'),
  ],
  rows: machines.map((machine) => [
    cell(machine.id),
    cell(machine.name),
    cell(motionText(machine)),
    cell(figure(machine.padDiameter)),
    cell(figure(machine.force)),
  ]),
});

const thingTable = (kind: 'pad' | 'product', things: readonly (Pad | Product)[]): Block => ({
  kind: 'table',
  columns: [
    column(kind),
    column('what it is'),
    figures('factor'),
    figures('haze'),
    column('stages'),
  ],
  rows: things.map(({ id, name, factor, haze, stages }) => [
    cell(id),
    cell(name),
    cell(figure(factor)),
    cell(figure(haze)),
    cell(stagesText(stages)),
  ]),
});
