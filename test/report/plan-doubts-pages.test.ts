/** What puts a plan in doubt stands where it is read first: spots that took too much, half panels, few points, odd records. */
import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { askLeastcut } from '../cli/ask-leastcut.ts';
import { temporaryFolder } from '../cli/temporary-folder.ts';

const STEPS = [-2.4, -0.9, 0.3, 1.2, 1.8];
const PANELS = ['bonnet', 'roof', 'boot lid', 'front left door', 'front right door'];
const rowsOf = (panel: string, films: readonly number[]): readonly string[] =>
  films.map((film, i) => `${panel},${i + 1},${film.toFixed(1)}`);
const around = (mean: number): readonly number[] => STEPS.map((step) => mean + step);
const carWith = (own: Readonly<Record<string, readonly number[]>> = {}): string =>
  [
    'panel,point,reading_um',
    ...PANELS.flatMap((panel, i) => rowsOf(panel, own[panel] ?? around(111 + i))),
    '',
  ].join('\n');

type Files = {
  readonly readings?: string;
  readonly defects?: readonly string[];
  readonly took?: number;
  readonly sets?: number;
};

/** Sets on the bonnet that took so much. */
const spotsThatTook = (film: number, sets: number): string =>
  [
    'spot,panel,machine,pad,product,sets,mark,before_um,after_um,cleared_pct,colour_on_pad',
    ...[0.1, -0.1, 0, 0.1, -0.1].map((off, i) => {
      const before = 109 + i;
      return `A,bonnet,da,foam-medium,medium,${sets},${i + 1},${before},${(before - film + off).toFixed(1)},60,no`;
    }),
    '',
  ].join('\n');

async function run(
  command: string,
  { readings = carWith(), defects, took, sets = 1 }: Files,
  ...words: readonly string[]
) {
  const folder = join(temporaryFolder(), 'job');
  mkdirSync(folder, { recursive: true });
  const put = (name: string, text: string): string => {
    writeFileSync(join(folder, name), text);
    return join(folder, name);
  };
  const ofDefects =
    defects === undefined ? [] : ['--defects', put('defects.csv', [...defects, ''].join('\n'))];
  const ofSpots =
    took === undefined ? [] : ['--spots', put('spots.csv', spotsThatTook(took, sets))];
  return askLeastcut([
    command,
    put('readings.csv', readings),
    ...['--template', 'saloon', '--finish', 'clear-over-base'],
    ...ofDefects,
    ...ofSpots,
    ...words,
  ]);
}

const page = async (...asked: Parameters<typeof run>): Promise<string> =>
  (await run(...asked)).out.replaceAll('\u00a0', ' ').replaceAll(/\n {2,}/g, ' ');

type Planned = {
  readonly panels: readonly {
    readonly panel: string;
    readonly verdict: string;
    readonly steps: readonly unknown[];
    readonly budget_um: number;
    readonly reasons: readonly { readonly code: string }[];
  }[];
  readonly notes: readonly { readonly code: string; readonly text: string }[];
  readonly assumptions: readonly { readonly code: string; readonly text: string }[];
};
const record = async (files: Files, ...words: readonly string[]): Promise<Planned> =>
  JSON.parse((await run('plan', files, ...words, '--format', 'json')).out) as Planned;

