import { describe, expect, it } from 'vitest';
import { removalLogSd } from '../../../src/correction/removal/removal-knowledge.ts';
import { allowanceAt } from '../../../src/film/limits/allowance-at.ts';
import { doubtsFinish } from '../../../src/film/limits/colour-at-spot.ts';
import { builtInTemplates } from '../../../src/formats/data/templates.ts';
import { type PlanResult, planVehicle } from '../../../src/tasks/plan/plan-vehicle.ts';
import { resolveSettings } from '../../../src/tasks/settings/settings.ts';
import { surveyVehicle } from '../../../src/tasks/survey/survey-vehicle.ts';
import { reading } from '../../film/car-builder.ts';
import { layersOf } from '../layers.ts';

const saloon = builtInTemplates.find(({ id }) => id === 'saloon');
if (saloon === undefined) throw new Error('the saloon is built in');
const template = saloon;

/** Factory film on four panels, repaint on the left front door. */
const readings = [
  ...['bonnet', 'roof', 'boot', 'door-front-right'].map((id) => [id, 118] as const),
  ['door-front-left', 250] as const,
].flatMap(([id, middle]) =>
  [-4, -2, 0, 2, 4].map((off, i) => reading(id, `${i + 1}`, middle + off)),
);

const header =
  'spot,panel,machine,pad,product,sets,mark,before_um,after_um,cleared_pct,colour_on_pad,place';
/** Ten marks on which two sets of medium on medium took so much. */
const tenMarks = (panel: string, taken: number, cleared: number, colour = 'no', spot = 'A') => {
  const film = panel === 'door-front-left' ? 250 : 118;
  return Array.from(
    { length: 10 },
    (_, i) =>
      `${spot},${panel},da,foam-medium,medium,2,${i + 1},${film + i},${film + i - taken},${cleared},${colour},`,
  );
};

function planned(
  rows: readonly string[],
  job: object = {},
  shop: object = {},
  why: readonly string[] = [],
): PlanResult {
  const bytes = new TextEncoder().encode(`${[header, ...rows].join('\n')}\n`);
  const surveyed = surveyVehicle({
    readings: { vehicle: null, template, readings, leftOut: [], assumptions: [] },
    settings: resolveSettings(layersOf({ job, shop: { machines: ['da', 'rotary'], ...shop } })),
    job: undefined,
    filmRecord: undefined,
    inputs: [],
    spots: rows.length === 0 ? [] : [{ name: 'spots.csv', bytes, sha256: '' }],
  }).value;
  if (surveyed === undefined) throw new Error('the car is surveyed');
  const asked = template.panels.filter(({ id }) => why.includes(id));
  const plan = planVehicle(surveyed, template.panels, undefined, asked).value;
  if (plan === undefined) throw new Error('the car is planned');
  return plan;
}
const panelOf = ({ plan }: PlanResult, id: string) => {
  const found = plan.panels.find(({ survey }) => survey.panel.id === id);
  if (found === undefined) throw new Error(`no panel ${id}`);
  return found;
};

