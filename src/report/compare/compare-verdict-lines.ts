/** Go on, stop or unresolved, in words: each once for the panels it is of. */
import { groupBy } from '../../base/group-by.ts';
import { textIn } from '../../base/remark.ts';
import type { GoOnVerdict } from '../../correction/go-on.ts';
import type { PanelLeft } from '../../tasks/compare/compare-files.ts';
import type { PartLeft } from '../../tasks/compare/compare-panel.ts';
import { type Block, paragraph } from '../model.ts';
import type { ShowUnit } from '../survey/film-table.ts';
import { partNameOf, partsLeft } from './compare-words.ts';

const WORDS: Readonly<Record<GoOnVerdict, string>> = {
  'go-on': 'Go on',
  stop: 'Stop',
  unresolved: 'Unresolved',
};

/** Each word once for the panels it is of, with what one more set is, or the limit that binds. */
export function verdictLines(panels: readonly PanelLeft[], unit: ShowUnit): readonly Block[] {
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

export function gainedLines(panels: readonly PanelLeft[], unit: ShowUnit): readonly Block[] {
  return panels
    .filter(({ comparison }) => comparison.gained)
    .flatMap(({ comparison, reasons }) =>
      reasons
        .filter(({ code }) => code === 'film-gained')
        .map((reason) => paragraph(comparison.panel.name, textIn(reason, unit))),
    );
}
