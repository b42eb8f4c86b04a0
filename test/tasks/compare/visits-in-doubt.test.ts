/** Visits named in another order, taken for another year's, or counted before: told, and never written silently. */
import { describe, expect, test } from 'vitest';
import { remark } from '../../../src/base/remark.ts';
import { micrometres } from '../../../src/base/units.ts';
import type { Allowance } from '../../../src/film/limits/allowance.ts';
import { topcoatRisk } from '../../../src/film/limits/topcoat-risk.ts';
import type { PanelSurvey } from '../../../src/film/survey.ts';
import { renderText } from '../../../src/render/text.ts';
import { compareBlocks } from '../../../src/report/compare/compare-blocks.ts';
import { filmRecordFile, filmRecordText } from '../../../src/report/compare/film-record-file.ts';
import { compareFiles } from '../../../src/tasks/compare/compare-files.ts';
import { moreReasons, moreThanBefore } from '../../../src/tasks/compare/compare-left-reasons.ts';
import {
  type Comparing,
  compared,
  type Film,
  panelLeft,
  readingsText,
  requestOf,
  soundFilm,
  toldBy,
  worked,
} from '../comparing.ts';
import { planOfRoof } from './plan-of-roof.ts';

const job = { finish: 'clear-over-base', taken_um: 0 };
const dated = (text: string, day: string): string =>
  text
    .split('\n')
    .map((line, i) => `${line},${i === 0 ? 'time' : day}`)
    .join('\n');
const first = readingsText(soundFilm);
const second = readingsText(worked(soundFilm, () => 1.5));
const third = readingsText(worked(soundFilm, () => 1.4, 1.3));
const fourth = readingsText(worked(soundFilm, () => 4, 0.7));
const recordOf = (comparing: Comparing, date: string): string =>
  filmRecordText(compared(comparing), date, requestOf(comparing).filmRecord?.value);
const record = recordOf({ visits: [first, second], job }, '2025-06-12');
const recording = (comparing: Comparing, date: string) =>
  compareFiles({ ...requestOf(comparing), recording: true, date });
const codes = (of: ReturnType<typeof recording>): readonly string[] =>
  of.diagnostics.map(({ code, severity }) => `${severity} ${code}`);
const lost = (result: ReturnType<typeof compared>): readonly (number | undefined)[] =>
  result.left.survey.panels.flatMap(({ facts }) => facts.recorded?.mean ?? []);

describe('files of readings that tell their days', () => {
  test.each([
    { visits: [dated(second, '2025-06-12'), dated(first, '2025-06-10')], late: '2025-06-12' },
    {
      visits: [
        dated(first, '2023-05-02'),
        dated(fourth, '2026-06-21'),
        dated(second, '2025-06-10'),
      ],
      late: '2026-06-21',
    },
  ])('are refused out of their order, two or more', ({ visits, late }) => {
    expect(compareFiles(requestOf({ visits, job })).value).toBeUndefined();
    expect(toldBy({ visits, job })).toEqual([
      expect.stringMatching(new RegExp(`^compare-files-order: .*named before it, on ${late}`, 'u')),
    ]);
  });

  test('are told the order to name them in', () => {
    const visits = [
      dated(first, '2023-05-02'),
      dated(fourth, '2026-06-21'),
      dated(second, '2025-06-10'),
    ];
    const [problem] = compareFiles(requestOf({ visits, job })).diagnostics;
    expect(problem?.hint).toMatch(/^leastcut compare visit-1\.csv visit-3\.csv visit-2\.csv; /u);
  });

  test('are taken in the order given where they are of one day, or the month may be either', () => {
    for (const [one, other] of [
      ['2026-06-20', '2026-06-20'],
      ['07/06/2026', '06/07/2026'],
    ] as const) {
      expect(toldBy({ visits: [dated(first, one), dated(second, other)], job })).toEqual([]);
    }
  });

  test('say so where the day of the visit is not between theirs', () => {
    const visits = [dated(first, '2026-06-20'), dated(second, '2026-06-21')];
    const told = (date: string) => codes(recording({ visits, job }, date));
    expect(told('2026-06-19')).toEqual(['warning compare-day-differs']);
    expect(told('2062-06-13')).toEqual(['warning compare-day-differs']);
    expect(told('2026-06-20')).toEqual([]);
    expect(told('2026-06-21')).toEqual([]);
    expect(codes(recording({ visits: [first, second], job }, '2062-06-13'))).toEqual([]);
  });
});

