/** One amount that all panels lost more than was to go names the gauge, and frees nothing. */
import { describe, expect, test } from 'vitest';
import { compareRecordSchema } from '../../../src/formats/records/compare-record.ts';
import { renderText } from '../../../src/render/text.ts';
import { compareBlocks } from '../../../src/report/compare/compare-blocks.ts';
import { compareRecord } from '../../../src/report/compare/compare-record.ts';
import { compareObservations } from '../../../src/tasks/compare/compare-observations.ts';
import { type Comparing, compared, readingsText, soundFilm, toldBy, worked } from '../comparing.ts';

const job = { finish: 'clear-over-base', taken_um: 0 };

/** The plan's removal of each panel; 0 leaves it alone. */
const planOf = (removals: Readonly<Record<string, number>>): string =>
  JSON.stringify({
    schema: 'leastcut/plan/1',
    vehicle: null,
    panels: Object.entries(removals).map(([panel, median]) => ({
      panel,
      verdict: median === 0 ? 'leave' : 'polish',
      steps:
        median === 0
          ? []
          : [{ machine: 'da', pad: 'foam-soft', product: 'fine', sets: 4, removal_um: median }],
      removal_um: { median, high: median * Math.exp(1.6449 * 0.55) },
      budget_um: 3.5,
      zones: [],
    })),
  });

const uneven = { bonnet: 3, roof: 3, boot: 1.2, 'door-front-left': 2, 'door-front-right': 0 };
const visitsOf = (removed: (panel: string) => number) => [
  readingsText(soundFilm),
  readingsText(worked(soundFilm, removed)),
];
const plannedOf = (panel: string): number => uneven[panel as keyof typeof uneven];
const shifted = (by: number): Comparing => ({
  visits: visitsOf((panel) => plannedOf(panel) + by),
  job,
  plan: planOf(uneven),
});
const pageOf = (comparing: Comparing): string =>
  renderText(compareBlocks(compared(comparing), { unit: 'um', verbose: false }), {
    width: 80,
    paint: (text: string) => text,
  }).replace(/\s+/gu, ' ');

describe('one amount that all panels lost more than was planned', () => {
  test('is told with its figure as what the gauge most likely did, and how that is checked', () => {
    const { shift } = compared(shifted(3));
    expect(shift).toMatchObject({ over: 'plan', parts: 5, leftAlone: 1, asByRate: false });
    expect(shift?.by).toBeCloseTo(3, 1);
    expect(pageOf(shifted(3))).toMatch(
      /First check the gauge: all 5 panels lost about the same, 3\.0 ± 0\.\d µm more than was planned, one that the plan leaves alone too\. .*likeliest cause\. Read shims, and a place that no pad touched/u,
    );
    expect(toldBy(shifted(3)).join()).toContain('compare-common-shift');
  });

  test('frees nothing', () => {
    // Little enough that no panel surely lost too much: what is allowed waits all the same.
    const some = shifted(1.5);
    const { panels, shift } = compared(some);
    expect(shift).not.toBeNull();
    expect(panels.some(({ verdict }) => verdict === 'go-on')).toBe(true);
    expect(pageOf(some)).toContain('Allowed once that is known, not asked for');
    expect(pageOf(some)).not.toContain('Allowed, not asked for');
  });

  test('is not told of work that went as planned, of one panel, or of a factor on what was planned', () => {
    const one = (panel: string) => plannedOf(panel) + (panel === 'roof' ? 4 : 0);
    const twice = (panel: string) => 2.5 * plannedOf(panel);
    for (const removed of [plannedOf, one, twice]) {
      const given = { visits: visitsOf(removed), job, plan: planOf(uneven) };
      expect(compared(given).shift).toBeNull();
      expect(toldBy(given).join()).not.toContain('compare-common-shift');
    }
  });

  test('leaves open whether steps cut more where they were alike everywhere', () => {
    const even = Object.fromEntries(Object.keys(soundFilm).map((id) => [id, 2.5]));
    const given = { visits: visitsOf(() => 5.5), job, plan: planOf(even) };
    expect(compared(given).shift).toMatchObject({ over: 'plan', leftAlone: 0, asByRate: true });
    expect(pageOf(given)).toContain('and so do steps that all cut more than was thought');
  });
});

