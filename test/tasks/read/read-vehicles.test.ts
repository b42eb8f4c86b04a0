import { describe, expect, test } from 'vitest';
import { builtInTemplates } from '../../../src/formats/data/templates.ts';
import { filmModel } from '../../../src/formats/models.ts';
import type { ReadRequest } from '../../../src/tasks/read/read-request.ts';
import { readVehicles } from '../../../src/tasks/read/read-vehicles.ts';

const file = (name: string, ...lines: readonly string[]) => ({
  name,
  bytes: new TextEncoder().encode(`${lines.join('\n')}\n`),
  sha256: name,
});
const request = (files: ReadRequest['files'], rest: Partial<ReadRequest> = {}): ReadRequest => ({
  files,
  templates: builtInTemplates,
  templateId: undefined,
  intake: { plausible: filmModel.measurement },
  vehicle: undefined,
  keepUnknownPanels: false,
  ...rest,
});
const header = 'panel,point,reading_um';

describe('reading vehicles', () => {
  test('points of a second file are further repeats of the same points, none is lost', () => {
    const { value } = readVehicles(
      request([file('a.csv', header, 'bonnet,1,110'), file('b.csv', header, 'bonnet,1,112')]),
    );
    const [car] = value?.vehicles ?? [];
    expect(car?.readings.map(({ repeat, thickness }) => [repeat, thickness])).toEqual([
      [1, 110],
      [2, 112],
    ]);
  });

  test('two names of one panel are one panel, and their points stay apart as repeats', () => {
    const { value } = readVehicles(
      request([file('a.csv', header, 'bonnet,1,110', 'Hood,1,112', 'roof,1,120')]),
    );
    const bonnet = value?.vehicles[0]?.readings.filter(({ panel }) => panel === 'bonnet');
    expect(bonnet?.map(({ repeat }) => repeat)).toEqual([1, 2]);
  });

  test('panels by the side to the kerb that no template fits are told by the option that settles them', () => {
    const nearside = file('a.csv', header, 'NSF wing,1,110', 'OSF wing,1,112', 'bonnet,1,120');
    for (const keepUnknownPanels of [false, true]) {
      const [told] = readVehicles(request([nearside], { keepUnknownPanels })).diagnostics;
      expect(told?.hint).toMatch(/write left or right, or say which with --nearside$/u);
    }
    const [place] = readVehicles(
      request([file('b.csv', header, 'NSF,1,110')], { keepUnknownPanels: true }),
    ).diagnostics;
    expect(place?.hint).toBe('say which panels they are: --panel-names "NSF=PANEL"');
  });

  test('each vehicle of a file has its own readings and its own template', () => {
    const { value } = readVehicles(
      request([
        file(
          'a.csv',
          `vehicle,${header}`,
          'V1,side left,1,120',
          'V1,doors back,1,118',
          'C2,boot lid,1,110',
          'C2,left rear door,1,111',
        ),
      ]),
    );
    expect(value?.vehicles.map(({ vehicle, template }) => [vehicle, template?.id])).toEqual([
      ['V1', 'medium-van'],
      ['C2', 'saloon'],
    ]);
  });

  test('a panel that is not on the template is refused with its line and a suggestion', () => {
    const { value, diagnostics } = readVehicles(
      request([file('a.csv', header, 'roof,1,110', 'bonet,1,110')], { templateId: 'saloon' }),
    );
    expect(value).toBeUndefined();
    expect(diagnostics).toMatchObject([
      {
        code: 'panel-unknown',
        severity: 'error',
        at: { file: 'a.csv', line: 3, column: 1, length: 5, lineText: 'bonet,1,110' },
        hint: 'did you mean "bonnet"? Then --panel-names "bonet=bonnet"; if it is no panel, take its rows out',
      },
    ]);
  });

  test('of a panel that only other vehicles have, theirs is named and no panel of this one', () => {
    const { diagnostics } = readVehicles(
      request([file('a.csv', header, 'roof,1,110', 'rear right door,1,110')], {
        templateId: 'coupe',
      }),
    );
    expect(diagnostics.map(({ code, hint }) => [code, hint])).toEqual([
      [
        'panel-unknown',
        'it is a panel of supermini, hatch, saloon, estate, mid-suv, double-cab-pickup: name the vehicle’s with --template; if the vehicle has none, take its rows out',
      ],
    ]);
  });

  test('where nothing is computed an unknown panel keeps its name, said in a warning', () => {
    const { value, diagnostics } = readVehicles(
      request([file('a.csv', header, 'roof,1,110', 'bonet,1,111')], { keepUnknownPanels: true }),
    );
    expect(value?.vehicles[0]?.readings.map(({ panel }) => panel)).toEqual(['roof', 'bonet']);
    expect(diagnostics.map(({ severity }) => severity)).toEqual(['warning']);
  });

  test('a vehicle that is not in the input is refused with the ones that are', () => {
    const { diagnostics } = readVehicles(
      request([file('a.csv', `vehicle,${header}`, 'FH-1,roof,1,110')], { vehicle: 'FH-2' }),
    );
    expect(diagnostics).toMatchObject([
      { code: 'usage-unknown-vehicle', hint: 'the input holds FH-1' },
    ]);
  });

  test('a misspelt template is refused with the nearest', () => {
    const { diagnostics } = readVehicles(request([file('a.csv', header)], { templateId: 'salon' }));
    expect(diagnostics).toMatchObject([
      { code: 'usage-unknown-template', hint: 'did you mean "saloon"?' },
    ]);
  });

  test('an unknown panel is shown where a line above its readings names it', () => {
    const { diagnostics } = readVehicles(
      request([file('a.csv', 'µm', '', 'roof', '111', '109', '', 'spoiler', '104', '106')], {
        keepUnknownPanels: true,
      }),
    );
    expect(diagnostics.map(({ code, at }) => [code, at?.line, at?.column, at?.lineText])).toEqual([
      ['panel-unknown', 7, 1, 'spoiler'],
    ]);
  });
});
