/** Stages, times, materials and vibration of the job, each number with its grounds. */
import { type Minutes, minutes, squareMetres } from '../../base/units.ts';
import type { JobStage, WorkModel } from '../../work/work-model.ts';
import { type Default, number, values } from '../default.ts';

const min = (value: number, meaning: string): Default<Minutes> =>
  number(minutes(value), 'min', 'assumption', '', meaning);
const threePoint = (least: number, likely: number, most: number) => ({
  least: min(least, 'least time of the stage'),
  likely: min(likely, 'likely time of the stage'),
  most: min(most, 'most time of the stage'),
});

/** Times of the stages that belong to the correction, beside the polishing itself. */
export const stageTimeDefaults = {
  inspect: threePoint(10, 15, 30),
  read: threePoint(15, 25, 45),
  mask: threePoint(20, 35, 60),
  'test-spot': threePoint(15, 25, 45),
  'unmask-dust': threePoint(15, 25, 40),
  'panel-wipe': threePoint(10, 15, 25),
  remeasure: threePoint(15, 25, 40),
} as const;

export const workDefaults = {
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
    ),
    most: number(1.5, '1', 'assumption', '', 'most time of a polishing step over its likely time'),
  },
  section: number(
    squareMetres(0.61 * 0.61),
    'm²',
    'published',
    'Nissan 94-015: at most 0.61 × 0.61 m',
    'area worked at a time',
  ),
  paceLogSd: number(0.15, '1', 'assumption', '', 'ln-SD of the pace that all stages share'),
  jobLogSd: number(0.15, '1', 'assumption', '', 'ln-SD from one job to the next'),
  materials: {
    productPerSet: number(
      8,
      'ml/m²',
      'common practice',
      '2–4 ml per section of 0.37 m²',
      'product for a set',
    ),
    productFirstLoad: number(6, 'ml', 'assumption', '', 'product to prime a fresh pad'),
    panelsPerPad: number(2, '1', 'common practice', '', 'panels a pad serves before it is changed'),
    sectionsPerTowel: number(
      8,
      '1',
      'common practice',
      '16 faces of a folded towel, 2 a section',
      'sections a towel wipes',
    ),
    panelWipe: number(10, 'ml/m²', 'assumption', '', 'panel wipe'),
  },
  vibration: {
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

const times = values(stageTimeDefaults);
const stage = (id: string, text: string): JobStage => ({
  id,
  text,
  time: times[id as keyof typeof times] ?? null,
});

/** The whole job in the order it is done (common practice). */
export const jobStages: readonly JobStage[] = [
  stage('record', 'record the condition'),
  stage('wheels', 'wheels: barrel, face, then tyre'),
  stage('shuts', 'door shuts'),
  stage('pre-wash', 'pre-wash the dirtiest lower parts, foam over all, rinse'),
  stage('wash', 'two-bucket wash from the top down, rinse'),
  stage('iron', 'iron remover, rinse'),
  stage('tar', 'tar remover low and rear'),
  stage('wash-again', 'wash again: solvent off before clay'),
  stage('clay', 'clay, rinse'),
  stage('dry', 'dry, blow out the gaps'),
  stage('inspect', 'inspect by light'),
  stage('read', 'verify the gauge, read'),
  stage('mask', 'mask the trim'),
  stage('test-spot', 'test spot: wipe, inspect'),
  stage('cut', 'cut: roof, horizontals, upper sides, low'),
  stage('check', 'wipe, inspect, re-read marked points cool'),
  stage('refine', 'refine'),
  stage('finish', 'finish'),
  stage('unmask-dust', 'unmask, dust out'),
  stage('details', 'engine bay, small metal and trim, interior'),
  stage('panel-wipe', 'panel wipe'),
  stage('remeasure', 'remeasure, verify the gauge: never after protection'),
  stage('glass-first', 'glass first pass, tyres, wheels'),
  stage('protect', 'protection: wax or coating, the owner’s choice'),
  stage('glass-last', 'glass, last'),
  stage('final', 'final inspection by eye'),
];

export const workModel: WorkModel = { ...values(workDefaults), stages: jobStages };
