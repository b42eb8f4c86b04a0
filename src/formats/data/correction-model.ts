/** The built-in machines, pads, products and defects by name, filled with the numbers in force. */
import { micrometres } from '../../base/units.ts';
import type {
  CorrectionModel,
  DefectKind,
  Machine,
  Motion,
  Pad,
  Product,
  Stage,
} from '../../correction/removal/catalogue.ts';
import type { Values } from '../default.ts';
import type { correctionDefaults } from './correction-defaults.ts';

type Numbers = Values<typeof correctionDefaults>;

export function correctionModelOf(numbers: Numbers): CorrectionModel {
  const { machines: _, pads: __, products: ___, defects: ____, ...rest } = numbers;
  const { grain, sanding, heat, removal, spot, shopRates, ...correction } = rest;
  return {
    machines: builtInMachines(numbers),
    pads: builtInPads(numbers),
    products: builtInProducts(numbers),
    defects: builtInDefects(numbers, { grain, sanding }),
    rates: new Map(),
    learned: null,
    heat,
    removal,
    shopRates,
    spot,
    correction,
  };
}

function builtInMachines({ machines }: Numbers): readonly Machine[] {
  const { rotary, da, hand } = machines;
  const forced = machines['da-forced'];
  const small = machines['da-small'];
  const byHand: Motion = {
    kind: 'hand',
    rubbing: hand.rubbing,
    minutesPerSet: hand.setTime,
    handArea: hand.handArea,
  };
  return [
    machine('rotary', 'rotary', { kind: 'rotary', rpm: rotary.rpm }, rotary),
    machine('da', 'free-spinning dual action', orbital(da), da),
    machine('da-forced', 'forced-rotation dual action', orbital(forced, forced.forcedRpm), forced),
    machine('da-small', 'small dual action', orbital(small), small),
    // A hand moves as fast as it rubs.
    machine('hand', 'by hand', byHand, { ...hand, armSpeed: hand.rubbing }),
  ];
}

const machine = (
  id: string,
  name: string,
  motion: Motion,
  { padDiameter, force, armSpeed }: Pick<Machine, 'padDiameter' | 'force' | 'armSpeed'>,
): Machine => ({ id, name, motion, padDiameter, force, armSpeed });

const orbital = (
  {
    throwDiameter,
    orbitsPerMin,
  }: Pick<Numbers['machines']['da'], 'throwDiameter' | 'orbitsPerMin'>,
  forcedRpm = 0,
): Motion => ({ kind: 'orbital', throwDiameter, orbitsPerMinute: orbitsPerMin, forcedRpm });

/** Firm foam, microfibre and wool cut or refine; only softer foam also finishes (common practice). */
function builtInPads({ pads }: Numbers): readonly Pad[] {
  const pad = (id: keyof typeof pads, name: string, stages: readonly Stage[]): Pad => ({
    id,
    name,
    ...pads[id],
    stages,
  });
  return [
    pad('foam-soft', 'soft foam', ['cut', 'refine', 'finish']),
    pad('foam-medium', 'medium foam', ['cut', 'refine', 'finish']),
    pad('foam-firm', 'firm foam', ['cut', 'refine']),
    pad('microfibre', 'microfibre', ['cut', 'refine']),
    pad('wool', 'wool', ['cut', 'refine']),
  ];
}

/** Compound cuts, polish cuts or refines, a fine polish finishes (common practice). */
const builtInProducts = ({ products }: Numbers): readonly Product[] => [
  { id: 'fine', name: 'fine polish', ...products.fine, stages: ['finish'] },
  { id: 'medium', name: 'medium polish', ...products.medium, stages: ['cut', 'refine'] },
  { id: 'heavy', name: 'heavy compound', ...products.heavy, stages: ['cut'] },
];

type Grades = 1 | 2 | 3 | 4 | 5;
const GRADES: readonly Grades[] = [1, 2, 3, 4, 5];

function builtInDefects(
  { defects }: Numbers,
  { grain, sanding }: Pick<Numbers, 'grain' | 'sanding'>,
): readonly DefectKind[] {
  const graded = (
    scope: 'general' | 'local',
    id: keyof typeof defects,
    name: string,
    aliases: readonly string[],
  ): DefectKind => {
    const depths = defects[id];
    return {
      id,
      name,
      aliases,
      medians: GRADES.map((grade) => depths[`grade_${grade}`]),
      scope,
    };
  };
  /** Sanding marks are as deep as their grain makes them, whatever the grade of the defect. */
  const sandingMarks = (abrasive: keyof typeof grain): DefectKind => {
    const depth = micrometres(grain[abrasive] / sanding.grainPerDepth);
    return {
      id: `sanding-marks-${abrasive}`,
      name: `sanding marks ${abrasive.toUpperCase()}`,
      aliases: [`${abrasive} marks`],
      medians: GRADES.map(() => depth),
      scope: 'general',
    };
  };
  return [
    graded('general', 'swirl-marks', 'swirl marks', [
      'swirl',
      'swirls',
      'spider webbing',
      'spider webs',
      'wash marks',
      'wash marring',
      'wash scratches',
    ]),
    graded('general', 'holograms', 'holograms', ['hologram', 'buffer trails', 'buffer trail']),
    graded('general', 'marring', 'marring', [
      'haze',
      'hazing',
      'micro-marring',
      'scuffs',
      'light scratches',
      'fine scratches',
    ]),
    graded('general', 'oxidation', 'oxidation', [
      'oxidised',
      'oxidized',
      'chalking',
      'fading',
      'faded',
    ]),
    graded('local', 'water-etching', 'water etching', [
      'water spots',
      'water spot etching',
      'water marks',
    ]),
    graded('local', 'bird-etching', 'bird etching', ['bird droppings', 'bird lime', 'bird etch']),
    graded('local', 'deep-scratches', 'deep scratches', [
      'random deep scratches',
      'deep scratch',
      'rids',
      'scratch',
      'scratches',
    ]),
    ...(Object.keys(grain) as (keyof typeof grain)[]).map(sandingMarks),
    { id: 'orange-peel', name: 'orange peel', aliases: [], medians: [], scope: 'not-polishing' },
    {
      id: 'clear-coat-failure',
      name: 'clear coat failure',
      aliases: ['clear failure', 'delamination', 'peeling'],
      medians: [],
      scope: 'refinish',
    },
  ];
}
