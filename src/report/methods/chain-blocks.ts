/** What follows from the numbers of a combination, step by step, and how warm the paint gets. */
import { figure, shown } from '../../base/rounding.ts';
import { unitName } from '../../base/sentence.ts';
import type { LengthUnit } from '../../base/units.ts';
import type { MethodChain, SkinHeat } from '../../correction/removal/method.ts';
import type { ShownMethod } from '../../tasks/methods/methods.ts';
import { column, figures, measures } from '../columns.ts';
import { joined } from '../facts.ts';
import { type Block, cell, gap, paragraph } from '../model.ts';
import { type ChainLine, chainLines, machineLines, rangeText } from './method-words.ts';

/** What follows, and how warm it gets; a pad or a product alone settles neither. */
export function chainBlocks(method: ShownMethod, unit: LengthUnit): readonly Block[] {
  if (method.kind === 'combination') {
    const { chain } = method;
    const spread = shown(chain.derived.logSd, 2);
    return [
      gap,
      chainTable(chainLines(chain), unit),
      paragraph(
        'Range',
        `median × and ÷ exp(1.645·${spread}), for paints, combinations and steps all differ`,
      ),
      ...heatBlocks(chain),
    ];
  }
  const [any] = method.combinations;
  return method.kind === 'machine' && any !== undefined
    ? [gap, chainTable(machineLines(any), unit), ...heatBlocks(any)]
    : [];
}

const chainTable = (lines: readonly ChainLine[], shownIn: LengthUnit): Block => ({
  kind: 'table',
  columns: [column('what follows'), figures('value'), column('unit'), column('formula')],
  rows: lines.map(({ name, value, unit, formula, range }) => [
    cell(name),
    cell(range === null ? figure(value, 3) : rangeText(range, shownIn)),
    cell(range === null ? unit : unitName(shownIn)),
    cell(formula),
  ]),
});

const heatBlocks = ({ heat }: MethodChain): readonly Block[] => [
  gap,
  heatTable(heat),
  paragraph(null, HEAT),
];

const HEAT = joined(
  [
    'Warming by friction in °C, and what the panel reaches.',
    'Stand: seconds that the running pad may rest on one spot before it is at the caution.',
  ],
  ' ',
);

const heatTable = (heat: readonly SkinHeat[]): Block => ({
  kind: 'table',
  columns: [
    column('heat'),
    { ...figures('one pass'), said: 'one pass warms by', unit: '°C' },
    { ...figures('one set'), said: 'one set warms by', unit: '°C' },
    { ...figures('a step'), said: 'a step warms by', unit: '°C' },
    measures('reaches', '°C'),
    column('verdict'),
    figures('stand at most'),
  ],
  rows: heat.map(({ skin, perPass, perSet, perStep, reached, verdict, standing }) => [
    cell(skin),
    cell(shown(perPass, 1)),
    cell(shown(perSet, 1)),
    cell(shown(perStep, 1)),
    cell(shown(reached, 0)),
    cell(verdict, verdict === 'cool' ? 'plain' : 'binding'),
    cell(standing >= 100 ? 'over 99 s' : `${shown(standing, 0)} s`),
  ]),
});
