/** Machines and rates in words. */
import { figure } from '../../base/rounding.ts';
import { thicknessText } from '../../base/sentence.ts';
import type { LengthUnit } from '../../base/units.ts';
import type { Machine, Motion, Stage } from '../../correction/removal/catalogue.ts';
import type { MethodChain, RateRange } from '../../correction/removal/method.ts';
import type { MethodNumber } from '../../tasks/methods/method-numbers.ts';

/** Never two bare digits: a removal is known as a range. */
export function rangeText(
  { low, high }: Pick<RateRange, 'low' | 'high'>,
  unit: LengthUnit,
): string {
  // What a hand takes off is a few hundredths of a µm, a thousandth of a mil.
  const digits = unit === 'um' ? 2 : 3;
  return `${thicknessText(low, unit, digits)}–${thicknessText(high, unit, digits)}`;
}

/** Less is nothing that anyone would see: a thousandth of a rate. */
const MOVED = 1e-3;

export const stagesText = (stages: readonly Stage[]): string =>
  stages.length === 0 ? 'none' : stages.join(' ');

/** `related`: moved by what was observed of combinations with a part in common. */
export function basisOf({
  own,
  learned,
}: MethodChain): 'learned' | 'related' | 'measured' | 'derived' {
  if (learned !== null && learned.observations > 0) return 'learned';
  if (learned !== null && Math.abs(learned.own.mean) > MOVED) return 'related';
  return own === null ? 'derived' : 'measured';
}

/** `1500 rpm`; `15 mm, 4200/min`: throw and orbits; `0.4 m/s` by hand. */
export function motionText({ motion }: Pick<Machine, 'motion'>): string {
  switch (motion.kind) {
    case 'rotary':
      return `${figure(motion.rpm)} rpm`;
    case 'orbital': {
      const orbit = `${figure(motion.throwDiameter)} mm, ${figure(motion.orbitsPerMinute)}/min`;
      return motion.forcedRpm === 0 ? orbit : `${orbit} + ${figure(motion.forcedRpm)} rpm`;
    }
    case 'hand':
      return `${figure(motion.rubbing)} m/s`;
  }
}

const SPEEDS: Readonly<Record<Motion['kind'], string>> = {
  rotary: '⅔·2π·turns·pad/2',
  orbital: 'π·throw·orbits',
  hand: 'as rubbed',
};

/** One thing that follows from the settings, with how. */
export type ChainLine = {
  readonly name: string;
  readonly value: number;
  readonly unit: string;
  readonly formula: string;
  /** Given for a removal, whose median alone would say too much. */
  readonly range: RateRange | null;
};

/** What follows from the machine alone. */
export const machineLines = (chain: MethodChain): readonly ChainLine[] =>
  chainLines(chain).filter(({ name }) => name !== 'coefficient' && name !== 'removal of a set');

/** From settings to rate, in the order of the reckoning. */
export function chainLines(chain: MethodChain): readonly ChainLine[] {
  const { machine } = chain.combination;
  const { motion } = machine;
  const forced = motion.kind === 'orbital' && motion.forcedRpm > 0;
  const hand = motion.kind === 'hand';
  const line = (
    name: string,
    value: number,
    unit: string,
    formula: string,
    range: RateRange | null = null,
  ): ChainLine => ({ name, value, unit, formula, range });
  return [
    line('pressure', chain.pressure, 'Pa', 'force/(π·pad²/4)'),
    line(
      'sliding speed',
      chain.speed,
      'm/s',
      forced ? '√(orbit² + (⅔·2π·turns·pad/2)²)' : SPEEDS[motion.kind],
    ),
    line(
      'contact time',
      chain.contact,
      's',
      hand ? 'time of a set·pad area/its area' : 'passes·π·pad/(4·arm speed·(1 − overlap))',
    ),
    line('coefficient', chain.coefficient, '1/Pa', 'Preston·factor of pad·factor of product'),
    line(
      'removal of a set',
      chain.derived.median,
      'µm',
      'coefficient·pressure·speed·contact time',
      chain.derived,
    ),
    line(
      'time of a section',
      chain.sectionMinutes,
      'min',
      hand ? 'time of a set·section/its area' : 'passes·section/(arm speed·pad·(1 − overlap))',
    ),
  ];
}

/** `shop, line 8`, so that a long path does not burst a table; `built-in` and the like as they are. */
export const fromText = ({ origin, where }: Pick<MethodNumber, 'origin' | 'where'>): string =>
  where.replace(/^.*:(\d+)$/, `${origin}, line $1`);

/** The files behind those words, each once: `shop file shop.json`. */
export const filesBehind = (
  numbers: readonly Pick<MethodNumber, 'origin' | 'where'>[],
): readonly string[] => [
  ...new Set(
    numbers.flatMap(({ origin, where }) => {
      const file = where.match(/^(.*):\d+$/)?.[1];
      return file === undefined ? [] : [`${origin} file ${file}`];
    }),
  ),
];