describe('a car with test spots', () => {
  const without = planned([]);
  const after = planned(tenMarks('boot', 1.8, 65));

  it('is planned at the posterior’s rates, and is provisional no longer', () => {
    const { median } = panelOf(after, 'roof').removal;
    const steps = panelOf(after, 'roof').steps;
    const foretold = steps.reduce(
      (sum, { combination, sets }) => sum + sets * combination.perSet,
      0,
    );
    expect(median).toBeCloseTo(foretold, 12);
    expect(panelOf(without, 'roof').provisional).toBe(true);
    expect(panelOf(after, 'roof').provisional).toBe(false);
  });

  it('has a budget that is its limits’ at the plan’s own ln-SD, which is narrower', () => {
    const roof = panelOf(after, 'roof');
    const logSd = Math.log(roof.removal.high / roof.removal.median) / 1.6448536269514722;
    expect(logSd).toBeLessThan(removalLogSd(after.settings.correction.removal) - 0.05);
    const { terms, film } = after.settings;
    const grounds = { terms, baseline: after.survey.baseline, model: film };
    expect(roof.survey.budget).toBeCloseTo(allowanceAt(roof.survey, logSd, grounds).budget, 6);
    expect(roof.survey.budget).toBeGreaterThan(panelOf(without, 'roof').survey.budget);
    expect(roof.removal.median).toBeLessThanOrEqual(roof.survey.budget);
    expect(roof.risk).toBeLessThanOrEqual(0.05);
  });

  it('counts what the spot took as spent on its panel, and on no other', () => {
    expect(after.facts.get('boot')?.recorded.value?.mean).toBeCloseTo(1.8, 12);
    expect(after.facts.get('roof')?.recorded.value).toBeNull();
    expect(panelOf(after, 'boot').survey.budget).toBeLessThan(panelOf(after, 'roof').survey.budget);
  });

  it('counts as foretold what a spot took that was judged by eye alone', () => {
    const byEye = planned(['A,boot,da,foam-medium,medium,2,,,,65,no']);
    expect(byEye.facts.get('boot')?.recorded.value?.mean).toBeGreaterThan(1);
    expect(panelOf(byEye, 'roof').provisional).toBe(true);
  });

  it('is the same in whatever order the spots are written', () => {
    const [one, two] = [tenMarks('boot', 1.8, 65), tenMarks('roof', 1.2, 50, 'no', 'B')];
    const there = panelOf(planned([...one, ...two]), 'bonnet').removal.median;
    expect(panelOf(planned([...two, ...one]), 'bonnet').removal.median).toBeCloseTo(there, 9);
  });

  it('lets repaint alone but for the panel with a spot of its own, never above the sound panels', () => {
    expect(panelOf(after, 'door-front-left').survey.boundBy.code).toBe('test-spot');
    const own = planned(tenMarks('door-front-left', 1.8, 65));
    const door = panelOf(own, 'door-front-left');
    expect(door.survey.boundBy.code).toBe('sound-panels');
    const logSd = Math.log(door.removal.high / door.removal.median) / 1.6448536269514722;
    const { terms, film } = own.settings;
    const grounds = { terms, baseline: own.survey.baseline, model: film };
    const sound = ['bonnet', 'roof', 'boot', 'door-front-right'].flatMap((id) => {
      const { survey } = panelOf(own, id);
      return [survey.budget, allowanceAt(survey, logSd, grounds).budget];
    });
    // However well its own paint is known; and the spot is part of what may go.
    const spent = door.survey.facts.recorded?.mean ?? 0;
    expect(spent).toBeGreaterThan(1);
    expect(door.survey.budget).toBeCloseTo(Math.min(...sound) - spent, 6);
    // What one paint shows says nothing of the other.
    expect(panelOf(own, 'roof').provisional).toBe(true);
  });

  it('works repaint with no step that is stronger than what was tried on it, and says what to try', () => {
    const mild = (colour: string) =>
      Array.from(
        { length: 10 },
        (_, i) =>
          `A,door-front-left,da,foam-soft,fine,1,${i + 1},${250 + i},${249.7 + i},40,no,front`,
      ).concat(
        colour === ''
          ? []
          : `B,door-front-left,da,foam-medium,medium,2,1,250,248,80,${colour},rear`,
      );
    const strongestOf = (plan: PlanResult): string =>
      panelOf(plan, 'door-front-left').steps.reduce(
        (most, { combination }) => (combination.perSet > most.perSet ? combination : most),
        { perSet: 0, id: '' },
      ).id;
    const after = planned(mild(''), { aim: 'full' });
    const door = panelOf(after, 'door-front-left');
    expect(strongestOf(after)).toBe('da/foam-soft/fine');
    expect(door.verdict).toBe('lighter');
    expect(door.reasons[0]?.code).toBe('stronger-than-tried');
    expect(door.reasons[0]?.text).toMatch(
      /^the aim takes a step stronger than da\/foam-soft\/fine, the strongest that was tried on this panel, or more than the \d\.\d\d µm that its spot showed free of colour: work that spot deeper, or try the next rung on its spot first$/,
    );
    // A stronger one that was tried may be worked, but not if it brought colour.
    expect(strongestOf(planned(mild('no'), { aim: 'full' }))).toBe('da/foam-medium/medium');
    // Colour under a clear ends it, whatever another spot showed.
    expect(strongestOf(planned(mild('yes'), { aim: 'full' }))).toBe('');
    // Sound panels are worked as ever.
    expect(panelOf(after, 'roof').steps.some(({ combination }) => combination.rung > 5)).toBe(true);
  });

  it('leaves repaint on which what was tried clears next to nothing, and says so', () => {
    const deep = planned(
      ['A,door-front-left,hand,foam-soft,fine,1,1,250,249.9,2,no'],
      {},
      { machines: ['hand', 'da'] },
    );
    const door = panelOf(deep, 'door-front-left');
    expect([door.verdict, door.reasons[0]?.code]).toEqual(['leave', 'stronger-than-tried']);
  });

  it('tells why nothing stronger was planned on repaint', () => {
    const rows = ['A,door-front-left,da,foam-soft,fine,1,1,250,249.7,40,no'];
    const { why } = planned(rows, {}, {}, ['door-front-left']);
    const codes = why
      .flatMap(({ parts }) => parts.flatMap(({ rejected }) => rejected))
      .filter(({ kind }) => kind === 'stronger');
    expect(codes.map(({ reason }) => reason.code)).toContain('stronger-than-tried');
  });

  it('does not let repaint be worked where the spot brought colour onto the pad', () => {
    const own = planned(tenMarks('door-front-left', 1.8, 65, 'yes'));
    const door = panelOf(own, 'door-front-left');
    expect([door.verdict, door.survey.boundBy.code]).toEqual(['leave', 'colour-at-spot']);
    expect(door.survey.boundBy.text).toBe('its test spot A left colour on the pad: leave it alone');
    expect(door.survey.advice.map(({ code }) => code)).not.toContain('test-spot');
  });
});

