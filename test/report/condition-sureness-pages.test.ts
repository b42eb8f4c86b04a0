import { describe, expect, test } from 'vitest';
import { runLeastcut } from '../cli/run-leastcut.ts';

const COUPE = 'samples/older-coupe/readings.csv';
const NEAR = 'test/cases/survey-near-line/readings.csv';
const SALOON = 'samples/sound-saloon/readings.csv';

type Panel = {
  readonly panel: string;
  readonly condition: string;
  readonly n_points: number;
  readonly condition_sure: 'clear' | 'near' | null;
  readonly condition_margin_um: number | null;
  readonly if_otherwise: {
    readonly condition: string;
    readonly budget_um: number | null;
    readonly work_to_um: number | null;
    readonly risk_over_both: number | null;
  } | null;
  readonly condition_evidence: {
    readonly value_um: number;
    readonly line_um: number;
    readonly other_side_prob: number;
  } | null;
};

const page = async (...words: readonly string[]): Promise<string> =>
  (await runLeastcut(['survey', ...words])).out.replaceAll('\u00a0', ' ').replace(/\n {2,}/g, ' ');

async function panelsOf(...words: readonly string[]): Promise<readonly Panel[]> {
  const { out } = await runLeastcut(['survey', ...words, '--format', 'json']);
  return (JSON.parse(out) as { panels: readonly Panel[] }).panels;
}

/** A block of a page: its first line, and those that go on from it. */
const blockOf = (out: string, start: string): string =>
  out.split('\n').find((one) => one.startsWith(start)) ?? '';

describe('how sure each condition is', () => {
  test('stands on the page for those near their line, with figure, line, chance and what it would be else', async () => {
    const out = await page(NEAR);
    const near = (await panelsOf(NEAR)).filter(({ condition_sure }) => condition_sure === 'near');
    expect(near.map(({ panel }) => panel)).toEqual(['wing-front-left', 'roof']);
    const line = blockOf(out, 'Near their line');
    expect(line.match(/\?: (median|mean) /g)).toHaveLength(near.length);
    expect(line).toContain(
      'front left wing, refinished?: median 154.1 µm, refinished is over 153.4 µm: 43 % that it is not, as the 0.7',
    );
    expect(line).toMatch(/if original, 2\.5\d may go, not 0\.00 µm; its history would settle it/);
    expect(out).toContain('How sure: each condition over 95 %, but for those with ?');
    expect(out.match(/ (refinished|cut-back)\? /g)).toHaveLength(near.length);
  });

  test('says otherwise what the record says, and of none but those near their line', async () => {
    const { out } = await runLeastcut(['survey', NEAR, '--format', 'json']);
    const { panels } = JSON.parse(out) as {
      readonly panels: readonly (Panel & {
        readonly if_otherwise: { readonly condition: string; readonly budget_um: number } | null;
      })[];
    };
    for (const { condition_sure, if_otherwise } of panels) {
      expect(if_otherwise === null).toBe(condition_sure !== 'near');
    }
    const text = await page(NEAR);
    for (const { if_otherwise: other } of panels) {
      if (other !== null) {
        expect(text).toContain(`if ${other.condition}, ${other.budget_um.toFixed(2)} may go`);
      }
    }
  });

  test('is said of every panel together where none is near, but for a second word that is less sure', async () => {
    const out = await page('samples/older-coupe/readings.csv');
    expect(out).toContain(
      'How sure: each condition over 95 %, but for second words as said below; each mean',
    );
    expect(out).not.toMatch(/Near (its|their) line/);
  });

  test('is said of every word of a panel that is not original, a second one too', async () => {
    const out = await page('samples/older-coupe/readings.csv');
    expect(blockOf(out, 'bonnet: ')).toContain(
      'thin, 99.9 % sure, and cut-back, over 99.9 % sure; mean to ± 5.1 µm',
    );
    // Four of its five points lie within 212 and 355 µm, the fifth at 640: their spread is the doubt.
    expect(blockOf(out, 'right quarter: ')).toContain(
      'refinished, 89 % sure, for film that varies over the panel',
    );
    const why = await page('samples/older-coupe/readings.csv', '--why', 'bonnet');
    expect(why).toContain('likely cut before');
    expect(why).toMatch(/cut-back besides, over 99\.9 % sure: mean 83\.1 µm, under 94\.8 µm/);
  });

  test('stands under -v for every panel, as in the record, and of those unread that nothing is known', async () => {
    const out = await page(NEAR, '-v');
    const list = out.slice(out.indexOf('How sure each mean'), out.indexOf('What is held'));
    const panels = await panelsOf(NEAR);
    const judged = panels.filter(({ condition_sure }) => condition_sure !== null);
    expect(judged.length).toBeGreaterThan(5);
    expect(list.match(/ % sure(, near its line)?: /g)).toHaveLength(judged.length);
    expect(list).toContain('roof: mean 100.2 ± 4.1 µm; cut-back, 84 % sure, near its line: ');
    const unread = panels.filter(({ condition }) => condition === 'unread');
    expect(list.match(/unread \((steel|plastic)\), so nothing is known of it/g)).toHaveLength(
      unread.length,
    );
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
      '84 % sure, near its line: mean 100.2 µm, under 101.4 µm, 12.0 µm under',
    );
    for (const word of ['thin', 'mixed', 'refinished', 'filler']) {
      expect(asked).toMatch(new RegExp(`; ${word} is (over|under) [0-9.]+ µm`));
    }
  });
});

