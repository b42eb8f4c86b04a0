import { describe, expect, test } from 'vitest';
import { micrometres } from '../../../src/base/units.ts';
import type { PanelFacts } from '../../../src/film/film-model.ts';
import { withOwnSpots } from '../../../src/film/limits/after-test-spot.ts';
import { allowanceAfterSpot, allowanceAt } from '../../../src/film/limits/allowance-at.ts';
import { isSound } from '../../../src/film/limits/sound-cap.ts';
import type { PanelSurvey } from '../../../src/film/survey.ts';
import { filmModel } from '../../../src/formats/models.ts';
import {
  amongSound,
  fiveAround,
  onFace,
  panelOf,
  plainPanel,
  standardTerms,
  surveyOf,
  UNTRIED_LOG_SD,
} from '../car-builder.ts';

const repaint = fiveAround('tested', 260);
const um = micrometres;
const grounds = { terms: standardTerms, model: filmModel };

describe('a test spot on repaint', () => {
  test('is told with what its patch may take, its mark, what it yields and its minutes', () => {
    const { panel, survey } = amongSound(repaint);
    const least = Math.min(
      ...survey.panels.flatMap(({ condition, budget }) => (condition === 'original' ? budget : [])),
    );
    const [advice] = panel.advice.filter(({ code }) => code === 'test-spot');
    expect(advice?.text).toContain(`${least.toFixed(2)} µm at most may go, patch included`);
    // It shows that clear is there and not how much of it: what it yields is drawn from elsewhere, and said so.
    expect(advice?.text).toContain(
      'colour on a white pad: leave it alone; no colour: it has clear',
    );
    // A protection film passes for a clear: no colour comes off it.
    expect(advice?.text).toContain('hand-sized patch off any filler or film (look for its edge)');
    expect(advice?.text).toContain(
      'as on the original panel that allows least, at a risk not known: no clear read counts on repaint (coats unknown), only such a spot',
    );
    expect(advice?.time).toBe(filmModel.measuring.testSpotTime);
  });

  test('is asked for where a clear of it is stated too, which says that it does not count', () => {
    const clear = { mean: micrometres(50), sd: micrometres(3), of: 'panel' } as const;
    const stated = amongSound(repaint, {
      factsOf: (id) => ({ clear: id === 'tested' ? clear : null }),
    });
    expect(stated.panel.budget).toBe(0);
    expect(stated.panel.boundBy.text).toContain(
      'a clear that is read or stated does not count on repaint',
    );
    expect(amongSound(repaint).panel.boundBy.text).not.toContain('stated');
  });

  test('yields what was told, less what it took, however well it foretells the removal', () => {
    const { panel, survey } = amongSound(repaint);
    const told = panel.evidence.find(({ code }) => code === 'sound-panel-cap')?.value;
    const spent = { mean: micrometres(1.2), sd: micrometres(0.3) };
    const spotted = amongSound(repaint, {
      factsOf: (id) => ({ recorded: id === 'tested' ? spent : null }),
    }).panel;
    for (const logSd of [UNTRIED_LOG_SD, 0.3]) {
      const after = allowanceAfterSpot(spotted, survey.panels, logSd, grounds);
      expect(after.boundBy.code).toBe('sound-panels');
      expect(after.budget).toBeCloseTo((told ?? Number.NaN) - 1.2, 9);
    }
  });

  test('is not asked for where what is gone on record is all that it could free, and it is said why', () => {
    const least = amongSound(repaint).panel.evidence.find(({ code }) => code === 'sound-panel-cap');
    const cap = least?.value ?? Number.NaN;
    const spotted = (gone: number) =>
      amongSound(repaint, {
        factsOf: (id) => ({ recorded: id === 'tested' ? { mean: um(gone), sd: um(0.9) } : null }),
      }).panel;
    const over = spotted(cap + 0.3);
    // Its own limit stands: of marks alone compare lets the limits of other panels go.
    expect([over.budget, over.boundBy.code]).toEqual([0, 'test-spot']);
    expect(over.boundBy.text).toBe(
      `repaint gets no more than the ${cap.toFixed(2)} µm of sound a, and ${(cap + 0.3).toFixed(2)} µm is gone already: a test spot frees nothing`,
    );
    expect(over.advice.map(({ code }) => code)).not.toContain('test-spot');
    // What a plan with such a spot would give it: no more than nothing either.
    const others = amongSound(repaint).survey.panels;
    expect(allowanceAfterSpot(over, others, UNTRIED_LOG_SD, grounds).budget).toBe(0);

    const under = spotted(cap - 0.3);
    expect(under.boundBy.code).toBe('test-spot');
    expect(under.advice.find(({ code }) => code === 'test-spot')?.text).toContain(
      `0.30 µm at most may go, patch included (plan --spots), as on the original panel that allows least, ${(cap - 0.3).toFixed(2)} µm of it gone already, at a risk not known`,
    );
  });

  test('takes nothing off where nothing of it is on record, and says what is', () => {
    const { panel, survey } = amongSound(repaint);
    const told = panel.evidence.find(({ code }) => code === 'sound-panel-cap')?.value;
    const plain = allowanceAfterSpot(panel, survey.panels, UNTRIED_LOG_SD, grounds);
    expect([plain.boundBy.code, plain.budget]).toEqual(['sound-panels', told]);
    expect(plain.boundBy.text).toBe(
      `repaint with a test spot of its own: no more than ${told?.toFixed(2)} µm, the least that may go from any original panel of this car`,
    );
    const spent = { ...panel, facts: { ...panel.facts, recorded: { mean: um(1.2), sd: um(0.3) } } };
    const after = allowanceAfterSpot(spent, survey.panels, UNTRIED_LOG_SD, grounds);
    expect(after.boundBy.text).toMatch(
      /the least that may go from any original panel of this car, 1\.20 µm of it gone already$/,
    );
    const all = { ...panel, facts: { ...panel.facts, recorded: { mean: um(99), sd: um(1) } } };
    expect(allowanceAfterSpot(all, survey.panels, UNTRIED_LOG_SD, grounds).budget).toBe(0);
  });

  test('changes nothing on a panel that needs none, nor where no panel is sound', () => {
    const { panel, survey } = amongSound(repaint);
    const sound = panelOf(survey, 'sound-a');
    expect(allowanceAfterSpot(sound, survey.panels, UNTRIED_LOG_SD, grounds)).toBe(sound);
    const alone = allowanceAfterSpot(panel, [panel], UNTRIED_LOG_SD, grounds);
    expect(alone).toBe(panel);
    expect(alone.boundBy.code).toBe('test-spot');
  });

  test('yields no more than a sound panel allows where the removal is foretold worse than in the survey', () => {
    const { panel, survey } = amongSound(repaint);
    const at = (logSd: number) => allowanceAfterSpot(panel, survey.panels, logSd, grounds).budget;
    expect(at(1)).toBeCloseTo(allowanceAt(panelOf(survey, 'sound-a'), 1, grounds).budget, 9);
    expect(at(1)).toBeLessThan(at(UNTRIED_LOG_SD));
  });

  test('is told from sound panels alone: original, of two points or more, neither matte nor fresh', () => {
    const { survey } = amongSound(onFace('tested', 112));
    expect(survey.panels.map((one) => isSound(one, standardTerms.risk))).toEqual([
      true,
      true,
      true,
      true,
      false,
    ]);
    const one = (facts: Partial<PanelFacts>) =>
      isSound(amongSound(fiveAround('tested', 112), { facts }).panel, standardTerms.risk);
    expect([one({}), one({ finish: 'matte' }), one({ paintedDaysAgo: 10 })]).toEqual([
      true,
      false,
      false,
    ]);
    // Surely cut back, and as likely original as cut back.
    const read = (film: number) => amongSound(fiveAround('tested', film)).panel;
    expect(isSound(read(85), standardTerms.risk)).toBe(false);
    expect(isSound(read(99), standardTerms.risk)).toBe(true);
  });

  test('leaves a panel that was not read as its survey has it', () => {
    const { panel } = amongSound([]);
    expect(allowanceAt(panel, 0.3, grounds)).toBe(panel);
  });

  test('is not advised where it frees nothing: no original panel, or none from which anything may go', () => {
    const none = amongSound(repaint, { facts: { covered: true } });
    expect(none.panel.advice.some(({ code }) => code === 'test-spot')).toBe(false);
    const spent = amongSound(repaint, { facts: { taken: micrometres(12.7) } }).panel;
    const [advice] = spent.advice;
    expect(advice?.code).toBe('beyond-help');
    expect(advice?.text).toContain('repaint gets no more: leave it alone');
    // And what holds it asks for none.
    expect([spent.boundBy.code, spent.budget]).toEqual(['sound-panels', 0]);
    expect(spent.boundBy.text).toContain('a test spot frees nothing');
    expect(spent.limits.map(({ code }) => code)).not.toContain('test-spot');
  });
});

