import { describe, expect, test } from 'vitest';
import { micrometres, squareMetres } from '../../src/base/units.ts';
import { sidePaintedWith } from '../../src/film/condition/painted-side.ts';
import type { PanelFacts } from '../../src/film/film-model.ts';
import type { Reading } from '../../src/film/reading.ts';
import type { Survey } from '../../src/film/survey.ts';
import { filmModel } from '../../src/formats/models.ts';
import { fiveAround, onFace, panelOf, plainPanel, reading, surveyOf } from './car-builder.ts';

const SIDE = ['wing', 'door-front', 'door-rear', 'quarter'] as const;
const MIDDLE = ['bonnet', 'boot'] as const;
const sided = (side: 'left' | 'right') => {
  const other = side === 'left' ? 'right' : 'left';
  return SIDE.flatMap((part) => [
    plainPanel(`${part}-${side}`, { mirror: `${part}-${other}` }),
    ...(part === 'door-front'
      ? [plainPanel(`sill-${side}`, { mirror: `sill-${other}`, area: squareMetres(0.2) })]
      : []),
  ]);
};
const PANELS = [
  ...sided('right'),
  ...sided('left').reverse(),
  ...[...MIDDLE, 'roof'].map((id) => plainPanel(id)),
];
const RIGHT = SIDE.map((part) => `${part}-right`);

type Car = {
  /** By how much panels of the right side read over 115 µm, from wing to quarter. */
  readonly over: readonly number[];
  readonly middle?: number;
  readonly more?: readonly Reading[];
  readonly factsOf?: (id: string) => Partial<PanelFacts>;
  readonly points?: typeof fiveAround;
  readonly without?: readonly string[];
  readonly mirror?: number;
};

function carOf({
  over,
  middle = 115,
  more = [],
  factsOf,
  points = fiveAround,
  without = [],
  mirror = 25,
}: Car): Survey {
  const readings = [
    ...SIDE.flatMap((part, i) => [
      ...points(`${part}-right`, 115 + (over[i] ?? 0)),
      ...points(`${part}-left`, 115),
    ]),
    ...MIDDLE.flatMap((id) => points(id, middle)),
    ...more,
  ].filter(({ panel }) => !without.includes(panel));
  return surveyOf({
    panels: PANELS,
    readings,
    ...(factsOf === undefined ? {} : { factsOf }),
    model: {
      ...filmModel,
      conditions: { ...filmModel.conditions, mirror: micrometres(mirror) },
    },
  });
}

const doubted = (survey: Survey): readonly string[] =>
  survey.panels.filter((one) => sidePaintedWith(one) !== undefined).map(({ panel }) => panel.id);

/** Every panel at five points, but for one. */
const oneOf =
  (once: string, um?: number): typeof fiveAround =>
  (panel, centre) =>
    panel === once ? onFace(panel, um ?? centre) : fiveAround(panel, centre);

const settleOf = (survey: Survey, id: string): string | undefined =>
  panelOf(survey, id).advice.find(({ code }) => code === 'settle')?.text;

const shut = (panel: string, um: number): Reading => reading(panel, 's', um, { place: 'shut' });

