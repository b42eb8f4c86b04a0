/** Cars of known film and paint, planned without and with test spots that were made on them. */
import { normalCdf, normalQuantile } from '../../src/base/stats/normal.ts';
import { mean } from '../../src/base/stats/summary.ts';
import type { PanelPlan } from '../../src/correction/plan/plan.ts';
import { ladder } from '../../src/correction/removal/combination.ts';
import type { Reading } from '../../src/film/reading.ts';
import { planVehicle } from '../../src/tasks/plan/plan-vehicle.ts';
import { resolveSettings, type Settings } from '../../src/tasks/settings/settings.ts';
import { surveyVehicle } from '../../src/tasks/survey/survey-vehicle.ts';
import { normal, seededRandom } from '../samples/seeded-random.ts';
import { layersOf } from '../tasks/layers.ts';
import { elevenPanels } from './run-cars.ts';
import { drawCar, type Random, type World } from './true-cars.ts';

const CLEAR_FLOOR = 22.3;
const DEPTH = 1.1;
const WITHIN = 0.6;
const REPEATABILITY = 1.5;
const MARKS = 10;
const SPOT = { panel: 'boot', combination: 'da/foam-medium/medium', sets: 2 } as const;

/** Five large panels: the trial is made on one and pays for the others. */
const panels = {
  ...elevenPanels,
  panels: elevenPanels.panels.filter(({ id }) => /^(bonnet|roof|boot|door-front)/.test(id)),
};

export type Count = {
  worked: number;
  breached: number;
  /** Sum of the risks stated on the panels worked. */
  stated: number;
  /** Sum over panels of the share of marks that truly went, up to the aim: nobody asked for more. */
  corrected: number;
  removed: number;
  panels: number;
};

const settingsFor = (aim: number): Settings =>
  resolveSettings(
    layersOf({
      job: { aim },
      shop: { machines: ['da', 'rotary'], pads: ['foam-soft', 'foam-medium'] },
    }),
  );
const usual = new Map(ladder(settingsFor(85).correction).map(({ id, perSet }) => [id, perSet]));

/** A car's paint as it is: hardness, each combination's own rate, and how deep its marks are. */
function drawTruth({ softness }: World, random: Random) {
  const hardness = Math.log(softness) + 0.35 * normal(random);
  const depth = DEPTH * Math.exp(0.5 * normal(random));
  const own = new Map([...usual.keys()].map((id) => [id, 0.4 * normal(random)]));
  const removed = (id: string, sets: number): number =>
    sets *
    (usual.get(id) ?? Number.NaN) *
    Math.exp(hardness + (own.get(id) ?? 0) + 0.15 * normal(random));
  const share = (taken: number): number =>
    taken <= 0 ? 0 : normalCdf(Math.log(taken / depth) / WITHIN);
  return { removed, share };
}

const filmOf = (id: string, readings: readonly Reading[]): number =>
  mean(readings.filter(({ panel }) => panel === id).map(({ thickness }) => thickness));

/** By eye, in per cent; what hardly cleared at all is none. */
const judged = (seen: number): string => (seen < 0.015 ? '0' : (100 * seen).toFixed(0));

/** The record that a detailer would write of the spot. */
function spotsCsv(taken: number, share: number, film: number, random: Random): string {
  const seen = normalCdf(normalQuantile(share) + (0.35 / WITHIN) * normal(random));
  const [machine, pad, product] = SPOT.combination.split('/');
  const rows = Array.from({ length: MARKS }, (_, i) => {
    const before = film + 5 * normal(random);
    const read = (film: number): string => (film + REPEATABILITY * normal(random)).toFixed(1);
    const marks = `${i + 1},${read(before)},${read(before - taken)}`;
    return `A,${SPOT.panel},${machine},${pad},${product},${SPOT.sets},${marks},swirl marks,${judged(seen)}`;
  });
  const header = 'spot,panel,machine,pad,product,sets,mark,before_um,after_um,defect,cleared_pct';
  return `${[header, ...rows].join('\n')}\n`;
}

function plansOf(
  readings: Parameters<typeof surveyVehicle>[0]['readings'],
  settings: Settings,
  csv: string | null,
): readonly PanelPlan[] | null {
  const spots =
    csv === null ? [] : [{ name: 'spots.csv', bytes: new TextEncoder().encode(csv), sha256: '' }];
  const request = { readings, settings, job: undefined, filmRecord: undefined, inputs: [], spots };
  const { value: surveyed, diagnostics } = surveyVehicle(request);
  // A trial that took what is hardly ever taken: no machine goes on such a car until it is known why.
  if (diagnostics.some(({ code }) => code === 'spot-doubted')) return null;
  if (surveyed === undefined) throw new Error('the car is surveyed');
  const planned = planVehicle(surveyed, panels.panels, undefined).value;
  if (planned === undefined) throw new Error('the car is planned');
  return planned.plan.panels;
}

export function runSpottedCars(world: World, aim: number, cars: number, seed: number) {
  const settings = settingsFor(aim);
  const random = seededRandom(seed);
  const empty = (): Count => ({
    worked: 0,
    breached: 0,
    stated: 0,
    corrected: 0,
    removed: 0,
    panels: 0,
  });
  const [without, withSpots] = [empty(), empty()];
  for (let i = 0; i < cars; i += 1) {
    const car = drawCar(panels, world, random);
    const truth = drawTruth(world, random);
    const readings = {
      vehicle: null,
      template: panels,
      readings: car.readings,
      leftOut: [],
      assumptions: [],
    };
    const count = (into: Count, plans: readonly PanelPlan[] | null): void => {
      if (plans === null) into.panels += panels.panels.length - 1;
      for (const { survey, steps, risk } of plans ?? []) {
        // The panel of the trial has paid for it; what is asked is what the others gain.
        if (survey.panel.id === SPOT.panel) continue;
        into.panels += 1;
        if (steps.length === 0) continue;
        const before = car.panels.get(survey.panel.id)?.clearOnThinnest ?? Number.NaN;
        const taken = steps.reduce(
          (sum, { combination, sets }) => sum + truth.removed(combination.id, sets),
          0,
        );
        into.worked += 1;
        into.stated += risk ?? Number.NaN;
        into.corrected += Math.min(aim / 100, truth.share(taken));
        into.removed += taken;
        if (before - taken < CLEAR_FLOOR) into.breached += 1;
      }
    };
    const spent = truth.removed(SPOT.combination, SPOT.sets);
    count(without, plansOf(readings, settings, null));
    count(
      withSpots,
      plansOf(
        readings,
        settings,
        spotsCsv(spent, truth.share(spent), filmOf(SPOT.panel, car.readings), random),
      ),
    );
  }
  return { without, withSpots };
}