describe('a test spot that took more than might go', () => {
  test.each([
    { of: 'the survey', words: ['survey'] },
    { of: 'the plan', words: ['plan'] },
    { of: 'the card', words: ['plan', '--card'] },
    { of: 'the quote', words: ['quote'] },
  ])('is said first by $of', async ({ words: [command = '', ...words] }) => {
    const [, first = ''] =
      (await page(command, { took: 6 }, ...words)).match(
        /^((?:Too much came off|Work:|May go|Keep off|An estimate).*)$/m,
      ) ?? [];
    expect(first).toMatch(
      /^Too much came off: bonnet \(test spot A\): 6\.0 µm \(\d\.\d to \d\.\d\) came off in 1 set of da\/foam-medium\/medium, 3\.\d\d µm might go, 0\.90 µm is usual\. Do not work it further\./,
    );
  });

  test('is told the owner of the car in plain words', async () => {
    const html = await page('quote', { took: 6 }, '--format', 'html');
    expect(html).toContain('At a trial about 6 µm of paint came off, more than was meant to go.');
  });

  test('lets the plan wait for it', async () => {
    expect(await page('plan', { took: 6 })).toMatch(/^Work: only once that is settled; 4 panels/m);
    expect(await page('plan', { took: 0.9 })).toMatch(/^Work: \d+ panels/m);
  });

  test('frees no more than on a car that nobody tried, on any panel', async () => {
    const [untried, tried] = await Promise.all([record({}), record({ took: 6 })]);
    for (const { panel, budget_um } of tried.panels) {
      const before = untried.panels.find((one) => one.panel === panel);
      expect(budget_um, panel).toBeLessThanOrEqual((before?.budget_um ?? 0) + 1e-9);
    }
    expect(tried.notes.map(({ code }) => code)).toEqual(['spot-overrun', 'spot-contradicts']);
  });

  test('is no such thing where it took what is usual, which may free more', async () => {
    const [untried, tried] = await Promise.all([record({}), record({ took: 0.9 })]);
    const roof = ({ panels }: Planned): number =>
      panels.find(({ panel }) => panel === 'roof')?.budget_um ?? 0;
    expect(tried.notes).toEqual([]);
    expect(roof(tried)).toBeGreaterThan(roof(untried));
  });

  test('is perhaps one where its interval reaches under what might go', async () => {
    expect(await page('plan', { took: 4 })).toMatch(
      /^Perhaps too much came off: bonnet \(test spot A\): 4\.0 µm .*Read the same points again before any panel is worked$/m,
    );
  });
});

describe('a test spot that took next to nothing where much is usual', () => {
  const nothing = { took: 0, sets: 3 };

  test('makes no step of the plan stronger, on any panel', async () => {
    const [untried, tried] = await Promise.all([record({}), record(nothing)]);
    const stepsOf = ({ panels }: Planned) =>
      panels.flatMap(({ panel, steps }) => (panel === 'bonnet' ? [] : [{ panel, steps }]));
    expect(stepsOf(tried)).toEqual(stepsOf(untried));
    expect(tried.notes.map(({ code }) => code)).toEqual(['spot-contradicts']);
  });

  test('is asked about on the plan, which stays provisional', async () => {
    const said =
      'test spot A on bonnet took 0.0 µm where 2.69 µm is usual: outside 95 % of what paints and ways of working differ by. It counts for nothing, and no step is stronger for it: check its readings, work it once more on a fresh place';
    const plan = await page('plan', nothing);
    expect(plan).toContain(said);
    expect(plan).toContain('provisional, no film that counts was read on a test spot.');
    expect(plan).toContain('Test spots: 1 trial, no film of which counts: paint medium');
  });
});

describe('the headline of a plan', () => {
  const half = carWith({ bonnet: [108, 109, 110, 270, 271, 272] });

  test('counts half of a panel as what it is, and says what comes of the other half', async () => {
    const out = await page('plan', { readings: half });
    expect(out).toMatch(/^Work: 4 panels, bonnet \(thinner zone\): /m);
    expect(out).toMatch(/^Spot first: bonnet \(thicker zone\) \(refinished\)$/m);
  });

  test.each([
    { of: 'the plan', words: ['plan'] },
    { of: 'the card', words: ['plan', '--card'] },
  ])(
    'of $of says before the rest which parts want more points',
    async ({ words: [command = '', ...words] }) => {
      const few = (...films: readonly number[]) => carWith({ bonnet: films });
      for (const [readings, line] of [
        [few(110, 111), 'Read more first: bonnet (only 2 points: read 3 more)'],
        [few(110, 111, 112.5), 'Few points: bonnet (3 points do: 2 more may let more go)'],
        [half, 'Few points: bonnet (thinner zone) (3 points do: 2 more may let more go)'],
      ] as const) {
        const out = await page(command, { readings }, ...words);
        expect(out.match(/^(Read more first|Few points): /gmu)).toHaveLength(1);
        expect(out).toContain(line);
        expect(out.indexOf(line)).toBeLessThan(out.search(/^(panel \(µm\)|Keep off)/m));
      }
    },
  );

  test('never calls a plan that falls short of the aim lighter than what was asked', async () => {
    const out = await page('plan', { took: 4 });
    expect(out).toContain('short of the aim: ');
    expect(out).not.toContain('lighter than asked');
  });
});

