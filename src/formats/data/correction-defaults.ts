/** Machines, pads, products, defects and the constants of removal, each with its grounds. */
import {
  type MetresPerSecond,
  type Micrometres,
  type Millimetres,
  metresPerSecond,
  micrometres,
  millimetres,
  minutes,
  type Newtons,
  newtons,
  squareMetres,
} from '../../base/units.ts';
import type {
  CorrectionModel,
  DefectKind,
  Machine,
  Motion,
  Pad,
  Stage,
} from '../../correction/catalogue.ts';
import { type Basis, type Default, number, values } from '../default.ts';

const mm = (value: number, basis: Basis, source: string, meaning: string): Default<Millimetres> =>
  number(millimetres(value), 'mm', basis, source, meaning);
const force = (value: number): Default<Newtons> =>
  number(
    newtons(value),
    'N',
    'assumption',
    '45–90 N to cut by trade statements',
    'force on the pad',
  );
const arm = (value: number): Default<MetresPerSecond> =>
  number(
    metresPerSecond(value),
    'm/s',
    'assumption',
    'set so that a section takes the minutes it takes',
    'arm speed',
  );
const pure = (value: number, basis: Basis, source: string, meaning: string): Default =>
  number(value, '1', basis, source, meaning);
const perMinute = (value: number, basis: Basis, source: string, meaning: string): Default =>
  number(value, '1/min', basis, source, meaning);

const padDiameter = (value: number): Default<Millimetres> =>
  mm(value, 'common practice', '', 'pad diameter');
const throwDiameter = (value: number): Default<Millimetres> =>
  mm(value, 'common practice', '', 'diameter of the orbit');

export const machineDefaults = {
  rotary: {
    rpm: perMinute(1500, 'published', 'Acura/Honda 96-010: 1500–1800', 'turns per minute'),
    padDiameter: padDiameter(150),
    force: force(49),
    armSpeed: arm(0.12),
  },
  da: {
    throwDiameter: throwDiameter(15),
    orbitsPerMinute: perMinute(4200, 'assumption', '', 'orbits per minute'),
    padDiameter: padDiameter(150),
    force: force(49),
    armSpeed: arm(0.075),
  },
  daForced: {
    throwDiameter: throwDiameter(8),
    orbitsPerMinute: perMinute(4800, 'assumption', '', 'orbits per minute'),
    forcedRpm: perMinute(480, 'assumption', '', 'forced turns per minute'),
    padDiameter: padDiameter(150),
    force: force(49),
    armSpeed: arm(0.075),
  },
  daSmall: {
    throwDiameter: throwDiameter(12),
    orbitsPerMinute: perMinute(4800, 'assumption', '', 'orbits per minute'),
    padDiameter: padDiameter(75),
    force: force(20),
    armSpeed: arm(0.1),
  },
  hand: {
    rubbing: number(metresPerSecond(0.4), 'm/s', 'assumption', '', 'rubbing speed by hand'),
    minutesPerSet: number(minutes(2), 'min', 'assumption', '', 'rubbing time of a set by hand'),
    handArea: number(squareMetres(0.09), 'm²', 'assumption', '', 'area of a set by hand'),
    padDiameter: padDiameter(100),
    force: force(20),
    armSpeed: arm(0.4),
  },
} as const;

export const padDefaults = {
  'foam-soft': pure(0.7, 'assumption', '', 'removal against a medium foam pad'),
  'foam-medium': pure(1, 'assumption', '', 'the pad others are compared with'),
  'foam-firm': pure(1.15, 'assumption', '', 'removal against a medium foam pad'),
  microfibre: pure(1.5, 'assumption', '', 'removal against a medium foam pad'),
  wool: pure(1.7, 'assumption', '', 'removal against a medium foam pad'),
} as const;

export const productDefaults = {
  fine: pure(0.45, 'assumption', '', 'removal against a medium polish'),
  medium: pure(1, 'assumption', '', 'the product others are compared with'),
  heavy: pure(1.5, 'assumption', '', 'removal against a medium polish'),
} as const;

const depth = (value: number, basis: Basis = 'assumption', source = ''): Default<Micrometres> =>
  number(micrometres(value), 'µm', basis, source, 'median depth at this grade');