describe('colour on the pad at a test spot of factory paint', () => {
  const mild = tenMarks('boot', 1.8, 65);
  const through = tenMarks('roof', 4, 95, 'yes', 'B');

  it('lets nothing go from the panel where paint should have a clear, and puts the car in doubt', () => {
    const roof = panelOf(planned([...mild, ...through]), 'roof');
    expect([roof.verdict, roof.survey.budget, roof.survey.boundBy.code]).toEqual([
      'leave',
      0,
      'colour-at-spot',
    ]);
    expect(roof.reasons[0]?.code).toBe('limit-colour-at-spot');
    expect(roof.reasons[0]?.text).toContain('colour came on the pad at test spot B');
    expect(doubtsFinish(roof.survey)).toBe(true);
    expect(doubtsFinish(panelOf(planned(mild), 'roof').survey)).toBe(false);
  });

  it('works no deep defect there either', () => {
    const roof = panelOf(planned(through), 'roof');
    expect(roof.local.flatMap(({ steps }) => steps)).toEqual([]);
  });

  it('teaches nothing: a panel that its own spot bears out is planned as without that trial', () => {
    const [without, after] = [planned(mild), planned([...mild, ...through])];
    expect(panelOf(after, 'boot').survey.budget).toBeCloseTo(
      panelOf(without, 'boot').survey.budget,
      12,
    );
    expect(after.paint.tried.map(({ trials }) => trials)).toEqual([1]);
    expect(panelOf(planned(through), 'bonnet').provisional).toBe(true);
  });

  it('lets nothing go from the other panels of that paint, whose own clear nobody has borne out', () => {
    const after = planned([...mild, ...through]);
    for (const id of ['bonnet', 'door-front-right']) {
      const { budget, boundBy } = panelOf(after, id).survey;
      expect([budget, boundBy.code]).toEqual([0, 'colour-at-spot']);
      expect(boundBy.text).toContain('test spot B on the roof');
    }
    const read = planned(through, { clear_um: 45 });
    expect(panelOf(read, 'bonnet').survey.budget).toBe(0);
  });

  it('is normal on single-stage paint, where it counts as ever', () => {
    const job = { finish: 'single-stage-solid' };
    const [no, yes] = [tenMarks('roof', 1.8, 65, ''), tenMarks('roof', 1.8, 65, 'yes')];
    expect(panelOf(planned(yes, job), 'roof').survey.budget).toBe(
      panelOf(planned(no, job), 'roof').survey.budget,
    );
  });

  it('of repaint on such a car shows no coat, and the page says what would', () => {
    const rows = tenMarks('door-front-left', 1.8, 65, 'yes');
    const { survey } = panelOf(planned(rows, { finish: 'single-stage-solid' }), 'door-front-left');
    expect(survey.boundBy.code).toBe('test-spot');
    expect(survey.boundBy.text).toContain('once the job states the finish of this panel itself');
    expect(survey.advice.map(({ code }) => code)).not.toContain('test-spot');
  });
});

describe('test spots on several places of a panel', () => {
  const taken = (...places: readonly string[]) =>
    planned(
      [tenMarks('boot', 0.9, 40), tenMarks('boot', 1.9, 65, 'no', 'B')].flatMap((rows, i) =>
        rows.map((row) => `${row}${places[i] ?? ''}`),
      ),
    ).facts.get('boot')?.recorded.value?.mean;

  it('take from each place its own: no more is gone anywhere than the most that one took', () => {
    expect(taken('left', 'right')).toBeCloseTo(1.9, 12);
  });

  it('take what both took where nothing tells their places apart', () => {
    expect(taken()).toBeCloseTo(2.8, 12);
  });
});

describe('a rate that the shop measured', () => {
  it('with an ln-SD of its own narrows the plan that uses it', () => {
    const rate = { rate_um_per_set: 0.9, ln_sd: 0.05 };
    const own = planned(
      [],
      {},
      {
        pads: ['foam-medium', 'foam-soft'],
        rates: { 'da/foam-medium/medium': rate, 'da/foam-soft/fine': rate },
      },
    );
    const roof = panelOf(own, 'roof');
    const logSd = Math.log(roof.removal.high / roof.removal.median) / 1.6448536269514722;
    expect(logSd).toBeLessThan(removalLogSd(own.settings.correction.removal));
  });
});
