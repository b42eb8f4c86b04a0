/** The loop from readings to plan, work, comparison, film record and the next survey. */
import { describe, expect, test } from 'vitest';
import { readFilmRecord } from '../../../src/formats/film-record.ts';
import { filmRecordFile, filmRecordText } from '../../../src/report/compare/film-record-file.ts';
import { planRecord } from '../../../src/report/plan/plan-record.ts';
import { compareObservations } from '../../../src/tasks/compare/compare-observations.ts';
import { planFiles } from '../../../src/tasks/plan/plan-files.ts';
import { surveyFiles } from '../../../src/tasks/survey/survey-files.ts';
import {
  compared,
  type Film,
  panelLeft,
  readingsText,
  requestOf,
  soundFilm,
  toldBy,
  worked,
} from '../comparing.ts';

const before = readingsText(soundFilm);
const job = { vehicle: { id: 'FH-7' }, finish: 'clear-over-base', taken_um: 0 };
const afterOf = (removed: (panel: string) => number, film: Film = soundFilm): string =>
  readingsText(worked(film, removed));

/** The plan of a car, as `leastcut plan --format json` writes it. */
function planOf(readings: string, keys: object = job): string {
  const request = requestOf({ visits: [readings], job: keys as Readonly<Record<string, unknown>> });
  const planned = planFiles({ ...request, defects: undefined }).value?.[0];
  if (planned === undefined) throw new Error('no plan');
  return JSON.stringify(
    planRecord(planned.result, planned.panels, { version: '0', diagnostics: [] }),
  );
}

const plan = planOf(before);
const plannedUm = (id: string): number => {
  const { panels } = JSON.parse(plan) as {
    panels: readonly { panel: string; removal_um: { median: number } }[];
  };
  return panels.find(({ panel }) => panel === id)?.removal_um.median ?? 0;
};

describe('a plan beside what was measured', () => {
  test('is borne out where as much came off as it foretold', () => {
    const result = compared({ visits: [before, afterOf(() => 3)], job, plan });
    expect(plannedUm('roof')).toBeCloseTo(2.97, 2);
    expect(result.panels.map(({ against }) => against)).toEqual(Array(5).fill('as-foretold'));
    expect(result.rates.map(({ combination, looks }) => [combination, looks])).toEqual([
      ['da/foam-medium/medium', null],
    ]);
    expect(panelLeft(result, 'roof').oneMore).toMatchObject({
      combination: 'da/foam-medium/medium',
      from: 'plan',
    });
  });

  test('is wrong where the panels say so together, though none of them could alone', () => {
    const softer = compared({ visits: [before, afterOf(() => 7)], job, plan });
    expect(softer.rates.map(({ looks }) => looks)).toEqual(['too-low']);
    const harder = compared({ visits: [before, afterOf(() => 1)], job, plan });
    expect(harder.rates.map(({ looks }) => looks)).toEqual(['too-high']);
    // An untried rate is known to a factor of about two and a half: half of it is its own business, a third is not.
    expect(harder.rates.map(({ withinKnown }) => withinKnown)).toEqual([false]);
    const half = compared({ visits: [before, afterOf(() => 1.5)], job, plan });
    expect(half.rates.map(({ looks, withinKnown }) => [looks, withinKnown])).toEqual([
      ['too-high', true],
    ]);
    expect(harder.panels.map(({ against }) => against)).toContain('as-foretold');
    const set = (result: typeof softer): number =>
      panelLeft(result, 'roof').oneMore?.removal.median ?? 0;
    expect(set(softer)).toBeGreaterThan(1.5 * set(harder));
  });

  test('names the panel that lost more or less than both may be off by', () => {
    const uneven = afterOf((panel) => ({ roof: 12, boot: 0 })[panel] ?? 3);
    const result = compared({ visits: [before, uneven], job, plan });
    expect(panelLeft(result, 'roof').against).toBe('more');
    expect(panelLeft(result, 'boot').against).toBe('less');
    expect(panelLeft(result, 'bonnet').against).toBe('as-foretold');
  });

  test('holds a panel’s removal together by what it foretold, the other panels and the gauge', () => {
    const visits = [before, readingsText(worked(soundFilm, () => 3, 6))];
    const alone = compared({ visits, job });
    const planned = compared({ visits, job, plan });
    const sd = (result: typeof alone): number => panelLeft(result, 'roof').held?.sd ?? 0;
    expect(sd(planned)).toBeLessThan(0.8 * sd(alone));
  });

  test('has foretold nothing of a panel that it leaves alone', () => {
    const left = planOf(before, { ...job, panels: { roof: { covered: true } } });
    const result = compared({ visits: [before, afterOf(() => 3)], job, plan: left });
    const roof = panelLeft(result, 'roof');
    expect([roof.against, roof.oneMore?.from]).toEqual(['more', 'mildest']);
    const untouched = afterOf((panel) => (panel === 'roof' ? 0 : 3));
    expect(
      panelLeft(compared({ visits: [before, untouched], job, plan: left }), 'roof').against,
    ).toBe('as-foretold');
  });

  test('takes film that came on for no measurement: the panel lost what was foretold', () => {
    const waxed = afterOf((panel) => (panel === 'boot' ? -7 : 3));
    const { held, against } = panelLeft(compared({ visits: [before, waxed], job, plan }), 'boot');
    expect(against).toBeNull();
    expect(held?.mean).toBeGreaterThan(2.9);
  });

  test('of another vehicle, or of panels that the template does not have, is refused', () => {
    const foreign = plan.replace('"vehicle":"FH-7"', '"vehicle":"FH-8"');
    expect(toldBy({ visits: [before, afterOf(() => 3)], job, plan: foreign })[0]).toMatch(
      /^plan-mismatch: the plan is of vehicle "FH-8"/,
    );
    const odd = plan.replaceAll('"panel":"roof"', '"panel":"rumble seat"');
    expect(toldBy({ visits: [before, afterOf(() => 3)], job, plan: odd })[0]).toMatch(
      /^settings-panel-unknown/,
    );
  });

  test('of a panel in two zones is held against each zone', () => {
    const film = { ...soundFilm, roof: [112, 115, 110, 250, 254, 252] };
    const off = { ...worked(film, () => 3), roof: [109, 112, 107, 250, 254, 252] };
    const roof = panelLeft(
      compared({
        visits: [readingsText(film), readingsText(off)],
        job,
        plan: planOf(readingsText(film)),
      }),
      'roof',
    );
    expect(roof.zones.map(({ comparison }) => comparison.change?.removed.value)).toEqual([3, 0]);
    expect(roof.zones.map(({ against }) => against)).toEqual(['as-foretold', 'as-foretold']);
    // Repaint without a test spot of its own: nothing more may go there.
    expect(roof.zones.map(({ verdict }) => verdict)).toEqual(['go-on', 'stop']);
    // The panel shows what the zone shows that allows least.
    expect([roof.verdict, roof.left?.budget, roof.against]).toEqual(['stop', 0, null]);
    expect([roof.planned, roof.foretold]).toEqual([null, null]);
  });
});

