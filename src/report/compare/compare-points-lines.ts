/** What was read and not compared: panels, and points that went into no pair. */

import { counted } from '../../base/counted.ts';
import { groupBy } from '../../base/group-by.ts';
import { thicknessText, unitName } from '../../base/sentence.ts';
import type { LengthUnit } from '../../base/units.ts';
import type { PanelComparison } from '../../film/compare/panel-comparison.ts';
import type { CompareResult } from '../../tasks/compare/compare-files.ts';
import type { PanelLeft } from '../../tasks/compare/compare-left-parts.ts';
import { about, joined } from '../facts.ts';
import { type Block, list, paragraph } from '../model.ts';
import { byVerbose, type PageOptions } from '../page-options.ts';
import { basisText, notCompared } from './compare-words.ts';

export function notComparedLine({ total }: CompareResult): readonly Block[] {
  const groups = groupBy(notCompared(total), ({ text }) => text);
  return groups.size === 0
    ? []
    : [
        paragraph(
          'Not compared',
          joined(
            [...groups].map(
              ([text, panels]) => `${panels.map(({ panel }) => panel.name).join(', ')}: ${text}`,
            ),
            '; ',
            '.',
          ),
        ),
      ];
}

/** What nobody measured, as a record holds it. */
export function workedUnreadLine({ unread }: CompareResult, unit: LengthUnit): readonly Block[] {
  if (unread.length === 0) return [];
  const text = (um: number): string => thicknessText(um, unit);
  const each = unread.map(
    ({ panel, entry }) =>
      `${panel.name} ${text(entry.taken_um)} ± ${text(entry.taken_sd_um)} ${unitName(unit)} (SD)`,
  );
  return [
    paragraph(
      'Planned and not compared',
      joined(
        each,
        ', ',
        ': a film record holds that to be gone, by the plan. Read them, or say 0 sets with --worked.',
      ),
    ),
  ];
}

/** What a record leaves out counts at no later visit. */
export function notRecordedLine({ unrecorded }: CompareResult): readonly Block[] {
  const groups = groupBy(unrecorded, ({ why }) => why);
  return groups.size === 0
    ? []
    : [
        paragraph(
          'Not on the film record',
          joined(
            [...groups].map(
              ([why, panels]) => `${panels.map(({ panel }) => panel.name).join(', ')}: ${why}`,
            ),
            '; ',
            '.',
          ),
        ),
      ];
}

/** Points that were read and went into no pair, counted. */
export function pointsLine(
  panels: readonly PanelLeft[],
  options: Pick<PageOptions, 'onPaper'>,
): readonly Block[] {
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
  const which = byVerbose(': which', options);
  return texts.length === 0
    ? []
    : [
        paragraph('Left out', {
          text: `${texts.join(', ')}${which}.`,
          facts: texts.map((text) => `${text}${which}`),
        }),
      ];
}

/** The same by name. */
export function pointLists(panels: readonly PanelLeft[]): readonly Block[] {
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
      : [about(`${panel.name} (by ${basisText(comparison)})`, joined(texts, '; '))];
  });
  return items.length === 0 ? [] : [list('Points left out of the pairs', items)];
}
