import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { micrometres, newtons, seconds } from '../../../src/base/units.ts';
import { panelFlux, standingWarming } from '../../../src/correction/heat/heat.ts';
import type { CorrectionModel, Machine } from '../../../src/correction/removal/catalogue.ts';
import { ladder } from '../../../src/correction/removal/combination.ts';
import {
  cutsFasterThan,
  type MethodChain,
  methodChain,
} from '../../../src/correction/removal/method.ts';
import { contactTime } from '../../../src/correction/removal/removal-rate.ts';
import { correctionModel } from '../../../src/formats/models.ts';

function chain(id: string, model: CorrectionModel = correctionModel): MethodChain {
  const combination = ladder(model).find((one) => one.id === id);
  if (combination === undefined) throw new Error(`no ${id}`);
  return methodChain(combination, model, seconds(105));
}

const withRate = (rate: number, logSd?: number): CorrectionModel => ({
  ...correctionModel,
  rates: new Map([
    ['da/wool/heavy', { rate: micrometres(rate), ...(logSd === undefined ? {} : { logSd }) }],
  ]),
});

describe('the chain from setting to rate', () => {
  // The project's own check values, worked out by hand from the stated machines.
  it.each([
    ['da/foam-soft/fine', 0.282],
    ['da/foam-medium/medium', 0.897],
    ['da/microfibre/heavy', 2.017],
    ['rotary/foam-soft/heavy', 1.401],
    ['rotary/wool/heavy', 3.402],
  ])('gives %s a median of %d µm a set', (id, um) => {
    expect(chain(id).rate.median).toBeCloseTo(um, 3);
  });

  it('shows what it is made of: coefficient, pressure, speed and contact give the rate (by hand)', () => {
    const made = chain('da/foam-medium/medium');
    // 49 N on a 150 mm pad; π · 15 mm · 70 a second; 4 passes · π · .15/(4 · .075 · .5).
    expect(made.coefficient).toBeCloseTo(7.8e-12, 20);
    expect(made.pressure).toBeCloseTo(2772.8, 1);
    expect(made.speed).toBeCloseTo(3.2987, 4);
    expect(made.contact).toBeCloseTo(12.566, 3);
    const { coefficient, pressure, speed, contact, derived } = made;
    expect(1e6 * coefficient * pressure * speed * contact).toBeCloseTo(derived.median, 12);
    expect(chain('da/wool/heavy').coefficient / coefficient).toBeCloseTo(
      (chain('da/wool/medium').coefficient * chain('da/foam-medium/heavy').coefficient) /
        coefficient ** 2,
      9,
    );
    expect(made).toMatchObject({ own: null, learned: null });
  });

  it('gives a range that holds nine cases of ten at ln-SD .552', () => {
    const { rate } = chain('da/foam-medium/medium');
    // exp(1.6449 · √(.35² + .40² + .15²)) = 2.4803
    expect(rate.logSd).toBeCloseTo(0.5523, 4);
    expect(rate.high / rate.median).toBeCloseTo(2.48, 2);
    expect(rate.median / rate.low).toBeCloseTo(2.48, 2);
  });

  it('has rotary cut 2.38 times faster per minute than dual action, with the same pad and product', () => {
    const ratio = cutsFasterThan(chain('rotary/wool/heavy'), chain('da/wool/heavy'));
    expect(ratio).toBeCloseTo(2.38, 2);
  });

  it('serves the stages that both pad and product serve', () => {
    expect(chain('da/foam-soft/fine').stages).toEqual(['finish']);
    expect(chain('da/wool/medium').stages).toEqual(['cut', 'refine']);
    expect(chain('da/wool/fine').stages).toEqual([]);
  });

  it('takes a section in 4.4 minutes by dual action and 2.8 by rotary', () => {
    expect(chain('da/wool/heavy').sectionMinutes).toBeCloseTo(4.41, 2);
    expect(chain('rotary/wool/heavy').sectionMinutes).toBeCloseTo(2.76, 2);
    expect(chain('da/wool/heavy').minutesPerSquareMetre).toBeCloseTo(4.41 / 0.3721, 1);
  });
});

describe('a rate that the shop measured', () => {
  it('stands above the derived one, which is kept beside it', () => {
    const { rate, derived, own } = chain('da/wool/heavy', withRate(1.2, 0.2));
    expect(rate.median).toBe(1.2);
    expect(own?.range).toEqual(rate);
    expect(derived.median).toBeCloseTo(chain('da/wool/heavy').rate.median, 12);
  });

  it('keeps the spread of paints and steps, and puts its own in the place of the combination’s', () => {
    expect(chain('da/wool/heavy', withRate(1.2, 0.2)).rate.logSd).toBeCloseTo(
      Math.hypot(0.35, 0.2, 0.15),
      12,
    );
    expect(chain('da/wool/heavy', withRate(1.2)).rate.logSd).toBeCloseTo(0.5523, 4);
  });

  it('moves the combination on the ladder, and hard or soft paint moves it in proportion', () => {
    const rungOf = (model: CorrectionModel) => chain('da/wool/heavy', model).combination.rung;
    expect(rungOf(withRate(0.1))).toBeLessThan(rungOf(correctionModel));
    const soft = ladder(withRate(0.1), () => 1.5).find(({ id }) => id === 'da/wool/heavy');
    expect(soft?.perSet).toBeCloseTo(0.15, 12);
  });
});

