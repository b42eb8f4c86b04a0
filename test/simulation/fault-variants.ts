/** Other ways of spoiling a survey than those the checks were made for: parts of it, small ones, mixtures. */
import type { Reading } from '../../src/film/reading.ts';
import type { ReasonCode } from '../../src/training/reasons.ts';
import { normal } from '../samples/seeded-random.ts';
import { changed, type Habit, type Random, rounded } from '../training/true-class.ts';

type Readings = readonly Reading[];

export type FaultVariant = {
  readonly name: string;
  /** Any of these names it. */
  readonly codes: readonly ReasonCode[];
  readonly spoil: (readings: Readings, random: Random) => Readings;
  readonly habit?: Partial<Habit>;
  /** Share of surveys in which it must be named, where that is not the usual one. */
  readonly seen?: number;
  /** Share of surveys in which another blunder may be told besides, where that is not the usual one. */
  readonly besides?: number;
};

const pick = (random: Random, count: number): number => Math.floor(random() * count);

const panelsOf = (readings: Readings): readonly string[] => [
  ...new Set(readings.map(({ panel }) => panel)),
];

/** Some panels of the survey, none twice. */
function somePanels(readings: Readings, random: Random, count: number): readonly string[] {
  const left = [...panelsOf(readings)];
  return Array.from({ length: count }, () => left.splice(pick(random, left.length), 1)[0] ?? '');
}

const otherSide = (panel: string): string =>
  panel.endsWith('-left') ? panel.replace('-left', '-right') : panel.replace('-right', '-left');

const swapSides =
  (of: RegExp): FaultVariant['spoil'] =>
  (readings) =>
    readings.map((one) => (of.test(one.panel) ? { ...one, panel: otherSide(one.panel) } : one));

/** Readings of some panels in another unit, as a display of that unit shows them. */
const panelsInUnit =
  (umPerUnit: number, step: number, count: number): FaultVariant['spoil'] =>
  (readings, random) => {
    const panels = somePanels(readings, random, count);
    return changed(readings, ({ panel, thickness }) =>
      panels.includes(panel) ? rounded(thickness / umPerUnit, step) : thickness,
    );
  };

const oneReading =
  (change: (thickness: number) => number): FaultVariant['spoil'] =>
  (readings, random) => {
    const at = pick(random, readings.length);
    return changed(readings, ({ thickness }, i) => (i === at ? change(thickness) : thickness));
  };

/** The values of each panel, in an order that is drawn. */
const inAnotherOrder: FaultVariant['spoil'] = (readings, random) =>
  panelsOf(readings).flatMap((panel) => {
    const own = readings.filter((one) => one.panel === panel);
    const order = own.map(({ thickness }) => ({ thickness, by: random() }));
    order.sort((one, other) => one.by - other.by);
    return changed(own, (_, i) => order[i]?.thickness ?? 0);
  });

const [MIL, MILLIMETRE, INCH] = [25.4, 1000, 25_400];

