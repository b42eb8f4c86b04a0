/** Every compared panel as it stands, with its zones. */
import { hardestVerdict } from '../../correction/go-on.ts';
import type { SurveyComparison } from '../../film/compare/compare-surveys.ts';
import type { PanelSurvey, ZoneName } from '../../film/survey.ts';
import type { SurveyResult } from '../survey/survey-vehicle.ts';
import type { MarksOnly } from './compare-marks.ts';
import { partLeft, type Surveys } from './compare-panel.ts';
import type { PlaceRead } from './compare-places-read.ts';
import {
  measuredParts,
  mildestSet,
  type Planned,
  type RateSeen,
  seenRates,
} from './compare-plan.ts';
import type { Standing } from './compare-standing.ts';
import type { OneMoreSet, PartLeft, Rise } from './part-left.ts';

export type PanelLeft = PartLeft & { readonly zones: readonly PartLeft[] };

/** A panel, or in place of one in two zones its zones. */
export const partsOf = (panel: PanelLeft): readonly PartLeft[] =>
  panel.zones.length === 0 ? [panel] : panel.zones;

/** What was to come off, what of it was worked, and the panels asked about. */
type ComparedWork = {
  readonly planned: Planned;
  readonly done: Planned;
  /** Places that were worked deeper, by the ids of their panels. */
  readonly places: ReadonlyMap<string, readonly PlaceRead[]>;
  /** Whether it was planned of these readings. */
  readonly isOwnPlan: boolean;
  readonly marks: MarksOnly;
  readonly ids: ReadonlySet<string>;
  /** By the id of each panel that read more film at a visit than at the one before it. */
  readonly rises: ReadonlyMap<string, Rise>;
};

/** Every compared panel as it stands, by all that was seen, and the plan's rates on the panels asked about. */
export function leftOn(
  { panels }: SurveyComparison,
  { planned, done, places, ids, rises, isOwnPlan, marks }: ComparedWork,
  { before, known, asked }: Standing,
): { readonly parts: readonly PanelLeft[]; readonly rates: readonly RateSeen[] } {
  const { settings } = known;
  // What a plan of other readings foretold is no forecast of this work: nothing is judged by it, or learned.
  const measuredOn = (some: SurveyComparison['panels']) =>
    isOwnPlan ? measuredParts(some, done) : [];
  const measured = measuredOn(panels);
  const seen = seenRates(measured, settings.correction);
  const set = mildestSet(settings.correction, settings.terms.logSd);
  const mildest: OneMoreSet | null = set === null ? null : { ...set, from: 'mildest' };
  const grounds = { terms: settings.terms, model: settings.film };
  const parts = panels.map((comparison): PanelLeft => {
    const { id } = comparison.panel;
    const [plan, worked] = [planned.get(id), done.get(id)];
    const surveysOf = (zone: ZoneName | null): Surveys => ({
      before: partIn(before, id, zone),
      standing: partIn(known, id, zone),
      asked: partIn(asked, id, zone),
    });
    const ofPanel = { rise: rises.get(id) ?? null, places: places.get(id) ?? [] };
    const common = { seen, mildest, grounds, isOwnPlan, marks, ...ofPanel };
    const measuredAs = (foretold: typeof plan) =>
      measured.find((part) => part.foretold.path === foretold?.path);
    const zones = comparison.zones.map((zone) => {
      const ofZone = (panel: typeof plan) =>
        panel?.zones.find((one) => one.zone === zone.zone) ?? panel;
      const foretold = ofZone(worked);
      return partLeft({
        comparison: zone,
        planned: ofZone(plan),
        foretold,
        measured: measuredAs(foretold),
        surveys: surveysOf(zone.zone),
        ...common,
      });
    });
    const whole = partLeft({
      comparison,
      planned: plan,
      foretold: worked,
      measured: measuredAs(worked),
      surveys: surveysOf(null),
      ...common,
    });
    return zones.length === 0 ? { ...whole, zones } : { ...byItsZones(whole, zones), zones };
  });
  const ofAsked = measuredOn(panels.filter(({ panel }) => ids.has(panel.id)));
  return { parts, rates: seenRates(ofAsked, settings.correction).rates };
}

/** A panel in a survey, or the zone of it where it reads as two there too. */
function partIn(
  { survey }: SurveyResult,
  id: string,
  zone: ZoneName | null,
): PanelSurvey | undefined {
  const found = survey.panels.find(({ panel }) => panel.id === id);
  return found?.zones.find((one) => one.zone === zone) ?? found;
}

/** A panel in two zones shows what the zone shows that allows least, and takes the hardest verdict. */
function byItsZones({ comparison }: PartLeft, zones: readonly PartLeft[]): PartLeft {
  const [first, ...others] = zones;
  if (first === undefined) throw new Error('a panel in zones has one');
  const budget = ({ left }: PartLeft): number => left?.budget ?? Number.POSITIVE_INFINITY;
  const least = others.reduce((one, other) => (budget(other) < budget(one) ? other : one), first);
  return {
    ...least,
    comparison,
    // Steps, and what they were to take, are those of its zones.
    planned: null,
    foretold: null,
    allowed: null,
    against: null,
    overruns: zones.flatMap((zone) => zone.overruns),
    verdict: hardestVerdict(zones.map(({ verdict }) => verdict)),
  };
}
