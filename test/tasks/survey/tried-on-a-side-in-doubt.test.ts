/** A side that may have been painted again as a whole: a panel of it that its own spot frees is worked as repaint is. */
import { describe, expect, it } from 'vitest';
import { sidePaintedWith } from '../../../src/film/condition/painted-side.ts';
import { builtInTemplates } from '../../../src/formats/data/templates.ts';
import { type PlanResult, planVehicle } from '../../../src/tasks/plan/plan-vehicle.ts';
import { resolveSettings } from '../../../src/tasks/settings/settings.ts';
import { surveyVehicle } from '../../../src/tasks/survey/survey-vehicle.ts';
import { reading } from '../../film/car-builder.ts';
import { layersOf } from '../layers.ts';

const saloon = builtInTemplates.find(({ id }) => id === 'saloon');
if (saloon === undefined) throw new Error('the saloon is built in');
const template = saloon;

const LEFT = ['wing-front-left', 'door-front-left', 'door-rear-left', 'quarter-left'];
const OTHERS = ['bonnet', 'roof', 'boot', ...LEFT.map((id) => id.replace('left', 'right'))];
/** The left side reads 28 µm more, on every panel of it. */
const readings = [
  ...OTHERS.map((id) => [id, 112] as const),
  ...LEFT.map((id) => [id, 140] as const),
].flatMap(([id, middle]) =>
  [-4, -2, 0, 2, 4].map((off, i) => reading(id, `${i + 1}`, middle + off)),
);

const header =
  'spot,panel,machine,pad,product,sets,mark,before_um,after_um,cleared_pct,colour_on_pad';
const MILD = 'da/foam-soft/fine';
/** Six sets, by the mildest unless another is named, which took 1.6 µm. */
const triedOn = (panel: string, film: number, product = 'fine'): readonly string[] =>
  [0, 1, 2].map(
    (k) =>
      `${panel},${panel},da,foam-soft,${product},6,${k + 1},${film + k},${film + k - 1.6},40,no`,
  );

function planned(rows: readonly string[]): PlanResult {
  const bytes = new TextEncoder().encode(`${[header, ...rows].join('\n')}\n`);
  const surveyed = surveyVehicle({
    readings: { vehicle: null, template, readings, leftOut: [], assumptions: [] },
    settings: resolveSettings(layersOf({ job: { aim: 'correct' }, shop: { machines: ['da'] } })),
    job: undefined,
    filmRecord: undefined,
    inputs: [],
    spots: [{ name: 'spots.csv', bytes, sha256: '' }],
  }).value;
  if (surveyed === undefined) throw new Error('the car is surveyed');
  const plan = planVehicle(surveyed, template.panels, undefined, []).value;
  if (plan === undefined) throw new Error('the car is planned');
  return plan;
}
const panelOf = ({ plan }: PlanResult, id: string) => {
  const found = plan.panels.find(({ survey }) => survey.panel.id === id);
  if (found === undefined) throw new Error(`no panel ${id}`);
  return found;
};
const strongestOn = (plan: PlanResult, id: string): string =>
  panelOf(plan, id).steps.reduce(
    (most, { combination }) => (combination.perSet > most.perSet ? combination : most),
    { perSet: 0, id: '' },
  ).id;

describe('a panel of a side that may have been painted again', () => {
  const after = (product: string): PlanResult =>
    planned(LEFT.flatMap((id) => triedOn(id, 140, product)));

  it('is worked no stronger than its own spot that frees it', () => {
    const own = after('medium');
    for (const id of LEFT) {
      const panel = panelOf(own, id);
      expect(sidePaintedWith(panel.survey)).toBeDefined();
      expect(panel.survey.limits.some(({ ofRepaint }) => ofRepaint !== undefined)).toBe(true);
      expect(panel.verdict).toBe('lighter');
      expect(strongestOn(own, id)).toBe('da/foam-soft/medium');
      expect(panel.reasons.map(({ code }) => code)).toContain('stronger-than-tried');
    }
  });

  it('is left where that clears too little, though more might go, and the page says what to try', () => {
    const own = after('fine');
    for (const id of LEFT) {
      const { verdict, survey, reasons } = panelOf(own, id);
      expect(verdict).toBe('leave');
      expect(survey.budget).toBeGreaterThan(1);
      expect(reasons[0]?.code).toBe('stronger-than-tried');
    }
  });

  it('holds no other panel to that, be it tried itself', () => {
    const one = planned([...triedOn('bonnet', 112), ...triedOn('door-front-left', 140)]);
    expect(strongestOn(one, 'door-front-left')).toBe('');
    for (const id of ['bonnet', 'roof']) expect(['', MILD]).not.toContain(strongestOn(one, id));
  });
});
