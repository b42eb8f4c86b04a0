import { beforeEach, describe, expect, it } from 'vitest';
import { micrometres, minutes, squareMetres } from '../../src/base/units.ts';
import type { LocalWork } from '../../src/correction/plan/plan.ts';
import { correctionModel, workModel } from '../../src/formats/models.ts';
import { planCautions } from '../../src/work/cautions.ts';
import { estimateWork, type WorkEstimate } from '../../src/work/estimate-work.ts';
import { usualScope } from '../../src/work/job-scope.ts';
import { FINE, MEDIUM, noRemoval, panel, plan, SECTION, step } from './small-plans.ts';

/** A vehicle of the usual area, so that stages of the whole vehicle take what their numbers say. */
const vehicleArea = squareMetres(13.6);

describe('the work of a small plan, followed by hand', () => {
  const roof = panel('roof', 4, [step(MEDIUM, 3, 52), step(FINE, 1, 18)]);
  const door = panel('door', 2, [step(MEDIUM, 2, 17), step(FINE, 1, 9)]);
  const bumper = panel('bumper', 3);
  let work: WorkEstimate;
  beforeEach(() => {
    work = estimateWork(plan(roof, door, bumper), workModel, { vehicleArea });
  });
  const amount = (material: string) => work.materials.find((one) => one.material === material);
  const stage = (id: string) => work.stages.find((one) => one.stage.id === id);

  it('runs the machine for 52 + 18 + 17 + 9 = 96 minutes', () => {
    expect(work.machineMinutes).toBeCloseTo(96, 9);
  });

  it('cuts for 120 minutes: machine, 1.75 a section and set for wiping and pad, 10 to set up', () => {
    // Roof 52 + 3 · 4 · 1.75 = 73; door 17 + 2 · 2 · 1.75 = 24; one set-up of 10: 107.
    expect(stage('cut')?.likely).toBeCloseTo(107, 9);
  });

  it('finishes for 47.5 minutes, and has no stage of a step that it has none of', () => {
    // Roof 18 + 4 · 1.75 = 25; door 9 + 2 · 1.75 = 12.5; one set-up of 10.
    expect(stage('finish')?.likely).toBeCloseTo(47.5, 9);
    expect(stage('refine')).toBeUndefined();
  });

  it('lays every stage that takes time into its days, all of them the middle of the job', () => {
    const laid = work.days.flatMap(({ stages }) => stages);
    const timed = work.stages.filter(({ mean }) => mean > 0).map((one) => one.stage.id);
    expect([...new Set(laid.map((one) => one.stage))]).toEqual(timed);
    const total = laid.reduce((sum, { time }) => sum + time, 0);
    expect(total).toBeCloseTo(work.job.time.median, 6);
  });

  it('tells each stage as long as it is in the days, all of them the middle of the job', () => {
    const laid = work.days.flatMap(({ stages }) => stages);
    for (const { stage: one, mean } of work.stages) {
      const own = laid.filter((each) => each.stage === one.id);
      const clock = own.reduce((sum, { time }) => sum + time, 0);
      expect(mean * work.medianShare, one.id).toBeCloseTo(clock, 6);
    }
  });

  it('lets a stage of polishing wait once, after the last of its panels', () => {
    const wing = panel('wing', 2, [step(MEDIUM, 1, 17)]);
    const daysWith = (wait: number): number => {
      const stages = workModel.stages.map((one) =>
        one.id === 'cut' ? { ...one, wait: minutes(wait) } : one,
      );
      return estimateWork(plan(roof, door, wing), { ...workModel, stages }, { vehicleArea }).days
        .length;
    };
    // Three days to the minute: all that follows is at the same time of a later day.
    expect(daysWith(3 * 1440)).toBe(daysWith(0) + 3);
  });

  it('has as many loads of towels to wash as its towels fill, and no piece in shares', () => {
    const towels = work.jobMaterials.find(({ id }) => id === 'towels')?.quantity ?? Number.NaN;
    const shares = work.stages
      .flatMap(({ materials }) => materials)
      .filter(({ id }) => id === 'towels')
      .reduce((sum, { quantity }) => sum + quantity, 0);
    expect(shares % 1).toBeGreaterThan(0.001);
    expect(towels).toBe(Math.ceil(shares));
    expect(work.towelLoads).toBe(Math.ceil(towels / workModel.materials.towelsPerLoad));
    const millilitres = work.jobMaterials.filter(({ unit }) => unit === 'ml');
    expect(millilitres.some(({ quantity }) => quantity % 1 > 0.001)).toBe(true);
  });

  it('polishes for 154.5 minutes', () => {
    expect(work.polishingMinutes).toBeCloseTo(154.5, 9);
  });

  it('takes the mean of every polishing time and of the stages of the correction', () => {
    // Each likely time m is .8m … 1.5m: (0.8 + 4 + 1.5)/6 = 1.05 m; 154.5 · 1.05 = 162.225.
    // Of the whole vehicle: inspect 100/6, read 160/6; of the job: test spot 160/6; together 70.
    // By tape, 5 of 40.9 m: mask 220/6, unmask 155/6: 62.5 · 5/40.9 = 7.6406.
    // By area worked, 6 · .3721 = 2.2326 of 13.6 m²: wipe 95/6, remeasure 155/6: 41.6667 · .164162 = 6.8401.
    expect(work.time.mean).toBeCloseTo(162.225 + 70 + 7.6406 + 6.8401, 3);
  });

  it('spreads that mean by half of the stages’ variances, the pace and the job', () => {
    // A polishing time m: (1.05 − .8)(1.5 − 1.05)/7 m² = .0160714 m².
    // Steps with their wiping: 73, 25, 24, 12.5 and set-ups 10, 10: squares add to 6,886.25 → 110.672.
    const steps = 0.0160714 * (73 ** 2 + 25 ** 2 + 24 ** 2 + 12.5 ** 2 + 10 ** 2 + 10 ** 2);
    // Inspect (6.6667 · 13.3333)/7 = 12.6984; read and test spot (11.6667 · 18.3333)/7 = 30.5556 each.
    // Mask 55.5556 and unmask (10.8333 · 14.1667)/7 = 21.9246, both · (5/40.9)² = .0149449.
    // Wipe (5.8333 · 9.1667)/7 = 7.6389 and remeasure 21.9246, both · .164162² = .0269491.
    const besides =
      12.6984 + 2 * 30.5556 + (55.5556 + 21.9246) * 0.0149449 + (7.6389 + 21.9246) * 0.0269491;
    const alone = (steps + besides) / 2 / work.time.mean ** 2;
    expect(work.time.logSd).toBeCloseTo(Math.sqrt(Math.log(1 + alone) + 2 * 0.15 ** 2), 6);
  });

  it('takes for the rest of the job what its stages say of a usual saloon', () => {
    // Means (a + 4m + b)/6: record 95/6, 4 wheels · 49/6 = 196/6, shuts 76/6, pre-wash 76/6, wash 185/6,
    // iron 76/6, tar 81/6, again 114/6, clay 260/6, dry 114/6, glass 76/6 twice, wax 280/6,
    // final 95/6, hand over 100/6: 1,900/6 = 316.6667.
    const rest = [95, 196, 76, 76, 185, 76, 81, 114, 260, 114, 76, 76, 280, 95, 100];
    const sum = rest.reduce((total, value) => total + value, 0) / 6;
    expect(work.job.time.mean).toBeCloseTo(work.time.mean + sum, 6);
  });

  it('buys product for the sets and for priming a pad', () => {
    // Medium: (3 · 4 + 2 · 2) sections · .3721 m² · 8 ml + one pad for two panels · 6 ml
    expect(amount('medium polish')?.quantity).toBeCloseTo(16 * SECTION * 8 + 6, 9);
    expect(amount('fine polish')?.quantity).toBeCloseTo(6 * SECTION * 8 + 6, 9);
    expect(amount('medium polish')).toMatchObject({ id: 'medium', unit: 'ml' });
  });

  it('buys a pad for every two panels of a step', () => {
    expect(amount('medium foam pad 150\u00a0mm')).toEqual({
      id: 'foam-medium-150',
      material: 'medium foam pad 150\u00a0mm',
      quantity: 1,
      unit: 'pieces',
    });
    const third = panel('wing', 2, [step(MEDIUM, 1, 5)]);
    const more = estimateWork(plan(roof, door, third), workModel).materials;
    expect(more.find(({ id }) => id === 'foam-medium-150')?.quantity).toBe(2);
  });

  it('buys a towel for eight sections, tape for the trim and panel wipe for the area worked', () => {
    // 22 sections and sets: ⌈22/8⌉ = 3; two panels worked: 2 · 2.5 m; 6 · .3721 m² · 10 ml
    expect(amount('towels')?.quantity).toBe(3);
    expect(amount('masking tape')).toMatchObject({ quantity: 5, unit: 'm' });
    expect(amount('panel wipe')?.quantity).toBeCloseTo(6 * SECTION * 10, 9);
    expect(work.towelLoads).toBe(1);
  });

  it('wears pads out by the sections they work', () => {
    // 16 of 120 sections on medium foam, 6 of 120 on soft.
    expect(work.pads).toEqual([
      {
        id: 'foam-medium-150',
        material: 'medium foam pad 150\u00a0mm',
        ready: 1,
        wornOut: expect.closeTo(16 / 120, 12) as number,
      },
      {
        id: 'foam-soft-150',
        material: 'soft foam pad 150\u00a0mm',
        ready: 1,
        wornOut: expect.closeTo(6 / 120, 12) as number,
      },
    ]);
  });

  it('uses up for the job what washing, cleaning and protecting take', () => {
    const all = Object.fromEntries(work.jobMaterials.map(({ id, quantity }) => [id, quantity]));
    // 4 wheels · 60 ml; two washes of 13.6 m² · 3 ml; iron 13.6 · 20; a third of a clay block, so one.
    expect(all['wheel-cleaner']).toBe(240);
    expect(all['shampoo']).toBeCloseTo(81.6, 9);
    expect(all['iron-remover']).toBeCloseTo(272, 9);
    expect(all['clay']).toBe(1);
    expect(all['wax']).toBeCloseTo(27.2, 9);
    expect(all['glass-cleaner']).toBe(60);
  });
});

