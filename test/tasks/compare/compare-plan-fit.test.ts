import { createHash } from 'node:crypto';
import { describe, expect, test } from 'vitest';
import { factsRecord } from '../../../src/report/facts-record.ts';
import { compareFiles } from '../../../src/tasks/compare/compare-files.ts';
import { planFiles } from '../../../src/tasks/plan/plan-files.ts';
import {
  type Comparing,
  compared,
  panelLeft,
  readingsText,
  requestOf,
  soundFilm,
  toldBy,
  worked,
} from '../comparing.ts';

const before = readingsText(soundFilm);
const after = readingsText(worked(soundFilm, () => 1));
const job = { finish: 'clear-over-base', taken_um: 0 };
const hashOf = (text: string): string => createHash('sha256').update(text).digest('hex');

/** Off the roof, at the visit before. */
const gone = { value: 6, sd: 0.2 };
const planOf = ({ recorded = null, made = before, settings = [] }: Made = {}): string =>
  JSON.stringify({
    schema: 'leastcut/plan/1',
    vehicle: null,
    inputs: [
      { file: 'made-from.csv', sha256: hashOf(made), decisions: {} },
      { file: 'def.csv', sha256: 'other', decisions: null },
    ],
    settings,
    panels: ['roof', 'bonnet'].map((panel) => ({
      panel,
      verdict: 'leave',
      steps: [],
      removal_um: { median: 0, high: 0 },
      facts: {
        recorded_um:
          panel === 'roof' && recorded !== null
            ? { value: recorded, origin: 'job', where: 'visits.json:10' }
            : { value: null, origin: 'built-in', where: 'built-in' },
      },
      zones: [],
    })),
  });
type Made = {
  readonly recorded?: {
    readonly value: number;
    readonly sd: number;
    readonly gained_um?: number | null;
  } | null;
  readonly made?: string;
  readonly settings?: readonly object[];
};
const record = (taken: number): string =>
  JSON.stringify({
    schema: 'leastcut/film-record/1',
    visits: [
      { date: '2025-01-02', panels: [{ panel: 'roof', taken_um: taken, taken_sd_um: 0.2 }] },
    ],
  });
const told = (rest: Partial<Comparing>): string =>
  toldBy({ visits: [before, after], job, ...rest }).join('\n');

describe('a plan made with a film record', () => {
  const plan = planOf({ recorded: gone });

  test('lets no more go where the record is not given, and says which file is missing', () => {
    const result = compared({ visits: [before, after], job, plan });
    const given = compared({ visits: [before, after], job, plan, filmRecord: record(6) });
    const without = compared({ visits: [before, after], job });
    const budget = (one: typeof result) => panelLeft(one, 'roof').left?.budget;
    expect(budget(result)).toBe(budget(given));
    expect(budget(result)).toBeLessThan(budget(without) ?? 0);
    expect(told({ plan })).toMatch(
      /compare-record-left-out: the plan was made with the film record visits\.json, which is not given/,
    );
  });

  test('says so where the record that is given holds less of a panel', () => {
    expect(told({ plan, filmRecord: record(2) })).toMatch(
      /compare-record-left-out: .*holds less .*visits\.json.* of roof/,
    );
    expect(told({ plan, filmRecord: record(6) })).not.toContain('compare-record-left-out');
  });
});

describe('a plan made with a film record that holds a panel painted since', () => {
  const painted = planOf({ recorded: { value: 0, sd: 0, gained_um: 31 } });
  const repaint = record(0).replace('"taken_um":0', '"taken_um":0,"gained_um":31');
  const roofOf = (rest: Partial<Comparing>) =>
    panelLeft(compared({ visits: [before, after], job, ...rest }), 'roof');

  test('lets nothing go there where the record is not given, and says that it was painted', () => {
    const [byPlan, byRecord] = [roofOf({ plan: painted }), roofOf({ filmRecord: repaint })];
    expect(byRecord.left?.boundBy.code).toBe('test-spot');
    expect([byPlan.left?.budget, byPlan.left?.boundBy.code]).toEqual([0, 'test-spot']);
    expect([byPlan.verdict, byRecord.verdict]).toEqual(['stop', 'stop']);
    expect(roofOf({ plan: planOf() }).left?.budget).toBeGreaterThan(0);
    expect(told({ plan: painted })).toMatch(
      /compare-record-left-out: .*visits\.json, which is not given: .*holds panels painted since/,
    );
  });

  test('says so where the record that is given does not hold it', () => {
    expect(told({ plan: painted, filmRecord: record(0) })).toMatch(/holds less .* of roof/);
    expect(told({ plan: painted, filmRecord: repaint })).not.toContain('compare-record-left-out');
  });

  test('as the plan itself tells it', () => {
    const request = requestOf({ visits: [before, after], job, filmRecord: repaint });
    const [planned] =
      planFiles({
        ...request,
        files: request.files.slice(0, 1),
        defects: undefined,
        why: [],
      } as unknown as Parameters<typeof planFiles>[0]).value ?? [];
    if (planned === undefined) throw new Error('refused');
    const roof = planned.result.survey.panels.find(({ panel }) => panel.id === 'roof');
    if (roof === undefined) throw new Error('not planned');
    expect(factsRecord(roof, planned.result)['recorded_um']).toMatchObject({
      value: { value: 0, sd: 0.2, gained_um: 31 },
    });
  });
});

test('a plan made without a record asks for none, though test spots took of a panel', () => {
  const bySpots = planOf({ recorded: gone }).replace('"origin":"job"', '"origin":"readings"');
  expect(told({ plan: bySpots })).not.toContain('compare-record-left-out');
  expect(told({ plan: planOf() })).not.toContain('compare-record-left-out');
});

test('a plan made from other readings than those of before the work is told', () => {
  expect(told({ plan: planOf({ made: after }) })).toContain(
    'compare-plan-of-others: the plan was made from other readings than visit-1.csv as it is now: from made-from.csv',
  );
  expect(told({ plan: planOf() })).not.toContain('compare-plan-of-others');
});

test('a plan made with the other side as the nearside is told', () => {
  const plan = planOf({ settings: [{ name: 'nearside', value: 'left' }] });
  const request = requestOf({ visits: [before, after], job, plan });
  const withNearside = (value: 'left' | 'right') => ({
    ...request,
    settings: {
      ...request.settings,
      nearside: { ...request.settings.nearside, value },
    },
  });
  const said = (value: 'left' | 'right') =>
    compareFiles(withNearside(value)).diagnostics.map(({ code }) => code);
  expect(said('right')).toContain('compare-plan-of-others');
  expect(said('left')).not.toContain('compare-plan-of-others');
});
