import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { degreesCelsius, kelvins, newtons, seconds } from '../../../src/base/units.ts';
import {
  heatVerdict,
  panelFlux,
  passWarming,
  standingTime,
  standingWarming,
  warmest,
  workingWarming,
} from '../../../src/correction/heat/heat.ts';
import { SKINS, type Skin } from '../../../src/correction/heat/heat-model.ts';
import type { Machine } from '../../../src/correction/removal/catalogue.ts';
import { contactTime, setTime } from '../../../src/correction/removal/removal-rate.ts';
import { correctionModel } from '../../../src/formats/models.ts';

const { heat, removal } = correctionModel;
const machine = (id: string): Machine => {
  const found = correctionModel.machines.find((one) => one.id === id);
  if (found === undefined) throw new Error(`no ${id}`);
  return found;
};
const da = machine('da');
const rotary = machine('rotary');
const oneSet = { sets: 1, pause: seconds(0) };

describe('a pad that stands still', () => {
  it('at 1100 rpm for 10 s warms steel by about 12.5 K (workshop demonstration: 13)', () => {
    const standing: Machine = { ...rotary, motion: { kind: 'rotary', rpm: 1100 } };
    const rise = standingWarming(panelFlux(standing, heat), seconds(10), 'steel', heat);
    expect(rise).toBeCloseTo(12.46, 2);
    expect(Math.abs(rise - 13)).toBeLessThan(1);
  });

  it('warms metal in proportion to its time, and plastic to the root of it', () => {
    const rise = (skin: Skin, t: number) => standingWarming(2000, seconds(t), skin, heat);
    expect(rise('steel', 20)).toBeCloseTo(2 * rise('steel', 10), 12);
    expect(rise('aluminium', 20)).toBeCloseTo(2 * rise('aluminium', 10), 12);
    expect(rise('plastic', 40)).toBeCloseTo(2 * rise('plastic', 10), 12);
  });

  it('may stand for just as long as its warming takes', () => {
    for (const skin of SKINS) {
      const time = standingTime(3000, kelvins(23), skin, heat);
      expect(standingWarming(3000, time, skin, heat)).toBeCloseTo(23, 9);
    }
  });
});

describe('the heat that a sheet takes up (handbook values of the metals)', () => {
  it('is ρcδ: 0.8 mm of steel at 7850 kg/m³ and 490 J/kgK, 0.9 mm of aluminium at 2700 and 900', () => {
    expect(heat.steelSheet).toBeCloseTo(7850 * 490 * 0.8e-3, 0);
    expect(heat.aluminiumSheet).toBeCloseTo(2700 * 900 * 0.9e-3, 0);
  });

  it('is √(λρc) for a half-space of polypropylene', () => {
    expect(heat.plasticEffusivity).toBeCloseTo(Math.sqrt(0.2 * 900 * 1900), 0);
  });
});

