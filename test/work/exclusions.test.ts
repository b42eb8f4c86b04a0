import { expect, test } from 'vitest';
import { remark } from '../../src/base/remark.ts';
import { exclusionsOf } from '../../src/work/exclusions.ts';
import { quoteOf, readingsOf } from '../tasks/quotes.ts';
import { MEDIUM, panel, plan, step } from './small-plans.ts';

const readings = readingsOf({
  bonnet: 112,
  roof: 114,
  boot: 111,
  'wing front left': 113,
  'wing front right': 112,
  'door front left': 113,
  'door front right': 112,
});

const found = (said: object): Readonly<Record<string, readonly string[]>> =>
  Object.fromEntries(
    quoteOf({ readings, ...said }).exclusions.map(({ code, panels }) => [code, panels]),
  );

test('what was not read is not promised; two sides are named together', () => {
  const { 'not-measured': panels } = found({ job: { taken_um: 0 } });
  expect(panels).toContain('both quarters');
  expect(panels).toContain('rear bumper');
  expect(panels).not.toContain('bonnet');
});

test('what the job says of a panel stands among what is left out', () => {
  const job = {
    taken_um: 0,
    panels: {
      bonnet: { covered: true },
      roof: { clear_coat_failure: true },
      boot: { finish: 'matte' },
    },
  };
  const all = found({ job });
  expect(all['under-film']).toEqual(['bonnet']);
  expect(all['clear-failed']).toEqual(['roof']);
  expect(all['matte-paint']).toEqual(['boot lid']);
  expect(all['left-alone']).toBeUndefined();
});

test('what the survey finds stands there too', () => {
  const means = { bonnet: 112, roof: 114, boot: 111, 'wing front left': 113 };
  const doors = { 'door front left': 160, 'door front right': 560, 'quarter left': 66 };
  const all = found({ readings: readingsOf({ ...means, ...doors }), job: { taken_um: 0 } });
  // Filler lies under paint that came after the factory's.
  expect(all['painted-again']).toEqual(['both front doors']);
  expect(all['filler-found']).toEqual(['front right door']);
  // It is left, so nothing is done as far as its little paint allows.
  expect(all['thin-paint']).toBeUndefined();
  expect(all['left-alone']).toContain('left quarter');
});

test('colour at a trial is why a panel is left, and edges that were read apart are named', () => {
  const spots =
    'spot,panel,machine,pad,product,sets,colour_on_pad\nA,roof,da,foam-soft,fine,1,yes\n';
  const edge = 'panel,point,reading_um,place\n';
  const rows = readings
    .trim()
    .split('\n')
    .slice(1)
    .map((row) => `${row},face`);
  const all = found({
    readings: `${edge}${rows.join('\n')}\nbonnet,e,64,edge\n`,
    job: { taken_um: 0, finish: 'clear-over-base' },
    spots,
  });
  expect(all['colour-came']).toEqual(['roof']);
  expect(all['left-alone'] ?? []).not.toContain('roof');
  expect(all['edges-apart']).toEqual(['bonnet']);
});

test('no colour at a trial of paint that is said to have no clear is named with its panel', () => {
  const spots = (colour: string): string =>
    `spot,panel,machine,pad,product,sets,colour_on_pad\nA,roof,da,foam-soft,fine,1,${colour}\n`;
  const job = { taken_um: 0, finish: 'single-stage-solid' };
  expect(found({ job, spots: spots('no') })['clear-shown']).toEqual(['roof']);
  expect(found({ job, spots: spots('yes') })['clear-shown']).toBeUndefined();
});

test('a panel in two zones is left out for what either of them is', () => {
  const split = `${readings}quarter left,1,110\nquarter left,2,112\nquarter left,3,111\nquarter left,4,186\nquarter left,5,188\nquarter left,6,187\n`;
  const all = found({ readings: split, job: { taken_um: 0 } });
  expect(all['painted-again']).toEqual(['left quarter']);
});

