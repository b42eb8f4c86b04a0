import { describe, expect, it } from 'vitest';
import { resolveSettings } from '../../../src/tasks/settings/settings.ts';
import { joinedTrials } from '../../../src/tasks/spot/joined-trials.ts';
import { layersOf } from '../layers.ts';

const settings = resolveSettings(layersOf({ job: {}, shop: {} }));
const file = (name: string, ...rows: readonly string[]) => ({
  name,
  bytes: new TextEncoder().encode(
    `${['spot,panel,machine,pad,product,sets,cleared_pct', ...rows].join('\n')}\n`,
  ),
  sha256: '',
});
const row = (spot: string, panel: string): string => `${spot},${panel},da,foam-medium,medium,1,50`;

describe('files of test spots', () => {
  it('are joined in their order', () => {
    const files = [
      file('mon.csv', row('A', 'roof'), row('B', 'roof')),
      file('tue.csv', row('C', 'boot')),
    ];
    const trials = joinedTrials(files, settings).value ?? [];
    expect(trials.map(({ trial, at }) => [trial.spot, trial.panel, at.file])).toEqual([
      ['A', 'roof', 'mon.csv'],
      ['B', 'roof', 'mon.csv'],
      ['C', 'boot', 'tue.csv'],
    ]);
  });

  it('of which two name one spot are refused, with both places, whether or not the rows agree', () => {
    const files = [
      file('mon.csv', row('A', 'roof'), row('B', 'roof')),
      file('tue.csv', row('B', 'roof')),
      file('wed.csv', row('B', 'boot')),
    ];
    const { value, diagnostics } = joinedTrials(files, settings);
    expect(value).toBeUndefined();
    expect(diagnostics.map(({ code, message, at }) => [code, message, at?.file, at?.line])).toEqual(
      [
        ['spot-in-two-files', 'spot "B" stands in mon.csv as well, line 3', 'tue.csv', 2],
        ['spot-in-two-files', 'spot "B" stands in mon.csv as well, line 3', 'wed.csv', 2],
      ],
    );
  });

  it('tell what is wrong with any of them', () => {
    const files = [
      file('mon.csv', row('A', 'roof')),
      file('tue.csv'),
      file('wed.csv', 'C,roof,saw,foam-soft,fine,5'),
    ];
    expect(
      joinedTrials(files, settings).diagnostics.map(({ code, at }) => [code, at?.file]),
    ).toEqual([
      ['no-readings', 'tue.csv'],
      ['spot-method-unknown', 'wed.csv'],
    ]);
  });
});
