import { describe, expect, test } from 'vitest';
import { readGauge } from '../../../src/formats/gauge.ts';
import { asMeasured, withGauge } from '../../../src/tasks/settings/gauge-in-use.ts';
import { resolveSettings, type Settings } from '../../../src/tasks/settings/settings.ts';
import { onFace } from '../../film/car-builder.ts';
import { flag, layersOf } from '../layers.ts';

const settingsOf = (said: Parameters<typeof layersOf>[0] = {}): Settings =>
  resolveSettings(layersOf(said));

const stated = '"permitted_error": { "fixed_um": 1, "proportional_pct": 1 }';
function using(keys: string, settings = settingsOf()) {
  const { value: file } = readGauge('g.json', `{ "schema": "leastcut/gauge/1",\n${keys} }`);
  if (file === undefined) throw new Error('refused');
  const outcome = withGauge(settings, { file, name: 'g.json', origin: 'flag' });
  if (outcome.value === undefined) throw new Error('refused');
  return { settings: outcome.value, diagnostics: outcome.diagnostics };
}
const check = (error: number, expanded: number): string =>
  `"checks": [{ "shim_um": 100, "shim_uncertainty_um": 0.5, "mean_um": ${100 + error}, "n": 5, "error_um": ${error}, "expanded_um": ${expanded}, "verdict": "pass" }]`;
const said = ({ assumptions }: Settings): readonly string[] =>
  assumptions.filter(({ code }) => code.startsWith('gauge')).map(({ text }) => text);

describe('which gauge file', () => {
  const name = (said: Parameters<typeof layersOf>[0]) => settingsOf(said).gauge;
  const files = { job: { gauge: 'a.json' }, shop: { gauge: 'b.json' }, user: { gauge: 'c.json' } };

  test('is named by the first layer that speaks, from that file’s own folder', () => {
    expect(name({ ...files, typed: { gauge: flag('d.json', '--gauge') } })).toMatchObject({
      value: 'd.json',
      folder: '',
      where: '--gauge',
    });
    expect(name(files)).toMatchObject({ value: 'a.json', folder: 'jobs', origin: 'job' });
    expect(name({ shop: files.shop, user: files.user })).toMatchObject({
      value: 'b.json',
      folder: 'shop',
    });
    expect(name({ user: files.user })).toMatchObject({ value: 'c.json', origin: 'user' });
    expect(name({})).toBeUndefined();
  });
  test('stands among the settings in force', () => {
    const effective = settingsOf(files).effective.find((one) => one.name === 'gauge');
    expect(effective).toEqual({
      name: 'gauge',
      value: 'a.json',
      origin: 'job',
      where: 'job.json:3',
    });
  });
});

