/** The film room's numbers, each with the grounds it stands on. */
import { type Micrometres, micrometres, milToMicrometres } from '../../base/units.ts';
import type { FilmModel } from '../../film/film-model.ts';
import { type Basis, type Default, number, values } from '../default.ts';

const um = (value: number, basis: Basis, source: string, meaning: string): Default<Micrometres> =>
  number(micrometres(value), 'µm', basis, source, meaning);

export const filmDefaults = {
  measurement: {
    fixed: um(1, 'common practice', '', 'fixed half-width of a gauge’s calibration error'),
    proportional: number(
      0.02,
      '1',
      'common practice',
      '',
      'share of the reading in that half-width',
    ),
    repeatability: um(1.5, 'assumption', '', 'SD of a repeated reading, hand placement included'),
    curvature: um(1, 'assumption', '', 'extra SD at a point marked as curved'),
  },
  spread: {
    priorDofCap: number(
      6,
      '1',
      'derived',
      'simulation: coverage .93–.98',
      'most weight the other panels get',
    ),
    fallbackShare: number(
      0.05,
      '1',
      'assumption',
      '',
      'spread over a panel as a share of its mean',
    ),
    fallbackLeast: um(4, 'assumption', '', 'least spread over a panel where nothing else is known'),
  },
  tolerance: {
    content: number(0.95, '1', 'common practice', '', 'share of the face that is thicker'),
    confidence: number(0.95, '1', 'common practice', '', 'confidence of that statement'),
  },
  conditions: {
    filler: um(
      500,
      'published',
      'German vehicle-assessor guides (second-hand)',
      'a point over it lies on filler',
    ),
    refinished: um(
      200,
      'published',
      'German vehicle-assessor guides (second-hand)',
      'a median over it is a repaint',
    ),
    refinishedAbove: um(40, 'assumption', '', 'a median this far over the baseline is a repaint'),
    refinishedAboveShare: number(
      0.35,
      '1',
      'assumption',
      '',
      'the same as a share of the baseline',
    ),
    cutBack: um(12, 'assumption', '', 'a mean this far under the baseline was cut before'),
    mirror: um(25, 'assumption', '', 'mirrored panels further apart get a note'),
    mirrorShare: number(0.25, '1', 'assumption', '', 'the same as a share of the thinner one'),
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
        sd: um(6, 'assumption', '', 'factory clear, SD over cars and panels'),
      },
      under: {
        mean: um(
          70,
          'published',
          'Polymers 13(22):3933: surfacer 35–40, base 10–15; system description: e-coat about 20',
          'everything under the clear, mean',
        ),
        sd: um(10, 'assumption', '', 'everything under the clear, SD'),
      },
    },
    galvanisedUnder: {
      mean: um(
        77,
        'assumption',
        '70 and half of 14 µm of zinc (100 g/m² at 7.14 g/cm³)',
        'the same on galvanised steel read magnetically, mean',
      ),
      sd: um(11, 'assumption', '', 'the same, SD'),
    },
    singleStage: {
      top: {
        mean: um(
          40,
          'assumption',
          'Subaru service manual 2004: 35–45 on plastic',
          'single-stage topcoat, mean',
        ),
        sd: um(6, 'assumption', '', 'single-stage topcoat, SD'),
      },
      under: {
        mean: um(55, 'assumption', '', 'everything under a single-stage topcoat, mean'),
        sd: um(10, 'assumption', '', 'everything under a single-stage topcoat, SD'),
      },
    },
  },
  earlier: {
    unknownClear: um(2, 'assumption', '', 'clear taken before, where nobody knows'),
    unknownLife: um(
      4,
      'assumption',
      '',
      'the same, counted against the limit over the panel’s life',
    ),
  },
  limits: {
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
      'the same on a solid single-stage finish',
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
      'the same under the strict policy',
    ),
    singleStageFloor: um(20, 'assumption', '', 'single-stage topcoat to leave on the thinnest 5 %'),
    totalFloor: um(80, 'common practice', '', 'least total at the smallest point, clear over base'),
    totalFloorSingleStage: um(60, 'assumption', '', 'the same on single-stage and lacquer'),
  },
  thinnerClear: um(
    6,
    'assumption',
    'one SD of factory clear',
    'how much thinner the clear is in “if thin”',
  ),
  freshPaintDays: number(90, 'd', 'assumption', '', 'paint younger than this is left alone'),
} as const;

export const filmModel: FilmModel = values(filmDefaults);
