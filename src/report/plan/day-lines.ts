/** The days in the bay as a person speaks of them, and what the machines do to the hands on each. */
import { shown } from '../../base/rounding.ts';
import type { PlanResult } from '../../tasks/plan/plan-vehicle.ts';
import type { DayStage, WorkDay } from '../../work/day-plan.ts';
import type { WorkModel } from '../../work/work-model.ts';
import { about, joined } from '../facts.ts';
import { type Block, list, paragraph, type Said } from '../model.ts';

/** `1: 7.9 h: take in, wheels, …, cut (roof, bonnet); vibration 245 of 400 points a hand`. */
export function dayBlocks(result: PlanResult): readonly Block[] {
  const { days } = result.work;
  const { vibration } = result.settings.models.work;
  return [
    list(
      'Days',
      days.map((day) => dayLine(day, result)),
    ),
    ...vibrationLine(days, vibration),
  ];
}

function dayLine({ day, stages, time, points }: WorkDay, result: PlanResult): Said {
  const { limitPoints } = result.settings.models.work.vibration;
  const most = Math.max(0, ...points);
  const exposure =
    most === 0 ? [] : [`vibration ${shown(most, 0)} of ${limitPoints} points a hand`];
  const work = joined([`${shown(time / 60, 1)} h`, stagesText(stages, result)], ': ');
  return about(`${day}`, joined([work, ...exposure], '; '));
}

/** By name, and the panels where one goes from panel to panel: `dry, cut and finish (roof, bonnet)`. */
function stagesText(stages: readonly DayStage[], { work, survey }: PlanResult): string {
  const nameOf = (stage: string): string =>
    work.order.find(({ id }) => id === stage)?.name ?? stage;
  const namesOf = (panels: readonly string[]): string =>
    panels
      .flatMap((id) => survey.template.panels.find((one) => one.id === id)?.name ?? [])
      .join(', ');
  const onPanels = ({ panels, atMarks }: DayStage): string =>
    [...(atMarks.length === 0 ? [] : [`deep marks of ${namesOf(atMarks)}`]), namesOf(panels)]
      .filter((one) => one !== '')
      .join('; ');
  return stages
    .map((one, i) => {
      const [on, next] = [onPanels(one), stages[i + 1]];
      if (on === '') return `${nameOf(one.stage)}, `;
      const goesOn = next !== undefined && onPanels(next) === on;
      return `${nameOf(one.stage)}${goesOn ? ' and ' : ` (${on}), `}`;
    })
    .join('')
    .replace(/, $/, '');
}

/** Past which values the days go, and what to do about it, once for all of them. */
function vibrationLine(
  days: readonly WorkDay[],
  { actionPoints, limitPoints }: WorkModel['vibration'],
): readonly Block[] {
  const past = days.filter(({ actionPassed }) => actionPassed).map(({ day }) => day);
  const full = days
    .filter(({ points }) => Math.max(0, ...points) > limitPoints - NEGLIGIBLE)
    .map(({ day }) => day);
  if (past.length === 0) return [];
  const limit =
    full.length === 0
      ? []
      : [`${daysText(full, 'is', 'are')} at the limit of ${limitPoints}: no machine after that.`];
  return [
    paragraph(
      'Vibration',
      joined(
        [
          joined(
            [
              `${daysText(past, 'passes', 'pass')} the action value of ${actionPoints} points a hand: share the machine between people, keep hands warm, rest them`,
              'tingling or numb fingers: stop, and tell',
            ],
            '; ',
            '.',
          ),
          ...limit,
        ],
        ' ',
      ),
    ),
  ];
}

/** A day that is planned up to the limit is at it but for rounding. */
const NEGLIGIBLE = 1e-6;

const daysText = (days: readonly number[], ofOne: string, ofMany: string): string =>
  days.length === 1
    ? `Day ${days[0]} ${ofOne}`
    : `Days ${days.slice(0, -1).join(', ')} and ${days.at(-1)} ${ofMany}`;
