/** The page, the record and the table of a comparison, over everything that one can be of. */
import { describe, expect, test } from 'vitest';
import { compareRecordSchema } from '../../src/formats/records/compare-record.ts';
import { renderText } from '../../src/render/text.ts';
import { compareBlocks } from '../../src/report/compare/compare-blocks.ts';
import { compareTable } from '../../src/report/compare/compare-csv.ts';
import { compareRecord } from '../../src/report/compare/compare-record.ts';
import {
  type Comparing,
  compared,
  type Film,
  panelLeft,
  readingsText,
  soundFilm,
  worked,
} from '../tasks/comparing.ts';

const step = (removal: number, product = 'medium') => ({
  machine: 'da',
  pad: 'foam-medium',
  product,
  sets: 3,
  removal_um: removal,
});
const foretold = (panel: string, median: number, rest: object = {}) => ({
  panel,
  verdict: median > 0 ? 'polish' : 'leave',
  steps: median > 0 ? [step(median)] : [],
  removal_um: { median, high: 2.4 * median },
  zones: [],
  ...rest,
});
const planOf = (...panels: readonly object[]): string =>
  JSON.stringify({ schema: 'leastcut/plan/1', vehicle: null, panels });

const zoned: Film = { ...soundFilm, roof: [112, 115, 110, 250, 254, 252] };
const before = readingsText(soundFilm);
const afterOf = (removed: (panel: string) => number, film = soundFilm): string =>
  readingsText(worked(film, removed));
const known = { finish: 'clear-over-base', taken_um: 0 };

const cases: Readonly<Record<string, Comparing>> = {
  'marked points': { visits: [before, afterOf(() => 2.5)] },
  'no point found again': { visits: [before, afterOf(() => 2.5)], marked: false, job: known },
  'three visits': { visits: [before, afterOf(() => 1), afterOf(() => 3)] },
  'a panel in two zones': {
    visits: [readingsText(zoned), afterOf(() => 3, zoned)],
    plan: planOf(
      foretold('roof', 3, {
        zones: [
          { ...foretold('roof', 3), zone: 'thinner' },
          { ...foretold('roof', 0), zone: 'thicker' },
        ],
      }),
    ),
    job: known,
  },
  'a plan that is off': {
    visits: [before, afterOf((panel) => ({ roof: 12, boot: -7 })[panel] ?? 6)],
    plan: planOf(foretold('roof', 3), foretold('bonnet', 3), foretold('boot', 3)),
    job: known,
  },
  'a plan that took too much for granted': {
    visits: [before, afterOf(() => 0.6)],
    plan: planOf(foretold('roof', 4), foretold('bonnet', 4), foretold('boot', 0)),
    job: known,
  },
  'a plan whose rate is a little high': {
    visits: [before, afterOf((panel) => (panel === 'boot' ? 0 : 1.6))],
    plan: planOf(foretold('roof', 4), foretold('bonnet', 4), foretold('boot', 0)),
    job: known,
  },
  'a plan of a tried rate that is as high': {
    visits: [before, afterOf((panel) => (panel === 'boot' ? 0 : 1.6))],
    plan: planOf(
      ...['roof', 'bonnet'].map((panel) =>
        foretold(panel, 4, { removal_um: { median: 4, high: 6.4 } }),
      ),
      foretold('boot', 0),
    ),
    job: known,
  },
  'a plan of other panels': { visits: [before, afterOf(() => 2)], plan: planOf() },
  'nothing in common': {
    visits: [readingsText({ roof: [118, 119, 120] }), readingsText({ boot: [115, 117, 116] })],
  },
  'a panel read only near its edges the second time': {
    visits: [
      before,
      `${afterOf(() => 2, { bonnet: soundFilm['bonnet'] ?? [] })
        .split('\n')
        .map((line, i) => `${line},${i === 0 ? 'place' : 'face'}`)
        .join('\n')}\nroof,1,96.0,edge`,
    ],
  },
  'a thin car': { visits: [before, afterOf(() => 36)] },
  gloss: {
    visits: [before, afterOf(() => 2.5)],
    gloss: [
      'panel,angle_deg,before_gu,after_gu,before_haze,after_haze',
      'roof,60,80,91,,',
      'roof,60,82,92,,',
      'bonnet,20,60,80,30,10',
      'boot,60,5,6,,',
    ].join('\n'),
  },
  'points that were not read again': {
    visits: [
      `${before}\nroof,e1,95.0`,
      afterOf(() => 2, { ...soundFilm, bonnet: [117, 121, 115] }),
    ],
  },
};

