/** From where on panels count as mixed up: 2·ln of the likelihood ratio, reckoned by hand from means. */
import { describe, expect, test } from 'vitest';
import { at } from '../../src/base/at.ts';
import { expertReference, type Reference } from '../../src/training/reference.ts';
import { swappedPanels } from '../../src/training/swapped-panels.ts';
import { seededRandom } from '../samples/seeded-random.ts';
import {
  drawCar,
  expertOf,
  model,
  oneGauge,
  panelIds,
  readCar,
  readingAt,
  sigmaPt,
  surveyOf,
  usualHabit,
} from './true-class.ts';

type Means = Readonly<Record<string, number>>;
const AROUND = [-1, 1, 0, 1, -1];
const survey = (means: Means, marked = false) =>
  surveyOf(
    Object.entries(means).flatMap(([panel, mean], i) =>
      AROUND.map((by, k) =>
        readingAt(panel, `${k + 1}`, 1, mean + by, { marked, line: 10 * i + k }),
      ),
    ),
  );
const reasonsOf = (trainee: Means, reference: Reference) =>
  swappedPanels(
    {
      trainee: survey(trainee),
      reference,
      sigmaPt,
      gauges: { same: true, stated: false },
    },
    model,
  );
const told = (trainee: Means, reference: Reference) =>
  reasonsOf(trainee, reference).map(({ code, panels }) => [code, [...panels].sort()]);

/** Variance of the difference of two means that both took of five points of their own, σ_pt² besides. */
const varianceOf = (reference: Reference, panel: string): number => {
  const { spread } = reference.panels.get(panel) ?? { spread: { sd: Number.NaN } };
  return sigmaPt.value ** 2 + (2 * spread.sd ** 2) / 5;
};
/** Named against swapped: with one at 100 and the other at 100 + apart, both read the other way round. */
const evidence = (apart: number, reference: Reference, one: string, other: string): number =>
  apart ** 2 / varianceOf(reference, one) + apart ** 2 / varianceOf(reference, other);
const proof = 2 * Math.log(1 / model.slips.falseAlarm);

/** How far apart two panels must be for their swap to be told, by trying. */
const leastApart = (tell: (apart: number) => readonly unknown[], from = 5): number => {
  let [low, high] = [from, 30];
  for (let k = 0; k < 16; k += 1) {
    const middle = (low + high) / 2;
    if (tell(middle).length > 0) high = middle;
    else low = middle;
  }
  return high;
};

