/**
 * The job laid into days: so many hours on the clock, each stage after the one before, waits counted by
 * the clock through the night as well, and no hand past the day's limit of vibration.
 *
 * People share a stage evenly where more than one can be at it. A day whose exposure is used up is over
 * for machines, and so for the job, as the stages keep their order.
 */

import { groupBy } from '../base/group-by.ts';
import { sum } from '../base/sum.ts';
import { type Minutes, minutes } from '../base/units.ts';
import { MINUTES_A_DAY } from './day-order.ts';
import type { JobScope } from './job-scope.ts';
import type { WorkModel } from './work-model.ts';

/** A piece of work that can be broken off at any time and taken up again next day. */
export type WorkPiece = {
  readonly stage: string;
  /** Panel it is done on; null for work on the whole vehicle. */
  readonly panel: string | null;
  /** At deep marks of the panel, and not over all of it. */
  readonly atMarks?: boolean;
  /** Of one person's hands. */
  readonly time: Minutes;
  readonly alone: boolean;
  /** Vibration of the whole piece, points. */
  readonly points: number;
  /** Time on the clock that passes after it. */
  readonly wait: Minutes;
};

export type DayStage = {
  readonly stage: string;
  /** On the clock. */
  readonly time: Minutes;
  /** Gone over as a whole. */
  readonly panels: readonly string[];
  /** Worked at their deep marks. */
  readonly atMarks: readonly string[];
};

export type WorkDay = {
  readonly day: number;
  readonly stages: readonly DayStage[];
  /** At work, on the clock. */
  readonly time: Minutes;
  /** Exposure of each pair of hands. */
  readonly points: readonly number[];
  /** Daily exposure of the hands that have most of it, m/s². */
  readonly a8: number;
  readonly actionPassed: boolean;
};

type Terms = Pick<JobScope, 'hands' | 'hoursPerDay'> & Pick<WorkModel, 'vibration'>;

/** A share of a piece smaller than this is rounding, not work. */
const NEGLIGIBLE = 1e-9;

/** A(8) = √(points/16), as points are 2a² an hour and A(8) = a√(t/8 h) (2002/44/EC; HSE). */
export const dailyExposure = (points: number): number => Math.sqrt(points / 16);

/** Time at one stroke: on which day, and how far into its working hours. */
type Clock = { readonly day: number; readonly at: number };

/** A piece, or the part of it that is done at one go. */
type Stroke = {
  readonly day: number;
  readonly piece: WorkPiece;
  readonly time: number;
  readonly points: number;
};

export function planDays(pieces: readonly WorkPiece[], terms: Terms): readonly WorkDay[] {
  const strokes = laidOut(pieces, terms);
  const byDay = groupBy(strokes, ({ day }) => day);
  return Array.from({ length: lastDay(strokes) }, (_, i) =>
    workDay(i + 1, byDay.get(i + 1) ?? [], terms),
  );
}

/** How many days they take. */
export const daysNeeded = (pieces: readonly WorkPiece[], terms: Terms): number =>
  lastDay(laidOut(pieces, terms));

/** They are in order. */
const lastDay = (strokes: readonly Stroke[]): number => strokes.at(-1)?.day ?? 0;

function laidOut(pieces: readonly WorkPiece[], terms: Terms): readonly Stroke[] {
  const length = 60 * terms.hoursPerDay;
  const limit = terms.vibration.limitPoints;
  const done: Stroke[] = [];
  let clock: Clock = { day: 1, at: 0 };
  let used = 0;
  const nextDay = (): void => {
    clock = { day: clock.day + 1, at: 0 };
    used = 0;
  };
  for (const piece of pieces) {
    const hands = piece.alone ? 1 : terms.hands;
    const whole = piece.time / hands;
    const points = piece.points / hands;
    if (!Number.isFinite(whole + points)) throw new RangeError(`${piece.stage} would never end`);
    let left = whole === 0 ? 0 : 1;
    while (left > NEGLIGIBLE) {
      const hours = (length - clock.at) / whole;
      const exposure = points === 0 ? 1 : (limit - used) / points;
      const share = Math.min(left, hours, exposure);
      if (share > NEGLIGIBLE) {
        done.push({ day: clock.day, piece, time: share * whole, points: share * points });
        clock = { day: clock.day, at: clock.at + share * whole };
        used += share * points;
        left -= share;
      }
      if (left > NEGLIGIBLE) nextDay();
    }
    const after = waited(clock, piece.wait, length);
    if (after.day !== clock.day) used = 0;
    clock = after;
  }
  return done;
}

/** When a wait is over; what falls outside working hours is over by the next morning. */
function waited({ day, at }: Clock, wait: Minutes, length: number): Clock {
  const total = (day - 1) * MINUTES_A_DAY + at + wait;
  const then = Math.floor(total / MINUTES_A_DAY);
  const into = total - then * MINUTES_A_DAY;
  return into > length ? { day: then + 2, at: 0 } : { day: then + 1, at: into };
}

function workDay(day: number, work: readonly Stroke[], { hands, vibration }: Terms): WorkDay {
  const exposed = Array.from({ length: hands }, (_, hand) =>
    sum(work.map(({ piece, points }) => (piece.alone && hand > 0 ? 0 : points))),
  );
  const most = Math.max(0, ...exposed);
  return {
    day,
    stages: [...groupBy(work, ({ piece }) => piece.stage)].map(([stage, own]) => ({
      stage,
      time: minutes(sum(own.map(({ time }) => time))),
      ...panelsOf(own),
    })),
    time: minutes(sum(work.map(({ time }) => time))),
    points: exposed,
    a8: dailyExposure(most),
    actionPassed: most > vibration.actionPoints,
  };
}

function panelsOf(own: readonly Stroke[]): Pick<DayStage, 'panels' | 'atMarks'> {
  const names = (marks: boolean): readonly string[] => [
    ...new Set(
      own.flatMap(({ piece: { panel, atMarks = false } }) =>
        atMarks === marks ? (panel ?? []) : [],
      ),
    ),
  ];
  return { panels: names(false), atMarks: names(true) };
}
