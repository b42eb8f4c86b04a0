/** A panel that lost more than might go, or is beyond a limit, is named before anything else. */
import { describe, expect, test } from 'vitest';
import { readFilmRecord } from '../../../src/formats/film-record.ts';
import { renderText } from '../../../src/render/text.ts';
import { compareBlocks } from '../../../src/report/compare/compare-blocks.ts';
import { compareTable } from '../../../src/report/compare/compare-csv.ts';
import { compareRecord } from '../../../src/report/compare/compare-record.ts';
import { filmRecordText } from '../../../src/report/compare/film-record-file.ts';
import type { CompareResult } from '../../../src/tasks/compare/compare-files.ts';
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
import { planOfRoof } from './plan-of-roof.ts';

const job = { finish: 'clear-over-base', taken_um: 0 };
const visitsOf = (removed: (panel: string) => number, film: Film = soundFilm) => [
  readingsText(film),
  readingsText(worked(film, removed)),
];
const roofAlone = (removed: number) => visitsOf((panel) => (panel === 'roof' ? removed : 2));
const roofOf = (comparing: Comparing) => panelLeft(compared(comparing), 'roof');
const codesOf = (comparing: Comparing): readonly string[] =>
  roofOf(comparing).overruns.map(({ code }) => code);

/** A plan that foretells 3 µm of the roof with a wide spread, where so much might go. */
const planOf = (budget: number): string => planOfRoof({ sets: 4, removal: 3, logSd: 0.55, budget });

const recordOf = (text: string) => {
  const { value } = readFilmRecord('record.json', text);
  if (value === undefined) throw new Error('refused');
  return value;
};

const textOf = (result: CompareResult): string =>
  renderText(compareBlocks(result, { unit: 'um', verbose: false }), {
    width: 80,
    paint: (text: string) => text,
  });

