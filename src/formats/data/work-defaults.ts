/** Stages, times, materials and vibration of the job, each number with its grounds. */
import { type Minutes, minutes } from '../../base/units.ts';
import { type Default, number, type Range } from '../default.ts';

const timeRange: Range = [0, 1440];
const min = (value: number, meaning: string): Default<Minutes> =>
  number(minutes(value), 'min', 'assumption', '', meaning, timeRange);
const threePoint = (what: string, least: number, likely: number, most: number) => ({
  least: min(least, `least time to ${what}`),
  likely: min(likely, `likely time to ${what}`),
  most: min(most, `most time to ${what}`),
});

/** Times of the stages that belong to the correction, beside the polishing itself. */
const stageTimeDefaults = {
  inspect: threePoint('inspect by light', 10, 15, 30),
  read: threePoint('verify the gauge and read', 15, 25, 45),
  mask: threePoint('mask the trim', 20, 35, 60),
  'test-spot': threePoint('work a test spot', 15, 25, 45),
  'unmask-dust': threePoint('unmask and dust out', 15, 25, 40),
  'panel-wipe': threePoint('wipe the panels', 10, 15, 25),
  remeasure: threePoint('remeasure', 15, 25, 40),
} as const;

export const workDefaults = {
  stages: stageTimeDefaults,
  perSection: {
    wipe: min(0.75, 'wipe and inspect a section after a set'),
    padCleaning: min(1, 'clean the pad after a section'),
  },
  setUp: min(10, 'set up a combination'),
  polishing: {
    least: number(
      0.8,
      '1',
      'assumption',
      '',
      'least time of a polishing step over its likely time',
      [0.1, 1],
    ),
    most: number(
      1.5,
      '1',
      'assumption',
      '',
      'most time of a polishing step over its likely time',
      [1, 10],
    ),
  },
  paceLogSd: number(0.15, '1', 'assumption', '', 'ln-SD of the pace that all stages share', [0, 2]),
  jobLogSd: number(0.15, '1', 'assumption', '', 'ln-SD of time from one job to the next', [0, 2]),
  aloneShare: number(
    0.5,
    '1',
    'assumption',
    '',
    'share of a stage’s variance that is its own, not the shared pace',
    [0, 1],
  ),
  materials: {
    productPerSet: number(
      8,
      'ml/m²',
      'common practice',
      '2–4 ml per section of 0.37 m²',
      'product for a set on a square metre',
    ),
    productFirstLoad: number(6, 'ml', 'assumption', '', 'product to prime a fresh pad'),
    panelsPerPad: number(
      2,
      '1',
      'common practice',
      '',
      'panels a pad serves before it is changed',
      [0.5, 100],
    ),
    sectionsPerTowel: number(
      8,
      '1',
      'common practice',
      '16 faces of a folded towel, 2 a section',
      'sections a towel wipes',
    ),
    panelWipe: number(10, 'ml/m²', 'assumption', '', 'panel wipe for a square metre'),
  },
  vibration: {
    actionPoints: number(
      100,
      '1',
      'published',
      '2002/44/EC: 2.5 m/s² over 8 h; points by HSE',
      'exposure points of hand–arm vibration a day from which to act',
      [1, 400],
    ),
    limitPoints: number(
      400,
      '1',
      'published',
      '2002/44/EC: 5 m/s² over 8 h; points by HSE',
      'exposure points of hand–arm vibration never to exceed in a day',
      [1, 1000],
    ),
    rotary: number(
      5,
      'm/s²',
      'assumption',
      'HSE rows for angle grinders, 4–8',
      'hand–arm vibration of a rotary',
    ),
    orbital: number(
      8,
      'm/s²',
      'assumption',
      'HSE rows for random-orbital sanders, 7–10',
      'hand–arm vibration of an orbital machine',
    ),
  },
} as const;
