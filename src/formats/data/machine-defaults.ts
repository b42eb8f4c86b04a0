/** The numbers of machines, pads and products, each with its grounds. */
import {
  type MetresPerSecond,
  type Millimetres,
  metresPerSecond,
  millimetres,
  minutes,
  type Newtons,
  newtons,
  squareMetres,
} from '../../base/units.ts';
import { type Basis, type Default, number, type Range } from '../default.ts';

/** What any machine may be set to; a shop's own machines are held to the same. */
export const machineRanges = {
  rpm: [100, 10_000],
  throwDiameter: [1, 50],
  orbitsPerMin: [200, 20_000],
  forcedRpm: [0, 3000],
  padDiameter: [10, 300],
  force: [1, 300],
  armSpeed: [0.005, 1],
  rubbing: [0.05, 3],
} as const satisfies Record<string, Range>;

const perMinute = (
  value: number,
  basis: Basis,
  source: string,
  meaning: string,
  range: Range,
): Default => number(value, '1/min', basis, source, meaning, range);

/** What every machine has: a pad that is pressed on and moved along. */
const common = (
  name: string,
  { pad, force, arm }: { readonly pad: number; readonly force: number; readonly arm: number },
): {
  readonly padDiameter: Default<Millimetres>;
  readonly force: Default<Newtons>;
  readonly armSpeed: Default<MetresPerSecond>;
} => ({
  padDiameter: number(
    millimetres(pad),
    'mm',
    'common practice',
    '',
    `pad diameter, ${name}`,
    machineRanges.padDiameter,
  ),
  force: number(
    newtons(force),
    'N',
    'assumption',
    '45–90 N to cut by trade statements',
    `force on the pad, ${name}`,
    machineRanges.force,
  ),
  armSpeed: number(
    metresPerSecond(arm),
    'm/s',
    'assumption',
    'set so that a section takes the minutes it takes',
    `speed of the arm, ${name}`,
    machineRanges.armSpeed,
  ),
});

const orbital = (name: string, throwMm: number, orbits: number) => ({
  throwDiameter: number(
    millimetres(throwMm),
    'mm',
    'common practice',
    '',
    `diameter of the orbit, ${name}`,
    machineRanges.throwDiameter,
  ),
  orbitsPerMin: perMinute(
    orbits,
    'assumption',
    '',
    `orbits per minute, ${name}`,
    machineRanges.orbitsPerMin,
  ),
});

export const machineDefaults = {
  rotary: {
    rpm: perMinute(
      1500,
      'published',
      'Acura/Honda 96-010: 1500–1800',
      'turns per minute, rotary',
      machineRanges.rpm,
    ),
    ...common('rotary', { pad: 150, force: 49, arm: 0.12 }),
  },
  da: {
    ...orbital('free-spinning dual action', 15, 4200),
    ...common('free-spinning dual action', { pad: 150, force: 49, arm: 0.075 }),
  },
  'da-forced': {
    ...orbital('forced-rotation dual action', 8, 4800),
    forcedRpm: perMinute(
      480,
      'assumption',
      '',
      'forced turns per minute, forced-rotation dual action',
      machineRanges.forcedRpm,
    ),
    ...common('forced-rotation dual action', { pad: 150, force: 49, arm: 0.075 }),
  },
  'da-small': {
    ...orbital('small dual action', 12, 4800),
    ...common('small dual action', { pad: 75, force: 20, arm: 0.1 }),
  },
  hand: {
    rubbing: number(
      metresPerSecond(0.4),
      'm/s',
      'assumption',
      '',
      'rubbing speed by hand',
      machineRanges.rubbing,
    ),
    setTime: number(
      minutes(2),
      'min',
      'assumption',
      '',
      'rubbing time of a set by hand',
      [0.1, 60],
    ),
    handArea: number(
      squareMetres(0.09),
      'm²',
      'assumption',
      '',
      'area of a set by hand',
      [0.01, 1],
    ),
    padDiameter: number(
      millimetres(100),
      'mm',
      'assumption',
      '',
      'diameter of an applicator by hand',
      machineRanges.padDiameter,
    ),
    force: number(newtons(20), 'N', 'assumption', '', 'force of a hand', machineRanges.force),
  },
} as const;

/** Hand–arm vibration as makers state it, m/s². */
export const vibrationRange: Range = [0, 50];

/** How much more or less a pad or product takes off than the medium one. */
export const factorRange: Range = [0.05, 10];
/** Haze grades: 0 mirror … 4 heavy, holograms. */
export const hazeRange: Range = [0, 4];

const factor = (value: number, meaning: string): Default =>
  number(value, '1', 'assumption', '', meaning, factorRange);
const haze = (value: number, meaning: string): Default =>
  number(value, '1', 'assumption', '', meaning, hazeRange);
const thing = (name: string, against: string, cut: number, left: number) => ({
  factor: factor(cut, `removal with ${name} ${against}`),
  haze: haze(left, `least haze grade that ${name} leaves`),
});

const pad = (name: string, cut: number, left: number) =>
  thing(name, 'against a medium foam pad', cut, left);
const product = (name: string, cut: number, left: number) =>
  thing(name, 'against a medium polish', cut, left);

export const padDefaults = {
  'foam-soft': pad('a soft foam pad', 0.7, 0),
  'foam-medium': pad('a medium foam pad', 1, 1),
  'foam-firm': pad('a firm foam pad', 1.15, 1),
  microfibre: pad('a microfibre pad', 1.5, 3),
  wool: pad('a wool pad', 1.7, 3),
} as const;

export const productDefaults = {
  fine: product('a fine polish', 0.45, 0),
  medium: product('a medium polish', 1, 1),
  heavy: product('a heavy compound', 1.5, 2),
} as const;
