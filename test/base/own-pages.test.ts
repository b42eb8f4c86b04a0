import { expect, test } from 'vitest';
import { ownPage } from '../../src/base/own-pages.ts';
import { askLeastcut } from '../cli/ask-leastcut.ts';
import { inFull } from '../in-full.ts';

const sound = 'samples/sound-saloon/readings.csv';
const pages = [
  [['survey', sound], 'a survey'],
  [['survey', sound, '--why', 'roof'], 'a survey'],
  [['survey', sound, '--job', 'samples/sound-saloon/job.json'], 'a survey'],
  [['plan', sound], 'a plan'],
  [['plan', sound, '--card'], 'a plan'],
  [['plan', sound, '--why', 'roof'], 'a plan'],
  [['quote', sound], 'a quote'],
  [['quote', sound, '--job', 'samples/sound-saloon/job.json', '--kind', 'quotation'], 'a quote'],
  [['read', sound], 'a list of readings'],
  [['compare', sound, 'samples/sound-saloon/after.csv', '--marked'], 'a comparison'],
  [['spot', 'samples/older-coupe/spots.csv'], 'a page of test spots'],
  [
    ['spot', 'samples/older-coupe/spots.csv', '--job', 'samples/older-coupe/job.json'],
    'a page of test spots',
  ],
  [['grade', 'samples/class/reference.csv', 'samples/class/anneke.csv'], 'a grading'],
  [['gauge', 'samples/gauge-checks.csv'], 'a check of a gauge'],
  [['batch', 'samples/week/jobs.csv', '--workers', '1'], 'a page of a batch'],
  [
    ['batch', 'samples/week/jobs.csv', '--workers', '1', '--command', 'survey'],
    'a page of a batch',
  ],
  [['batch', 'samples/week/jobs.csv', '--workers', '1', '--command', 'plan'], 'a page of a batch'],
] as const;

/** A run of mutants has no built program: there the recorded pages tell (`recorded-pages.test.ts`). */
test.runIf(inFull).each(pages)('a page of %j is known in every form', async (words, called) => {
  for (const form of [
    ['--format', 'text'],
    ['--format', 'md'],
    ['--format', 'text', '--plain'],
  ]) {
    const { out } = await askLeastcut([...words, ...form], { env: { COLUMNS: '60' } });
    expect(ownPage(out), `${form}: ${out.slice(0, 90)}`).toBe(called);
  }
  const { out } = await askLeastcut([...words, '--format', 'html']);
  expect(ownPage(out)).toBe('a page in HTML');
});

test.each([
  'Survey of FH-1042\npanel,point,reading_um\nroof,1,120\n',
  'Survey: roof, 5 points\nroof 120 121 122 123 124\n',
  'Plan of the day: roof, 2 panels\n',
  'Comparison: roof 120 118\n',
  'Readings of roof: 120 on steel\n',
  'Gauge check: 125 µm\nroof 120\n',
  'Reading sheet: saloon, 19 panels, 83 points\nroof 1 [ 120 ]\n',
  '<!doctype html>\n<title>Survey: saloon, 13 panels, 65 points</title>\n',
  '',
])('a file of readings that begins like one is none: %j', (text) => {
  expect(ownPage(text)).toBeUndefined();
});
