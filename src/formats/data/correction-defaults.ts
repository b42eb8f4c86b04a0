/** The correction room's numbers: removal, correction, haze and the planner's choices, with their grounds. */
import { micrometres, squareMetres } from '../../base/units.ts';
import { type Default, number, pure, type Range } from '../default.ts';
import { defectDefaults, grainDefaults, sandingDefaults } from './defect-defaults.ts';
import { heatDefaults } from './heat-defaults.ts';
import { machineDefaults, padDefaults, productDefaults } from './machine-defaults.ts';

const share: Range = [0, 1];
const logSd: Range = [0.01, 2];

const removalDefaults = {
  preston: number(
    7.8e-12,
    '1/Pa',
    'derived',
    'Preston 1927 solved for 1 µm per orbital set; order 2e-12…1e-11',
    'Preston coefficient, medium pad and product',
    [1e-13, 1e-10],
  ),
  overlap: pure(0.5, 'common practice', '', 'overlap of neighbouring strokes', [0, 0.9]),
  passes: pure(4, 'common practice', '', 'crosshatch passes in a set', [1, 20]),
  section: number(
    squareMetres(0.61 * 0.61),
    'm²',
    'published',
    'Nissan 94-015: at most 0.61 × 0.61 m',
    'area worked at a time',
    [0.01, 2],
  ),
  hardnessLogSd: pure(
    0.35,
    'assumption',
    '',
    'ln-SD of a paint’s hardness, shared by all steps on it',
    logSd,
  ),
  combinationLogSd: pure(0.4, 'assumption', '', 'ln-SD of a combination’s own rate', logSd),
  stepLogSd: pure(0.15, 'assumption', '', 'ln-SD of removal from one step to the next', logSd),
  softFactor: pure(
    1.5,
    'assumption',
    '',
    'removal on paint declared soft, against usual paint',
    [1, 5],
  ),
  hardFactor: pure(
    0.65,
    'assumption',
    '',
    'removal on paint declared hard, against usual paint',
    [0.1, 1],
  ),
} as const;

const mostSets = (stage: string, value: number): Default =>
  pure(
    value,
    'common practice',
    'more is a sign to step up',
    `most sets of one combination to ${stage}`,
    [1, 6],
  );

const aimRange: Range = [0.01, 0.99];

export const correctionDefaults = {
  machines: machineDefaults,
  pads: padDefaults,
  products: productDefaults,
  defects: defectDefaults,
  grain: grainDefaults,
  sanding: sandingDefaults,
  heat: heatDefaults,
  removal: removalDefaults,
  depthLogSd: pure(0.6, 'assumption', '', 'ln-SD of depth among the defects of a panel', logSd),
  depthScaleLogSd: pure(
    0.5,
    'assumption',
    '',
    'ln-SD of how deep this car’s defects are as a whole',
    logSd,
  ),
  assumedGrade: pure(
    3,
    'assumption',
    '',
    'grade of swirl marks where no defects file is given',
    [0.5, 5],
  ),
  aims: {
    enhance: pure(0.6, 'common practice', '', 'share of marks to clear, aim enhance', aimRange),
    correct: pure(0.85, 'common practice', '', 'share of marks to clear, aim correct', aimRange),
    full: pure(0.95, 'common practice', '', 'share of marks to clear, aim full', aimRange),
  },
  leastCorrection: pure(
    0.1,
    'assumption',
    '',
    'share of marks under which a plan is not worth its film',
    share,
  ),
  leastForPlace: pure(
    0.25,
    'assumption',
    'a mark that three quarters of remain is seen as before, and the film of its place is gone for good',
    'share of a mark that a spot must clear to be worth all the film its place may lose; in proportion where it takes less',
    share,
  ),
  haze: {
    cleared: number(
      micrometres(0.25),
      'µm',
      'assumption',
      '',
      'removal that clears one grade of haze',
      [0.01, 5],
    ),
    rotary: pure(
      2,
      'assumption',
      '',
      'haze grades that a rotary adds to those of its product',
      [0, 4],
    ),
    heaviest: pure(4, 'assumption', '', 'heaviest haze grade, holograms', [1, 4]),
    allowed: pure(1, 'assumption', '', 'haze grade that may be left at the end', [0, 4]),
    allowedFussy: pure(
      0,
      'assumption',
      '',
      'the same for the aim full, and on dark or soft paint',
      [0, 4],
    ),
  },
  mostSets: {
    cut: mostSets('cut', 3),
    refine: mostSets('refine', 2),
    finish: mostSets('finish', 2),
  },
  localSection: number(
    squareMetres(0.05),
    'm²',
    'assumption',
    'three pads of 75 mm across',
    'area worked around one local defect',
    [0.005, 0.4],
  ),
  shopRates: {
    combinationShare: pure(
      0.75,
      'assumption',
      '1 − (.20/.40)²: pad wear, heat and what a product makes of one clear or another taken as ln-SD .20 from vehicle to vehicle',
      'share of the variance of a combination’s own rate that is the same on every vehicle of a shop',
      share,
    ),
    partsShare: pure(
      0.75,
      'assumption',
      'a rate is machine · pad · product: each taken to be as much in doubt as how the three go together',
      'share of what stays the same of a combination that lies in its machine, pad and product, a third each',
      share,
    ),
    paintShare: pure(
      0.25,
      'assumption',
      '(.175/.35)²: makes and ages that a shop sees, and how it works, taken as ln-SD .175 between shops',
      'share of the variance of hardness that is the same for all vehicles of a shop',
      share,
    ),
  },
  spot: {
    eyeLogSd: pure(
      0.35,
      'assumption',
      '',
      'ln-SD of what a share cleared, judged by eye, says of removal over depth',
      logSd,
    ),
    scatterDof: pure(
      6,
      'assumption',
      '',
      'degrees of freedom of the gauge’s repeatability against the scatter of a spot’s own marks',
      [1, 1000],
    ),
    leastChance: pure(
      0.2,
      'assumption',
      'start with the mildest that may do',
      'chance to reach the aim that makes a combination worth a test spot',
      share,
    ),
    sets: pure(
      2,
      'common practice',
      'a third set is a sign to step up',
      'sets within which a combination on a test spot is to reach the aim',
      [1, 6],
    ),
    lossBeyondSds: pure(
      3.29,
      'assumption',
      'one in a thousand of a normal spread lies further, either way',
      'SDs of what paints and ways of working differ by, beyond which the loss of a test spot is refused',
      [1, 10],
    ),
    marksOff: number(
      micrometres(25),
      'µm',
      'assumption',
      'five times the usual spread over a panel',
      'how far a mark of a test spot may lie from all that its panel reads before it is held to be of another',
      [1, 1000],
    ),
  },
  choice: {
    equalShortfall: pure(
      0.01,
      'assumption',
      'a fraction of a point never buys a harsher step',
      'corrections nearer to each other than this count as equal',
      [0, 0.5],
    ),
    removalBin: number(
      micrometres(0.1),
      'µm',
      'assumption',
      'a tenth is less than any removal is known to',
      'removals that fall into one bin of this width count as equal',
      [0.001, 10],
    ),
  },
} as const;
