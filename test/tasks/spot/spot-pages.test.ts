/** The page that is read at the car: panels by the names of the template, and what colour on the pad may mean. */
import { describe, expect, test } from 'vitest';
import { readJob } from '../../../src/formats/job/read-job.ts';
import { renderText } from '../../../src/render/text.ts';
import { spotBlocks } from '../../../src/report/spot/spot-blocks.ts';
import { resolveSettings } from '../../../src/tasks/settings/settings.ts';
import { spotFiles } from '../../../src/tasks/spot/spot-files.ts';

const header =
  'spot,panel,machine,pad,product,sets,mark,before_um,after_um,cleared_pct,colour_on_pad';

function spotsOn(panel: string, keys: object = {}, colour = 'yes') {
  const rows = [1, 2, 3].map(
    (mark) => `P1,${panel},da,foam-soft,medium,1,m${mark},12${mark},12${mark - 1}.5,90,${colour}`,
  );
  const text = JSON.stringify({ schema: 'leastcut/job/1', template: 'hatch', ...keys });
  const job = readJob('job.json', text).value;
  if (job === undefined) throw new Error('refused');
  const settings = resolveSettings({ typed: {}, job: { file: job, folder: '' }, shops: [] });
  const bytes = new TextEncoder().encode([header, ...rows].join('\n'));
  const { value } = spotFiles({
    files: [{ name: 'spots.csv', bytes, sha256: '' }],
    settings,
    job,
  });
  if (value === undefined) throw new Error('refused');
  const page = renderText(spotBlocks(value, { unit: 'um', verbose: false }), {
    width: 80,
    paint: (piece) => piece,
  });
  return { page: page.replace(/\s+/gu, ' '), value };
}

describe('the page of test spots', () => {
  test('says of colour on a car without a clear what it means of repaint, before what comes next', () => {
    const { page, value } = spotsOn('Left quarter', { finish: 'single-stage-solid' });
    expect(page).toMatch(
      /Mind: if the left quarter is repaint, stop: there colour on the pad may be a base coat under clear, and counts only once the job states the finish of that panel itself\. Next on left quarter/u,
    );
    expect(value.advice.map(({ code }) => code)).toContain('spot-colour-repaint');
  });

  test('says nothing of it without colour, or where the job states the finish of that panel', () => {
    const own = {
      finish: 'single-stage-solid',
      panels: { 'left quarter': { finish: 'single-stage-solid' } },
    };
    expect(spotsOn('Left quarter', own).page).not.toContain('repaint, stop');
    const none = spotsOn('Left quarter', { finish: 'single-stage-solid' }, 'no');
    expect(none.page).not.toContain('repaint, stop');
    // Under a clear it is a stop whatever the panel is.
    const clear = spotsOn('Left quarter', { finish: 'clear-over-base' });
    expect(clear.page).not.toContain('repaint, stop');
    expect(clear.page).toContain('stop: colour on the pad under clear');
  });

  test('calls a panel as the template does, and as it was written where that names none', () => {
    expect(spotsOn('RF fender', {}, 'no').page).toContain('1 trial on front right wing');
    expect(spotsOn('hood', { template: 'saloon' }, 'no').page).toContain('1 trial on bonnet');
    expect(spotsOn('corner by the bin', {}, 'no').page).toContain('1 trial on corner by the bin');
    expect(spotsOn('OSF wing', {}, 'no').page).toContain('1 trial on OSF wing');
  });
});
