/** A comparison as a page: what would show, what came off, what is left, and the word on each panel. */
import { shownFile } from '../../base/file-name.ts';
import { groupBy } from '../../base/group-by.ts';
import { textIn } from '../../base/remark.ts';
import { roundTo } from '../../base/rounding.ts';
import { unitName } from '../../base/sentence.ts';
import { expandedUncertainty } from '../../base/uncertainty.ts';
import { type LengthUnit, MICROMETRES_PER_MIL } from '../../base/units.ts';
import type { GoOnVerdict } from '../../correction/go-on.ts';
import type { FilmChange } from '../../film/compare/compare-change.ts';
import { differencesOf } from '../../film/compare/compare-points.ts';
import type { PanelComparison } from '../../film/compare/compare-surveys.ts';
import type { CompareResult, PanelLeft } from '../../tasks/compare/compare-files.ts';
import type { PartLeft } from '../../tasks/compare/compare-panel.ts';
import {
  type Block,
  type Cell,
  type Column,
  cell,
  gap,
  list,
  paragraph,
  type StripAxis,
  title,
} from '../model.ts';
import { type ShowUnit, thickness } from '../survey/film-table.ts';
import { assumptionBlocks, type PageOptions } from '../survey/survey-blocks.ts';
import { counted } from '../words.ts';
import { beforeAndAfter } from './compare-drawing.ts';
import { glossBlocks } from './compare-gloss-blocks.ts';
import { planLines } from './compare-plan-lines.ts';
import { basisText, notCompared, partNameOf, partsLeft } from './compare-words.ts';

export function compareBlocks(result: CompareResult, options: PageOptions): readonly Block[] {
  const { unit } = options;
  const { panels } = result;
  const compared = panels.filter(({ comparison }) => comparison.change !== null);
  return [
    title(heading(result)),
    ...detectableLine(compared, unit),
    ...(compared.length === 0 ? [] : [paragraph(null, LEGEND)]),
    gap,
    ...(compared.length === 0 ? [] : [changeTable(compared, unit)]),
    gap,
    ...carLine(result, unit),
    ...planLines(result, unit),
    ...verdictLines(compared, unit),
    ...gainedLines(compared, unit),
    ...notComparedLine(result),
    ...(options.verbose ? pointLists(panels) : pointsLine(panels)),
    ...stepsTable(result, unit),
    ...glossBlocks(result.gloss),
    ...assumptionBlocks(result, options),
    ...(options.drawn === true ? beforeAndAfter(result, unit) : []),
  ];
}

/** What the columns of the table mean. */
const LEGEND =
  'n: pairs, or points before/after. ± holds what came off in 95 cases of 100. May go: after that, as in a survey; a set: one more in the middle. · a pair, ‹ the mean, ┊ nothing.';

function heading({ vehicle, before, steps, total }: CompareResult): string {
  const of = vehicle === null ? '' : ` of ${vehicle}`;
  const visits = steps.length > 1 ? `, ${steps.length + 1} visits` : '';
  return `Comparison${of}: ${before.survey.template.name}, ${counted(total.panels.length, 'panel')} read before and after${visits}`;
}

/** What a comparison of this size can show at all, before it shows anything. */
function detectableLine(panels: readonly PanelLeft[], unit: ShowUnit): readonly Block[] {
  const said = (['pairs', 'means'] as const).flatMap((by) => {
    const changes = panels.flatMap(({ comparison }) =>
      comparison.by === by && comparison.change !== null ? [comparison.change] : [],
    );
    if (changes.length === 0) return [];
    const range = (of: (change: FilmChange) => number): string => rangeText(changes.map(of), unit);
    const half = range(({ detectable }) => detectable.half);
    const surely = range(({ detectable }) => detectable.surely);
    const what = by === 'pairs' ? 'At marked points' : 'By means of panels, no point found again,';
    return [
      `${what} a change of ${half} ${unitName(unit)} shows half of the time, one of ${surely} in 95 cases of 100.`,
    ];
  });
  return said.length === 0
    ? [paragraph(null, 'Nothing could be compared.')]
    : [paragraph(null, `${said.join(' ')} Less is unresolved, which is not nothing.`)];
}

function rangeText(values: readonly number[], unit: LengthUnit): string {
  const [low, high] = [Math.min(...values), Math.max(...values)].map((one) => thickness(one, unit));
  return low === high ? `${low}` : `${low}–${high}`;
}

