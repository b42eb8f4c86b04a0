/** What may come off one place of a panel that nobody read: as thick as any, for all that is known. */
import { spoken } from '../../base/remark.ts';
import { bare, says, um } from '../../base/sentence.ts';
import { micrometres } from '../../base/units.ts';
import type { FilmModel } from '../film-model.ts';
import type { PanelSurvey } from '../survey.ts';
import { type Allowance, bounded } from './allowance.ts';
import { type AllowanceGrounds, allowanceAt } from './allowance-at.ts';
import type { Limit } from './limit.ts';
import { clearChain } from './thin-clear.ts';
import type { TopcoatCase } from './topcoat-cases.ts';

/**
 * The panel's limits, its clear looked at on one place anywhere: N(mean over the panel, u² + v), u the
 * doubt about that mean and v the variance of the clear over the panel. The total is still held to the
 * smallest point, for the place may be that one.
 */
export function allowanceOnPlace(
  panel: PanelSurvey,
  logSd: number,
  grounds: AllowanceGrounds,
): Allowance {
  const onPlace = (topcoat: TopcoatCase): TopcoatCase => topcoatOnPlace(topcoat, grounds.model);
  const { topcoat, limits } = allowanceAt(panel, logSd, grounds, onPlace);
  return {
    topcoat,
    ...bounded(limits.map((limit) => (topcoat === null ? limit : saidOfPlace(limit, topcoat)))),
  };
}

function topcoatOnPlace(topcoat: TopcoatCase, model: FilmModel): TopcoatCase {
  const { film, knowledge } = topcoat.told;
  const { overPanel, within } = clearChain(film, knowledge, model.topcoat);
  const clear = {
    mean: micrometres(overPanel.mean),
    sd: micrometres(Math.sqrt(overPanel.variance + within.variance)),
  };
  return { ...topcoat, clear };
}

function saidOfPlace(limit: Limit, { clear, clearFloor, finish }: TopcoatCase): Limit {
  if (limit.code !== 'clear') return limit;
  const name = finish === 'single-stage' ? 'topcoat' : 'clear';
  const said = says`${name} at that place: ${bare(Math.max(0, clear.mean))} ± ${um(clear.sd)} expected, ${bare(clearFloor)} must stay`;
  return { ...limit, ...spoken(said) };
}