describe('one more set', () => {
  const of = (onRoof: number) => {
    const taken = (panel: string): number => (panel === 'roof' ? onRoof : 1);
    return compared({ visits: [before, afterOf(taken)], job, plan });
  };
  const setOn = (result: ReturnType<typeof of>, id: string): number =>
    panelLeft(result, id).oneMore?.removal.median ?? Number.NaN;

  test('takes of a panel that lost far more than the others foretell as much as it lost of the last ones', () => {
    const result = of(6);
    const set = mainStepOf(panelLeft(result, 'roof'));
    expect(setOn(result, 'roof')).toBeCloseTo((set.removal / set.sets) * (6 / set.ofAll), 6);
    expect(setOn(result, 'roof')).toBeGreaterThan(3 * setOn(result, 'bonnet'));
    expect(panelLeft(result, 'roof').verdict).toBe('stop');
  });

  test('takes of all panels alike where they lost alike', () => {
    const result = of(1);
    expect(setOn(result, 'roof')).toBeCloseTo(setOn(result, 'bonnet'), 9);
  });
});

/** The step that was to take most of it. */
function mainStepOf({ planned }: ReturnType<typeof panelLeft>) {
  const steps = [...(planned?.steps ?? [])].sort((one, other) => other.removal - one.removal);
  const [{ removal, sets } = { removal: Number.NaN, sets: 1 }] = steps;
  return { removal, sets, ofAll: planned?.removal?.median ?? Number.NaN };
}

describe('what a shop keeps of the work', () => {
  test('is what all planned steps of a panel took together, by the gauge', () => {
    const waxed = afterOf((panel) => (panel === 'boot' ? -7 : 3));
    const result = compared({ visits: [before, waxed], job, plan });
    const kept = compareObservations(result, { date: '2026-11-25', vehicle: 'FH-7' });
    expect(kept.map(({ panel }) => panel).sort()).toEqual([
      'bonnet',
      'door-front-left',
      'door-front-right',
      'roof',
    ]);
    expect(kept[0]).toMatchObject({ date: '2026-11-25', vehicle: 'FH-7' });
    expect(kept[0]?.steps).toEqual([
      { combination: 'da/foam-medium/medium', sets: 3 },
      { combination: 'da/foam-soft/fine', sets: 1 },
    ]);
    expect(kept[0]?.removed?.mean).toBeCloseTo(3, 6);
    expect(kept[0]?.removed?.standardError).toBeGreaterThan(0);
  });

  test('is nothing where no plan says what was worked', () => {
    const result = compared({ visits: [before, afterOf(() => 3)], job });
    expect(compareObservations(result, { date: '2026-11-25', vehicle: 'FH-7' })).toEqual([]);
  });
});

