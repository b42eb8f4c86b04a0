/** Marks that a card asks for are read once the plan is made: the plan is compared against, and they are no survey. */
import { describe, expect, test } from 'vitest';
import { renderText } from '../../../src/render/text.ts';
import { compareBlocks } from '../../../src/report/compare/compare-blocks.ts';
import { filmRecordText } from '../../../src/report/compare/film-record-file.ts';
import { planRecord } from '../../../src/report/plan/plan-record.ts';
import type { CompareResult } from '../../../src/tasks/compare/compare-files.ts';
import { planFiles } from '../../../src/tasks/plan/plan-files.ts';
import { surveyFiles } from '../../../src/tasks/survey/survey-files.ts';
import {
  type Comparing,
  compared,
  type Film,
  panelLeft,
  readingsText,
  requestOf,
  soundFilm,
  toldBy,
} from '../comparing.ts';

const job = { finish: 'clear-over-base', taken_um: 0 };
const survey = readingsText(soundFilm);

/** As the program writes it. */
function planOf(film: string, rest: Partial<Comparing> = {}): string {
  const request = requestOf({ visits: [film], job, ...rest });
  const [planned] =
    planFiles({ ...request, defects: undefined, why: [] } as unknown as Parameters<
      typeof planFiles
    >[0]).value ?? [];
  if (planned === undefined) throw new Error('refused');
  const { result } = planned;
  const panels = result.survey.panels.map(({ panel }) => panel);
  return JSON.stringify(planRecord(result, panels, { version: '0', diagnostics: [] }));
}

const plan = planOf(survey);
const allowedBy = (text: string, id: string): number =>
  JSON.parse(text).panels.find((one: { panel: string }) => one.panel === id).budget_um;

/** One mark a panel, at a place of its own. */
const marksAt = (film: Film): string =>
  ['panel,point,reading_um', ...Object.entries(film).map(([id, [at]]) => `${id},m1,${at}`)].join(
    '\n',
  );
const marked: Film = {
  bonnet: [118],
  roof: [119],
  boot: [116.4],
  'door-front-left': [119],
  'door-front-right': [117],
};
const after = (off: (id: string) => number, film: Film = marked): string =>
  marksAt(Object.fromEntries(Object.entries(film).map(([id, [at = 0]]) => [id, [at - off(id)]])));
const done = (off: (id: string) => number, rest: Partial<Comparing> = {}) => ({
  visits: [marksAt(marked), after(off)],
  job,
  plan,
  ...rest,
});
const pageOf = (result: CompareResult): string =>
  renderText(compareBlocks(result, { unit: 'um', verbose: false }), {
    width: 80,
    paint: (piece) => piece,
  }).replace(/\s+/gu, ' ');

describe('marks read for a plan that was made before them', () => {
  const result = compared(done(() => 1.5));

  test('put it in no doubt: its own allowance is compared against, and kept on record', () => {
    expect(result.planOfOthers).toEqual([]);
    expect(toldBy(done(() => 1.5)).join()).not.toContain('compare-plan-of-others');
    for (const { comparison, allowed } of result.panels) {
      const most = allowedBy(plan, comparison.panel.id);
      expect(most).toBeGreaterThan(2);
      expect(allowed).toEqual({ most, by: 'plan' });
      expect(result.visit.find(({ panel }) => panel === comparison.panel.id)).toMatchObject({
        allowed_um: most,
        over_allowed: false,
      });
    }
    expect(pageOf(result)).toContain('Plan: made from visit-1.csv, which the marks read before');
    expect(pageOf(result)).toContain('Against the plan: all 5 panels within');
    expect(pageOf(result)).not.toContain('Plan in doubt');
  });

  test('are no survey: what may still go is what the plan allowed less what came off, at most', () => {
    for (const { comparison, allowed, left, verdict, held } of result.panels) {
      const gone = Math.max(comparison.change?.removed.value ?? 0, held?.mean ?? 0);
      expect(left?.budget).toBeGreaterThan(0.3);
      expect(left?.budget).toBeLessThanOrEqual((allowed?.most ?? 0) - gone + 1e-9);
      expect(verdict).toBe('go-on');
    }
    expect(pageOf(result)).not.toContain('no basis for machine work');
    expect(pageOf(result)).not.toContain('Stop');
  });

  test('stop where all of it has gone, and doubt more than that', () => {
    const most = allowedBy(plan, 'roof');
    const roof = panelLeft(compared(done((id) => (id === 'roof' ? most + 0.3 : 1.5))), 'roof');
    expect(roof.left?.budget).toBe(0);
    expect(roof.overruns.map(({ code }) => code)).toEqual(['perhaps-more-than-allowed']);
    expect(roof.verdict).toBe('stop');
  });

  test('still stop where the job forbids it', () => {
    const covered = compared(done(() => 1.5, { job: { ...job, covered: true } }));
    expect(covered.panels.map(({ verdict }) => verdict)).toEqual(Array(5).fill('stop'));
  });
});

