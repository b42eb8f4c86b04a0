/**
 * Machines, pads and products as a shop describes them: the id of a built-in one, or an object. An
 * object with a built-in id changes that one; `like` names a built-in one whose values fill what is
 * left out; else the object says itself what its kind needs.
 */

import * as z from 'zod';
import { inWords } from '../../base/in-words.ts';
import type { MetresPerSecond, Millimetres, Minutes, Newtons } from '../../base/units.ts';
import { metresPerSecond, millimetres, minutes, newtons } from '../../base/units.ts';
import { type Motion, STAGES, type Stage } from '../../correction/removal/catalogue.ts';
import { factorRange, hazeRange, machineRanges, vibrationRange } from '../data/machine-defaults.ts';
import type { Range } from '../default.ts';
import { advised } from '../json/advised.ts';
import { asQuantity, given } from '../json/given.ts';
import { allOf, anyOf, has, hasSuch, not, type Words, where } from '../json/rule-words.ts';
import { shownName } from '../json/setting-values.ts';
import { quoted } from '../json/shorten.ts';
import { correctionModel } from '../models.ts';
import { idAdvice, inchAdvice, motionAdvice, speedAdvice, stageAdvice } from './shop-words.ts';

/** The keys of an object as its file writes them. */
type Stated = { readonly stated: readonly string[] };

export type OwnMachine = Stated & {
  readonly id: string;
  readonly name?: string;
  readonly like?: string;
  readonly motion?: Motion['kind'];
  readonly rpm?: number;
  readonly throwDiameter?: Millimetres;
  readonly orbitsPerMinute?: number;
  readonly forcedRpm?: number;
  readonly padDiameter?: Millimetres;
  readonly force?: Newtons;
  readonly armSpeed?: MetresPerSecond;
  /** Time of one set on a section, from which the arm speed follows. */
  readonly perSection?: Minutes;
  /** Hand–arm vibration, m/s². */
  readonly vibration?: number;
};

/** A pad or a product. */
export type OwnThing = Stated & {
  readonly id: string;
  readonly name?: string;
  readonly like?: string;
  readonly factor?: number;
  readonly haze?: number;
  readonly stages?: readonly Stage[];
};

const between = ([least, most]: Range) => z.number().min(least).max(most);

/** What is longer is no slip in a name, and nothing to be told back in full. */
const LONGEST_ID = 60;

const ownId = advised(
  z
    .string()
    .regex(/^[^\s/]+$/)
    .describe('a short name without blanks and slashes'),
  (value) =>
    typeof value === 'string' && /\S/.test(value) && value.length <= LONGEST_ID
      ? `write ${JSON.stringify(value.trim().replaceAll(/[\s/]+/g, '-'))}; "name" takes any words`
      : undefined,
);

type Known = { readonly id: string };
type Context = z.core.$RefinementCtx;

type Complaint = {
  readonly path?: readonly string[];
  readonly message: string;
  readonly hint: string;
  /** Keys whose absence is the complaint: it falls away where one of them is only misspelt. */
  readonly lacks?: readonly string[];
};

const complain = (context: Context, { path = [], message, ...params }: Complaint): void => {
  context.addIssue({ code: 'custom', path: [...path], message, params });
};

/** A list of ids and objects, each thing once. */
function thingList<Shape extends z.ZodObject>(
  known: readonly Known[],
  kind: string,
  object: Shape,
) {
  const ids = known.map(({ id }) => id);
  const [example = '', second = ''] = ids;
  const entry = advised(
    z
      .union([z.enum(ids), object])
      .describe(`the id of a known ${kind}, or a description: { "id": … }`),
    (value) => idAdvice(value, ids),
  );
  return advised(
    z
      .array(entry)
      .min(1)
      .superRefine((entries, context) => {
        const names = entries.map((one) => idOf(one));
        for (const [i, name] of names.entries()) {
          if (names.indexOf(name) === i) continue;
          context.addIssue({
            code: 'custom',
            path: [i],
            message: `names ${quoted(name)} again`,
            params: { hint: 'keep one of the two' },
          });
        }
      })
      .describe(`a list in brackets, each entry a known ${kind} or a description of one`),
    (value) => {
      if (Array.isArray(value)) return `leave the key out to have every ${kind}`;
      if (typeof value !== 'string') return undefined;
      return ids.includes(value)
        ? `write [${JSON.stringify(value)}]`
        : `write a list of ids, such as ["${example}", "${second}"]`;
    },
  );
}

