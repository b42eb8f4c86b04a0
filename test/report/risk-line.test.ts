import { describe, expect, test } from 'vitest';
import { askLeastcut } from '../cli/ask-leastcut.ts';

const saloon = [
  'samples/sound-saloon/readings.csv',
  '--job',
  'samples/sound-saloon/job.json',
] as const;

const riskOf = async (...words: readonly string[]): Promise<string> => {
  const { out } = await askLeastcut(['survey', ...words]);
  const page = out.replaceAll('\u00a0', ' ').replace(/\n {2,}/g, ' ');
  return page.split('\n').find((line) => line.startsWith('Risk: ')) ?? '';
};

describe('the risk on the page of a survey', () => {
  test('is told of each panel worked where something may go', async () => {
    expect(await riskOf(...saloon)).toMatch(
      /^Risk: at most 5\.0 % chance of too thin clear on each panel worked, /,
    );
  });

  test('is of the topcoat on single-stage paint, which has no clear', async () => {
    expect(await riskOf(saloon[0], '--finish', 'single-stage-solid')).toMatch(
      /^Risk: at most 5\.0 % chance of too thin topcoat on each panel worked, /,
    );
  });

  test('is none where nothing may go from any panel', async () => {
    expect(await riskOf('samples/sound-saloon/readings.csv', '--finish', 'matte')).toBe(
      'Risk: none is taken, as nothing may go.',
    );
  });

  test('where nothing may go is what the clear risks untouched, panel by panel', async () => {
    const said = await riskOf(...saloon, '--policy', 'strict');
    const [, panels = ''] =
      /^Risk: none is taken, as nothing may go; chance of too thin clear even untouched: (.*)\.$/.exec(
        said,
      ) ?? [];
    const { out } = await askLeastcut([
      ...['survey', ...saloon, '--policy', 'strict', '--why', 'bonnet', '--format', 'json'],
    ]);
    const read = (
      JSON.parse(out) as { panels: readonly { n_points: number; budget_um: number }[] }
    ).panels.filter(({ n_points }) => n_points > 0);
    expect(read.every(({ budget_um }) => budget_um === 0)).toBe(true);
    expect(panels).toMatch(/^\d+ to \d+ % on every panel read$/);
    const full = await riskOf(...saloon, '--policy', 'strict', '-v');
    const told = [...full.matchAll(/(\d+) % on /g)].map(([, share]) => Number(share));
    // Each figure once, from the greatest down, with the panels that it is of.
    expect(told.length).toBeGreaterThan(3);
    expect(told).toEqual([...new Set(told)].sort((one, other) => other - one));
    const ends = /^(\d+) to (\d+) /.exec(panels)?.slice(1).map(Number);
    expect(ends).toEqual([Math.min(...told), Math.max(...told)]);
  });
});
