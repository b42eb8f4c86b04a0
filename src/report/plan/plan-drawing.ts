/** What the plan takes, and may turn out to take, of what may go: beside the table, where a page has room for drawings. */

import { shown } from '../../base/rounding.ts';
import { thicknessText, unitName } from '../../base/sentence.ts';
import type { LengthUnit } from '../../base/units.ts';
import { isWorked, type PanelPlan } from '../../correction/plan/plan.ts';
import { partName } from '../../film/survey.ts';
import { column, figures, filmFigures } from '../columns.ts';
import { axisFromNothing, inUnit } from '../drawn-axis.ts';
import { type Block, type Cell, cell } from '../model.ts';
import { limitWord } from '../survey/film-table.ts';

/** Parts that nothing is taken from have no bar. */
export function takenBars(parts: readonly PanelPlan[], unit: LengthUnit): readonly Block[] {
  const worked = parts.filter(isWorked);
  if (worked.length === 0) return [];
  const name = unitName(unit);
  const values = worked.flatMap(({ survey, removal }) => [survey.budget, removal.high]);
  return [
    {
      kind: 'table',
      label:
        'What the plan takes (dot; the line is nine cases of ten, which the risk counts in) of what may go (bar, to the limit that binds)',
      columns: [
        column(`panel (${name})`),
        filmFigures('plan takes', unit),
        filmFigures('nine of ten', unit),
        filmFigures('may go', unit),
        column('bound by'),
        figures('risk'),
        { ...column(`of what may go (${name})`), axis: axisFromNothing(values, unit) },
      ],
      rows: worked.map((part) => takenRow(part, unit)),
    },
  ];
}

const takenRow = ({ survey, removal, risk }: PanelPlan, unit: LengthUnit): readonly Cell[] => [
  cell(partName(survey)),
  cell(thicknessText(removal.median, unit, 2), 'strong'),
  cell(`${thicknessText(removal.low, unit)}–${thicknessText(removal.high, unit)}`),
  cell(thicknessText(survey.budget, unit, 2)),
  cell(limitWord(survey.boundBy.code, survey), 'binding'),
  cell(risk === null ? '–' : `${shown(100 * risk, 1)}\u00a0%`),
  {
    kind: 'strip',
    values: [inUnit(removal.median, unit)],
    marked: null,
    range: { from: inUnit(removal.low, unit), to: inUnit(removal.high, unit) },
    bar: { from: 0, to: inUnit(survey.budget, unit), look: 'extent' },
  },
];
