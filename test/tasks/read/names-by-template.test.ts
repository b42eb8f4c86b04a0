import { expect, test } from 'vitest';
import { builtInTemplates } from '../../../src/formats/data/templates.ts';
import { filmModel } from '../../../src/formats/models.ts';
import { readVehicles } from '../../../src/tasks/read/read-vehicles.ts';

const told = (labels: readonly string[], templateId?: string) =>
  readVehicles({
    files: [
      {
        name: 'a.csv',
        bytes: new TextEncoder().encode(
          `panel,point,reading_um\n${labels.map((label) => `${label},1,104\n`).join('')}`,
        ),
        sha256: 'a',
      },
    ],
    templates: builtInTemplates,
    templateId,
    intake: { plausible: filmModel.measurement },
    vehicle: undefined,
    keepUnknownPanels: false,
  }).diagnostics.map(({ severity, code, at }) => `${severity} ${code} ${at?.line}:${at?.column}`);

test('a name that means one panel only on the template that was taken is read so, and told', () => {
  expect(told(['left door', 'roof'])).toEqual(['warning panel-ambiguous 2:1']);
});

test('on a template that the user names there is nothing to tell', () => {
  expect(told(['left door', 'roof'], 'coupe')).toEqual([]);
});

test('a name in full is told of on no template', () => {
  expect(told(['left front door', 'roof'])).toEqual([]);
});
