import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { builtInTemplates } from '../../src/formats/data/templates.ts';
import { askLeastcut } from './ask-leastcut.ts';
import { temporaryFolder } from './temporary-folder.ts';

/** Writes 100 + n at the nth line of a blank sheet, as somebody would in a spreadsheet. */
const filledIn = (sheet: string): string => {
  const [header = '', ...rows] = sheet.trimEnd().split('\n');
  const at = header.split(',').indexOf('reading_um');
  const filled = rows.map((row, i) =>
    row
      .split(',')
      .map((cell, column) => (column === at ? String(100 + (i % 20)) : cell))
      .join(','),
  );
  return `${[header, ...filled].join('\n')}\n`;
};

describe('a blank reading sheet', () => {
  test.each(builtInTemplates.map(({ id }) => id))(
    'of a %s, once filled in, is read back point by point and surveyed',
    async (id) => {
      const folder = temporaryFolder();
      const blank = join(folder, 'blank.csv');
      const sheet = join(folder, 'sheet.csv');
      const made = await askLeastcut(['template', 'sheet', id, '--format', 'csv', '-o', blank]);
      expect(made).toMatchObject({ code: 0, out: '', err: '' });
      writeFileSync(sheet, filledIn(readFileSync(blank, 'utf8')));

      const read = await askLeastcut(['read', sheet, '--format', 'json']);
      const template = builtInTemplates.find((one) => one.id === id);
      const points = (template?.panels ?? []).flatMap((panel) =>
        panel.points.map(({ point }) => ({ panel: panel.id, point })),
      );
      const { readings } = JSON.parse(read.out) as { readings: Record<string, unknown>[] };
      expect(readings.map(({ panel, point }) => ({ panel, point }))).toEqual(points);
      expect(readings.map(({ reading_um }) => reading_um)).toEqual(
        points.map((_, i) => 100 + (i % 20)),
      );

      const survey = await askLeastcut(['survey', sheet, '--template', id, '--format', 'json']);
      expect(survey.code).toBe(0);
      const { panels } = JSON.parse(survey.out) as { panels: { n_points: number }[] };
      expect(panels.map(({ n_points }) => n_points)).toEqual(
        template?.panels.map((panel) => panel.points.length),
      );
    },
  );

  test('asks for as many readings of each point as a class is to take, and grade finds nothing wanting', async () => {
    const folder = temporaryFolder();
    const words = ['template', 'sheet', 'hatch', '--panel', 'bonnet', '--panel', 'roof'];
    const blank = await askLeastcut([...words, '--repeats', '3', '--format', 'csv']);
    const [header, ...rows] = blank.out.trimEnd().split('\n');
    expect(header).toBe('panel,point,repeat,reading_um,u,v,note');
    const once = await askLeastcut([...words, '--format', 'csv']);
    expect(rows).toHaveLength(3 * (once.out.trimEnd().split('\n').length - 1));
    expect(rows.slice(0, 4).map((row) => row.split(',').slice(0, 3).join(','))).toEqual([
      'bonnet,1,1',
      'bonnet,1,2',
      'bonnet,1,3',
      'bonnet,2,1',
    ]);
    const [reference, ann] = ['reference', 'ann'].map((name) => join(folder, `${name}.csv`));
    writeFileSync(reference ?? '', filledIn(blank.out));
    writeFileSync(ann ?? '', filledIn(blank.out).replace(',100,', ',101,'));
    const grade = await askLeastcut(['grade', reference ?? '', ann ?? '', '--format', 'json']);
    const { trainees } = JSON.parse(grade.out) as {
      trainees: { repeatability_um: number | null; reasons: { code: string }[] }[];
    };
    expect(trainees[0]?.repeatability_um).toBeGreaterThan(0);
    expect(trainees[0]?.reasons.map(({ code }) => code)).not.toContain('not-repeated');
    const printed = await askLeastcut([...words, '--repeats', '3']);
    expect(printed.out.replace(/\s+/g, ' ')).toContain(
      '3 boxes for every point, one under the other, for 3 readings: lift the probe and set it down anew for each',
    );
    const record = await askLeastcut([...words, '--repeats', '3', '--format', 'json']);
    expect(JSON.parse(record.out)).toMatchObject({ template: 'hatch', repeats: 3 });
    const refused = await askLeastcut(['template', 'show', 'hatch', '--repeats', '3']);
    expect(refused).toMatchObject({ code: 2 });
    expect(refused.err).toContain('template show takes no --repeats');
  });

  test('fits a page of 80 columns for every built-in template, with a box for each point', async () => {
    for (const { id, panels } of builtInTemplates) {
      const { out } = await askLeastcut(['template', 'sheet', id]);
      for (const line of out.split('\n')) expect(line.length).toBeLessThanOrEqual(80);
      const boxes = panels.reduce((sum, { points }) => sum + points.length, 0);
      expect(out.match(/\[______\]/g)).toHaveLength(boxes);
      for (const label of ['Date', 'Operator', 'Gauge check before', 'Gauge check after']) {
        expect(out).toContain(label);
      }
    }
  });

  test('has each point where whoever stands there sees it: at one place in text, HTML and the csv', async () => {
    const words = ['template', 'sheet', 'saloon', '--panel'];
    for (const [panel, first] of [
      ['wing-front-right', 'right'],
      ['wing-front-left', 'left'],
    ] as const) {
      const text = await askLeastcut([...words, panel]);
      const [, line = ''] = text.out
        .split('\n')
        .flatMap((one, i, all) =>
          one.startsWith('front ') && one.includes('wing') ? [one, all[i + 1] ?? ''] : [],
        );
      const html = await askLeastcut([...words, panel, '--format', 'html']);
      const boxes = [...html.out.matchAll(/<rect class="box" x="([\d.]+)"/g)].map(([, x]) =>
        Number(x),
      );
      const csv = await askLeastcut([...words, panel, '--format', 'csv']);
      const [one, two] = csv.out
        .split('\n')
        .slice(1)
        .map((row) => Number(row.split(',')[3]));
      // The csv says how far from the front: its first point lies before its second on either side.
      expect([one, two]).toEqual([0.2, 0.8]);
      const leftFirst = first === 'left';
      expect(line.indexOf('1 [') < line.indexOf('2 [')).toBe(leftFirst);
      expect((boxes[0] ?? 0) < (boxes[1] ?? 0)).toBe(leftFirst);
      expect(text.out).toContain(leftFirst ? '← front' : 'front →');
    }
  });

  test('of a saloon fits one page of 66 lines', async () => {
    const { out } = await askLeastcut(['template', 'sheet', 'saloon']);
    expect(out.trimEnd().split('\n').length).toBeLessThanOrEqual(66);
  });

  test('has the panels in walking order, whatever order they are asked for in', async () => {
    const words = ['template', 'sheet', 'saloon', '--panel', 'roof', '--panel', 'bonnet'];
    const { out } = await askLeastcut([...words, '--format', 'csv']);
    const panels = out
      .split('\n')
      .slice(1, -1)
      .map((row) => row.split(',')[0]);
    expect([...new Set(panels)]).toEqual(['bonnet', 'roof']);
  });

  test('passes over, aloud, what was left blank', async () => {
    const folder = temporaryFolder();
    const sheet = join(folder, 'sheet.csv');
    const { out } = await askLeastcut([
      'template',
      'sheet',
      'saloon',
      '--panel',
      'roof',
      '--format',
      'csv',
    ]);
    writeFileSync(sheet, out.replace('roof,1,,', 'roof,1,110,').replace('roof,2,,', 'roof,2,112,'));
    const read = await askLeastcut(['read', sheet, '--template', 'saloon', '--format', 'json']);
    const { readings, excluded } = JSON.parse(read.out) as {
      readings: unknown[];
      excluded: unknown[];
    };
    expect([readings.length, excluded.length]).toEqual([2, 3]);
  });

  test('for a survey hands on what is said of the survey and of the panels asked for, in the record as well', async () => {
    const words = ['template', 'sheet', '--for', 'test/cases/template-sheet-for/survey.json'];
    const named = [...words, '--panel', 'bonnet', '--panel', 'roof'];
    const { code, err } = await askLeastcut(named);
    expect(code).toBe(0);
    expect(err).toContain('warning[sheet-nothing-more]: bonnet: ');
    expect(err).not.toContain('roof: ');
    const nothing = await askLeastcut([...words, '--panel', 'bonnet']);
    expect(nothing.out).toContain('On the panels asked for further points would free next to');
    const record = await askLeastcut([...named, '--format', 'json']);
    expect(JSON.parse(record.out).diagnostics).toMatchObject([{ code: 'sheet-nothing-more' }]);
    const other = await askLeastcut(['template', 'sheet', 'medium-van', ...words.slice(2)]);
    expect(other.err).toMatch(/survey\.json:\d+:\d+: warning\[panel-unknown\]: "bonnet|"boot/);
  });
});