describe('a pad that moves', () => {
  it('puts in, without cooling, what the friction of the whole set does on the section', () => {
    // Energy: share·μ·F·v over the machine time, spread over the section. Neither pressure nor contact time.
    const model = { removal, heat: { ...heat, cooling: 0 } };
    const orbitSpeed = Math.PI * 0.015 * 70;
    const energy = 0.6 * 0.4 * 49 * orbitSpeed * 60 * setTime(da, removal.section, removal);
    expect(workingWarming(da, model, 'steel', oneSet)).toBeCloseTo(
      energy / removal.section / 3077,
      9,
    );
  });

  it('agrees with small steps of time through heating and cooling of a sheet', () => {
    const steps = sheetByTimeSteps(rotary, 3, 105);
    const formula = workingWarming(rotary, correctionModel, 'steel', {
      sets: 3,
      pause: seconds(105),
    });
    expect(Math.abs(formula - steps) / steps).toBeLessThan(0.01);
    expect(formula).toBeCloseTo(17.51, 2);
  });

  it('agrees with small steps of time and depth through conduction into plastic', () => {
    const steps = plasticByFiniteDifferences(da, 1);
    const formula = workingWarming(da, correctionModel, 'plastic', oneSet);
    expect(Math.abs(formula - steps) / steps).toBeLessThan(0.03);
  });

  it('warms aluminium more than steel in one pass, and plastic most', () => {
    const [steel = 0, aluminium = 0, plastic = 0] = SKINS.map((skin) =>
      passWarming(da, correctionModel, skin),
    );
    expect(steel).toBeCloseTo(2.24, 2);
    expect(aluminium).toBeGreaterThan(steel);
    expect(plastic).toBeGreaterThan(aluminium);
  });

  it('warms less when there is a pause between the sets', () => {
    const after = (pause: number, skin: Skin) =>
      workingWarming(da, correctionModel, skin, { sets: 3, pause: seconds(pause) });
    for (const skin of SKINS) expect(after(105, skin)).toBeLessThan(after(0, skin));
  });

  it('counts a broken number of passes as the next whole one', () => {
    const model = { heat, removal: { ...removal, passes: 3.5 } };
    const contact = contactTime(da, model.removal) / 4;
    expect(passWarming(da, model, 'steel')).toBeCloseTo(
      standingWarming(panelFlux(da, heat), seconds(contact), 'steel', heat),
      12,
    );
  });

  it('warms more with more force, more passes, more sets, and less with a faster arm', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...SKINS),
        fc.double({ min: 10, max: 90, noNaN: true }),
        fc.double({ min: 0.02, max: 0.3, noNaN: true }),
        fc.integer({ min: 1, max: 8 }),
        fc.integer({ min: 1, max: 4 }),
        fc.double({ min: 1.02, max: 2, noNaN: true }),
        (skin, force, arm, passes, sets, more) => {
          const warming = (by: { force?: number; arm?: number; passes?: number; sets?: number }) =>
            workingWarming(
              {
                ...da,
                force: newtons(by.force ?? force),
                armSpeed: (by.arm ?? arm) as Machine['armSpeed'],
              },
              { heat, removal: { ...removal, passes: by.passes ?? passes } },
              skin,
              { sets: by.sets ?? sets, pause: seconds(60) },
            );
          const usual = warming({});
          expect(warming({ force: force * more })).toBeGreaterThan(usual);
          expect(warming({ passes: passes + 1 })).toBeGreaterThan(usual);
          expect(warming({ sets: sets + 1 })).toBeGreaterThan(usual);
          expect(warming({ arm: arm * more })).toBeLessThan(usual);
        },
      ),
    );
  });
});

describe('what a temperature asks for', () => {
  const verdict = (temperature: number, skin: Skin, model = heat) =>
    heatVerdict(degreesCelsius(temperature), skin, model);

  it('is nothing up to 43 °C, caution above it, a stop above 71 °C', () => {
    expect(verdict(43, 'steel')).toBe('cool');
    expect(verdict(43.1, 'steel')).toBe('caution');
    expect(verdict(71, 'steel')).toBe('caution');
    expect(verdict(71.1, 'steel')).toBe('stop');
  });

  it('is a stop on plastic at its own limit, however high a shop sets the other', () => {
    const lax = { ...heat, stop: degreesCelsius(120) };
    expect(verdict(90, 'plastic', lax)).toBe('stop');
    expect(verdict(90, 'steel', lax)).toBe('caution');
  });
});

