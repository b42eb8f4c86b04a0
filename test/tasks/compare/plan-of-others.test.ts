/** A plan that was made of other readings says nothing of what might go from these. */
import { createHash } from 'node:crypto';
import { describe, expect, test } from 'vitest';
import { renderHtml } from '../../../src/render/html.ts';
import { renderText } from '../../../src/render/text.ts';
import { compareBlocks } from '../../../src/report/compare/compare-blocks.ts';
import type { CompareResult } from '../../../src/tasks/compare/compare-files.ts';
import { compareObservations } from '../../../src/tasks/compare/compare-observations.ts';
import { compared, panelLeft, readingsText, soundFilm, worked } from '../comparing.ts';

const job = { finish: 'clear-over-base', taken_um: 0 };
const before = readingsText(soundFilm);
const after = readingsText(worked(soundFilm, (id) => (id === 'roof' ? 9 : 1)));
const visits = [before, after];

const planOf = (allowed: number, made: string, foretold = 9): string =>
  JSON.stringify({
    schema: 'leastcut/plan/1',
    vehicle: null,
    inputs: [
      {
        file: 'last-year.csv',
        sha256: createHash('sha256').update(made).digest('hex'),
        decisions: {},
      },
    ],
    panels: [
      {
        panel: 'roof',
        verdict: 'polish',
        steps: [
          { machine: 'da', pad: 'foam-soft', product: 'fine', sets: 4, removal_um: foretold },
        ],
        removal_um: { median: foretold, high: foretold * Math.exp(1.6449 * 0.3) },
        budget_um: allowed,
        zones: [],
      },
    ],
  });

const roofOf = (result: CompareResult) => panelLeft(result, 'roof');
const recordedRoof = ({ visit }: CompareResult) => visit.find(({ panel }) => panel === 'roof');
const pageOf = (result: CompareResult): string =>
  renderText(compareBlocks(result, { unit: 'um', verbose: false }), {
    width: 80,
    paint: (piece) => piece,
  }).replace(/\s+/gu, ' ');

const bySurvey = compared({ visits, job });
const might = roofOf(bySurvey).allowed?.most ?? 0;
const ofOthers = compared({ visits, job, plan: planOf(20, 'other readings') });

describe('a plan of other readings', () => {
  test('excuses nothing that the survey before the work did not allow, on the page and on record', () => {
    expect(might).toBeLessThan(8);
    expect(roofOf(ofOthers).allowed).toEqual({ most: might, by: 'survey' });
    expect(roofOf(ofOthers).overruns.map(({ code }) => code)).toContain('more-than-allowed');
    expect(roofOf(ofOthers).verdict).toBe('stop');
    expect(recordedRoof(ofOthers)).toEqual(recordedRoof(bySurvey));
    expect(recordedRoof(ofOthers)?.over_allowed).toBe(true);
    expect(pageOf(ofOthers)).toContain('Too much came off: roof: 9.0 ');
    expect(pageOf(ofOthers)).not.toContain('all 1 panel within');
  });

  test('still forbids what it forbade', () => {
    const strict = compared({ visits, job, plan: planOf(0.5, 'other readings') });
    expect(roofOf(strict).allowed).toEqual({ most: 0.5, by: 'plan' });
  });

  test('is told to be one on the page, not beside it alone', () => {
    const told =
      /Plan in doubt: made from other readings than visit-1\.csv as it is now: from last-year\.csv\. What might go is the lesser of what it and the survey before the work allow\. Nothing is held against it, and no rate is learned by it\./u;
    expect(pageOf(ofOthers)).toMatch(told);
    expect(pageOf(compared({ visits, job, plan: planOf(20, before) }))).not.toContain('in doubt');
    const blocks = compareBlocks(ofOthers, { unit: 'um', verbose: false });
    expect(renderHtml(blocks)).toContain('Plan in doubt');
  });

  test('bears out no removal that the readings do not show', () => {
    const vague = [before, readingsText(worked(soundFilm, () => 3.5, 14))];
    const [own, other] = [before, 'other readings'].map((made) =>
      roofOf(compared({ visits: vague, job, plan: planOf(20, made, 2.1) })),
    );
    expect(own?.comparison.change?.resolved).toBe(false);
    expect([own?.against, own?.verdict]).toEqual(['as-foretold', 'go-on']);
    expect([other?.against, other?.verdict]).toEqual([null, 'unresolved']);
  });
});

test('what a plan of other readings foretold is held against nothing, and teaches no rate', () => {
  const told = { date: '2026-03-03', vehicle: 'FH-7' };
  const gentle = [before, readingsText(worked(soundFilm, () => 1))];
  const [own, other] = [before, 'other readings'].map((made) =>
    compared({ visits: gentle, job, plan: planOf(20, made, 12) }),
  );
  if (own === undefined || other === undefined) throw new Error('refused');
  expect(pageOf(own)).toContain('Against the plan: ');
  expect(own.rates).toHaveLength(1);
  expect(compareObservations(own, told)).toHaveLength(1);
  expect(pageOf(other)).not.toMatch(/Against the plan|Rate:/u);
  expect([other.rates, compareObservations(other, told)]).toEqual([[], []]);
  // The little that came off for much that was foretold of another film makes no next set look mild.
  const set = (result: CompareResult) => roofOf(result).oneMore?.removal.median ?? 0;
  expect(set(other)).toBeCloseTo(3, 9);
  expect(set(own)).toBeLessThan(0.9 * set(other));
});

test('the plan of these readings goes before the survey', () => {
  const own = compared({ visits, job, plan: planOf(20, before) });
  expect(roofOf(own).allowed).toEqual({ most: 20, by: 'plan' });
});
