import { describe, expect, it } from 'vitest';
import { remark } from '../../../src/base/remark.ts';
import { degreesCelsius } from '../../../src/base/units.ts';
import { localCautions } from '../../../src/correction/plan/local-cautions.ts';
import { correctionModel } from '../../../src/formats/models.ts';
import { amongSound, fiveAround } from '../../film/car-builder.ts';
import { step } from '../../work/small-plans.ts';

const { panel: survey } = amongSound(fiveAround('tested', 112));
const warm = {
  ...correctionModel,
  heat: { ...correctionModel.heat, start: degreesCelsius(41), room: degreesCelsius(41) },
};
const spot = (id: string) => [{ steps: [step(id, 3, 2)] }];
const told = (
  id: string,
  model = warm,
  cautions: Parameters<typeof localCautions>[0]['cautions'] = [],
) => localCautions({ survey, cautions }, spot(id), model);

describe('what is to be minded of a spot at a deep defect', () => {
  it('is nothing on a cool panel, and nothing where no spot is worked', () => {
    expect(told('da-small/foam-medium/medium', correctionModel)).toEqual([]);
    expect(localCautions({ survey, cautions: [] }, [{ steps: [] }], warm)).toEqual([]);
  });

  it('is its heat, which is no less than that of a section worked alike', () => {
    const [heat, ...others] = told('da-small/foam-medium/medium');
    expect(others).toEqual([]);
    expect(heat?.code).toBe('panel-heat');
    expect(heat?.text).toMatch(
      /^at the spot: without a rest the panel warms to \d+ °C: let it cool/u,
    );
    const wide = {
      ...warm,
      correction: { ...warm.correction, localSection: warm.removal.section },
    };
    const [asSection] = told('da-small/foam-medium/medium', wide);
    expect(heat?.value).toBeGreaterThan(asSection?.value ?? 0);
  });

  it('is left out where the panel’s own steps warm it as much, and told where they warm it less', () => {
    const [heat] = told('da-small/foam-medium/medium');
    const own = (by: number) => [remark('panel-heat', 'warm', (heat?.value ?? 0) + by)];
    expect(told('da-small/foam-medium/medium', warm, own(0))).toEqual([]);
    expect(told('da-small/foam-medium/medium', warm, own(-0.1))).toEqual([heat]);
    expect(told('da-small/foam-medium/medium', warm, [remark('edges-read', 'off')])).toEqual([
      heat,
    ]);
  });

  it('is to keep a rotary moving, unless the panel’s own steps say so', () => {
    const codes = (cautions: Parameters<typeof localCautions>[0]['cautions']) =>
      told('rotary/foam-medium/medium', correctionModel, cautions)
        .map(({ code }) => code)
        .filter((code) => code === 'rotary-heat');
    expect(codes([])).toEqual(['rotary-heat']);
    expect(codes([remark('rotary-heat', 'rotary: keep it moving')])).toEqual([]);
  });
});