function changeTable(panels: readonly PanelLeft[], unit: ShowUnit): Block {
  const planned = panels.some(({ foretold }) => foretold !== null);
  const film = (title: string): Column => ({ title, align: 'right', unit: unitName(unit) });
  const rows = panels.flatMap((panel) => [
    changeRow(panel, panel.comparison.panel.name, { planned, unit }),
    ...panel.zones.map((zone) =>
      changeRow(zone, `\u00a0\u00a0${zone.comparison.zone} zone`, { planned, unit }),
    ),
  ]);
  return {
    kind: 'table',
    columns: [
      { title: `panel (${unitName(unit)})`, align: 'left' },
      { title: 'n', align: 'right', said: 'points' },
      film('came off'),
      { title: 'seen', align: 'left' },
      ...(planned ? [film('planned')] : []),
      film('may go'),
      film('a set'),
      { title: 'verdict', align: 'left' },
      { ...film(''), align: 'left', said: 'came off at points', axis: commonAxis(panels, unit) },
    ],
    rows,
  };
}

function changeRow(
  part: PartLeft,
  name: string,
  { planned, unit }: { readonly planned: boolean; readonly unit: ShowUnit },
): readonly Cell[] {
  const { comparison, foretold, left, oneMore, verdict } = part;
  const { change, gained, pairs, counts, by } = comparison;
  const value = (one: number | undefined, digits = 1): string =>
    one === undefined ? '–' : thickness(one, unit, digits);
  const count = by === 'pairs' ? `${pairs.length}` : `${counts.before}/${counts.after}`;
  return [
    cell(name),
    cell(count),
    cell(change === null ? '–' : changeText(change, unit), 'strong'),
    cell(gained ? 'gained' : change?.resolved === true ? 'yes' : 'no'),
    ...(planned ? [cell(value(foretold?.removal?.median))] : []),
    cell(value(left?.budget, 2)),
    cell(value(oneMore?.removal.median, 2)),
    cell(verdict, verdict === 'stop' ? 'binding' : 'strong'),
    {
      kind: 'strip',
      values: differencesOf(pairs).map((one) => inUnit(one, unit)),
      marked: change === null ? null : inUnit(change.removed.value, unit),
    },
  ];
}

/** `2.1 ± 0.8`: the mean, and the half-width that holds it with 95 % confidence. */
export const changeText = ({ removed }: FilmChange, unit: ShowUnit): string =>
  `${thickness(removed.value, unit)} ± ${thickness(expandedUncertainty(removed), unit)}`;

/** Differences of readings carry the dust of binary fractions: a chart needs none of it. */
const inUnit = (value: number, unit: ShowUnit): number =>
  roundTo(unit === 'um' ? value : value / MICROMETRES_PER_MIL, 4);

/** From the least difference at a point to the largest, with a line where nothing came off. */
function commonAxis(panels: readonly PanelLeft[], unit: ShowUnit): StripAxis {
  const step = unit === 'um' ? 1 : 0.1;
  const values = panels.flatMap(({ comparison: { pairs, change } }) => [
    ...differencesOf(pairs),
    ...(change === null ? [] : [change.removed.value]),
  ]);
  const whole = (value: number): number => Number((value * step).toPrecision(12));
  return {
    from: whole(Math.floor(inUnit(Math.min(0, ...values), unit) / step)),
    to: whole(Math.ceil(inUnit(Math.max(0, ...values), unit) / step + 0.01)),
    line: 0,
  };
}

function carLine({ total: { car, panels } }: CompareResult, unit: ShowUnit): readonly Block[] {
  if (car === null || panels.length < 2) return [];
  const compared = panels.filter(({ change }) => change !== null).length;
  return [
    paragraph(
      'Car',
      `mean over ${counted(compared, 'panel')}, by area: ${changeText(car, unit)} ${unitName(unit)} came off${car.resolved ? '' : ', unresolved'}.`,
    ),
  ];
}

const WORDS: Readonly<Record<GoOnVerdict, string>> = {
  'go-on': 'Go on',
  stop: 'Stop',
  unresolved: 'Unresolved',
};

/** Each word once for the panels it is of, with what one more set is, or the limit that binds. */
function verdictLines(panels: readonly PanelLeft[], unit: ShowUnit): readonly Block[] {
  const parts = partsLeft(panels);
  const groups = groupBy(parts, (part) => JSON.stringify([part.verdict, groundOf(part, unit)]));
  const order: readonly GoOnVerdict[] = ['go-on', 'stop', 'unresolved'];
  return order.flatMap((verdict) =>
    [...groups.values()].flatMap((group) => {
      const [first] = group;
      if (first === undefined || first.verdict !== verdict) return [];
      const on = group.length === parts.length && group.length > 2 ? 'all panels' : names(group);
      return [paragraph(WORDS[verdict], `${on}: ${groundOf(first, unit)}.`)];
    }),
  );
}

