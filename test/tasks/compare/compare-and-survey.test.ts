/** One figure of what may still go, whoever is asked: the comparison, or a survey with the record that it wrote. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { shown } from '../../../src/base/rounding.ts';
import type { PanelSurvey } from '../../../src/film/survey.ts';
import { filmRecordText } from '../../../src/report/compare/film-record-file.ts';
import { planRecord } from '../../../src/report/plan/plan-record.ts';
import type { CompareResult } from '../../../src/tasks/compare/compare-files.ts';
import { LESS_BECAUSE } from '../../../src/tasks/compare/compare-left-reasons.ts';
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
  worked,
} from '../comparing.ts';

const job = { vehicle: { id: 'FH-7' }, finish: 'clear-over-base', taken_um: 0 };
const hundredths = (value: number): number => Number(shown(value, 2));

type Known = Pick<Comparing, 'filmRecord' | 'spots'>;

function surveyOf(
  readings: string,
  filmRecord?: string,
  known: Known = {},
): readonly PanelSurvey[] {
  const request = requestOf({
    visits: [readings],
    job,
    ...known,
    ...(filmRecord === undefined ? {} : { filmRecord }),
  });
  const [vehicle] = surveyFiles(request).value ?? [];
  if (vehicle === undefined) throw new Error('no survey');
  return vehicle.result.survey.panels;
}

const budgetOf = (panels: readonly PanelSurvey[], id: string): number =>
  hundredths(panels.find(({ panel }) => panel.id === id)?.budget ?? Number.NaN);

function planOf(readings: string): string {
  const [planned] =
    planFiles({ ...requestOf({ visits: [readings], job }), defects: undefined }).value ?? [];
  if (planned === undefined) throw new Error('no plan');
  return JSON.stringify(
    planRecord(planned.result, planned.panels, { version: '0', diagnostics: [] }),
  );
}

/** Seven panels about 118 µm: some near the line of cut-back, some thin, repainted or filled, some of one point. */
const ids = [
  'bonnet',
  'roof',
  'boot',
  'door-front-left',
  'door-front-right',
  'wing-front-left',
  'wing-front-right',
];
const panel = fc.record({
  level: fc.oneof(
    { weight: 6, arbitrary: fc.double({ min: 100, max: 135, noNaN: true }) },
    { weight: 1, arbitrary: fc.double({ min: 70, max: 350, noNaN: true }) },
  ),
  offs: fc.array(fc.double({ min: -6, max: 6, noNaN: true }), { minLength: 1, maxLength: 6 }),
  removed: fc.double({ min: -3, max: 9, noNaN: true }),
  scatter: fc.double({ min: 0.2, max: 6, noNaN: true }),
  again: fc.integer({ min: 0, max: 6 }),
});
const car = fc.record({
  panels: fc.array(panel, { minLength: ids.length, maxLength: ids.length }),
  marked: fc.boolean(),
  withPlan: fc.boolean(),
  all: fc.boolean(),
});

type Car = typeof car extends fc.Arbitrary<infer T> ? T : never;

function filmsOf({ panels, all }: Car): { readonly before: Film; readonly after: Film } {
  const before = Object.fromEntries(
    panels.map(({ level, offs }, i) => [ids[i] ?? '', offs.map((off) => level + off)]),
  );
  const later = panels.flatMap(({ removed, scatter, again }, i) => {
    const id = ids[i] ?? '';
    const film = worked({ [id]: before[id] ?? [] }, () => removed, scatter)[id] ?? [];
    const read = all ? film : film.slice(0, again);
    return read.length === 0 ? [] : [[id, read] as const];
  });
  return { before, after: Object.fromEntries(later) };
}

