/** What decides most and nobody measured: how thick the clear is held to be, and where that is from. */
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
import type { TopcoatCase } from '../../film/limits/removal-limits.ts';
import { type PanelSurvey, partsOf } from '../../film/survey.ts';
import { filmDefaults } from '../../formats/data/film-defaults.ts';
import type { Default } from '../../formats/default.ts';
import { type Block, list } from '../model.ts';

/** Of a survey, in a clause for each kind of topcoat; nothing of a clear that was stated or read. */
export const clearAssumptions = (
  read: readonly PanelSurvey[],
  unit: LengthUnit,
): readonly string[] => [
  ...new Set(
    read
      .flatMap(partsOf)
      .flatMap(({ topcoat }) => (topcoat === null || isKnown(topcoat) ? [] : [topcoat]))
      .map((topcoat) => tell(assumed(topcoat), unit)),
  ),
];

const isKnown = ({ told }: TopcoatCase): boolean => told.knowledge.statedClear !== null;

function assumed({ finish, clearFloor, told: { knowledge } }: TopcoatCase): Sentence {
  const { top, under, statedUnder } = knowledge;
  const name = finish === 'single-stage' ? 'topcoat' : 'clear';
  const over =
    statedUnder === null ? says` over ${bare(under.mean, 0)} ± ${um(under.sd, 0)}` : says``;
  const floor = floorOf(finish);
  const why = floor.value === clearFloor && floor.source !== '' ? says` (${floor.source})` : says``;
  return says`${name} reckoned from the total, not measured: ${bare(top.mean, 0)} ± ${um(top.sd, 0)} as factories paint${over}; ${um(clearFloor)} must stay${why}`;
}

const floorOf = (finish: TopcoatCase['finish']): Default =>
  finish === 'single-stage' ? filmDefaults.limits.singleStageFloor : filmDefaults.limits.clearFloor;

/** Of a panel: where the figures that its limits rest on are from. */
export function sourcesOfFigures(
  { topcoat, facts }: PanelSurvey,
  unit: LengthUnit,
): readonly Block[] {
  if (topcoat === null) return [];
  const { layers, limits } = filmDefaults;
  const { top, under } =
    topcoat.finish === 'single-stage' ? layers.singleStage : layers.clearOverBase;
  const life = facts.finish === 'single-stage-solid' ? limits.lifeSolid : limits.life;
  const used = [
    ...(isKnown(topcoat) ? [] : [top.mean, top.sd]),
    ...(topcoat.told.knowledge.statedUnder === null ? [under.mean, under.sd] : []),
    floorOf(topcoat.finish),
    life,
    limits.totalFloor,
  ];
  return [
    list(
      `Where the built-in figures are from (${unitName(unit)}; sources in micrometres)`,
      used.map((one) => sourceOf(one, unit)),
    ),
  ];
}

const sourceOf = ({ value, basis, source, meaning }: Default, unit: LengthUnit): string =>
  `${thicknessText(value, unit)}, ${meaning}: ${basis}${source === '' ? '' : `: ${source}`}`;
