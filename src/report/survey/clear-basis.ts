/** The built-in figures that decide most and that nobody measured. */
import {
  bare,
  type Sentence,
  says,
  tell,
  thicknessText,
  um,
  unitName,
} from '../../base/sentence.ts';
import type { LengthUnit } from '../../base/units.ts';
import type { FilmModel } from '../../film/film-model.ts';
import type { TopcoatCase } from '../../film/limits/topcoat-cases.ts';
import { type PanelSurvey, partsOf } from '../../film/survey.ts';
import { zincOf } from '../../film/zinc.ts';
import { filmDefaults } from '../../formats/data/film-defaults.ts';
import type { Default } from '../../formats/default.ts';
import type { SurveyResult } from '../../tasks/survey/survey-vehicle.ts';
import { joined } from '../facts.ts';
import { type Block, list, paragraph } from '../model.ts';
import type { PageOptions } from '../page-options.ts';

/** A clause for each figure; nothing of layers that were stated or read. With its grounds where more is asked for. */
export function builtInBlock(
  read: readonly PanelSurvey[],
  { settings, assumptions }: SurveyResult,
  { unit, verbose, onPaper = false }: PageOptions,
): readonly Block[] {
  // What is assumed of earlier work stands at the top of the page.
  const isWorkTold = assumptions.some(({ code }) => code === 'history');
  // A matte finish is left alone whatever its clear.
  const parts = read
    .flatMap(partsOf)
    .filter(({ topcoat, boundBy }) => topcoat !== null && boundBy.code !== 'finish');
  if (parts.length === 0) return [];
  const told = parts.map((part) =>
    figuresOf(part, settings.film, isWorkTold).map((one) =>
      one === null || isSaidAbove(one, verbose) ? null : figureText(one, unit, verbose),
    ),
  );
  // The same figures of all parts together, in their order.
  const figures = (told[0] ?? []).flatMap((_, i) => told.flatMap((some) => some[i] ?? []));
  const where = verbose ? 'leastcut explain film.limits' : '-v: grounds';
  const label = 'Built in';
  const text = onPaper && !verbose ? label : `${label} (${where})`;
  return [paragraph({ text, short: label }, joined([...new Set(figures)], '; ', '.'))];
}

type Figure = {
  readonly said: Sentence;
  readonly grounds: string;
  /** Whether it stands where the signs of the table are explained. */
  readonly isSign?: true;
};

const isSaidAbove = ({ grounds, isSign }: Figure, isFull: boolean): boolean =>
  isSign === true && !isFull && !grounds.includes(OWN);

/** A figure that somebody set is never passed off as built in. */
function figureText({ said, grounds }: Figure, unit: LengthUnit, isFull: boolean): string {
  const text = tell(said, unit);
  return isFull || grounds.includes(OWN) ? `${text} (${grounds})` : text;
}

/** In this order for every part; null of what does not bear on it. */
function figuresOf(
  { topcoat, facts, totalFloor }: PanelSurvey,
  { layers, limits, earlier }: FilmModel,
  isWorkTold: boolean,
): readonly (Figure | null)[] {
  if (topcoat === null) return [];
  const { finish, clearFloor, told } = topcoat;
  const name = finish === 'single-stage' ? 'topcoat' : 'clear';
  const life = facts.finish === 'single-stage-solid' ? 'lifeSolid' : 'life';
  const zinc = zincOf(layers).mean;
  const paint = totalFloor - (facts.galvanised ? zinc : 0);
  const { unknownClear, unknownLife } = earlier;
  const { galvanisedUnder } = filmDefaults.layers;
  return [
    isKnown(topcoat) ? null : layersAssumed(topcoat, name),
    facts.galvanised && told.knowledge.statedUnder === null
      ? {
          said: says`zinc ${um(zinc, null)}`,
          grounds: basisOf(galvanisedUnder.mean, layers.galvanisedUnder.mean),
        }
      : null,
    { said: says`${um(clearFloor)} of ${name} must stay`, grounds: floorGrounds(topcoat) },
    {
      said: says`${um(paint, 0)} of paint in all`,
      grounds: totalFloorGrounds(topcoat, paint),
      isSign: true,
    },
    {
      said: says`${um(limits[life])} off over a life`,
      grounds: basisOf(filmDefaults.limits[life], limits[life]),
    },
    facts.taken === null && !isWorkTold
      ? {
          said: says`unknown work: ${bare(unknownClear, null)} off the ${name}, ${um(unknownLife, null)} off the life`,
          grounds: basisOf(filmDefaults.earlier.unknownClear, unknownClear),
        }
      : null,
  ];
}