const idOf = (entry: unknown): string =>
  typeof entry === 'string' ? entry : String((entry as { readonly id?: unknown }).id);

const idsOf = (known: readonly Known[]): readonly string[] => known.map(({ id }) => id);

/** The keys that say how a machine of each motion moves; those it cannot do without come first. */
const MOTION_KEYS = {
  rotary: { needed: ['rpm'], other: [] },
  orbital: { needed: ['throw_mm', 'orbits_per_min'], other: ['forced_rpm'] },
  hand: { needed: [], other: [] },
} as const satisfies Record<Motion['kind'], unknown>;
const motionKeys = ['rpm', 'throw_mm', 'orbits_per_min', 'forced_rpm'] as const;
const motionOfKey = (key: string): string => (key === 'rpm' ? 'a rotary' : 'an orbital');
const withArticle = (motion: Motion['kind']): string =>
  motion === 'orbital' ? 'an orbital machine' : motion === 'rotary' ? 'a rotary' : 'a hand';

const machineObject = z
  .strictObject({
    id: ownId,
    name: shownName.optional(),
    like: z.enum(idsOf(correctionModel.machines)).optional(),
    motion: advised(z.enum(['rotary', 'orbital', 'hand']), motionAdvice).optional(),
    rpm: between(machineRanges.rpm).optional(),
    throw_mm: advised(between(machineRanges.throwDiameter), inchAdvice).optional(),
    orbits_per_min: between(machineRanges.orbitsPerMin).optional(),
    forced_rpm: between(machineRanges.forcedRpm).optional(),
    pad_mm: advised(between(machineRanges.padDiameter), inchAdvice).optional(),
    force_n: between(machineRanges.force).optional(),
    arm_speed_m_per_s: advised(between(machineRanges.armSpeed), speedAdvice).optional(),
    min_per_section: z.number().min(0.1).max(120).optional(),
    vibration_m_per_s2: between(vibrationRange).optional(),
    note: z.string().optional(),
  })
  .superRefine(checkMachine)
  .meta(machineWords());

type TypedMachine = {
  readonly id: string;
  readonly like?: string | undefined;
  readonly motion?: Motion['kind'] | undefined;
} & { readonly [key: string]: unknown };

/** A machine must say how it moves, and whatever that motion needs, unless a built-in one says it. */
function checkMachine(entry: TypedMachine, context: Context): void {
  const base = correctionModel.machines.find(({ id }) => id === (entry.like ?? entry.id));
  const motion = entry.motion ?? base?.motion.kind;
  if (entry['arm_speed_m_per_s'] !== undefined && entry['min_per_section'] !== undefined) {
    const hint = 'the arm speed follows from the minutes, or the minutes from it';
    const message = 'says the same as arm_speed_m_per_s: keep one';
    complain(context, { path: ['min_per_section'], message, hint });
  }
  if (motion === undefined) {
    const hint = 'add "motion": "rotary", "orbital" or "hand", or "like": "da"';
    const lacks = ['motion', 'like'];
    complain(context, { message: 'does not say how it moves', hint, lacks });
    return;
  }
  const { needed, other } = MOTION_KEYS[motion];
  const own: readonly string[] = [...needed, ...other];
  for (const key of motionKeys) {
    if (entry[key] === undefined || own.includes(key)) continue;
    const hint = own.length === 0 ? 'remove it' : `${withArticle(motion)} takes ${own.join(', ')}`;
    const message = `belongs to ${motionOfKey(key)} machine, and this is not one`;
    complain(context, { path: [key], message, hint });
  }
  const toSay = [
    ...(base?.motion.kind === motion ? [] : needed),
    ...(base === undefined ? ['pad_mm'] : []),
  ].filter((key) => entry[key] === undefined);
  if (toSay.length === 0) return;
  const like = correctionModel.machines.find(({ motion: { kind } }) => kind === motion)?.id;
  const them = toSay.length === 1 ? 'it' : 'them';
  complain(context, {
    message: `lacks ${inWords(toSay)}: ${withArticle(motion)} needs ${them}`,
    hint: `say ${them}, or "like": "${like}" to take what is left out from the built-in one`,
    lacks: toSay,
  });
}

