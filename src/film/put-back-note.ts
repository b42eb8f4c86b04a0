import { type Remark, remark } from '../base/remark.ts';
import { bare, type Sentence, says, um } from '../base/sentence.ts';
import { type GatheredPanel, isRead } from './gathered-panel.ts';
import { goneAllOver } from './put-back.ts';
import { panelNames } from './template/side-names.ts';

/** Which panels are compared with the others by more than they read. */
export function putBackNote(gathered: readonly GatheredPanel[]): readonly Remark[] {
  const panels = gathered.filter((one) => isRead(one) && goneAllOver(one.facts).mean > 0);
  if (panels.length === 0) return [];
  const gone = rangeOf(panels.map(({ facts }) => goneAllOver(facts).mean));
  const isAll = panels.length === gathered.filter(isRead).length;
  const names = isAll ? 'every panel' : panelNames(panels.map(({ panel }) => panel)).join(', ');
  return [
    remark(
      'record-put-back',
      says`panels are compared with each other (baseline, cut-back, repaint) as they read before earlier work, as far as that is on record or stated: ${gone} put back on ${names}. What may go is told from what they read now`,
      panels.length,
    ),
  ];
}

function rangeOf(films: readonly number[]): Sentence {
  const [least, most] = [Math.min(...films), Math.max(...films)];
  return least === most ? says`${um(most)}` : says`${bare(least)} to ${um(most)}`;
}