describe('one amount that all panels lost less than was planned', () => {
  const hidden = shifted(-3);

  test('hides a loss: it is told with its figure as what the gauge most likely did, and nothing is freed', () => {
    const { shift } = compared(hidden);
    expect(shift).toMatchObject({ over: 'plan', parts: 5, leftAlone: 1, asByRate: false });
    expect(shift?.by).toBeCloseTo(-3, 1);
    expect(pageOf(hidden)).toMatch(
      /First check the gauge: all 5 panels lost about the same, 3\.0 ± 0\.\d µm less than was planned, .*likeliest cause if the earlier file is named first\. As much more then came off than is told here\./u,
    );
    expect(pageOf(hidden)).not.toContain('Allowed, not asked for');
    expect(toldBy(hidden).join()).toMatch(
      /visit-2\.csv shows less off since visit-1\.csv by about one amount on all 5 panels, 3\.0/u,
    );
  });

  test('is not told of hard paint, which shows as a factor, nor of paint that was added', () => {
    const hard = (panel: string) => 0.3 * plannedOf(panel);
    const painted = (panel: string) => plannedOf(panel) - 40;
    const even = Object.fromEntries(Object.keys(soundFilm).map((id) => [id, 3]));
    for (const given of [
      { visits: visitsOf(hard), job, plan: planOf(uneven) },
      { visits: visitsOf(() => 0.5), job, plan: planOf(even) },
      { visits: visitsOf(painted), job, plan: planOf(uneven) },
    ]) {
      expect(compared(given).shift).toBeNull();
    }
  });
});

describe('a rate', () => {
  const day = { date: '2026-11-27', vehicle: 'FH-7' };
  const even = Object.fromEntries(Object.keys(soundFilm).map((id) => [id, 2.5]));

  test.each([3, -3])(
    'is neither learned nor called wrong where only the gauge shows %s µm on all panels',
    (by) => {
      const result = compared(shifted(by));
      expect(compareObservations(result, day)).toEqual([]);
      expect(result.rates.map(({ looks }) => looks)).toEqual([null]);
      expect(pageOf(shifted(by))).toContain('--rates-out keeps none of this visit');
      expect(pageOf(shifted(by))).not.toContain('its rate says');
    },
  );

  test('is kept where it explains as much: rates without the cars that lost most would be too low', () => {
    const given = { visits: visitsOf(() => 5.5), job, plan: planOf(even) };
    expect(compareObservations(compared(given), day)).toHaveLength(5);
    expect(pageOf(given)).toContain('may be too high, by which later plans take less');
    expect(pageOf(given)).toMatch(/cuts more than its rate says: .* if the gauge did not shift\./u);
  });

  test('is kept of work that went as planned', () => {
    const given = { visits: visitsOf(plannedOf), job, plan: planOf(uneven) };
    expect(compareObservations(compared(given), day)).toHaveLength(4);
  });
});

describe('the record', () => {
  const recordOf = (comparing: Comparing) =>
    compareRecordSchema.parse(
      compareRecord(compared(comparing), { version: '0', diagnostics: [] }),
    ) as { readonly common_shift: unknown };

  test('has the amount with its interval, its sign and what shows it', () => {
    const { by, within } = compared(shifted(-3)).shift ?? { by: 0, within: 0 };
    expect(recordOf(shifted(-3)).common_shift).toEqual({
      by_um: {
        mean: expect.closeTo(by, 6),
        low: expect.closeTo(by - within, 6),
        high: expect.closeTo(by + within, 6),
      },
      over: 'plan',
      n_panels: 5,
      n_left_alone: 1,
      as_by_rate: false,
    });
  });

  test('has null where all went as planned', () => {
    const given = { visits: visitsOf(plannedOf), job, plan: planOf(uneven) };
    expect(recordOf(given).common_shift).toBeNull();
  });
});

describe('without a plan', () => {
  test('what all lost is held against what might go, and told where most lost more', () => {
    const { shift } = compared({ visits: visitsOf(() => 7), job });
    expect(shift).toMatchObject({ over: 'nothing', leftAlone: 0 });
    expect(shift?.by).toBeCloseTo(7, 1);
    expect(pageOf({ visits: visitsOf(() => 7), job })).toMatch(/7\.0 ± 0\.\d µm in all/u);
    expect(compared({ visits: visitsOf(() => 2.5), job }).shift).toBeNull();
  });

  test('a plan of other readings counts for none', () => {
    const other = JSON.stringify({
      ...JSON.parse(planOf(uneven)),
      inputs: [{ file: 'other.csv', sha256: 'f'.repeat(64), decisions: {} }],
    });
    const given = { visits: visitsOf(() => 7), job, plan: other };
    expect(compared(given).planOfOthers.length).toBeGreaterThan(0);
    expect(compared(given).shift).toMatchObject({ over: 'nothing' });
  });

  test('nothing is told where a panel was not compared, or of two panels', () => {
    const few = { bonnet: soundFilm['bonnet'] ?? [], roof: soundFilm['roof'] ?? [] };
    const visits = [readingsText(few), readingsText(worked(few, () => 7))];
    expect(compared({ visits, job }).shift).toBeNull();
    const gained = visitsOf((panel) => (panel === 'roof' ? -7 : 7));
    expect(compared({ visits: gained, job }).shift).toBeNull();
  });
});
