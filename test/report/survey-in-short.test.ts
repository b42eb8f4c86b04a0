/** What the page of a survey says in short where all panels are alike, and that it stays true there. */
import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { askLeastcut } from '../cli/ask-leastcut.ts';
import { temporaryFolder } from '../cli/temporary-folder.ts';

const PANELS = ['bonnet', 'roof', 'boot lid', 'front right door', 'left quarter', 'right quarter'];
/** Film that varies over a panel as film does. */
const SHAPE = [-4, 1, 3, -1, 2];

type Layer = '' | 'clear';

const readingsOf = (panel: string, film: number, layer: Layer = ''): readonly string[] =>
  SHAPE.map((off, k) => `${panel},${k + 1},${film + (layer === '' ? off : off / 8)},${layer}`);

function carOf(rows: readonly string[]): readonly string[] {
  const file = join(temporaryFolder(), 'readings.csv');
  writeFileSync(file, `panel,point,reading_um,layer\n${rows.join('\n')}\n`);
  return [file, '--template', 'saloon'];
}

const page = async (...words: readonly string[]): Promise<string> =>
  (await askLeastcut(['survey', ...words])).out.replaceAll('\u00a0', ' ').replace(/\n {2,}/g, ' ');

type Advice = { readonly code: string; readonly value?: number; readonly value_otherwise?: number };

async function panelOf(id: string, words: readonly string[]) {
  const { out } = await askLeastcut(['survey', ...words, '--format', 'json']);
  const { panels } = JSON.parse(out) as {
    panels: readonly { panel: string; budget_um: number; advice: readonly Advice[] }[];
  };
  return panels.find(({ panel }) => panel === id);
}

describe('a panel that is held to the thin clear read on the others', () => {
  const others = PANELS.filter((panel) => panel !== 'roof').flatMap((panel) => [
    ...readingsOf(panel, 118),
    ...readingsOf(panel, 26, 'clear'),
  ]);
  const unread = [...others, ...readingsOf('roof', 118)];

  test('is no panel that nothing helps: its own clear could be read', async () => {
    const car = carOf(unread);
    const out = await page(...car);
    expect(out).toMatch(/^Leave: .*too little clear: nothing that could be learnt frees any film/m);
    expect(out).toMatch(
      /^Not yet: roof \(too little clear: by the clear of other panels, read its own\)$/m,
    );
    const roof = await panelOf('roof', car);
    expect(roof?.budget_um).toBe(0);
    expect(roof?.advice.map(({ code }) => code)).not.toContain('beyond-help');
    const clear = roof?.advice.find(({ code }) => code === 'clear');
    expect(clear?.value_otherwise).toBeGreaterThan(1);
    expect(await page(...car, '--why', 'roof')).toMatch(
      /if it reads as on the others: nothing, \+\d\.\d\d µm as factories paint/,
    );
  });

  test('frees about as much as was said once its clear reads as factories paint', async () => {
    const [before, after] = await Promise.all([
      panelOf('roof', carOf(unread)),
      panelOf('roof', carOf([...unread, ...readingsOf('roof', 43, 'clear')])),
    ]);
    const said = before?.advice.find(({ code }) => code === 'clear')?.value_otherwise ?? Number.NaN;
    expect(Math.abs((after?.budget_um ?? 0) - said)).toBeLessThan(0.5);
  });
});

describe('a car that was repainted all over', () => {
  const repainted = carOf(PANELS.flatMap((panel, i) => readingsOf(panel, 215 + 3 * i)));

  test('has one line for all of its panels', async () => {
    const out = await page(...repainted);
    expect(out).toMatch(/: median 216\.0 to 231\.0, over 200\.0 µm, the line for any car$/m);
    expect(out.match(/the line for any car/g)).toHaveLength(1);
  });

  test('has no edge of a repair to be found, as one with a panel of factory film has', async () => {
    const some = carOf([
      ...PANELS.slice(2).flatMap((panel) => readingsOf(panel, 215)),
      ...PANELS.slice(0, 2).flatMap((panel) => readingsOf(panel, 118)),
    ]);
    const codes = async (car: readonly string[]) =>
      (await panelOf('boot', car))?.advice.map(({ code }) => code);
    expect(await codes(repainted)).not.toContain('repair-edge');
    expect(await codes(some)).toContain('repair-edge');
  });
});

