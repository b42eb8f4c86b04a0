import { describe, expect, test } from 'vitest';
import { metres } from '../../../src/base/units.ts';
import type {
  Dimension,
  VehicleSize,
  VehicleTemplate,
} from '../../../src/film/template/template.ts';
import { templateRules } from '../../../src/formats/data/template-defaults.ts';
import { builtInTemplates } from '../../../src/formats/data/templates.ts';
import { scaleToVehicle } from '../../../src/tasks/template/scale-to-vehicle.ts';
import { plainPanel, plainTemplate } from '../../film/car-builder.ts';

const of = (id: string): VehicleTemplate => {
  const found = builtInTemplates.find((one) => one.id === id);
  if (found === undefined) throw new Error(id);
  return found;
};

const scaled = (template: VehicleTemplate, size: Partial<VehicleSize>) =>
  scaleToVehicle(
    template,
    { size, placeOf: (dimension: Dimension) => ({ file: 'job.json', line: dimension.length }) },
    templateRules,
  );

describe('a template scaled to the vehicle of a job', () => {
  test('says that it is, by how much, and what that does not mend', () => {
    // A saloon is 4.70 × 1.83 m: 5.17 and 2.013 are 1.1 times that. By the table of areas: bonnet, roof
    // and boot 4.2 · 1.21, sides 6.8 · 1.1, bumpers 2.2 · 1.1, rails 0.3 · 1.1, mirrors 0.1 as they were.
    const { value } = scaled(of('saloon'), { length: metres(5.17), width: metres(2.013) });
    expect(value?.assumptions).toEqual([
      {
        code: 'template-scaled',
        text: 'template saloon scaled to the vehicle (length × 1.10, width × 1.10): 13.6 to 15.4 m², still ±25 % a panel: its size is mended, not its shape',
        origin: 'job',
      },
    ]);
  });

  test('is as it was, and says nothing, where the job states no size', () => {
    expect(scaled(of('saloon'), {}).value).toEqual({ template: of('saloon'), assumptions: [] });
    expect(scaleToVehicle(of('saloon'), undefined, templateRules).value?.assumptions).toEqual([]);
  });

  test('says that it is not scaled where nobody knows what its areas are of', () => {
    const { value } = scaled(plainTemplate(plainPanel('lid')), { length: metres(5) });
    expect(value?.assumptions[0]?.text).toBe(
      'template plain is not scaled: it does not say the size of the vehicle its areas are of',
    );
  });

  test.each([
    [
      'too short',
      { length: metres(2.8) },
      '"vehicle.length_m" is 2.8; a vehicle like the saloon template is 2.82 to 7.52 m',
      6,
    ],
    [
      'too wide',
      { width: metres(3) },
      '"vehicle.width_m" is 3; a vehicle like the saloon template is 1.10 to 2.93 m',
      5,
    ],
    [
      'too high',
      { height: metres(2.4) },
      '"vehicle.height_m" is 2.4; a vehicle like the saloon template is 0.87 to 2.32 m',
      6,
    ],
  ])('is refused on its line for a vehicle %s to be of its kind', (_, size, message, line) => {
    const { value, diagnostics } = scaled(of('saloon'), size);
    expect(value).toBeUndefined();
    expect(diagnostics).toMatchObject([
      { code: 'settings-invalid', message, at: { file: 'job.json', line } },
    ]);
  });

  test('may be as small and as large as 0.6 and 1.6 times its own size', () => {
    // 0.6 · 4.70 and 1.6 · 4.70.
    for (const length of [2.82, 7.52]) {
      expect(scaled(of('saloon'), { length: metres(length) }).diagnostics).toEqual([]);
    }
  });
});
