/** A user who stopped early, or worked fewer sets than planned, and says so. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { compareObservations } from '../../../src/tasks/compare/compare-observations.ts';
import {
  type Comparing,
  compared,
  panelLeft,
  readingsText,
  soundFilm,
  toldBy,
  worked,
} from '../comparing.ts';

type Step = {
  readonly pad: string;
  readonly product: string;
  readonly sets: number;
  readonly um: number;
};

const stepOf = ({ pad, product, sets, um }: Step) => ({
  machine: 'da',
  pad,
  product,
  sets,
  removal_um: um,
});
const removalOf = (steps: readonly Step[]) => {
  const median = steps.reduce((sum, { um }) => sum + um, 0);
  return { median, high: 2.5 * median };
};
const medium: Step = { pad: 'foam-medium', product: 'medium', sets: 3, um: 6 };
const fine: Step = { pad: 'foam-soft', product: 'fine', sets: 1, um: 1 };

const panelOf = (panel: string, steps: readonly Step[] = [medium, fine]) => ({
  panel,
  verdict: steps.length === 0 ? 'leave' : 'polish',
  steps: steps.map(stepOf),
  removal_um: removalOf(steps),
  zones: [] as readonly object[],
});

const planText = (panels: readonly object[]): string =>
  JSON.stringify({ schema: 'leastcut/plan/1', vehicle: null, panels });

const plan = planText(
  Object.keys(soundFilm).map((id) => panelOf(id, id === 'bonnet' ? [] : [medium, fine])),
);
const before = readingsText(soundFilm);
const afterOf = (removed: (panel: string) => number): string =>
  readingsText(worked(soundFilm, removed));
const HEADER = 'panel,step,sets\n';

/** The roof was given up after one set; the rest was worked as planned. */
const visits = [before, afterOf((panel) => ({ roof: 2, bonnet: 0 })[panel] ?? 7)];
const early = `${HEADER}roof,1,1\nroof,2,0\n`;

describe('sets that were worked', () => {
  test('make the measure of a panel where the work stopped early', () => {
    const inFull = panelLeft(compared({ visits, plan }), 'roof');
    expect(inFull.against).toBe('less');
    const roof = panelLeft(compared({ visits, plan, workedSets: early }), 'roof');
    expect(roof.against).toBe('as-foretold');
    expect(roof.planned?.removal?.median).toBeCloseTo(7, 9);
    expect(roof.foretold?.removal?.median).toBeCloseTo(2, 9);
  });

  test('leave the plan’s main step as the one to go on with', () => {
    const roof = panelLeft(compared({ visits, plan, workedSets: `${HEADER}roof,,0\n` }), 'roof');
    expect(roof.oneMore).toMatchObject({ combination: 'da/foam-medium/medium', from: 'plan' });
    expect(roof.foretold).toMatchObject({ steps: [], removal: null });
  });

  test('of none, with film gone all the same, is more than was foretold', () => {
    const workedSets = `${HEADER}roof,,0\n`;
    const cut = [before, afterOf((panel) => (panel === 'bonnet' ? 0 : 7))];
    expect(panelLeft(compared({ visits: cut, plan, workedSets }), 'roof').against).toBe('more');
  });

  test('are what a shop’s rates learn from, and none teaches nothing', () => {
    const of = { date: '2026-03-31', vehicle: 'FH-7' };
    const learnt = (workedSets: string) =>
      compareObservations(compared({ visits, plan, workedSets }), of).find(
        ({ panel }) => panel === 'roof',
      );
    expect(learnt(early)?.steps).toEqual([{ combination: 'da/foam-medium/medium', sets: 1 }]);
    expect(learnt(`${HEADER}roof,,0\n`)).toBeUndefined();
  });

  test('may be more than planned, and are named by number or combination', () => {
    const byNumber = `${HEADER}roof,1,6\nroof,2,1\n`;
    const byName = `${HEADER}roof,da/foam-medium/medium,6\nroof,da/foam-soft/fine,1\n`;
    const median = (workedSets: string) =>
      panelLeft(compared({ visits, plan, workedSets }), 'roof').foretold?.removal?.median;
    expect(median(byNumber)).toBeCloseTo(13, 9);
    expect(median(byName)).toBe(median(byNumber));
  });

  test('that are the planned ones change nothing but the word that they were said', () => {
    const rows = Object.keys(soundFilm).flatMap((id) =>
      id === 'bonnet' ? [`${id},,0`] : [`${id},1,3`, `${id},2,1`],
    );
    const said = compared({ visits, plan, workedSets: `${HEADER}${rows.join('\n')}\n` });
    expect(said.panels).toEqual(compared({ visits, plan }).panels);
    expect(said.worked?.panels.size).toBe(5);
    expect(compared({ visits, plan }).worked).toBeNull();
  });

  test('take in proportion, whatever they are', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 9 }), fc.integer({ min: 0, max: 9 }), (one, two) => {
        const workedSets = `${HEADER}boot,1,${one}\nboot,2,${two}\n`;
        const boot = panelLeft(compared({ visits, plan, workedSets }), 'boot');
        expect(boot.foretold?.removal?.median ?? 0).toBeCloseTo(2 * one + two, 9);
      }),
      { numRuns: 20 },
    );
  });
});