export const faultVariants: readonly FaultVariant[] = [
  {
    name: 'one reading of 55 ten times too large',
    codes: ['decimal-slip'],
    spoil: oneReading((value) => value * 10),
  },
  {
    name: 'one reading of 165 ten times too small, each point read three times',
    codes: ['decimal-slip'],
    spoil: oneReading((value) => value / 10),
    habit: { repeats: 3 },
  },
  {
    name: 'one reading in mil',
    codes: ['unit-slip'],
    spoil: oneReading((value) => rounded(value / MIL, 0.01)),
  },
  { name: 'one panel in mil', codes: ['unit-slip'], spoil: panelsInUnit(MIL, 0.01, 1) },
  { name: 'four panels in mil', codes: ['unit-slip'], spoil: panelsInUnit(MIL, 0.01, 4) },
  { name: 'one panel in mm', codes: ['unit-slip'], spoil: panelsInUnit(MILLIMETRE, 0.001, 1) },
  { name: 'one panel in inch', codes: ['unit-slip'], spoil: panelsInUnit(INCH, 0.0001, 1) },
  {
    name: 'a panel in mil, one in mm and one in inch',
    codes: ['unit-slip'],
    spoil: (readings, random) => {
      const [mil, mm, inch] = somePanels(readings, random, 3);
      const umPer = (panel: string): number =>
        panel === mil ? MIL : panel === mm ? MILLIMETRE : panel === inch ? INCH : 1;
      return changed(readings, ({ panel, thickness }) =>
        umPer(panel) === 1 ? thickness : rounded(thickness / umPer(panel), 0.0001),
      );
    },
  },
  {
    name: 'the whole survey in mm',
    codes: ['unit-slip'],
    spoil: panelsInUnit(MILLIMETRE, 0.001, 11),
  },
  {
    name: 'quarters and rear doors swapped, the front ones right',
    codes: ['sides-swapped'],
    spoil: swapSides(/^(quarter|door-rear)/),
  },
  {
    name: 'quarters swapped, each point read three times',
    codes: ['sides-swapped'],
    spoil: swapSides(/^quarter/),
    habit: { repeats: 3, points: 3 },
  },
  {
    name: 'front doors swapped, at marks',
    codes: ['sides-swapped', 'swapped-or-turned'],
    spoil: swapSides(/^door-front/),
    habit: { marked: true },
    // Two doors whose film happens to be alike at every mark cannot be told apart.
    seen: 0.75,
  },
  {
    name: 'wings and doors swapped, at marks',
    codes: ['sides-swapped', 'swapped-or-turned'],
    spoil: swapSides(/^(wing|door)/),
    habit: { marked: true },
  },
  {
    name: 'bonnet and roof swapped, at marks',
    codes: ['panels-swapped', 'swapped-or-turned'],
    spoil: (readings) =>
      readings.map((one) => ({
        ...one,
        panel: { bonnet: 'roof', roof: 'bonnet' }[one.panel] ?? one.panel,
      })),
    habit: { marked: true },
    // Film that is alike at every mark tells no two panels apart.
    seen: 0.75,
  },
  {
    name: 'three panels in whole micrometres, the others in tenths',
    codes: ['step-changes'],
    spoil: (readings, random) => {
      const panels = somePanels(readings, random, 3);
      return changed(readings, ({ panel, thickness }) =>
        panels.includes(panel) ? rounded(thickness, 1) : thickness,
      );
    },
    seen: 0.7,
  },
  {
    name: 'a gauge that creeps by 8 µm, each mark read twice',
    codes: ['gauge-drift'],
    spoil: (readings) =>
      changed(readings, ({ thickness }, i) => thickness + (8 * i) / (readings.length - 1)),
    habit: { marked: true, repeats: 2 },
  },
  {
    name: 'marks 1 and 5 read 9 µm less, on panel after panel',
    codes: ['marks-off'],
    spoil: (readings) =>
      changed(readings, ({ point, thickness }) =>
        point === '1' || point === '5' ? thickness - 9 : thickness,
      ),
    habit: { marked: true },
  },
  {
    name: 'five marks a panel made up about its mean, 6 µm (SD)',
    codes: ['not-following'],
    spoil: (readings, random) =>
      panelsOf(readings).flatMap((panel) => {
        const own = readings.filter((one) => one.panel === panel);
        const centre = own.reduce((sum, { thickness }) => sum + thickness, 0) / own.length;
        return changed(own, () => rounded(centre + 6 * normal(random), 1));
      }),
    habit: { marked: true, step: 1 },
  },
  {
    name: 'the last five panels made up about their means, 5 µm (SD), at marks',
    codes: ['not-following'],
    spoil: (readings, random) => {
      const last = panelsOf(readings).slice(-5);
      return panelsOf(readings).flatMap((panel) => {
        const own = readings.filter((one) => one.panel === panel);
        const centre = own.reduce((sum, { thickness }) => sum + thickness, 0) / own.length;
        return last.includes(panel)
          ? changed(own, () => rounded(centre + 5 * normal(random), 0.1))
          : own;
      });
    },
    habit: { marked: true },
    seen: 0.75,
    // By chance a panel that was made up fits the name of another.
    besides: 0.2,
  },
  {
    name: 'the marks of each panel written in another order',
    codes: ['not-following'],
    spoil: inAnotherOrder,
    habit: { marked: true },
  },
  {
    name: 'the three marks of each panel written in another order',
    codes: ['not-following'],
    spoil: inAnotherOrder,
    habit: { marked: true, points: 3 },
    // Three marks are few to tell by, and one order in six is that from the other end.
    seen: 0.5,
  },
  {
    name: 'two panels with one value at every point',
    codes: ['values-alike'],
    spoil: (readings, random) => {
      const panels = somePanels(readings, random, 2);
      return changed(readings, ({ panel, thickness }) =>
        panels.includes(panel)
          ? (readings.find((one) => one.panel === panel)?.thickness ?? thickness)
          : thickness,
      );
    },
    habit: { step: 1 },
  },
  {
    name: 'four panels copied from one, one value in five changed by 1 µm',
    codes: ['values-repeated', 'too-regular'],
    spoil: (readings, random) => {
      const panels = somePanels(readings, random, 5);
      const from = readings.filter(({ panel }) => panel === panels[0]);
      return changed(readings, ({ panel, point, thickness }) => {
        if (!panels.slice(1).includes(panel)) return thickness;
        const value = from.find((one) => one.point === point)?.thickness ?? thickness;
        return point === '3' ? value + (random() < 0.5 ? 1 : -1) : value;
      });
    },
    habit: { step: 1 },
  },
  {
    name: 'values in order on half of the panels',
    codes: ['values-in-order'],
    spoil: (readings, random) => {
      const panels = somePanels(readings, random, 6);
      return panelsOf(readings).flatMap((panel) => {
        const own = readings.filter((one) => one.panel === panel);
        const sorted = own.map(({ thickness }) => thickness).sort((a, b) => a - b);
        return panels.includes(panel) ? changed(own, (_, i) => sorted[i] ?? 0) : own;
      });
    },
  },
  {
    name: 'half of the panels made up about a mean',
    codes: ['too-regular'],
    spoil: (readings, random) => {
      const panels = somePanels(readings, random, 6);
      return panelsOf(readings).flatMap((panel) => {
        const own = readings.filter((one) => one.panel === panel);
        const centre = own.reduce((sum, { thickness }) => sum + thickness, 0) / own.length;
        return panels.includes(panel)
          ? changed(own, () => rounded(centre + normal(random), 0.1))
          : own;
      });
    },
    seen: 0.8,
  },
];
