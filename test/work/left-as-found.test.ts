import { describe, expect, test } from 'vitest';
import { remark } from '../../src/base/remark.ts';
import { exclusionsOf } from '../../src/work/exclusions.ts';
import { type AimedPlan, leftAsFound } from '../../src/work/left-as-found.ts';
import { quoteOf, readingsOf } from '../tasks/quotes.ts';
import { MEDIUM, panel, plan, step } from './small-plans.ts';

const worked = (id: string) => panel(id, 1, [step(MEDIUM, 2, 10)]);
const left = (id: string, code: string) => ({ ...panel(id, 1), reasons: [remark(code, 'why')] });
const at = (name: string, ...panels: readonly ReturnType<typeof panel>[]): AimedPlan => ({
  aim: { name, share: 0.9 },
  plan: plan(...panels),
});
const told = (...options: readonly AimedPlan[]) =>
  leftAsFound(options, () => false).map(({ panels, text }) => `${panels.join(', ')}: ${text}`);

describe('what a quote leaves as it is found', () => {
  test('is told with the aim that leaves it, where another works it', () => {
    expect(
      told(
        at('enhance', worked('roof')),
        at('correct', worked('roof')),
        at('full', left('roof', 'no-technique')),
      ),
    ).toEqual([
      'roof: if full is chosen, left as found: no machine of ours fits there and leaves the finish that is asked for',
    ]);
  });

  test('is told once where every aim leaves it for one reason', () => {
    const roof = left('roof', 'nothing-fits');
    expect(told(at('enhance', roof), at('full', roof))).toEqual([
      'roof: left as found: even the mildest polishing would take more than the paint can give',
    ]);
    expect(told(at('enhance', roof))).toHaveLength(1);
  });

  test('is told by aim where the reasons of the plans differ', () => {
    expect(
      told(
        at('enhance', left('roof', 'not-worth-it')),
        at('correct', left('roof', 'not-worth-it')),
        at('full', left('roof', 'no-technique')),
      ),
    ).toEqual([
      'roof: if enhance or correct is chosen, left as found: what the paint can give would clear too few marks',
      'roof: if full is chosen, left as found: no machine of ours fits there and leaves the finish that is asked for',
    ]);
  });

  test('stands together where reason and aims are the same', () => {
    const [roof, bonnet] = [left('roof', 'limit-clear'), left('bonnet', 'limit-total')];
    expect(told(at('enhance', roof, bonnet))).toEqual([
      'roof: left as found: the paint can give nothing',
      'bonnet: left as found: the paint can give nothing',
    ]);
    expect(told(at('enhance', roof, { ...bonnet, reasons: roof.reasons }))).toHaveLength(1);
  });

  test('is nothing that has nothing to correct', () => {
    expect(told(at('enhance', left('roof', 'nothing-to-correct')))).toEqual([]);
  });

  test('has a code of its own where another aim works it, and keeps the word that its paint is thin', () => {
    const thin = <Of extends ReturnType<typeof panel>>(one: Of): Of => ({
      ...one,
      survey: { ...one.survey, condition: 'thin' },
    });
    const full = at('full', thin(left('roof', 'no-technique')));
    const codes = (...options: readonly AimedPlan[]) =>
      exclusionsOf(options).map((one) => one.code);
    expect(codes(at('enhance', thin(worked('roof'))), full)).toEqual(
      expect.arrayContaining(['thin-paint', 'left-at-aim', 'no-trial-yet']),
    );
    expect(codes(at('enhance', thin(worked('roof'))), full)).not.toContain('left-alone');
    expect(codes(full)).toEqual(['left-alone']);
  });
});

test('a quote says of no panel that it is left, and why, otherwise than the plan of that aim', () => {
  const shop = { machines: ['da', 'rotary'], pads: ['foam-soft', 'microfibre'] };
  const readings = readingsOf({ bonnet: 96, roof: 112, boot: 111, 'wing front left': 94 });
  const { options, exclusions } = quoteOf({ readings, job: { taken_um: 0 }, shop });
  const said = exclusions.filter(({ code }) => code === 'left-alone' || code === 'left-at-aim');
  expect(said.length).toBeGreaterThan(0);
  for (const { aims = [], panels } of said) {
    for (const { aim, plan } of options) {
      if (aims.length > 0 && !aims.includes(aim.name)) continue;
      const leftThere = plan.panels.filter(({ verdict }) => verdict === 'leave');
      expect(leftThere.map(({ survey }) => survey.panel.name)).toEqual(
        expect.arrayContaining([...panels]),
      );
    }
  }
});
