/** Panel by panel: what came off, what was to, what may still go, and the word on it. */

import { toDigits } from '../../base/rounding.ts';
import { thicknessText, unitName } from '../../base/sentence.ts';
import type { LengthUnit } from '../../base/units.ts';
import { differencesOf } from '../../film/compare/compare-points.ts';
import type { ForetoldPanel } from '../../formats/plan-file.ts';
import type { CompareResult } from '../../tasks/compare/compare-files.ts';
import type { PanelLeft } from '../../tasks/compare/compare-left-parts.ts';
import type { PartLeft } from '../../tasks/compare/part-left.ts';
import { column, figures, filmFigures } from '../columns.ts';
import { inUnit } from '../drawn-axis.ts';
import { type Block, type Cell, type Column, cell, type StripAxis } from '../model.ts';
import { changeText, GO_ON_WORDS, isSeen, partsLeft } from './compare-words.ts';

export function changeTable(
  panels: readonly PanelLeft[],
  { planned, worked }: Pick<CompareResult, 'planned' | 'worked'>,
  unit: LengthUnit,
): Block {
  const plan = {
    planned: partsLeft(panels).some(({ planned }) => planned !== null),
    worked: worked !== null,
  };
  const film = (title: string): Column => filmFigures(title, unit);
  const rows = panels.flatMap((panel) => [
    changeRow(panel, panel.comparison.panel.name, { ...plan, unit }),
    ...panel.zones.map((zone) =>
      changeRow(zone, `\u00a0\u00a0${zone.comparison.zone} zone`, { ...plan, unit }),
    ),
  ]);
  return {
    kind: 'table',
    columns: [
      column(`panel (${unitName(unit)})`),
      { ...figures('n'), said: 'points' },
      { ...film('came off'), leads: true },
      column('seen'),
      ...(plan.planned ? [film('planned')] : []),
      ...(plan.worked ? [{ ...film('as done'), said: 'planned for the sets worked' }] : []),
      { ...film('may go'), leads: true },
      { ...column(planned ? 'one more set' : 'mildest set'), leads: true },
      { ...film(''), align: 'left', said: 'came off at points', axis: commonAxis(panels, unit) },
    ],
    rows,
  };
}

function changeRow(
  part: PartLeft,
  name: string,
  {
    planned,
    worked,
    unit,
  }: { readonly planned: boolean; readonly worked: boolean; readonly unit: LengthUnit },
): readonly Cell[] {
  const { comparison, left, rise, verdict } = part;
  const { change, gained, pairs, counts, by } = comparison;
  const value = (one: number | undefined, digits = 1): string =>
    one === undefined ? '–' : thicknessText(one, unit, digits);
  const count = by === 'pairs' ? `${pairs.length}` : `${counts.before}/${counts.after}`;
  return [
    cell(name),
    cell(count),
    cell(change === null ? '–' : changeText(change, unit), 'strong'),
    cell(gained || rise !== null ? 'gained' : isSeen(comparison) ? 'yes' : 'no'),
    ...(planned ? [cell(foretoldText(part.planned, unit))] : []),
    ...(worked ? [cell(foretoldText(part.foretold, unit))] : []),
    cell(value(left?.budget, 2)),
    cell(GO_ON_WORDS[verdict], verdict === 'stop' ? 'binding' : 'plain'),
    {
      kind: 'strip',
      values: differencesOf(pairs).map((one) => inUnit(one, unit)),
      marked: change === null ? null : inUnit(change.removed.value, unit),
    },
  ];
}

/** Nothing worked was to take nothing; of a panel that no plan has, or whose zones are planned apart, a dash. */
const foretoldText = (foretold: ForetoldPanel | null, unit: LengthUnit): string =>
  foretold === null ? '–' : thicknessText(foretold.removal?.median ?? 0, unit);

/** From the least difference at a point to the largest, with a line where nothing came off. */
function commonAxis(panels: readonly PanelLeft[], unit: LengthUnit): StripAxis {
  const step = unit === 'um' ? 1 : 0.1;
  const values = panels.flatMap(({ comparison: { pairs, change } }) => [
    ...differencesOf(pairs),
    ...(change === null ? [] : [change.removed.value]),
  ]);
  const whole = (value: number): number => toDigits(value * step, 12);
  return {
    from: whole(Math.floor(inUnit(Math.min(0, ...values), unit) / step)),
    to: whole(Math.ceil(inUnit(Math.max(0, ...values), unit) / step + 0.01)),
    line: 0,
  };
}