describe('the film record of a visit', () => {
  const result = compared({ visits: [before, afterOf(() => 3)], job, plan });
  const text = filmRecordText(result, '2026-11-25', undefined);

  test('holds what was measured, is read again, and takes it from the budget of the next visit', () => {
    const { value: record, diagnostics } = readFilmRecord('record.json', text);
    expect(diagnostics).toEqual([]);
    expect(record?.value.vehicle).toBe('FH-7');
    const recorded = record?.value.panels.find(({ panel }) => panel === 'roof');
    expect(recorded?.taken.mean).toBeCloseTo(3, 6);
    const lifeLeft = (filmRecord: typeof record): number => {
      const request = requestOf({ visits: [afterOf(() => 3)], job });
      const survey = surveyFiles({ ...request, filmRecord }).value?.[0]?.result.survey;
      const roof = survey?.panels.find(({ panel }) => panel.id === 'roof');
      const life = roof?.limits.find(({ code }) => code === 'life');
      return Number(life?.text.match(/([\d.]+) µm of it/)?.[1]);
    };
    expect(lifeLeft(undefined)).toBe(0);
    expect(lifeLeft(record)).toBe(3);
  });

  test('is added to an earlier one, which stays as it was', () => {
    const earlier = readFilmRecord('record.json', text).value?.value;
    const later = filmRecordFile(result, '2027-05-01', earlier);
    expect(later.visits.map(({ date }) => date)).toEqual(['2026-11-25', '2027-05-01']);
    expect(later.visits[0]).toEqual(JSON.parse(text).visits[0]);
    const both = compared({
      visits: [afterOf(() => 3), afterOf(() => 5)],
      job,
      filmRecord: JSON.stringify(later),
    });
    const life = panelLeft(both, 'roof').left?.limits.find(({ code }) => code === 'life');
    // 3 + 3 on record and what came off now
    expect(life?.text).toContain('8.0 µm by the film record');
  });

  test('holds a visit once, however often it is added', () => {
    const earlier = readFilmRecord('record.json', text).value?.value;
    const again = compared({ visits: [before, afterOf(() => 3)], job, filmRecord: text });
    expect(filmRecordFile({ ...result, again: again.again }, '2026-11-25', earlier)).toEqual(
      JSON.parse(text),
    );
    expect(filmRecordFile(again, '2026-12-24', earlier).visits).toHaveLength(1);
  });

  test('counts a visit once where the record that is named holds it already', () => {
    const visits = [before, afterOf(() => 3)];
    const [once, again] = [
      compared({ visits, job }),
      compared({ visits, job, filmRecord: text }),
    ].map((one) => panelLeft(one, 'roof').left?.budget);
    expect(once).toBeGreaterThan(0);
    expect(again).toBeCloseTo(once ?? 0, 9);
  });

  test('leaves out a panel whose film came on', () => {
    const waxed = afterOf((panel) => (panel === 'boot' ? -7 : 3));
    const file = filmRecordFile(
      compared({ visits: [before, waxed], job }),
      '2026-11-25',
      undefined,
    );
    expect(file.visits[0]?.panels.map(({ panel }) => panel)).not.toContain('boot');
    expect(file.visits[0]?.panels).toHaveLength(4);
  });

  test('holds each zone, and counts the one that lost most', () => {
    const film = { ...soundFilm, roof: [112, 115, 110, 250, 254, 252] };
    const off = { ...worked(film, () => 3), roof: [110, 113, 108, 245, 249, 247] };
    const zoned = compared({ visits: [readingsText(film), readingsText(off)], job });
    const file = filmRecordFile(zoned, '2026-11-25', undefined);
    const roof = file.visits[0]?.panels.find(({ panel }) => panel === 'roof');
    expect(roof?.zones?.map(({ zone, taken_um }) => [zone, taken_um])).toEqual([
      ['thinner', 2],
      ['thicker', 5],
    ]);
    const read = readFilmRecord('record.json', JSON.stringify(file)).value?.value;
    expect(read?.panels.find(({ panel }) => panel === 'roof')?.taken.mean).toBe(5);
  });

  test('names no points where none was found again', () => {
    const unmarked = compared({ visits: [before, afterOf(() => 3)], marked: false, job });
    const [visit] = filmRecordFile(unmarked, '2026-11-25', undefined).visits;
    expect(visit?.panels.every(({ points }) => points === undefined)).toBe(true);
    expect(visit?.panels[0]?.taken_sd_um).toBeGreaterThan(1);
  });
});
