import { describe, expect, test } from 'vitest';
import { renderText } from '../../../src/render/text.ts';
import { compareBlocks } from '../../../src/report/compare/compare-blocks.ts';
import { compareFiles } from '../../../src/tasks/compare/compare-files.ts';
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
const after = readingsText(worked(soundFilm, () => 2.5));
const job = { finish: 'clear-over-base', taken_um: 0 };
const removedOf = (result: ReturnType<typeof compared>, id: string): number =>
  panelLeft(result, id).comparison.change?.removed.value ?? Number.NaN;

describe('two files of readings', () => {
  test('say what came off each panel and what is left on it', () => {
    const result = compared({ visits: [before, after], job });
    expect(result.panels).toHaveLength(5);
    expect(removedOf(result, 'bonnet')).toBeCloseTo(2.5, 9);
    const { left, verdict, oneMore } = panelLeft(result, 'bonnet');
    expect(verdict).toBe('go-on');
    expect(oneMore).toMatchObject({ combination: 'da/foam-soft/fine', from: 'mildest' });
    expect(left?.budget).toBeGreaterThan(oneMore?.removal.median ?? 0);
    expect(left?.limits.find(({ code }) => code === 'life')?.text).toContain(
      '2.5 µm by the film record',
    );
  });

  test('leave as much less as came off', () => {
    const nothing = compared({ visits: [before, readingsText(worked(soundFilm, () => 0))], job });
    const some = compared({ visits: [before, after], job });
    const life = (result: typeof some): number =>
      panelLeft(result, 'roof').left?.limits.find(({ code }) => code === 'life')?.value ?? 0;
    expect(life(some)).toBeLessThan(life(nothing));
    expect(panelLeft(some, 'roof').left?.budget).toBeLessThan(
      panelLeft(nothing, 'roof').left?.budget ?? 0,
    );
  });

  test('stop where the film is at an end', () => {
    const thin = worked(soundFilm, () => 36);
    const result = compared({ visits: [before, readingsText(thin)], job });
    expect(result.panels.map(({ verdict }) => verdict)).toEqual(Array(5).fill('stop'));
    expect(panelLeft(result, 'roof').left?.budget).toBe(0);
  });

  test('are of the same places only where that is said, and then it is told', () => {
    const unmarked = compared({ visits: [before, after], marked: false, job });
    expect(unmarked.total.panels.map(({ by }) => by)).toEqual(Array(5).fill('means'));
    expect(toldBy({ visits: [before, after], marked: false })).toContainEqual(
      expect.stringMatching(/^compare-not-marked: /),
    );
    const column = (text: string): string =>
      text
        .split('\n')
        .map((line, i) => `${line},${i === 0 ? 'marked' : 'yes'}`)
        .join('\n');
    const marked = compared({ visits: [column(before), column(after)], marked: false, job });
    expect(marked.total.panels.map(({ by }) => by)).toEqual(Array(5).fill('pairs'));
    expect(toldBy({ visits: [column(before), column(after)], marked: false })).toEqual([]);
  });

  test('in mil say what the same in micrometres do', () => {
    const mil = (text: string): string =>
      text
        .split('\n')
        .map((line, i) => {
          const [panel, point, value = ''] = line.split(',');
          return `${panel},${point},${i === 0 ? 'reading_mil' : (Number(value) / 25.4).toFixed(12)}`;
        })
        .join('\n');
    const um = compared({ visits: [before, after], job });
    const twin = compared({ visits: [mil(before), mil(after)], job });
    for (const { comparison, verdict } of um.panels) {
      const other = panelLeft(twin, comparison.panel.id);
      expect(other.comparison.change?.removed.value).toBeCloseTo(
        comparison.change?.removed.value ?? 0,
        6,
      );
      expect(other.comparison.change?.low).toBeCloseTo(comparison.change?.low ?? 0, 2);
      expect(other.verdict).toBe(verdict);
    }
  });

  test('of which the later is a part of the earlier keep what was not read again as it was', () => {
    const some = readingsText({
      bonnet: worked(soundFilm, () => 2.5)['bonnet']?.slice(0, 3) ?? [],
    });
    const result = compared({ visits: [before, some], job });
    expect(result.total.onlyBefore).toHaveLength(4);
    const standing = result.left.survey.panels.find(({ panel }) => panel.id === 'bonnet');
    // Two points stand as before, less the mean of what came off at the three.
    const removed = removedOf(result, 'bonnet');
    expect(standing?.points.map(({ thickness }) => thickness).slice(0, 2)).toEqual([
      119 - removed,
      118 - removed,
    ]);
    expect(standing?.points).toHaveLength(5);
    const roof = result.left.survey.panels.find(({ panel }) => panel.id === 'roof');
    expect(roof?.statistics?.mean).toBeCloseTo(118.8, 9);
  });

  test('of two vehicles, or of one visit, are refused', () => {
    const of = (vehicle: string, text: string): string =>
      text
        .split('\n')
        .map((line, i) => `${line},${i === 0 ? 'vehicle' : vehicle}`)
        .join('\n');
    expect(toldBy({ visits: [of('A', before), of('B', after)] })).toEqual([
      'compare-vehicles-differ: visit-2.csv is of vehicle "B", visit-1.csv of "A"',
    ]);
    expect(toldBy({ visits: [before] })[0]).toMatch(/^compare-one-visit: /);
    expect(toldBy({ visits: [] })[0]).toMatch(/^compare-one-visit: /);
    const both = `${of('A', before)}\n${of('B', after).split('\n').slice(1).join('\n')}`;
    expect(toldBy({ visits: [both, of('A', after)] })).toContainEqual(
      expect.stringMatching(/^usage-several-vehicles: .*holds 2 vehicles/),
    );
    const one = compared({ visits: [both, of('A', after)], vehicle: 'A', job });
    expect(one.vehicle).toBe('A');
  });

  test('are not lent the job, the film record or the plan of another vehicle', () => {
    const own = `${before}`
      .split('\n')
      .map((line, i) => `${line},${i === 0 ? 'vehicle' : 'A'}`)
      .join('\n');
    const visits = [own, after];
    expect(toldBy({ visits, job: { vehicle: { id: 'B' } } })).toEqual([
      'job-mismatch: the job is of vehicle "B", the readings are of "A"',
    ]);
    const filmRecord = JSON.stringify({
      schema: 'leastcut/film-record/1',
      vehicle: 'B',
      visits: [],
    });
    expect(toldBy({ visits, filmRecord })).toEqual([
      'film-record-mismatch: the film record is of vehicle "B", this one is "A"',
    ]);
  });

  test('are of one vehicle, and so are job, record and plan, in capitals or not and with a blank about it', () => {
    const of = (vehicle: string, text: string): string =>
      text
        .split('\n')
        .map((line, i) => `${line},${i === 0 ? 'vehicle' : vehicle}`)
        .join('\n');
    const visits = [of('FH-7', `${before}`), of('fh-7', `${after}`)];
    const filmRecord = JSON.stringify({
      schema: 'leastcut/film-record/1',
      vehicle: 'Fh-7 ',
      visits: [],
    });
    const plan = JSON.stringify({ schema: 'leastcut/plan/1', vehicle: 'FH-7', panels: [] });
    const told = toldBy({ visits, filmRecord, plan, job: { vehicle: { id: 'fh-7' } } });
    expect(told.filter((one) => /mismatch|differ|vehicle/.test(one))).toEqual([]);
  });

  test('that show film coming on say so and decide nothing by it', () => {
    const waxed = worked(soundFilm, (panel) => (panel === 'boot' ? -6 : 2));
    const visits = [before, readingsText(waxed)];
    const result = compared({ visits, job });
    const boot = panelLeft(result, 'boot');
    expect([boot.comparison.gained, boot.verdict, boot.against]).toEqual([
      true,
      'unresolved',
      null,
    ]);
    expect(boot.reasons.map(({ code }) => code)).toContain('film-gained');
    expect(boot.held).toEqual({ mean: 0, sd: 0 });
    expect(toldBy({ visits, job })).toEqual([
      'compare-film-gained: visit-2.csv reads more film than before: boot lid by 6.0 µm',
    ]);
  });

  test('compare only the panels that are asked for', () => {
    const result = compared({ visits: [before, after], panels: ['roof'], job });
    expect(result.panels.map(({ comparison }) => comparison.panel.id)).toEqual(['roof']);
    expect(toldBy({ visits: [before, after], panels: ['rof'] })[0]).toMatch(/^usage-unknown-panel/);
  });

  test('take a clear that the job states for what was there before', () => {
    const stated = { ...job, panels: { roof: { clear_um: { value: 45, sd: 1 } } } };
    const clearOf = (removed: number): number =>
      panelLeft(
        compared({ visits: [before, readingsText(worked(soundFilm, () => removed))], job: stated }),
        'roof',
      ).left?.topcoat?.clear.mean ?? 0;
    expect(clearOf(1) - clearOf(4)).toBeCloseTo(3, 1);
  });
});

