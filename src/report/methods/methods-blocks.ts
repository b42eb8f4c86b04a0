/** What the shop works with, as pages. */
import { figure, shown } from '../../base/rounding.ts';
import { unitName } from '../../base/sentence.ts';
import type { Machine, Pad, Product } from '../../correction/removal/catalogue.ts';
import type { MethodChain, SkinHeat } from '../../correction/removal/method.ts';
import type { MethodNumber } from '../../tasks/methods/method-numbers.ts';
import type { MethodList, ShownMethod } from '../../tasks/methods/methods.ts';
import type { RatesReport } from '../../tasks/methods/rates-report.ts';
import type { Assumption } from '../../tasks/settings/assumption.ts';
import { type Block, type Column, cell, gap, list, paragraph, title } from '../model.ts';
import type { ShowUnit } from '../survey/film-table.ts';
import { counted } from '../words.ts';
import {
  basisOf,
  type ChainLine,
  chainLines,
  filesBehind,
  fromText,
  machineLines,
  motionText,
  rangeText,
  stagesText,
} from './method-words.ts';
import { observationTable, ratesBlocks } from './rates-blocks.ts';

const column = (name: string, align: Column['align'] = 'left'): Column => ({ title: name, align });
const right = (name: string): Column => column(name, 'right');

export function methodListBlocks(
  methods: MethodList,
  assumptions: readonly Assumption[],
  unit: ShowUnit,
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
    ...assumedLine(assumptions),
    paragraph(null, 'leastcut methods show with one of the ids says how its numbers come about.'),
  ];
}

/** What the own rates rest on stands with them. */
function assumedLine(assumptions: readonly Assumption[]): readonly Block[] {
  const others = assumptions.filter(({ code }) => code !== 'rates');
  return others.length === 0
    ? []
    : [paragraph('Assumed', `${others.map(({ text }) => text).join('; ')}.`)];
}

const rangeLegend = (unit: ShowUnit): string =>
  `${unitName(unit)} a set: nine cases of ten lie within, over paints as they come. min: minutes of one set on one section, machine running. Mildest first.`;

const machineTable = (machines: readonly Machine[]): Block => ({
  kind: 'table',
  columns: [
    column('machine'),
    column('what it is'),
    column('motion'),
    right('pad mm'),
    right('force N'),
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
  columns: [column(kind), column('what it is'), right('factor'), right('haze'), column('stages')],
  rows: things.map(({ id, name, factor, haze, stages }) => [
    cell(id),
    cell(name),
    cell(figure(factor)),
    cell(figure(haze)),
    cell(stagesText(stages)),
  ]),
});

const combinationTable = (combinations: readonly MethodChain[], unit: ShowUnit): Block => ({
  kind: 'table',
  columns: [
    column('combination'),
    right(`${unitName(unit)} a set`),
    right('min'),
    right('haze'),
    column('stages'),
    column('basis'),
  ],
  rows: combinations.map((chain) => [
    cell(chain.combination.id),
    cell(rangeText(chain.rate, unit)),
    cell(shown(chain.sectionMinutes, 1)),
    cell(figure(chain.combination.haze)),
    cell(stagesText(chain.stages)),
    cell(basisText(chain)),
  ]),
});

/** With how many observations it was learned from. */
function basisText(chain: MethodChain): string {
  const observations = chain.learned?.observations ?? 0;
  return observations === 0 ? basisOf(chain) : `${basisOf(chain)} (${observations})`;
}

/** One thing with everything behind it. */
export function shownMethodBlocks(
  method: ShownMethod,
  unit: ShowUnit,
  rates: RatesReport | null = null,
): readonly Block[] {
  return [
    title(method.name === method.id ? method.id : `${method.id}: ${method.name}`),
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

type ShownCombination = Extract<ShownMethod, { kind: 'combination' }>;

function combinationBlocks(
  { chain, measuredAt }: ShownCombination,
  unit: ShowUnit,
  rates: RatesReport | null,
): readonly Block[] {
  const { rate, derived, own, combination, stages } = chain;
  const measured =
    own === null
      ? []
      : [
          paragraph(
            'Measured by the shop',
            `${rangeText(own.range, unit)} ${unitName(unit)} a set${measuredAt === null ? '' : ` (${measuredAt})`}${own.note === undefined ? '' : `, ${own.note}`}; reckoned it would be ${rangeText(derived, unit)}. ${rates === null ? 'What was measured counts.' : 'From there the own rates start.'}`,
          ),
        ];
  const uses = stages.length === 0 ? 'serves no stage' : `serves to ${stages.join(', ')}`;
  return [
    paragraph(
      null,
      `Takes ${rangeText(rate, unit)} ${unitName(unit)} a set in nine cases of ten; ${shown(chain.sectionMinutes, 1)} min a section, ${shown(chain.minutesPerSquareMetre, 1)} min/m². Leaves haze of grade ${figure(combination.haze)}; ${uses}.`,
    ),
    ...measured,
    ...(rates === null ? [] : learnedBlocks(chain, rates, unit)),
  ];
}

function learnedBlocks(
  { learned, derived, combination }: MethodChain,
  rates: RatesReport,
  unit: ShowUnit,
): readonly Block[] {
  if (learned === null || learned.observations === 0) {
    const text = `none of the observations in ${rates.name} is of this combination; they move it as far as it shares its machine, pad or product with others, and by the paint that comes here. Reckoned it would be ${rangeText(derived, unit)}.`;
    return [paragraph('Not observed', text), ...ratesBlocks(rates, unit)];
  }
  const { range, observations, vehicles } = learned;
  const text = `${rangeText(range, unit)} ${unitName(unit)} a set, from ${counted(observations, 'observation')} on ${counted(vehicles, 'vehicle')}; reckoned it would be ${rangeText(derived, unit)}.`;
  return [
    paragraph('Learned', text),
    ...ratesBlocks(rates, unit),
    gap,
    ...observationTable(rates, combination.id, unit),
  ];
}

/** Which files the lines are of. */
const fileLine = (numbers: readonly MethodNumber[]): readonly Block[] => {
  const files = filesBehind(numbers);
  return files.length === 0 ? [] : [paragraph('Lines', files.join(', '))];
};

const numberTable = (numbers: readonly MethodNumber[]): Block => ({
  kind: 'table',
  columns: [column('setting'), right('value'), column('unit'), column('basis'), column('from')],
  rows: numbers.map(({ name, value, unit, basis, origin, where }) => [
    cell(name),
    cell(figure(value)),
    cell(unit === '1' ? '' : unit),
    cell(basis),
    cell(fromText({ origin, where })),
  ]),
});

/** What follows, and how warm it gets; a pad or a product alone settles neither. */
function chainBlocks(method: ShownMethod, unit: ShowUnit): readonly Block[] {
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

const chainTable = (lines: readonly ChainLine[], shownIn: ShowUnit): Block => ({
  kind: 'table',
  columns: [column('what follows'), right('value'), column('unit'), column('formula')],
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

const HEAT =
  'Warming by friction in °C, and what the panel reaches. Stand: seconds that the running pad may rest on one spot before it is at the caution.';

const heatTable = (heat: readonly SkinHeat[]): Block => ({
  kind: 'table',
  columns: [
    column('heat'),
    right('one pass'),
    right('one set'),
    right('a step'),
    right('reaches °C'),
    column('verdict'),
    right('stand at most'),
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
  const label = 'To change a number, write it under "numbers" in the shop file';
  return items.length === 0 ? [] : [list(label, items)];
};
