import { describe, expect, test } from 'vitest';
import { renderText } from '../../src/render/text.ts';
import { doctorBlocks } from '../../src/report/start/doctor-pages.ts';
import { isOwn } from '../../src/tasks/settings/effective-settings.ts';
import { resolveSettings } from '../../src/tasks/settings/settings.ts';
import { doctor } from '../../src/tasks/start/doctor.ts';
import { flag, layersOf } from '../tasks/layers.ts';

const found = (said: Parameters<typeof layersOf>[0] = {}) =>
  doctor({
    machine: { version: '0', node: 'v20', platform: 'linux x64', locale: 'en' },
    terminal: {
      width: 80,
      widthFrom: 'COLUMNS',
      colour: false,
      colourWhy: 'no terminal',
      ascii: false,
      asciiWhy: 'no terminal',
    },
    files: [],
    settings: resolveSettings(layersOf(said)),
    home: '',
  });
const pageOf = (result: ReturnType<typeof found>): string =>
  renderText(doctorBlocks(result, { verbose: false }), { width: 1000, paint: (text) => text });

describe('the page of the doctor', () => {
  test('says first what somebody set, and then what is built in', () => {
    const result = found({ typed: { riskPct: flag(4) } });
    const page = pageOf(result);
    const [own, builtIn] = ['risk_pct 4 ', 'As built in: '].map((text) => page.indexOf(text));
    expect(own).toBeGreaterThan(0);
    expect(own).toBeLessThan(builtIn ?? 0);
    expect(page).not.toContain('risk_pct 5');
    expect(pageOf(found())).toContain('Settings: none is set: all are as built in.');
  });

  test('says of every setting without a value what holds then, the floor in its figure', () => {
    const result = found();
    const page = pageOf(result);
    const unset = result.settings.filter(
      ({ value }) => value === null || (Array.isArray(value) && value.length === 0),
    );
    expect(unset.length).toBeGreaterThan(8);
    for (const { name } of unset) expect(page).toMatch(new RegExp(`^ +${name}: [^–]+$`, 'm'));
    expect(page).not.toContain('nothing is asked for');
    expect(page).toContain('floor_um: 80 µm must stay, of single-stage paint 60 µm');
    expect(page).not.toMatch(/_\w+ –/);
  });

  test('leaves no setting out', () => {
    const page = pageOf(found());
    const names = found()
      .settings.filter((one) => !isOwn(one))
      .map(({ name }) => name);
    expect(names.filter((name) => !page.includes(name))).toEqual([]);
  });
});