describe('gloss beside them', () => {
  const visits = [before, after];
  test('is told by panel in walking order, whatever the panels are called', () => {
    const gloss = 'panel,angle_deg,before_gu,after_gu\nroof,60,80,90\nhood,60,81,92\n';
    const { gloss: changes, inputs } = compared({ visits, job, gloss });
    expect(changes.map(({ panel, gained }) => [panel.id, gained])).toEqual([
      ['bonnet', 11],
      ['roof', 10],
    ]);
    expect(inputs.map(({ file }) => file)).toEqual(['visit-1.csv', 'visit-2.csv', 'gloss.csv']);
  });

  test('of a panel that the template does not have is refused, as is what cannot be read', () => {
    const odd = 'panel,angle_deg,before_gu,after_gu\nrumble seat,60,80,90\n';
    expect(toldBy({ visits, gloss: odd })).toContainEqual(expect.stringMatching(/^panel-unknown/));
    const wrong = 'panel,angle_deg,before_gu,after_gu\nroof,60,80,\n';
    expect(toldBy({ visits, gloss: wrong })).toContainEqual(expect.stringMatching(/^cell-invalid/));
  });
});

describe('several files in their order', () => {
  const middle = readingsText(worked(soundFilm, () => 1.5));
  test('say what came off from each visit to the next, and in all', () => {
    const result = compared({ visits: [before, middle, after], job });
    expect(result.steps.map(({ from, to }) => [from, to])).toEqual([
      ['visit-1.csv', 'visit-2.csv'],
      ['visit-2.csv', 'visit-3.csv'],
    ]);
    const [first = 0, second = 0] = result.steps.map(
      ({ comparison }) => comparison.car?.removed.value ?? 0,
    );
    expect(first).toBeCloseTo(1.5, 9);
    expect(first + second).toBeCloseTo(result.total.car?.removed.value ?? 0, 9);
  });
});