describe('film that rises from one of several visits to the next', () => {
  const visits = [first, fourth, second];

  test('is told of, and then no panel may go on and none is put on record', () => {
    expect(toldBy({ visits, job })).toEqual([
      expect.stringMatching(
        /^compare-film-gained: .*visit-3\.csv reads more film than .*visit-2\.csv, the visit before/u,
      ),
    ]);
    const result = compared({ visits, job });
    expect(new Set(result.panels.map(({ verdict }) => verdict))).toEqual(new Set(['unresolved']));
    expect(result.visit).toEqual([]);
    const page = renderText(compareBlocks(result, { unit: 'um', verbose: false }), {
      width: 80,
      paint: (piece) => piece,
    });
    expect(page).toMatch(/More film at a later visit: from visit-2\.csv to visit-3\.csv: \S/u);
    expect(codes(recording({ visits, job }, '2026-06-21'))).toContain(
      'warning compare-not-recorded',
    );
  });

  test('is not told of visits in their order', () => {
    expect(toldBy({ visits: [first, second, fourth], job })).toEqual([]);
    expect(compared({ visits: [first, second, fourth], job }).visit).toHaveLength(5);
  });
});

describe('a film record that knows of the readings', () => {
  test('is not given one visit twice, whatever day is said', () => {
    const again = { visits: [first, second], job, filmRecord: record };
    expect(codes(recording(again, '2025-06-13'))).toEqual(['warning compare-visit-again']);
    expect(codes(recording(again, '2025-06-12'))).toEqual([]);
    const { visits } = filmRecordFile(
      compared(again),
      '2025-06-13',
      requestOf(again).filmRecord?.value,
    );
    expect(visits.map(({ date }) => date)).toEqual(['2025-06-12']);
  });

  test('takes panels that were read anew in the place of what stood there', () => {
    const anew: Film = { ...worked(soundFilm, () => 1.5), roof: [117, 114, 118, 115, 120] };
    const bonnet = anew['bonnet'] ?? [];
    const boot = anew['boot'] ?? [];
    const partly = { visits: [first, readingsText({ bonnet, boot })], job, filmRecord: record };
    const whole = { ...partly, visits: [first, readingsText(anew)] };
    for (const again of [whole, partly]) {
      const told = recording(again, '2025-06-12');
      expect(codes(told)).toEqual(['warning compare-visit-again']);
      const before = requestOf(again).filmRecord?.value;
      const { visits } = filmRecordFile(compared(again), '2025-06-12', before);
      expect(visits).toHaveLength(1);
      const taken = (panel: string) =>
        visits[0]?.panels.find((one) => one.panel === panel)?.taken_um;
      expect([taken('roof'), taken('bonnet')]).toEqual([again === whole ? 2 : 1.5, 1.5]);
      expect(visits[0]?.panels).toHaveLength(5);
    }
  });

  test('is refused readings of which the last are those after a visit on it', () => {
    const stale = { visits: [third, second], job, filmRecord: record };
    expect(codes(recording(stale, '2026-06-21'))).toEqual(['error compare-visit-twice']);
    expect(toldBy(stale)[0]).toContain('what was read after the visit of 2025-06-12');
  });

  test('counts a visit once that is a part of what came off, and is not written with both', () => {
    const over = { visits: [first, fourth], job };
    const both = { ...over, filmRecord: record };
    expect(codes(compareFiles(requestOf(both)))).toEqual(['warning compare-visit-within']);
    expect(codes(recording(both, '2026-06-21'))).toEqual(['error compare-visit-twice']);
    expect(lost(compared(both))).toEqual(lost(compared(over)));
    expect(panelLeft(compared(both), 'roof').left?.budget).toBeCloseTo(
      panelLeft(compared(over), 'roof').left?.budget ?? 0,
      9,
    );
  });

  test('refuses readings that a longer visit on it contains', () => {
    const longer = recordOf(
      { visits: [dated(first, '2025-06-10'), dated(fourth, '2026-06-21')], job },
      '2026-06-21',
    );
    const part = {
      visits: [dated(first, '2025-06-10'), dated(second, '2025-06-12')],
      job,
      filmRecord: longer,
    };
    const end = { ...part, visits: [dated(third, '2026-01-10'), dated(fourth, '2026-06-20')] };
    const undated = { ...part, visits: [first, second] };
    for (const [one, day] of [
      [part, '2025-06-12'],
      [end, '2026-06-20'],
      [undated, '2025-06-12'],
    ] as const) {
      expect(codes(recording(one, day))).toEqual(['error compare-visit-twice']);
      expect(toldBy(one)[0]).toMatch(
        /^compare-visit-twice: the visit of 2026-06-21 on the record contains what came off from visit-1\.csv to visit-2\.csv/u,
      );
    }
  });

  test('doubts readings that lie between those of a longer visit on it, and refuses them by their days', () => {
    const longer = recordOf(
      { visits: [dated(first, '2025-06-10'), dated(fourth, '2026-06-21')], job },
      '2026-06-21',
    );
    const later = readingsText(worked(soundFilm, () => 2.6, 0.9));
    const middle = { visits: [second, later], job, filmRecord: longer };
    expect(codes(compareFiles(requestOf(middle)))).toEqual(['warning compare-visit-within']);
    expect(codes(recording(middle, '2026-01-01'))).toEqual(['warning compare-visit-within']);
    expect(toldBy(middle)[0]).toMatch(
      /^compare-visit-within: the visit of 2026-06-21 on the record began with more film and ended with less: it may contain what came off from visit-1\.csv to visit-2\.csv, then it may count twice/u,
    );
    const before = { ...middle, visits: [dated(second, '2025-09-01'), dated(later, '2025-09-02')] };
    expect(codes(compareFiles(requestOf(before)))).toEqual(['error compare-visit-twice']);
    const since = { ...middle, visits: [dated(second, '2026-09-01'), dated(later, '2026-09-02')] };
    expect(codes(compareFiles(requestOf(since)))).toEqual([]);
  });

  test('counts a visit before the first readings beside what came off', () => {
    const next = { visits: [third, fourth], job, filmRecord: record };
    expect(codes(recording(next, '2026-06-21'))).toEqual([]);
    expect(lost(compared(next))[0]).toBeCloseTo(1.5 + 2.6, 1);
    const onward = { visits: [second, fourth], job, filmRecord: record };
    expect(codes(recording(onward, '2026-06-21'))).toEqual([]);
  });

  test('holds every visit of a history within it', () => {
    const whole = recordOf({ visits: [third, fourth], job, filmRecord: record }, '2026-06-21');
    const over = { visits: [first, third, fourth], job, filmRecord: whole };
    expect(toldBy(over)).toEqual([
      expect.stringMatching(
        /^compare-visit-within: the visit of 2025-06-12, 2026-06-21 on the record/u,
      ),
    ]);
  });

  test('is told to hold a visit of a day between those of the readings', () => {
    const visits = [
      dated(readingsText(worked(soundFilm, () => 0.1, 0.5)), '2025-06-01'),
      dated(fourth, '2026-06-21'),
    ];
    expect(toldBy({ visits, job, filmRecord: record })).toEqual([
      expect.stringMatching(/^compare-visit-within: .*2025-06-12 on the record lies between/u),
    ]);
  });
});

