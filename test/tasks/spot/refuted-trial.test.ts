/** A trial that took far less than any paint is held to give: a place that was not worked looks the same. */
import { describe, expect, test } from 'vitest';
import { readJob } from '../../../src/formats/job/read-job.ts';
import { resolveSettings } from '../../../src/tasks/settings/settings.ts';
import { type SpotResult, spotFiles } from '../../../src/tasks/spot/spot-files.ts';

const header =
  'spot,panel,machine,pad,product,sets,mark,before_um,after_um,defect,cleared_pct,haze_grade,colour_on_pad';
const rows = (spot: string, work: string, off: number, judged: string): readonly string[] =>
  [118, 119, 117].map(
    (film, i) =>
      `${spot},bonnet,${work},${i + 1},${film + spot.charCodeAt(0) / 1000},${film + spot.charCodeAt(0) / 1000 - off - 0.1 * i},swirl marks,${judged}`,
  );
const spotsOf = (...trials: readonly (readonly string[])[]): SpotResult => {
  const said = { schema: 'leastcut/job/1', template: 'saloon', finish: 'clear-over-base' };
  const job = readJob('job.json', JSON.stringify(said)).value;
  if (job === undefined) throw new Error('refused');
  const { value } = spotFiles({
    files: [
      {
        name: 'spots.csv',
        bytes: new TextEncoder().encode([header, ...trials.flat()].join('\n')),
        sha256: '',
      },
    ],
    settings: resolveSettings({ typed: {}, job: { file: job, folder: '' }, shops: [] }),
    job,
  });
  if (value === undefined) throw new Error('refused');
  return value;
};
const codes = ({ advice }: SpotResult): readonly string[] => advice.map(({ code }) => code);
const rungsOf = ({ ladder }: SpotResult) =>
  ladder.map(({ combination, state, tried }) => ({ id: combination.id, state, tried }));

const mild = rows('A', 'da,foam-medium,medium,2', 1.4, '10,0,no');
// 6 µm is usual of it, and nothing of it is seen.
const refuted = rows('B', 'da,microfibre,heavy,3', 0.3, '30,1,no');

describe('a trial that counts for nothing', () => {
  test('asks for no stronger rung by what its eye did not see cleared', () => {
    const [without, withIt] = [spotsOf(mild), spotsOf(mild, refuted)];
    expect(codes(withIt)).toContain('spot-contradicts');
    expect(withIt.next.combination?.id).toBe(without.next.combination?.id);
    expect(rungsOf(withIt)).toEqual(rungsOf(without));
  });

  test('stays on the page, by itself too, and the ladder begins as if none had been', () => {
    const alone = spotsOf(refuted);
    expect(alone.trials).toHaveLength(1);
    expect(codes(alone)).toEqual(expect.arrayContaining(['spot-start', 'spot-contradicts']));
    expect(rungsOf(alone).some(({ tried }) => tried)).toBe(false);
  });

  test('stops all the same where it left colour on the pad', () => {
    const coloured = rows('B', 'da,microfibre,heavy,3', 0.3, '30,1,yes');
    expect(spotsOf(mild, coloured).next.code).toBe('stop-colour');
  });
});