describe('two panels', () => {
  test('are swapped from where that is likelier by what a false alarm allows, K = 1,000', () => {
    const referenceAt = (apart: number) =>
      expertReference(survey({ bonnet: 110, roof: 110 + apart }));
    const least = leastApart((apart) =>
      told({ bonnet: 110 + apart, roof: 110 }, referenceAt(apart)),
    );
    expect(evidence(least, referenceAt(least), 'bonnet', 'roof')).toBeCloseTo(proof, 2);
    expect(told({ bonnet: 130, roof: 110 }, referenceAt(20))).toEqual([
      ['panels-swapped', ['bonnet', 'roof']],
    ]);
  });

  test('of a left and a right are told as sides', () => {
    const reference = expertReference(survey({ 'door-front-left': 110, 'door-front-right': 130 }));
    expect(told({ 'door-front-left': 130, 'door-front-right': 110 }, reference)).toEqual([
      ['sides-swapped', ['door-front-left', 'door-front-right']],
    ]);
  });

  test('ask for more the more pairs there are to look at: 2·ln 3 with three panels', () => {
    const referenceAt = (apart: number) =>
      expertReference(survey({ bonnet: 110, roof: 110 + apart, boot: 140 }));
    const least = leastApart((apart) =>
      told({ bonnet: 110 + apart, roof: 110, boot: 140 }, referenceAt(apart)),
    );
    expect(evidence(least, referenceAt(least), 'bonnet', 'roof')).toBeCloseTo(
      proof + 2 * Math.log(3),
      2,
    );
  });

  test('are not swapped where one fits as it is named, or fits neither name', () => {
    const reference = expertReference(survey({ bonnet: 110, roof: 130 }));
    // The roof is read as the bonnet is: it alone is wrong.
    expect(told({ bonnet: 110, roof: 110 }, reference)).toEqual([]);
    // Once swapped the roof is off by a z of 3, or nearly.
    const three = 3 * Math.sqrt(varianceOf(reference, 'bonnet'));
    expect(told({ bonnet: 130, roof: 110 - three - 0.01 }, reference)).toEqual([]);
    expect(told({ bonnet: 130, roof: 110 - three + 0.01 }, reference)).toEqual([
      ['panels-swapped', ['bonnet', 'roof']],
    ]);
  });

  test('that the reference has not are left alone', () => {
    const reference = expertReference(survey({ bonnet: 110, boot: 118 }));
    expect(told({ bonnet: 140, roof: 110 }, reference)).toEqual([]);
    expect(told({ roof: 110, bonnet: 140 }, reference)).toEqual([]);
  });

  test('seem swapped where their means alone say so, and are swapped where each of their marks does', () => {
    const reference = (marked: boolean) =>
      expertReference(survey({ bonnet: 110, roof: 112, boot: 150 }, marked));
    const swap = (marked: boolean) => survey({ bonnet: 150, roof: 112, boot: 110 }, marked);
    const saidAt = (marked: boolean) =>
      swappedPanels(
        {
          trainee: swap(marked),
          reference: reference(marked),
          sigmaPt,
          gauges: { same: true, stated: false },
        },
        model,
      ).map(({ text }) => text);
    expect(saidAt(false)).toEqual([
      'bonnet and boot lid seem swapped: with their names changed the means of their points agree with the reference; by their means the name of roof may have moved as well; write the name of a panel while you stand before it',
    ]);
    expect(saidAt(true)).toEqual([
      'bonnet and boot lid are swapped: with their names changed the readings agree with the reference; write the name of a panel while you stand before it',
    ]);
  });

  test('are told as a pair where a third reads as it is named, though it would fit the name of one of them', () => {
    const reference = expertReference(survey({ bonnet: 110, roof: 113, boot: 150 }));
    expect(told({ bonnet: 150, roof: 113, boot: 110 }, reference)).toEqual([
      ['panels-swapped', ['bonnet', 'boot']],
    ]);
    // Bonnet and boot are the surer pair though bonnet and roof come first.
    expect(told({ bonnet: 151, roof: 112, boot: 111 }, reference)).toEqual([
      ['panels-swapped', ['bonnet', 'boot']],
    ]);
  });
});

describe('panels whose means fit more names than one', () => {
  const rest = 'may have moved as well; write the name of a panel while you stand before it';
  const saidOf = (reference: Means, [one, other]: readonly [string, string]) => {
    const swap = { [one]: reference[other] ?? 0, [other]: reference[one] ?? 0 };
    return reasonsOf({ ...reference, ...swap }, expertReference(survey(reference)))
      .map(({ text }) => text)
      .join('');
  };

  test('are told with those that may belong to them, the likeliest first, and of many with how many', () => {
    const alike = { bonnet: 110, boot: 150, roof: 112, 'door-rear-left': 111 };
    expect(saidOf(alike, ['bonnet', 'boot'])).toContain(
      `; by their means the names of rear left door and roof ${rest}`,
    );
    const three = { ...alike, 'wing-front-left': 109 };
    expect(saidOf(three, ['bonnet', 'boot'])).toMatch(/the names of .+, .+ and .+ may have moved/u);
    const four = { ...three, 'quarter-right': 108 };
    expect(saidOf(four, ['bonnet', 'boot'])).toContain(`; by their means 4 other names ${rest}`);
  });

  test('are told so of a left and a right, and of none that would not fit', () => {
    const doors = { 'door-front-left': 110, 'door-front-right': 150, roof: 111, boot: 190 };
    expect(saidOf(doors, ['door-front-left', 'door-front-right'])).toBe(
      'left and right seem swapped, front left door and front right door: with the sides changed the readings agree with the reference; by their means the name of roof may have moved as well; sides are as seen from the driver’s seat',
    );
    expect(saidOf({ ...doors, roof: 190 }, ['door-front-left', 'door-front-right'])).not.toContain(
      'as well',
    );
  });

  test('are told with none that fits no name: it is off by itself', () => {
    const doors = { bonnet: 110, boot: 150, roof: 111 };
    const said = (roof: number) =>
      reasonsOf({ bonnet: 150, boot: 110, roof }, expertReference(survey(doors)))[0]?.text ?? '';
    expect(said(111)).toContain('the name of roof may have moved as well');
    expect(said(60)).toMatch(/^bonnet and boot lid seem swapped: /u);
    expect(said(60)).not.toContain('as well');
  });

  test('are told with another from where that is half as likely: its own name fits it better', () => {
    const car = (apart: number): Means => ({ bonnet: 110, boot: 150, roof: 110 - apart });
    const least = leastApart(
      (apart) => (saidOf(car(apart), ['bonnet', 'boot']).includes('as well') ? [] : [1]),
      0,
    );
    // A ring of the three has the bonnet's film under the roof and the roof's under the boot: each off by that much.
    const own = varianceOf(expertReference(survey(car(least))), 'roof');
    expect((2 * least ** 2) / own).toBeCloseTo(2 * Math.log(2), 2);
  });

  test('are, of a ring of three with a repaint that is told as a pair, told with the third', () => {
    const random = seededRandom(550_711);
    const others = panelIds.filter((id) => id !== 'quarter-left');
    const parts = Array.from({ length: 60 }, () => {
      const drawn = drawCar(random);
      const expert = expertOf(random, drawn);
      const place = Math.floor(random() * (others.length - 1));
      const ring = ['quarter-left', at(others, place), at(others, place + 1)];
      const moved = readCar(random, drawn, usualHabit).map((one) => {
        const from = ring.indexOf(one.panel);
        return from < 0 ? one : { ...one, panel: at(ring, (from + 1) % ring.length) };
      });
      const reasons = swappedPanels(
        {
          trainee: surveyOf(moved, undefined, expert),
          reference: expert,
          sigmaPt,
          gauges: oneGauge,
        },
        model,
      );
      const [first] = reasons;
      const isPart = first?.panels.length === 2 && first.panels.every((one) => ring.includes(one));
      return isPart ? first.text : '';
    }).filter((text) => text !== '');
    expect(parts.length).toBeGreaterThan(15);
    expect(parts.filter((text) => !text.includes('may have moved as well')).length).toBeLessThan(
      parts.length / 10,
    );
  });
});

