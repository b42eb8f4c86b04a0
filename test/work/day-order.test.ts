import { describe, expect, test } from 'vitest';
import { minutes } from '../../src/base/units.ts';
import { stageRules } from '../../src/formats/data/stage-rules.ts';
import { type DayPiece, dayFaults } from '../../src/work/day-order.ts';

const piece = (day: number, stage: string, time: number): DayPiece => ({
  ...{ day, stage },
  time: minutes(time),
});
const faults = (pieces: readonly DayPiece[], waits: Readonly<Record<string, number>> = {}) =>
  dayFaults(pieces, {
    rules: stageRules,
    waits: new Map(Object.entries(waits).map(([stage, wait]) => [stage, minutes(wait)])),
    hoursPerDay: 8,
  });
const cured = { coating: 720 };

describe('days that somebody changed', () => {
  test('may break a stage off in the evening and go on with it next morning', () => {
    expect(faults([piece(1, 'cut', 400), piece(2, 'cut', 200), piece(2, 'finish', 60)])).toEqual(
      [],
    );
  });

  test('have no stage before those that must be over', () => {
    const told = faults([piece(1, 'wash', 30), piece(1, 'clay', 60), piece(2, 'wash-again', 20)]);
    expect(told).toEqual([
      {
        index: 1,
        message: '"clay" stands before "wash-again": the solvent must be off the paint before clay',
        hint: 'put "clay" after "wash-again"',
      },
    ]);
  });

  test('have no stage before one that is gone on with later', () => {
    const told = faults([piece(1, 'cut', 60), piece(1, 'finish', 60), piece(2, 'cut', 60)]);
    expect(told.map(({ index }) => index)).toEqual([1]);
  });

  test('give a coating its time: from the evening over the night is enough', () => {
    expect(faults([piece(1, 'coating', 400), piece(2, 'glass-last', 12)], cured)).toEqual([]);
  });

  test('do not hand over on the day of a coating that cures for twelve hours', () => {
    const told = faults([piece(3, 'coating', 160), piece(3, 'glass-last', 12)], cured);
    expect(told).toEqual([
      {
        index: 1,
        message: '"glass-last" is begun before "coating" has waited: 720\u00a0min pass after it',
        hint: 'put "glass-last" on a later day',
      },
    ]);
  });

  test('wait within the day where there is room, and not where the rest no longer fits', () => {
    const wait = { wax: 60 };
    const fits = [piece(1, 'wax', 100), piece(1, 'glass-last', 300)];
    expect(faults(fits, wait)).toEqual([]);
    const full = [piece(1, 'wax', 100), piece(1, 'glass-last', 320)];
    expect(faults(full, wait)).toEqual([]);
    const late = [...fits, piece(1, 'final', 30)];
    expect(faults(late, wait).map(({ index }) => index)).toEqual([2]);
    expect(faults([...fits, piece(2, 'final', 30)], wait)).toEqual([]);
  });

  test('longer than their hours are another matter where nothing waits', () => {
    expect(faults([piece(1, 'cut', 500), piece(1, 'finish', 60)])).toEqual([]);
  });

  test('longer than their hours are no matter of a wait that was over by the morning', () => {
    const waited = [piece(1, 'wash', 100), piece(2, 'cut', 500)];
    expect(faults(waited, { wash: 720 })).toEqual([]);
  });

  test('count the wait from the end of the stage, over as many days as it takes', () => {
    const long = { coating: 2 * 1440 };
    const coated = [piece(1, 'coating', 300), piece(2, 'coating', 100)];
    expect(faults([...coated, piece(4, 'glass-last', 12)], long)).toEqual([]);
    expect(faults([...coated, piece(3, 'glass-last', 12)], long)).toHaveLength(1);
  });
});
