/** What pages say first of colour on the pad, and of none where a finish without a clear is stated. */
import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { askLeastcut } from '../cli/ask-leastcut.ts';
import { temporaryFolder } from '../cli/temporary-folder.ts';

const PANELS = ['bonnet', 'roof', 'boot lid', 'front left door', 'front right door'];
const READINGS = [
  'panel,point,reading_um',
  ...PANELS.flatMap((panel) => [114, 116, 118, 120, 122].map((um, i) => `${panel},${i + 1},${um}`)),
  '',
].join('\n');
const spotOf = (after: (before: number) => number, colour: string): string =>
  [
    'spot,panel,machine,pad,product,sets,mark,before_um,after_um,cleared_pct,colour_on_pad',
    ...[117.1, 118.2, 116.4].map(
      (before, i) =>
        `A,bonnet,da,foam-medium,medium,2,${i + 1},${before},${after(before)},60,${colour}`,
    ),
    '',
  ].join('\n');
const worked = (before: number): number => before - 1.25;

async function page(command: string, spots: string, ...words: readonly string[]): Promise<string> {
  const folder = temporaryFolder();
  const [readings, trial] = [join(folder, 'readings.csv'), join(folder, 'spots.csv')];
  writeFileSync(readings, READINGS);
  writeFileSync(trial, spots);
  const files = command === 'spot' ? [trial] : [readings, '--template', 'saloon', '--spots', trial];
  const { out } = await askLeastcut([command, ...files, ...words]);
  return out.replaceAll('\u00a0', ' ').replace(/\n {2,}/g, ' ');
}

/** After the title. */
const firstOf = (out: string): string => out.split('\n\n')[1]?.split('\n')[0] ?? '';

describe('a stated finish without a clear, and a spot without colour', () => {
  test.each(['survey', 'plan'])(
    'is what %s says first, and both reckonings count',
    async (command) => {
      const finish = ['--finish', 'single-stage-solid'];
      expect(firstOf(await page(command, spotOf(worked, 'no'), ...finish))).toBe(
        'No colour on the pad: bonnet (test spot A): none came, so there is a clear, or the pad was not looked at. A finish without a clear was stated. Settle which before any panel is worked. Till then the finish counts as unknown: the lesser of both reckonings.',
      );
      expect(await page(command, spotOf(worked, 'yes'), ...finish)).not.toContain(
        'olour on the pad:',
      );
    },
  );
});

test('colour where a clear should be is said first, with the spot', async () => {
  expect(firstOf(await page('survey', spotOf(worked, 'yes')))).toMatch(
    /^Colour on the pad: bonnet \(test spot A\): through the clear there/,
  );
});

test('a spot of which every mark rose is not said to have been without film', async () => {
  const out = await page(
    'spot',
    spotOf((before) => before + 8, 'no'),
  );
  expect(out).toContain(
    'A: what was read rose, so nothing is learnt from it of paint or rates, and it frees no panel',
  );
  expect(out).not.toContain('no film was read');
});

describe('the page for the owner of the car', () => {
  const quoted = async (colour: string, ...words: readonly string[]): Promise<string> => {
    const html = await page('quote', spotOf(worked, colour), '--format', 'html', ...words);
    return html
      .replace(/<style>[\s\S]*<\/style>/, '')
      .replace(/<[^>]+>/g, ' ')
      .replace(/\s+/g, ' ');
  };
  const single = ['--finish', 'single-stage-solid'];
  const noColour =
    'Before any work: At a trial on the bonnet no colour came off with the polish. Paint without a clear top layer, as was stated, gives colour: so there is such a layer, or nobody looked at the pad. Which of the two it is must be settled before any panel is polished; until then no more is planned than either allows.';

  test('says before any choice that no colour came where the paint was stated to give it', async () => {
    const text = await quoted('no', ...single);
    expect(text).toContain(noColour);
    expect(text.indexOf(noColour)).toBeLessThan(text.indexOf('What there is to choose from'));
    expect(text).toContain(
      'bonnet: no colour came off at a trial, though paint without a clear top layer was stated',
    );
    expect(await quoted('yes', ...single)).not.toContain('Before any work');
  });

  test('says before what was found that colour came from under a clear that was stated', async () => {
    const text = await quoted('yes', '--finish', 'clear-over-base');
    const told =
      'Before any work: At a trial on the bonnet colour came off with the polish: the clear top layer is gone there, or the paint of this car is not what was thought.';
    expect(text).toContain(told);
    expect(text.indexOf(told)).toBeLessThan(text.indexOf('What we found'));
    expect(await quoted('no', '--finish', 'clear-over-base')).not.toContain('Before any work');
  });
});