describe('what would help', () => {
  test('stands in a table, what each panel gains by each thing, as in the record', async () => {
    const [out, run] = await Promise.all([
      page(COUPE),
      runLeastcut(['survey', COUPE, '--format', 'json']),
    ]);
    const { panels } = JSON.parse(run.out) as {
      readonly panels: readonly {
        readonly panel: string;
        readonly advice: readonly { readonly code: string; readonly value?: number }[];
      }[];
    };
    const NAMES: Readonly<Record<string, string>> = {
      boot: 'boot lid',
      'door-front-left': 'front left door',
    };
    const start = out.indexOf('What would help');
    const rows = out.slice(start, out.indexOf('Besides')).split('\n').slice(2, -1);
    const titles = out.slice(start).split('\n')[1] ?? '';
    const order = [...titles.matchAll(/history|clear read|test spot/g)].map(([title]) => title);
    const codes = { history: 'history', 'clear read': 'clear', 'test spot': 'test-spot' };
    for (const { panel, advice } of panels) {
      if (!['roof', 'boot', 'door-front-left'].includes(panel)) continue;
      const row = rows.find((one) => one.includes(NAMES[panel] ?? panel)) ?? '';
      const gains = order.map((title) => {
        const code = codes[title as keyof typeof codes];
        const value = advice.find((one) => one.code === code)?.value ?? 0;
        return value < 0.05 ? '–' : `+${value.toFixed(1)}`;
      });
      expect(row.match(/\+\d+\.\d|–/g)).toEqual(gains);
    }
    expect(order.length).toBeGreaterThan(1);
  });

  test('is a line for each thing, from the least to the largest gain, where a table would be long', async () => {
    const [out, run] = await Promise.all([
      page(SALOON),
      runLeastcut(['survey', SALOON, '--format', 'json']),
    ]);
    const { panels } = JSON.parse(run.out) as {
      readonly panels: readonly {
        readonly advice: readonly { readonly code: string; readonly value?: number }[];
      }[];
    };
    const gains = panels
      .flatMap(({ advice }) => advice)
      .flatMap(({ code, value }) => (code === 'test-spot' && value !== undefined ? [value] : []));
    const range = `+${Math.min(...gains).toFixed(1)} to +${Math.max(...gains).toFixed(1)} µm`;
    expect(out).toContain(`test spot (20 min, one per paint): ${range}: every original panel`);
  });

  test('counts nothing as help that could only take film away: that stands apart', async () => {
    const out = await page(SALOON);
    const help = out.slice(out.indexOf('What would help'), out.indexOf('Would lower it'));
    expect(help).not.toContain('zinc');
    expect(blockOf(out, 'Would lower it')).toMatch(/^Would lower it: zinc, if there is any: −/);
    const why = await page(SALOON, '--why', 'roof');
    const asked = why.slice(why.indexOf('What would help'), why.indexOf('What would lower it'));
    expect(asked).not.toContain('galvanised');
    expect(why.slice(why.indexOf('What would lower it'))).toContain('galvanised');
  });

  test('is the same on the page and in --why: a test spot on repaint, nothing on a panel too thin', async () => {
    const coupe = 'samples/older-coupe/readings.csv';
    const out = await page(coupe);
    expect(out).toContain('make a test spot on it: right quarter, front left wing');
    expect(out).toContain('nothing that could be learnt frees any film, leave it alone: bonnet');
    const helpOf = async (panel: string) => {
      const why = await page(coupe, '--why', panel);
      return why.slice(why.indexOf('What would help'), why.indexOf('Assumed'));
    };
    expect(await helpOf('bonnet')).toBe(
      'What would help nothing that could be learnt frees any film, leave it alone\n',
    );
    expect(await helpOf('front left wing')).toContain('make a test spot on it');
  });

  test('says how little a checked gauge frees and of what it is a share, until there is one', async () => {
    expect(await page(SALOON)).toMatch(
      /gauge checked on shims: \+0\.0\d µm at most: it makes 0\.\d % of the variance of the clear left/,
    );
    const checked = await page(SALOON, '--gauge', 'test/cases/survey-with-gauge/gauge.json');
    expect(checked).toContain('What would help');
    expect(checked).not.toContain('checked on shims');
  });
});

