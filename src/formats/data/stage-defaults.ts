/** Times of the stages of a job, each number with its grounds. */
import { type Minutes, minutes } from '../../base/units.ts';
import { type Default, number, type Range } from '../default.ts';

const timeRange: Range = [0, 1440];
export const min = (value: number, meaning: string, range: Range = timeRange): Default<Minutes> =>
  number(minutes(value), 'min', 'assumption', '', meaning, range);
const threePoint = (what: string, least: number, likely: number, most: number) => ({
  least: min(least, `least time to ${what}`),
  likely: min(likely, `likely time to ${what}`),
  most: min(most, `most time to ${what}`),
});

/** Beside the polishing itself. Of a usual saloon where not of one wheel. */
export const stageTimeDefaults = () =>
  ({
    record: threePoint('record the condition', 10, 15, 25),
    wheels: threePoint('clean a wheel on the vehicle', 5, 8, 12),
    'wheels-off': threePoint('take a wheel off, clean it and refit it to torque', 18, 28, 45),
    shuts: threePoint('clean the door shuts', 8, 12, 20),
    'pre-wash': threePoint('pre-wash and foam a saloon', 8, 12, 20),
    wash: threePoint('wash a saloon with two buckets', 20, 30, 45),
    iron: threePoint('remove iron from a saloon', 8, 12, 20),
    tar: threePoint('remove tar from a saloon', 8, 12, 25),
    'wash-again': threePoint('wash a saloon once more', 12, 18, 30),
    clay: threePoint('clay a saloon', 25, 40, 75),
    dry: threePoint('dry a saloon and blow out its gaps', 12, 18, 30),
    inspect: threePoint('inspect a saloon by light', 10, 15, 30),
    read: threePoint('verify the gauge and read a saloon', 15, 25, 45),
    mask: threePoint('mask the trim of a saloon', 20, 35, 60),
    'test-spot': threePoint('work a test spot', 15, 25, 45),
    'unmask-dust': threePoint('unmask and dust out a saloon', 15, 25, 40),
    'engine-bay': threePoint('clean an engine bay', 20, 35, 60),
    trim: threePoint('clean small metal and trim', 15, 25, 45),
    interior: threePoint('clean an interior', 90, 150, 300),
    'panel-wipe': threePoint('wipe the panels of a saloon', 10, 15, 25),
    remeasure: threePoint('remeasure a saloon', 15, 25, 40),
    'glass-first': threePoint('clean glass and dress tyres a first time', 8, 12, 20),
    wax: threePoint('wax a saloon', 30, 45, 70),
    sealant: threePoint('seal a saloon', 25, 40, 60),
    coating: threePoint('coat a saloon', 120, 160, 240),
    'glass-last': threePoint('clean the glass a last time', 8, 12, 20),
    final: threePoint('inspect the finished vehicle by eye', 10, 15, 25),
    'hand-over': threePoint('hand the vehicle over', 10, 15, 30),
  }) as const;

/** Time on the clock that must pass after a stage. */
export const waitDefaults = () =>
  ({
    iron: number(
      minutes(5),
      'min',
      'from memory',
      'a maker’s service bulletin keeps fallout wash wet for 5–10 min',
      'time that iron remover is left to work',
      [0, 60],
    ),
    check: min(10, 'time that panels cool before the gauge reads them again', [0, 240]),
    wax: min(15, 'time that wax hazes before it is wiped off', [0, 240]),
    sealant: min(60, 'time that a sealant sets before the vehicle goes out', [0, 1440]),
    coating: min(720, 'time that a coating cures before the vehicle goes out', [0, 10_080]),
  }) as const;