describe('what a survey rests on', () => {
  test('without a gauge file: what is usual, and that it was not verified', () => {
    const { value } = withGauge(settingsOf(), undefined);
    expect(value?.assumptions.filter(({ code }) => code === 'gauge-not-verified')).toEqual([
      expect.objectContaining({
        text: 'gauge unverified: ± 1 µm ± 2 % of the film',
        origin: 'built-in',
      }),
    ]);
    expect(value?.film).toEqual(settingsOf().film);
  });
  test('without a gauge file but with numbers of the shop: those, and from where they are', () => {
    const shop = { numbers: { 'film.measurement.fixed_um': 2 } };
    const { value } = withGauge(settingsOf({ shop }), undefined);
    const one = value?.assumptions.find(({ code }) => code === 'gauge-not-verified');
    expect(one).toMatchObject({ origin: 'shop', text: expect.stringContaining('± 2 µm ± 2 %') });
  });
  test('with one: its statement, and how its check came out', () => {
    const { settings, diagnostics } = using(`${stated}, ${check(0.2, 0.4)}`);
    expect(settings.film.measurement).toMatchObject({ fixed: 1, proportional: 0.01 });
    expect(said(settings)).toEqual([
      'gauge g.json: ± 1 µm ± 1 % of the film, within that on every shim',
    ]);
    expect(diagnostics).toEqual([]);
  });
  test('with a data sheet alone: that nobody checked it', () => {
    expect(said(using(stated).settings)).toEqual([
      'gauge g.json: ± 1 µm ± 1 % of the film, not checked on shims',
    ]);
  });
  test('with a gauge that failed: a warning, and the worst that was seen', () => {
    const { settings, diagnostics } = using(`${stated}, ${check(7.2, 0.8)}`);
    expect(diagnostics).toMatchObject([{ code: 'gauge-failed', severity: 'warning' }]);
    expect(said(settings)).toContain('its calibration taken to be off by at least 8.0 µm');
    expect(settings.film.measurement.leastCalibration).toBe(8);
  });
  test('with a failure that no figure backs: the warning says so', () => {
    const { settings, diagnostics } = using(`${stated}, "verdict": "fail"`);
    expect(diagnostics).toMatchObject([
      { code: 'gauge-failed', message: expect.stringContaining('does not say by how much') },
    ]);
    expect(settings.assumptions).toContainEqual(
      expect.objectContaining({ code: 'gauge-failed-unsaid' }),
    );
    expect(settings.film.measurement.leastCalibration).toBeUndefined();
  });
  test('with an undecided check: a note', () => {
    const { diagnostics } = using(`${stated}, ${check(1.8, 0.6)}`);
    expect(diagnostics).toMatchObject([{ code: 'gauge-undecided', severity: 'note' }]);
  });
  test('with a check on the bare plate alone: a warning, and what is assumed of the film', () => {
    const bare =
      '"checks": [{ "shim_um": 0, "shim_uncertainty_um": 0, "mean_um": 0.1, "n": 5, "error_um": 0.1, "expanded_um": 0.2, "verdict": "pass" }]';
    const { settings, diagnostics } = using(`${stated}, ${bare}`);
    expect(diagnostics).toMatchObject([{ code: 'gauge-undecided', severity: 'warning' }]);
    expect(said(settings)).toContain(
      'no shim of 40 µm or more in its check: ± 2 % of the film assumed',
    );
    expect(settings.film.measurement.proportional).toBe(0.02);
  });
  test('with a gauge that moved: a warning with the shim it moved most on', () => {
    const drift = [
      [50, 0.6, true],
      [100, -1.5, true],
      [250, 3, false],
    ]
      .map(
        ([shim, change, proved]) =>
          `{ "shim_um": ${shim}, "change_um": ${change}, "expanded_um": 0.4, "proved": ${proved} }`,
      )
      .join(',');
    const { diagnostics, settings } = using(`${stated}, "drift": [${drift}]`);
    // On the page as well, which -q prints alone.
    expect(said(settings)).toContain(
      'it moved by 1.5 µm at 100 µm between its two checks: readings from before and after are not to be compared',
    );
    expect(said(using(stated).settings).join()).not.toContain('between its two checks');
    expect(diagnostics).toMatchObject([
      { code: 'gauge-drifted', message: expect.stringContaining('moved by 1.5 µm at 100 µm') },
    ]);
  });
  test('with its repeatability, or why that does not count', () => {
    const rest = '"repeatability_um": 0.4, "repeatability_dof"';
    expect(said(using(`${stated}, ${rest}: 12`).settings)).toContain(
      'repeatability 0.40 µm from the gauge’s own checks',
    );
    expect(said(using(`${stated}, ${rest}: 2`).settings)).toContain(
      'its 2 degrees of freedom of repeatability are too few: 1.5 µm assumed',
    );
  });
});

describe('an adjustment', () => {
  const adjustment = '"adjustment": { "offset_um": -2, "slope": 0.97 }';

  test('is said with its numbers, and what it makes of 100 µm', () => {
    expect(said(using(`${stated}, ${adjustment}`).settings)).toContain(
      'every reading put right: 0.97 × reading − 2.00 µm, so that 100 µm become 95.0 µm',
    );
  });
  test('that adds is said as one', () => {
    expect(
      said(using(`${stated}, "adjustment": { "offset_um": 1.5, "slope": 1 }`).settings),
    ).toContain('every reading put right: 1 × reading + 1.50 µm, so that 100 µm become 101.5 µm');
  });
  test('puts the readings right before anything is computed, with the step they had', () => {
    const { settings } = using(`${stated}, ${adjustment}`);
    const { readings, model } = asMeasured(onFace('roof', 120, 113), settings);
    expect(readings.map(({ thickness }) => Number(thickness))).toEqual([
      expect.closeTo(114.4, 10),
      expect.closeTo(107.61, 10),
    ]);
    expect(model.measurement.step).toBeCloseTo(0.97, 10);
  });
  test('that nobody has leaves them as they are', () => {
    const readings = onFace('roof', 120, 113);
    const settings = using(stated).settings;
    expect(asMeasured(readings, settings)).toEqual({ readings, model: settings.film });
  });
});
