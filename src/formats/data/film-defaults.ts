/** The film room's numbers, each with the grounds it stands on. */
import {
  type Micrometres,
  type Minutes,
  micrometres,
  millimetres,
  milToMicrometres,
  minutes,
} from '../../base/units.ts';
import { type Basis, type Default, number, pure, type Range } from '../default.ts';

const um = (
  value: number,
  basis: Basis,
  source: string,
  meaning: string,
  range: Range = [0, 1000],
): Default<Micrometres> => number(micrometres(value), 'µm', basis, source, meaning, range);

const min = (value: number, meaning: string): Default<Minutes> =>
  number(minutes(value), 'min', 'assumption', '', `time to read ${meaning}`, [0, 240]);

const share: Range = [0, 1];
/** A spread of nothing would claim that a layer is known exactly. */
const sd: Range = [0.1, 100];

export const filmDefaults = {
  measurement: {
    fixed: um(1, 'common practice', '', 'fixed half-width of a gauge’s calibration error'),
    proportional: pure(
      0.02,
      'common practice',
      '',
      'share of the reading in that half-width',
      share,
    ),
    repeatability: um(
      1.5,
      'assumption',
      '',
      'SD of a repeated reading, hand placement included',
      sd,
    ),
    repeatabilityLeastDof: pure(
      5,
      'assumption',
      '',
      'degrees of freedom from which the data’s own repeatability counts',
      [1, 1000],
    ),
    curvature: um(1, 'assumption', '', 'extra SD at a point marked as curved'),
    filmShim: um(
      40,
      'assumption',
      'car films are thicker, and a shim called 50 µm may be certified a little under',
      'thickness of shim from which a check tells what a gauge is off by on film',
    ),
    largestReading: um(
      5000,
      'assumption',
      'no gauge for vehicle paint reads further',
      'largest value that is taken for a reading',
      [500, 50_000],
    ),
    doubtfulUnder: um(
      15,
      'assumption',
      '100 µm written as 3.9 mil and read as µm are 3.9 µm',
      'reading under which a film is doubted, and a file’s unit where its middle one is',
      [0, 100],
    ),
    doubtfulOver: um(
      1500,
      'assumption',
      '100 µm read as mil are 2540 µm',
      'middle reading of a file over which its unit is doubted',
      [200, 50_000],
    ),
  },
  spread: {
    priorDofCap: pure(
      6,
      'derived',
      'simulation: coverage .93–.98',
      'most weight the other panels get, in degrees of freedom',
      [1, 100],
    ),
    fallbackShare: pure(
      0.05,
      'assumption',
      '',
      'spread over a panel as a share of its mean',
      share,
    ),
    fallbackLeast: um(
      4,
      'assumption',
      '',
      'least spread over a panel where nothing else is known',
      sd,
    ),
    leastShareOfMedian: pure(
      0.1,
      'assumption',
      'simulation: coverage .93–.985; by chance one panel of five points in eighty reads less',
      'least share of the median that a panel’s variance counts as when panels are compared',
      [0.001, 1],
    ),
    leastPanels: pure(
      3,
      'assumption',
      '',
      'panels of three points or more that are needed to pool their spread',
      [2, 20],
    ),
  },
  tolerance: {
    content: pure(
      0.95,
      'common practice',
      '',
      'share of the face that is thicker than the thinnest credible film',
      [0.5, 0.999],
    ),
    confidence: pure(
      0.95,
      'common practice',
      '',
      'confidence of the thinnest credible film',
      [0.5, 0.999],
    ),
  },
  zones: {
    meansApart: um(
      25,
      'assumption',
      'simulation: false splits 1 % at most, steps of 40 µm found in 95 %',
      'two zones of a panel differ by more in their means',
    ),
    meansApartSds: pure(
      4,
      'assumption',
      'the same simulation',
      'the same in SDs of film over the other panels',
      [0, 20],
    ),
    gap: um(
      10,
      'assumption',
      'the same simulation',
      'nearest points of two zones are further apart',
    ),
    gapSds: pure(
      1.5,
      'assumption',
      'the same simulation',
      'the same gap in SDs of film over the other panels',
      [0, 20],
    ),
    leastPoints: pure(2, 'assumption', '', 'points that a zone needs', [2, 20]),
  },
  flagRisk: pure(
    0.05,
    'common practice',
    '',
    'chance that a point of an even panel is flagged as low or high',
    [0.001, 0.5],
  ),
  conditions: {
    filler: um(
      500,
      'published',
      'German vehicle-assessor guides (second-hand)',
      'a point over it lies on filler',
      [200, 5000],
    ),
    refinished: um(
      200,
      'published',
      'German vehicle-assessor guides (second-hand)',
      'a median over it is a repaint',
    ),
    refinishedAbove: um(40, 'assumption', '', 'a median this far over the baseline is a repaint'),
    refinishedAboveShare: pure(
      0.35,
      'assumption',
      '',
      'how far over the baseline a repaint is, as a share of it',
      [0, 5],
    ),
    cutBack: um(12, 'assumption', '', 'a mean this far under the baseline was cut before'),
    baselinePanels: pure(
      3,
      'assumption',
      '',
      'panels that may tell their own baseline; of fewer, what factories paint tells a repaint too',
      [1, 50],
    ),
    mirror: um(25, 'assumption', '', 'mirrored panels further apart get a note'),
    mirrorShare: pure(
      0.25,
      'assumption',
      '',
      'mirrored panels further apart than this share of the thinner one get a note',
      [0, 5],
    ),
    nearRisk: pure(
      0.05,
      'common practice',
      '',
      'chance of the other side of its line from which a condition is called near it',
      [0.001, 0.5],
    ),
  },
  layers: {
    clearOverBase: {
      top: {
        mean: um(
          42,
          'published',
          'Polymers 13(22):3933 (2021): 35–40; GM service manuals: 38–51',
          'factory clear, mean',
        ),
        sd: um(6, 'assumption', '', 'factory clear, SD over cars and panels', sd),
      },
      under: {
        mean: um(
          70,
          'published',
          'Polymers 13(22):3933: surfacer 35–40, base 10–15; system description: e-coat about 20',
          'everything under the clear, mean',
        ),
        sd: um(10, 'assumption', '', 'everything under the clear, SD', sd),
      },
    },
    galvanisedUnder: {
      mean: um(
        77,
        'assumption',
        '70 and half of 14 µm of zinc (100 g/m² at 7.14 g/cm³)',
        'everything under the clear on galvanised steel read magnetically, mean',
      ),
      sd: um(
        11,
        'assumption',
        '',
        'everything under the clear on galvanised steel read magnetically, SD',
        sd,
      ),
    },
    singleStage: {
      top: {
        mean: um(
          40,
          'assumption',
          'Subaru service manual 2004: 35–45 on plastic',
          'single-stage topcoat, mean',
        ),
        sd: um(6, 'assumption', '', 'single-stage topcoat, SD', sd),
      },
      under: {
        mean: um(55, 'assumption', '', 'everything under a single-stage topcoat, mean'),
        sd: um(10, 'assumption', '', 'everything under a single-stage topcoat, SD', sd),
      },
    },
  },
  stated: {
    panelToPanel: um(
      3,
      'assumption',
      'a quarter of the variance of factory clear',
      'SD of single panels about a thickness stated of the whole car',
    ),
    clearSd: um(
      3,
      'assumption',
      'layer-resolving instruments state 2 µm or 3 %; placement adds the rest',
      'SD of a stated clear where no sd is given',
    ),
    underSd: um(
      4,
      'assumption',
      'three layers of about 2.3 µm each',
      'SD of stated layers under the clear where no sd is given',
    ),
  },
  topcoat: {
    thinnestShare: pure(
      0.05,
      'common practice',
      '',
      'share of a panel’s face that may end under the clear floor',
      [0.001, 0.5],
    ),
    panelShare: pure(
      0.5,
      'assumption',
      '',
      'share of the spread over a panel that is put down to the topcoat',
      share,
    ),
    panelCeiling: pure(
      0.6,
      'assumption',
      '',
      'most of the topcoat’s variance that may lie within a panel',
      [0, 0.95],
    ),
    underLeast: pure(
      1 / 3,
      'assumption',
      '',
      'least of the variance under the topcoat that lies between panels',
      [0.01, 1],
    ),
  },
  earlier: {
    unknownClear: um(2, 'assumption', '', 'clear taken before, where nobody knows'),
    unknownLife: um(
      4,
      'assumption',
      '',
      'taken before where nobody knows, counted against the limit over a panel’s life',
    ),
  },
  limits: {
    riskPct: number(
      5,
      '%',
      'common practice',
      '',
      'risk of leaving clear under its floor on a panel',
      [0.1, 50],
    ),
    totalFloorRiskPct: number(
      5,
      '%',
      'common practice',
      '',
      'chance that a removal exceeds what the floor of the total allows',
      [0.1, 50],
    ),
    life: um(
      milToMicrometres(0.5),
      'published',
      'GM 91-282-10 (1991); Chrysler 23-003-06; Nissan 94-015; Acura/Honda 96-010',
      'most that may come off over a panel’s life',
    ),
    lifeSolid: um(
      milToMicrometres(1),
      'published',
      'Lexus acid-rain bulletin 1992',
      'most that may come off over a panel’s life, solid single-stage finish',
    ),
    clearFloor: um(
      22.3,
      'derived',
      'thinnest published factory clear 35 less the permitted 12.7',
      'clear to leave on the thinnest 5 %',
    ),
    clearFloorStrict: um(
      35.6,
      'published',
      'GM bulletin 86-10-24 (1986): 1.4 mil',
      'clear to leave on the thinnest 5 % under the strict policy',
    ),
    singleStageFloor: um(20, 'assumption', '', 'single-stage topcoat to leave on the thinnest 5 %'),
    totalFloor: um(80, 'common practice', '', 'least total at the smallest point, clear over base'),
    totalFloorSingleStage: um(
      60,
      'assumption',
      '',
      'least total at the smallest point, single-stage and lacquer',
    ),
  },
  thinnerClear: um(
    6,
    'assumption',
    'one SD of factory clear',
    'how much thinner the clear is in “if thin”',
  ),
  freshPaintDays: number(
    90,
    'd',
    'assumption',
    '',
    'paint younger than this is left alone',
    [0, 3650],
  ),
  reading: {
    leastPoints: pure(
      3,
      'derived',
      'with one or two points the spread rests on the other panels alone',
      'points a panel needs for machine work, as the advice has it',
      [2, 20],
    ),
    bestPoints: pure(
      5,
      'derived',
      'simulation: from 3 to 5 points the budget grows, beyond 9 hardly',
      'points a panel is best read at',
      [2, 50],
    ),
    mostPoints: pure(
      9,
      'derived',
      'simulation: beyond 9 points the budget hardly grows',
      'points beyond which no more are advised',
      [2, 100],
    ),
  },
  measuring: {
    pointTime: min(1, 'a point of a panel, read three times'),
    clearTime: min(10, 'the clear of a panel, by an instrument that resolves layers'),
    testSpotTime: min(20, 'a test spot with ten marks read before and after'),
  },
  edgeWidth: number(
    millimetres(25),
    'mm',
    'from memory',
    '',
    'outer strip of a panel that no statement is about',
    [0, 200],
  ),
} as const;