describe('what may still go', () => {
  test('is what a survey of the later readings says with the record just written, or less for a reason that is told', () => {
    let same = 0;
    fc.assert(
      fc.property(car, (one) => {
        const films = filmsOf(one);
        fc.pre(Object.keys(films.after).length > 0);
        const [before, after] = [readingsText(films.before), readingsText(films.after)];
        const comparing: Comparing = {
          visits: [before, after],
          marked: one.marked,
          job,
          ...(one.withPlan ? { plan: planOf(before) } : {}),
        };
        const result = compared(comparing);
        const asked = surveyOf(after, filmRecordText(result, '2026-11-25', undefined));
        const first = surveyOf(before);
        // A survey has the reading that does not fit; a comparison tells the other panels without it.
        if (result.panels.some(({ comparison }) => comparison.apart !== null)) return;
        for (const { comparison, left, reasons, allowed } of result.panels) {
          if (left === null) continue;
          if (result.marks.after && comparison.by === 'pairs' && comparison.counts.before >= 3) {
            // Marks alone are no survey: what might go before, less what came off.
            const gone = Math.max(0, comparison.change?.removed.value ?? 0);
            expect(left.budget).toBeLessThanOrEqual(Math.max(0, (allowed?.most ?? 0) - gone));
            continue;
          }
          const { id } = comparison.panel;
          const budget = hundredths(left.budget);
          const codes = reasons.map(({ code }) => code);
          const isFew = result.marks.before || comparison.counts.before < 3;
          if (isFew && comparison.by === 'pairs' && comparison.counts.after < 3) {
            // Without a plan marks alone say nothing of what may go.
            expect([budget, codes.includes(left.boundBy.code)]).toEqual([0, true]);
            continue;
          }
          expect(budget).toBeLessThanOrEqual(budgetOf(asked, id));
          if (budget === budgetOf(asked, id)) same += 1;
          else expect(codes.some((code) => code in LESS_BECAUSE)).toBe(true);
          if (budget > budgetOf(first, id)) expect(codes).toContain('more-than-before');
        }
      }),
      { numRuns: 40 },
    );
    expect(same).toBeGreaterThan(100);
  });

  test('is nothing on a panel that may be cut back, however well it was polished', () => {
    const film = { ...soundFilm, bonnet: [107, 109, 105, 108, 106] };
    const visits = [readingsText(film), readingsText(worked(film, () => 2.5))];
    const bonnet = panelLeft(compared({ visits, job }), 'bonnet');
    expect(bonnet.left?.boundBy.code).toBe('near-line');
    expect(bonnet.verdict).not.toBe('go-on');
  });

  test('does not rise with what the plan’s rate showed on this car', () => {
    const before = readingsText(soundFilm);
    const after = readingsText(worked(soundFilm, () => 2.5));
    const plan = planOf(before);
    for (const { left, comparison } of compared({ visits: [before, after], job, plan }).panels) {
      expect(left?.budget).toBeLessThan(budgetOf(surveyOf(before), comparison.panel.id));
    }
  });

  test('is held to what was read before where the later file leaves out the thinnest point', () => {
    const film = { ...soundFilm, bonnet: [117, 121, 115, 119, 82] };
    const again = worked(film, () => 1);
    const after = readingsText({ ...again, bonnet: (again['bonnet'] ?? []).slice(0, 4) });
    const result = compared({ visits: [readingsText(film), after], job });
    const bonnet = panelLeft(result, 'bonnet');
    const record = filmRecordText(result, '2026-11-25', undefined);
    const alone = budgetOf(surveyOf(after), 'bonnet');
    const left = hundredths(bonnet.left?.budget ?? Number.NaN);
    expect(left).toBeLessThan(alone);
    expect(budgetOf(surveyOf(after, record), 'bonnet')).toBe(left);
    expect(bonnet.reasons.map(({ code }) => code)).toContain('less-as-before');
  });

  test('counts what test spots took, as a survey of the later readings with them does', () => {
    const row = (mark: number): string =>
      `A,bonnet,da,foam-medium,medium,4,${mark},118.0,115.4,swirl marks,60,1`;
    const spots = [
      'spot,panel,machine,pad,product,sets,mark,before_um,after_um,defect,cleared_pct,haze_grade',
      ...[1, 2, 3, 4, 5].map(row),
    ].join('\n');
    const visits = [readingsText(soundFilm), readingsText(worked(soundFilm, () => 1.5))];
    const told = (more: Known): CompareResult => compared({ visits, job, ...more });
    const budget = (result: CompareResult): number =>
      hundredths(panelLeft(result, 'bonnet').left?.budget ?? Number.NaN);
    const [without, withSpots] = [told({}), told({ spots })];
    const record = filmRecordText(withSpots, '2026-11-26', undefined);
    expect(budget(withSpots)).toBe(
      budgetOf(surveyOf(visits[1] ?? '', record, { spots }), 'bonnet'),
    );
    expect(budget(withSpots)).toBeLessThan(budget(without) - 0.5);
    expect(withSpots.inputs.map(({ file }) => file)).toEqual([
      'visit-1.csv',
      'spots.csv',
      'visit-2.csv',
    ]);
  });

  test('says why where it is more than before the work: other readings, not other paint', () => {
    const few = { ...soundFilm, bonnet: [117] };
    const after = readingsText(worked(soundFilm, () => 1));
    const bonnet = panelLeft(compared({ visits: [readingsText(few), after], job }), 'bonnet');
    const more = bonnet.reasons.find(({ code }) => code === 'more-than-before');
    expect(more?.text).toMatch(
      /may go, 0\.00 µm before the work \(then .*the readings differ, not the paint/,
    );
  });
});