const names = (parts: readonly PartLeft[]): string =>
  parts.map(({ comparison }) => partNameOf(comparison)).join(', ');

function groundOf({ verdict, oneMore, left, comparison }: PartLeft, unit: ShowUnit): string {
  if (oneMore === null) return 'no machine to go on with';
  const kind = oneMore.from === 'mildest' ? ', the mildest of the shop,' : '';
  const set = `one more set of ${oneMore.combination}${kind}`;
  if (verdict === 'go-on') return `${set} keeps every limit`;
  if (verdict === 'stop') {
    if (left !== null && left.budget === 0) return `nothing may go: ${textIn(left.boundBy, unit)}`;
    return `${set} takes more than may go`;
  }
  if (comparison.gained) return 'reads more film than before: first find out why';
  const how = comparison.by === 'pairs' ? 'read more marked points' : 'mark points before the work';
  return `${set} may be too much, and the readings cannot say: ${how}`;
}

function gainedLines(panels: readonly PanelLeft[], unit: ShowUnit): readonly Block[] {
  return panels
    .filter(({ comparison }) => comparison.gained)
    .flatMap(({ comparison, reasons }) =>
      reasons
        .filter(({ code }) => code === 'film-gained')
        .map((reason) => paragraph(comparison.panel.name, textIn(reason, unit))),
    );
}

function notComparedLine({ total }: CompareResult): readonly Block[] {
  const groups = groupBy(notCompared(total), ({ text }) => text);
  return groups.size === 0
    ? []
    : [
        paragraph(
          'Not compared',
          [...groups]
            .map(([text, panels]) => `${panels.map(({ panel }) => panel.name).join(', ')}: ${text}`)
            .join('; ')
            .concat('.'),
        ),
      ];
}

/** Points that were read and went into no pair, counted. */
function pointsLine(panels: readonly PanelLeft[]): readonly Block[] {
  const all = panels.map(({ comparison }) => comparison);
  const paired = all.filter(({ by }) => by === 'pairs');
  const count = (of: (one: PanelComparison) => readonly string[]): number =>
    paired.reduce((sum, one) => sum + of(one).length, 0);
  const edges = all.reduce((sum, { unpaired }) => sum + unpaired.offTheFace.length, 0);
  const said = [
    [count(({ unpaired }) => unpaired.notReadAgain), 'not read again'],
    [count(({ unpaired }) => unpaired.notReadBefore), 'not read before'],
    [count(({ unpaired }) => unpaired.notMarked), 'not marked both times'],
    [edges, 'off the face'],
  ] as const;
  const texts = said.flatMap(([n, text]) => (n === 0 ? [] : [`${counted(n, 'point')} ${text}`]));
  return texts.length === 0 ? [] : [paragraph('Left out', `${texts.join(', ')} (-v: which).`)];
}

/** The same by name. */
function pointLists(panels: readonly PanelLeft[]): readonly Block[] {
  const items = panels.flatMap(({ comparison }) => {
    const { unpaired, panel } = comparison;
    const said = [
      [unpaired.notReadAgain, 'not read again'],
      [unpaired.notReadBefore, 'not read before'],
      [unpaired.notMarked, 'not marked both times'],
      [unpaired.offTheFace, 'off the face'],
    ] as const;
    const texts = said.flatMap(([points, text]) =>
      points.length === 0 ? [] : [`${text} ${points.join(', ')}`],
    );
    return texts.length === 0
      ? []
      : [`${panel.name} (by ${basisText(comparison)}): ${texts.join('; ')}`];
  });
  return items.length === 0 ? [] : [list('Points left out of the pairs', items)];
}

/** A file without its folders: the visits are numbered beside it. */
const shortName = (file: string): string => shownFile(file).split(/[\\/]/).at(-1) ?? file;

/** More than two visits: what came off from each to the next. */
function stepsTable({ steps }: CompareResult, unit: ShowUnit): readonly Block[] {
  if (steps.length < 2) return [];
  return [
    gap,
    {
      kind: 'table',
      columns: [
        { title: 'from visit to visit', align: 'left' },
        { title: 'panels', align: 'right' },
        { title: `came off (${unitName(unit)})`, align: 'right' },
        { title: 'seen on', align: 'right' },
      ],
      rows: steps.map(({ from, to, comparison: { car, panels } }, i) => [
        cell(`${i + 1} to ${i + 2}: ${shortName(from)} to ${shortName(to)}`),
        cell(`${panels.length}`),
        cell(car === null ? '–' : changeText(car, unit), 'strong'),
        cell(`${panels.filter(({ change }) => change?.resolved === true).length}`),
      ]),
    },
    gap,
  ];
}