describe('names that moved on by one', () => {
  const ring = (apart: number) => ({
    reference: expertReference(survey({ bonnet: 110, roof: 110 + apart, boot: 110 + 2 * apart })),
    trainee: { bonnet: 110 + apart, roof: 110 + 2 * apart, boot: 110 },
  });

  test('are told as that and not as a pair, with whose readings stand under which name', () => {
    const { reference, trainee } = ring(30);
    const [one, ...others] = reasonsOf(trainee, reference);
    expect(others).toEqual([]);
    expect(one).toMatchObject({
      code: 'panels-swapped',
      panels: ['bonnet', 'roof', 'boot'],
      text: 'the names of bonnet, roof and boot lid seem moved on by one: what stands under bonnet agrees with the reference of roof, what stands under roof with that of boot lid and what stands under boot lid with that of bonnet; write the name of a panel while you stand before it',
    });
    const back = { bonnet: 170, roof: 110, boot: 140 };
    expect(
      reasonsOf(back, reference).map(({ text, panels }) => [panels, text.slice(0, 98)]),
    ).toEqual([
      [
        ['bonnet', 'boot', 'roof'],
        'the names of bonnet, boot lid and roof seem moved on by one: what stands under bonnet agrees with ',
      ],
    ]);
  });

  test('are told from where no pair is half as likely, and just below that nothing is', () => {
    const means = (apart: number) => ({ bonnet: 110, roof: 110 + apart, boot: 110 + 4 * apart });
    const toldAt = (apart: number) => {
      const { bonnet, roof, boot } = means(apart);
      return told(
        { bonnet: roof, roof: boot, boot: bonnet },
        expertReference(survey(means(apart))),
      );
    };
    const least = leastApart(toldAt, 4);
    expect(toldAt(least)).toEqual([['panels-swapped', ['bonnet', 'boot', 'roof']]]);
    // By squares of `apart` over the variance the ring gains 1, 9 and 16; roof and boot alone gain 9 and 15, and move one
    // panel less, at 3·ln 3.
    const square = least ** 2 / varianceOf(expertReference(survey(means(least))), 'roof');
    expect(2 * square - 3 * Math.log(3)).toBeCloseTo(2 * Math.log(2), 2);
    expect(24 * square).toBeGreaterThan(proof + 2 * Math.log(3));
  });

  test('all over the car are told by the first of them', () => {
    const names = [
      'bonnet',
      'roof',
      'boot',
      'door-front-left',
      'door-rear-right',
      'wing-front-left',
    ];
    const films = [110, 190, 130, 170, 150, 210];
    const means = (from: number) =>
      Object.fromEntries(names.map((name, i) => [name, films[(i + from) % films.length] ?? 0]));
    const [one, ...others] = reasonsOf(means(1), expertReference(survey(means(0))));
    expect(others).toEqual([]);
    expect(one?.panels).toEqual(names);
    expect(one?.text).toBe(
      'the names of bonnet, roof, boot lid, front left door and 2 more seem moved on by one: what stands under bonnet agrees with the reference of roof, what stands under roof with that of boot lid, what stands under boot lid with that of front left door, and so on; write the name of a panel while you stand before it',
    );
  });

  describe('each in the order of the file', () => {
    const names = ['roof', 'bonnet', 'boot', 'door-rear-right', 'wing-front-left', 'quarter-left'];
    /** The boot lid is like the door after it, so that what stands under it fits either name. */
    const films = [110, 190, 130, 130, 150, 210];
    const moved = (by: number, some = films): Means =>
      Object.fromEntries(
        names.map((name, i) => [name, some[(i + by + names.length) % names.length] ?? 0]),
      );
    const car = expertReference(survey(moved(0)));

    test('are all told, with a panel that is like the next, onwards and back', () => {
      expect(reasonsOf(moved(1), car).map(({ panels }) => panels)).toEqual([names]);
      const [first = '', ...others] = names;
      expect(reasonsOf(moved(-1), car).map(({ panels }) => panels)).toEqual([
        [first, ...others.reverse()],
      ]);
    });

    test('are told but for one that reads as it is named, and is like no other', () => {
      const apart = [...films.slice(0, 5), 320];
      const five = { ...moved(1, apart), 'wing-front-left': 110, 'quarter-left': 320 };
      const [one, ...others] = told(five, expertReference(survey(moved(0, apart))));
      expect(others).toEqual([]);
      expect(one?.[1]).not.toContain('quarter-left');
      expect(one?.[1]).toContain('roof');
    });

    test('are two that are swapped, where the others are alike', () => {
      const repaint = [110, 110, 110, 190, 110, 110];
      const [one, ...others] = told(moved(1, repaint), expertReference(survey(moved(0, repaint))));
      expect(others).toEqual([]);
      expect(one).toEqual(['panels-swapped', ['boot', 'door-rear-right']]);
    });

    test('are not told where they may as well have moved the other way', () => {
      const four = { roof: 110, bonnet: 150, boot: 110, 'door-rear-right': 150 };
      const other = { roof: 150, bonnet: 110, boot: 150, 'door-rear-right': 110 };
      expect(told(other, expertReference(survey(four)))).toEqual([]);
    });

    test('are told with a panel that was passed over, and by two that moved at the least', () => {
      const reference = expertReference(survey({ roof: 110, bonnet: 190, boot: 140 }));
      expect(reasonsOf({ roof: 190, bonnet: 140 }, reference).map(({ text }) => text)).toEqual([
        'the names of roof and bonnet seem moved on by one: what stands under roof agrees with the reference of bonnet and what stands under bonnet with that of boot lid; the roof itself was passed over; write the name of a panel while you stand before it',
      ]);
      expect(told({ roof: 110, bonnet: 140 }, reference)).toEqual([]);
    });

    test('pass over no panel whose reading is keyed wrongly: that was read', () => {
      const reference = expertReference(survey({ roof: 110, bonnet: 190, boot: 140 }));
      const keyedAt = (keyed: readonly string[]) =>
        swappedPanels(
          {
            ...{ trainee: survey({ roof: 190, bonnet: 140, boot: 1100 }), reference, sigmaPt },
            ...{ gauges: oneGauge, keyed: new Set(keyed) },
          },
          model,
        );
      expect(keyedAt(['boot'])).toEqual([]);
    });

    test('back are told from the one whose own film was not read', () => {
      const reference = expertReference(survey({ roof: 110, bonnet: 190, boot: 140 }));
      const [one, ...others] = reasonsOf({ bonnet: 110, boot: 190 }, reference);
      expect(others).toEqual([]);
      expect(one?.text).toContain(
        'what stands under boot lid agrees with the reference of bonnet and what stands under bonnet with that of roof; the boot lid itself was passed over',
      );
    });

    test('are not all told where one of them would not fit the next name', () => {
      const off = { ...moved(1), 'door-rear-right': 60 };
      expect(told(off, car).flatMap(([, panels]) => panels)).not.toContain('door-rear-right');
    });
  });

  test('are not told where one of them fits neither name', () => {
    const { reference, trainee } = ring(30);
    expect(told({ ...trainee, boot: 60 }, reference)).toEqual([]);
  });
});

