import { describe, expect, it } from 'vitest';
import { mean, median } from '../../src/base/stats/summary.ts';
import { builtInTemplates } from '../../src/formats/data/templates.ts';
import { readJob } from '../../src/formats/job/read-job.ts';
import { correctionModel, filmModel } from '../../src/formats/models.ts';
import { readShop } from '../../src/formats/shop/shop.ts';
import { readDefectsFile } from '../../src/intake/read-defects-file.ts';
import { readVehicles } from '../../src/tasks/read/read-vehicles.ts';
import { resolveSettings } from '../../src/tasks/settings/settings.ts';
import { surveyVehicle } from '../../src/tasks/survey/survey-vehicle.ts';
import type { Sample } from './invented-film.ts';
import { olderCoupe } from './older-coupe.ts';
import { plasticBumpers } from './plastic-bumpers.ts';
import { soundSaloon } from './sound-saloon.ts';
import { sampleFiles } from './write-samples.ts';

const textOf = ({ folder }: Sample, name: string): string => {
  const text = sampleFiles().get(`samples/${folder}/${name}`);
  if (text === undefined) throw new Error(`no ${name} in ${folder}`);
  return text;
};

const present = <T>(value: T | undefined): T => {
  if (value === undefined) throw new Error('refused');
  return value;
};

/** The sample as the program reads it, and what it makes of it; nothing may be refused. */
function surveyed(sample: Sample) {
  const name = present(Object.keys(sample.files).find((file) => file.startsWith('readings.')));
  const job = readJob('job.json', textOf(sample, 'job.json'));
  const read = readVehicles({
    files: [{ name, bytes: Buffer.from(textOf(sample, name)), sha256: '' }],
    templates: builtInTemplates,
    templateId: job.value?.value.template,
    intake: { plausible: filmModel.measurement },
    vehicle: undefined,
    keepUnknownPanels: false,
  });
  const vehicle = present(read.value?.vehicles[0]);
  const file = present(job.value);
  const settings = resolveSettings({ typed: {}, job: { file, folder: '' }, shops: [] });
  const survey = surveyVehicle({
    readings: vehicle,
    settings,
    job: file,
    filmRecord: undefined,
    inputs: [],
  });
  return {
    diagnostics: [...job.diagnostics, ...read.diagnostics, ...survey.diagnostics],
    decisions: present(read.value?.inputs[0]).decisions,
    excluded: present(read.value).excluded,
    readings: vehicle.readings,
    survey: present(survey.value).survey,
  };
}

const samples: readonly (readonly [string, Sample])[] = [
  soundSaloon(),
  olderCoupe(),
  plasticBumpers(),
].map((sample) => [sample.folder, sample]);

describe('every sample', () => {
  it.each(samples)('%s is read without an error or a warning', (_, sample) => {
    const { diagnostics } = surveyed(sample);
    expect(diagnostics.filter(({ severity }) => severity !== 'note')).toEqual([]);
  });

  it.each(samples)('%s is surveyed as what it is', (_, sample) => {
    const { survey } = surveyed(sample);
    const found = survey.panels
      .filter(({ condition }) => condition !== 'unread')
      .map(({ panel, condition }) => [panel.id, condition]);
    expect(found).toEqual(sample.car.panels.map(({ panel, condition }) => [panel, condition]));
  });

  it.each(samples)('%s has panel means within five standard errors of the truth', (_, sample) => {
    const { readings } = surveyed(sample);
    const { gauge, panels } = sample.car;
    for (const { panel, clear, under, sd, local } of panels) {
      const own = readings.filter((reading) => reading.panel === panel);
      const points = new Set(own.map(({ point }) => point)).size;
      const added = local.reduce((sum, { by }) => sum + by, 0) / points;
      const expected = (clear + under + added) * (1 + gauge.gain) + gauge.offset;
      const standardError = Math.sqrt((sd ** 2 + 1.5 ** 2) / points);
      const read = mean(own.map(({ thickness }) => thickness));
      expect(Math.abs(read - expected) / standardError, panel).toBeLessThan(5);
    }
  });

  it.each(samples)('%s has its panels matched where no template is named', (_, sample) => {
    const name = present(Object.keys(sample.files).find((file) => file.startsWith('readings.')));
    const read = readVehicles({
      files: [{ name, bytes: Buffer.from(textOf(sample, name)), sha256: '' }],
      templates: builtInTemplates,
      templateId: undefined,
      intake: { plausible: filmModel.measurement },
      vehicle: undefined,
      keepUnknownPanels: false,
    });
    const named = surveyed(sample).readings.map(({ panel }) => panel);
    expect(read.value?.vehicles[0]?.readings.map(({ panel }) => panel)).toEqual(named);
  });
});

