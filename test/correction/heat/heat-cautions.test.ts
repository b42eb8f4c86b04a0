import { describe, expect, it } from 'vitest';
import { degreesCelsius } from '../../../src/base/units.ts';
import { heatCautions } from '../../../src/correction/heat/heat-cautions.ts';
import type { CorrectionModel } from '../../../src/correction/removal/catalogue.ts';
import { ladder } from '../../../src/correction/removal/combination.ts';
import { correctionModel } from '../../../src/formats/models.ts';

const from = (start: number): CorrectionModel => ({
  ...correctionModel,
  heat: {
    ...correctionModel.heat,
    start: degreesCelsius(start),
    room: degreesCelsius(start),
  },
});
const steps = (id: string, sets: number) => {
  const combination = ladder(correctionModel).find((one) => one.id === id);
  if (combination === undefined) throw new Error(`no ${id}`);
  return [{ combination, sets }];
};

describe('the caution on heat', () => {
  it('is silent where the panel stays cool, and where nothing is done to it', () => {
    expect(heatCautions('steel', steps('da/foam-medium/medium', 3), correctionModel)).toEqual([]);
    expect(heatCautions('steel', [], correctionModel)).toEqual([]);
  });

  it('says how warm the panel gets, and from where to let it cool', () => {
    const [caution] = heatCautions('steel', steps('da/foam-medium/medium', 3), from(35));
    expect(caution?.code).toBe('panel-heat');
    expect(caution?.text).toMatch(/warms to 4\d °C: let it cool from 43 °C/);
    expect(caution?.value).toBeGreaterThan(43);
  });

  it('says how much faster an arm would keep it cool enough, as a pass warms by its contact', () => {
    const [caution] = heatCautions('steel', steps('da/foam-medium/medium', 3), from(35));
    const warmed = (caution?.value ?? 0) - 35;
    const faster = Math.round(10 * (warmed / (43 - 35))) / 10;
    expect(caution?.text).toContain(`or move the arm ${faster} times as fast`);
  });

  it('speaks of no faster arm where it would be another set', () => {
    const [caution] = heatCautions('steel', steps('rotary/wool/heavy', 3), from(40));
    expect(caution?.text).toMatch(/let it cool from 43 °C$/);
  });

  it('says to let a panel cool that is too warm before any step', () => {
    const [caution] = heatCautions('steel', steps('da/foam-medium/medium', 3), from(45));
    expect(caution?.text).toMatch(/let it cool from 43 °C before any step$/);
  });

  it('counts on the room to cool the panel', () => {
    const cold = { ...from(35), heat: { ...from(35).heat, room: degreesCelsius(5) } };
    const value = (model: CorrectionModel) =>
      heatCautions('steel', steps('rotary/wool/heavy', 3), model)[0]?.value ?? 0;
    expect(value(cold)).toBeLessThan(value(from(35)));
  });

  it('says when it would be over the temperature to stop at', () => {
    const [caution] = heatCautions('aluminium', steps('rotary/wool/heavy', 3), from(60));
    expect(caution?.text).toMatch(/over the 71 °C to stop at$/);
  });

  it('goes by the warmest step, and by what is under the paint', () => {
    const both = [...steps('rotary/wool/heavy', 3), ...steps('da/foam-soft/fine', 1)];
    const value = (substrate: 'steel' | 'plastic' | 'composite') =>
      heatCautions(substrate, both, from(40))[0]?.value ?? 0;
    expect(value('steel')).toBe(heatCautions('steel', both.slice(0, 1), from(40))[0]?.value);
    expect(value('plastic')).not.toBe(value('steel'));
    expect(value('composite')).toBe(value('plastic'));
  });
});
