/** A zone of a panel as it was read, and whether it is the one that no factory painted. */
import { mean } from '../base/stats/summary.ts';
import { type Micrometres, micrometres } from '../base/units.ts';
import { baselineFor, type CarBaseline } from './car-baseline.ts';
import type { Zones } from './condition/zones.ts';
import {
  type GatheredFilm,
  type GatheredPanel,
  partOfPanel,
  thicknesses,
} from './gathered-panel.ts';
import { heldInZone } from './limits/left-after-visit.ts';
import type { PanelPoint } from './panel-points.ts';
import { putBack } from './put-back.ts';
import type { ZoneName } from './survey.ts';

export function zonePart(
  panel: GatheredPanel,
  zones: Zones,
  zone: ZoneName,
  car: CarBaseline | null,
): GatheredFilm {
  const whole = partOfPanel(panel, zones[zone]);
  const part = { ...whole, facts: heldInZone(whole.facts, zone) };
  if (zone === 'thinner') return part;
  const [low, high] = [filmOf(zones.thinner), filmOf(zones.thicker)];
  return isOdd(panel, { low, high }, car) ? { ...part, overRest: micrometres(high - low) } : part;
}

/** The thicker one where it lies farther over the usual film than the thinner lies under it; the thinner is cut back. */
function isOdd(
  panel: GatheredPanel,
  { low, high }: { readonly low: Micrometres; readonly high: Micrometres },
  car: CarBaseline | null,
): boolean {
  const usual = baselineFor(car, panel)?.value ?? null;
  return usual === null || putBack(high, panel.facts) - usual > usual - putBack(low, panel.facts);
}

const filmOf = (points: readonly PanelPoint[]): Micrometres =>
  micrometres(mean(thicknesses(points)));