describe('more off than might go', () => {
  const of = (taken: number) => {
    const after = readingsText(worked(soundFilm, (id) => (id === 'roof' ? taken : 0.5)));
    return compared({ visits: [first, after], job });
  };
  const might = panelLeft(of(0.5), 'roof').allowed?.most ?? 0;

  test('is in doubt between within and over, and says what might go', () => {
    const overruns = (taken: number) =>
      panelLeft(of(taken), 'roof').overruns.map(({ code }) => code);
    expect(overruns(might - 0.1)).toEqual([]);
    expect(overruns(might + 0.1)).toEqual(['perhaps-more-than-allowed']);
    expect(overruns(might + 3)).toContain('more-than-allowed');
    const doubtful = of(might + 0.1);
    expect(panelLeft(doubtful, 'roof').verdict).not.toBe('go-on');
    expect(doubtful.visit.find(({ panel }) => panel === 'roof')?.over_allowed).toBe('perhaps');
    const page = renderText(compareBlocks(doubtful, { unit: 'um', verbose: false }), {
      width: 80,
      paint: (piece) => piece,
    });
    expect(page.replace(/\s+/gu, ' ')).toContain(
      `Perhaps too much came off: roof: ${(might + 0.1).toFixed(1)} `,
    );
    expect(page.replace(/\s+/gu, ' ')).toContain(`${might.toFixed(2)} µm might go`);
  });
});

