/**
 * Readings that are the reference by a factor: 25.4 either way, a thousandth and 1/25,400 are another unit (mil,
 * mm, inch), ten or a hundred either way a decimal mark in the wrong place. A reading that is like a point of the
 * reference’s own panel is neither.
 */
import { groupBy, type OneOrMore } from '../base/group-by.ts';
import { says, um } from '../base/sentence.ts';
import { MICROMETRES_PER_MIL } from '../base/units.ts';
import type { Reading } from '../film/reading.ts';
import { faceReadings, type GradedSurvey, pointKey } from './graded-survey.ts';
import { type Reason, reason } from './reasons.ts';
import type { Reference, ReferencePanel } from './reference.ts';
import type { TrainingModel } from './training-model.ts';

type Slip = {
  readonly code: 'unit-slip' | 'decimal-slip';
  readonly factor: number;
  readonly is: string;
  /** What was done, and what to do instead. */
  readonly what: string;
  readonly instead: string;
};

const unitSlip = (unit: string, factor: number, is: string): Slip => ({
  code: 'unit-slip',
  factor,
  is,
  what: `${unit} and µm mixed up`,
  instead: 'name the unit that the gauge showed',
});

const decimalSlip = (factor: number, is: string): Slip => ({
  code: 'decimal-slip',
  factor,
  is,
  what: 'a decimal mark in the wrong place',
  instead: 'write what the gauge showed',
});

const slips: readonly Slip[] = [
  unitSlip('mil', MICROMETRES_PER_MIL, '25.4 times'),
  unitSlip('mil', 1 / MICROMETRES_PER_MIL, '1/25.4 of'),
  unitSlip('mm', 1 / 1000, 'a thousandth of'),
  unitSlip('inch', 1 / (1000 * MICROMETRES_PER_MIL), '1/25,400 of'),
  decimalSlip(10, 'ten times'),
  decimalSlip(0.1, 'a tenth of'),
  decimalSlip(100, 'a hundred times'),
  decimalSlip(0.01, 'a hundredth of'),
];

type Slipped = { readonly reading: Reading; readonly panel: ReferencePanel; readonly slip: Slip };

export type KeyingFactors = {
  readonly reasons: readonly Reason[];
  /** Points with such a reading, by `pointKey`; those of a slip of the whole survey are not among the first. */
  readonly points: ReadonlySet<string>;
  readonly allPoints: ReadonlySet<string>;
  /** Ids of the panels with such a reading. */
  readonly panels: ReadonlySet<string>;
};

export function keyingFactors(
  trainee: GradedSurvey,
  reference: Reference,
  { likeness, wholeSurvey }: TrainingModel['slips'],
): KeyingFactors {
  const compared = faceReadings(trainee).flatMap((reading) => {
    const panel = reference.panels.get(reading.panel);
    return panel === undefined ? [] : [{ reading, panel }];
  });
  const one = compared.flatMap(({ reading, panel }): readonly Slipped[] => {
    const slip = slipOf(reading, panel, likeness);
    return slip === undefined ? [] : [{ reading, panel, slip }];
  });
  const whole = (alike: readonly Slipped[]): boolean =>
    alike.length >= wholeSurvey * compared.length;
  const slipped = [...one, ...alikeBesides(compared, one, whole)];
  const bySlip = [...groupBy(slipped, ({ slip }) => slip).values()];
  return {
    reasons: bySlip.flatMap((alike) =>
      whole(alike)
        ? onWholeSurvey(alike)
        : [...groupBy(alike, ({ panel }) => panel).values()].flatMap(onPanel),
    ),
    // A whole survey in another unit repeats as well as its readings do.
    points: pointsOf(bySlip.filter((alike) => !whole(alike)).flat()),
    allPoints: pointsOf(slipped),
    panels: new Set(slipped.map(({ panel }) => panel.panel.id)),
  };
}

/** In a survey that is in another unit as a whole, a low spot is too, though it is like no part of its panel. */
function alikeBesides(
  compared: readonly Omit<Slipped, 'slip'>[],
  slipped: readonly Slipped[],
  isWhole: (alike: readonly Slipped[]) => boolean,
): readonly Slipped[] {
  const slip = [...groupBy(slipped, (one) => one.slip)].find(([, alike]) => isWhole(alike))?.[0];
  if (slip === undefined) return [];
  const told = new Set(slipped.map(({ reading }) => reading));
  const awayFrom = (value: number, film: number): number => Math.abs(Math.log(value / film));
  return compared
    .filter(({ reading }) => !told.has(reading) && reading.thickness > 0)
    .filter(
      ({ reading: { thickness }, panel: { median } }) =>
        awayFrom(thickness, median * slip.factor) < awayFrom(thickness, median),
    )
    .map((other) => ({ ...other, slip }));
}

const pointsOf = (slipped: readonly Slipped[]): ReadonlySet<string> =>
  new Set(slipped.map(({ reading: { panel, point } }) => pointKey(panel, point)));

function slipOf(
  { thickness }: Reading,
  { median, points }: ReferencePanel,
  likeness: number,
): Slip | undefined {
  const isLike = (value: number): boolean =>
    thickness < value * likeness && thickness > value / likeness;
  if (points.some((point) => isLike(point.thickness))) return undefined;
  return slips.find(({ factor }) => isLike(median * factor));
}

type Alike = OneOrMore<Slipped>;

const onWholeSurvey = ([first, ...rest]: Alike): Reason => {
  const { slip, reading, panel } = first;
  return reason(
    slip.code,
    says`${rest.length + 1} readings are ${slip.is} the reference, such as ${um(reading.thickness, null)} on the ${panel.panel.name} for ${um(panel.median)}: ${slip.what}; ${slip.instead}`,
    { at: reading },
  );
};

const onPanel = ([first, ...rest]: Alike): Reason => {
  const { slip, reading, panel } = first;
  const more = rest.length === 0 ? '' : ` (and ${rest.length} more on this panel)`;
  return reason(
    slip.code,
    says`${panel.panel.name}: point ${reading.point} reads ${um(reading.thickness, null)}${more}, ${slip.is} the reference: ${slip.what}; look at the gauge before you write`,
    { panels: [panel.panel.id], at: reading },
  );
};