const depths = (...medians: readonly number[]): readonly Default<Micrometres>[] =>
  medians.map((median) => depth(median));

export const defectDefaults = {
  'swirl-marks': depths(0.4, 0.7, 1.1, 1.7, 2.5),
  holograms: depths(0.2, 0.3, 0.4, 0.5, 0.7),
  marring: depths(0.3, 0.5, 0.8, 1.0, 1.3),
  oxidation: depths(0.6, 1.0, 1.6, 2.4, 3.5),
  'water-etching': [
    depth(0.6),
    depth(0.9),
    depth(1.2, 'published', 'Abo & Itoh, J. Jpn. Soc. Colour Mater. 65:605 (1992)'),
    depth(2.5),
    depth(4),
  ],
  'bird-etching': depths(1.5, 3, 5, 9, 15),
  'deep-scratches': depths(2, 3, 4.5, 7, 11),
} as const;

const FEPA = 'FEPA 43 / ISO 6344-3 tables as reproduced (second-hand)';
const grain = (value: number, basis: Basis, source: string): Default<Micrometres> =>
  number(micrometres(value), 'µm', basis, source, 'mean grain size d50 of the grade');

/** Mean grain of the abrasive that left the marks, by P grade. */
export const grainDefaults = {
  p800: grain(21.8, 'published', FEPA),
  p1000: grain(18.3, 'published', FEPA),
  p1200: grain(15.3, 'published', FEPA),
  p1500: grain(12.6, 'published', FEPA),
  p2000: grain(10.3, 'published', FEPA),
  p2500: grain(8.4, 'published', FEPA),
  p3000: grain(7, 'from memory', 'ISO 6344-3:2021'),
  p5000: grain(5, 'from memory', 'ISO 6344-3:2021'),
} as const;

export const sandingDefaults = {
  grainPerDepth: pure(
    6,
    'assumption',
    'd50/10 to d50/3 are in use',
    'grain size over the depth of the mark it leaves',
  ),
} as const;

export const removalDefaults = {
  preston: number(
    7.8e-12,
    '1/Pa',
    'derived',
    'Preston 1927 solved for 1 µm per orbital set; order 2e-12…1e-11',
    'Preston coefficient, medium pad and product',
  ),
  overlap: pure(0.5, 'common practice', '', 'overlap of neighbouring strokes'),
  passes: pure(4, 'common practice', '', 'crosshatch passes in a set'),
  section: number(
    squareMetres(0.61 * 0.61),
    'm²',
    'published',
    'Nissan 94-015: at most 0.61 × 0.61 m',
    'area worked at a time',
  ),
  hardnessLogSd: pure(
    0.35,
    'assumption',
    '',
    'ln-SD of a paint’s hardness, shared by all steps on it',
  ),
  combinationLogSd: pure(0.4, 'assumption', '', 'ln-SD of a combination’s own rate'),
  stepLogSd: pure(0.15, 'assumption', '', 'ln-SD from one step to the next'),
  softFactor: pure(1.5, 'assumption', '', 'removal on paint declared soft'),
  hardFactor: pure(0.65, 'assumption', '', 'removal on paint declared hard'),
} as const;

export const correctionDefaults = {
  depthLogSd: pure(0.6, 'assumption', '', 'ln-SD of depth among the defects of a panel'),
  depthScaleLogSd: pure(
    0.5,
    'assumption',
    '',
    'ln-SD of how deep this car’s defects are as a whole',
  ),
  assumedGrade: pure(3, 'assumption', '', 'grade of swirl marks where no defects file is given'),
  aims: {
    enhance: pure(0.6, 'common practice', '', 'share of general defects to clear'),
    correct: pure(0.85, 'common practice', '', 'share of general defects to clear'),
    full: pure(0.95, 'common practice', '', 'share of general defects to clear'),
  },
  hazeCleared: number(
    micrometres(0.25),
    'µm',
    'assumption',
    '',
    'removal that clears one grade of haze',
  ),
  leastCorrection: pure(0.1, 'assumption', '', 'a plan that clears less is not worth its film'),
} as const;

