import { describe, expect, test } from 'vitest';
import { runLeastcut } from '../cli/run-leastcut.ts';

const NEAR = 'test/cases/survey-near-line/readings.csv';
const SALOON = 'samples/sound-saloon/readings.csv';

type Panel = {
  readonly panel: string;
  readonly condition: string;
  readonly n_points: number;
  readonly condition_sure: 'clear' | 'near' | null;
  readonly condition_margin_um: number | null;
  readonly condition_evidence: {
    readonly value_um: number;
    readonly line_um: number;
    readonly other_side_prob: number;
  } | null;
};

const page = async (...words: readonly string[]): Promise<string> =>
  (await runLeastcut(['survey', ...words])).out.replaceAll('\u00a0', ' ').replace(/\n {2,}/g, ' ');

async function panelsOf(file: string): Promise<readonly Panel[]> {
  const { out } = await runLeastcut(['survey', file, '--format', 'json']);
  return (JSON.parse(out) as { panels: readonly Panel[] }).panels;
}

describe('how sure each condition is', () => {
  test('stands on the page for those near their line only, each with figure, line and chance', async () => {
    const out = await page(NEAR);
    const line = out.split('\n').find((one) => one.startsWith('Near the line: ')) ?? '';
    const near = (await panelsOf(NEAR)).filter(({ condition_sure }) => condition_sure === 'near');
    expect(near.map(({ panel }) => panel)).toEqual(['wing-front-left', 'roof']);
    expect(line.match(/by the baseline \(\d+ %/g)).toHaveLength(near.length);
    expect(line).toContain(
      'front left wing, refinished: median 154.1 µm, over its line of 153.4 µm by the baseline (43 % that it is not)',
    );
    expect(out).toContain('conditions clear-cut (under 5 % chance of another) but for those below');
  });

  test('is said of every panel together where none is near', async () => {
    const out = await page('samples/older-coupe/readings.csv');
    expect(out).toContain('every condition clear-cut');
    expect(out).not.toContain('Near the line');
  });

  test('stands under -v for every panel that a figure decides, as in the record', async () => {
    const out = await page(NEAR, '-v');
    const list = out.slice(out.indexOf('How sure each mean'), out.indexOf('What is held'));
    const judged = (await panelsOf(NEAR)).filter(({ condition_sure }) => condition_sure !== null);
    expect(judged.length).toBeGreaterThan(5);
    expect(list.match(/, (clear-cut|near the line): /g)).toHaveLength(judged.length);
    expect(list).toContain('roof: mean 100.2 ± 4.1 µm; cut-back, near the line: ');
  });

  test('has the margin between figure and line beside it, and no figure where none decides', async () => {
    for (const one of await panelsOf(SALOON)) {
      const { condition_evidence: evidence, condition_margin_um: margin } = one;
      expect(evidence === null).toBe(one.condition === 'unread');
      if (evidence === null) expect([margin, one.condition_sure]).toEqual([null, null]);
      else {
        expect(Math.abs(evidence.value_um - evidence.line_um)).toBeCloseTo(margin ?? 0, 5);
        expect(one.condition_sure).toBe(evidence.other_side_prob > 0.05 ? 'near' : 'clear');
      }
    }
  });

  test('is taken apart by --why into every comparison that could have made the word another', async () => {
    const out = await page(NEAR, '--why', 'roof');
    const asked = out.slice(out.indexOf('How sure “'), out.indexOf('Points that stand out'));
    expect(asked).toContain(
      'near the line: mean 100.2 µm, under its line of 101.4 µm by the baseline',
    );
    for (const word of ['thin', 'mixed', 'refinished', 'filler']) {
      expect(asked).toMatch(new RegExp(`, ${word} (over|under) [0-9.]+ µm`));
    }
  });
});

describe('what would help', () => {
  test('names the panels of each line, or all but some, and never counts them only', async () => {
    const out = await page(SALOON);
    const help = out.slice(out.indexOf('What would help'), out.indexOf('Assumed'));
    expect(help).not.toMatch(/\d+ panels/);
    expect(help).toContain(
      'earlier work known, if there was none: up to +1.4 µm: every original panel',
    );
    expect(help).toMatch(
      /the clear itself read: up to \S+ µm, 10 min each: rear right door, right quarter/,
    );
    const one = await page(SALOON, '--panel', 'bonnet', '--panel', 'roof');
    expect(one).toContain('up to +1.1 µm: every panel read');
  });

  test('says of unread panels what to do with each', async () => {
    const out = await page(SALOON);
    expect(out).toContain(
      'plastic: ultrasonic gauge or leave it: both mirrors, rear bumper, front bumper',
    );
    expect(out).toContain('read 3 points on the face: both sills, both roof rails');
  });

  test('says how little a checked gauge frees, until there is one', async () => {
    expect(await page(SALOON)).toMatch(
      /the gauge checked on shims: up to \+0\.0\d µm, as it is 0\.\d % of the doubt/,
    );
    const checked = await page(SALOON, '--gauge', 'test/cases/survey-with-gauge/gauge.json');
    expect(checked).toContain('What would help');
    expect(checked).not.toContain('checked on shims');
  });
});

test('points off the face are named with what they read, and enter no statistic', async () => {
  const out = await page(NEAR);
  expect(out).toContain(
    'Off the face, kept apart: bonnet e1 92.4 (edge), e2 95.1 (edge); left sill 1 88.3 (edge); front left door s1 119.8 (shut)',
  );
  const why = await page(NEAR, '--why', 'left sill');
  expect(why).toContain('no reading on its face, only off it');
  expect(why).toContain('reported apart: 1: 88.3 (edge)');
});
