import { keptWith } from '../../base/kept.ts';
import { pointsInRow, pointsOverFace } from '../../film/template/point-layout.ts';
import type { Dimension, Facing, MeasuringPoint, Substrate } from '../../film/template/template.ts';
import type { AreaRow, BodyClass } from './template-areas.ts';

/** What a kind of panel is like on every body class that has it. */
export type PanelKind = {
  readonly id: string;
  readonly name: string;
  readonly row: AreaRow;
  readonly side: 'left' | 'right' | null;
  readonly substrate: Substrate;
  readonly facing: Facing;
  /** Millimetres. */
  readonly flatWidth: number;
  /** Weight of this panel in the tape length of the car; the class total fixes the metres. */
  readonly trimWeight: number;
  readonly points: readonly MeasuringPoint[];
  /** The measures of the vehicle it grows with: what it is long in, then its flat width's. */
  readonly spans: readonly Dimension[];
};

/** Five points as on a die, a fifth of the panel away from every edge. */
const five = pointsOverFace(5);

/** Three points along the middle of a narrow panel. */
const three = pointsInRow(3);

type Traits = Omit<PanelKind, 'id' | 'name' | 'side'>;

const traits = (
  row: AreaRow,
  facing: Facing,
  flatWidth: number,
  trimWeight: number,
  spans: readonly Dimension[],
  rest: { readonly substrate?: Substrate; readonly points?: readonly MeasuringPoint[] } = {},
): Traits => ({
  row,
  substrate: rest.substrate ?? 'steel',
  facing,
  flatWidth,
  trimWeight,
  points: rest.points ?? five,
  spans,
});

const along: readonly Dimension[] = ['length', 'width'];
const side: readonly Dimension[] = ['length', 'height'];
const across: readonly Dimension[] = ['width', 'height'];
/** A mirror or its like is no larger on a larger vehicle. */
const fixed: readonly Dimension[] = [];

const plastic = { substrate: 'plastic' } as const;
const narrow = { points: three } as const;

const bonnet = traits('bonnet', 'horizontal', 600, 2.4, along);
const roof = traits('roof', 'horizontal', 700, 4.4, along);
const wing = traits('wings', 'vertical', 300, 1.5, side);
const frontDoor = traits('front-doors', 'vertical', 400, 4.2, side);
const rearDoor = traits('rear-doors', 'vertical', 350, 3.8, side);
const quarter = traits('rear-sides', 'vertical', 300, 2.6, side);
const bedside = traits('rear-sides', 'vertical', 350, 2.4, side);
const vanSide = traits('rear-sides', 'vertical', 600, 6.5, side);
const bootLid = traits('closure', 'horizontal', 350, 2.6, along);
const tailgate = traits('closure', 'vertical', 300, 3.4, across);
const vanDoors = traits('closure', 'vertical', 400, 5.2, across);
const frontBumper = traits('front-bumper', 'low', 150, 3, across, plastic);
const rearBumper = traits('rear-bumper', 'low', 150, 2.4, across, plastic);
const sill = traits('sills', 'low', 90, 0.6, side, narrow);
const mirror = traits('mirrors', 'vertical', 100, 0.7, fixed, { ...plastic, ...narrow });
const rail = traits('rails', 'vertical', 60, 1.2, ['length'], narrow);
const cabRear = traits('cab-rear', 'vertical', 150, 2.6, across);

const panel = (
  id: string,
  name: string,
  kind: Traits,
  side: PanelKind['side'] = null,
): PanelKind => ({
  id,
  name,
  side,
  ...kind,
});

const closures: Readonly<Record<'boot' | 'tailgate' | 'doors-back', PanelKind>> = {
  boot: panel('boot', 'boot lid', bootLid),
  tailgate: panel('tailgate', 'tailgate', tailgate),
  'doors-back': panel('doors-back', 'rear doors', vanDoors),
};

type Shape = {
  readonly closure: keyof typeof closures;
  readonly rearSide: { readonly id: string; readonly name: string; readonly kind: Traits };
};

const quarters = { id: 'quarter', name: 'quarter', kind: quarter };
const hatched: Shape = { closure: 'tailgate', rearSide: quarters };
const booted: Shape = { closure: 'boot', rearSide: quarters };

const shapes: Readonly<Record<BodyClass, Shape>> = {
  supermini: hatched,
  hatch: hatched,
  saloon: booted,
  estate: hatched,
  coupe: booted,
  'mid-suv': hatched,
  'double-cab-pickup': {
    closure: 'tailgate',
    rearSide: { id: 'bedside', name: 'bedside', kind: bedside },
  },
  'medium-van': { closure: 'doors-back', rearSide: { id: 'side', name: 'side', kind: vanSide } },
};

/**
 * Every kind of panel a body class could have, in walking order: bonnet, clockwise round the vehicle
 * seen from above (its right side, rear, left side), front bumper, roof. Left and right are those of
 * someone sitting in the vehicle facing forward.
 */
export const panelKinds = (bodyClass: BodyClass): readonly PanelKind[] =>
  kindsOf(shapes[bodyClass]);

const kindsOf = keptWith(({ closure, rearSide }: Shape): readonly PanelKind[] => {
  const sided = (side: 'left' | 'right') => ({
    wing: panel(`wing-front-${side}`, `front ${side} wing`, wing, side),
    mirror: panel(`mirror-${side}`, `${side} mirror`, mirror, side),
    frontDoor: panel(`door-front-${side}`, `front ${side} door`, frontDoor, side),
    sill: panel(`sill-${side}`, `${side} sill`, sill, side),
    rearDoor: panel(`door-rear-${side}`, `rear ${side} door`, rearDoor, side),
    rail: panel(`rail-${side}`, `${side} roof rail`, rail, side),
    rearSide: panel(`${rearSide.id}-${side}`, `${side} ${rearSide.name}`, rearSide.kind, side),
  });
  const right = sided('right');
  const left = sided('left');
  return [
    panel('bonnet', 'bonnet', bonnet),
    right.wing,
    right.mirror,
    right.frontDoor,
    right.sill,
    right.rearDoor,
    right.rail,
    panel('cab-rear', 'cab rear', cabRear),
    right.rearSide,
    closures[closure],
    panel('bumper-rear', 'rear bumper', rearBumper),
    left.rearSide,
    left.rail,
    left.rearDoor,
    left.sill,
    left.frontDoor,
    left.mirror,
    left.wing,
    panel('bumper-front', 'front bumper', frontBumper),
    panel('roof', 'roof', roof),
  ];
});