const m = values(machineDefaults);
const orbital = (
  { throwDiameter, orbitsPerMinute }: { throwDiameter: Millimetres; orbitsPerMinute: number },
  forcedRpm = 0,
): Motion => ({ kind: 'orbital', throwDiameter, orbitsPerMinute, forcedRpm });
const machine = (
  id: string,
  name: string,
  motion: Motion,
  { padDiameter, force, armSpeed }: Pick<Machine, 'padDiameter' | 'force' | 'armSpeed'>,
): Machine => ({ id, name, motion, padDiameter, force, armSpeed });

const pad = (id: keyof typeof padDefaults, name: string, stages: readonly Stage[]): Pad => ({
  id,
  name,
  factor: padDefaults[id].value,
  stages,
});

type DefectId = keyof typeof defectDefaults;

const graded = (
  scope: 'general' | 'local',
  id: DefectId,
  name: string,
  aliases: readonly string[],
): DefectKind => ({
  id,
  name,
  aliases,
  medians: defectDefaults[id].map(({ value }) => value),
  scope,
});

/** Sanding marks are as deep as their grain makes them, whatever the grade of the defect. */
const sandingMarks = (grade: keyof typeof grainDefaults): DefectKind => {
  const depth = micrometres(grainDefaults[grade].value / sandingDefaults.grainPerDepth.value);
  return {
    id: `sanding-marks-${grade}`,
    name: `sanding marks ${grade.toUpperCase()}`,
    aliases: [`${grade} marks`],
    medians: [depth, depth, depth, depth, depth],
    scope: 'general',
  };
};

export const correctionModel: CorrectionModel = {
  machines: [
    machine('rotary', 'rotary', { kind: 'rotary', rpm: m.rotary.rpm }, m.rotary),
    machine('da', 'free-spinning dual action', orbital(m.da), m.da),
    machine(
      'da-forced',
      'forced-rotation dual action',
      orbital(m.daForced, m.daForced.forcedRpm),
      m.daForced,
    ),
    machine('da-small', 'small dual action', orbital(m.daSmall), m.daSmall),
    machine(
      'hand',
      'by hand',
      {
        kind: 'hand',
        rubbing: m.hand.rubbing,
        minutesPerSet: m.hand.minutesPerSet,
        handArea: m.hand.handArea,
      },
      m.hand,
    ),
  ],
  pads: [
    pad('foam-soft', 'soft foam', ['cut', 'refine', 'finish']),
    pad('foam-medium', 'medium foam', ['cut', 'refine', 'finish']),
    pad('foam-firm', 'firm foam', ['cut', 'refine']),
    pad('microfibre', 'microfibre', ['cut', 'refine']),
    pad('wool', 'wool', ['cut', 'refine']),
  ],
  products: [
    { id: 'fine', name: 'fine polish', factor: productDefaults.fine.value, stages: ['finish'] },
    {
      id: 'medium',
      name: 'medium polish',
      factor: productDefaults.medium.value,
      stages: ['cut', 'refine'],
    },
    { id: 'heavy', name: 'heavy compound', factor: productDefaults.heavy.value, stages: ['cut'] },
  ],
  defects: [
    graded('general', 'swirl-marks', 'swirl marks', ['swirl', 'swirls', 'spider webbing']),
    graded('general', 'holograms', 'holograms', ['hologram', 'buffer trails', 'buffer trail']),
    graded('general', 'marring', 'marring', ['haze', 'micro-marring', 'scuffs', 'light scratches']),
    graded('general', 'oxidation', 'oxidation', ['oxidised', 'oxidized', 'chalking', 'fading']),
    graded('local', 'water-etching', 'water etching', [
      'water spots',
      'water spot etching',
      'water marks',
    ]),
    graded('local', 'bird-etching', 'bird etching', ['bird droppings', 'bird lime', 'bird etch']),
    graded('local', 'deep-scratches', 'random deep scratches', [
      'deep scratch',
      'rids',
      'scratch',
      'scratches',
    ]),
    ...(Object.keys(grainDefaults) as (keyof typeof grainDefaults)[]).map(sandingMarks),
    { id: 'orange-peel', name: 'orange peel', aliases: [], medians: [], scope: 'not-polishing' },
    {
      id: 'clear-coat-failure',
      name: 'clear coat failure',
      aliases: ['clear failure', 'delamination', 'peeling'],
      medians: [],
      scope: 'refinish',
    },
  ],
  removal: values(removalDefaults),
  correction: values(correctionDefaults),
};
