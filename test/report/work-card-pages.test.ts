/** The card that a car is worked by: what saves it comes first, and each number stands where it is needed. */
import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { shown } from '../../src/base/rounding.ts';
import { stageFacts } from '../../src/formats/data/stages.ts';
import { askLeastcut } from '../cli/ask-leastcut.ts';
import { temporaryFolder } from '../cli/temporary-folder.ts';

const coupe = 'samples/older-coupe/';
const COUPE = [`${coupe}readings.csv`, '--job', `${coupe}job.json`];
const saloon = 'samples/sound-saloon/';
const SALOON = [
  ...[`${saloon}readings.csv`, '--job', `${saloon}job.json`],
  ...['--defects', `${saloon}defects.csv`],
];
const local = 'test/cases/plan-local/';
const LOCAL = [`${local}readings.csv`, '--defects', `${local}defects.csv`];

const shop = 'test/cases/plan-card-shop/';
const SHOP = [`${shop}readings.csv`, '--template', 'saloon', '--shop', `${shop}shop.json`];

const cardOf = async (...words: readonly string[]): Promise<string> =>
  (await askLeastcut(['plan', ...words, '--card'])).out;

/** One panel's lines, each whole. */
const panelOf = (card: string, name: string): readonly string[] => {
  const [, block = ''] = card.match(new RegExp(`^(${name}: .*\\n(?: .*\\n)*)`, 'm')) ?? [];
  return block
    .replaceAll(/\n {6,}(?=\S)/g, ' ')
    .split('\n')
    .filter((line) => line !== '');
};

type PlannedStep = {
  readonly machine: string;
  readonly pad: string;
  readonly product: string;
  readonly sets: number;
};
type PlannedPanel = {
  readonly panel: string;
  readonly steps: readonly PlannedStep[];
  readonly budget_um: number;
  readonly removal_um: { readonly median: number };
};
const idOf = ({ machine, pad, product }: PlannedStep): string => [machine, pad, product].join('/');
/** `left quarter` is `quarter-left`; the lid of a boot is the boot. */
const spelt = (name: string, parted: string): string =>
  name
    .split(parted)
    .filter((word) => word !== 'lid')
    .toSorted()
    .join(' ');