describe('who read', () => {
  const readBy = (text: string, ...names: readonly string[]): string =>
    text
      .split('\n')
      .map((line, i) => `${line},${i === 0 ? 'operator' : names.join(' and ')}`)
      .join('\n');
  const withoutHeader = (text: string): string => text.slice(text.indexOf('\n'));
  const changeOf = (visits: readonly string[]) =>
    panelLeft(compared({ visits, job }), 'roof').comparison.change;
  const gaugeText = (visits: readonly string[]): string =>
    compared({ visits, job }).assumptions.find(({ code }) => code === 'same-gauge')?.text ?? '';

  test('is said where others read before than after, and not where nobody or the same is named', () => {
    const others = 'read by Ann before and by Bo after: what people read apart does not cancel';
    expect(gaugeText([readBy(before, 'Ann'), readBy(after, 'Bo')])).toContain(others);
    for (const visits of [
      [before, readBy(after, 'Bo')],
      [readBy(before, 'Ann'), readBy(after, 'Ann')],
    ]) {
      expect(gaugeText(visits)).not.toContain('read by');
    }
  });

  test('counts before and after where two are seen to read apart, for all panels together', () => {
    const higher = readingsText(
      Object.fromEntries(
        Object.entries(soundFilm).map(([panel, films]) => [
          panel,
          films.map((film, i) => film + 6 + 0.1 * (i % 2)),
        ]),
      ),
    );
    const both = `${readBy(before, 'Ann')}${withoutHeader(readBy(higher, 'Bo'))}`;
    const visits = [both, readBy(after, 'Cy')];
    const own = changeOf(visits)?.removed.components.get('operators');
    // Of two who differ by 6.0 µm, s = 6/√2 each: √(¼ + ¼ + 1) of it where a third reads after.
    expect(own?.contribution).toBeCloseTo((6.04 / Math.SQRT2) * Math.sqrt(1.5), 1);
    const { car } = compared({ visits, job }).total;
    expect(car?.removed.components.get('operators')?.contribution).toBeCloseTo(
      own?.contribution ?? Number.NaN,
      9,
    );
    expect(changeOf([before, after])?.removed.components.has('operators')).toBe(false);
  });

  test('cancels as far as the same people read: two who read both visits are as sure as one', () => {
    const higher = (film: Film): string =>
      readingsText(
        Object.fromEntries(
          Object.entries(film).map(([panel, films]) => [panel, films.map((one) => one + 6)]),
        ),
      );
    const off = worked(soundFilm, () => 2);
    const both = (film: Film): string =>
      `${readBy(readingsText(film), 'Ann')}${withoutHeader(readBy(higher(film), 'Bo'))}`;
    const contributionOf = (visits: readonly string[]) =>
      changeOf(visits)?.removed.components.get('operators')?.contribution;
    expect(contributionOf([both(soundFilm), both(off)])).toBeUndefined();
    // One of the two afterwards: as far off as their mean is from one of them, 3 µm.
    expect(contributionOf([both(soundFilm), readBy(readingsText(off), 'Ann')])).toBeCloseTo(3, 1);
    // Of people who are not named nobody knows it.
    expect(contributionOf([both(soundFilm), readingsText(off)])).toBeGreaterThan(5);
  });
});