describe('a panel that nobody read', () => {
  const words = [
    'both mirrors, rear bumper, front bumper (plastic, which a gauge for metal does not read: ultrasonic gauge, or leave it alone)',
    'both sills, both roof rails (steel: read 3 points on the face)',
  ];
  test('stands on the page with what it is made of, why nothing may go, and what to do', async () => {
    const line = blockOf(await page(COUPE), 'Unread, so nothing is sure and nothing may go');
    for (const text of words) expect(line).toContain(text);
  });
  test('is told the same way by --why and -v, and promised nothing after a test spot', async () => {
    for (const panel of ['rear bumper', 'left sill']) {
      const why = await page(COUPE, '--why', panel);
      const [substrate, limit, help] =
        panel === 'left sill'
          ? ['steel', 'nothing is known of it until it is read', 'read 3 points on the face']
          : ['plastic', 'a gauge for metal reads no film on plastic', 'ultrasonic gauge, or leave'];
      expect(why).toContain(`What it is: unread (${substrate}): no reading`);
      expect(why).toContain('How sure: nothing is sure of a panel that was not read');
      expect(why).toContain(`→ 0.00: ${limit} (binds)`);
      expect(why.slice(why.indexOf('What would help'))).toContain(help ?? '');
      expect(why).not.toContain('test spot');
    }
    expect(await page(COUPE, '-v')).toContain('left sill 0.00: nothing is known of it');
  });
});

test('sums of --why add up: room, mean removal and so many SDs, or room by a factor', async () => {
  const why = await page(SALOON, '--why', 'roof');
  const [, of, less, room] = /room ([\d.]+) − ([\d.]+) = ([\d.]+), uncertain/.exec(why) ?? [];
  expect(Number(of) - Number(less)).toBeCloseTo(Number(room), 2);
  const [, removal, sds, together, all] =
    /([\d.]+) for the removal \+ ([\d.]+) × ([\d.]+) for the doubt = ([\d.]+) µm/.exec(why) ?? [];
  expect(all).toBe(room);
  expect(Math.abs(Number(removal) + Number(sds) * Number(together) - Number(all))).toBeLessThan(
    0.02,
  );
  const exact = [...why.matchAll(/: ([\d.]+) ÷ ([\d.]+) = ([\d.]+) µm/g)];
  expect(exact).toHaveLength(2);
  for (const [, left, factor, allowed] of exact) {
    expect(Math.abs(Number(left) / Number(factor) - Number(allowed))).toBeLessThan(0.01);
  }
});

