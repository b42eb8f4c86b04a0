/** A side that may have been painted again as a whole: a panel of it that its own spot frees is worked as repaint is. */
import { describe, expect, it } from 'vitest';
import { sidePaintedWith } from '../../../src/film/condition/painted-side.ts';
import { builtInTemplates } from '../../../src/formats/data/templates.ts';
import { planRequestOf } from '../../../src/tasks/plan/plan-request.ts';
import { type PlanResult, planVehicle } from '../../../src/tasks/plan/plan-vehicle.ts';
import { resolveSettings } from '../../../src/tasks/settings/settings.ts';
import { type SurveyResult, surveyVehicle } from '../../../src/tasks/survey/survey-vehicle.ts';
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

function surveyed(rows: readonly string[], read = readings): SurveyResult {
  const bytes = new TextEncoder().encode(`${[header, ...rows].join('\n')}\n`);
  const result = surveyVehicle({
    readings: { vehicle: null, template, readings: read, leftOut: [], assumptions: [] },
    settings: resolveSettings(layersOf({ job: { aim: 'correct' }, shop: { machines: ['da'] } })),
    job: undefined,
    filmRecord: undefined,
    inputs: [],
    spots: rows.length === 0 ? [] : [{ name: 'spots.csv', bytes, sha256: '' }],
  }).value;
  if (result === undefined) throw new Error('the car is surveyed');
  return result;
}

function planned(rows: readonly string[]): PlanResult {
  const plan = planVehicle(surveyed(rows), template.panels, undefined, []).value;
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

  it('gets no more at one place of it than its own spot freed', () => {
    const result = surveyed(LEFT.flatMap((id) => triedOn(id, 140, 'medium')));
    const request = planRequestOf(result, template.panels, new Map());
    const budgets = result.survey.panels
      .filter(({ panel }) => LEFT.includes(panel.id))
      .flatMap((part) =>
        [0.1, 0.3, 0.5].map((logSd) => [
          request.allowanceOnPlace?.(part, logSd).budget,
          request.allowanceAt(part, logSd).budget,
        ]),
      );
    expect(budgets).toHaveLength(12);
    for (const [onPlace = Number.NaN, ofPanel = Number.NaN] of budgets) {
      expect(onPlace).toBeGreaterThan(0);
      expect(onPlace).toBeLessThanOrEqual(ofPanel);
    }
  });

  it('holds no other panel to that, be it tried itself', () => {
    const one = planned([...triedOn('bonnet', 112), ...triedOn('door-front-left', 140)]);
    expect(strongestOn(one, 'door-front-left')).toBe('');
    for (const id of ['bonnet', 'roof']) expect(['', MILD]).not.toContain(strongestOn(one, id));
  });
});

describe('a panel that may be repaint by its own film', () => {
  /** The bonnet reads close under the line of repaint, 40 µm over the rest. */
  const car = [...OTHERS, ...LEFT].flatMap((id) =>
    [-4, -2, 0, 2, 4].map((off, i) => reading(id, `${i + 1}`, (id === 'bonnet' ? 151 : 112) + off)),
  );
  const bonnetOf = (rows: readonly string[]) => {
    const found = surveyed(rows, car).survey.panels.find(({ panel }) => panel.id === 'bonnet');
    if (found === undefined) throw new Error('no bonnet');
    return found;
  };
  const codesOf = (rows: readonly string[]) => bonnetOf(rows).limits.map(({ code }) => code);

  it('is freed by its own spot alone, no deeper than that went, and by one that left no colour', () => {
    expect(bonnetOf([]).budget).toBe(0);
    expect(bonnetOf(triedOn('roof', 112)).budget).toBe(0);
    const own = triedOn('bonnet', 151);
    expect(bonnetOf(own).budget).toBeGreaterThan(0);
    expect(codesOf(own)).toEqual(expect.arrayContaining(['sound-panels', 'spot-depth']));
    for (const said of ['', 'yes']) {
      const rows = own.map((row) => row.replace(/no$/, said));
      expect(bonnetOf(rows).budget).toBe(0);
    }
  });
});