describe('Preston’s chain, by another way', () => {
  it.each(['da', 'rotary', 'da-small', 'da-forced'])(
    'by %s takes κ·F per metre slid and square metre worked, whatever pressure and contact time',
    (id) => {
      // Wear volume = κ·F·L (Archard's form): sliding path L = v·T over the section. No πd²/4 enters.
      const { combination, rate, sectionMinutes } = chain(`${id}/foam-firm/heavy`);
      const { machine } = combination;
      const path = meanSpeedByIntegration(machine) * sectionMinutes * 60;
      const depth = (7.8e-12 * 1.15 * 1.5 * machine.force * path) / 0.3721;
      expect(rate.median / (depth * 1e6)).toBeCloseTo(1, 3);
    },
  );

  it('has a spot under the pad as long as the chords of its strokes last', () => {
    const machine = chain('da/wool/heavy').combination.machine;
    expect(contactTime(machine, correctionModel.removal)).toBeCloseTo(
      contactByChords(0.15, 0.075, 0.5, 4),
      3,
    );
  });
});

describe('what moves removal, and which way', () => {
  it('is more with force, speed and passes, and less with a faster arm', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 10, max: 90, noNaN: true }),
        fc.double({ min: 0.02, max: 0.3, noNaN: true }),
        fc.integer({ min: 600, max: 3000 }),
        fc.integer({ min: 1, max: 8 }),
        fc.double({ min: 1.02, max: 2, noNaN: true }),
        (force, arm, rpm, passes, more) => {
          const rate = (by: { force?: number; arm?: number; rpm?: number; passes?: number }) => {
            const machines = correctionModel.machines.map(
              (machine): Machine => ({
                ...machine,
                motion: { kind: 'rotary', rpm: by.rpm ?? rpm },
                force: newtons(by.force ?? force),
                armSpeed: (by.arm ?? arm) as Machine['armSpeed'],
              }),
            );
            const removal = { ...correctionModel.removal, passes: by.passes ?? passes };
            return chain('rotary/wool/heavy', { ...correctionModel, machines, removal }).rate
              .median;
          };
          const usual = rate({});
          expect(rate({ force: force * more })).toBeGreaterThan(usual);
          expect(rate({ rpm: rpm * more })).toBeGreaterThan(usual);
          expect(rate({ passes: passes + 1 })).toBeGreaterThan(usual);
          expect(rate({ arm: arm * more })).toBeLessThan(usual);
        },
      ),
    );
  });
});

describe('the heat of a combination', () => {
  it('is worked out for each kind of skin, from a pass to a whole step', () => {
    const { heat } = chain('rotary/wool/heavy');
    expect(heat.map(({ skin }) => skin)).toEqual(['steel', 'aluminium', 'plastic']);
    for (const { perPass, perSet, perStep, reached } of heat) {
      expect(perSet).toBeGreaterThan(perPass);
      expect(perStep).toBeGreaterThan(perSet);
      expect(reached).toBe(20 + perStep);
    }
  });

  it('asks for caution where a panel already stands warm in the sun', () => {
    const start = 35 as typeof correctionModel.heat.start;
    const warm = { ...correctionModel.heat, start, room: start };
    const { heat } = chain('rotary/wool/heavy', { ...correctionModel, heat: warm });
    expect(heat[0]?.verdict).toBe('caution');
    expect(chain('rotary/wool/heavy').heat[0]?.verdict).toBe('cool');
  });

  it('lets a pad stand until the panel is at the caution', () => {
    const { heat } = chain('rotary/wool/heavy');
    const model = correctionModel.heat;
    const { machine } = chain('rotary/wool/heavy').combination;
    for (const { skin, standing } of heat) {
      const rise = standingWarming(panelFlux(machine, model), standing, skin, model);
      expect(rise).toBeCloseTo(model.caution - model.start, 9);
    }
  });

  it('lets a pad stand for no time at all on a panel that is too warm already', () => {
    const hot = { ...correctionModel.heat, start: 50 as typeof correctionModel.heat.start };
    const { heat } = chain('rotary/wool/heavy', { ...correctionModel, heat: hot });
    expect(heat.map(({ standing }) => standing)).toEqual([0, 0, 0]);
  });
});

/** Mean over the pad's face and a turn of the orbit of how fast a point of it slides. */
function meanSpeedByIntegration({ motion, padDiameter }: Machine): number {
  if (motion.kind === 'hand') throw new Error('hands do not turn');
  const radius = padDiameter / 2000;
  const disc = (rpm: number): number => {
    const rings = 20_000;
    let sum = 0;
    for (let i = 0; i < rings; i += 1) {
      const r = ((i + 0.5) / rings) * radius;
      sum += ((2 * Math.PI * rpm) / 60) * r * 2 * Math.PI * r * (radius / rings);
    }
    return sum / (Math.PI * radius ** 2);
  };
  if (motion.kind === 'rotary') return disc(motion.rpm);
  const circumference = (Math.PI * motion.throwDiameter) / 1000;
  const orbit = (circumference * motion.orbitsPerMinute) / 60;
  return motion.forcedRpm === 0 ? orbit : Math.hypot(orbit, disc(motion.forcedRpm));
}

/** Strokes a pad apart by (1 − overlap)·d; a spot lies anywhere between them; each stroke covers it along a chord. */
function contactByChords(d: number, arm: number, overlap: number, passes: number): number {
  const spacing = d * (1 - overlap);
  const places = 4000;
  let sum = 0;
  for (let i = 0; i < places; i += 1) {
    const offset = ((i + 0.5) / places) * spacing;
    for (let stroke = -5; stroke <= 5; stroke += 1) {
      const y = offset + stroke * spacing;
      if (Math.abs(y) < d / 2) sum += (2 * Math.sqrt((d / 2) ** 2 - y ** 2)) / arm;
    }
  }
  return (passes * sum) / places;
}
