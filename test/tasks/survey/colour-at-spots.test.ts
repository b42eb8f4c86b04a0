/** What a test spot with colour on the pad, or without, says of the car: by what its marks read, not by its panel's word. */
import { describe, expect, it } from 'vitest';
import { surveyFiles } from '../../../src/tasks/survey/survey-files.ts';
import { type Comparing, requestOf } from '../comparing.ts';

const STEPS = [-4, -2, 0, 2, 4];
const PANELS = ['roof', 'boot', 'door front right', 'door rear right', 'door front left'];
type Points = readonly number[];
const around = (film: number): Points => STEPS.map((step) => film + step);

const readingsOf = (bonnet: Points, day?: string): string =>
  [
    `panel,point,reading_um${day === undefined ? '' : ',time'}`,
    ...[
      ['bonnet', bonnet] as const,
      ...PANELS.map((panel) => [panel, around(118)] as const),
    ].flatMap(([panel, films]) =>
      films.map((film, i) => [panel, i + 1, film, ...(day === undefined ? [] : [day])].join(',')),
    ),
    '',
  ].join('\n');

const HEAD =
  'spot,panel,machine,pad,product,sets,mark,before_um,after_um,cleared_pct,colour_on_pad';
const spotAt = (film: number | null, colour: string, panel = 'bonnet', name = 'A'): string =>
  [1, 2, 3, 4]
    .map((mark) => {
      const films = film === null ? ',' : `${film + mark / 4},${film + mark / 4 - 1.1}`;
      return `${name},${panel},da,foam-medium,medium,2,${film === null ? '' : mark},${films},60,${colour}`;
    })
    .slice(0, film === null ? 1 : 4)
    .join('\n');

function surveyed(
  bonnet: Points,
  spots: readonly string[],
  rest: Partial<Comparing> = {},
  day?: string,
) {
  const request = requestOf({
    visits: [readingsOf(bonnet, day)],
    job: { finish: 'clear-over-base' },
    ...(spots.length === 0 ? {} : { spots: [HEAD, ...spots, ''].join('\n') }),
    ...rest,
  });
  const outcome = surveyFiles(request);
  const [vehicle] = outcome.value ?? [];
  if (vehicle === undefined) throw new Error(outcome.diagnostics[0]?.message);
  const { survey, assumptions } = vehicle.result;
  const panelOf = (name: string) => {
    const found = survey.panels.find(({ panel }) => panel.id === name);
    if (found === undefined) throw new Error(`no ${name}`);
    return found;
  };
  const { budget, boundBy } = panelOf('roof');
  return {
    panelOf,
    isHeld: budget === 0 && boundBy.code === 'colour-at-spot',
    roof: budget,
    said: assumptions.map(({ code, text }) => `${code}: ${text}`).join('\n'),
  };
}

const isHeld = (...args: Parameters<typeof surveyed>): boolean => surveyed(...args).isHeld;

describe('colour on the pad holds the whole car', () => {
  it('where the marks lie in factory film, whatever the panel is called', () => {
    const inFactory = [spotAt(117, 'yes')];
    expect(isHeld(around(118), inFactory)).toBe(true);
    // One point on filler; two films; a wrap; repaint all over, as it was painted later.
    expect(isHeld([640, 119, 117, 116, 115], inFactory)).toBe(true);
    expect(isHeld([190, 191, 115, 116, 113], inFactory)).toBe(true);
    const covered = { finish: 'clear-over-base', panels: { bonnet: { covered: true } } };
    expect(isHeld(around(118), inFactory, { job: covered })).toBe(true);
  });

  it('not where they lie in repaint, and the panel surely is', () => {
    expect(isHeld(around(240), [spotAt(240, 'yes')])).toBe(false);
    expect(isHeld([230, 231, 115, 116, 113], [spotAt(230, 'yes')])).toBe(false);
    // By a hair over the line, it may be factory film.
    expect(isHeld(around(159.5), [spotAt(162, 'yes')])).toBe(true);
  });

  it('without marks, but where the panel is surely repaint as a whole', () => {
    expect(isHeld(around(118), [spotAt(null, 'yes')])).toBe(true);
    expect(isHeld(around(240), [spotAt(null, 'yes')])).toBe(false);
    expect(isHeld([230, 231, 115, 116, 113], [spotAt(null, 'yes')])).toBe(true);
  });

  it('not where the job states that the panel was painted, nor on paint without a clear', () => {
    const painted = { finish: 'clear-over-base', panels: { bonnet: { painted_days_ago: 400 } } };
    expect(isHeld(around(118), [spotAt(117, 'yes')], { job: painted })).toBe(false);
    const own = { finish: 'clear-over-base', panels: { bonnet: { finish: 'single-stage-solid' } } };
    expect(isHeld(around(118), [spotAt(117, 'yes')], { job: own })).toBe(false);
  });

  it('until a panel has a spot without colour in its own factory film', () => {
    const both = (film: number | null) => [
      spotAt(117, 'yes', 'roof', 'R'),
      spotAt(film, 'no', 'bonnet', 'B'),
    ];
    const thinnerOf = (bonnet: Points, film: number | null) =>
      surveyed(bonnet, both(film)).panelOf('bonnet').zones[0]?.boundBy.code;
    expect(surveyed(around(118), both(118)).panelOf('bonnet').budget).toBeGreaterThan(1);
    expect(surveyed(around(118), both(118)).panelOf('boot').budget).toBe(0);
    const twoFilms = [230, 231, 115, 116, 113];
    expect(thinnerOf(twoFilms, 230)).toBe('colour-at-spot');
    expect(thinnerOf(twoFilms, null)).toBe('colour-at-spot');
    expect(thinnerOf(twoFilms, 115)).not.toBe('colour-at-spot');
  });
});