describe('what a job takes by its scope', () => {
  const roof = panel('roof', 4, [step(MEDIUM, 3, 52)]);
  const of = (scope: Partial<typeof usualScope>, area = 13.6) =>
    estimateWork(plan(roof), workModel, {
      scope: { ...usualScope, ...scope },
      vehicleArea: squareMetres(area),
    });
  const minutesOf = (work: ReturnType<typeof of>, id: string) =>
    work.stages.find(({ stage }) => stage.id === id)?.likely;

  it('is an interior of 150 minutes, 210 when it comes in heavily soiled, 120 when lightly', () => {
    expect(minutesOf(of({ interior: true }), 'interior')).toBe(150);
    expect(minutesOf(of({ interior: true, soiling: 'heavy' }), 'interior')).toBeCloseTo(210, 9);
    expect(minutesOf(of({ interior: true, soiling: 'light' }), 'interior')).toBeCloseTo(120, 9);
    expect(minutesOf(of({}), 'interior')).toBeUndefined();
  });

  it.each([
    [11.4, 0.85],
    [11.5, 1],
    [14, 1],
    [14.1, 1.2],
    [20, 1.2],
    [20.1, 1.5],
  ])('goes by the class of a vehicle of %d m²: an interior takes %d times as long', (area, by) => {
    expect(minutesOf(of({ interior: true }, area), 'interior')).toBeCloseTo(150 * by, 9);
  });

  it('washes twice the area in twice the time', () => {
    expect(minutesOf(of({}, 27.2), 'wash')).toBeCloseTo(60, 9);
  });

  it('cleans four wheels on the vehicle in 32 minutes, and off it in 112', () => {
    expect(minutesOf(of({}), 'wheels')).toBe(32);
    expect(minutesOf(of({ wheels: 'off' }), 'wheels-off')).toBe(112);
    const left = of({ wheels: 'none' });
    expect(left.order.filter(({ id }) => id.startsWith('wheels'))).toEqual([]);
  });

  it('protects with one of wax, sealant and coating, or with none', () => {
    const protection = (kind: typeof usualScope.protection) =>
      of({ protection: kind })
        .order.filter(({ skill }) => skill === 'protect')
        .map(({ id }) => id);
    expect(protection('coating')).toEqual(['coating']);
    expect(protection('sealant')).toEqual(['sealant']);
    expect(protection('none')).toEqual([]);
  });

  it('leaves chemistry or clay out where it is not asked for', () => {
    const ids = (kind: typeof usualScope.decontamination) =>
      of({ decontamination: kind })
        .order.map(({ id }) => id)
        .filter((id) => ['iron', 'tar', 'wash-again', 'clay'].includes(id));
    expect(ids('full')).toEqual(['iron', 'tar', 'wash-again', 'clay']);
    expect(ids('chemical')).toEqual(['iron', 'tar', 'wash-again']);
    expect(ids('clay')).toEqual(['clay']);
    expect(ids('none')).toEqual([]);
  });

  it('keeps to an order of its own', () => {
    const order = ['record', 'wash', 'dry', 'read', 'mask', 'cut', 'refine', 'finish', 'hand-over'];
    expect(of({ order }).order.map(({ id }) => id)).toEqual(order);
  });
});

