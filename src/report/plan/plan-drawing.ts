/** What the plan takes, and may turn out to take, of what may go: beside the table, where a page has room for drawings. */
import { shown } from '../../base/rounding.ts';
import { unitName } from '../../base/sentence.ts';
import { isWorked, type PanelPlan } from '../../correction/plan/plan.ts';
import { axisFromNothing, inUnit } from '../drawn-axis.ts';
import { type Block, type Cell, cell } from '../model.ts';
import { limitWord, partName, type ShowUnit, thickness } from '../survey/film-table.ts';

/** Parts that nothing is taken from have no bar. */
export function takenBars(parts: readonly PanelPlan[], unit: ShowUnit): readonly Block[] {
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
        { title: `panel (${name})`, align: 'left' },
        { title: 'plan takes', align: 'right', unit: name },
        { title: 'nine of ten', align: 'right', unit: name },
        { title: 'may go', align: 'right', unit: name },
        { title: 'bound by', align: 'left' },
        { title: 'risk', align: 'right' },
        { title: `of what may go (${name})`, align: 'left', axis: axisFromNothing(values, unit) },
      ],
      rows: worked.map((part) => takenRow(part, unit)),
    },
  ];
}

const takenRow = ({ survey, removal, risk }: PanelPlan, unit: ShowUnit): readonly Cell[] => [
  cell(partName(survey)),
  cell(thickness(removal.median, unit, 2), 'strong'),
  cell(`${thickness(removal.low, unit)}–${thickness(removal.high, unit)}`),
  cell(thickness(survey.budget, unit, 2)),
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
