/** Days of a job as somebody changed them, and as they are laid out, reckoned by hand. */
import { expect, test } from 'vitest';
import { minutes } from '../../src/base/units.ts';
import { stageRules } from '../../src/formats/data/stage-rules.ts';
import { workModel } from '../../src/formats/models.ts';
import { type DayPiece, dayFaults } from '../../src/work/day-order.ts';
import { planDays, type WorkPiece } from '../../src/work/day-plan.ts';

const done = (day: number, stage: string, time: number): DayPiece => ({
  day,
  stage,
  time: minutes(time),
});

test('faults of changed days are told as their stages stand, be it a rule or a wait that is broken', () => {
  // The glass is begun on the day of a coating that cures for 12 h; then clay stands before the wash that takes the solvent off.
  const pieces = [
    done(1, 'coating', 160),
    done(1, 'interior', 30),
    done(2, 'clay', 60),
    done(2, 'wash-again', 20),
  ];
  const waits = new Map([['coating', minutes(720)]]);
  const faults = dayFaults(pieces, { rules: stageRules, waits, hoursPerDay: 8 });
  expect(faults.map(({ index, message }) => [index, message.slice(0, 20)])).toEqual([
    [1, '"interior" is begun '],
    [2, '"clay" stands before'],
  ]);
});

test('what hands were exposed to earlier on a day is taken from what they may be exposed to later on it', () => {
  const cut = (stage: string): WorkPiece => ({
    ...{ stage, panel: null, alone: false, points: 300 },
    time: minutes(150),
    wait: minutes(0),
  });
  const terms = { hands: 1, hoursPerDay: 8, vibration: workModel.vibration };
  const days = planDays([cut('cut'), cut('refine')], terms);
  // 2 points a minute: of the second piece 100 points, 50 min, until the day has the 400 that are the limit.
  expect(days.map(({ points, time }) => [points[0], time])).toEqual([
    [expect.closeTo(400, 9), expect.closeTo(200, 9)],
    [expect.closeTo(200, 9), expect.closeTo(100, 9)],
  ]);
});
