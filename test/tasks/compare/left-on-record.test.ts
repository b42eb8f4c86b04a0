/** Who surveys the later readings with the record that a comparison wrote is never allowed more than it allowed. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { PanelSurvey } from '../../../src/film/survey.ts';
import { filmRecordText } from '../../../src/report/compare/film-record-file.ts';
import { planRecord } from '../../../src/report/plan/plan-record.ts';
import { planFiles } from '../../../src/tasks/plan/plan-files.ts';
import { surveyFiles } from '../../../src/tasks/survey/survey-files.ts';
import { type Comparing, compared, readingsText, requestOf, worked } from '../comparing.ts';

const JOB = { vehicle: { id: 'FH-7' }, finish: 'clear-over-base', taken_um: 0 };

type Known = Pick<Comparing, 'job' | 'filmRecord' | 'spots'>;

function surveyOf(readings: string, known: Known): readonly PanelSurvey[] {
  const [vehicle] = surveyFiles(requestOf({ visits: [readings], ...known })).value ?? [];
  if (vehicle === undefined) throw new Error('no survey');
  return vehicle.result.survey.panels;
}

function planned(readings: string, known: Known) {
  const [one] =
    planFiles({ ...requestOf({ visits: [readings], ...known }), defects: undefined }).value ?? [];
  if (one === undefined) throw new Error('no plan');
  return one;
}

function planOf(readings: string, known: Known): string {
  const { result, panels } = planned(readings, known);
  return JSON.stringify(planRecord(result, panels, { version: '0', diagnostics: [] }));
}

/** Seven panels, some near a line, thin or painted again, some in two zones. */
const ids = [
  ...['bonnet', 'roof', 'boot', 'door-front-left'],
  ...['door-front-right', 'wing-front-left', 'wing-front-right'],
];
const panel = fc.record({
  level: fc.oneof(
    { weight: 8, arbitrary: fc.double({ min: 104, max: 124, noNaN: true }) },
    { weight: 1, arbitrary: fc.double({ min: 80, max: 260, noNaN: true }) },
  ),
  step: fc.oneof(
    { weight: 6, arbitrary: fc.constant(0) },
    { weight: 1, arbitrary: fc.double({ min: 15, max: 70, noNaN: true }) },
  ),
  offs: fc.array(fc.double({ min: -5, max: 5, noNaN: true }), { minLength: 3, maxLength: 7 }),
  removed: fc.double({ min: -2, max: 6, noNaN: true }),
  scatter: fc.double({ min: 0.2, max: 5, noNaN: true }),
});
const car = fc.record({
  panels: fc.array(panel, { minLength: ids.length, maxLength: ids.length }),
  marked: fc.boolean(),
  withPlan: fc.boolean(),
  statedClear: fc.boolean(),
  again: fc.integer({ min: 1, max: 7 }),
});

function carOf({
  panels,
  again,
  withPlan,
  statedClear,
}: typeof car extends fc.Arbitrary<infer T> ? T : never) {
  const before = Object.fromEntries(
    panels.map(({ level, step, offs }, i) => [
      ids[i] ?? '',
      offs.map((off, k) => level + off + (2 * k >= offs.length ? step : 0)),
    ]),
  );
  const after = Object.fromEntries(
    panels.map(({ removed, scatter }, i) => {
      const id = ids[i] ?? '';
      const film = worked({ [id]: before[id] ?? [] }, () => removed, scatter)[id] ?? [];
      return [id, again > 5 ? film : film.slice(0, again)];
    }),
  );
  const job = statedClear ? { ...JOB, panels: { roof: { clear_um: 38 } } } : JOB;
  const visits = [readingsText(before), readingsText(after)];
  return { visits, job, ...(withPlan ? { plan: planOf(visits[0] ?? '', { job }) } : {}) };
}

/** One row of the panel less, where it has two or more. */
function withoutOne(text: string, id: string, nth: number): string {
  const rows = text.split('\n');
  const own = rows.filter((row) => row.startsWith(`${id},`));
  const out = own.length < 2 ? undefined : own[nth % own.length];
  return rows.filter((row) => row !== out).join('\n');
}

/** As records were written that kept none of the readings. */
const withoutReadings = (record: string): string =>
  JSON.stringify(JSON.parse(record), (key, value) => (key === 'left_read_um' ? undefined : value));

describe('what a comparison left', () => {
  test('is never less than a survey of the same readings with its record allows', () => {
    let [asked, bound] = [0, 0];
    fc.assert(
      fc.property(fc.noBias(car), (one) => {
        const { visits, ...known } = carOf(one);
        const result = compared({ visits, marked: one.marked || one.again < 6, ...known });
        const filmRecord = filmRecordText(result, '2026-11-25', undefined);
        const again = { job: known.job, filmRecord };
        const surveyed = surveyOf(visits[1] ?? '', again);
        for (const { comparison, left, rise } of result.panels) {
          const found = surveyed.find((survey) => survey.panel.id === comparison.panel.id);
          if (left === null || rise !== null || found === undefined) continue;
          expect(found.budget).toBeLessThanOrEqual(left.budget + 1e-6);
          // Who leaves out a reading knows nothing more.
          const fewer = withoutOne(visits[1] ?? '', comparison.panel.id, one.again);
          for (const record of [filmRecord, withoutReadings(filmRecord)]) {
            const less = surveyOf(fewer, { ...again, filmRecord: record }).find(
              (survey) => survey.panel.id === comparison.panel.id,
            );
            if (less !== undefined) expect(less.budget).toBeLessThanOrEqual(left.budget + 1e-6);
          }
          asked += 1;
          if (found.boundBy.code === 'as-compared') bound += 1;
        }
      }),
      { numRuns: 15, endOnFailure: true },
    );
    expect(asked).toBeGreaterThan(60);
    expect(bound).toBeGreaterThan(3);
  });
});
