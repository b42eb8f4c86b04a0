/** What may come off one place of a panel that nobody read: as thick as any, for all that is known. */
import { spoken } from '../../base/remark.ts';
import { says, um } from '../../base/sentence.ts';
import { micrometres } from '../../base/units.ts';
import type { FilmModel } from '../film-model.ts';
import type { PanelSurvey } from '../survey.ts';
import { type Allowance, bounded } from './allowance.ts';
import { type AllowanceGrounds, allowanceAt } from './allowance-at.ts';
import { clearExpected } from './clear-expected.ts';
import { goneAtPlace } from './earlier-work.ts';
import type { Limit } from './limit.ts';
import { clearChain } from './thin-clear.ts';
import type { PlainTopcoat, TopcoatCase } from './topcoat-cases.ts';

/**
 * The panel's limits, its clear looked at on one place anywhere: N(mean over the panel, u² + v), u the
 * doubt about that mean and v the variance of the clear over the panel, less what is gone from one place alone. The total
 * is still held to the smallest point, for the place may be that one.
 */
export function allowanceOnPlace(
  panel: PanelSurvey,
  logSd: number,
  grounds: AllowanceGrounds,
): Allowance {
  const onPlace = (topcoat: PlainTopcoat): PlainTopcoat => topcoatOnPlace(topcoat, grounds.model);
  const { topcoat, limits } = allowanceAt(panel, logSd, grounds, onPlace);
  const told = limits.map((limit) =>
    topcoat === null ? limit : saidOfPlace(limit, topcoat, panel),
  );
  return { topcoat, ...bounded(told) };
}

function topcoatOnPlace(topcoat: PlainTopcoat, model: FilmModel): PlainTopcoat {
  const { film, knowledge } = topcoat.told;
  const { overPanel, within, atPlace } = clearChain(film, knowledge, model.topcoat);
  const clear = {
    mean: micrometres(overPanel.mean - atPlace.mean),
    sd: micrometres(Math.sqrt(overPanel.variance + within.variance + atPlace.variance)),
  };
  return { ...topcoat, clear };
}

function saidOfPlace(limit: Limit, topcoat: TopcoatCase, panel: PanelSurvey): Limit {
  const { recorded } = panel.facts;
  if (limit.code === 'place' && recorded !== null) {
    const { mean: gone } = goneAtPlace(recorded);
    return {
      ...limit,
      ...spoken(
        says`a spot on this panel took ${um(gone)} more at one place, which may be this one: ${um(limit.value, 2)} are left there`,
      ),
    };
  }
  if (limit.code !== 'clear' && limit.code !== 'near-line') return limit;
  const name = topcoat.finish === 'single-stage' ? 'topcoat' : 'clear';
  const words = [panel.condition, ...panel.also];
  return { ...limit, ...spoken(says`${name} at that place: ${clearExpected(topcoat, words)}`) };
}