describe('more off than might go by means of panels', () => {
  test('is not known, on record, and the page says both figures', () => {
    const film = worked(soundFilm, () => 0, 8);
    const after = readingsText(worked(film, (id) => (id === 'roof' ? 8 : 1)));
    const result = compared({ visits: [readingsText(film), after], job, marked: false });
    const roof = panelLeft(result, 'roof');
    expect(roof.comparison.change?.resolved).toBe(true);
    expect(roof.comparison.change?.low).toBeLessThan(roof.allowed?.most ?? 0);
    expect(roof.comparison.change?.removed.value).toBeGreaterThan(roof.allowed?.most ?? 0);
    const written = (id: string) => result.visit.find(({ panel }) => panel === id)?.over_allowed;
    expect([written('roof'), written('boot')]).toEqual([null, false]);
    const page = renderText(compareBlocks(result, { unit: 'um', verbose: false }), {
      width: 80,
      paint: (piece) => piece,
    });
    expect(page.replace(/\s+/gu, ' ')).toMatch(
      /Not known: whether too much came off: roof \(8\.0 ± \d\.\d for \d\.\d\d µm\)\. Means of panels/u,
    );
  });
});

describe('a figure over what might go by means, of a loss that is not seen', () => {
  const film = worked(soundFilm, () => 0, 8);
  const planned = (budget: number) => planOfRoof({ sets: 1, removal: 0.5, logSd: 0.55, budget });
  const roofWith = (allowed: number) => {
    const after = readingsText(worked(film, () => 1.2));
    const visits = [readingsText(film), after];
    const result = compared({ visits, job, marked: false, plan: planned(allowed) });
    const page = renderText(compareBlocks(result, { unit: 'um', verbose: false }), {
      width: 80,
      paint: (piece) => piece,
    });
    return { roof: panelLeft(result, 'roof'), page: page.replace(/\s+/gu, ' ') };
  };

  test('is not known either, and no leave', () => {
    const { roof, page } = roofWith(1);
    expect(roof.comparison.change?.resolved).toBe(false);
    expect(page).toMatch(
      /Not known: whether too much came off: roof \(1\.2 ± \d\.\d for 1\.00 µm\)/u,
    );
    expect(roof.verdict).toBe('unresolved');
    expect(page).toContain('Cannot tell: roof: perhaps more came off than might go');
  });

  test('is nothing where it lies under what might go', () => {
    const { roof, page } = roofWith(2);
    expect(page).not.toContain('Not known');
    expect(roof.verdict).toBe('go-on');
  });
});

