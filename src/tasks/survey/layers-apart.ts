/**
 * Layers that the job states and that cannot be true of what a panel reads, or of each other: each page names them with
 * where they stand, and what may go is the least that either allows.
 */
import { type Diagnostic, warning } from '../../base/diagnostics.ts';
import { groupBy } from '../../base/group-by.ts';
import { inWords } from '../../base/in-words.ts';
import { shown } from '../../base/rounding.ts';
import { bare, says, tell, um } from '../../base/sentence.ts';
import type { LayerThickness, StatedLayer } from '../../film/film-model.ts';
import type { StatedApart } from '../../film/limits/clears-held.ts';
import { type PanelSurvey, partsOf } from '../../film/survey.ts';
import type { Effective } from '../settings/setting-origin.ts';
import { placeIn } from './believed-clears.ts';
import type { FactsByPanel } from './survey-grounds.ts';

type Stated = {
  readonly clear: Effective<StatedLayer | null>;
  readonly under: Effective<StatedLayer | null>;
};
type Apart = StatedApart & { readonly own: Stated; readonly panel: PanelSurvey };

export function layersApart(
  panels: readonly PanelSurvey[],
  facts: FactsByPanel,
): readonly Diagnostic[] {
  const apart = panels.flatMap((panel): readonly Apart[] => {
    const own = facts.get(panel.panel.id);
    const most = mostApart(panel);
    if (most === undefined || own === undefined) return [];
    const one = { ...most, own, panel };
    return layersOf(one).length === 0 ? [] : [one];
  });
  // A job on one line has the same place for all.
  const stated = groupBy(apart, ({ own }) =>
    [...said('clear_um', own.clear), ...said('under_um', own.under)]
      .map(({ text }) => text)
      .join(' '),
  );
  return [...stated.values()].flatMap((alike) => {
    const onCar = alike.filter(({ from }) => from === 'car');
    const seen = groupBy(
      alike.filter(({ from }) => from !== 'car'),
      (one) =>
        `${one.from} ${one.from === 'own-clear' ? one.panel.panel.id : layersOf(one).length}`,
    );
    const [first, ...rest] = [...seen.values()];
    if (first !== undefined) return [told(first, onCar), ...rest.map((group) => told(group, []))];
    return [...groupBy(onCar, layersText).values()].map(inDoubt);
  });
}

/** Of the zones of a panel the one where it is plainest. */
const mostApart = (panel: PanelSurvey): StatedApart | undefined =>
  partsOf(panel)
    .flatMap(({ topcoat }) => (topcoat?.apart === undefined ? [] : [topcoat.apart]))
    .sort((one, other) => other.sds - one.sds)[0];

function told(group: readonly [Apart, ...Apart[]], onCar: readonly Apart[]): Diagnostic {
  const most = shown(Math.max(...group.map(({ sds }) => sds)), 1);
  const isOne = group.length === 1;
  const also = onCar.length === 0 ? '' : `, on the same paint of ${namesOf(onCar)} too`;
  return layersWarning(
    layersOf(group[0]),
    `${claimOf(group)}: ${isOne ? '' : 'up to '}${most} SDs apart; what may go is the least that either allows${also}`,
  );
}

function claimOf(group: readonly [Apart, ...Apart[]]): string {
  const [first] = group;
  const what = layersOf(first).length > 1 ? 'cannot both be true of' : 'can hardly be true of';
  const { clearRead, clearElsewhere } = first.panel.facts;
  if (first.from === 'total') {
    return `${what} what was read of ${group.map(({ panel }) => withFilm(panel)).join(', ')}`;
  }
  const name = namesOf(group);
  if (first.from === 'own-clear') {
    return `${what} ${name}, whose clear reads ${layerText(clearRead)}`;
  }
  const read = clearElsewhere?.[0];
  const on = `${read?.panels} ${read?.panels === 1 ? 'panel' : 'panels'}`;
  return `${what} ${name}, by the clear as read on ${on} of the car, ${layerText(read)}`;
}

/** Nothing on these panels shows it, as where only a clear of their own leaves what is stated of the car in doubt. */
const inDoubt = (group: readonly [Apart, ...Apart[]]): Diagnostic =>
  layersWarning(
    layersOf(group[0]),
    `can hardly be true of other panels of this paint: on ${namesOf(group)} too what may go is the least that either allows`,
  );

const layersWarning = (layers: readonly Said[], claim: string): Diagnostic =>
  warning('stated-layers-apart', `${inWords(layers.map(({ text }) => text))} ${claim}`, {
    ...(layers[0] && { at: placeIn(layers[0].where) }),
    hint: 'correct the one that is wrong, or leave it out: nothing is averaged that cannot be of one paint',
  });

/** Those that are in question: a clear that was read alone is told of by the survey itself. */
function layersOf({ from, own, panel }: Apart): readonly Said[] {
  const isClearRead = panel.facts.clear?.within !== undefined;
  return [
    ...(from === 'under-elsewhere' || isClearRead ? [] : said('clear_um', own.clear)),
    ...(from === 'own-clear' || from === 'clear-elsewhere' ? [] : said('under_um', own.under)),
  ];
}

const layersText = (one: Apart): string => inWords(layersOf(one).map(({ text }) => text));

const namesOf = (some: readonly Apart[]): string =>
  some.map(({ panel }) => panel.panel.name).join(', ');

const withFilm = ({ panel, statistics }: PanelSurvey): string =>
  statistics === null ? panel.name : `${panel.name} (${tell([um(statistics.mean)], 'um')})`;

const layerText = (layer: LayerThickness | undefined): string =>
  layer === undefined ? '' : tell(says`${bare(layer.mean)} ± ${um(layer.sd)}`, 'um');

type Said = { readonly text: string; readonly where: string };

/** `clear_um 60.0 ± 3.0 µm (job.json:5)` */
const said = (key: string, { value, where }: Effective<StatedLayer | null>): readonly Said[] =>
  value === null ? [] : [{ text: `${key} ${layerText(value)} (${where})`, where }];