test('a matte car is told neither how its clear is reckoned nor how to use what may go', async () => {
  const saloon = 'samples/sound-saloon/readings.csv';
  const [matte, clear] = await Promise.all([page(saloon, '--finish', 'matte'), page(saloon)]);
  for (const text of ['Built in', 'most to plan']) {
    expect(clear).toContain(text);
    expect(matte).not.toContain(text);
  }
  expect(matte).toContain('nothing may go: a matte finish is never polished');
});

test.each(['um', 'mil'])('no range in %s has the same figure at both ends', async (unit) => {
  const out = await page('samples/sound-saloon/readings.csv', '--show-unit', unit, '-v');
  const ranges = [...out.matchAll(/([+−]?\d+\.\d+) to ([+−]?\d+\.\d+)/g)];
  expect(ranges.length).toBeGreaterThan(3);
  expect(ranges.filter(([, least, most]) => least === most)).toEqual([]);
});

test('a gauge that failed on its shims stands before the answer, on survey, plan and card', async () => {
  const folder = temporaryFolder();
  const [shims, gauge] = ['shims.csv', 'gauge.json'].map((name) => join(folder, name));
  const checks = [50, 125, 250].flatMap((shim) =>
    [0, 0.1, 0.2].map((off) => `${shim},${shim + 6 + off}`),
  );
  writeFileSync(shims ?? '', `shim_um,reading_um\n${checks.join('\n')}\n`);
  const limits = ['--mpe-um', '1', '--mpe-pct', '1', '--shim-uncertainty-um', '0.5'];
  await askLeastcut(['gauge', shims ?? '', ...limits, '--gauge-out', gauge ?? '']);
  const car = ['samples/sound-saloon/readings.csv', '--gauge', gauge ?? ''];
  for (const words of [['survey'], ['plan'], ['plan', '--card']]) {
    const { out } = await askLeastcut([...words, ...car]);
    const place = out.indexOf('Before any work: the gauge failed its check on shims');
    expect(place).toBeGreaterThan(0);
    expect(place).toBeLessThan(out.indexOf('bonnet'));
  }
});

test('so does one whose file says that it failed, and not by how much', async () => {
  const gauge = join(temporaryFolder(), 'failed.json');
  const permitted = { fixed_um: 1, proportional_pct: 1 };
  writeFileSync(
    gauge,
    JSON.stringify({
      ...{ schema: 'leastcut/gauge/1', permitted_error: permitted, verdict: 'fail' },
    }),
  );
  const car = ['samples/sound-saloon/readings.csv', '--gauge', gauge];
  const told =
    'Before any work: the gauge failed its check on shims, and its file does not say by how much it is off: adjust it or take another, and read the car again';
  for (const words of [['survey'], ['plan'], ['plan', '--card'], ['quote']]) {
    const out = (await askLeastcut([...words, ...car])).out.replace(/\s+/gu, ' ');
    expect(out, words.join(' ')).toContain(told);
    expect(out.indexOf(told)).toBeLessThan(out.indexOf('bonnet'));
  }
  const owner = (await askLeastcut(['quote', ...car, '--format', 'html'])).out;
  const first =
    'The gauge that measured this car failed its check, and nobody says by how much it is off. The car is read again';
  expect(owner.replace(/<[^>]*>/gu, '')).toContain(first);
});

test.each(['md', 'html'])(
  'a page for a file (%s) names no option as the place of more',
  async (format) => {
    const saloon = 'samples/sound-saloon/readings.csv';
    const [filed, shown] = await Promise.all([page(saloon, '--format', format), page(saloon)]);
    expect(shown).toContain('Built in (-v: grounds): ');
    expect(filed).toContain('Built in');
    expect(filed.replace(/<style>[^<]*<\/style>/, '')).not.toMatch(/(?<![\w-])-v\b/);
  },
);