test('of a panel whose one zone is worked only the other is left as found', () => {
  const split = `${readings}quarter left,1,116\nquarter left,2,117\nquarter left,3,116\nquarter left,4,118\nquarter left,5,186\nquarter left,6,188\n`;
  const { exclusions, plan } = quoteOf({ readings: split, job: { taken_um: 0 } });
  const quarter = plan.panels.find(({ survey }) => survey.panel.id === 'quarter-left');
  expect(quarter?.zones.map(({ verdict }) => verdict === 'leave')).toEqual([false, true]);
  const left = exclusions.find(({ code }) => code === 'left-alone')?.panels;
  expect(left).toContain('left quarter (where its paint is thicker)');
  expect(left).not.toContain('left quarter');
});

test('marks that are local, and faults that are none of polishing, are named', () => {
  const defects =
    'panel,defect,grade\nbonnet,deep scratches,3\nroof,orange peel,2\nboot,swirl marks,0\n';
  const all = found({ job: { taken_um: 0 }, defects });
  expect(all['deep-marks']).toEqual(['bonnet']);
  expect(all['not-by-polishing']).toEqual(['roof']);
  expect(all['left-alone']).toBeUndefined();
});

test('an unknown past and an untried paint hold for the whole car', () => {
  expect(found({})['history-unknown']).toEqual([]);
  expect(found({ job: { taken_um: 0 } })['history-unknown']).toBeUndefined();
  expect(found({})['no-trial-yet']).toEqual([]);
});

test('a paint that was tried, and a past that is known, are nothing to say of the car', () => {
  const tried = { ...panel('roof', 1, [step(MEDIUM, 2, 10)]), provisional: false };
  const codes = (...panels: readonly (typeof tried)[]) =>
    exclusionsOf([{ aim: { name: 'correct', share: 0.85 }, plan: plan(...panels) }]).map(
      ({ code }) => code,
    );
  expect(codes(tried)).not.toContain('no-trial-yet');
  expect(codes(tried)).not.toContain('history-unknown');
  expect(codes({ ...tried, provisional: true })).toContain('no-trial-yet');
});

test('each is a sentence without a word of the trade for the owner of the car', () => {
  const { exclusions } = quoteOf({ readings, job: {} });
  for (const { text } of exclusions) expect(text).not.toMatch(/clear coat|µm|refinish|test spot/);
});

test('readings that may be mistyped are not said to show earlier sanding', () => {
  const { survey, ...rest } = panel('roof', 1, [step(MEDIUM, 2, 10)]);
  const codes = (keyingSlips: typeof survey.keyingSlips) =>
    exclusionsOf([
      {
        aim: { name: 'correct', share: 0.85 },
        plan: plan({ ...rest, survey: { ...survey, condition: 'cut-back', keyingSlips } }),
      },
    ]).map(({ code }) => code);
  expect(codes([])).toContain('worked-before');
  expect(codes([{} as (typeof survey.keyingSlips)[number]])).not.toContain('worked-before');
});

test('a panel is named as worked at a risk nobody knows once any aim works it', () => {
  const known = panel('bonnet', 2, [step(MEDIUM, 1, 10)]);
  const unknown = { ...panel('wing-front-left', 1, [step(MEDIUM, 1, 10)]), risk: null };
  const left = { ...panel('wing-front-left', 1), risk: null, reasons: [remark('limit', 'left')] };
  const namedBy = (...plans: readonly ReturnType<typeof plan>[]) =>
    exclusionsOf(plans.map((one) => ({ aim: { name: 'correct', share: 0.85 }, plan: one }))).find(
      ({ code }) => code === 'risk-unknown',
    )?.panels;
  expect(namedBy(plan(known, unknown))).toEqual([unknown.survey.panel.name]);
  expect(namedBy(plan(known, unknown), plan(known, left))).toEqual([left.survey.panel.name]);
  expect(namedBy(plan(known, left))).toBeUndefined();
});
