import { mkdtempSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { askLeastcut } from '../cli/ask-leastcut.ts';

const COUPE = 'samples/older-coupe/readings.csv';
const NEAR = 'test/cases/survey-near-line/readings.csv';
const SALOON = 'samples/sound-saloon/readings.csv';
const JOB = 'samples/sound-saloon/job.json';

type Panel = {
  readonly panel: string;
  readonly condition: string;
  readonly n_points: number;
  readonly budget_um: number;
  readonly bound_by: string;
  readonly condition_sure: 'clear' | 'near' | null;
  readonly condition_margin_um: number | null;
  readonly if_otherwise: {
    readonly condition: string;
    readonly budget_um: number | null;
    readonly if_word_holds_um: number;
    readonly work_to_um: number | null;
    readonly risk_over_both_prob: number | null;
  } | null;
  readonly condition_evidence: {
    readonly value_um: number;
    readonly line_um: number;
    readonly other_side_prob: number;
  } | null;
};

const page = async (...words: readonly string[]): Promise<string> =>
  (await askLeastcut(['survey', ...words])).out.replaceAll('\u00a0', ' ').replace(/\n {2,}/g, ' ');

async function panelsOf(...words: readonly string[]): Promise<readonly Panel[]> {
  const { out } = await askLeastcut(['survey', ...words, '--format', 'json']);
  return (JSON.parse(out) as { panels: readonly Panel[] }).panels;
}

/** A block of a page: its first line, and those that go on from it. */
const blockOf = (out: string, start: string): string =>
  out.split('\n').find((one) => one.startsWith(start)) ?? '';

describe('how sure each condition is', () => {
  test('stands on the page for those near their line, with figure, line, chance and what it would be else', async () => {
    const [out, full] = await Promise.all([page(NEAR), page(NEAR, '-v')]);
    const near = (await panelsOf(NEAR)).filter(({ condition_sure }) => condition_sure === 'near');
    expect(near.map(({ panel }) => panel)).toEqual(['wing-front-left', 'roof']);
    expect(out).toMatch(
      /^front left wing: 44 % likely not refinished; 0\.00 may go if refinished, 2\.5\d µm if original; word that it was painted again .*: settles it$/m,
    );
    expect(out).toMatch(
      /^roof: 35 % likely not cut-back; 0\.00 may go if cut-back, 2\.\d\d µm if original; clear read settles it: \+3\.\d\d µm as original, nothing as cut-back; without it leave it alone$/m,
    );
    const line = blockOf(full, 'Near their line');
    expect(line.match(/: (median|mean) /g)).toHaveLength(near.length);
    expect(line).toContain(
      'front left wing: median 154.1 µm, 0.7 ± 4.6 µm (SD, mostly film that varies over the panel) over the line of refinished: 44 % that it is not',
    );
    expect(line).toMatch(
      /0\.00 may go if refinished, 2\.5\d µm if original: nothing may go till it is settled; word that it was painted again/,
    );
    expect(out).toContain('How sure: each condition over 95 %, but for those with ?');
    expect(out.match(/ (refinished|cut-back)\? /g)).toHaveLength(near.length);
  });

  test('says otherwise what the record says, and of none but those near their line', async () => {
    const { out } = await askLeastcut(['survey', NEAR, '--format', 'json']);
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
        expect(text).toContain(`${other.budget_um.toFixed(2)} µm if ${other.condition}; `);
      }
    }
  });

  test('is said of every panel together where none is near, with what one may be besides', async () => {
    const [out, full] = await Promise.all([page(COUPE), page(COUPE, '-v')]);
    expect(out).toMatch(
      /How sure: each condition over 95 %; means ± 5\.2–6\.1 µm \(95 %\); cut-back 2\.6 % likely on left quarter$/m,
    );
    expect(full).toMatch(
      /How sure: each condition over 95 %; means ± 5\.2–6\.1 µm \(95 %\); thin 3\.4 % likely on roof, 2\.3 % on left quarter \(a warning, no limit\); cut-back 2\.6 % likely on left quarter \(takes 0\.5\d µm\); thinnest clear reckoned/,
    );
    expect(`${out}${full}`).not.toMatch(/Near (its|their) line|likely cut-back;/);
  });

  test('is said with what another word that is not near takes, as --why has it', async () => {
    const options = ['--job', 'samples/sound-saloon/job.json'];
    const [out, short] = await Promise.all([
      page(SALOON, ...options, '-v'),
      page(SALOON, ...options),
    ]);
    expect(short).toMatch(
      /cut-back up to 4\.5 % likely on roof, rear right door, front left wing$/m,
    );
    const told = /cut-back (4\.5 % likely on roof .*?); thinnest/.exec(out)?.[1] ?? '';
    const taken = [...told.matchAll(/on ([a-z ]+) \((?:takes )?(\d\.\d\d)(?: µm)?\)/g)];
    expect(taken.map(([, panel]) => panel)).toEqual(['roof', 'rear right door', 'front left wing']);
    for (const [, panel = '', takes] of taken) {
      const why = await page(SALOON, ...options, '--why', panel);
      const mayGo = Number(/(\d\.\d\d) µm may go/.exec(why)?.[1]);
      const byWord = Number(/(\d\.\d\d) µm, as if it were original for certain/.exec(why)?.[1]);
      expect((byWord - mayGo).toFixed(2)).toBe(takes);
    }
  });

  test('has the clear of the panels from which something may go, and of no other', async () => {
    const hatch = [
      'samples/plastic-bumpers/readings.tsv',
      '--job',
      'samples/plastic-bumpers/job.json',
    ];
    const [out, door] = await Promise.all([
      page(...hatch, '-v'),
      page(...hatch, '--why', 'front right door'),
    ]);
    expect(out).toContain('thinnest clear reckoned of panels worked 33.4–34.2 ± 4.7–4.9 (SD)');
    // Nothing may go from this door, whose clear is reckoned thinner.
    expect(door).toContain('0.00 µm may go');
    expect(door).toContain('32.7');
  });

  test('is said of every word of a panel that is not original, a second one too', async () => {
    const out = await page('samples/older-coupe/readings.csv', '-v');
    expect(blockOf(out, 'bonnet: ')).toContain(
      'thin, 99.9 % sure by its least, and cut-back, 99.5 % sure; mean ± 5.1 µm',
    );
    // Four of its five points lie within 212 and 355 µm: the fifth, on filler, speaks neither for nor against repaint.
    expect(blockOf(out, 'right quarter: ')).toContain(
      'refinished, 99.6 % sure; point 5 reads 640.3 µm, over 500 µm; the other 4 read 212.3 to 354.4 µm, like repaint',
    );
    const why = await page('samples/older-coupe/readings.csv', '--why', 'bonnet');
    // That much is sure; whether it was polished off is not.
    expect(why).toContain(
      'counts as cut-back, be it cut or painted thin, with what it lacks gone from the clear',
    );
    expect(why).not.toContain('likely');
    expect(why).toMatch(/cut-back besides, 99\.5 % sure: mean 83\.1 µm, under 94\.8 µm/);
  });

  test('stands under -v for every panel, as in the record, and of those unread that nothing is known', async () => {
    const out = await page(NEAR, '-v');
    const list = out.slice(out.indexOf('How sure each mean'), out.indexOf('What is held'));
    const panels = await panelsOf(NEAR);
    const judged = panels.filter(({ condition_sure }) => condition_sure !== null);
    expect(judged.length).toBeGreaterThan(5);
    expect(list.match(/ % sure(, near its line)?: /g)).toHaveLength(judged.length);
    expect(list).toContain('roof: mean 100.2 ± 4.1 µm; cut-back, 65 % sure, near its line: ');
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
      '65 % sure, near its line: mean 100.2 µm, under 101.4 µm, 12.0 µm under',
    );
    for (const word of ['thin', 'mixed', 'refinished', 'filler']) {
      expect(asked).toMatch(new RegExp(`[;,] ${word} is (over|under) [0-9.]+ µm`));
    }
  });
});