test('the floor of the total is told as a number where its mark is explained', async () => {
  expect(await page(SALOON)).toMatch(/┊\stotal\sfloor,\s80 µm/);
  expect(await page(SALOON, '--floor-um', '75')).toMatch(/┊\stotal\sfloor,\s75 µm/);
  expect(await page(SALOON, '--show-unit', 'mil')).toMatch(/┊\stotal\sfloor,\s3\.15 mil/);
});

test('an aluminium bonnet on a galvanised car is held to film without zinc, which the page says', async () => {
  const hatch = [
    'samples/plastic-bumpers/readings.tsv',
    '--job',
    'samples/plastic-bumpers/job.json',
  ];
  const out = await page(...hatch);
  expect(out).toContain('without zinc under the paint 109.3 µm: bonnet');
  expect(out).toMatch(/cut-back is under 97\.3 µm: 5\.4 % that it is, .* mostly the zinc/);
  // The panel is 8.2 µm clear of a line that zinc alone makes uncertain by √(11² − 10²) = 4.6.
  const why = await page(...hatch, '--why', 'bonnet');
  expect(why).toMatch(
    /8\.23 µm apart, which is uncertain by ± 5\.13 µm .*: the zinc, unknown on this car 80 %/,
  );
});

test('a limit other than the clear is told once, the table says whom it binds', async () => {
  const line = blockOf(await page(NEAR), 'Bound by');
  expect(line).toBe(
    "Bound by: life: at most 12.7 µm off over the panel's life, 4.0 µm of it taken to be gone",
  );
});

test('a value that looks keyed wrongly is to be read again before anything else', async () => {
  const out = await page('test/cases/survey-keying-slip/readings.csv');
  expect(out).toContain('read point 3 again before anything else: bonnet');
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

describe('what to work to while a panel is near its line', () => {
  const hatch = [
    'samples/plastic-bumpers/readings.tsv',
    '--job',
    'samples/plastic-bumpers/job.json',
  ];
  test('stands on the page, in the record and in the risk of --why', async () => {
    const out = await page(...hatch);
    expect(out).toMatch(/Limits\skept\sat\s5\.0 %\srisk\sa\spanel,\s\?\sif\sits\sword\sholds\./);
    const door = (await panelsOf(...hatch)).find(({ panel }) => panel === 'door-front-right');
    // As good as on its line: nothing goes without over 5 % risk, and all of it is far over.
    expect(door?.if_otherwise).toMatchObject({
      condition: 'cut-back',
      budget_um: 0,
      work_to_um: 0,
    });
    expect(door?.if_otherwise?.risk_over_both).toBeGreaterThan(0.25);
    expect(out).toContain('not 1.67 µm, 30 % risk over both: work to 0.00 µm till settled');
    const why = await page(...hatch, '--why', 'front right door');
    expect(why).toContain('Why front right door: original?, 1.67 µm may go');
    expect(why).toContain(
      'all of this only if it is original: with the chance that it is cut-back counted in 30 %',
    );
  });
  test('is left out where nothing may go on either side', async () => {
    const out = await page('test/errors/reading-missing/input.csv');
    expect(out).toContain('if cut-back, as much may go');
    expect(out).not.toContain('0.00 may go, not 0.00');
  });
  test('is no history where the job states it, and no points that would not settle it', async () => {
    const out = await page(...hatch);
    expect(out).not.toContain('would settle it');
    expect(out).toContain('a clear read settles what may go, points would not');
  });
});

test('the page says what its clear is reckoned from, and --why where those figures are from', async () => {
  const [out, why] = [await page(SALOON), await page(SALOON, '--why', 'bonnet')];
  expect(out).toContain(
    'Assumed: clear reckoned from the total, not measured: 42 ± 6 µm as factories paint over 70 ± 10 µm; 22.3 µm must stay (thinnest published factory clear 35 less the permitted 12.7)',
  );
  expect(why).toContain(
    '12.7, most that may come off over a panel’s life: published: GM 91-282-10',
  );
  // Under another floor than the built-in one its source says nothing.
  expect(await page(SALOON, '--policy', 'strict')).toContain('35.6 µm must stay; ');
});