describe('repaint of a car whose original panel that allows least is not settled', () => {
  const carWith = (near: number, recorded: PanelFacts['recorded'] = null) =>
    surveyOf({
      panels: ['a', 'b', 'c', 'near', 'repaint'].map((id) => plainPanel(id)),
      readings: [
        ...['a', 'b', 'c'].flatMap((id) => fiveAround(id, 119)),
        ...fiveAround('near', near),
        ...fiveAround('repaint', 260),
      ],
      factsOf: (id) => ({ recorded: id === 'repaint' ? recorded : null }),
    });
  const car = carWith(107.6);
  const codesOf = (id: string) => panelOf(car, id).advice.map(({ code }) => code);

  test('waits for that panel, and is not given up', () => {
    const near = panelOf(car, 'near');
    expect([near.condition, near.budget]).toEqual(['original', 0]);
    expect(codesOf('repaint')).toContain('sound-panel-first');
    expect(codesOf('repaint')).not.toContain('beyond-help');
    expect(panelOf(car, 'repaint').advice[0]?.text).toContain(
      'nothing may go from near till it is settled what it is, and repaint gets no more: settle that first, then make a test spot here',
    );
  });
  test('waits for it where it allows less than is gone of the repaint on record', () => {
    const worked = carWith(113, { mean: um(9), sd: um(0.9) });
    const near = panelOf(worked, 'near');
    expect(near.budget).toBeGreaterThan(0.05);
    expect(panelOf(worked, 'repaint').advice[0]?.text).toBe(
      `repaint gets no more than the ${near.budget.toFixed(2)} µm of near, and 9.00 µm is gone already: settle first what near is, then make a test spot here`,
    );
  });
  test('waits for it with a spot made too', () => {
    const spotted = withOwnSpots(car.panels, logSdOn('repaint'), grounds);
    const panel = spotted.find((one) => one.panel.id === 'repaint');
    expect([panel?.boundBy.code, panel?.budget]).toEqual(['sound-panels', 0]);
    expect(panel?.advice[0]?.text).toMatch(/settle that first$/);
  });
});

