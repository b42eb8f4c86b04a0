/**
 * Layers that the job states and that cannot be true of what a panel reads, or of each other: each page names them with
 * where they stand, and what may go is the least that either allows.
 */
import { type Diagnostic, warning } from '../../base/diagnostics.ts';
import { groupBy } from '../../base/group-by.ts';
import { inWords } from '../../base/in-words.ts';
import { shown } from '../../base/rounding.ts';
import { bare, says, tell, um } from '../../base/sentence.ts';
import type { StatedLayer } from '../../film/film-model.ts';
import { type PanelSurvey, partsOf } from '../../film/survey.ts';
import type { Effective } from '../settings/setting-origin.ts';
import { placeIn } from './believed-clears.ts';
import type { FactsByPanel } from './survey-grounds.ts';

type Stated = {
  readonly clear: Effective<StatedLayer | null>;
  readonly under: Effective<StatedLayer | null>;
};
type Apart = { readonly name: string; readonly read: number; readonly sds: number };

export function layersApart(
  panels: readonly PanelSurvey[],
  facts: FactsByPanel,
): readonly Diagnostic[] {
  const apart = panels.flatMap((panel) => {
    const sds = Math.max(0, ...partsOf(panel).map(({ topcoat }) => topcoat?.apart ?? 0));
    const own = facts.get(panel.panel.id);
    const read = panel.statistics?.mean;
    return sds === 0 || own === undefined || read === undefined || !isStated(own)
      ? []
      : [{ own, name: panel.panel.name, read, sds }];
  });
  const stated = groupBy(apart, ({ own }) => `${own.clear.where} ${own.under.where}`);
  return [...stated.values()].map((group) => told(group[0].own, group));
}

/** A clear that was read alone is told of by the survey itself. */
const isStated = ({ clear, under }: Stated): boolean =>
  clear.value !== null || under.value !== null;

function told({ clear, under }: Stated, group: readonly Apart[]): Diagnostic {
  const layers = [...said('clear_um', clear), ...said('under_um', under)];
  const where = group.map(({ name, read }) => `${name} (${tell([um(read)], 'um')})`);
  const most = shown(Math.max(...group.map(({ sds }) => sds)), 1);
  const what = layers.length > 1 ? 'cannot both be true of' : 'can hardly be true of';
  return warning(
    'stated-layers-apart',
    `${inWords(layers)} ${what} what was read of ${where.join(', ')}: up to ${most} SDs apart; what may go is the least that either allows`,
    {
      at: placeIn((clear.value === null ? under : clear).where),
      hint: 'correct the one that is wrong, or leave it out: nothing is averaged that cannot be of one paint',
    },
  );
}

/** `clear_um 60.0 ± 3.0 µm (job.json:5)` */
const said = (key: string, { value, where }: Effective<StatedLayer | null>): readonly string[] =>
  value === null
    ? []
    : [`${key} ${tell(says`${bare(value.mean)} ± ${um(value.sd)}`, 'um')} (${where})`];