describe('a pad and a product used in two steps', () => {
  it('are bought together, each combination priming its own pad', () => {
    const roof = panel('roof', 1, [
      step('da/foam-medium/heavy', 1, 5),
      step(MEDIUM, 1, 5),
      step('da/foam-medium/fine', 1, 5),
    ]);
    const wing = panel('wing', 1, [step('da/microfibre/medium', 2, 5)]);
    const { materials } = estimateWork(plan(roof, wing), workModel);
    const amount = (name: string) => materials.find(({ material }) => material === name)?.quantity;
    expect(amount('medium foam pad 150\u00a0mm')).toBe(3);
    expect(amount('medium polish')).toBeCloseTo(3 * SECTION * 8 + 2 * 6, 9);
  });

  it('are at least as many pads as the work wears out', () => {
    // 130 sections of 120 that a pad lasts, on one panel.
    const side = panel('side', 65, [step(MEDIUM, 2, 600)]);
    const { materials, pads } = estimateWork(plan(side), workModel);
    expect(materials.find(({ id }) => id === 'foam-medium-150')?.quantity).toBe(2);
    expect(pads[0]?.wornOut).toBeCloseTo(130 / 120, 9);
  });
});

describe('a spot at a deep defect', () => {
  const kind = correctionModel.defects.find(({ id }) => id === 'deep-scratches');
  if (kind === undefined) throw new Error('no such defect');
  const spot: LocalWork = {
    defect: { kind, grade: 3, depth: micrometres(4) },
    steps: [step('da-small/foam-medium/medium', 2, 3)],
    removal: noRemoval,
    cleared: 0.5,
    risk: 0.01,
    place: null,
    reasons: [],
  };
  const roof = panel('roof', 4, [step(MEDIUM, 1, 17)]);

  it('adds its machine time, a wipe and a pad a set, and the set-up of its own combination', () => {
    const plain = estimateWork(plan(roof), workModel);
    const more = estimateWork(plan({ ...roof, local: [spot] }), workModel);
    expect(more.machineMinutes - plain.machineMinutes).toBeCloseTo(3, 9);
    // 3 + 2 · 1.75 + 10
    expect(more.polishingMinutes - plain.polishingMinutes).toBeCloseTo(16.5, 9);
  });

  it('stands apart, in the days, from the panels that are gone over as a whole', () => {
    const bonnet = { ...panel('bonnet', 4), local: [spot] };
    const { days } = estimateWork(plan({ ...roof, local: [spot] }, bonnet), workModel);
    const cut = days.flatMap(({ stages }) => stages).filter(({ stage }) => stage === 'cut');
    expect(cut.map(({ panels, atMarks }) => [panels, atMarks])).toEqual([
      [['roof'], ['roof', 'bonnet']],
    ]);
  });
});

