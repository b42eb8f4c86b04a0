import { describe, expect, test } from 'vitest';
import { micrometres } from '../../../src/base/units.ts';
import { builtInTemplates } from '../../../src/formats/data/templates.ts';
import { filmModel } from '../../../src/formats/models.ts';
import { readVehicles } from '../../../src/tasks/read/read-vehicles.ts';

const readFiles = (...texts: readonly string[]) => readBy(filmModel.measurement, ...texts);

const readBy = (plausible: typeof filmModel.measurement, ...texts: readonly string[]) =>
  readVehicles({
    files: texts.map((text, k) => ({
      name: `${'abc'[k]}.csv`,
      bytes: new TextEncoder().encode(text),
      sha256: String(k),
    })),
    templates: builtInTemplates,
    templateId: undefined,
    intake: { plausible },
    vehicle: undefined,
    keepUnknownPanels: false,
  });

const round = (values: Readonly<Record<string, number>>): string =>
  `panel,point,reading_um\n${Object.entries(values)
    .map(([panel, value]) => `${panel},1,${value}\n`)
    .join('')}`;

describe('files that name no vehicle', () => {
  test('and read the same points are taken as one vehicle, and it is said once a pair', () => {
    const { value, diagnostics } = readFiles(
      round({ hood: 101, roof: 99 }),
      round({ bonnet: 103, roof: 98 }),
    );
    expect(diagnostics).toMatchObject([
      {
        code: 'files-one-vehicle',
        severity: 'warning',
        message:
          '"a.csv" and "b.csv" name no vehicle and both read point 1 of the bonnet and one point more: taken as one vehicle, their readings as repeats',
        at: { file: 'b.csv', line: 2 },
      },
    ]);
    const [vehicle] = value?.vehicles ?? [];
    expect(vehicle?.assumptions.map(({ code }) => code)).toContain('files-one-vehicle');
    expect(vehicle?.readings.map(({ repeat }) => repeat)).toEqual([1, 1, 2, 2]);
  });

  test('are refused where more than half of the shared points are further apart than two gauges', () => {
    const apart = readFiles(round({ bonnet: 101, roof: 99 }), round({ bonnet: 112, roof: 110 }));
    expect(apart.value).toBeUndefined();
    expect(apart.diagnostics).toMatchObject([{ code: 'files-two-vehicles', severity: 'error' }]);
    // One of two: a panel may have been read at another place.
    const half = readFiles(round({ bonnet: 101, roof: 99 }), round({ bonnet: 112, roof: 109 }));
    expect(half.diagnostics.map(({ code }) => code)).toEqual([
      'files-one-vehicle',
      'reading-doubted',
    ]);
  });

  test('may be as far apart as the gauge is held to scatter', () => {
    // 2·(1 + .02·106.5) + 1.96·√2·s is 10.4 µm at s = 1.5 and 12.2 µm at s = 2.15.
    const noisy = { ...filmModel.measurement, repeatability: micrometres(2.15) };
    const files = [round({ bonnet: 101, roof: 99 }), round({ bonnet: 112, roof: 110 })] as const;
    expect(readFiles(...files).value).toBeUndefined();
    expect(readBy(noisy, ...files).diagnostics.map(({ code }) => code)).toEqual([
      'files-one-vehicle',
    ]);
  });

  test('and read other points are one vehicle without a word', () => {
    expect(readFiles(round({ bonnet: 101 }), round({ roof: 99 })).diagnostics).toEqual([]);
  });

  test('and differ at one point of several have that told with both places', () => {
    const values = { bonnet: 114, roof: 112, boot: 113, 'front right door': 111 };
    const { value, diagnostics } = readFiles(round(values), round({ ...values, bonnet: 88 }));
    expect(value).toBeDefined();
    expect(diagnostics.map(({ code }) => code)).toEqual(['files-one-vehicle', 'reading-doubted']);
    expect(diagnostics[1]).toMatchObject({
      message:
        'point 1 of the bonnet was read in "a.csv", line 2, as well, and the two are too far apart for one place',
      at: { file: 'b.csv', line: 2 },
    });
  });
});

describe('files that are perhaps of two cars', () => {
  const values = { bonnet: 114, roof: 112, boot: 113, 'front right door': 111 };
  const doubted = (...texts: readonly string[]) =>
    readFiles(...texts)
      .value?.vehicles[0]?.assumptions.filter(({ code }) => code === 'files-doubted')
      .map(({ text }) => text);

  test('are doubted by the two furthest apart, however many they are', () => {
    const [one, two] = [
      round({ ...values, bonnet: 88 }),
      round({ ...values, bonnet: 88, roof: 88 }),
    ];
    expect(doubted(round(values), one)).toEqual([
      '"a.csv" and "b.csv" are too far apart for one place at 1 of the 4 points that both read',
    ]);
    expect(doubted(round(values), one, two)).toEqual([
      '"a.csv" and "c.csv" are too far apart for one place at 2 of the 4 points that both read; so with 2 more pairs of files',
    ]);
  });

  test('are not where they read alike', () => {
    expect(doubted(round(values), round({ ...values, bonnet: 116 }))).toEqual([]);
  });
});

describe('files of the same vehicle', () => {
  const ofCar = (id: string, values: Readonly<Record<string, number>>): string =>
    `vehicle,panel,point,reading_um\n${Object.entries(values)
      .map(([panel, value]) => `${id},${panel},1,${value}\n`)
      .join('')}`;
  const car = { bonnet: 114, roof: 112, boot: 113, 'front right door': 111 };

  test('that read the same points are taken as one visit, aloud, and what lies too far apart is told', () => {
    const { value, diagnostics } = readFiles(ofCar('K1', car), ofCar('K1', { ...car, bonnet: 88 }));
    expect(diagnostics).toMatchObject([
      {
        code: 'files-one-vehicle',
        message:
          '"a.csv" and "b.csv" are of vehicle "K1" and both read point 1 of the bonnet and 3 points more: taken as one visit, their readings as repeats',
      },
      { code: 'reading-doubted', at: { file: 'b.csv', line: 2 } },
    ]);
    expect(value?.vehicles[0]?.assumptions.map(({ code }) => code)).toContain('files-one-vehicle');
  });

  test('are refused where most points differ as two visits or two cars do', () => {
    const { diagnostics } = readFiles(
      ofCar('K1', car),
      ofCar('K1', { bonnet: 90, roof: 88, boot: 89, 'front right door': 111 }),
    );
    expect(diagnostics).toMatchObject([{ code: 'files-two-vehicles', severity: 'error' }]);
  });

  test('are nothing to ask about where they are of two vehicles, or read other panels', () => {
    expect(readFiles(ofCar('K1', car), ofCar('K2', car)).diagnostics).toEqual([]);
    const { bonnet, ...rest } = car;
    expect(readFiles(ofCar('K1', { bonnet }), ofCar('K1', rest)).diagnostics).toEqual([]);
  });
});