describe('a whole side that reads over the other', () => {
  const survey = carOf({ over: [31, 32, 30, 31] });

  test('is original or painted again, each as likely, and nothing may go till that is settled', () => {
    expect(doubted(survey)).toEqual(RIGHT);
    for (const id of RIGHT) {
      const { condition, budget, boundBy, otherSide, advice, sureness } = panelOf(survey, id);
      expect([condition, budget, boundBy.code]).toEqual(['original', 0, 'near-line']);
      expect(otherSide).toMatchObject({ condition: 'refinished', budget: 0 });
      expect(otherSide?.ifWordHolds).toBeGreaterThan(2);
      expect(sureness?.deciding.otherSide).toBe(filmModel.conditions.paintedOverMost);
      expect(advice.find(({ code }) => code === 'settle')?.text).toMatch(
        /^word of what .*, or the shuts of both door fronts?.* and both door rear.* read \(place shut.*test spot .*: settles it$/,
      );
    }
  });

  test('leaves the other side and the panels between them as they are', () => {
    const free = ['wing-left', 'quarter-left', 'bonnet'].map((id) => panelOf(survey, id).budget);
    expect(Math.min(...free)).toBeGreaterThan(2);
  });

  test('is told of in one note, in place of one for each pair', () => {
    expect(survey.notes.map(({ code, value }) => [code, value])).toEqual([['side-painted', 31]]);
    expect(survey.notes[0]?.text).toMatch(
      /^wing right, door front right, door rear right, quarter right read 31.0 µm/,
    );
  });

  test('is no less in doubt by more points that read the same', () => {
    const nine = (panel: string, centre: number): readonly Reading[] =>
      onFace(panel, ...[-4, 4, -4, 0, 4, -4, 4, -4, 4].map((off) => centre + off));
    const again = carOf({ over: [31, 32, 30, 31], points: nine });
    expect(doubted(again)).toEqual(RIGHT);
    expect(panelOf(again, 'wing-right').budget).toBe(0);
  });

  test('is in no doubt where it reads less than sides painted alike may differ by', () => {
    expect(doubted(carOf({ over: [24, 24, 25, 26] }))).toEqual([]);
    expect(doubted(carOf({ over: [24, 24, 25, 26], mirror: 20 }))).toEqual(RIGHT);
  });

  test('takes a panel that lies nearer to the others of it than to its mirror panel with it, and no other', () => {
    expect(doubted(carOf({ over: [20, 34, 34, 34] }))).toEqual(RIGHT);
    expect(doubted(carOf({ over: [34, 34, 34, 18] }))).toEqual(RIGHT);
    expect(doubted(carOf({ over: [13, 34, 34, 34] }))).toEqual(RIGHT.slice(1));
    expect(doubted(carOf({ over: [34, 34, 34, 5] }))).toEqual(RIGHT.slice(0, 3));
  });
});

describe('two panels of a side', () => {
  test('are in doubt together where they lie over the line for sure', () => {
    expect(doubted(carOf({ over: [0, 33, 33, 0] }))).toEqual(RIGHT.slice(1, 3));
    expect(doubted(carOf({ over: [0, 27, 27, 0] }))).toEqual([]);
  });

  test('are neighbours with a sill between them that reads as its mirror panel, or that nobody read', () => {
    const sills = ['sill-right', 'sill-left'].flatMap((id) => fiveAround(id, 115));
    expect(doubted(carOf({ over: [0, 33, 33, 0], more: sills }))).toEqual(RIGHT.slice(1, 3));
  });

  test('are none with a panel between them that is as its mirror panel, or that nobody read', () => {
    expect(doubted(carOf({ over: [33, 0, 33, 0] }))).toEqual([]);
    expect(doubted(carOf({ over: [33, 33, 33, 0], without: ['door-front-right'] }))).toEqual([]);
    expect(doubted(carOf({ over: [33, 14, 33, 0], without: ['door-front-left'] }))).toEqual([]);
  });

  test('are neighbours with a panel between them that reads as they do, its mirror panel not read or at one point', () => {
    const two = { over: [27, 28, 28, 27], without: ['door-front-left', 'door-rear-left'] };
    expect(doubted(carOf(two))).toEqual(RIGHT);
    const once = { over: [33, 33, 33, 0], points: oneOf('door-front-left') };
    expect(doubted(carOf(once))).toEqual(RIGHT.slice(0, 3));
  });

  test('take with them what lies beyond such a panel and nearer to them than to its mirror panel', () => {
    const without = ['door-rear-left'];
    expect(doubted(carOf({ over: [34, 34, 34, 20], without }))).toEqual(RIGHT);
    expect(doubted(carOf({ over: [34, 34, 34, 5], without }))).toEqual(RIGHT.slice(0, 2));
  });

  test('are none where one of them alone is over the line, or the panel between reads as thin as the other side', () => {
    const without = ['door-front-left', 'door-rear-left'];
    expect(doubted(carOf({ over: [31, 28, 28, 24], without }))).toEqual([]);
    expect(doubted(carOf({ over: [27, 12, 28, 27], without }))).toEqual([]);
    expect(doubted(carOf({ over: [0, 28, 28, 27], without }))).toEqual([]);
  });

  test('are none where that one point of the mirror panel reads as thick', () => {
    const once = oneOf('door-front-left', 146);
    expect(doubted(carOf({ over: [33, 33, 33, 0], points: once }))).toEqual([]);
  });

  test('are judged one by one where only one of them stands out', () => {
    const one = carOf({ over: [0, 38, 12, 0] });
    expect(doubted(one)).toEqual([]);
    expect(one.notes.map(({ code }) => code)).toEqual(['mirror-difference']);
    expect(doubted(carOf({ over: [0, 38, 12, 0], mirror: 20 }))).toEqual([]);
  });

  test('of one point each say nothing of how they were painted', () => {
    const once = (panel: string, centre: number): readonly Reading[] => onFace(panel, centre);
    expect(doubted(carOf({ over: [0, 35, 35, 0], points: once }))).toEqual([]);
  });
});

describe('a panel beside one that is known to be repaint', () => {
  const painted = (id: string): Partial<PanelFacts> =>
    id === 'wing-right' ? { paintedDaysAgo: 900 } : {};

  test('is in doubt by itself as soon as it reads over the line', () => {
    expect(doubted(carOf({ over: [30, 27, 0, 0], factsOf: painted }))).toEqual([
      'door-front-right',
    ]);
    expect(doubted(carOf({ over: [0, 27, 0, 0], factsOf: painted }))).toEqual(['door-front-right']);
    expect(doubted(carOf({ over: [30, 24, 0, 0], factsOf: painted }))).toEqual([]);
    expect(doubted(carOf({ over: [30, 0, 27, 0], factsOf: painted }))).toEqual([]);
    expect(doubted(carOf({ over: [27, 27, 0, 0] }))).toEqual([]);
  });

  test('is so too where that is known by its film alone', () => {
    expect(doubted(carOf({ over: [90, 27, 0, 0] }))).toEqual(['door-front-right']);
  });

  test('is told with its side where the whole of that stands out', () => {
    const survey = carOf({ over: [31, 31, 31, 31], factsOf: painted });
    expect(doubted(survey)).toEqual(RIGHT.slice(1));
    expect(panelOf(survey, 'wing-right').condition).toBe('refinished');
  });
});

describe('which side is the odd one', () => {
  test('is told by three panels of neither', () => {
    const roof = (um: number) => ({ more: fiveAround('roof', um), middle: um });
    expect(doubted(carOf({ over: [31, 31, 31, 31], ...roof(146) }))).toEqual([]);
    expect(doubted(carOf({ over: [31, 31, 31, 31], ...roof(118) }))).toEqual(RIGHT);
  });

  test('is in doubt by two of them alone', () => {
    const both = carOf({ over: [31, 31, 31, 31], middle: 140, without: ['boot'] });
    expect(doubted(both)).toEqual([...RIGHT, 'bonnet']);
  });

  test('is told of all that carry the usual film where most may have been painted over', () => {
    const most = surveyOf({
      panels: PANELS,
      readings: [
        ...RIGHT.flatMap((id) => fiveAround(id, 148)),
        ...MIDDLE.flatMap((id) => fiveAround(id, 147)),
        ...SIDE.flatMap((part) => fiveAround(`${part}-left`, 116)),
      ],
    });
    expect(doubted(most)).toEqual([]);
    for (const id of [...RIGHT, ...MIDDLE]) {
      expect(panelOf(most, id).sureness?.deciding.shownBy).toBeDefined();
      expect(panelOf(most, id).budget).toBe(0);
    }
  });

  test('is no question of a side held to one that was wrapped, painted again, or read ten times too thick', () => {
    const left = (facts: Partial<PanelFacts>) =>
      carOf({ over: [31, 31, 31, 31], factsOf: (id) => (id.endsWith('left') ? facts : {}) });
    expect(doubted(left({ covered: true }))).toEqual([]);
    expect(doubted(left({ paintedDaysAgo: 900 }))).toEqual([]);
    const slipped = carOf({
      over: [0, 33, 33, 0],
      without: ['door-rear-right'],
      more: onFace('door-rear-right', 1440, 1520, 1440, 1480, 1520),
    });
    expect(doubted(slipped)).toEqual([]);
  });
});

describe('a panel of neither side', () => {
  const withRoof = (bonnet: number) =>
    carOf({ over: [31, 31, 31, 31], middle: bonnet, without: ['boot'], more: ROOF });
  const ROOF = fiveAround('roof', 115);

  test('that reads rather as the thick side does is held with it, and one that does not is as it was', () => {
    const joined = withRoof(146);
    expect(doubted(joined)).toEqual([...RIGHT, 'bonnet']);
    expect(panelOf(joined, 'bonnet').budget).toBe(0);
    expect(doubted(withRoof(131))).toEqual([...RIGHT, 'bonnet']);
    expect(doubted(withRoof(130))).toEqual(RIGHT);
    expect(panelOf(withRoof(130), 'bonnet').budget).toBeGreaterThan(2);
  });

  test('is told with the side, as one that reads as that does', () => {
    const { notes } = withRoof(146);
    expect(notes.map(({ code }) => code)).toEqual(['side-painted']);
    expect(notes[0]?.text).toContain('as a rule, and bonnet reads rather as they do: they may');
    const two = carOf({ over: [0, 33, 33, 0], middle: 148, more: ROOF });
    expect(two.notes[0]?.text).toContain('bonnet, boot read rather as they do: they may');
    expect(withRoof(115).notes[0]?.text).not.toContain('rather');
  });

  test('is settled by the shuts of the side, or by a test spot of its own', () => {
    expect(settleOf(withRoof(146), 'bonnet')).toContain('or a test spot of its own without colour');
    const shuts = ['door-front', 'door-rear'].flatMap((door) => [
      shut(`${door}-right`, 120),
      shut(`${door}-left`, 92),
    ]);
    const settled = carOf({
      ...{ over: [31, 31, 31, 31], middle: 146, without: ['boot'] },
      more: [...ROOF, ...shuts],
    });
    expect(doubted(settled)).toEqual([]);
    expect(panelOf(settled, 'bonnet').budget).toBeGreaterThan(2);
  });

  test('that is known to be repaint, or was read at one point, is none of them', () => {
    const painted = (id: string): Partial<PanelFacts> =>
      id === 'bonnet' ? { paintedDaysAgo: 900 } : {};
    const car = { over: [31, 31, 31, 31], middle: 146, without: ['boot'], more: ROOF };
    expect(doubted(carOf({ ...car, factsOf: painted }))).toEqual(RIGHT);
    expect(doubted(carOf({ ...car, points: oneOf('bonnet', 146) }))).toEqual(RIGHT);
  });
});

describe('what was put back', () => {
  test('counts as film that was there, so that a side polished before is not made the thin one', () => {
    const polished = (id: string): Partial<PanelFacts> =>
      id.endsWith('left') ? { taken: micrometres(9) } : {};
    expect(doubted(carOf({ over: [31, 31, 31, 31], factsOf: polished }))).toEqual([]);
  });
});

describe('door shuts of both sides', () => {
  const shuts = (right: number, doors: readonly string[] = ['door-front', 'door-rear']) =>
    carOf({
      over: [31, 31, 31, 31],
      more: doors.flatMap((door) => [shut(`${door}-right`, right), shut(`${door}-left`, 92)]),
    });

  test('that differ as the faces do show that nothing was painted over', () => {
    expect(doubted(shuts(120))).toEqual([]);
    expect(panelOf(shuts(120), 'wing-right').budget).toBeGreaterThan(2);
  });

  test('that are alike leave it in doubt, and are asked for no more', () => {
    const alike = shuts(94);
    expect(doubted(alike)).toEqual(RIGHT);
    expect(settleOf(alike, 'wing-right')).not.toContain('shuts');
    expect(alike.notes[0]?.text).toContain(
      'the door shuts of both sides read alike (2.0 µm apart): the film on the faces came later',
    );
  });

  test('that differ the other way show neither', () => {
    const other = shuts(62);
    expect(doubted(other)).toEqual(RIGHT);
    expect(other.notes[0]?.text).toContain(
      'the door shuts read 30.0 µm the other way: they show neither',
    );
    expect(settleOf(other, 'wing-right')).not.toContain('shuts of');
    expect(carOf({ over: [31, 31, 31, 31] }).notes[0]?.text).not.toContain('shuts');
  });

  test('are asked for of the doors among them by name, and not where there is but one', () => {
    expect(settleOf(carOf({ over: [33, 33, 0, 0] }), 'wing-right')).not.toContain('shuts');
    expect(settleOf(carOf({ over: [0, 33, 33, 0] }), 'door-front-right')).toContain(
      'shuts of both',
    );
  });

  test('count of a door whose mirror panel was read in the shut alone', () => {
    const faceless = (um: number) =>
      carOf({
        over: [31, 31, 31, 31],
        points: (panel, centre) => (panel === 'door-front-left' ? [] : fiveAround(panel, centre)),
        more: ['door-front', 'door-rear'].flatMap((door) => [
          shut(`${door}-right`, um),
          shut(`${door}-left`, 92),
        ]),
      });
    expect(doubted(faceless(120))).toEqual([]);
    expect(doubted(faceless(93))).toEqual(RIGHT);
  });

  test('of one door, or of one side, settle nothing', () => {
    expect(doubted(shuts(120, ['door-front']))).toEqual(RIGHT);
    const ofOneSide = carOf({
      over: [31, 31, 31, 31],
      more: [shut('door-front-right', 120), shut('door-rear-right', 120)],
    });
    expect(doubted(ofOneSide)).toEqual(RIGHT);
  });
});

test('two operators who differ may have read a side each: what they differ by counts in the doubt', () => {
  const by = (betweenOperators: number) => ({
    ...filmModel,
    measurement: { ...filmModel.measurement, betweenOperators: micrometres(betweenOperators) },
  });
  const read = ['door-front', 'door-rear'].flatMap((part) => [
    ...fiveAround(`${part}-right`, 148),
    ...fiveAround(`${part}-left`, 115),
  ]);
  const readings = [
    ...read,
    ...['wing-left', 'wing-right', ...MIDDLE].flatMap((id) => fiveAround(id, 115)),
  ];
  const of = (sd: number) => doubted(surveyOf({ panels: PANELS, readings, model: by(sd) }));
  expect(of(0)).toEqual(['door-front-right', 'door-rear-right']);
  expect(of(6)).toEqual([]);
});
