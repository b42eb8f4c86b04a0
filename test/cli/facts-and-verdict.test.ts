import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { beforeAll, describe, expect, it } from 'vitest';
import { askLeastcut } from './ask-leastcut.ts';
import { temporaryFolder } from './temporary-folder.ts';

type PanelRecord = {
  readonly panel: string;
  readonly verdict: string;
  readonly bound_by: string;
  readonly budget_um: number;
  readonly reasons: readonly { readonly text: string }[];
  readonly cautions: readonly { readonly code: string }[];
};

/** Aim and defects as assumed; never worked before, unless a panel says otherwise. */
const job = {
  schema: 'leastcut/job/1',
  finish: 'clear-over-base',
  galvanised: false,
  taken_um: 0,
  panels: {
    roof: { finish: 'matte' },
    'left front wing': { painted_days_ago: 30 },
    'rear left door': { covered: true },
    'right quarter': { clear_coat_failure: true },
    'right front wing': { taken_um: 12, clear_um: { value: 45, sd: 2 } },
    'boot lid': { clear_um: { value: 26, sd: 2 } },
    bonnet: { clear_um: { value: 55, sd: 2 } },
    'front right door': { finish: 'single-stage-solid' },
    'left quarter': { under_um: { value: 95, sd: 3 } },
  },
};

describe('what a fact of the job makes of a panel', () => {
  let panels: readonly PanelRecord[] = [];
  beforeAll(async () => {
    const file = join(temporaryFolder(), 'job.json');
    writeFileSync(file, JSON.stringify(job));
    const { out } = await askLeastcut([
      ...['plan', 'samples/sound-saloon/readings.csv', '--job', file, '--format', 'json'],
    ]);
    panels = (JSON.parse(out) as { panels: readonly PanelRecord[] }).panels;
  });

  it.each<[string, string, string, string]>([
    ['roof', 'leave', 'finish', 'nothing may go: a matte finish is never polished'],
    ['wing-front-left', 'leave', 'fresh-paint', 'nothing may go: painted 30 days ago, under 90'],
    ['door-rear-left', 'leave', 'covered', 'nothing may go: covered by film, wrap or coating'],
    [
      'quarter-right',
      'refinish',
      'clear-coat-failure',
      'clear coat failure: no polishing, refinish',
    ],
    ['wing-front-right', 'leave', 'life', 'µm that may go would clear'],
    ['boot', 'leave', 'clear', 'nothing may go: clear on the thinnest 5 % by the clear stated'],
    [
      'quarter-left',
      'leave',
      'clear',
      'nothing may go: clear on the thinnest 5 % by the total less',
    ],
  ])('%s: %s, bound by %s', (id, verdict, boundBy, why) => {
    const panel = panels.find((one) => one.panel === id);
    expect(panel).toMatchObject({ verdict, bound_by: boundBy });
    expect(panel?.reasons.map(({ text }) => text).join('\n')).toContain(why);
  });

  it('a thick clear that was measured and a solid single stage may be polished to the aim', () => {
    const bonnet = panels.find(({ panel }) => panel === 'bonnet');
    const door = panels.find(({ panel }) => panel === 'door-front-right');
    expect(bonnet).toMatchObject({ verdict: 'polish', bound_by: 'life' });
    // 12.7 µm of life at 5 % risk: 12.7·e^(−1.6449·.55227)
    expect(bonnet?.budget_um).toBeCloseTo(12.7 * 0.403169, 3);
    expect(door).toMatchObject({ verdict: 'polish', bound_by: 'clear' });
    expect(door?.cautions.map(({ code }) => code)).toContain('colour-on-pad');
  });
});
