import { describe, expect, test } from 'vitest';
import type { PanelPlan, PlannedStep } from '../../src/correction/plan/plan.ts';
import { partName } from '../../src/film/survey.ts';
import { correctionModel, workModel } from '../../src/formats/models.ts';
import { cheaperAims } from '../../src/work/cheaper-aims.ts';
import { estimateWork } from '../../src/work/estimate-work.ts';
import type { PriceList } from '../../src/work/price-list.ts';
import { quoteOption } from '../../src/work/quote-option.ts';
import { quoteOf, readingsOf } from '../tasks/quotes.ts';
import { bareList, flat } from './price-lists.ts';
import { FINE, MEDIUM, panel, plan, step } from './small-plans.ts';

const SOFT = 'da/foam-soft/medium';
const HAZY = 'da/foam-medium/fine';
const list: PriceList = { ...bareList, labour: flat(6000n) };
const { equalShortfall } = correctionModel.correction.choice;

type Worked = readonly PanelPlan[];
const optionOf = (name: string, panels: Worked, prices: PriceList | null = list) => {
  const planned = plan(...panels);
  const work = estimateWork(planned, workModel);
  const aim = { name, share: 0.8 };
  return quoteOption(aim, { plan: planned, work }, { prices, hoursShare: 0.5, equalShortfall });
};
const idsOf = (
  parts: readonly { readonly survey: { readonly panel: { readonly id: string } } }[],
) => parts.map(({ survey }) => survey.panel.id);

const roof = panel('roof', 2, [step(SOFT, 3, 60), step(HAZY, 2, 40)]);
const boot = panel('boot', 1, [step(SOFT, 2, 20), step(FINE, 1, 10)]);
const slow = optionOf('correct', [roof, boot]);

describe('an aim that costs less than the one before it', () => {
  test('is told by how much, of price and time, and by the parts that stronger steps work in less of it', () => {
    const short = panel('roof', 2, [step(MEDIUM, 2, 40), step(FINE, 1, 20)]);
    const quick = optionOf('full', [short, boot]);
    const [found, ...rest] = cheaperAims([slow, quick]);
    expect(rest).toEqual([]);
    expect(found?.saved).toBe((slow.priced?.total ?? 0n) - (quick.priced?.total ?? 0n));
    expect(found?.timeSaved).toBe((slow.charged ?? 0) - (quick.charged ?? 0));
    expect([idsOf(found?.stronger ?? []), found?.quicker, found?.left]).toEqual([['roof'], [], []]);
    // The last step of the one leaves haze, that of the other none.
    expect(found?.finer).toBe(true);
  });

  test('names what it leaves, and what need not be set up for it', () => {
    const [found] = cheaperAims([slow, optionOf('full', [panel('roof', 2), boot])]);
    expect([idsOf(found?.left ?? []), found?.stronger, found?.fewerSetUps]).toEqual([
      ['roof'],
      [],
      1,
    ]);
  });

  test('names parts that take less time by steps no stronger', () => {
    const fewer = panel('roof', 2, [step(SOFT, 2, 40), step(HAZY, 2, 40)]);
    const [found] = cheaperAims([slow, optionOf('full', [fewer, boot])]);
    expect([idsOf(found?.quicker ?? []), found?.stronger, found?.finer]).toEqual([
      ['roof'],
      [],
      false,
    ]);
  });

  test('holds each zone of a panel against the same zone', () => {
    const zoned = (
      thinner: readonly PlannedStep[],
      thicker: readonly PlannedStep[],
    ): PanelPlan => ({
      ...panel('roof', 2),
      zones: (['thinner', 'thicker'] as const).map((zone) => {
        const part = panel('roof', 1, zone === 'thinner' ? thinner : thicker);
        return { ...part, survey: { ...part.survey, zone }, zone };
      }),
    });
    const long = zoned([step(SOFT, 3, 30)], [step(SOFT, 3, 30)]);
    const short = zoned([step(SOFT, 3, 30)], [step(SOFT, 1, 10)]);
    const [found] = cheaperAims([optionOf('correct', [long]), optionOf('full', [short])]);
    expect(found?.quicker.map(({ survey }) => partName(survey))).toEqual(['roof (thicker zone)']);
  });

  test('is told by its hours where there is no price', () => {
    const bare = [optionOf('correct', [roof, boot], null), optionOf('full', [roof], null)];
    const [found] = cheaperAims(bare);
    expect(found?.saved).toBeNull();
    expect(found?.timeSaved).toBeGreaterThan(0);
  });

  test('is none where it costs the same or more, or nothing is charged', () => {
    expect(cheaperAims([slow, slow])).toEqual([]);
    expect(cheaperAims([optionOf('enhance', [boot]), slow])).toEqual([]);
    const none = optionOf('full', [panel('roof', 2)]);
    expect(none.charged).toBeNull();
    expect(cheaperAims([slow, none])).toEqual([]);
    expect(cheaperAims([none, slow])).toEqual([]);
  });
});

describe('on cars of every film', () => {
  const panels = ['bonnet', 'roof', 'boot', 'wing front left', 'door front left'];
  const cars = Array.from({ length: 36 }, (_, car) =>
    Object.fromEntries(panels.map((id, i) => [id, 94 + car + ((7 * car + 5 * i) % 13)])),
  );
  const job = { taken_um: 3, galvanised: true };
  const shop = { prices: { currency: 'EUR', labour_minor_per_h: 4500 } };
  const found = cars.flatMap((means) =>
    cheaperAims(quoteOf({ readings: readingsOf(means), job, shop }).options),
  );

  test('an aim that costs less always says by what', () => {
    // Else this would hold of nothing.
    expect(found.length).toBeGreaterThan(2);
    for (const { left, stronger, quicker, fewerSetUps } of found) {
      const reasons = left.length + stronger.length + quicker.length + Math.max(0, fewerSetUps);
      expect(reasons).toBeGreaterThan(0);
    }
  });
});