type Row = { readonly panel: string; readonly verdict: string };

describe.each(Object.entries(cases))('a comparison of %s', (_, comparing) => {
  const result = compared(comparing);
  const record = compareRecord(result, { version: '0', diagnostics: [] });
  const pageIn = (unit: 'um' | 'mil', verbose = false): string =>
    renderText(compareBlocks(result, { unit, verbose }), { width: 80, paint: (text) => text });

  test('has a record that keeps to its schema', () => {
    expect(compareRecordSchema.safeParse(record).error?.issues ?? []).toEqual([]);
    expect(JSON.stringify(record)).not.toMatch(/NaN|Infinity|undefined/);
  });

  test('has a page of at most 48 lines, in either unit, without a figure that is none', () => {
    for (const page of [pageIn('um'), pageIn('mil'), pageIn('um', true)]) {
      expect(page).not.toMatch(/NaN|Infinity|undefined|\[object/);
    }
    expect(pageIn('um').split('\n').length).toBeLessThanOrEqual(48);
    expect(pageIn('mil')).not.toMatch(/\d µm/);
  });

  test('says of each panel the same in the table as in the record', () => {
    const { columns, rows } = compareTable(result);
    const { panels } = record as {
      readonly panels: readonly (Row & { readonly zones: readonly Row[] })[];
    };
    const parts = panels.flatMap((one) => (one.zones.length === 0 ? [one] : one.zones));
    const [panel, verdict] = ['panel', 'verdict'].map((name) => columns.indexOf(name));
    expect(rows.map((row) => [row[panel ?? -1], row[verdict ?? -1]])).toEqual(
      parts.map((part) => [part.panel, part.verdict]),
    );
    expect(rows.every((row) => row.length === columns.length)).toBe(true);
  });
});

describe('the page says', () => {
  /** Its words, however they are folded. */
  const page = (name: keyof typeof cases): string =>
    renderText(
      compareBlocks(compared(cases[name] ?? { visits: [] }), { unit: 'um', verbose: false }),
      { width: 200, paint: (text) => text },
    ).replaceAll(/\s+/g, ' ');

  test('which panels lost more or less than was foretold, and whose rate looks wrong', () => {
    const off = page('a plan that is off');
    expect(off).toContain('more than might go on bonnet (6.0 for 3.0 µm), roof (12.0 for 3.0 µm)');
    expect(off).toContain('da/foam-medium/medium, most of the work on 2 panels, cuts more');
    // Film that a gauge hides looks so too, and another set would be over what may go.
    expect(page('a plan that took too much for granted')).toMatch(
      /cuts less than its rate says: .* So it looks where the gauge reads too high by now: check it on a shim before another set\./u,
    );
  });

  test('that a rate is no more off than it was held to be, and sends nobody to look for a fault of the gauge', () => {
    const little = page('a plan whose rate is a little high');
    expect(little).toMatch(
      /cuts less than its rate says: ×\s0\.\d+ .{1,20} what was foretold, no more than the plan held its rate to be off by\./u,
    );
    expect(little).not.toContain('shim before another set');
    expect(page('a plan of a tried rate that is as high')).toMatch(
      /cuts less than its rate says: .* check it on a shim before another set\./u,
    );
  });

  test('which panel a rate that looks wrong rests on, where the panels disagree', () => {
    const some: Comparing = {
      visits: [before, afterOf((panel) => ({ roof: 6.9, bonnet: 2.9 })[panel] ?? 0)],
      plan: planOf(foretold('roof', 3), foretold('bonnet', 3)),
      job: known,
    };
    const of = (panels: readonly string[]): string =>
      renderText(compareBlocks(compared({ ...some, panels }), { unit: 'um', verbose: false }), {
        width: 400,
        paint: (text) => text,
      }).replaceAll(/\s+/g, ' ');
    expect(of([])).toContain(
      'most of the work on 2 panels: × 2.30 what was foretold on roof, × 0.97 on bonnet: not the rate alone.',
    );
    expect(of([])).toMatch(/Allowed once that is known, not asked for: [^:]* on [^:]*bonnet/);
    const bonnet = of(['bonnet']);
    expect(bonnet).not.toContain('Rate:');
    expect(bonnet).toContain('Against the plan: within what plan and readings may be off by;');
    expect(bonnet).not.toContain('once that is known');
  });

  test('of many panels that lost too much what each lost, and which limits they are beyond', () => {
    const thin = page('a thin car');
    expect(thin).toMatch(
      /^\S.* Too much came off: for what might go: bonnet \(36\.0 ± [\d.]+ for [\d.]+ µm\), .*roof \(36\.0 ± /,
    );
    expect(thin).toMatch(/More is gone than may come off over a life on each\./);
    expect(thin).toMatch(/Do not work them further\./);
  });

  test('that film came on, and that nothing follows from that panel', () => {
    const off = page('a plan that is off');
    expect(off).toMatch(/Cannot tell: boot lid: reads more film than before: first find out why/);
    expect(off).toContain('boot lid: reads 7.0 µm more than before');
  });

  test('where less may go than a survey of the later readings says, and why', () => {
    expect(page('a plan that is off')).toMatch(
      /Less may go: than a survey of the later readings says, boot lid \([\d.]+ for [\d.]+ µm\): more is held to be gone than was measured/,
    );
  });

  test('that one more set is allowed and not asked for, and which step that is', () => {
    expect(page('a plan that took too much for granted')).toMatch(
      /Allowed, not asked for: one more set of da\/foam-medium\/medium \(the step that was to take most, about [\d.]+ µm\) would keep every limit on /,
    );
    expect(page('marked points')).not.toMatch(/\bgo on\b/i);
  });

  test('that without a plan the mildest set is a measure of what is left, and that a plan is needed', () => {
    const bare = page('marked points');
    expect(bare).toMatch(
      /Allowed, not asked for: a set of the mildest combination there is \(da\/foam-soft\/fine, about 0\.28 µm\) fits the budget left on /,
    );
    expect(bare).toMatch(
      /Mind: No plan is named: the mildest combination of the ladder only measures what is left, and is no step to take\. What a panel needs, a plan says: make one before more comes off, and name it with --plan\./,
    );
    expect(bare).toContain('mildest set');
    expect(bare).not.toContain('one more set');
    const planned = page('a plan that took too much for granted');
    expect(planned).toContain('one more set');
    expect(planned).not.toMatch(/mildest set|No plan is named/);
  });

  test('what each zone of a panel comes to', () => {
    expect(page('a panel in two zones')).toContain('Stop: roof (thicker zone): nothing may go');
  });

  test('when nothing could be compared, and why', () => {
    const nothing = page('nothing in common');
    expect(nothing).toContain('Nothing could be compared.');
    expect(nothing).toContain('Not compared: roof: not read again; boot lid: not read before.');
    expect(page('a plan of other panels')).toContain('none of its panels was compared');
  });

  test('of a panel with no common ground that there is none, and no word to go on', () => {
    const name = 'a panel read only near its edges the second time';
    expect(page(name)).toContain('roof: no point on its face at both times.');
    const roof = panelLeft(compared(cases[name] ?? { visits: [] }), 'roof');
    expect([roof.verdict, roof.left, roof.held]).toEqual(['unresolved', null, null]);
    expect(roof.reasons.map(({ code }) => code)).toEqual(['not-compared']);
  });

  test('that gloss is the look, and the angle to read at besides', () => {
    const gloss = page('gloss');
    expect(gloss).toContain('Gloss tells of the look and not of the film.');
    expect(gloss).toContain('Over 70 GU at 60° read at 20° too');
    expect(gloss).toContain('Under 10 GU at 60° read at 85° too');
  });
});