describe('a panel with a record of its defects', () => {
  const HEAD = 'panel,defect,grade,extent,depth_um';
  const verdictOf = ({ panels }: Planned, name: string): string | undefined =>
    panels.find(({ panel }) => panel === name)?.verdict;

  test('is taken as looked at: no swirl marks are cut that nobody wrote down', async () => {
    const planned = await record({
      defects: [HEAD, 'bonnet,orange-peel,4,,', 'roof,swirl marks,3,,'],
    });
    expect(['bonnet', 'roof', 'boot'].map((name) => verdictOf(planned, name))).toEqual([
      'leave',
      'polish',
      'polish',
    ]);
    const told = planned.assumptions.find(({ code }) => code === 'defects');
    expect(told?.text).toBe('swirl marks of grade 3 on panels read without a record');
  });

  test('is told what no polishing mends, worked or left', async () => {
    const out = await page('plan', {
      defects: [HEAD, 'bonnet,orange-peel,4,,', 'roof,orange-peel,4,,', 'roof,swirl marks,3,,'],
    });
    expect(out).toMatch(/^bonnet, roof: orange peel is not a polishing matter$/m);
  });

  test('hears that figures of extent change nothing, and words are left in peace', async () => {
    const extents = ['10 %', '150', 'whole panel'];
    const planned = await record({
      defects: [HEAD, ...extents.map((extent, i) => `${PANELS[i]},swirl marks,3,${extent},`)],
    });
    expect(planned.assumptions.find(({ code }) => code === 'defect-extent')?.text).toBe(
      'the extent of a defect (10 %, 150) changes nothing: its panel is worked as a whole',
    );
    const words = await record({ defects: [HEAD, 'bonnet,swirl marks,3,whole panel,'] });
    expect(words.assumptions.map(({ code }) => code)).not.toContain('defect-extent');
  });

  test('hears of marks that go through the clear, and of depths that are more than all the paint', async () => {
    const out = await page('plan', {
      defects: [
        HEAD,
        ...['bonnet,swirl marks,3,,45', 'roof,deep scratches,3,,130', 'boot lid,swirl marks,3,,3'],
      ],
    });
    expect(out).toMatch(
      /^bonnet: swirl marks: 45 µm deep is through the clear \(\d\d µm reckoned at its thinnest\): no polishing mends it, new paint does$/m,
    );
    expect(out).toMatch(
      /^roof: deep scratches of grade 3: left, 130 µm deep is more than all the paint there \(11\d µm\): is the depth right\? No polishing mends it, new paint does/m,
    );
    expect(out).not.toMatch(/^boot lid: .* deep is /m);
  });

  test('is asked which of two a name means that is part of both', async () => {
    const { code, err } = await run('plan', { defects: [HEAD, 'bonnet,etching,3,,'] });
    expect(code).toBe(65);
    expect(err).toContain('hint: which: water-etching or bird-etching?');
  });
});

test('a risk of over a fifth is told as much, first on every page', async () => {
  for (const [command = '', ...words] of [['survey'], ['plan'], ['plan', '--card'], ['quote']]) {
    const much = await page(command, {}, ...words, '--risk-pct', '50');
    expect(much).toContain('Much risk: 50.0 % a panel was accepted (risk_pct)');
    expect(await page(command, {}, ...words, '--risk-pct', '20')).not.toContain('Much risk');
  }
});
