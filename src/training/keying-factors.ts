/**
 * Readings that are the reference by a factor: 25.4 either way is the other unit, ten or a hundred either way
 * a decimal mark in the wrong place. A reading that is like a point of the reference’s own panel is neither.
 */
import { groupBy } from '../base/group-by.ts';
import { says, um } from '../base/sentence.ts';
import type { Reading } from '../film/reading.ts';
import { faceReadings, type GradedSurvey, pointKey } from './graded-survey.ts';
import { type Reason, reason } from './reasons.ts';
import type { Reference, ReferencePanel } from './reference.ts';
import type { TrainingModel } from './training-model.ts';

type Slip = {
  readonly code: 'unit-slip' | 'decimal-slip';
  readonly factor: number;
  readonly is: string;
};

const MICROMETRES_PER_MIL = 25.4;
const slips: readonly Slip[] = [
  { code: 'unit-slip', factor: MICROMETRES_PER_MIL, is: '25.4 times' },
  { code: 'unit-slip', factor: 1 / MICROMETRES_PER_MIL, is: '1/25.4 of' },
  { code: 'decimal-slip', factor: 10, is: 'ten times' },
  { code: 'decimal-slip', factor: 0.1, is: 'a tenth of' },
  { code: 'decimal-slip', factor: 100, is: 'a hundred times' },
  { code: 'decimal-slip', factor: 0.01, is: 'a hundredth of' },
];

/** Share of the readings from which a slip is one of the whole survey. */
const WHOLE_SURVEY = 2 / 3;

type Slipped = { readonly reading: Reading; readonly panel: ReferencePanel; readonly slip: Slip };

export type KeyingFactors = {
  readonly reasons: readonly Reason[];
  /** Points with such a reading, by `pointKey`. */
  readonly points: ReadonlySet<string>;
};

export function keyingFactors(
  trainee: GradedSurvey,
  reference: Reference,
  { likeness }: TrainingModel['slips'],
): KeyingFactors {
  const compared = faceReadings(trainee).flatMap((reading) => {
    const panel = reference.panels.get(reading.panel);
    return panel === undefined ? [] : [{ reading, panel }];
  });
  const slipped = compared.flatMap(({ reading, panel }): readonly Slipped[] => {
    const slip = slipOf(reading, panel, likeness);
    return slip === undefined ? [] : [{ reading, panel, slip }];
  });
  const whole = (alike: readonly Slipped[]): boolean =>
    alike.length >= WHOLE_SURVEY * compared.length;
  const bySlip = [...groupBy(slipped, ({ slip }) => slip).values()];
  return {
    reasons: bySlip.flatMap((alike) =>
      whole(alike)
        ? wholeSurvey(alike)
        : [...groupBy(alike, ({ panel }) => panel).values()].flatMap(onPanel),
    ),
    // A whole survey in another unit repeats as well as its readings do.
    points: new Set(
      bySlip
        .filter((alike) => !whole(alike))
        .flatMap((alike) => alike.map(({ reading: { panel, point } }) => pointKey(panel, point))),
    ),
  };
}

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

function wholeSurvey([first, ...rest]: readonly Slipped[]): readonly Reason[] {
  if (first === undefined) return [];
  const { slip, reading, panel } = first;
  const count = rest.length + 1;
  const what =
    slip.code === 'unit-slip'
      ? 'mil and µm are mixed up: name the unit that the gauge showed'
      : 'the decimal mark is in the wrong place: write what the gauge showed';
  return [
    reason(
      slip.code,
      says`${count} readings are ${slip.is} the reference, such as ${um(reading.thickness, null)} on the ${panel.panel.name} for ${um(panel.median)}: ${what}`,
      { at: reading },
    ),
  ];
}

function onPanel([first, ...rest]: readonly Slipped[]): readonly Reason[] {
  if (first === undefined) return [];
  const { slip, reading, panel } = first;
  const more = rest.length === 0 ? '' : ` (and ${rest.length} more on this panel)`;
  const what =
    slip.code === 'unit-slip' ? 'mil and µm mixed up' : 'a decimal mark in the wrong place';
  return [
    reason(
      slip.code,
      says`${panel.panel.name}: point ${reading.point} reads ${um(reading.thickness, null)}${more}, ${slip.is} the reference: ${what}; look at the gauge before you write`,
      { panels: [panel.panel.id], at: reading },
    ),
  ];
}
