/** The numbers that a machine, pad or product is made of, each with its grounds and where it was set. */
import type { Machine, Pad, Product } from '../../correction/removal/catalogue.ts';
import { listAllDefaults, type NamedDefault } from '../../formats/data/all-defaults.ts';
import type { Basis } from '../../formats/default.ts';
import type { OwnedThing } from '../settings/owned-thing.ts';
import type { Effective, SettingOrigin } from '../settings/setting-origin.ts';

export type MethodNumber = {
  readonly name: string;
  readonly value: number;
  readonly unit: string;
  /** `stated` where the shop says it itself. */
  readonly basis: Basis | 'stated';
  readonly source: string;
  readonly origin: SettingOrigin;
  readonly where: string;
  /** By which a shop file sets it under "numbers"; null where the shop states it in a place of its own. */
  readonly id: string | null;
};

/** What was set where, besides the built-in values. */
export type MethodOrigins = {
  readonly numbers: ReadonlyMap<string, Effective<number>>;
  readonly owned: ReadonlyMap<string, OwnedThing>;
};

/** A number of a thing: the key of a shop file, the end of the default's id. */
type Part = {
  readonly name: string;
  readonly key: string;
  readonly id: string;
  readonly value: number;
  readonly unit: string;
};

export const machineNumbers = (machine: Machine, origins: MethodOrigins): readonly MethodNumber[] =>
  machineParts(machine).map((part) => methodNumber('machines', machine.id, part, origins));

function machineParts({ motion, padDiameter, force, armSpeed }: Machine): readonly Part[] {
  const part = (name: string, key: string, id: string, value: number, unit: string): Part => ({
    name,
    key,
    id,
    value,
    unit,
  });
  const pad = part('pad diameter', 'pad_mm', 'pad_diameter_mm', padDiameter, 'mm');
  const pressed = part('force on the pad', 'force_n', 'force_n', force, 'N');
  const arm = part('arm speed', 'arm_speed_m_per_s', 'arm_speed_m_per_s', armSpeed, 'm/s');
  switch (motion.kind) {
    case 'rotary':
      return [part('turns per minute', 'rpm', 'rpm', motion.rpm, '1/min'), pad, pressed, arm];
    case 'orbital':
      return [
        part('throw', 'throw_mm', 'throw_diameter_mm', motion.throwDiameter, 'mm'),
        part(
          'orbits per minute',
          'orbits_per_min',
          'orbits_per_min',
          motion.orbitsPerMinute,
          '1/min',
        ),
        ...(motion.forcedRpm === 0
          ? []
          : [
              part(
                'forced turns per minute',
                'forced_rpm',
                'forced_rpm',
                motion.forcedRpm,
                '1/min',
              ),
            ]),
        pad,
        pressed,
        arm,
      ];
    case 'hand':
      return [
        part('rubbing speed', 'arm_speed_m_per_s', 'rubbing_m_per_s', motion.rubbing, 'm/s'),
        part('time of a set', 'min_per_section', 'set_time_min', motion.minutesPerSet, 'min'),
        part('area of that set', 'hand_area_m2', 'hand_area_m2', motion.handArea, 'm²'),
        pad,
        pressed,
      ];
  }
}

export const thingNumbers = (
  kind: 'pads' | 'products',
  { id, factor, haze }: Pad | Product,
  origins: MethodOrigins,
): readonly MethodNumber[] => {
  const noun = kind === 'pads' ? 'pad' : 'product';
  return [
    { name: `factor of the ${noun}`, key: 'factor', id: 'factor', value: factor, unit: '1' },
    { name: `haze of the ${noun}`, key: 'haze', id: 'haze', value: haze, unit: '1' },
  ].map((part) => methodNumber(kind, id, part, origins));
};

/** Numbers of the model that all combinations share. */
export const sharedNumbers = (origins: MethodOrigins): readonly MethodNumber[] =>
  (
    [
      ['passes of a set', 'passes'],
      ['overlap of strokes', 'overlap'],
      ['section', 'section_m2'],
      ['Preston coefficient', 'preston_per_pa'],
    ] as const
  ).map(([name, id]) => {
    const full = `correction.removal.${id}`;
    const one = defaultOf(full);
    if (one === undefined) throw new Error(`no default ${full}`);
    return fromDefault(name, one, origins.numbers);
  });

function methodNumber(
  kind: 'machines' | 'pads' | 'products',
  thing: string,
  part: Part,
  { numbers, owned }: MethodOrigins,
): MethodNumber {
  const own = owned.get(`${kind}/${thing}`);
  const where = own?.stated.get(part.key) ?? statedTime(part, own);
  const base = own?.base ?? thing;
  const one = defaultOf(`correction.${kind}.${base}.${part.id}`);
  const { name, value, unit } = part;
  if (own !== undefined && where !== undefined) {
    const { origin } = own;
    return { name, value, unit, basis: 'stated', source: '', origin, where, id: null };
  }
  if (one === undefined) return { name, value, unit, ...UNLIKE_ANY };
  return fromDefault(part.name, one, numbers);
}

/** What a thing that is like nothing built in leaves out. */
const UNLIKE_ANY = {
  basis: 'assumption',
  source: 'from the stages it serves, as it is like nothing built in',
  origin: 'built-in',
  where: 'built-in',
  id: null,
} as const;

/** Minutes per section are another way to state the speed of the arm. */
const statedTime = ({ key }: Part, own: OwnedThing | undefined): string | undefined =>
  key === 'arm_speed_m_per_s' ? own?.stated.get('min_per_section') : undefined;

function fromDefault(
  name: string,
  { id, value, unit, basis, source }: NamedDefault,
  numbers: MethodOrigins['numbers'],
): MethodNumber {
  const set = numbers.get(id);
  const inForce = set?.value ?? value;
  return {
    name,
    value: inForce,
    unit,
    basis: set === undefined ? basis : 'stated',
    source: set === undefined ? source : '',
    origin: set?.origin ?? 'built-in',
    where: set?.where ?? 'built-in',
    id,
  };
}

const byId = new Map(listAllDefaults().map((one) => [one.id, one]));
const defaultOf = (id: string): NamedDefault | undefined => byId.get(id);