describe('a work card', () => {
  test('numbers the spots of one kind on a panel, with what tells them apart', async () => {
    const defects = join(temporaryFolder(), 'defects.csv');
    const rows = ['deep-scratches,4,near point 3,2', 'deep-scratches,3,,', 'bird-etching,2,,'];
    const told = rows.map((row) => `roof,${row}`).join('\n');
    writeFileSync(defects, `panel,defect,grade,extent,depth_um\n${told}\n`);
    const card = await cardOf(`${saloon}readings.csv`, '--defects', defects);
    const lines = panelOf(card, 'roof').join('\n');
    expect(lines).toContain('mark the place of the deep scratches 1 (2.0 µm deep, near point 3), ');
    expect(lines).toContain('spot at deep scratches 1, that place only: ');
    expect(lines).toContain('mark the place of the deep scratches 2 (grade 3), ');
    expect(lines).toContain('mark the place of the bird etching, ');
  });

  test('says before anything is done what to keep off and why, and apart from it what nobody read', async () => {
    const card = await cardOf(...COUPE);
    const places = ['Keep off: ', 'Keep off as well: ', 'Stop: ', 'roof: takes'].map((text) =>
      card.indexOf(text),
    );
    expect(places.every((place) => place > 0)).toBe(true);
    expect(places).toEqual([...places].sort((a, b) => a - b));
    const text = card.replaceAll(/\n {2}/g, ' ');
    expect(text).toContain(
      'Keep off: bonnet (thin, cut-back) · right quarter (filler, refinished) · front left wing (refinished)\n',
    );
    expect(text).toContain('Keep off as well: both mirrors, both sills, both roof rails');
  });

  test('keeps off what would be harmed, and not what has nothing to polish', async () => {
    const folder = temporaryFolder();
    const defects = join(folder, 'defects.csv');
    writeFileSync(defects, 'panel,defect,grade\nroof,swirl marks,3\nboot lid,swirl marks,0\n');
    const panels = ['roof', 'boot lid', 'bonnet'].flatMap((name) => ['--panel', name]);
    const words = [`${coupe}readings.csv`, '--defects', defects, ...panels];
    const text = (await cardOf(...words)).replaceAll(/\n {2}/g, ' ');
    expect(text).toContain('\nKeep off: bonnet (thin, cut-back)\n');
    expect(text).toContain('\nLeave as they are: boot lid (nothing to polish)\n');
    const { out } = await askLeastcut(['plan', ...words]);
    expect(out).toContain('Leave: bonnet (thin, cut-back) · boot lid (nothing to polish)\n');
  });

  test('asks first of all for a value that looks keyed wrongly, with a place for what it reads now', async () => {
    const readings = join(temporaryFolder(), 'slip.csv');
    const rows = ['bonnet', 'roof', 'boot lid'].flatMap((panel) =>
      [118, 121, 119, 120, 122].map((value, i) => `${panel},${i + 1},${value}`),
    );
    const slip = ['roof,3,119', 'roof,3,1190'] as const;
    writeFileSync(readings, ['panel,point,reading_um', ...rows].join('\n').replace(...slip));
    const words = [readings, '--template', 'saloon'];
    const text = (await cardOf(...words)).replaceAll(/\n +/g, ' ');
    expect(text).toMatch(
      /Read again first: [^\n[]*\[ \] roof, point 3 \(1190 µm, ten times its neighbours\): if 119 µm was meant, it is original and [\d.]+ µm may go; reads ______/,
    );
    expect(text.indexOf('Read again first')).toBeLessThan(text.indexOf('Keep off'));
    const alone = (await cardOf(...words, '--panel', 'roof')).replaceAll(/\n +/g, ' ');
    expect(alone).toMatch(/reads ______\s+No panel can be worked/);
    const html = await cardOf(...words, '--format', 'html');
    expect(html.indexOf('Read again first')).toBeGreaterThan(0);
    expect(html.indexOf('Read again first')).toBeLessThan(html.indexOf('Keep off'));
  });

  test('has in HTML what to keep off in a box like that of the rule to stop', async () => {
    const html = await cardOf(...COUPE, '--format', 'html');
    const notices = [...html.matchAll(/class="fact notice"><strong>([\w ]+):/g)].map(
      ([, one]) => one,
    );
    expect(notices).toEqual(['Keep off', 'Stop']);
  });

  test('reads a point before the first set and again after the last, beside what may go', async () => {
    const [head = '', ...lines] = panelOf(await cardOf(...COUPE), 'roof');
    const [, most = ''] = head.match(/of ([\d.]+) µm that may go/) ?? [];
    const isSet = (line: string): boolean => /\[ \] \w.*× da\//.test(line);
    const sets = lines.flatMap((line, i) => (isSet(line) ? [i] : []));
    const blanks = lines.flatMap((line, i) => (line.includes('______') ? [i] : []));
    expect(sets.length).toBeGreaterThan(1);
    expect(blanks).toHaveLength(2);
    expect(blanks[0]).toBeLessThan(Math.min(...sets));
    expect(blanks[1]).toBeGreaterThan(Math.max(...sets));
    expect(lines[blanks[1] ?? 0]).toMatch(
      new RegExp(
        `read (it )?again, cool: (mean )?______ off: ______ \\(planned [\\d.]+, ${most} may go\\)`,
      ),
    );
  });

  test('says at a spot what it takes, what goes there in all and what may', async () => {
    type Local = {
      readonly panels: readonly {
        readonly panel: string;
        readonly local: readonly {
          readonly steps: readonly unknown[];
          readonly removal_um: { readonly median: number };
          readonly at_place: { readonly removal_um: number; readonly budget_um: number };
        }[];
      }[];
    };
    const [card, json] = await Promise.all([
      cardOf(...LOCAL),
      askLeastcut(['plan', ...LOCAL, '--format', 'json']),
    ]);
    const spots = (JSON.parse(json.out) as Local).panels.flatMap(({ local: of }) =>
      of.filter(({ steps }) => steps.length > 0),
    );
    expect(spots.length).toBeGreaterThan(0);
    const text = card.replaceAll(/\s+/g, ' ');
    for (const { removal_um, at_place: place } of spots) {
      expect(place.removal_um).toBeLessThanOrEqual(place.budget_um);
      expect(text).toContain(`takes ${shown(removal_um.median, 2)} µm (`);
      expect(text).toContain(
        `in all ${shown(place.removal_um, 2)} of ${shown(place.budget_um, 2)} that may go there`,
      );
    }
  });

  test('has a place for each figure of the test spot that comes first', async () => {
    const spot = panelOf(await cardOf(...COUPE), 'Test spot first');
    expect(spot.join('\n').match(/______/g)).toHaveLength(5);
    expect(spot.filter((line) => line.includes('[ ]'))).toHaveLength(5);
    expect(spot[2]).toMatch(/^ {2}(\[ \])+ work it/);
  });

  /** What is tried first, and where, with the plan’s own panels. */
  async function firstSpot(...words: readonly string[]) {
    const spot = panelOf(await cardOf(...words), 'Test spot first').join('\n');
    const { out } = await askLeastcut(['plan', ...words, '--format', 'json']);
    const { panels } = JSON.parse(out) as { readonly panels: readonly PlannedPanel[] };
    const [, name = '', why = ''] =
      spot.match(/mark a place on ([^,]*), (which [^.]*), 5 points/) ?? [];
    const [, sets = '', tried = ''] = spot.match(/up to (\d)×\s(\S+), which/) ?? [];
    const at = panels.find(({ panel }) => spelt(panel, '-') === spelt(name, ' '));
    return { spot, panels, at, why, sets: Number(sets), tried };
  }

  test('tries what most panels begin with, where it is worked anyway, with most to spare', async () => {
    const { spot, panels, at, why, sets, tried } = await firstSpot(...SALOON);
    const begun = panels.flatMap(({ steps: [first] }) =>
      first === undefined ? [] : [idOf(first)],
    );
    const count = (id: string): number => begun.filter((one) => one === id).length;
    expect(new Set(begun).size).toBeGreaterThan(1);
    expect(count(tried)).toBe(Math.max(...begun.map(count)));
    expect(spot).toContain(`which ${count(tried)} panels of this card begin with`);
    const same = panels.filter(
      ({ steps: [first] }) => first !== undefined && idOf(first) === tried,
    );
    expect(same).toContain(at);
    expect(at?.steps[0]?.sets).toBe(sets);
    const spare = (one: PlannedPanel): number =>
      Math.round(10 * (one.budget_um - one.removal_um.median));
    const most = Math.max(...same.map(spare));
    expect(at && spare(at)).toBe(most);
    expect(why).toMatch(
      same.filter((one) => spare(one) === most).length > 1
        ? /as much to spare as any/
        : /most to spare/,
    );
  });

  test('tries no step of a deep mark where panels are worked: it would decide nothing of them', async () => {
    const { panels, tried } = await firstSpot(...LOCAL);
    const begun = panels.flatMap(({ steps: [first] }) =>
      first === undefined ? [] : [idOf(first)],
    );
    expect(begun).toContain(tried);
    const alone = await firstSpot(...LOCAL, '--panel', 'front left wing');
    expect(alone.tried).toMatch(/^da-small\//);
    expect(alone.spot).toContain('which the deep marks of this card begin with');
  });

  test('of panels that leave as much tries the one whose film is most like the others’', async () => {
    const readings = join(temporaryFolder(), 'readings.csv');
    const means = { bonnet: 132, 'boot lid': 128, 'left quarter': 129.5, 'right quarter': 129 };
    const rows = Object.entries(means).flatMap(([name, mean]) =>
      [-2, -1, 0, 1, 2].map((off, i) => `${name},${i + 1},${mean + off}\n`),
    );
    writeFileSync(readings, `panel,point,um\n${rows.join('')}`);
    const { at, why, panels } = await firstSpot(
      readings,
      '--template',
      'saloon',
      '--aim',
      'enhance',
    );
    expect(panels.filter(({ steps }) => steps.length > 0)).toHaveLength(4);
    expect(at?.panel).toMatch(/quarter/);
    expect(why).toContain('film most like the others’');
  });

  test('says what a trial that left colour, and one by eye, do not show', async () => {
    const colour = 'test/cases/plan-colour-at-spot/spots.csv';
    const words = [`${saloon}readings.csv`, '--job', `${saloon}job.json`, '--spots'];
    const page = (await askLeastcut(['plan', ...words, colour])).out.replaceAll(/\s+/g, ' ');
    expect(page).toContain(
      'provisional, a test spot that left colour shows nothing of what a set takes.',
    );
    expect(page).not.toContain('no test spot yet');
    const eye = join(temporaryFolder(), 'spots.csv');
    writeFileSync(
      eye,
      'spot,panel,machine,pad,product,sets,cleared_pct\nA,bonnet,da,foam-medium,medium,1,40\n',
    );
    expect(panelOf(await cardOf(...words, eye), 'Test spot first').join(' ')).toContain(
      'no spot has shown yet what a set takes',
    );
  });

  test('calls a panel one with most to spare by what its plan leaves, not by what may go alone', async () => {
    const folder = temporaryFolder();
    const readings = join(folder, 'readings.csv');
    const names = ['bonnet', 'front left door', 'boot lid'];
    const rows = names.flatMap((name) =>
      [1, 2, 3, 4, 5].map((point) => `${name},${point},${[131, 128, 133, 130, 129][point - 1]}\n`),
    );
    writeFileSync(readings, `panel,point,um\n${rows.join('')}`);
    const defects = join(folder, 'defects.csv');
    writeFileSync(
      defects,
      'panel,defect,grade\nbonnet,swirl marks,2.5\nboot lid,swirl marks,2.5\nfront left door,swirl marks,2\n',
    );
    const words = [readings, '--template', 'saloon', '--defects', defects, '--aim', 'correct'];
    const card = await cardOf(...words);
    expect(panelOf(card, 'Test spot first').join('\n')).toContain(
      'mark a place on front left door, which has most to spare',
    );
  });

  test('tells of a point off the face that reads under the floor, with its reading, before any set', async () => {
    const readings = join(temporaryFolder(), 'readings.csv');
    const face = [118, 120, 122, 119, 121].map((um, i) => `bonnet,${i + 1},${um},face\n`);
    const edges = 'bonnet,e1,41,edge\nbonnet,e2,95,edge\n';
    writeFileSync(readings, `panel,point,um,place\n${face.join('')}${edges}`);
    const bonnet = panelOf(await cardOf(readings, '--template', 'saloon'), 'bonnet');
    const at = bonnet.findIndex((line) =>
      /thin: point e1 \(edge\) reads 41\.0\sµm: tape it off/.test(line),
    );
    expect(at).toBeGreaterThan(0);
    expect(at).toBeLessThan(bonnet.findIndex((line) => line.includes('× da/')));
    expect(bonnet.join()).not.toContain('e2');
  });

  test('has no word of a clear in its rule to stop where the paint has none', async () => {
    const words = [`${saloon}readings.csv`, '--template', 'saloon', '--aim', 'enhance'];
    const stop = async (finish: string): Promise<string> =>
      (await cardOf(...words, '--finish', finish))
        .match(/^Stop: (?:.*\n)+?\n/m)?.[0]
        .replaceAll(/\s+/g, ' ') ?? '';
    expect(await stop('clear-over-base')).toContain('Colour on the pad under clear: stop at once');
    const single = await stop('single-stage-solid');
    expect(single).not.toContain('under clear');
    expect(single).toContain('This paint has no clear, and its own colour on the pad is normal');
    expect(single).not.toContain('Not so on repaint');
  });

  test('names the repaint of a car without a clear at its rule to stop: there no colour is normal', async () => {
    const spots = 'test/cases/plan-with-spots-repaint/spots.csv';
    const card = await cardOf(...COUPE, '--spots', spots, '--finish', 'single-stage-solid');
    expect(card.replaceAll(/\s+/g, ' ')).toContain(
      'its own colour on the pad is normal; a lighter colour or primer on it: stop at once. Not so on repaint (front left wing): there any colour: stop at once',
    );
  });

  test('warns at a panel freed by its own test spot that its risk is not known, before its first set', async () => {
    const spots = 'test/cases/plan-with-spots-repaint/spots.csv';
    const card = await cardOf(...COUPE, '--spots', spots);
    const wing = panelOf(card, 'front left wing');
    const isWarning = (line: string): boolean =>
      line.includes(
        'mind: risk not known, the clear here cannot be read: look at the pad after each set; first colour on it: stop, no more on this panel',
      );
    const at = wing.findIndex(isWarning);
    expect(at).toBeGreaterThan(-1);
    expect(at).toBeLessThan(wing.findIndex((line) => line.includes('× da/')));
    expect(card.match(/risk not known/g)).toHaveLength(1);
  });

  test('orders no height of which no panel is worked, and no stage on panels that have none', async () => {
    const orderOf = async (...words: readonly string[]): Promise<string> =>
      (await cardOf(...words)).replaceAll(/\s+/g, ' ').match(/Order: .*?;/g)?.[0] ?? '';
    const panels = (...names: readonly string[]) => names.flatMap((name) => ['--panel', name]);
    expect(await orderOf(...COUPE)).toBe(
      'Order: cut all panels, as they stand below (the roof, what lies flat, the sides last);',
    );
    expect(await orderOf(...COUPE, ...panels('bonnet', 'boot lid', 'left quarter'))).toBe(
      'Order: cut all panels, as they stand below (what lies flat, the sides last);',
    );
    const all = (await cardOf(...SALOON)).replaceAll(/\s+/g, ' ');
    expect(all).toContain('the sides, low parts last); wipe, look');
    expect(all).toContain('then finish where that stands in the same order;');
  });

  test('has spots at deep defects first of all where the days have them first', async () => {
    const card = (await cardOf(...SALOON)).replaceAll(/\s+/g, ' ');
    expect(card).toContain(
      'Order: spots at deep defects before the rest (front left door); then cut all panels,',
    );
    expect(card).toMatch(/Days 1: .* cut \(deep marks of front left door; roof, /);
    const localCard = (await cardOf(...LOCAL)).replaceAll(/\s+/g, ' ');
    const [, named = ''] = localCard.match(/before the rest \((.+?)\); then/) ?? [];
    expect(named).not.toBe('');
    expect(localCard).toContain(`cut (deep marks of ${named}; `);
    expect(await cardOf(...COUPE)).not.toContain('spots at deep');
  });

  test('has a look between the sets of a spot, and its place read before and after', async () => {
    const door = panelOf(await cardOf(...SALOON), 'front left door').map((line) => line.trim());
    const at = door.findIndex((line) => /\] spot at .*, that place only: /.test(line));
    expect(door[at]).toMatch(
      /^(\[ \]){2,} spot at .*: [23]×.* that place: takes .* after each set: wipe, inspect: still needed\?$/,
    );
    expect(door[at - 1]).toMatch(/^\[ \] mark the place of the .*, wipe it, read it cool: _+$/);
    expect(door.slice(at + 1, at + 3)).toEqual([
      expect.stringMatching(
        /^\[ \] wipe, inspect; read that place again, cool: _+ off: _+ \(planned \d\.\d\d\)$/,
      ),
      expect.stringMatching(/^(\[ \])+ cut: /),
    ]);
  });

  test('sends no one to a zone without its points, where they lie, and its edge to be found and taped', async () => {
    const card = await cardOf(...SHOP);
    expect(card.replaceAll(/\s+/g, ' ')).toContain(
      'Keep off: right quarter (thicker zone) (refinished), about points 3 (middle), 4 (front foot)',
    );
    const [head, edge] = panelOf(card, 'right quarter \\(thinner zone\\)');
    expect(head).toContain(
      'work only about points 1 (front top), 2 (rear top), 5 (rear foot); the thicker zone lies about points 3 (middle), 4 (front foot), 240.0–255.0 µm',
    );
    expect(edge).toMatch(
      /\[ \] find the edge: closer points from 1, 2, 5 towards 3, 4 .*tape along it, 25 mm on this side.*Not found: leave the panel/,
    );
    const html = await cardOf(...SHOP, '--format', 'html');
    expect(html).toMatch(/Panels in two zones[\s\S]*<svg[\s\S]*right quarter[\s\S]*240\.0/);
    expect(await cardOf(...COUPE, '--panel', 'roof')).not.toMatch(/find the edge|two zones/);
  });

  test('calls things as the shop does, and built-in ones by their ids', async () => {
    const card = (await cardOf(...SHOP)).replaceAll(/\s+/g, ' ');
    expect(card).toContain('2× 21 mm polisher + black + One Step, ');
    expect(card).toContain('2× 21 mm polisher + orange foam + fine, ');
    expect(card).not.toContain('big-throw');
    expect(await cardOf(...COUPE)).toMatch(/× da\/foam-/);
  });

  test('keeps the order of the plan, and tells the minutes of the machine from those of the work', async () => {
    const { out } = await askLeastcut(['plan', ...SHOP, '--format', 'json']);
    const { panels, time } = JSON.parse(out) as {
      readonly panels: readonly {
        readonly steps: readonly { readonly time_min: number }[];
        readonly zones: readonly { readonly steps: readonly { readonly time_min: number }[] }[];
      }[];
      readonly time: { readonly p50_h: number };
    };
    const steps = panels.flatMap((one) => [...one.steps, ...one.zones.flatMap((z) => z.steps)]);
    const minutes = shown(
      steps.reduce((sum, { time_min }) => sum + time_min, 0),
      0,
    );
    const card = (await cardOf(...SHOP)).replaceAll(/\s+/g, ' ');
    expect(card).toContain('Order: cut all panels, as they stand below; ');
    expect(card).toContain('then finish them all in the same order; a box for each set');
    expect(card).toContain(`machine in hand, ${minutes} in all; `);
    expect(card).toContain(`half of such corrections take ${shown(time.p50_h, 1)} h at most`);
  });

  test('asks for each set by itself where it is heard', async () => {
    const plain = await cardOf(...COUPE, '--plain');
    expect(plain).toMatch(/^roof: to do: cut, set 1 of 2: da\//m);
    expect(plain).toMatch(/^roof: to do: cut, set 2 of 2: da\//m);
    expect(plain).not.toMatch(/times: |to fill in \w+ to fill in/);
  });

  test('says the finish where the last step is the cut itself', async () => {
    const card = await cardOf(...SALOON);
    expect(panelOf(card, 'rear bumper').join('\n')).toMatch(/\] cut and finish: 3× da\//);
    expect(panelOf(card, 'roof').join('\n')).toMatch(/\] cut: 3× da[\s\S]*\] finish: 1× da/);
  });

  test('speaks of the days in words, with the panels, and of vibration once with what to do', async () => {
    const card = await cardOf(...COUPE);
    const text = card.slice(card.indexOf('\nDays\n')).replaceAll(/\s+/g, ' ');
    const ids = stageFacts
      .map(({ id }) => id)
      .filter((id) => id.includes('-') && id !== 'pre-wash');
    expect(ids.length).toBeGreaterThan(4);
    expect(ids.filter((id) => text.includes(id))).toEqual([]);
    expect(text).toMatch(/cut and finish \(roof, boot lid, /);
    expect(text.match(/action value/g)).toHaveLength(1);
    expect(text).toMatch(
      /Vibration: Day 1 passes the action value of 100 points a hand: share the machine/,
    );
  });

  test('keeps names and what stands beside them apart in HTML, so that a copy is no word of both', async () => {
    const html = await cardOf(...COUPE, '--format', 'html');
    expect(html).toMatch(
      /<header><h2>roof<\/h2><p>takes [\d.]+ of [\d.]+\u00a0µm that may go, \d sections<\/p><\/header>/,
    );
  });
});

test('what is done once for each panel is a line of half a sheet: of two, a car takes a sheet more', async () => {
  const { out } = await askLeastcut(['plan', ...SALOON, '--card', '--plain']);
  const once = out.split('\n').flatMap((line) => line.match(/(?:mark \d points|tape: ).*/) ?? []);
  expect(once.length).toBeGreaterThan(10);
  // As wide as a column is at 10.5 pt in a wide font, DejaVu Sans; blanks are as long as on paper.
  expect(Math.max(...once.map((line) => line.length))).toBeLessThanOrEqual(44);
});