describe('how warm a spot gets', () => {
  const at = (start: number, room: number) => ({
    removal,
    heat: { ...heat, start: degreesCelsius(start), room: degreesCelsius(room) },
  });
  const threeSets = { sets: 3, pause: seconds(0) };

  it('is the warming on top of the panel, where panel and room are as warm', () => {
    for (const skin of SKINS) {
      const rise = workingWarming(da, at(20, 20), skin, threeSets);
      expect(warmest(da, at(20, 20), skin, threeSets)).toBeCloseTo(20 + rise, 9);
      expect(warmest(da, at(35, 35), skin, threeSets)).toBeCloseTo(35 + rise, 9);
    }
  });

  it('is less in a cooler room, on metal, and never less than the panel was', () => {
    const cool = warmest(da, at(35, 15), 'steel', threeSets);
    expect(cool).toBeLessThan(warmest(da, at(35, 35), 'steel', threeSets));
    expect(cool).toBeGreaterThanOrEqual(35);
  });

  it('is at the first pass where a hot panel cools faster than the pad warms it', () => {
    // A panel at 60 °C in a room at 0 °C: after one pass it is at 60 + that pass, and falls from there.
    const first = 60 + passWarming(da, at(60, 0), 'steel');
    expect(warmest(da, at(60, 0), 'steel', threeSets)).toBeCloseTo(first, 9);
  });

  it('agrees with time steps of a hundredth of a second', () => {
    // One set: four contacts a quarter of the set apart; dT/dt = (q − h(T − room))/C.
    const [start, room] = [35, 15];
    const contact = contactTime(da, removal) / 4;
    const between = (60 * setTime(da, removal.section, removal)) / 4;
    let [temperature, most] = [start, start];
    for (let pass = 0; pass < 4; pass += 1) {
      for (let time = 0; time < (pass === 3 ? contact : between); time += 0.01) {
        const flux = time < contact ? panelFlux(da, heat) : 0;
        temperature += (0.01 * (flux - heat.cooling * (temperature - room))) / heat.steelSheet;
        most = Math.max(most, temperature);
      }
    }
    expect(warmest(da, at(start, room), 'steel', oneSet)).toBeCloseTo(most, 0);
  });
});

/** dT/dt = (q − hT)/C while the pad is there, −hT/C while it is not; by Euler in hundredths of a second. */
function sheetByTimeSteps(by: Machine, sets: number, pause: number): number {
  const dt = 0.01;
  const flux = panelFlux(by, heat);
  const contact = contactTime(by, removal) / 4;
  const pass = (60 * setTime(by, removal.section, removal)) / 4;
  let rise = 0;
  const run = (time: number, q: number): void => {
    for (let t = 0; t < time; t += dt) rise += (dt * (q - 10 * rise)) / 3077;
  };
  for (let set = 0; set < sets; set += 1) {
    if (set > 0) run(pause, 0);
    // The set ends with the contact of its last pass.
    for (let i = 0; i < 4; i += 1) {
      run(pass - contact, 0);
      run(contact, flux);
    }
  }
  return rise;
}

/** Fourier's law in layers of a tenth of a millimetre, insulated at the surface between contacts. */
function plasticByFiniteDifferences(by: Machine, sets: number): number {
  const conductivity = 0.2;
  const capacity = 900 * 1900;
  const dx = 1e-4;
  const dt = 0.02;
  const layers = new Float64Array(200);
  const contact = contactTime(by, removal) / 4;
  const pass = (60 * setTime(by, removal.section, removal)) / 4;
  const run = (time: number, flux: number): void => {
    for (let t = 0; t < time; t += dt) {
      const before = layers.slice();
      for (let i = 0; i < layers.length; i += 1) {
        const here = before[i] ?? 0;
        const out = i + 1 < layers.length ? (conductivity * (here - (before[i + 1] ?? 0))) / dx : 0;
        const into = i === 0 ? flux : (conductivity * ((before[i - 1] ?? 0) - here)) / dx;
        layers[i] = here + (dt * (into - out)) / (capacity * dx);
      }
    }
  };
  for (let i = 0; i < 4 * sets; i += 1) {
    run(pass - contact, 0);
    run(contact, panelFlux(by, heat));
  }
  // The first layer's middle lies half a layer deep: carried to the surface along the flux.
  return (layers[0] ?? 0) + (panelFlux(by, heat) * dx) / 2 / conductivity;
}