describe('more than might go', () => {
  test('is said where the whole interval lies over what the survey before the work allowed', () => {
    const roof = roofOf({ visits: roofAlone(9), job });
    expect(roof.allowed).toMatchObject({ by: 'survey' });
    expect(roof.allowed?.most).toBeGreaterThan(4);
    expect(roof.allowed?.most).toBeLessThan(8);
    expect(roof.overruns.map(({ code }) => code)).toContain('more-than-allowed');
    expect(roof.verdict).toBe('stop');
    expect(codesOf({ visits: roofAlone(2), job })).toEqual([]);
  });

  test('goes by the plan that was worked to, where there is one', () => {
    const visits = roofAlone(3);
    expect(codesOf({ visits, job, plan: planOf(2) })).toEqual(['more-than-allowed']);
    expect(codesOf({ visits, job, plan: planOf(4) })).toEqual([]);
    const { allowed, verdict, reasons, left } = roofOf({ visits, job, plan: planOf(2) });
    expect(allowed).toEqual({ most: 2, by: 'plan' });
    // Room is left by the limits, and nobody goes on before it is known what took so much.
    expect(left?.budget).toBeGreaterThan(1);
    expect(verdict).toBe('stop');
    expect(reasons[0]?.text).toMatch(/^3\.0 ± 0\.\d µm came off, 2\.00 µm might go by the plan$/);
  });

  test('is in doubt where it is no more than the readings may be off by', () => {
    const [before, after] = [soundFilm, worked(soundFilm, () => 3, 6)].map((one) =>
      readingsText(one),
    );
    const roof = roofOf({ visits: [before ?? '', after ?? ''], job, plan: planOf(2.5) });
    const { change } = roof.comparison;
    expect(change?.removed.value).toBeGreaterThan(2.5);
    expect(change?.low).toBeLessThan(2.5);
    expect(roof.overruns.map(({ code }) => code)).toEqual(['perhaps-more-than-allowed']);
    expect(roof.verdict).toBe('unresolved');
    const within = roofOf({ visits: [before ?? '', after ?? ''], job, plan: planOf(3.5) });
    expect([within.overruns, within.verdict]).toEqual([[], 'go-on']);
  });

  describe('at one marked point, which alone shows no such loss for sure', () => {
    const onePoint = (film: number, allowed: number) => ({
      visits: [readingsText(soundFilm), readingsText({ roof: [film] })],
      job,
      plan: planOf(allowed),
    });

    test('is in doubt where the figure does, on the page, in the row and on record', () => {
      const result = compared(onePoint(114.1, 4.54));
      const roof = panelLeft(result, 'roof');
      expect(roof.comparison.pairs).toHaveLength(1);
      expect(roof.comparison.change?.resolved).toBe(false);
      expect(roof.overruns.map(({ code }) => code)).toEqual(['perhaps-more-than-allowed']);
      expect(roof.verdict).not.toBe('go-on');
      expect(textOf(result).replaceAll(/\s+/gu, ' ')).toMatch(
        /Perhaps too much came off: roof: 4\.9 ± \d\.\d µm came off, 4\.54 µm might go by the plan\. Read/,
      );
      const { columns, rows } = compareTable(result);
      expect(rows[0]?.[columns.indexOf('overrun')]).toBe('perhaps-more-than-allowed');
      expect(result.visit).toMatchObject([{ allowed_um: 4.54, over_allowed: 'perhaps' }]);
    });

    test('is none within it, nor where the point may as well read as before', () => {
      expect(codesOf(onePoint(114.6, 4.54))).toEqual([]);
      expect(codesOf(onePoint(118.5, 0.4))).toEqual([]);
      expect(codesOf(onePoint(115, 0))).toEqual([]);
    });
  });

  test('is said of film that came off where nothing might go', () => {
    const visits = visitsOf(() => 3, { ...soundFilm, roof: [220, 224, 218, 221, 223] });
    const roof = roofOf({ visits, job });
    expect(roof.allowed?.most).toBe(0);
    expect(roof.overruns[0]?.text).toMatch(/ came off, nothing might go by the survey before/);
  });

  test('is held to what might go before this visit, though a record holds the visit already', () => {
    const visits = roofAlone(3);
    const once = compared({ visits, job });
    const filmRecord = filmRecordText(once, '2026-03-31', undefined);
    const again = roofOf({ visits, job, filmRecord });
    expect(again.allowed?.most).toBeCloseTo(roofOf({ visits, job }).allowed?.most ?? 0, 9);
    expect(again.overruns).toEqual([]);
  });

  test('is told first, by name, with what follows, and the plan does not call it borne out', () => {
    const result = compared({ visits: roofAlone(5), job, plan: planOf(2) });
    expect(panelLeft(result, 'roof').against).toBe('as-foretold');
    const [, first, ...rest] = textOf(result)
      .replaceAll(/\n {2}/g, ' ')
      .split('\n');
    expect(first).toMatch(/^Too much came off: roof: 5\.0 ± 0\.\d µm came off, 2\.00 µm might go/);
    expect(first).toMatch(/Do not work it further\./);
    expect(rest.join('\n')).toMatch(/Against the plan: more than might go on roof \(5\.0 for 3\.0/);
    expect(rest.join('\n')).not.toMatch(/all .* within what plan/);
  });

  test('stands in the record and in the row for a spreadsheet', () => {
    const result = compared({ visits: roofAlone(5), job, plan: planOf(2) });
    const { columns, rows } = compareTable(result);
    const row = rows.find((one) => one[columns.indexOf('panel')] === 'roof') ?? [];
    expect(row[columns.indexOf('overrun')]).toBe('more-than-allowed');
    expect(row[columns.indexOf('allowed_um')]).toBe(2);
    const { panels } = compareRecord(result, { version: '0', diagnostics: [] }) as {
      readonly panels: readonly { readonly panel: string; readonly overrun: readonly object[] }[];
    };
    expect(panels.find(({ panel }) => panel === 'roof')).toMatchObject({
      allowed_um: 2,
      allowed_by: 'plan',
      overrun: [{ code: 'more-than-allowed', value: 2 }],
      verdict: 'stop',
    });
    expect(panels.find(({ panel }) => panel === 'boot')?.overrun).toEqual([]);
  });
});

describe('at the next visit', () => {
  const next = (visits: readonly string[], filmRecord: string) => {
    const { value } = surveyFiles({
      ...requestOf({ visits: visits.slice(1), job }),
      filmRecord: recordOf(filmRecord),
    });
    const panels = value?.[0]?.result.survey.panels ?? [];
    return (id: string) => panels.find(({ panel }) => panel.id === id);
  };

  test('the record says what might go and where more went, and the survey says so of that panel alone', () => {
    const visits = roofAlone(5);
    const text = filmRecordText(
      compared({ visits, job, plan: planOf(2) }),
      '2026-03-31',
      undefined,
    );
    const [visit] = JSON.parse(text).visits;
    const entry = (id: string) => visit.panels.find(({ panel }: { panel: string }) => panel === id);
    expect(entry('roof')).toMatchObject({ allowed_um: 2, over_allowed: true });
    expect(entry('boot')).toMatchObject({ over_allowed: false });
    const panelOf = next(visits, text);
    expect(panelOf('roof')?.evidence.map(({ code, text: said }) => [code, said])).toContainEqual([
      'overrun-on-record',
      expect.stringMatching(
        /^on 2026-03-31 more came off than might go, 5\.0 ± 0\.\d µm \(SD\) where 2\.00 µm might: its limits count that/,
      ),
    ]);
    expect(panelOf('boot')?.evidence.map(({ code }) => code)).not.toContain('overrun-on-record');
  });

  test('a record that does not say what might go says nothing of it', () => {
    const visits = roofAlone(5);
    const { visits: kept, ...file } = JSON.parse(
      filmRecordText(compared({ visits, job, plan: planOf(2) }), '2026-03-31', undefined),
    );
    const without = kept.map(({ date, panels }: { date: string; panels: readonly object[] }) => ({
      date,
      panels: panels.map((one) => ({ ...one, allowed_um: null, over_allowed: null })),
    }));
    const roof = next(visits, JSON.stringify({ ...file, visits: without }))('roof');
    expect(roof?.facts.recorded?.mean).toBeCloseTo(5, 6);
    expect(roof?.evidence.map(({ code }) => code)).toEqual(['original']);
  });

  test('a visit stands in the record once, by whatever plan it is compared', () => {
    const visits = roofAlone(3);
    const byPlan = filmRecordText(
      compared({ visits, job, plan: planOf(2) }),
      '2026-03-31',
      undefined,
    );
    const bySurvey = compared({ visits, job, filmRecord: byPlan });
    expect(filmRecordText(bySurvey, '2026-03-31', recordOf(byPlan).value)).toBe(byPlan);
    const left = (filmRecord?: string) =>
      roofOf({ visits, job, ...(filmRecord === undefined ? {} : { filmRecord }) }).left?.budget;
    expect(left(byPlan)).toBe(left());
  });

  test('of a panel in two zones the one that lost more is told', () => {
    const film = { ...soundFilm, roof: [112, 115, 110, 250, 254, 252] };
    const off = { ...worked(film, () => 2), roof: [109, 112, 107, 243, 247, 245] };
    const visits = [readingsText(film), readingsText(off)];
    const text = filmRecordText(compared({ visits, job }), '2026-03-31', undefined);
    const [told] = next(visits, text)('roof')?.facts.recorded?.overruns ?? [];
    // Repaint, of which nothing might go.
    expect(told).toMatchObject({ date: '2026-03-31', mean: 7, allowed: 0 });
  });
});

describe('limits that are passed', () => {
  test('are called the topcoat’s on single-stage paint, which has no clear', () => {
    const single = { ...job, finish: 'single-stage-solid' };
    const passed = roofOf({ visits: roofAlone(60), job: single }).overruns;
    const ofCoat = passed.filter(({ code }) => code.startsWith('clear-')).map(({ text }) => text);
    expect(ofCoat.length).toBe(2);
    for (const text of ofCoat) expect(text).toMatch(/topcoat (?:are expected|is under its floor)/u);
    const off = worked(soundFilm, () => 60);
    const all = compared({ visits: [readingsText(soundFilm), readingsText(off)], job: single });
    expect(textOf(all).replaceAll(/\s+/gu, ' ')).toContain('The topcoat is under its floor with');
    expect(textOf(all)).not.toMatch(/\bclear\b/u);
  });

  test('are named: life, clear and total, with the chance that the clear is under its floor', () => {
    expect(codesOf({ visits: roofAlone(13), job })).toEqual([
      'more-than-allowed',
      'life-passed',
      'clear-at-risk',
    ]);
    expect(codesOf({ visits: roofAlone(45), job })).toEqual([
      'more-than-allowed',
      'life-passed',
      'total-passed',
      'clear-passed',
      'clear-at-risk',
    ]);
    const life = roofOf({ visits: roofAlone(13), job }).overruns[1];
    expect(life?.text).toBe('13.0 of the 12.7 µm that may come off over its life are gone');
    // Over the usual film, so that it lacks nothing.
    const thick = { ...soundFilm, roof: (soundFilm['roof'] ?? []).map((one) => one + 8) };
    const lifeWith = (more: object, filmRecord?: string) =>
      roofOf({
        visits: visitsOf((panel) => (panel === 'roof' ? 13 : 2), thick),
        job: { finish: 'clear-over-base', ...more },
        ...(filmRecord === undefined ? {} : { filmRecord }),
      }).overruns.find(({ code }) => code === 'life-passed')?.text;
    const gone = 'of the 12.7 µm that may come off over its life are gone';
    expect(lifeWith({})).toBe(`17.0 ${gone}: 13.0 measured here, 4.0 assumed of earlier work`);
    expect(lifeWith({ taken_um: 2 })).toBe(
      `15.0 ${gone}: 13.0 measured here, 2.0 by what is stated of earlier work`,
    );
    const record = JSON.stringify({
      schema: 'leastcut/film-record/1',
      visits: [{ date: '2025-01-02', panels: [{ panel: 'roof', taken_um: 3, taken_sd_um: 0.2 }] }],
    });
    expect(lifeWith({}, record)).toBe(
      `20.0 ${gone}: 13.0 measured here, 7.0 taken to be gone before`,
    );
  });

  test('are passed by what earlier work took as well', () => {
    const visits = roofAlone(3);
    const some = { ...job, taken_um: 11 };
    expect(codesOf({ visits, job: some })).toContain('life-passed');
    expect(codesOf({ visits, job: { ...job, taken_um: 5 } })).not.toContain('life-passed');
  });

  test('are no matter of a panel from which nothing is shown to have come off', () => {
    const film = { ...soundFilm, roof: [79, 78, 79, 78, 79] };
    expect(codesOf({ visits: visitsOf(() => 0, film), job })).toEqual([]);
  });
});

describe('a panel in two zones', () => {
  const film = { ...soundFilm, roof: [112, 115, 110, 250, 254, 252] };
  const off = { ...worked(film, () => 3), roof: [109, 112, 107, 251, 255, 252] };
  const result = compared({ visits: [readingsText(film), readingsText(off)], job });
  const roof = panelLeft(result, 'roof');

  test('lost film where one of them did, though its mean over both does not show it', () => {
    expect(roof.comparison.change?.resolved).toBe(false);
    expect(textOf(result)).toMatch(/surely some on each/);
    const rows = textOf(result).split('\n');
    expect(rows.find((line) => line.startsWith('roof'))).toMatch(/ yes /);
  });

  test('is worked by its zones: nothing is planned of it as a whole', () => {
    expect([roof.planned, roof.foretold, roof.allowed]).toEqual([null, null, null]);
    const { columns, rows } = compareTable(result);
    expect(
      rows
        .filter((row) => row[columns.indexOf('panel')] === 'roof')
        .map((row) => [row[columns.indexOf('zone')], row[columns.indexOf('resolved')]]),
    ).toEqual([
      ['thinner', 'yes'],
      ['thicker', 'no'],
    ]);
  });
});