/** By itself: one told from other panels is drawn towards what factories paint. */
const isKnown = ({ told: { knowledge } }: TopcoatCase): boolean =>
  knowledge.statedClear !== null &&
  (knowledge.statedClear.readOn === undefined || knowledge.statedClear.withStated === true);

function layersAssumed({ finish, told: { knowledge } }: TopcoatCase, name: string): Figure {
  const { top, under, statedUnder, statedClear } = knowledge;
  const readOn = statedClear?.readOn;
  const read =
    readOn === undefined ? '' : ` and what was read on ${readOn} panel${readOn === 1 ? '' : 's'}`;
  const over =
    statedUnder === null
      ? says` over ${bare(under.mean, 0)} ± ${um(under.sd, 0)} (SD), thick film adds none`
      : says` (SD)`;
  const built = layersOf(finish);
  const [mean, spread] = [basisOf(built.top.mean, top.mean), basisOf(built.top.sd, top.sd)];
  return {
    said: says`${name} by factories’ ${bare(top.mean, 0)} ± ${um(top.sd, 0)}${read}${over}`,
    grounds: mean === spread ? mean : `${mean}, SD ${spread}`,
  };
}

const OWN = 'own setting';

/** In a word where a figure is from; one that somebody set is no built-in one. */
const basisOf = ({ value, basis }: Default, used: number): string => (value === used ? basis : OWN);

const layersOf = (finish: TopcoatCase['finish']) =>
  finish === 'single-stage' ? filmDefaults.layers.singleStage : filmDefaults.layers.clearOverBase;

const floorOf = (finish: TopcoatCase['finish']): Default =>
  finish === 'single-stage' ? filmDefaults.limits.singleStageFloor : filmDefaults.limits.clearFloor;

function floorGrounds({ finish, clearFloor }: TopcoatCase): string {
  const { limits } = filmDefaults;
  const known = [floorOf(finish), limits.clearFloorStrict].find(
    ({ value }) => value === clearFloor,
  );
  if (known === undefined) return OWN;
  return known.basis === 'derived' ? known.source : known.basis;
}

function totalFloorGrounds({ finish }: TopcoatCase, floor: number): string {
  const { totalFloor, totalFloorSingleStage } = filmDefaults.limits;
  return basisOf(finish === 'single-stage' ? totalFloorSingleStage : totalFloor, floor);
}

/** Of a panel: where the figures that its limits rest on are from. */
export function sourcesOfFigures(
  { topcoat, facts }: PanelSurvey,
  unit: LengthUnit,
): readonly Block[] {
  if (topcoat === null) return [];
  const { layers, limits, earlier } = filmDefaults;
  const { top, under } = layersOf(topcoat.finish);
  const life = facts.finish === 'single-stage-solid' ? limits.lifeSolid : limits.life;
  const beneath = facts.galvanised ? layers.galvanisedUnder : under;
  const used = [
    ...(isKnown(topcoat) ? [] : [top.mean, top.sd]),
    ...(topcoat.told.knowledge.statedUnder === null ? [beneath.mean, beneath.sd] : []),
    ...(facts.taken === null ? [earlier.unknownClear, earlier.unknownLife] : []),
    floorOf(topcoat.finish),
    life,
    limits.totalFloor,
  ];
  return [
    list(
      {
        text: `Where the built-in figures are from (${unitName(unit)}; sources in micrometres)`,
        short: 'Where the built-in figures are from',
      },
      used.map((one) => sourceOf(one, unit)),
    ),
  ];
}

/** A source that speaks in micrometres is left to `explain` where mil are asked for. */
function sourceOf({ value, basis, source, meaning }: Default, unit: LengthUnit): string {
  const told = source === '' || (unit === 'mil' && source.includes('µm')) ? '' : `: ${source}`;
  return `${thicknessText(value, unit)}, ${meaning}: ${basis}${told}`;
}