describe('what would help', () => {
  test('stands in a table, what each panel gains by each thing, as in the record', async () => {
    const [out, run] = await Promise.all([
      page(COUPE, '-v'),
      askLeastcut(['survey', COUPE, '--format', 'json']),
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
    const [titles = '', ...rows] = out
      .slice(start, out.indexOf('What would help besides'))
      .split('\n')
      .slice(1, -1);
    const order = [...titles.matchAll(/history|clear read|test spot/g)].map(([title]) => title);
    const codes = { history: 'history', 'clear read': 'clear', 'test spot': 'test-spot' };
    for (const { panel, advice } of panels) {
      if (!['roof', 'boot', 'door-front-left'].includes(panel)) continue;
      const row = rows.find((one) => one.includes(NAMES[panel] ?? panel)) ?? '';
      const gains = order.map((title) => {
        const code = codes[title as keyof typeof codes];
        const value = advice.find((one) => one.code === code)?.value ?? 0;
        return value < 0.005 ? '–' : `+${value.toFixed(2)}`;
      });
      expect(row.match(/\+\d+\.\d\d|–/g)).toEqual(gains);
    }
    expect(order.length).toBeGreaterThan(1);
  });

  test('is a row for each thing, with the least and the largest that it gains where it is worth doing', async () => {
    const [out, run] = await Promise.all([
      page(SALOON, '--job', JOB),
      askLeastcut(['survey', SALOON, '--job', JOB, '--format', 'json']),
    ]);
    const { panels } = JSON.parse(run.out) as {
      readonly panels: readonly {
        readonly panel: string;
        readonly condition_sure: string | null;
        readonly advice: readonly { readonly code: string; readonly value?: number }[];
      }[];
    };
    const rows = out.slice(out.indexOf('Would help'), out.indexOf('Would lower it')).split('\n');
    for (const [title, code] of [
      ['test spot', 'test-spot'],
      ['clear read', 'clear'],
      ['9 points', 'more-points'],
    ] as const) {
      const gains = panels
        // A clear that settles what it is stands beside that.
        .filter(({ condition_sure }) => !(code === 'clear' && condition_sure === 'near'))
        .flatMap(({ advice }) => advice)
        .flatMap((one) => (one.code === code && (one.value ?? 0) >= 0.15 ? [one.value ?? 0] : []));
      const range = [Math.min(...gains), Math.max(...gains)].map((one) => `+${one.toFixed(2)}`);
      expect(rows.find((row) => row.startsWith(title))).toContain(range.join(' to '));
    }
    const [own = Number.NaN] = panels
      .filter(({ condition_sure }) => condition_sure === 'near')
      .flatMap(({ advice }) => advice)
      .flatMap(({ code, value }) => (code === 'clear' && value !== undefined ? [value] : []));
    expect(out).toMatch(/^front left door: 9\.3 % likely cut-back; /m);
    expect(out).toContain(`clear read settles it: +${own.toFixed(2)} µm as original`);
  });

  test('names the panels that gain, those that gain most where all would not go on a line', async () => {
    const out = await page(SALOON, '--job', JOB);
    expect(out).toMatch(/^test spot +20 min once \+0\.\d\d to \+0\.\d\d all panels worked$/m);
    expect(out).toMatch(
      /^clear read +10 min each \+0\.22 to \+1\.58 all worked but front left door$/m,
    );
    expect(out).toMatch(
      /^9 points +4 min each +\+0\.16 to \+0\.28 front left door, roof and 2 more$/m,
    );
  });

  test('leaves to -v what frees next to nothing', async () => {
    const [out, full] = await Promise.all([page(COUPE), page(COUPE, '-v')]);
    const rows = (text: string) => text.slice(text.indexOf('Built in'), -1);
    expect(rows(out)).not.toContain('points');
    expect(out).not.toContain('checked on shims');
    expect(full).toMatch(
      /What would help besides.*9 points on a panel, 4 min each: .*gauge checked on shims/s,
    );
    expect(out).not.toMatch(/^9 points/m);
  });

  test('of a test spot says where to make it best, and on such a panel to make it on another', async () => {
    const hatch = [
      'samples/plastic-bumpers/readings.tsv',
      '--job',
      'samples/plastic-bumpers/job.json',
    ];
    const [out, why, door] = await Promise.all([
      page(...hatch),
      page(...hatch, '--why', 'bonnet'),
      page(...hatch, '--why', 'front left door'),
    ]);
    expect(blockOf(out, 'Would lower it')).toContain(
      'test spot’s patch: −1.3 µm, best on left quarter',
    );
    expect(await page(...hatch, '-v')).toContain('test spot on another panel +0.08 µm');
    expect(why).toContain('make a test spot, on another panel (its patch loses more than may go');
    expect(door).toContain('make a test spot: polish a patch');
    // Where no panel may give what the patch takes there is nowhere to make it.
    const job = join(mkdtempSync(join(tmpdir(), 'worked-')), 'job.json');
    writeFileSync(job, JSON.stringify({ schema: 'leastcut/job/1', taken_um: 6 }));
    const spent = await page(COUPE, '--job', job);
    expect(spent).toMatch(/^May go: 0\.\d\d to [01]\.\d\d µm each/m);
    expect(spent).not.toMatch(/^test spot |test spot’s patch/m);
    expect(spent).toMatch(/^clear read +10 min/m);
  });

  test('counts nothing as help that could only take film away: that stands apart', async () => {
    const out = await page(SALOON);
    const help = out.slice(out.indexOf('\nWould help'), out.indexOf('Would lower it'));
    expect(help).toContain('test spot');
    expect(help).not.toContain('zinc');
    expect(blockOf(out, 'Would lower it')).toMatch(
      /^Would lower it: 4 µm gone: −0\.\d\d to −1\.\d\d µm; thin clear; zinc under steel: −0\.\d\d to −0\.\d\d µm; test spot’s patch: −1\.3 µm/,
    );
    const why = await page(SALOON, '--why', 'roof');
    const asked = why.slice(why.indexOf('What would help'), why.indexOf('What would lower it'));
    expect(asked).not.toContain('galvanised');
    expect(why.slice(why.indexOf('What would lower it'))).toContain('galvanised');
  });

  test('is the same on the page and in --why: a test spot on repaint, nothing on a panel too thin', async () => {
    const coupe = 'samples/older-coupe/readings.csv';
    const out = await page(coupe);
    expect(out).toContain('right quarter, front left wing: test spot of its own: hand-sized patch');
    expect(blockOf(out, 'Leave')).toContain('nothing that could be learnt frees any film');
    const helpOf = async (panel: string) => {
      const why = await page(coupe, '--why', panel);
      return why.slice(why.indexOf('What would help'), why.indexOf('Assumed'));
    };
    expect(await helpOf('bonnet')).toBe(
      'What would help nothing that could be learnt frees any film, leave it alone\n',
    );
    expect(await helpOf('front left wing')).toContain('test spot of its own: hand-sized patch');
  });

  test('says how little a checked gauge frees and of what it is a share, until there is one', async () => {
    expect(await page(SALOON, '-v')).toMatch(
      /gauge checked on shims: \+?0\.0\d( to \+0\.0\d)? µm where any may go, 0\.\d % of its doubt/,
    );
    const checked = await page(
      ...[SALOON, '-v', '--gauge', 'test/cases/survey-with-gauge/gauge.json'],
    );
    expect(checked).toContain('What would help');
    expect(checked).not.toContain('checked on shims');
  });
});

describe('a panel that nobody read', () => {
  test('stands on the page with what it is made of, why nothing may go, and what to do', async () => {
    const out = await page(COUPE);
    expect(blockOf(out, 'Not read')).toBe(
      'Not read: both mirrors, rear bumper, front bumper (plastic: ultrasonic gauge, or leave it alone), both sills, both roof rails (steel: read 3 points on the face, 3 min): none may go (once read, repaint gets no more than on them)',
    );
  });
  test('is told from one that was read in vain, which has a name of its own', async () => {
    const out = await page(SALOON);
    expect(blockOf(out, 'Leave')).toBe(
      'Leave: rear bumper, front bumper (plastic; if metal, state that in the job)',
    );
    expect(blockOf(await page(SALOON, '-v'), 'Read in vain')).toContain(
      'rear bumper, front bumper, which no gauge for metal reads: metal after all?',
    );
  });
  test('is told the same way by --why and -v, and promised nothing after a test spot', async () => {
    for (const panel of ['rear bumper', 'left sill']) {
      const why = await page(COUPE, '--why', panel);
      const [substrate, limit, help] =
        panel === 'left sill'
          ? ['steel', 'nothing is known of it until it is read', 'read 3 points on the face']
          : ['plastic', 'a gauge for metal reads no film on plastic', 'ultrasonic gauge, or leave'];
      expect(why).toContain(`What it is: unread (${substrate}, by the template): no reading`);
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
  expect(await page(SALOON)).toMatch(/┊:\stotal\sfloor,\s80 µm/);
  expect(await page(SALOON, '--floor-um', '75')).toMatch(/┊:\stotal\sfloor,\s75 µm/);
  expect(await page(SALOON, '--show-unit', 'mil')).toMatch(/┊:\stotal\sfloor,\s3\.15 mil/);
});

test('an aluminium bonnet on a galvanised car is held to film without zinc, which the page says', async () => {
  const hatch = [
    'samples/plastic-bumpers/readings.tsv',
    '--job',
    'samples/plastic-bumpers/job.json',
  ];
  const out = await page(...hatch);
  expect(out).toContain(
    'Baseline: 119.3 ± 6.2 µm (95 %), this car’s usual film, the middle of 11 panels; ',
  );
  expect(out.replaceAll('\n', ' ')).toContain('without zinc under the paint 112.3 µm: bonnet');
  expect(out).toContain('bonnet: aluminium, so no zinc.');
  expect(out).toMatch(/^bonnet: 6\.4 % likely cut-back; /m);
  const full = await page(...hatch, '-v');
  expect(full).toMatch(
    /mostly how thick the zinc is, .*\) over the line of cut-back: 6\.4 % that it is;/,
  );
  expect(full).toContain('mean 108.6 µm (3.0 of it put back), 8.2 ± 5.4 µm (SD');
  expect(blockOf(out, 'Assumed, say otherwise: ')).toContain(
    'bonnet (aluminium) read by the eddy-current side of the gauge: a magnetic one cannot, and then nothing may go there',
  );
  expect(await page(SALOON)).not.toContain('eddy');
  // The panel is 8.2 µm clear of a line that zinc alone makes uncertain by √(11² − 10²) = 4.6.
  const why = await page(...hatch, '--why', 'bonnet');
  expect(why).toMatch(
    /8\.23 µm apart, which is uncertain by ± 5\.39 µm .*: how thick the zinc is, which differs from car to car 72 %/,
  );
});

test('a limit other than the clear is told once, the table says whom it binds', async () => {
  const [out, full] = await Promise.all([page(NEAR), page(NEAR, '-v')]);
  // What is built in, and what is assumed of earlier work, say as much.
  expect(out).not.toContain('Bound by');
  expect(out).toContain('12.7 µm off over a life');
  const line = blockOf(full, 'Bound by');
  expect(line).toBe(
    "Bound by: life: at most 12.7 µm off over the panel's life, 4.0 µm of it taken to be gone: 8.7 µm left, and 1 job in 20 takes 2.5 times its plan",
  );
});

test('a limit that reads in two ways is told with the panels of each', async () => {
  const job = join(mkdtempSync(join(tmpdir(), 'worked-')), 'job.json');
  const panels = Object.fromEntries(
    ['left quarter', 'rear left door'].map((id) => [id, { taken_um: 5, clear_um: 50 }]),
  );
  writeFileSync(job, JSON.stringify({ schema: 'leastcut/job/1', panels }));
  const out = await page(SALOON, '--job', job, '-v');
  expect(out).toContain(
    "Bound by: life (front right wing, front right door): at most 12.7 µm off over the panel's life, 4.0 µm of it taken to be gone: 8.7 µm left, and 1 job in 20 takes 2.5 times its plan",
  );
  expect(out).toContain(
    "Bound by: life (left quarter, rear left door): at most 12.7 µm off over the panel's life, 5.0 µm of it gone: 7.7 µm left, and 1 job in 20 takes 2.5 times its plan",
  );
});

test('a value that looks keyed wrongly is to be read again before anything else', async () => {
  const out = await page('test/cases/survey-keying-slip/readings.csv');
  expect(out).toContain('bonnet: read point 3 again before anything else');
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
    const [out, full] = await Promise.all([page(...hatch), page(...hatch, '-v')]);
    expect(out).toContain('How sure: each condition over 95 %, but for those with ?');
    expect(out).toMatch(
      /^front right door: 47 % likely cut-back; 1\.67 may go if original, 0\.00 µm if cut-back; clear read settles it: \+3\.0\d µm as original; without it leave it alone$/m,
    );
    expect(blockOf(out, 'Settle first')).toContain(
      'front right door (original or cut-back): nothing may go till then',
    );
    expect(blockOf(out, 'Risk')).toContain('untouched 22 % on front right door');
    const door = (await panelsOf(...hatch)).find(({ panel }) => panel === 'door-front-right');
    // As good as on its line: nothing goes without over 5 % risk, and all of it is far over.
    expect(door?.if_otherwise).toMatchObject({
      condition: 'cut-back',
      budget_um: 0,
      work_to_um: 0,
    });
    expect(door?.if_otherwise?.risk_over_both_prob).toBeGreaterThan(0.25);
    expect(door?.if_otherwise?.if_word_holds_um).toBeCloseTo(1.67, 2);
    expect([door?.budget_um, door?.bound_by]).toEqual([0, 'near-line']);
    expect(out).toMatch(
      /front right door +5 +104\.5 ± 1\.0 +103\.4 +91\.2 +0\.00 line +original\?/,
    );
    expect(full).toContain(
      '1.67 may go if original, 0.00 µm if cut-back: too little clear with 22 % even untouched, so leave it alone till it is settled',
    );
    // A clear that is read will read as on one side or the other; nothing else frees any.
    expect(full).toContain(
      'a clear read settles it, and ends the clear’s own doubt: +3.02 µm if it reads as original, nothing as cut-back; more points that read the same free none: without a clear read leave it alone',
    );
    expect(full).toContain(
      '2.57 may go if original, 0.00 µm if cut-back: 0.86 µm risks 5.0 % over both, 56 % if cut-back',
    );
    const why = await page(...hatch, '--why', 'front right door');
    expect(why).toContain('Why front right door: original?, 0.00 µm may go');
    expect(why).toContain('1.67 may go if original, 0.00 µm if cut-back');
    // The risks of both sides add up to what is told of both together.
    const bonnet = await page(...hatch, '--why', 'bonnet');
    const [, all, chance, there, other, here] =
      /with ([\d.]+) % over all that it may be: ([\d.]+) % × ([\d.]+) % if cut-back \+ ([\d.]+) % × ([\d.]+) % if original/
        .exec(bonnet)
        ?.map(Number) ?? [];
    const sum = ((chance ?? 0) * (there ?? 0) + (other ?? 0) * (here ?? 0)) / 100;
    expect(Math.abs(sum - (all ?? Number.NaN))).toBeLessThan(0.1);
    expect([all, there]).toEqual([5, 56]);
  });
  test('is left out where nothing may go on either side', async () => {
    const [short, out] = await Promise.all([
      page('test/errors/reading-missing/input.csv'),
      page('test/errors/reading-missing/input.csv', '-v'),
    ]);
    expect(short).not.toMatch(/^(boot lid|left quarter|roof)[^:]*: .*likely/m);
    expect(out).toContain('if cut-back, nothing may go either');
    expect(out).not.toContain('0.00 may go, not 0.00');
  });
  test('is no history where the job states it, and no points that would not settle it', async () => {
    const out = await page(...hatch, '-v');
    expect(await page(...hatch)).not.toContain('would settle it');
    expect(out).not.toContain('would settle it');
    expect(out).toContain(
      'a clear read settles it, and ends the clear’s own doubt: +2.92 µm if it reads as original',
    );
  });
});

test('the page says what is built in and decides most, each with its grounds, and --why where it is from', async () => {
  const job = ['--job', 'samples/older-coupe/job.json'];
  const [out, verbose, why] = await Promise.all([
    page(COUPE, ...job),
    page(COUPE, ...job, '-v'),
    page(SALOON, '--why', 'bonnet'),
  ]);
  expect(blockOf(out, 'Built in')).toBe(
    'Built in (-v: grounds): clear by factories’ 42 ± 6 µm over 70 ± 10 µm (SD), thick film adds none; 22.3 µm of clear must stay; 12.7 µm off over a life.',
  );
  expect(blockOf(out, 'Assumed, say otherwise')).toContain(
    'earlier work unknown: 2 µm of topcoat and 4 µm of the life limit allowed for it ("taken_um" in the job file)',
  );
  const line = blockOf(verbose, 'Built in (leastcut explain film.limits)');
  for (const text of [
    'clear by factories’ 42 ± 6 µm over 70 ± 10 µm (SD), thick film adds none (published, SD assumption)',
    '22.3 µm of clear must stay (thinnest published factory clear 35 less the permitted 12.7)',
    '12.7 µm off over a life (published)',
    '80 µm of paint in all (common practice)',
  ]) {
    expect(line).toContain(text);
  }
  expect(why).toContain(
    '12.7, most that may come off over a panel’s life: published: GM 91-282-10',
  );
  // A figure that somebody set has no built-in grounds.
  expect(await page(SALOON, '--policy', 'strict', '-v')).toContain(
    '35.6 µm of clear must stay (published)',
  );
  expect(await page(SALOON, '--floor-um', '75')).toContain('75 µm of paint in all (own setting)');
});

test('the page says what panels are made of, and who says so', async () => {
  expect(blockOf(await page(COUPE), 'Assumed: ')).toContain(
    'both mirrors, rear bumper, front bumper plastic, other panels steel (template)',
  );
  const job = ['--job', 'samples/sound-saloon/job.json'];
  const out = await page(SALOON, ...job);
  expect(blockOf(out, 'Assumed: ')).toContain(
    'both mirrors plastic, other panels steel (template)',
  );
  expect(blockOf(out, 'Stated')).toContain('rear bumper, front bumper: steel');
  expect(await page(SALOON, ...job, '--why', 'rear bumper')).toContain('(steel, by the job)');
  expect(await page(SALOON, ...job, '--why', 'roof')).toContain('(steel, by the template)');
});

test('--why says which panels make the baseline, how sure it is, and where every line is from', async () => {
  const why = await page(COUPE, '--why', 'roof');
  for (const text of [
    'baseline 106.8 ± 8.0 µm (95 %): the middle of the medians of bonnet, front right wing, both front doors, boot lid, left quarter, roof',
    'cut-back: a mean more than 12 µm under it, so under 94.8 µm (assumption)',
    'refinished: a median more than 40 µm or 35 % over it',
    'filler: a point over 500 µm (published: ',
    'mixed: two groups of points, their means more than 25 µm',
    'under the total floor of 80 µm',
  ]) {
    expect(why).toContain(text);
  }
  expect(await page(COUPE)).toContain(
    '106.8 ± 8.0 µm (95 %), this car’s usual film, the middle of 7 panels.',
  );
});

test('--why names mixed among the comparisons, or why there is no question of it', async () => {
  const [bonnet, quarter] = await Promise.all([
    page(COUPE, '--why', 'bonnet'),
    page(SALOON, '--why', 'right quarter'),
  ]);
  expect(bonnet).toContain('mixed: no question of it, as no cut leaves 2 points or more');
  expect(quarter).toContain('its thinner and its thicker points 12.5 µm apart; mixed is over');
});

test('the clear and the life of a panel cut back speak of the same film that is gone', async () => {
  const why = await page(COUPE, '--why', 'bonnet');
  expect(why).toContain(
    '25.69 not there any more (2.00 polished off, assumed, 23.69 that it lacks',
  );
  // All but a chance of .5 % that it is original after all.
  expect(why).toMatch(/12\.70 − 27\.5\d µm leaves no room/);
});

test('the risk is told for a panel and for all of them, and what is worked to is told plainly', async () => {
  const out = (await page(SALOON)).replaceAll('\n', ' ');
  const panels = (await panelsOf(SALOON)).filter(({ budget_um }) => budget_um > 0);
  const whys = await Promise.all(panels.map(({ panel }) => page(SALOON, '--why', panel)));
  // Those bound by another limit than the clear take less.
  const sum = whys.reduce(
    (all, why) =>
      all + Number(/Risk if a plan took it all ([\d.]+) % that less/.exec(why)?.[1]) / 100,
    0,
  );
  expect(sum).toBeLessThan(0.05 * panels.length);
  expect(out).toContain(
    `Risk: at most 5.0 % chance of too thin clear on each panel worked, ${sum.toFixed(1)} of ${panels.length} panels expected in all; `,
  );
  expect(out).toContain('May go: most to plan; 1 job in 20 takes 2.5 times it.');
  // What it would be over thinner clear: as --why says of each panel, those near their line too.
  const thinner = whys.map((why) =>
    Number(/(\d+) % if the topcoat were 6 µm thinner;/.exec(why)?.[1]),
  );
  expect(out).toContain(
    `; ${Math.min(...thinner)} to ${Math.max(...thinner)} % if the topcoat were 6 µm thinner.`,
  );
});

test('the same figure stands on the page, under -v and in --why', async () => {
  const told = [SALOON, '--job', 'samples/sound-saloon/job.json'];
  const [out, verbose] = await Promise.all([page(...told), page(...told, '-v')]);
  const names = ['bonnet', 'roof', 'right quarter', 'boot lid'];
  const rows = verbose.slice(
    verbose.indexOf('What would help'),
    verbose.indexOf('What would help besides'),
  );
  for (const name of names) {
    const why = await page(...told, '--why', name);
    const spot = /make a test spot[^;]*; [^:]*: (\+\d\.\d\d) µm/.exec(why)?.[1] ?? 'none';
    const clear = /tells layers apart: (\+\d\.\d\d) µm/.exec(why)?.[1] ?? 'none';
    const row = rows.split('\n').find((one) => one.startsWith(`${name} `)) ?? '';
    expect(row).toContain(spot);
    expect(row).toContain(clear);
  }
  const zinc = await Promise.all(
    (await panelsOf(...told))
      .filter(({ n_points }) => n_points > 0)
      .map(async ({ panel }) => {
        const why = await page(...told, '--why', panel);
        return Number(/if so: −(\d\.\d\d) µm/.exec(why)?.[1] ?? 0);
      }),
  );
  const shownZinc =
    /zinc under steel: (.*?);/
      .exec(blockOf(out, 'Would lower it'))?.[1]
      ?.match(/\d\.\d\d/g)
      ?.map(Number) ?? [];
  const near = Number(/zinc −(\d\.\d\d) µm/.exec(blockOf(verbose, 'Near its line'))?.[1]);
  expect(zinc).toContain(near);
  const lowered = zinc.filter((one) => one > 0);
  expect([Math.min(...shownZinc), Math.max(...shownZinc)]).toEqual([
    Math.min(...lowered),
    Math.max(...lowered),
  ]);
  // What reading it again would free is the same too.
  const [, again] =
    /right quarter: point 1 \(132\.1\) is high: read again: (\+\d\.\d\d)/.exec(out) ?? [];
  const quarter = await page(...told, '--why', 'right quarter');
  expect(quarter).toContain('point 1 (132.1) is high');
  expect(quarter).toContain(`read point 1 again; if it reads as the others: ${again} µm`);
});

test('a page of thirteen panels keeps to 48 lines, one of nine with three to talk of to 56', async () => {
  const lines = async (...words: readonly string[]) =>
    (await askLeastcut(['survey', ...words])).out.trimEnd().split('\n').length;
  expect(await lines(SALOON, '--job', 'samples/sound-saloon/job.json')).toBeLessThanOrEqual(48);
  expect(await lines(COUPE, '--job', 'samples/older-coupe/job.json')).toBeLessThanOrEqual(56);
});

test('the strip of a panel reaches down to the least that is credible on it', async () => {
  const row = blockOf(await page(COUPE), 'bonnet  ');
  expect(row).toMatch(/67\.3 +0\.00 total +thin +‹/);
});