describe('the sound saloon', () => {
  const { readings, decisions, excluded, survey } = surveyed(soundSaloon());

  it('has five readings on each of 13 panels in canonical form', () => {
    expect(decisions).toMatchObject({ delimiter: ',', decimal: '.', layout: 'long', unit: 'um' });
    expect(new Set(readings.map(({ panel }) => panel)).size).toBe(13);
    expect([readings.length, excluded.length]).toEqual([65, 0]);
  });

  it('is centred on about 118 µm and has its steel bumpers read', () => {
    expect(Math.abs((survey.baseline ?? 0) - 118)).toBeLessThan(1.5);
    const bumpers = survey.panels.filter(({ panel }) => panel.id.startsWith('bumper'));
    expect(bumpers.map(({ condition }) => condition)).toEqual(['original', 'original']);
  });

  it('lists swirl marks of grade 2 to 3 on each panel and one deep scratch on a door', () => {
    const bytes = Buffer.from(textOf(soundSaloon(), 'defects.csv'));
    const { value, diagnostics } = readDefectsFile(
      { name: 'defects.csv', bytes },
      filmModel.measurement.largestReading,
    );
    const rows = present(value);
    const known = correctionModel.defects.map(({ id }) => id);
    expect(diagnostics).toEqual([]);
    expect(rows.filter(({ defect }) => !known.includes(defect))).toEqual([]);
    const swirls = rows.filter(({ defect }) => defect === 'swirl-marks');
    expect(swirls.map(({ panel }) => panel)).toEqual(soundSaloon().car.panels.map((p) => p.panel));
    expect(new Set(swirls.map(({ grade }) => grade))).toEqual(new Set([2, 2.5, 3]));
    const others = rows.filter(({ defect }) => defect !== 'swirl-marks');
    expect(others).toMatchObject([
      { panel: 'door-front-left', defect: 'deep-scratches', grade: 3 },
    ]);
  });
});

describe('the older coupe', () => {
  const { readings, decisions, excluded } = surveyed(olderCoupe());
  const on = (panel: string) =>
    readings.filter((reading) => reading.panel === panel).map(({ thickness }) => thickness);

  it('is read from semicolons, decimal commas and American names', () => {
    expect(decisions).toMatchObject({ delimiter: ';', decimal: ',', layout: 'long', unit: 'um' });
    expect(textOf(olderCoupe(), 'readings.csv')).toMatch(
      /^Panel;Spot;Thickness \(µm\);No\nHood;1;/,
    );
    expect([readings.length, excluded.length]).toEqual([4 * 15 + 5 * 5, 0]);
  });

  it('has a thin bonnet, a repainted wing and filler in a quarter', () => {
    expect(Math.abs(median(on('bonnet')) - 84)).toBeLessThan(1.5);
    const under = readings.filter(({ panel, thickness }) => panel === 'bonnet' && thickness < 80);
    expect(under.map(({ point }) => point)).toEqual(['4', '4', '4']);
    expect(Math.abs(median(on('wing-front-left')) - 260)).toBeLessThan(8);
    expect(Math.max(...on('quarter-right'))).toBeGreaterThan(500);
  });
});

describe('the hatch with plastic bumpers', () => {
  const { readings, decisions, excluded, diagnostics, survey } = surveyed(plasticBumpers());

  it('is read from one column a panel in mil', () => {
    expect(decisions).toMatchObject({ delimiter: '\t', decimal: '.', layout: 'wide', unit: 'mil' });
    expect(readings.length).toBe(55);
  });

  it('has its bumpers named and unread, each empty cell accounted for', () => {
    expect(excluded.length).toBe(10);
    expect(diagnostics.map(({ code }) => code)).toEqual(Array(10).fill('reading-missing'));
    const bumpers = survey.panels.filter(({ panel }) => panel.id.startsWith('bumper'));
    expect(bumpers.map(({ condition }) => condition)).toEqual(['unread', 'unread']);
  });
});

describe('the shop', () => {
  it('owns machines, pads and products that are known', () => {
    const text = present(sampleFiles().get('samples/shop.json'));
    const { value, diagnostics } = readShop('shop.json', text);
    expect(diagnostics).toEqual([]);
    expect(value?.value.machines?.map(({ id }) => id)).toEqual(['rotary', 'da', 'da-small']);
    expect(value?.value.numbers.get('work.set_up_min')?.value).toBe(12);
  });
});