describe('a spot on record that is older than the paint of its panel', () => {
  const recordOf = (film: number, colour: boolean): string =>
    JSON.stringify({
      schema: 'leastcut/film-record/1',
      visits: [
        {
          date: '2026-04-02',
          panels: [],
          spots: [
            {
              spot: 'A',
              panel: 'bonnet',
              combination: 'da/foam-medium/medium',
              sets: 2,
              marks: [1, 2, 3, 4].map((mark) => ({
                mark: `${mark}`,
                before_um: film + mark / 4,
                after_um: film + mark / 4 - 1.1,
              })),
              cleared_pct: 60,
              colour_on_pad: colour,
              taken_um: 1.1,
              taken_sd_um: 0.8,
            },
          ],
        },
      ],
    });
  const job = { finish: 'clear-over-base', panels: { bonnet: { painted_days_ago: 120 } } };
  const after = (film: number, colour: boolean, day?: string, name = 'A') =>
    surveyed(
      around(177),
      // One that reads unlike its panel cannot be named again: it counts by its record.
      film === 177 ? [spotAt(film, colour ? 'yes' : 'no', 'bonnet', name)] : [],
      { job, filmRecord: recordOf(film, colour) },
      day,
    );

  it('frees nothing of it, and holds nothing there', () => {
    const { panelOf, said } = after(177, false, '2027-04-01');
    expect([panelOf('bonnet').budget, panelOf('bonnet').boundBy.code]).toEqual([0, 'test-spot']);
    expect(said).toContain('older than the paint of their panel');
    const held = after(117, true, '2027-04-01');
    expect(held.panelOf('bonnet').boundBy.code).not.toBe('colour-at-spot');
    expect(held.isHeld).toBe(true);
  });

  it('frees nothing under another name either', () => {
    expect(after(177, false, '2027-04-01', 'A again').panelOf('bonnet').budget).toBe(0);
  });

  it('frees the panel where it is younger than that paint', () => {
    const sameDay = after(177, false, '2026-07-31');
    expect(sameDay.panelOf('bonnet').boundBy.code).toBe('test-spot');
    expect(sameDay.said).toContain('perhaps older than the paint');
    const younger = after(177, false, '2026-07-30');
    expect(younger.panelOf('bonnet').budget).toBeGreaterThan(1);
    expect(younger.said).not.toContain('older than the paint');
  });

  it('frees nothing either where no day tells which came first, and is said to', () => {
    const { panelOf, said } = after(177, false);
    expect(panelOf('bonnet').budget).toBe(0);
    expect(said).toContain('perhaps older than the paint of their panel');
    expect(after(117, true).isHeld).toBe(true);
  });
});

describe('no colour on the pad where a finish without a clear is stated', () => {
  const job = { finish: 'single-stage-solid' };
  const roofOf = (finish: string, colour: string, bonnet = 118): number =>
    surveyed(around(bonnet), [spotAt(bonnet, colour)], { job: { finish } }).roof;

  it('lets no more go than either finish would', () => {
    const doubted = surveyed(around(118), [spotAt(118, 'no')], { job });
    expect(doubted.panelOf('bonnet').facts.finish).toBe('unknown');
    expect(doubted.panelOf('bonnet').facts.clearShownAt).toEqual(['A']);
    expect(doubted.panelOf('roof').facts.finish).toBe('unknown');
    expect(doubted.roof).toBe(roofOf('unknown', 'no'));
    expect(doubted.roof).toBeLessThan(roofOf('single-stage-solid', 'yes') - 0.1);
  });

  it('is no doubt where colour came, where nobody said it, and on repaint', () => {
    for (const [film, colour] of [
      [118, 'yes'],
      [118, ''],
      [240, 'no'],
    ] as const) {
      const { panelOf } = surveyed(around(film), [spotAt(film, colour)], { job });
      expect(panelOf('roof').facts.finish).toBe('single-stage-solid');
    }
  });

  it('is of the panel alone where its finish is stated of that panel', () => {
    const own = { finish: 'clear-over-base', panels: { bonnet: { finish: 'single-stage-solid' } } };
    const { panelOf } = surveyed(around(118), [spotAt(118, 'no')], { job: own });
    expect(panelOf('bonnet').facts.finish).toBe('unknown');
    expect(panelOf('roof').facts.finish).toBe('clear-over-base');
  });
});

describe('a spot of which every mark rose', () => {
  const rising = (panel: string) =>
    [1, 2, 3, 4]
      .map((mark) => `U,${panel},da,foam-medium,medium,2,${mark},${240 + mark},${248 + mark},85,no`)
      .join('\n');

  it('frees no repaint, and the panel says why', () => {
    const { panelOf } = surveyed(around(240), [rising('bonnet')]);
    expect(panelOf('bonnet').budget).toBe(0);
    expect(panelOf('bonnet').boundBy.text).toBe(
      'all marks of test spot U read more after than before: it frees nothing',
    );
  });

  it('bears no clear out', () => {
    const risen = rising('bonnet').replaceAll('24', '11');
    const { panelOf } = surveyed(around(118), [spotAt(117, 'yes', 'roof', 'R'), risen]);
    expect(panelOf('bonnet').boundBy.code).toBe('colour-at-spot');
  });
});
