/** The settings that are one value each, from the first layer that speaks of them. */
import type { LengthUnit } from '../../base/units.ts';
import type { Hardness } from '../../correction/removal/removal-knowledge.ts';
import type { Finish, LimitPolicy } from '../../film/film-model.ts';
import type { RemovalTerms } from '../../film/limits/removal-limits.ts';
import type { Side } from '../../film/template/panel-sense.ts';
import type { Aim } from '../../formats/json/setting-values.ts';
import { type Effective, firstSaid } from './setting-origin.ts';
import { type ColourUse, type Layers, sayings } from './settings-layers.ts';

const DEFAULT_AIM: Aim = 'correct';

export type PlainSettings = {
  readonly aim: Effective<Aim>;
  readonly riskPct: Effective<number>;
  readonly policy: Effective<LimitPolicy>;
  readonly floor: Effective<RemovalTerms['totalFloor']>;
  readonly finish: Effective<Finish>;
  readonly galvanised: Effective<boolean>;
  readonly hardness: Effective<Hardness>;
  readonly colourDepth: Effective<'light' | 'dark' | null>;
  readonly readingUnit: Effective<LengthUnit | null>;
  readonly nearside: Effective<Side | null>;
  readonly showUnit: Effective<LengthUnit>;
  readonly color: Effective<ColourUse>;
};

export function plainSettings(
  layers: Layers,
  numbers: ReadonlyMap<string, Effective<number>>,
  riskPct: number,
): PlainSettings {
  const builtInRisk = numbers.get('film.limits.risk_pct');
  return {
    aim: firstSaid(
      sayings<Aim>(layers, {
        typed: ({ aim }) => aim,
        job: [({ aim }) => aim, 'aim'],
        shop: [({ aim }) => aim, 'aim'],
      }),
      DEFAULT_AIM,
    ),
    riskPct: firstSaid(
      [
        ...sayings<number>(layers, {
          typed: (typed) => typed.riskPct,
          job: [(job) => job.riskPct, 'risk_pct'],
        }),
        builtInRisk,
      ],
      riskPct,
    ),
    policy: firstSaid(
      sayings<LimitPolicy>(layers, {
        typed: ({ policy }) => policy,
        job: [({ policy }) => policy, 'policy'],
        shop: [({ policy }) => policy, 'policy'],
      }),
      'standard',
    ),
    floor: firstSaid(
      sayings<RemovalTerms['totalFloor']>(layers, {
        typed: ({ floor }) => floor,
        job: [({ floor }) => floor, 'floor_um'],
        shop: [({ floor }) => floor, 'floor_um'],
      }),
      null,
    ),
    finish: firstSaid(
      sayings<Finish>(layers, {
        typed: ({ finish }) => finish,
        job: [({ finish }) => finish, 'finish'],
        shop: [({ finish }) => finish, 'finish'],
      }),
      'clear-over-base',
    ),
    galvanised: firstSaid(
      sayings<boolean>(layers, {
        job: [({ galvanised }) => galvanised, 'galvanised'],
        shop: [({ galvanised }) => galvanised, 'galvanised'],
      }),
      false,
    ),
    hardness: firstSaid(
      sayings<Hardness>(layers, { job: [({ hardness }) => hardness, 'hardness'] }),
      'unknown',
    ),
    colourDepth: firstSaid(
      sayings<'light' | 'dark' | null>(layers, {
        job: [({ colourDepth }) => colourDepth, 'colour_depth'],
      }),
      null,
    ),
    readingUnit: firstSaid(
      sayings<LengthUnit | null>(layers, {
        typed: (typed) => typed.readingUnit,
        shop: [(shop) => shop.readingUnit, 'reading_unit'],
      }),
      null,
    ),
    nearside: firstSaid(
      sayings<Side | null>(layers, {
        typed: (typed) => typed.nearside,
        shop: [(shop) => shop.nearside, 'nearside'],
      }),
      null,
    ),
    showUnit: firstSaid(
      sayings<LengthUnit>(layers, {
        typed: (typed) => typed.showUnit,
        shop: [(shop) => shop.showUnit, 'show_unit'],
      }),
      'um',
    ),
    color: firstSaid(
      sayings<ColourUse>(layers, {
        typed: ({ color }) => color,
        shop: [({ color }) => color, 'color'],
      }),
      'auto',
    ),
  };
}