describe('sets of a panel in two zones', () => {
  const film = { ...soundFilm, roof: [112, 115, 110, 250, 254, 252] };
  const off = { ...worked(film, () => 2), roof: [110, 113, 108, 250, 254, 252] };
  const zoned = planText([
    {
      ...panelOf('roof'),
      zones: [
        { ...panelOf('roof'), zone: 'thinner' },
        { ...panelOf('roof', []), zone: 'thicker' },
      ],
    },
  ]);
  const roofOf = (workedSets: string) =>
    panelLeft(
      compared({ visits: [readingsText(film), readingsText(off)], plan: zoned, workedSets }),
      'roof',
    );
  test('are of the zone that is named, or of both', () => {
    for (const zone of ['thinner', '']) {
      const { zones } = roofOf(`panel,zone,step,sets\nroof,${zone},1,1\nroof,${zone},2,0\n`);
      expect(
        zones.map(({ comparison, foretold }) => [comparison.zone, foretold?.removal?.median]),
      ).toEqual([
        ['thinner', 2],
        ['thicker', undefined],
      ]);
    }
  });

  test('are refused of a zone that the plan works nothing on', () => {
    expect(
      toldBy({
        visits: [readingsText(film), readingsText(off)],
        plan: zoned,
        workedSets: 'panel,zone,step,sets\nroof,thinner,1,1\nroof,thinner,2,0\nroof,thicker,,0\n',
      }),
    ).toEqual([]);
    expect(
      toldBy({
        visits: [readingsText(film), readingsText(off)],
        plan: zoned,
        workedSets: 'panel,zone,step,sets\nroof,thinner,1,1\nroof,thinner,2,0\nroof,thicker,1,2\n',
      })[0],
    ).toMatch(/^worked-mismatch: the plan of the roof has no step "1" in its thicker zone/u);
  });
});

test('what was worked against the plan is taken as said, and noted', () => {
  const withRows = (rows: string): Comparing => ({ visits, plan, workedSets: `${HEADER}${rows}` });
  for (const panel of ['bonnet', 'rear bumper']) {
    expect(toldBy(withRows(`${panel},1,2\n`))).toEqual([
      `worked-unplanned: the plan works nothing on the ${panel}, and it was worked`,
    ]);
  }
  expect(toldBy(withRows('bonnet,,0\nrear bumper,,0\n'))).toEqual([]);
  const cut = [before, afterOf((panel) => (panel === 'bonnet' ? 3 : 7))];
  const result = compared({ ...withRows('bonnet,1,2\n'), visits: cut });
  expect(panelLeft(result, 'bonnet').against).toBe('more');
});

describe('a mistake in the sets is told where it stands', () => {
  const told = (rows: string): readonly string[] =>
    toldBy({ visits, plan, workedSets: `${HEADER}${rows}` });

  test('a step that is not said', () => {
    expect(told('roof,1,2\n')).toEqual([
      'worked-mismatch: roof: nothing is said of step 2 (da/foam-soft/fine)',
    ]);
  });
  test('a step that the plan does not have', () => {
    expect(told('roof,1,2\nroof,2,1\nroof,3,1\n')).toEqual([
      'worked-mismatch: the plan of the roof has no step "3"',
    ]);
  });
  test('a step that is said twice', () => {
    expect(told('roof,1,2\nroof,2,1\nroof,da/foam-medium/medium,1\n')).toEqual([
      'worked-mismatch: roof: step 1 (da/foam-medium/medium) is said twice',
    ]);
  });
  test('a panel that the template does not have, and a file that says nothing', () => {
    expect(told('rumble seat,1,2\n')[0]).toMatch(/^panel-unknown/u);
    expect(told('')[0]).toMatch(/^no-readings/u);
  });
});
