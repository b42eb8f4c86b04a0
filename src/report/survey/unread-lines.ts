/** Panels that nobody read, or no gauge for metal can: what they are made of, what would help. */
import { groupBy } from '../../base/group-by.ts';
import { textIn } from '../../base/remark.ts';
import { needsUltrasound } from '../../film/condition/condition.ts';
import type { PanelSurvey } from '../../film/survey.ts';
import type { Panel } from '../../film/template/template.ts';
import { type Block, paragraph } from '../model.ts';
import { panelNames } from '../panel-list.ts';
import type { ShowUnit } from './film-table.ts';

export function unreadLine(surveyed: readonly PanelSurvey[]): readonly Block[] {
  const unread = surveyed.filter(({ points }) => points.length === 0).map(({ panel }) => panel);
  const names = panelNames(unread, unreadName);
  return unread.length === 0 ? [] : [paragraph('Not read', `${names.join(', ')}: nothing may go`)];
}

/** `rear bumper (plastic)`. */
const unreadName = ({ substrate }: Panel, name: string): string =>
  substrate === 'steel' || substrate === 'aluminium' ? name : `${name} (${substrate})`;

/**
 * What would help where nothing is known, and whether a gauge reads it at all: of panels that nobody read by what
 * they are made of, as the line above names them, of those that were read in vain by name.
 */
export function unreadBlocks(surveyed: readonly PanelSurvey[], unit: ShowUnit): readonly Block[] {
  const said = surveyed
    .filter(({ condition }) => condition === 'unread')
    .map(({ panel, points, advice }) => {
      const help = advice.map((one) => textIn(one, unit)).join(', ');
      const what = points.length > 0 ? panel.name : panel.substrate;
      return { what, text: `${needsUltrasound(panel) ? NO_GAUGE : ''}: ${help}` };
    });
  const each = [...groupBy(said, ({ text }) => text)].map(
    ([text, group]) => `${[...new Set(group.map(({ what }) => what))].join(', ')}${text}`,
  );
  return each.length === 0 ? [] : [paragraph('Unread, so nothing is sure', each.join('; '))];
}

const NO_GAUGE = ', which no gauge for metal reads';