describe('the sides of a car', () => {
  const doors = ['door-front', 'door-rear', 'wing-front'];
  const car = (left: number, right: number, some = doors): Means =>
    Object.fromEntries(
      some.flatMap((one) => [
        [`${one}-left`, left],
        [`${one}-right`, right],
      ]),
    );

  test('are all swapped where the pairs together prove it, though none does by itself', () => {
    const reference = expertReference(survey(car(110, 115)));
    const of = (one: string) => evidence(5, reference, `${one}-left`, `${one}-right`);
    expect(of('door-front')).toBeLessThan(proof);
    expect(doors.reduce((sum, one) => sum + of(one), 0)).toBeGreaterThan(proof);
    const [[code, panels] = []] = told(car(115, 110), reference);
    expect([code, panels]).toEqual(['sides-swapped', Object.keys(car(0, 0)).sort()]);
    // One pair is no car.
    const one = expertReference(survey(car(110, 115, ['door-front'])));
    expect(told(car(115, 110, ['door-front']), one)).toEqual([]);
  });

  test('that are swapped are held to as many ways as there are pairs of sides', () => {
    const others = { roof: 150, boot: 180, bonnet: 210 };
    const referenceAt = (apart: number) =>
      expertReference(survey({ ...car(110, 110 + apart, ['door-front']), ...others }));
    const trainee = (apart: number): Means => ({
      ...car(110 + apart, 110, ['door-front']),
      ...others,
    });
    const least = leastApart((apart) => told(trainee(apart), referenceAt(apart)));
    const of = evidence(least, referenceAt(least), 'door-front-left', 'door-front-right');
    expect(of).toBeCloseTo(proof, 2);
  });

  test('are not all swapped where half of the pairs are not, though they would fit swapped', () => {
    const half: Means = { ...car(110, 111), ...car(110, 140, ['wing-front', 'quarter']) };
    const swap: Means = { ...half, ...car(140, 110, ['wing-front', 'quarter']) };
    expect(told(swap, expertReference(survey(half)))).toEqual([
      ['sides-swapped', ['wing-front-left', 'wing-front-right']],
      ['sides-swapped', ['quarter-left', 'quarter-right']],
    ]);
  });

  test('are not where most pairs fit as they are named', () => {
    const reference = expertReference(survey(car(110, 125)));
    const some = { ...car(110, 125), 'door-front-left': 125, 'door-front-right': 110 };
    expect(told(some, reference)).toEqual([
      ['sides-swapped', ['door-front-left', 'door-front-right']],
    ]);
  });

  test('are not all swapped where one pair proves it alone and most read as they are named, though they would fit swapped', () => {
    const apart = {
      ...car(110, 111),
      'wing-front-left': 110,
      'wing-front-right': 130,
    };
    const reference = expertReference(survey(apart));
    const trainee = { ...apart, 'wing-front-left': 130, 'wing-front-right': 110 };
    expect(told(trainee, reference)).toEqual([
      ['sides-swapped', ['wing-front-left', 'wing-front-right']],
    ]);
  });

  test('are all swapped from where those but the surest are twice as likely swapped', () => {
    const alike = (apart: number): Means => ({
      ...car(110, 110 + apart),
      'wing-front-right': 130,
    });
    const trainee = (apart: number): Means => ({
      ...car(110 + apart, 110),
      'wing-front-left': 130,
    });
    const toldAt = (apart: number) => told(trainee(apart), expertReference(survey(alike(apart))));
    const least = leastApart((apart) => (toldAt(apart)[0]?.[1]?.length === 6 ? [1] : []), 0.5);
    const of = (one: string) =>
      evidence(least, expertReference(survey(alike(least))), `${one}-left`, `${one}-right`);
    expect(of('door-front') + of('door-rear')).toBeCloseTo(2 * Math.log(2), 2);
    expect(toldAt(0.5)).toEqual([['sides-swapped', ['wing-front-left', 'wing-front-right']]]);
  });

  test('are not all swapped where a pair fits no better either way', () => {
    const reference = expertReference(survey(car(110, 125)));
    const spoilt = { ...car(125, 110), 'wing-front-left': 160 };
    expect(told(spoilt, reference)).toEqual([
      ['sides-swapped', ['door-front-left', 'door-front-right']],
      ['sides-swapped', ['door-rear-left', 'door-rear-right']],
    ]);
  });
});
