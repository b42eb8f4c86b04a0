import { describe, expect, it } from 'vitest';
import { metres, micrometres, minutes, squareMetres } from '../../src/base/units.ts';
import { ladder } from '../../src/correction/combination.ts';
import type { PanelPlan, Plan, PlannedStep } from '../../src/correction/plan.ts';
import { correctionModel, workModel } from '../../src/formats/models.ts';
import { planCautions } from '../../src/work/cautions.ts';
import { estimateWork, stepTime } from '../../src/work/estimate-work.ts';
import { fiveAround, panelOf, plainPanel, surveyOf } from '../film/car-builder.ts';

const rungs = ladder(correctionModel);

/** A step with a machine time given by hand, so that sums can be followed on paper. */
function step(id: string, sets: number, machineTime: number): PlannedStep {
  const combination = rungs.find((one) => one.id === id);
  if (combination === undefined) throw new Error(`no ${id}`);
  return {
    combination,
    sets,
    removal: micrometres(combination.perSet * sets),
    machineTime: minutes(machineTime),
  };
}

/** One section is .3721 m²: an area of so many sections makes round numbers. */
const SECTION = 0.3721;

function panel(id: string, sections: number, ...steps: readonly PlannedStep[]): PanelPlan {
  const survey = surveyOf({
    panels: [plainPanel(id, { area: squareMetres(sections * SECTION), trimLength: metres(2.5) })],
    readings: fiveAround(id, 112),
  });
  const none = micrometres(0);
  return {
    survey: panelOf(survey, id),
    verdict: steps.length === 0 ? 'leave' : 'polish',
    steps,
    removal: { median: none, mean: none, low: none, high: none },
    aimed: 0.85,
    expected: 0.85,
    risk: 0.01,
    riskIfThin: 0.02,
    already: 0,
    provisional: true,
    reasons: [],
    cautions: [],
    zones: [],
  };
}

const plan = (...panels: readonly PanelPlan[]): Plan => ({ panels, expectedPanelsBelowFloor: 0 });

const MEDIUM = 'da/foam-medium/medium';
const FINE = 'da/foam-soft/fine';

describe('the work of a small plan, followed by hand', () => {
  const roof = panel('roof', 4, step(MEDIUM, 3, 52), step(FINE, 1, 18));
  const door = panel('door', 2, step(MEDIUM, 2, 17), step(FINE, 1, 9));
  const bumper = panel('bumper', 3);
  const work = estimateWork(plan(roof, door, bumper), workModel);
  const amount = (material: string) => work.materials.find((one) => one.material === material);

  it('runs the machine for 52 + 18 + 17 + 9 = 96 minutes', () => {
    expect(work.machineMinutes).toBeCloseTo(96, 9);
  });

  it('adds 1.75 minutes a section and set for wiping and pad cleaning to a step', () => {
    // Roof, medium: 3 sets · 4 sections · (0.75 + 1) = 21 on top of 52.
    const [first] = roof.steps;
    if (first === undefined) throw new Error('the roof has steps');
    expect(stepTime(roof, first, workModel)).toBeCloseTo(73, 9);
  });

  it('polishes for 154.5 minutes with two set-ups of ten', () => {
    // Sections · sets: roof 12 + 4, door 4 + 2 = 22 · 1.75 = 38.5; 96 + 38.5 + 2 · 10 = 154.5
    expect(work.polishingMinutes).toBeCloseTo(154.5, 9);
  });

  it('takes the mean of every polishing time and of the fixed stages', () => {
    // Each likely time m is .8m … 1.5m: (0.8 + 4 + 1.5)/6 = 1.05 m; 154.5 · 1.05 = 162.225.
    // Fixed: inspect 100/6, read 160/6, mask 220/6, test spot 160/6, unmask 155/6, wipe 95/6,
    // remeasure 155/6: together 1050/6 … 100 + 160 + 220 + 160 + 155 + 95 + 155 = 1045 → 174.1667
    const fixed = workModel.stages.flatMap(({ time }) => time ?? []);
    expect(fixed).toHaveLength(7);
    expect(work.time.mean).toBeCloseTo(162.225 + 1045 / 6, 6);
  });

  it('spreads that mean by half of the stages’ variances, the pace and the job', () => {
    // A polishing time m: (1.05 − .8)(1.5 − 1.05)/7 m² = .0160714 m².
    // Steps with their wiping: 73, 25, 24, 12.5 and set-ups 10, 10.
    const squares = 73 ** 2 + 25 ** 2 + 24 ** 2 + 12.5 ** 2 + 10 ** 2 + 10 ** 2;
    const fixed = [
      [10, 15, 30],
      [15, 25, 45],
      [20, 35, 60],
      [15, 25, 45],
      [15, 25, 40],
      [10, 15, 25],
      [15, 25, 40],
    ].map(([a = 0, m = 0, b = 0]) => {
      const mean = (a + 4 * m + b) / 6;
      return ((mean - a) * (b - mean)) / 7;
    });
    const variance = (0.25 * 0.45 * squares) / 7 + fixed.reduce((sum, one) => sum + one, 0);
    const alone = variance / 2 / (162.225 + 1045 / 6) ** 2;
    expect(work.time.logSd).toBeCloseTo(Math.sqrt(Math.log(1 + alone) + 2 * 0.15 ** 2), 9);
  });

  it('buys product for the sets and for priming a pad', () => {
    // Medium: (3 · 4 + 2 · 2) sections · .3721 m² · 8 ml + one pad for two panels · 6 ml
    expect(amount('medium polish')?.quantity).toBeCloseTo(16 * SECTION * 8 + 6, 9);
    expect(amount('fine polish')?.quantity).toBeCloseTo(6 * SECTION * 8 + 6, 9);
    expect(amount('medium polish')?.unit).toBe('ml');
  });

  it('buys a pad for every two panels of a step', () => {
    expect(amount('medium foam pad 150\u00a0mm')).toEqual({
      material: 'medium foam pad 150\u00a0mm',
      quantity: 1,
      unit: 'pieces',
    });
    const third = panel('wing', 2, step(MEDIUM, 1, 5));
    const more = estimateWork(plan(roof, door, third), workModel).materials;
    expect(more.find(({ material }) => material === 'medium foam pad 150\u00a0mm')?.quantity).toBe(
      2,
    );
  });

  it('buys a towel for eight sections, tape for the trim and panel wipe for the area worked', () => {
    // 22 sections and sets: ⌈22/8⌉ = 3; two panels worked: 2 · 2.5 m; 6 · .3721 m² · 10 ml
    expect(amount('towels')?.quantity).toBe(3);
    expect(amount('masking tape')).toEqual({ material: 'masking tape', quantity: 5, unit: 'm' });
    expect(amount('panel wipe')?.quantity).toBeCloseTo(6 * SECTION * 10, 9);
  });

  it('gives the order of the whole job, protection after the last reading', () => {
    const ids = work.order.map(({ id }) => id);
    const inOrder = [
      'wash',
      'iron',
      'tar',
      'wash-again',
      'clay',
      'dry',
      'inspect',
      'read',
      'mask',
      'test-spot',
      'cut',
      'refine',
      'finish',
      'panel-wipe',
      'remeasure',
      'protect',
      'glass-last',
      'final',
    ];
    expect(ids.filter((id) => inOrder.includes(id))).toEqual(inOrder);
  });
});

