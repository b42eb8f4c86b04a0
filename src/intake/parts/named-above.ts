/** What a line above rows says that they are of: a panel's name alone, or a saying such as `Vehicle: A`. */
import {
  aboutFile,
  filledCells,
  loneText,
  panelSaid,
  roleOfKey,
  type Saying,
  sayingOf,
} from '../beside/sayings.ts';
import { notReading } from '../cells/not-readings.ts';
import type { Layout } from '../header/layout.ts';
import type { Row } from '../rows/tokens.ts';
import { namesStatistic } from '../statistics/statistic-words.ts';
import type { Given } from '../tables/table.ts';
import { isDataRow, needsPanel, type Reader, type State, sameNames } from './section-state.ts';

/** `Panel: roof` where the panels have a column is a row gone wrong, not news. */
const roleOfGiven = { panel: 'panel', vehicle: 'vehicle', layer: 'layer', point: 'point' } as const;
export function isNews(given: Partial<Given>, layout: Layout, row: Row): boolean {
  const keys = Object.keys(given).filter((key): key is keyof Given => key in roleOfGiven);
  if (keys.includes('panel')) return needsPanel(layout);
  return keys.every((key) => !layout.columns.has(roleOfGiven[key])) && filledCells(row).length <= 2;
}

/** A panel's name above its values; between blocks any line of text is one, known or not. */
export function captionOf(
  row: Row,
  next: Row | undefined,
  { layout, header }: State,
  { context }: Reader,
): string | undefined {
  if (!needsPanel(layout)) return undefined;
  const text = loneText(row);
  if (text === undefined || namesStatistic(text) || notReading(text) !== undefined)
    return undefined;
  if (context.isPanel(text)) return text;
  const saying = sayingOf(row);
  const said = saying === undefined ? undefined : panelSaid(saying, context.isPanel);
  if (next === undefined || !(sameNames(next, header) || isDataRow(next, layout))) return undefined;
  return said ?? (saying === undefined || mayNamePanel(saying) ? text : undefined);
}

/** `Mala:`, `Tailgate: black`: below it readings of the panel above would be wrong and quiet. */
const mayNamePanel = ({ key, value }: Saying): boolean =>
  roleOfKey(key) === undefined && !/\d/u.test(value) && !aboutFile.test(key);