describe('the gauge', () => {
  const permitted = { permitted_error: { fixed_um: 1, proportional_pct: 2 } };
  const passed = { ...permitted, serial: '42' };
  const calibrationOf = (comparing: Parameters<typeof compared>[0]): readonly string[] => [
    ...(panelLeft(compared(comparing), 'roof').comparison.change?.removed.components.keys() ?? []),
  ];
  const codes = (comparing: Parameters<typeof compared>[0]): readonly string[] =>
    compared(comparing).assumptions.map(({ code }) => code);
  const visits = [before, after];

  test('is one and the same where nothing says otherwise, and that is said', () => {
    expect(calibrationOf({ visits })).toEqual(['marks', 'calibration']);
    expect(codes({ visits })).toContain('same-gauge');
    expect(calibrationOf({ visits, gauge: passed, gaugeAfter: passed })).toContain('calibration');
  });

  test('counts in full where it moved between its checks', () => {
    const drift = [{ shim_um: 100, change_um: 3, expanded_um: 1, proved: true }];
    const moved = { visits, gauge: { ...passed, drift } };
    expect(calibrationOf(moved)).toEqual(['marks', 'calibration-before', 'calibration-after']);
    expect(codes(moved)).toContain('gauges-differ');
  });

  test('counts in full where two of them read the car, by their files or by what exports say', () => {
    const two = { visits, gauge: passed, gaugeAfter: { ...permitted, serial: '43' } };
    expect(calibrationOf(two)).toContain('calibration-after');
    expect(calibrationOf({ visits, gauge: passed, gaugeAfter: permitted })).toContain(
      'calibration-after',
    );
    const named = visits.map((text, i) => `Serial number: ${i}77\n\n${text}`);
    expect(calibrationOf({ visits: named })).toContain('calibration-after');
    const alike = visits.map((text) => `Serial number: 077\n\n${text}`);
    expect(calibrationOf({ visits: alike })).toContain('calibration');
  });
});

describe('the page', () => {
  test('says first what came off, then who may take one more set, and what could show last; it fits 80 columns', () => {
    const outcome = compareFiles(requestOf({ visits: [before, after], job }));
    if (outcome.value === undefined) throw new Error('refused');
    const text = renderText(compareBlocks(outcome.value, { unit: 'um', verbose: false }), {
      width: 80,
      paint: (piece) => piece,
    });
    const places = ['Came off: 2.5', 'Allowed, not asked for: ', 'panel (µm)', 'shows half of the'];
    const at = places.map((words) => text.indexOf(words));
    expect(at).toEqual([...at].sort((one, other) => one - other));
    expect(at).not.toContain(-1);
    expect(text).not.toMatch(/\bgo on\b|go-on/i);
    expect(Math.max(...text.split('\n').map((line) => line.length))).toBeLessThanOrEqual(80);
  });
});