describe('what is in hand while a panel is worked', () => {
  const held = (...ids: readonly string[]) =>
    estimateWork(
      plan(
        panel(
          'roof',
          4,
          ids.map((id) => step(id, 1, 10)),
        ),
      ),
      workModel,
    ).inHand;

  it('is a machine, the pad alone where all is by hand, or either', () => {
    expect(held(MEDIUM, FINE)).toBe('machine');
    expect(held('hand/foam-medium/medium')).toBe('pad');
    expect(held(MEDIUM, 'hand/foam-soft/fine')).toBe('machine or pad');
  });
});

describe('hand–arm vibration (2002/44/EC; points by the HSE’s 2a² an hour)', () => {
  const points = (id: string, machineTime: number): number =>
    estimateWork(plan(panel('roof', 1, [step(id, 1, machineTime)])), workModel).vibrationPoints;
  const shaking = (magnitude: number): number =>
    estimateWork(plan(panel('roof', 1, [step('rotary/foam-medium/medium', 1, 60)])), {
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

  it('goes by the machine’s own figure where the shop has one', () => {
    const one = step(MEDIUM, 1, 60);
    const { combination } = one;
    const quiet = {
      ...one,
      combination: { ...combination, machine: { ...combination.machine, vibration: 3 } },
    };
    const work = estimateWork(plan(panel('roof', 1, [quiet])), workModel);
    expect(work.vibrationPoints).toBeCloseTo(18, 9);
  });

  it('adds up over steps and panels', () => {
    const both = plan(
      panel('roof', 1, [step('rotary/foam-medium/medium', 1, 60), step(FINE, 1, 30)]),
      panel('door', 1, [step(FINE, 1, 30)]),
    );
    expect(estimateWork(both, workModel).vibrationPoints).toBeCloseTo(50 + 64 + 64, 9);
  });

  const caution = (time: number, scope = usualScope): string => {
    const work = estimateWork(plan(panel('roof', 1, [step(MEDIUM, 1, time)])), workModel, {
      scope,
    });
    return planCautions(work, workModel).find(({ code }) => code === 'vibration')?.text ?? '';
  };

  // Likely minutes are · 1.05 in the mean, · e^(−.045/2) in the middle: 128 points an hour become 131.4.
  it('is told of the worst day with both values, and what to do only past the first of them', () => {
    expect(caution(40)).toBe('vibration up to 88 points a hand in a day (action 100, limit 400)');
    expect(caution(90)).toBe(
      'vibration up to 197 points a hand in a day (action 100, limit 400): share the machine, keep hands warm, rest them',
    );
  });

  it('averages no day away: two of three at the limit are told as the limit, hands share theirs', () => {
    expect(caution(376)).toMatch(/^vibration up to 400 points a hand in a day \(/);
    expect(caution(300, { ...usualScope, hands: 2, hoursPerDay: 16 })).toMatch(
      /^vibration up to 328 points a hand in a day \(/,
    );
  });
});

describe('a plan without work', () => {
  const work = () => estimateWork(plan(panel('roof', 2)), workModel);

  it('takes no time for a correction and uses nothing up for it', () => {
    expect(work().time).toEqual({ mean: 0, median: 0, logSd: 0 });
    expect(work()).toMatchObject({
      machineMinutes: 0,
      polishingMinutes: 0,
      vibrationPoints: 0,
      materials: [],
      pads: [],
    });
  });

  it('still washes the vehicle and hands it over', () => {
    expect(work().job.time.mean).toBeGreaterThan(0);
    expect(work().stages.every(({ stage }) => stage.part === 'rest')).toBe(true);
  });
});
