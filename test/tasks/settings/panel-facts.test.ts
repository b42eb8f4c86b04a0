import { describe, expect, it } from 'vitest';
import { builtInTemplates } from '../../../src/formats/data/templates.ts';
import { readFilmRecord } from '../../../src/formats/film-record.ts';
import { readJob } from '../../../src/formats/job/read-job.ts';
import { filmModel } from '../../../src/formats/models.ts';
import {
  carFacts,
  layerAssumptions,
  panelFacts,
  panelKnowledge,
  plainFacts,
} from '../../../src/tasks/settings/panel-facts.ts';
import { builtIn } from '../../../src/tasks/settings/setting-origin.ts';

const saloon = builtInTemplates.find(({ id }) => id === 'saloon');
if (saloon === undefined) throw new Error('the saloon is built in');
const { stated } = filmModel;

/** A job of these lines, from line 2 on. */
const jobOf = (...lines: readonly string[]) => {
  const { value, diagnostics } = readJob(
    'job.json',
    `{"schema": "leastcut/job/1"${lines.map((line, at) => `${at === 0 ? ',' : ''}\n${line}`).join('')}\n}`,
  );
  if (value === undefined) throw new Error(JSON.stringify(diagnostics));
  return value;
};

const recordOf = (visits: string) => {
  const text = `{"schema": "leastcut/film-record/1", "visits": [\n${visits}\n]}`;
  const { value } = readFilmRecord('visits.json', text);
  if (value === undefined) throw new Error('not a film record');
  return value;
};

const resolved = { finish: builtIn('clear-over-base' as const), galvanised: builtIn(false) };

const factsOf = (
  id: string,
  job: ReturnType<typeof jobOf>,
  record?: ReturnType<typeof recordOf>,
) => {
  const known = panelKnowledge(job, record, saloon);
  if (known.value === undefined) throw new Error(JSON.stringify(known.diagnostics));
  return panelFacts(carFacts(resolved, job, stated), id, known.value, stated);
};

const told = (job: ReturnType<typeof jobOf>, record?: ReturnType<typeof recordOf>) =>
  panelKnowledge(job, record, saloon).diagnostics.map(
    ({ code, at, message, hint }) => `${at?.line}:${at?.column} ${code}: ${message} | ${hint}`,
  );

describe('facts of a panel', () => {
  it('are those of the car, each with the line that says it, where the panel has none', () => {
    const facts = factsOf(
      'roof',
      jobOf('"taken_um": 3,', '"clear_um": 45,', '"painted_days_ago": 400'),
    );
    expect(facts.taken).toEqual({ value: 3, origin: 'job', where: 'job.json:2' });
    expect(facts.clear).toEqual({
      value: { mean: 45, sd: stated.clearSd, of: 'car' },
      origin: 'job',
      where: 'job.json:3',
    });
    expect(facts.paintedDaysAgo).toMatchObject({ value: 400, where: 'job.json:4' });
    expect(facts.under).toEqual({ value: null, origin: 'built-in', where: 'built-in' });
  });

  it('take what earlier work took with its SD, and a figure of the panel without one as exact', () => {
    const job = jobOf(
      '"taken_um": { "value": 3, "sd": 1 },',
      '"panels": { "roof": { "taken_um": 2 } }',
    );
    expect(plainFacts(factsOf('bonnet', job))).toMatchObject({ taken: 3, takenSd: 1 });
    expect(plainFacts(factsOf('roof', job))).toMatchObject({ taken: 2, takenSd: 0 });
  });

  it('are the panel’s own where it has some, under any name that readings may use', () => {
    const own = jobOf(
      '"taken_um": 3,',
      '"panels": {"hood": {"finish": "lacquer",',
      '"taken_um": "unknown", "galvanised": true,',
      '"under_um": {"value": 71, "sd": 2}, "painted_days_ago": 12, "clear_coat_failure": true}}',
    );
    const facts = factsOf('bonnet', own);
    expect(facts.finish).toEqual({ value: 'lacquer', origin: 'job', where: 'job.json:3' });
    expect(facts.taken).toEqual({ value: null, origin: 'job', where: 'job.json:4' });
    expect(plainFacts(facts)).toEqual({
      finish: 'lacquer',
      isOwnFinish: true,
      taken: null,
      takenSd: 0,
      recorded: null,
      clear: null,
      under: { mean: 71, sd: 2, of: 'panel' },
      galvanised: true,
      covered: false,
      clearCoatFailure: true,
      paintedDaysAgo: 12,
    });
    expect(factsOf('roof', own).taken.value).toBe(3);
  });

  it('hold what all visits on record took from the panel, whatever each calls it', () => {
    const record = recordOf(
      '{"date": "2024-05-01", "panels": [{"panel": "hood", "taken_um": 2, "taken_sd_um": 0.6}]},\n' +
        '{"date": "2025-05-01", "panels": [{"panel": "bonnet", "taken_um": 1, "taken_sd_um": 0.8}]}',
    );
    const { recorded, taken } = factsOf('bonnet', jobOf('"taken_um": 0'), record);
    expect(recorded.value?.mean).toBe(3);
    expect(recorded.value?.sd).toBeCloseTo(1, 12);
    expect(recorded.where).toBe('visits.json:3');
    expect(taken.value).toBe(0);
    expect(factsOf('roof', jobOf('"taken_um": 0'), record).recorded.value).toBeNull();
  });
});

describe('panels named in a job', () => {
  it('are refused where they stand, all at once, with what was probably meant', () => {
    expect(told(jobOf('"panels": {"bonet": {},', '"chimney": {},', '"front door": {}}'))).toEqual([
      '2:12 settings-panel-unknown: "bonet" is not a panel of the saloon template | did you mean "bonnet"?',
      '3:1 settings-panel-unknown: "chimney" is not a panel of the saloon template | leastcut template show saloon lists its panels',
      '4:1 settings-panel-ambiguous: "front door" may be front right door, front left door | it does not say left or right',
    ]);
  });

  it('are refused under two names, as one of them would be passed over', () => {
    expect(
      told(jobOf('"panels": {"hood": {"taken_um": 1},', '"Bonnet": {"taken_um": 2}}')),
    ).toEqual([
      '3:1 settings-panel-twice: "Bonnet" is the bonnet, already named on line 2 as "hood" | say all of one panel under one name',
    ]);
  });

  it('are refused in a film record at the record’s own place', () => {
    const record = recordOf(
      '{"date": "2024-05-01", "panels": [{"panel": "bonet", "taken_um": 2, "taken_sd_um": 0.6}]}',
    );
    expect(told(jobOf(), record)).toEqual([
      '2:45 settings-panel-unknown: "bonet" is not a panel of the saloon template | did you mean "bonnet"?',
    ]);
  });
});

describe('a layer stated without an sd', () => {
  it('is an assumption, on the car or on a panel, and with one it is none', () => {
    expect(layerAssumptions(undefined, stated)).toEqual([]);
    expect(layerAssumptions(jobOf('"clear_um": {"value": 45, "sd": 2}'), stated)).toEqual([]);
    const texts = layerAssumptions(
      jobOf('"clear_um": 45,', '"panels": {"roof": {"under_um": 70}}'),
      stated,
    ).map(({ text }) => text);
    expect(texts).toEqual([
      'clear stated without an sd: ± 3.0 µm',
      'layers under it stated without an sd: ± 4.0 µm',
    ]);
  });
});
