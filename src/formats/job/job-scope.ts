/** What a job file says of the work: scope, how the vehicle comes in, who works on it, in which order. */
import type * as z from 'zod';
import { type Diagnostic, error, type Outcome } from '../../base/diagnostics.ts';
import { isAsked, type JobScope, type ScopePart, usualScope } from '../../work/job-scope.ts';
import { unsaidPolishing } from '../../work/stage-order.ts';
import { stageFacts } from '../data/stages.ts';
import { given } from '../json/given.ts';
import type { Placed } from '../json/placed.ts';
import { stageOrderErrors } from './stage-order-errors.ts';
import type { scopeSchema, workShape } from './work-schema.ts';

export type JobWork = {
  readonly scope?: Partial<Pick<JobScope, ScopePart>>;
  readonly soiling?: JobScope['soiling'];
  readonly hands?: number;
  readonly hoursPerDay?: number;
  /** Ids of stages in an order of the job's own. */
  readonly order?: readonly string[];
  /** Temperatures as the job begins, °C. */
  readonly panelTemperature?: number;
  readonly roomTemperature?: number;
};

type TypedWork = { readonly [Key in keyof typeof workShape]?: z.output<(typeof workShape)[Key]> };

export const toWork = (typed: TypedWork): JobWork =>
  given({
    scope: typed.scope === undefined ? undefined : toScope(typed.scope),
    soiling: typed.arrival,
    hands: typed.hands,
    hoursPerDay: typed.hours_per_day,
    order: typed.order,
    panelTemperature: typed.panel_c,
    roomTemperature: typed.room_c,
  });

const toScope = ({ engine_bay, ...same }: z.output<typeof scopeSchema>) =>
  given({ ...same, engineBay: engine_bay });

/** The job with its order held against the rules of the trade and against its own scope. */
export function withOrderChecked<Job extends JobWork>({
  value,
  diagnostics,
}: Outcome<Placed<Job>>): Outcome<Placed<Job>> {
  const wrong = value === undefined ? [] : orderDiagnostics(value);
  return value === undefined || wrong.length === 0
    ? { ...(value === undefined ? {} : { value }), diagnostics }
    : { diagnostics: [...diagnostics, ...wrong] };
}

function orderDiagnostics({ value: job, placeOf }: Placed<JobWork>): readonly Diagnostic[] {
  const { order } = job;
  if (order === undefined) return [];
  const at = (index: number) => placeOf(['order', index]);
  return [
    ...stageOrderErrors(order, at, unsaidPolishing(order)),
    ...scopeDiagnostics(job.scope ?? {}, order, at, () => placeOf(['order'])),
  ];
}

/** What the scope says in so many words, the order may not contradict. */
function scopeDiagnostics(
  stated: NonNullable<JobWork['scope']>,
  order: readonly string[],
  at: (index: number) => ReturnType<Placed<JobWork>['placeOf']>,
  atList: () => ReturnType<Placed<JobWork>['placeOf']>,
): readonly Diagnostic[] {
  const scope = { ...usualScope, ...stated };
  return stageFacts.flatMap(({ id, needs = {} }) => {
    const parts = Object.keys(needs) as ScopePart[];
    if (!parts.some((part) => stated[part] !== undefined)) return [];
    const [part = ''] = parts.map((one) => (one === 'engineBay' ? 'engine_bay' : one));
    const index = order.indexOf(id);
    const asked = isAsked(needs, scope);
    if (asked === (index !== -1)) return [];
    const hint = `change "${part}" in the scope, or the order`;
    return asked
      ? [
          error('stage-order', `the scope asks for "${id}" and the order leaves it out`, {
            at: atList(),
            hint,
          }),
        ]
      : [
          error('stage-order', `"${id}" is in the order and the scope leaves it out`, {
            at: at(index),
            hint,
          }),
        ];
  });
}