describe('a pad and a product used in two steps', () => {
  it('are bought together, each combination priming its own pad', () => {
    const roof = panel(
      'roof',
      1,
      step('da/foam-medium/heavy', 1, 5),
      step(MEDIUM, 1, 5),
      step('da/foam-medium/fine', 1, 5),
    );
    const wing = panel('wing', 1, step('da/microfibre/medium', 2, 5));
    const { materials } = estimateWork(plan(roof, wing), workModel);
    const amount = (name: string) => materials.find(({ material }) => material === name)?.quantity;
    expect(amount('medium foam pad 150\u00a0mm')).toBe(3);
    expect(amount('medium polish')).toBeCloseTo(3 * SECTION * 8 + 2 * 6, 9);
  });
});

describe('hand–arm vibration (2002/44/EC; points by the HSE’s 2a² an hour)', () => {
  const points = (id: string, machineTime: number): number =>
    estimateWork(plan(panel('roof', 1, step(id, 1, machineTime))), workModel).vibrationPoints;
  const shaking = (magnitude: number): number =>
    estimateWork(plan(panel('roof', 1, step('rotary/foam-medium/medium', 1, 60))), {
      ...workModel,
      vibration: { ...workModel.vibration, rotary: magnitude, orbital: 0 },
    }).vibrationPoints;

  it('is 50 points for an hour at 5 m/s², and 200 at 10', () => {
    expect(shaking(5)).toBeCloseTo(50, 9);
    expect(shaking(10)).toBeCloseTo(200, 9);
  });

  it('reaches the action value of 100 in 8 h at 2.5 m/s² and the limit of 400 at 5', () => {
    expect(8 * shaking(2.5)).toBeCloseTo(workModel.vibration.actionPoints, 9);
    expect(8 * shaking(5)).toBeCloseTo(workModel.vibration.limitPoints, 9);
  });

  it('counts the rotary at 5 and an orbital machine at 8 m/s², in proportion to the time', () => {
    expect(points('rotary/foam-medium/medium', 30)).toBeCloseTo(25, 9);
    expect(points(MEDIUM, 30)).toBeCloseTo(64, 9);
  });

  it('is none by hand', () => {
    expect(points('hand/foam-medium/medium', 60)).toBe(0);
  });

  it('adds up over steps and panels', () => {
    const both = plan(
      panel('roof', 1, step('rotary/foam-medium/medium', 1, 60), step(FINE, 1, 30)),
      panel('door', 1, step(FINE, 1, 30)),
    );
    expect(estimateWork(both, workModel).vibrationPoints).toBeCloseTo(50 + 64 + 64, 9);
  });

  it.each([
    [187, 1, false],
    [188, 2, true],
    [376, 3, true],
  ])('of %d minutes by orbital machine is spread over %d days or hands', (time, days, spread) => {
    // 400 points last 400/128 h = 187.5 min.
    const work = estimateWork(plan(panel('roof', 1, step(MEDIUM, 1, time))), workModel);
    const text = planCautions(work, workModel).find(({ code }) => code === 'vibration')?.text ?? '';
    expect(text.includes(`: ${days} days or more hands`)).toBe(spread);
  });
});

describe('a plan without work', () => {
  it('takes no time and uses nothing up', () => {
    const work = estimateWork(plan(panel('roof', 2)), workModel);
    expect(work.time).toEqual({ mean: 0, median: 0, logSd: 0 });
    expect(work).toMatchObject({
      machineMinutes: 0,
      polishingMinutes: 0,
      vibrationPoints: 0,
      materials: [],
    });
  });
});
