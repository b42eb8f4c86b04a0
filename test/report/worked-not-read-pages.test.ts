/** A panel that was worked and not read after: every page that tells what may go of it says so. */
import { mkdtempSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { askLeastcut } from '../cli/ask-leastcut.ts';

const folder = mkdtempSync(join(tmpdir(), 'leastcut-not-read-'));
const recordOf = (name: string, besides: object): string => {
  const path = join(folder, name);
  const panels = ['roof', 'boot'].map((panel) => ({
    ...{ panel, taken_um: 1.2, taken_sd_um: 0.6 },
    ...besides,
  }));
  const visits = [{ date: '2026-01-20', panels }];
  writeFileSync(path, JSON.stringify({ schema: 'leastcut/film-record/1', visits }));
  return path;
};
const foretold = recordOf('foretold.json', { not_read: true });
const measured = recordOf('measured.json', {});

const pageOf = async (record: string, words: readonly string[]): Promise<string> => {
  const car = ['samples/sound-saloon/readings.csv', '--template', 'saloon'];
  const told = ['--finish', 'clear-over-base', '--film-record', record];
  const { out } = await askLeastcut([...words, ...car, ...told]);
  return out.replaceAll('\u00a0', ' ').replace(/\s+/gu, ' ');
};

const SAID =
  'on 2026-01-20 it was worked and not read after: 1.2 ± 0.6 µm (SD) are held to be gone by the plan, not measured';

test.each([[['survey']], [['survey', '-v']], [['plan']], [['plan', '--card']], [['quote']]])(
  '%s says what is held to be gone by the plan, and nothing of what was measured',
  async (words) => {
    expect(await pageOf(foretold, words)).toContain(SAID);
    expect(await pageOf(measured, words)).not.toContain('not read after');
  },
);

test('panels of which the same is said are named together', async () => {
  expect(await pageOf(foretold, ['survey'])).toContain(`boot lid, roof: ${SAID}`);
  expect(await pageOf(foretold, ['quote'])).toContain(`Note: boot lid, roof: ${SAID}`);
});