/** What checkMachine refuses, in words of JSON Schema. */
function machineWords(): Words {
  const ofMotion = (kind: Motion['kind']): readonly string[] =>
    idsOf(correctionModel.machines.filter(({ motion }) => motion.kind === kind));
  const moves = (kind: Motion['kind']): Words =>
    anyOf(hasSuch('motion', { const: kind }), allOf(not(has('motion')), isBuiltOn(ofMotion(kind))));
  const byMotion = (Object.keys(MOTION_KEYS) as Motion['kind'][]).flatMap((kind) => {
    const { needed, other } = MOTION_KEYS[kind];
    const own: readonly string[] = [...needed, ...other];
    const foreign = motionKeys.filter((key) => !own.includes(key));
    return [
      where(moves(kind), not(anyOf(...foreign.map((key) => has(key))))),
      where(moves(kind), anyOf(isBuiltOn(ofMotion(kind)), has(...needed))),
    ];
  });
  return allOf(
    not(has('arm_speed_m_per_s', 'min_per_section')),
    anyOf(has('motion'), isBuiltOn(idsOf(correctionModel.machines))),
    anyOf(has('pad_mm'), isBuiltOn(idsOf(correctionModel.machines))),
    ...byMotion,
  );
}

/** Like one of these, or one of them with numbers of its own. */
function isBuiltOn(ids: readonly string[]): Words {
  return anyOf(
    hasSuch('like', { enum: ids }),
    allOf(not(has('like')), hasSuch('id', { enum: ids })),
  );
}

const stages = z
  .array(advised(z.enum(STAGES), stageAdvice))
  .min(1)
  .describe('a list in brackets of "cut", "refine", "finish"');

const thingObject = (known: readonly Known[], kind: string) =>
  z
    .strictObject({
      id: ownId,
      name: shownName.optional(),
      like: z.enum(idsOf(known)).optional(),
      factor: between(factorRange).optional(),
      haze: between(hazeRange).optional(),
      stages: stages.optional(),
      note: z.string().optional(),
    })
    .superRefine((entry, context) => {
      if (idsOf(known).includes(entry.like ?? entry.id)) return;
      const toSay = (['factor', 'stages'] as const).filter((key) => entry[key] === undefined);
      if (toSay.length === 0) return;
      const hint = `"like": "${known[1]?.id}" takes what is left out from the built-in ${kind}`;
      const message = `lacks ${inWords(toSay)}, and does not say what it is like`;
      complain(context, { message, hint, lacks: [...toSay, 'like'] });
    })
    .meta(anyOf(isBuiltOn(idsOf(known)), has('factor', 'stages')));

export const machineList = thingList(correctionModel.machines, 'machine', machineObject);
export const padList = thingList(
  correctionModel.pads,
  'pad',
  thingObject(correctionModel.pads, 'pad'),
);
export const productList = thingList(
  correctionModel.products,
  'product',
  thingObject(correctionModel.products, 'product'),
);

const statedIn = (typed: object): readonly string[] =>
  Object.keys(typed).filter((key) => key !== 'id' && key !== 'note');

export function toMachine(typed: string | z.output<typeof machineObject>): OwnMachine {
  if (typeof typed === 'string') return { id: typed, stated: [] };
  return {
    id: typed.id,
    stated: statedIn(typed),
    ...given({
      name: typed.name,
      like: typed.like,
      motion: typed.motion,
      rpm: typed.rpm,
      throwDiameter: asQuantity(millimetres, typed.throw_mm),
      orbitsPerMinute: typed.orbits_per_min,
      forcedRpm: typed.forced_rpm,
      padDiameter: asQuantity(millimetres, typed.pad_mm),
      force: asQuantity(newtons, typed.force_n),
      armSpeed: asQuantity(metresPerSecond, typed.arm_speed_m_per_s),
      perSection: asQuantity(minutes, typed.min_per_section),
      vibration: typed.vibration_m_per_s2,
    }),
  };
}

export function toThing(typed: string | z.output<ReturnType<typeof thingObject>>): OwnThing {
  if (typeof typed === 'string') return { id: typed, stated: [] };
  const { id, note: _, ...rest } = typed;
  return { id, stated: statedIn(typed), ...given(rest) };
}