const logSdOn =
  (id: string) =>
  ({ panel }: PanelSurvey): number | null =>
    panel.id === id ? UNTRIED_LOG_SD : null;

describe('a survey once test spots were made', () => {
  test('allows repaint with a spot of its own what that allows, and asks for none', () => {
    const { panel, survey } = amongSound(repaint);
    const spotted = withOwnSpots(survey.panels, logSdOn('tested'), grounds);
    const after = spotted.find((one) => one.panel.id === 'tested');
    const allowed = allowanceAfterSpot(panel, survey.panels, UNTRIED_LOG_SD, grounds);
    expect(after?.budget).toBe(allowed.budget);
    expect(allowed.budget).toBeGreaterThan(0);
    expect(after?.boundBy).toEqual(allowed.boundBy);
    expect(after?.advice.map(({ code }) => code)).not.toContain('test-spot');
    expect(after?.evidence.map(({ code }) => code)).not.toContain('sound-panel-cap');
  });
  test('leaves repaint without a spot, and panels that need none, as they are', () => {
    const { survey } = amongSound(repaint);
    expect(withOwnSpots(survey.panels, () => null, grounds)).toEqual(survey.panels);
    expect(withOwnSpots(survey.panels, logSdOn('sound-a'), grounds)).toEqual(survey.panels);
  });
  test('allows each zone of a panel its own', () => {
    const { survey } = amongSound(onFace('tested', 112, 110, 113, 240, 244));
    const thicker = (panels: readonly PanelSurvey[]) =>
      panels.find(({ panel }) => panel.id === 'tested')?.zones[1];
    expect(thicker(survey.panels)?.boundBy.code).toBe('test-spot');
    const spotted = withOwnSpots(survey.panels, logSdOn('tested'), grounds);
    expect(thicker(spotted)?.boundBy.code).toBe('sound-panels');
    // That a spot is of use is said of the zone, and not once more of the panel.
    expect(panelOf(survey, 'tested').advice.map(({ code }) => code)).not.toContain('test-spot');
  });
});

describe('the limit over a panel’s life', () => {
  const roomy = { terms: { totalFloor: micrometres(40) } };
  const lifeOf = (taken: number | null, clear: number | null = null) =>
    amongSound(fiveAround('tested', 92), {
      ...roomy,
      factsOf: (id) =>
        id === 'tested'
          ? {
              taken: taken === null ? null : micrometres(taken),
              clear:
                clear === null
                  ? null
                  : { mean: micrometres(clear), sd: micrometres(2), of: 'panel' },
            }
          : {},
    }).panel.limits.find(({ code }) => code === 'life');

  test('is over-spent on a panel cut back of which nobody knows the history', () => {
    // 4 µm as ever where nobody knows, and the 20 that it lacks.
    expect(lifeOf(null)?.value).toBe(0);
    // It is cut back with all but a chance of .03 %.
    expect(lifeOf(null)?.room?.less).toBeCloseTo(4 + 20, 1);
    expect(lifeOf(null)?.text).toContain('20.0 µm as what it lacks against the baseline');
  });

  test('is what is stated to be left where somebody does, or where its clear is known', () => {
    expect(lifeOf(3)?.room?.less).toBe(3);
    expect(lifeOf(null, 40)?.room?.less).toBe(4);
  });
});
