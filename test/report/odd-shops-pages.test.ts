/** What the pages say of a shop that has little: that it is the shop, not the film, that keeps a panel from more. */
import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { askLeastcut } from '../cli/ask-leastcut.ts';
import { temporaryFolder } from '../cli/temporary-folder.ts';

const saloon = 'samples/sound-saloon/';
const CAR = [`${saloon}readings.csv`, '--job', `${saloon}job.json`];

const put = (name: string, text: string): string => {
  const file = join(temporaryFolder(), name);
  writeFileSync(file, text);
  return file;
};
const shopOf = (has: Readonly<Record<string, unknown>>): readonly string[] => [
  '--shop',
  put('shop.json', JSON.stringify({ schema: 'leastcut/shop/1', ...has })),
];
const marksOn = (panel: string, ...rest: readonly string[]): readonly string[] => [
  '--defects',
  put('marks.csv', ['panel,defect,grade', `${panel},swirl-marks,5`, ...rest, ''].join('\n')),
];
const pageOf = async (command: string, ...words: readonly string[]): Promise<string> =>
  (await askLeastcut([command, ...CAR, ...words])).out.replace(/\s+/gu, ' ');

const HAND = shopOf({ machines: ['hand'] });
const MILD = shopOf({ machines: ['da'], pads: ['foam-soft'], products: ['fine'] });
const HARSH = shopOf({
  machines: ['da'],
  pads: ['foam-medium'],
  products: ['fine', 'medium'],
});

describe('a shop that works by hand alone', () => {
  test('has a pad in hand and no machine, and is told to fall short', async () => {
    const page = await pageOf('plan', ...HAND);
    expect(page).toContain('panels by hand, short of the aim');
    expect(page).toContain('of it pad in hand');
    expect(page).toContain('by hand: the shop has no machine');
    expect(page).toContain('by hand no more clears, though more may go');
    expect(page).not.toContain('machine in hand');
    expect(page).not.toContain('no pad of a machine that may end a panel lies flat');
    expect(await pageOf('plan', ...HAND, '--card')).toMatch(/Minutes are pad in hand/u);
  });

  test('is not told that little paint may go, where it has no way to a finish without haze', async () => {
    const page = await pageOf('quote', ...HAND);
    expect(page).toContain('full clears less than correct here: it leaves bonnet');
    expect(page).not.toContain('where little paint may go');
  });
});

describe('a shop with the mildest things alone', () => {
  test('is told that a stronger one would clear more, and not that the film holds it back', async () => {
    const page = await pageOf('plan', ...MILD);
    expect(page).toContain(
      'what the shop has clears no more, though more may go: a stronger pad, product or machine clears more',
    );
    expect(page).not.toContain('the aim takes more than');
  });

  test('is told so where nothing is worth its film, by plan and card', async () => {
    const words = [...MILD, ...marksOn('bonnet'), '--panel', 'bonnet'];
    const why =
      'an be worked: what the shop has clears hardly a mark: a stronger pad, product or machine clears more';
    for (const page of [await pageOf('plan', ...words), await pageOf('plan', ...words, '--card')]) {
      expect(page).toContain(`o panel c${why}`);
      expect(page).toContain('bonnet (what the shop has clears hardly a mark)');
    }
  });
});

test('a shop whose mildest steps take more than may go is told what would take less', async () => {
  const floor = ['--floor-um', '104.45'];
  const words = [...HARSH, ...floor, '--panel', 'rear right door'];
  const page = await pageOf('plan', ...words);
  expect(page).toContain(
    'no panel can be worked: the mildest steps take more than may go: a softer pad or a finer product takes less',
  );
});

test('both machine and pad are in hand where some panels are worked by hand', async () => {
  const template = put(
    'narrow.json',
    JSON.stringify({
      schema: 'leastcut/template/1',
      id: 'narrow',
      name: 'narrow saloon',
      base: 'saloon',
      change: { roof: { flat_width_mm: 60 } },
    }),
  );
  const page = await pageOf('plan', '--template', template);
  expect(page).toContain('of it machine or pad in hand');
  expect(page).toMatch(/roof by hand, short of the aim: /u);
});

describe('a spot at a deep defect', () => {
  const hot = put(
    'hot.json',
    JSON.stringify({
      schema: 'leastcut/job/1',
      template: 'saloon',
      taken_um: 0,
      panel_c: 40,
      room_c: 38,
    }),
  );
  const words = [
    'plan',
    `${saloon}readings.csv`,
    '--job',
    hot,
    '--panel',
    'bonnet',
    ...['--defects', put('deep.csv', 'panel,defect,grade\nbonnet,bird-etching,2\n')],
  ];

  test('on a warm panel is told of its heat on page and card, though the panel has no step of its own', async () => {
    const page = (await askLeastcut(words)).out.replace(/\s+/gu, ' ');
    expect(page).toContain('a spot clears');
    expect(page).toMatch(/bonnet: at the spot: without a rest the panel warms to \d+ °C/u);
    const card = (await askLeastcut([...words, '--card'])).out.replace(/\s+/gu, ' ');
    expect(card).toMatch(/mind: at the spot: without a rest the panel warms to \d+ °C/u);
  });
});

test('a repainted car without an original panel is bound by that on survey and plan alike', async () => {
  const panels = ['bonnet', 'roof', 'boot lid', 'front left wing'];
  const rows = panels.flatMap((panel) =>
    [262, 258, 265, 260, 259].map((x, i) => `${panel},${i + 1},${x}`),
  );
  const readings = put('repaint.csv', ['panel,point,reading_um', ...rows, ''].join('\n'));
  const trials = [1, 2, 3, 4].map(
    (mark) => `A,bonnet,da,foam-medium,medium,2,${mark},${258 + mark},${256.5 + mark},no`,
  );
  const spots = put(
    'spots.csv',
    [
      'spot,panel,machine,pad,product,sets,mark,before_um,after_um,colour_on_pad',
      ...trials,
      '',
    ].join('\n'),
  );
  const ask = [readings, '--template', 'saloon', '--spots', spots];
  for (const command of ['survey', 'plan']) {
    const { out } = await askLeastcut([command, ...ask]);
    expect(out).toMatch(/^bonnet .* 0\.00 others /mu);
    expect(out).not.toContain('spot 1st');
  }
});

test('a test spot that is made is told to count in the hours of the whole job', async () => {
  const coupe = 'samples/older-coupe/';
  const words = ['plan', `${coupe}readings.csv`, '--job', `${coupe}job.json`, '-v'];
  const page = async (...more: readonly string[]): Promise<string> =>
    (await askLeastcut([...words, ...more])).out.replace(/\s+/gu, ' ');
  const made = / test spot: wipe, inspect: \d+ min \(counted, though spots are made/u;
  expect(await page()).not.toMatch(made);
  expect(await page('--spots', `${coupe}spots.csv`)).toMatch(made);
});
