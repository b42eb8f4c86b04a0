/** What the layers say of the work: its scope, who does it, how warm it is; with where each is said. */
import { spoken } from '../../base/remark.ts';
import { roundTo } from '../../base/rounding.ts';
import { nextFact, type Sentence, says } from '../../base/sentence.ts';
import { degreesCelsius } from '../../base/units.ts';
import type { HeatModel } from '../../correction/heat/heat-model.ts';
import { type JobScope, type ScopePart, usualScope } from '../../work/job-scope.ts';
import type { Assumption } from './assumption.ts';
import { type Effective, firstSaid } from './setting-origin.ts';
import { type Layers, saidIn, sayings } from './settings-layers.ts';

export type WorkSettings = {
  readonly scope: { readonly [Key in keyof JobScope]: Effective<JobScope[Key]> };
  readonly panelTemperature: Effective<number>;
  readonly roomTemperature: Effective<number>;
};

export function workSettings(
  layers: Layers,
  heat: HeatModel,
  numbers: ReadonlyMap<string, Effective<number>>,
): WorkSettings {
  const { job } = layers;
  const part = <Part extends ScopePart>(name: Part, key: string): Effective<JobScope[Part]> => {
    const value = job?.file.value.scope?.[name] as JobScope[Part] | undefined;
    const said = job === undefined ? undefined : saidIn(job.file, 'job', value, ['scope', key]);
    return firstSaid([said], usualScope[name]);
  };
  return {
    scope: {
      wheels: part('wheels', 'wheels'),
      shuts: part('shuts', 'shuts'),
      decontamination: part('decontamination', 'decontamination'),
      trim: part('trim', 'trim'),
      engineBay: part('engineBay', 'engine_bay'),
      interior: part('interior', 'interior'),
      glass: part('glass', 'glass'),
      protection: part('protection', 'protection'),
      soiling: firstSaid(
        sayings<JobScope['soiling']>(layers, { job: [({ soiling }) => soiling, 'arrival'] }),
        usualScope.soiling,
      ),
      hands: firstSaid(
        sayings<number>(layers, {
          job: [({ hands }) => hands, 'hands'],
          shop: [({ hands }) => hands, 'hands'],
        }),
        usualScope.hands,
      ),
      hoursPerDay: firstSaid(
        sayings<number>(layers, {
          job: [({ hoursPerDay }) => hoursPerDay, 'hours_per_day'],
          shop: [({ hoursPerDay }) => hoursPerDay, 'hours_per_day'],
        }),
        usualScope.hoursPerDay,
      ),
      order: firstSaid(
        sayings<JobScope['order']>(layers, { job: [({ order }) => order, 'order'] }),
        usualScope.order,
      ),
    },
    panelTemperature: firstSaid(
      [
        ...sayings<number>(layers, { job: [(one) => one.panelTemperature, 'panel_c'] }),
        numbers.get('correction.heat.start_c'),
      ],
      heat.start,
    ),
    roomTemperature: firstSaid(
      [
        ...sayings<number>(layers, { job: [(one) => one.roomTemperature, 'room_c'] }),
        numbers.get('correction.heat.room_c'),
      ],
      heat.room,
    ),
  };
}

/** The values alone. */
export const scopeOf = ({ scope }: WorkSettings): JobScope =>
  Object.fromEntries(Object.entries(scope).map(([key, { value }]) => [key, value])) as JobScope;

/** The heat model of a panel and a room as warm as is said. */
export const heatOf = (
  { panelTemperature, roomTemperature }: WorkSettings,
  heat: HeatModel,
): HeatModel => ({
  ...heat,
  start: degreesCelsius(panelTemperature.value),
  room: degreesCelsius(roomTemperature.value),
});

/** What of the work nobody stated, in two sentences at most. */
export function workAssumptions(work: WorkSettings): readonly Assumption[] {
  const { scope, panelTemperature, roomTemperature } = work;
  const { order: _, ...parts } = scope;
  const unsaid = Object.values(parts).some(({ origin }) => origin === 'built-in');
  const origin = 'built-in' as const;
  const unmeasured = [panelTemperature, roomTemperature].some((one) => one.origin === origin);
  const degrees = ({ value }: Effective<number>): string => `${roundTo(value, 0)} °C`;
  return [
    ...(unsaid ? [{ code: 'scope', ...spoken(scopeText(scopeOf(work))), origin }] : []),
    ...(unmeasured
      ? [
          {
            code: 'temperature',
            text:
              panelTemperature.value === roomTemperature.value
                ? `panel, room ${degrees(panelTemperature)}`
                : `panel at ${degrees(panelTemperature)}, room at ${degrees(roomTemperature)}`,
            origin,
          },
        ]
      : []),
  ];
}

/** `whole job: wheels on, full decontamination, wax; usual dirt, 1 person, 8 h a day`. */
function scopeText(scope: JobScope): Sentence {
  const what = scope.order === null ? partsText(scope) : 'in the order stated';
  const people = scope.hands === 1 ? '1 person' : `${scope.hands} people`;
  return says`whole job: ${what}${nextFact}${scope.soiling} dirt, ${people}, ${roundTo(scope.hoursPerDay, 1)} h a day`;
}

function partsText(scope: JobScope): string {
  const wheels = { on: 'wheels on', off: 'wheels off', none: 'wheels left alone' };
  const decontamination = {
    full: 'full decontamination',
    chemical: 'iron and tar off',
    clay: 'clay',
    none: 'decontaminated before',
  };
  return [
    wheels[scope.wheels],
    decontamination[scope.decontamination],
    ...(scope.engineBay ? ['engine bay'] : []),
    ...(scope.interior ? ['interior'] : []),
    ...(scope.trim ? ['trim'] : []),
    scope.protection === 'none' ? 'no protection' : scope.protection,
  ].join(', ');
}
