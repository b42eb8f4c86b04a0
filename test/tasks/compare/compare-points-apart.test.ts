/** One mistyped reading at a marked point is named first, and silences nothing that is said of other panels. */
import { describe, expect, test } from 'vitest';
import { renderText } from '../../../src/render/text.ts';
import { compareBlocks } from '../../../src/report/compare/compare-blocks.ts';
import { compareRecord } from '../../../src/report/compare/compare-record.ts';
import type { CompareResult } from '../../../src/tasks/compare/compare-files.ts';
import { compared, panelLeft, readingsText, soundFilm, worked } from '../comparing.ts';

const job = { finish: 'clear-over-base', taken_um: 0 };
const removed = (panel: string): number => (panel === 'roof' ? 12 : 2);
const before = readingsText(soundFilm);
const after = readingsText(worked(soundFilm, removed));

/** What one point of the bonnet reads, and the text with so much more there. */
const rows = after.split('\n');
const bonnet = rows.findIndex((row) => row.startsWith('bonnet,2'));
const cells = (rows[bonnet] ?? '').split(',');
const slipped = (by: number, of = after): string => {
  const all = of.split('\n');
  const own = (all[bonnet] ?? '').split(',');
  const typed = [own[0], own[1], `${Math.round(10 * (Number(own[2]) + by)) / 10}`, ...own.slice(3)];
  return all.map((row, i) => (i === bonnet ? typed.join(',') : row)).join('\n');
};
const clean = compared({ visits: [before, after], job });
const textOf = (result: CompareResult): string =>
  renderText(compareBlocks(result, { unit: 'um', verbose: false }), {
    width: 200,
    paint: (text: string) => text,
  });
const recordOf = (result: CompareResult) =>
  compareRecord(result, { version: '0', diagnostics: [] }) as unknown as {
    readonly panels: readonly {
      readonly panel: string;
      readonly verdict: string;
      readonly points_apart: readonly Record<string, unknown>[];
    }[];
  };
const width = (result: CompareResult, id: string): number => {
  const { change } = panelLeft(result, id).comparison;
  return change === null ? Number.NaN : change.high - change.low;
};
const others = clean.panels
  .map(({ comparison }) => comparison.panel.id)
  .filter((id) => id !== 'bonnet');

test('the readings are as this file takes them', () => {
  expect(cells.slice(0, 2)).toEqual(['bonnet', '2']);
  expect(panelLeft(clean, 'roof').overruns.map(({ code }) => code)).toContain('more-than-allowed');
  expect(clean.panels.every(({ comparison }) => comparison.apart === null)).toBe(true);
  expect(textOf(clean)).not.toContain('Read again first');
});

describe.each([54, 15, -15, -54])('a reading after, mistyped by %d µm', (by) => {
  const result = compared({ visits: [before, slipped(by)], job });

  test('changes no word and no record of another panel, and its interval by less than a tenth', () => {
    for (const id of others) {
      const [one, same] = [panelLeft(result, id), panelLeft(clean, id)];
      expect(one.verdict).toBe(same.verdict);
      expect(one.overruns.map(({ code }) => code)).toEqual(same.overruns.map(({ code }) => code));
      expect(one.comparison.change?.removed.value).toBe(same.comparison.change?.removed.value);
      expect(Math.abs(width(result, id) / width(clean, id) - 1)).toBeLessThan(0.1);
      expect(Math.abs((one.left?.budget ?? 0) - (same.left?.budget ?? 0))).toBeLessThan(0.1);
      const kept = (car: CompareResult) => car.visit.find(({ panel }) => panel === id);
      expect(kept(result)).toMatchObject({
        taken_um: kept(clean)?.taken_um,
        over_allowed: kept(clean)?.over_allowed,
      });
    }
  });

  test('is named first on the page, with both readings, and in the record', () => {
    const page = textOf(result);
    const [said, over] = [page.indexOf('Read again first'), page.indexOf('Too much came off: ')];
    expect(said).toBeGreaterThan(-1);
    expect(said).toBeLessThan(over);
    expect(page).toContain('bonnet, point 2 (');
    const own = recordOf(result).panels.find(({ panel }) => panel === 'bonnet');
    expect(own?.points_apart).toMatchObject([
      { point: '2', lost: by > 0 ? 'less' : 'more', odd: 'after', counted: by < 0 },
    ]);
  });

  test('leaves its own panel undecided at best, and held to have lost the more of the two', () => {
    const [own, same] = [panelLeft(result, 'bonnet'), panelLeft(clean, 'bonnet')];
    expect(own.verdict).not.toBe('go-on');
    expect(own.left?.budget ?? 0).toBeLessThanOrEqual((same.left?.budget ?? 0) + 0.1);
    const [taken, was] = [result, clean].map(
      ({ visit }) => visit.find(({ panel }) => panel === 'bonnet')?.taken_um ?? Number.NaN,
    );
    expect(taken).toBeGreaterThan((was ?? 0) - 0.5);
  });
});

test('film that went at one mark is held to be gone: perhaps too much came off there', () => {
  const result = compared({ visits: [before, slipped(-15)], job });
  const own = panelLeft(result, 'bonnet');
  expect(own.overruns.length).toBeGreaterThan(0);
  expect(own.comparison.pairs.map(({ point }) => point)).toContain('2');
  expect(textOf(result)).toContain('Too much came off there, or it is a slip');
});

test('a slip before the work is told without as well', () => {
  const early = before.split('\n').findIndex((row) => row.startsWith('bonnet,2'));
  expect(early).toBe(bonnet);
  const result = compared({ visits: [slipped(-54, before), after], job });
  expect(panelLeft(result, 'bonnet').comparison.apart?.points).toMatchObject([
    { point: '2', odd: 'before', lost: 'less' },
  ]);
  for (const id of others) expect(panelLeft(result, id).verdict).toBe(panelLeft(clean, id).verdict);
});
