/** A comparison as a page: what came off, whether as planned, who may take one more set, then panel by panel. */

import { counted } from '../../base/counted.ts';
import { unitName } from '../../base/sentence.ts';
import type { LengthUnit } from '../../base/units.ts';
import type { CompareResult } from '../../tasks/compare/compare-files.ts';
import { assumptionBlocks } from '../assumption-blocks.ts';
import { column, figures } from '../columns.ts';
import { type Block, cell, gap, title } from '../model.ts';
import type { PageOptions } from '../page-options.ts';
import { colourFirst } from '../survey/colour-lines.ts';
import { cameOff, legend } from './compare-answer.ts';
import { apartLines } from './compare-apart-lines.ts';
import { beforeAndAfter } from './compare-drawing.ts';
import { glossBlocks } from './compare-gloss-blocks.ts';
import { overrunLines } from './compare-overrun-lines.ts';
import { placesLine, planInDoubt, planLine, planOfMarks, rateLines } from './compare-plan-lines.ts';
import {
  notComparedLine,
  notRecordedLine,
  pointLists,
  pointsLine,
  workedUnreadLine,
} from './compare-points-lines.ts';
import { riseLines } from './compare-rise-lines.ts';
import { shiftLines } from './compare-shift-lines.ts';
import { slipLines } from './compare-slip-lines.ts';
import { swapLines } from './compare-swap-lines.ts';
import { changeTable } from './compare-table.ts';
import {
  gainedLines,
  leftLines,
  mildestLine,
  unknownRiskLine,
  verdictLines,
} from './compare-verdict-lines.ts';
import { changeText, isSeen, shortName } from './compare-words.ts';

export function compareBlocks(result: CompareResult, options: PageOptions): readonly Block[] {
  const { unit } = options;
  const { panels } = result;
  const compared = panels.filter(({ comparison }) => comparison.change !== null);
  const besides = [
    ...rateLines(result),
    ...leftLines(compared, unit),
    ...gainedLines(compared, unit),
    ...notComparedLine(result),
    ...workedUnreadLine(result, unit),
    ...notRecordedLine(result),
    ...(options.verbose ? pointLists(panels) : pointsLine(panels, options)),
  ];
  return [
    title(heading(result)),
    ...slipLines(result, unit),
    ...apartLines(result, unit),
    ...swapLines(result),
    ...riseLines(panels, unit),
    ...colourFirst(result.before.survey.panels),
    ...shiftLines(result, unit),
    ...overrunLines(compared, unit),
    ...planInDoubt(result),
    ...cameOff(result, compared, unit),
    ...planLine(result, unit),
    ...planOfMarks(result),
    ...placesLine(result, unit),
    ...verdictLines(compared, { areAll: hasAll(result), inDoubt: result.shift !== null }, unit),
    ...unknownRiskLine(compared),
    ...mildestLine(compared, result),
    gap,
    ...(compared.length === 0 ? [] : [changeTable(compared, result, unit)]),
    gap,
    ...besides,
    ...(besides.length === 0 ? [] : [gap]),
    ...stepsTable(result, unit),
    ...glossBlocks(result.gloss),
    ...legend(compared, result, unit),
    ...assumptionBlocks(result, options),
    ...(options.drawn === true ? beforeAndAfter(result, unit) : []),
  ];
}

/** Whether every panel that was read is compared, and on the page. */
const hasAll = ({ panels, total }: CompareResult): boolean =>
  panels.length === total.panels.length &&
  total.panels.every(({ change }) => change !== null) &&
  total.onlyBefore.length + total.onlyAfter.length === 0;

function heading({ vehicle, before, steps, total }: CompareResult): string {
  const of = vehicle === null ? '' : ` of ${vehicle}`;
  const visits = steps.length > 1 ? `, ${steps.length + 1} visits` : '';
  return `Comparison${of}: ${before.survey.template.name}, ${counted(total.panels.length, 'panel')} read before and after${visits}`;
}

/** More than two visits: what came off from each to the next. */
function stepsTable({ steps }: CompareResult, unit: LengthUnit): readonly Block[] {
  if (steps.length < 2) return [];
  return [
    {
      kind: 'table',
      columns: [
        column('from visit to visit'),
        figures('panels'),
        figures(`came off (${unitName(unit)})`),
        figures('seen on'),
      ],
      rows: steps.map(({ from, to, comparison: { car, panels } }, i) => [
        cell(`${i + 1} to ${i + 2}: ${shortName(from)} to ${shortName(to)}`),
        cell(`${panels.length}`),
        cell(car === null ? '–' : changeText(car, unit), 'strong'),
        cell(`${panels.filter(isSeen).length}`),
      ]),
    },
    gap,
  ];
}
