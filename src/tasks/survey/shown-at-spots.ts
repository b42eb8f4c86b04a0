/**
 * How deep a repaint was shown to be free of colour, and no deeper is it worked.
 *
 * Of repaint no reading says how much clear it has: its spot says that so much could go without colour. That is what
 * the sets of the trial take in the middle, as foretold by all that was learnt of this paint: so the trial may be
 * repeated over the panel. By the gauge alone a few tenths at three marks are hardly told from none, nor is what a
 * trial may have taken at most shown to be gone; but where the marks surely lost less than is foretold, no more counts.
 * What visits took off the whole panel since the trial came out of the same depth.
 */
import { counted } from '../../base/counted.ts';
import { spoken } from '../../base/remark.ts';
import { says, um } from '../../base/sentence.ts';
import { type Micrometres, micrometres } from '../../base/units.ts';
import type { PaintKnowledge } from '../../correction/removal/removal-knowledge.ts';
import { type Gauge, removedFilm, type SpotTrial } from '../../correction/spot/spot-trial.ts';
import { type Allowance, bounded } from '../../film/limits/allowance.ts';
import type { Limit } from '../../film/limits/limit.ts';
import type { PanelSurvey } from '../../film/survey.ts';
import { type CarPaint, isProof } from './car-paint.ts';
import type { PanelSpot, SpotsByPanel } from './spots-on-record.ts';

type Grounds = {
  readonly madeSpots: SpotsByPanel;
  readonly paint: Pick<CarPaint, 'hasOwnSpot' | 'paintOf'>;
  readonly gauge: Gauge;
  /** Degrees of freedom of the gauge's repeatability. */
  readonly scatterDof: number;
};

/** The panels, repaint that its own spots free held to what they showed. */
export const withShownDepth = (
  panels: readonly PanelSurvey[],
  grounds: Grounds,
): readonly PanelSurvey[] => {
  const held = <Part extends PanelSurvey>(part: Part): Part => {
    const limit = isFreedBySpot(part) ? shownLimit(part, grounds) : undefined;
    return limit === undefined ? part : { ...part, ...bounded([...part.limits, limit]) };
  };
  return panels.map((panel) =>
    grounds.paint.hasOwnSpot(panel.panel.id)
      ? { ...held(panel), zones: panel.zones.map(held) }
      : panel,
  );
};

const isFreedBySpot = ({ limits }: PanelSurvey): boolean =>
  limits.some(({ code, value }) => code === 'sound-panels' && value > 0);

/** The same limit on what may go by steps that are foretold otherwise. */
export function heldToShown(allowance: Allowance, { limits }: PanelSurvey): Allowance {
  const shown = limits.find(({ code }) => code === 'spot-depth');
  return shown === undefined
    ? allowance
    : { topcoat: allowance.topcoat, ...bounded([...allowance.limits, shown]) };
}

type Shown = {
  readonly trial: SpotTrial;
  /** What is left of it, once what came off all over since is counted. */
  readonly depth: Micrometres;
  readonly since: number;
};

function shownLimit(part: PanelSurvey, grounds: Grounds): Limit | undefined {
  const spots = grounds.madeSpots.get(part.panel.id) ?? [];
  const paint = grounds.paint.paintOf(part);
  const [first, ...rest] = spots.flatMap((spot) => shownBy(spot, part, paint, grounds));
  if (first === undefined) return undefined;
  const { depth, trial, since } = rest.reduce(
    (one, other) => (other.depth > one.depth ? other : one),
    first,
  );
  const counting = since > 0 ? says`, ${um(since, 2)} that is gone since counted` : '';
  return {
    code: 'spot-depth',
    ...spoken(
      says`repaint is worked no deeper than its test spot showed free of colour: ${um(depth, 2)}, by ${counted(trial.sets, 'set')} of ${trial.combination.id}${counting}; for more work that spot deeper first, and look at the pad`,
    ),
    value: depth,
  };
}

function shownBy(
  { trial, recorded }: PanelSpot,
  { facts }: PanelSurvey,
  { removal }: PaintKnowledge,
  { gauge, scatterDof }: Grounds,
): readonly Shown[] {
  if (trial === null || !isProof(trial)) return [];
  const { id, perSet } = trial.combination;
  const foretold = perSet * Math.exp(removal.of(id).mean) * trial.sets;
  const most = removedFilm(trial.marks, gauge, scatterDof)?.high ?? foretold;
  const gone = facts.recorded?.allOver ?? facts.recorded;
  const since = recorded === null ? 0 : (gone?.mean ?? 0);
  const depth = micrometres(Math.max(0, Math.min(foretold, most) - since));
  return [{ trial, depth, since }];
}