describe('the chance that the clear is under its floor, by means', () => {
  test('is that of the clear which the same page tells', () => {
    const film = worked(soundFilm, () => 0, 8);
    const after = readingsText(worked(film, (id) => (id === 'roof' ? 16 : 1)));
    const roof = panelLeft(
      compared({ visits: [readingsText(film), after], job, marked: false }),
      'roof',
    );
    const told = roof.overruns.find(({ code }) => code === 'clear-at-risk')?.value;
    const { topcoat = null, boundBy } = roof.left ?? {};
    if (topcoat === null) throw new Error('a topcoat is known');
    expect(boundBy?.code).toBe('clear');
    expect(boundBy?.text).toContain(
      `${topcoat.clear.mean.toFixed(1)} ± ${topcoat.clear.sd.toFixed(1)} µm expected`,
    );
    expect(told).toBeCloseTo(topcoatRisk(topcoat, { median: micrometres(0), logSd: 0.5 }), 9);
  });
});

describe('more that may go than before the work', () => {
  const more = (before: number, left: number, set = 0.28) => {
    const [first, now] = [before, left].map((budget) => ({
      budget,
      boundBy: remark('life', 'its life', 0),
    })) as unknown as [PanelSurvey, Allowance];
    const found = moreThanBefore(first, now, { median: micrometres(set), logSd: 0.5 });
    return [found, moreReasons(first, now, found)[0]?.text];
  };

  test('is to be read again first only where less than one more set might go before', () => {
    expect(more(2, 2)).toEqual(['no', undefined]);
    expect(more(1.73, 1.77)).toEqual([
      'either-allows',
      expect.stringMatching(/^1\.77 µm may go, 1\.73 µm before .* not the paint$/u),
    ]);
    expect(more(0.1, 1.77)).toEqual([
      'in-doubt',
      expect.stringMatching(/not the paint; read it again before more comes off$/u),
    ]);
    expect(moreThanBefore(undefined, {} as Allowance, { median: micrometres(1), logSd: 0 })).toBe(
      'no',
    );
  });
});

describe('two panels that were exchanged in one of the files', () => {
  const { roof = [], boot = [], ...others } = worked(soundFilm, () => 1, 0.5);
  const uneven = { ...soundFilm, roof: [109, 126, 118, 112, 130], boot: [124, 108, 121, 131, 110] };
  const after = worked(uneven, () => 1, 0.5);
  const visits = [
    readingsText(uneven),
    readingsText({ ...after, roof: after['boot'] ?? boot, boot: after['roof'] ?? roof, ...others }),
  ];

  test('are not told anything of until it is settled, and leave the others as they are', () => {
    expect(toldBy({ visits, job })).toEqual([
      'compare-points-swapped: marked points fit far better another way round: boot lid with roof',
    ]);
    const result = compared({ visits, job });
    expect(panelLeft(result, 'roof')).toMatchObject({ left: null, verdict: 'unresolved' });
    expect(panelLeft(result, 'boot').reasons[0]?.text).toMatch(/^points fit those of the roof/u);
    expect(result.visit.map(({ panel }) => panel)).not.toContain('roof');
    const sound = compared({ visits: [readingsText(uneven), readingsText(after)], job });
    const half = (of: typeof result) => panelLeft(of, 'bonnet').comparison.change?.detectable.half;
    expect(half(result)).toBeLessThan(1.5 * (half(sound) ?? 0));
    const page = renderText(compareBlocks(result, { unit: 'um', verbose: false }), {
      width: 80,
      paint: (piece) => piece,
    });
    expect(page.replace(/\s+/gu, ' ')).toMatch(/Settle first: .* exchanged\. Until then nothing/u);
    expect(page).toMatch(/Allowed, not asked for: /u);
    expect(page).not.toContain('all panels');
    expect(page.replace(/\s+/gu, ' ')).toMatch(
      /budget left on bonnet, front right door, front left door\./u,
    );
  });
});
