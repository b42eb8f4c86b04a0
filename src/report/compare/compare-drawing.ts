/** The film before and after as paired dots, where a page has room for drawings. */
import { thicknessText, unitName } from '../../base/sentence.ts';
import { mean } from '../../base/stats/summary.ts';
import type { LengthUnit } from '../../base/units.ts';
import type { CompareResult } from '../../tasks/compare/compare-files.ts';
import type { PanelLeft } from '../../tasks/compare/compare-left-parts.ts';
import { column, filmFigures } from '../columns.ts';
import { axisAround, inUnit } from '../drawn-axis.ts';
import { type Block, type Cell, type Column, cell } from '../model.ts';

export function beforeAndAfter(result: CompareResult, unit: LengthUnit): readonly Block[] {
  const rows = result.panels.flatMap((panel) => {
    const means = meansOf(panel, result);
    return means === undefined ? [] : [{ name: panel.comparison.panel.name, ...means }];
  });
  if (rows.length === 0) return [];
  const film = (title: string): Column => filmFigures(title, unit);
  const axis = axisAround(
    rows.flatMap(({ before, after }) => [before, after]),
    unit,
  );
  return [
    {
      kind: 'table',
      label: 'Film before (○) and after (●), of the pairs or of the panel',
      columns: [
        column(`panel (${unitName(unit)})`),
        film('mean before'),
        film('mean after'),
        film('came off'),
        { ...column(`○ before, ● after (${unitName(unit)})`), axis },
      ],
      rows: rows.map(({ name, before, after }): readonly Cell[] => [
        cell(name),
        cell(thicknessText(before, unit)),
        cell(thicknessText(after, unit)),
        cell(thicknessText(before - after, unit), 'strong'),
        {
          kind: 'strip',
          values: [inUnit(after, unit)],
          marked: null,
          open: [inUnit(before, unit)],
          bar: { from: inUnit(before, unit), to: inUnit(after, unit), look: 'span' },
        },
      ]),
    },
  ];
}

type Means = { readonly before: number; readonly after: number };

/** Undefined where nothing was compared. */
function meansOf({ comparison }: PanelLeft, { before, left }: CompareResult): Means | undefined {
  const { by, pairs, panel, change } = comparison;
  if (change === null) return undefined;
  if (by === 'pairs') {
    return {
      before: mean(pairs.map((pair) => pair.before)),
      after: mean(pairs.map((pair) => pair.after)),
    };
  }
  const [first, last] = [before, left].map(
    ({ survey }) => survey.panels.find((one) => one.panel.id === panel.id)?.statistics?.mean,
  );
  return first === undefined || last === undefined ? undefined : { before: first, after: last };
}
