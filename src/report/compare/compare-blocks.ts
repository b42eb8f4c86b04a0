/** A comparison as a page: what would show, what came off, what is left, and the word on each panel. */
import { shownFile } from '../../base/file-name.ts';
import { unitName } from '../../base/sentence.ts';
import type { LengthUnit } from '../../base/units.ts';
import type { FilmChange } from '../../film/compare/compare-change.ts';
import type { CompareResult, PanelLeft } from '../../tasks/compare/compare-files.ts';
import { type Block, cell, gap, paragraph, title } from '../model.ts';
import { type ShowUnit, thickness } from '../survey/film-table.ts';
import { assumptionBlocks, type PageOptions } from '../survey/survey-blocks.ts';
import { counted } from '../words.ts';
import { beforeAndAfter } from './compare-drawing.ts';
import { glossBlocks } from './compare-gloss-blocks.ts';
import { planLines } from './compare-plan-lines.ts';
import { notComparedLine, pointLists, pointsLine } from './compare-points-lines.ts';
import { changeTable } from './compare-table.ts';
import { gainedLines, verdictLines } from './compare-verdict-lines.ts';
import { changeText } from './compare-words.ts';

export function compareBlocks(result: CompareResult, options: PageOptions): readonly Block[] {
  const { unit } = options;
  const { panels } = result;
  const compared = panels.filter(({ comparison }) => comparison.change !== null);
  return [
    title(heading(result)),
    ...detectableLine(compared, unit),
    ...(compared.length === 0 ? [] : [paragraph(null, legend(result))]),
    gap,
    ...(compared.length === 0 ? [] : [changeTable(compared, result, unit)]),
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
const legend = ({ worked }: CompareResult): string =>
  `n: pairs, or points before/after. ± holds what came off in 95 cases of 100.${worked === null ? '' : ' As done: planned, for the sets worked.'} May go: after that, as in a survey; a set: one more in the middle. · a pair, ‹ the mean, ┊ nothing.`;

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