describe('a plan is in doubt', () => {
  const doubtsOf = (given: Comparing): string => compared(given).planOfOthers.join();

  test('where the marks read less than what it was made from, on the average or on a panel', () => {
    const thinner = Object.fromEntries(
      Object.entries(marked).map(([id, [at = 0]]) => [id, [at - 4]]),
    );
    const worked = { job, plan, visits: [marksAt(thinner), after(() => 1, thinner)] };
    expect(doubtsOf(worked)).toMatch(
      /made from other readings .* the marks read 3\.\d ± 2\.\d µm less than those on average/u,
    );
    expect(compared(worked).panels.every(({ verdict }) => verdict !== 'go-on')).toBe(true);
    const one = { ...marked, roof: [104] };
    expect(doubtsOf({ job, plan, visits: [marksAt(one), after(() => 1, one)] })).toMatch(
      /14\.\d ± \d+\.\d µm less than those on the roof/u,
    );
  });

  test('where it does not say what was read, as plans did not', () => {
    const old = JSON.parse(plan);
    const panels = old.panels.map(({ n_points: _, ...panel }: Record<string, unknown>) => panel);
    expect(doubtsOf(done(() => 1, { plan: JSON.stringify({ ...old, panels }) }))).toMatch(
      /made from other readings than visit-1\.csv as it is now: from visit-1\.csv$/u,
    );
  });

  test('where a film record holds a visit that it was made without', () => {
    const filmRecord = JSON.stringify({
      schema: 'leastcut/film-record/1',
      visits: [{ date: '2025-01-02', panels: [{ panel: 'roof', taken_um: 2, taken_sd_um: 0.2 }] }],
    });
    expect(doubtsOf(done(() => 1, { filmRecord }))).toContain('visits that it was made without');
    const withIt = planOf(survey, { filmRecord });
    expect(doubtsOf(done(() => 1, { filmRecord, plan: withIt }))).toBe('');
  });
});

test('without their plan marks say neither go on nor stop', () => {
  const { plan: _, ...without } = done(() => 1.5);
  const result = compared(without);
  expect(result.panels.map(({ verdict }) => verdict)).toEqual(Array(5).fill('unresolved'));
  expect(pageOf(result)).toContain('marks alone are no survey');
});

test('marks read again after a whole survey leave what that allowed, less what came off', () => {
  const whole = `${survey}\n${marksAt(marked).split('\n').slice(1).join('\n')}`;
  const result = compared({ visits: [whole, after(() => 1.5)], job });
  for (const { comparison, allowed, left, verdict } of result.panels) {
    const off = comparison.change?.removed.value ?? 0;
    expect(allowed?.by).toBe('survey');
    expect(left?.budget).toBeGreaterThan(0);
    expect(left?.budget).toBeLessThanOrEqual((allowed?.most ?? 0) - off + 1e-9);
    expect(verdict).not.toBe('stop');
  }
});

describe('two marks a panel without a plan', () => {
  const two: Film = Object.fromEntries(
    Object.entries(marked).map(([id, [at = 0]]) => [id, [at, at + 1]]),
  );
  const lower: Film = Object.fromEntries(
    Object.entries(two).map(([id, films]) => [id, films.map((film) => film - 1)]),
  );

  test.each([
    ['in their order', [readingsText(two), readingsText(lower)]],
    ['exchanged', [readingsText(lower), readingsText(two)]],
  ])('say neither go on nor stop, and that nobody can say what may go (%s)', (_, visits) => {
    const alone = compared({ visits, job });
    expect(alone.panels).toHaveLength(5);
    for (const { verdict, left } of alone.panels) {
      expect([verdict, left?.budget, left?.boundBy.code]).toEqual(['unresolved', 0, 'readings']);
    }
    expect(pageOf(alone)).not.toContain('Allowed');
    expect(pageOf(alone)).not.toContain('Stop');
  });

  test('still stop where nothing may go outright', () => {
    const matte = compared({
      visits: [readingsText(two), readingsText(lower)],
      job: { ...job, panels: { roof: { covered: true } } },
    });
    const roof = panelLeft(matte, 'roof');
    expect([roof.verdict, roof.left?.boundBy.code]).toEqual(['stop', 'covered']);
  });
});

describe('marks that no plan is named for', () => {
  const some = { ...soundFilm, bonnet: [117, 121, 115, 119] };
  const few = (film: Film, off: number): string =>
    readingsText(
      Object.fromEntries(
        Object.entries(film).map(([id, all]) => [
          id,
          all.slice(0, id === 'bonnet' ? 4 : 2).map((one) => one - off),
        ]),
      ),
    );
  const visits = [few(some, 0), few(some, 1.5)];

  test('say neither go on nor stop where they are fewer than a survey takes, and of enough of them what a survey says', () => {
    const result = compared({ visits, job });
    const filmRecord = filmRecordText(result, '2026-11-25', undefined);
    const survey = surveyFiles(requestOf({ visits: visits.slice(1), job, filmRecord })).value;
    const panels = survey?.[0]?.result.survey.panels ?? [];
    for (const { comparison, verdict, left } of result.panels) {
      const { id } = comparison.panel;
      if (id === 'bonnet') {
        expect(verdict).toBe('go-on');
        expect(left?.budget).toBeCloseTo(panels.find((one) => one.panel.id === id)?.budget ?? 0, 5);
      } else expect([id, verdict, left?.budget]).toEqual([id, 'unresolved', 0]);
    }
    expect(pageOf(result)).toContain('May go: where enough points were read of the panel, what a');
    expect(pageOf(result)).not.toContain('what might go before, less what came off');
  });
});
