import { type Remark, remark } from '../../base/remark.ts';
import { nextFact, type Sentence, says, um } from '../../base/sentence.ts';
import type { Micrometres } from '../../base/units.ts';
import type { FilmModel } from '../film-model.ts';
import { putBack } from '../put-back.ts';
import type { PanelSurvey } from '../survey.ts';
import { panelNames } from '../template/side-names.ts';
import type { Panel } from '../template/template.ts';
import { isFactoryFilm } from './condition.ts';
import type { PaintedTogether } from './line-comparison.ts';
import { sidePaintedWith } from './painted-side.ts';

/**
 * Panels that face each other and differ: worth a second look on either side.
 *
 * Two panels of one car, painted alike, differ by an SD of about 11 µm as the model takes panels to vary and five
 * points to be read: 25 µm are passed by one such pair in forty, and a repaint adds 40 µm or more.
 */
export function mirrorNotes(
  panels: readonly PanelSurvey[],
  model: FilmModel['conditions'],
): readonly Remark[] {
  const byId = new Map(panels.map((panel) => [panel.panel.id, panel]));
  const sides = new Set(panels.flatMap((panel) => sidePaintedWith(panel) ?? []));
  const pairs = panels.flatMap((left) => {
    const right = left.panel.mirror === null ? undefined : byId.get(left.panel.mirror);
    if (right === undefined || left.panel.id > right.panel.id) return [];
    if (left.film === null || right.film === null) return [];
    // Of a side that is in doubt as a whole it is said in one.
    if ([left, right].some((one) => sidePaintedWith(one) !== undefined)) return [];
    // What was keyed wrongly is asked first.
    if (left.keyingSlips.length + right.keyingSlips.length > 0) return [];
    // Of repaint and filler it is said already, and the zones of a mixed panel say more than its mean.
    if (![left, right].every(({ condition }) => isFactoryFilm(condition))) return [];
    const [one, other] = [
      putBack(left.film.mean, left.facts),
      putBack(right.film.mean, right.facts),
    ];
    const difference = Math.abs(one - other);
    const reach = Math.min(model.mirror, model.mirrorShare * Math.min(one, other));
    return difference <= reach
      ? []
      : [
          remark(
            'mirror-difference',
            says`${left.panel.name} and ${right.panel.name} differ by ${um(difference)}${nextFact}sides painted alike do by under ${um(reach)} as a rule`,
            difference,
          ),
        ];
  });
  return [...[...sides].map((one) => sideNote(one, model)), ...pairs];
}

const sideNote = (
  { panels, centre, apart: { figure }, shuts }: PaintedTogether,
  { mirror }: FilmModel['conditions'],
): Remark =>
  remark(
    'side-painted',
    says`${panelNames(panels).join(', ')} read ${um(figure)} over the panels that face them${nextFact}sides painted alike do by under ${um(mirror)} as a rule${centreText(centre)}: they may have been painted again together, and count as repaint till it is settled${shuts === null ? '' : shutsText(shuts, figure)}`,
    figure,
  );

const centreText = (centre: readonly Panel[]): string =>
  centre.length === 0
    ? ''
    : `, and ${panelNames(centre).join(', ')} ${centre.length === 1 ? 'reads' : 'read'} rather as they do`;

/** Apart as the faces are, they leave no doubt to speak of. */
const shutsText = (shuts: Micrometres, faces: Micrometres): Sentence =>
  2 * Math.abs(shuts) <= faces
    ? says`${nextFact}the door shuts of both sides read alike (${um(Math.abs(shuts))} apart): the film on the faces came later`
    : says`${nextFact}the door shuts read ${um(-shuts)} the other way: they show neither`;
