import { expect, test } from 'vitest';
import { askLeastcut } from '../cli/ask-leastcut.ts';

const zeros = [
  'panel,point,reading_um',
  'hood,1,112.4',
  'hood,2,0',
  'hood,3,OL',
  'hood,4,0',
  'roof,1,101.2',
  'roof,2,',
  'bootlid,1,ERR',
].join('\n');

const asked = (...args: readonly string[]) => askLeastcut([...args, '-'], { stdin: `${zeros}\n` });

test('the survey says beside each panel which of its cells gave no reading, and why', async () => {
  const { out } = await asked('survey');
  expect(out.replaceAll('\u00a0', ' ').replace(/\s+/g, ' ')).toContain(
    'Left out: bonnet points 2, 4 ("0": a 0 is no film reading), point 3 ("OL" means over-range); boot lid point 1 ("ERR" is an error of the gauge)',
  );
});

test('the record of a survey has the cells of each panel, blank ones too, and no zone has any', async () => {
  const { out } = await asked('survey', '--format', 'json');
  const { panels } = JSON.parse(out);
  const byPanel = new Map<string, readonly { point: string; class: string; line: number }[]>(
    panels.map((one: { panel: string; excluded: [] }) => [one.panel, one.excluded]),
  );
  const told = (panel: string) =>
    byPanel.get(panel)?.map(({ point, class: why, line }) => `${line} ${point} ${why}`);
  expect(told('bonnet')).toEqual(['3 2 not-film', '4 3 over-range', '5 4 not-film']);
  expect(told('roof')).toEqual(['7 2 missing']);
  expect(told('boot')).toEqual(['8 1 error']);
});

test('the record of readings names panel and point of a cell by the names that its readings have', async () => {
  const { out } = await asked('read', '--format', 'json');
  const { excluded } = JSON.parse(out);
  expect(excluded[0]).toMatchObject({ vehicle: null, panel: 'bonnet', point: '2', text: '0' });
  expect(excluded.at(-1)).toMatchObject({ panel: 'boot', point: '1', class: 'error' });
});

test('a 0 at a point that gave no reading besides stands at the head of survey, plan and card, and may be no film', async () => {
  const flat = (text: string) => text.replaceAll('\u00a0', ' ').replace(/\s+/g, ' ');
  const rows = ['bonnet', 'roof', 'boot lid'].flatMap((panel) =>
    [118, 121, 119, 120, 122].map((value, i) => `${panel},${i + 1},${value}`),
  );
  const text = ['panel,point,reading_um', ...rows].join('\n').replace('bonnet,3,119', 'bonnet,3,0');
  const said = 'Read again first: bonnet, point 3 ("0": bare metal, or the probe was lifted)';
  const pageOf = async (...args: readonly string[]) =>
    flat((await askLeastcut([...args, '--template', 'saloon', '-'], { stdin: `${text}\n` })).out);
  const survey = await pageOf('survey');
  expect(survey).toContain(`${said} May go: `);
  expect(survey).toMatch(/May go: [^:]+: boot lid, roof Not read/);
  const plan = await pageOf('plan');
  expect(plan).toContain(`${said} Work: `);
  expect(plan).toMatch(
    /Work: boot lid, roof: [^;]+; once read again, bonnet: [^;]+; the whole job/,
  );
  expect(plan).not.toMatch(/Few points: [^(]*bonnet/);
  const card = await pageOf('plan', '--card');
  expect(card).toMatch(/Read again first: bare metal\? .*\[ \] bonnet, point 3 \("0"/);
  expect(card).toMatch(
    /bonnet: takes [^[]* mind: read again first, as on top: no set before that/u,
  );
  expect(card.match(/read again first, as on top/gu)).toHaveLength(1);
  const again = `${text}\nbonnet,3,119\n`;
  const { out } = await askLeastcut(['survey', '--template', 'saloon', '-'], { stdin: again });
  expect(out).not.toContain('Read again first');
});

test('a value below 0 holds its panel as a 0 does, and one that no zero explains asks for its reading again', async () => {
  const rows = ['bonnet', 'roof', 'boot lid'].flatMap((panel) =>
    [118, 121, 119, 120, 122].map((value, i) => `${panel},${i + 1},${value}`),
  );
  const sound = `${['panel,point,reading_um', ...rows].join('\n')}\n`;
  const surveyOf = async (value: string) => {
    const text = sound.replace('bonnet,3,119', `bonnet,3,${value}`);
    const { out } = await askLeastcut(['survey', '--template', 'saloon', '-'], { stdin: text });
    return out.replaceAll('\u00a0', ' ').replace(/\s+/g, ' ');
  };
  const zero = await surveyOf('0');
  for (const value of ['-0.3', '-3.2', '−3.2 µm']) {
    const survey = await surveyOf(value);
    expect(survey).toContain(
      `Read again first: bonnet, point 3 ("${value}": bare metal, or the probe was lifted) May go: `,
    );
    expect(survey.match(/May go: [^:]+: [^.]+/)?.[0]).toBe(zero.match(/May go: [^:]+: [^.]+/)?.[0]);
  }
  expect(await surveyOf('-118')).toContain(
    'Read again first: bonnet, point 3 ("-118": no film: was the sign a slip?)',
  );
});
