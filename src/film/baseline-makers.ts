/** The panels of a car that may speak of its usual film: what each was painted with, brought to one kind of metal. */
import { type Micrometres, micrometres } from '../base/units.ts';
import { isStatedRepaint } from './condition/condition.ts';
import type { FilmModel, PanelFacts } from './film-model.ts';
import { type GatheredFilm, type GatheredPanel, isRead } from './gathered-panel.ts';
import { lackingClear, type PaintedOver } from './painted-over.ts';
import { putBack } from './put-back.ts';
import type { Panel } from './template/template.ts';
import { zincOf } from './zinc.ts';

export type SoundFilm = {
  readonly panel: Panel;
  /** Its median. */
  readonly film: Micrometres;
  readonly mean: Micrometres;
  /** What its clear is known to lack of a factory's. */
  readonly lacking: number;
  readonly facts: PanelFacts;
  readonly galvanised: boolean;
  readonly isWitness: boolean;
};

export function soundFilm(panel: GatheredPanel, model: FilmModel): readonly SoundFilm[] {
  if (!isOfFactory(panel)) return [];
  const { refinished, filler } = model.conditions;
  const { facts, points, otherPoints, statistics } = panel;
  const film = putBack(statistics.median, facts);
  if (film > refinished) return [];
  const isWitness =
    mayWitness(panel) &&
    panel.overRange.length === 0 &&
    [...points, ...otherPoints].every(({ thickness }) => putBack(thickness, facts) <= filler);
  const mean = putBack(statistics.mean, facts);
  const lacking = lackingClear(panel, model);
  const { galvanised } = facts;
  return [{ panel: panel.panel, film, mean, lacking, facts, galvanised, isWitness }];
}

/** Under film or wrap the gauge reads that too; of what was painted again the factory's film is no part. */
const isOfFactory = (panel: GatheredPanel): panel is GatheredFilm =>
  isRead(panel) && !panel.facts.covered && !isStatedRepaint(panel.facts);

export const mayWitness = (panel: GatheredPanel): boolean =>
  isOfFactory(panel) && panel.points.length >= LEAST_POINTS;

/** Of one point nobody knows whether it was set down well, or on what. */
const LEAST_POINTS = 2;

export const areMostGalvanised = (panels: readonly SoundFilm[]): boolean =>
  2 * panels.filter(({ galvanised }) => galvanised).length > panels.length;

/** A panel brought to the kind that most are of. */
export type AlikeFilm = Pick<SoundFilm, 'panel' | 'film' | 'mean'> & {
  readonly read: Micrometres;
  /** Its film with what its clear is known to lack put back. */
  readonly painted: Micrometres;
};

export const broughtAlike = (
  makers: readonly SoundFilm[],
  mostGalvanised: boolean,
  { layers }: FilmModel,
): readonly AlikeFilm[] =>
  makers.map(({ panel, film, mean, lacking, galvanised }) => {
    const toMost = zincOf(layers).mean * (Number(mostGalvanised) - Number(galvanised));
    return {
      panel,
      read: film,
      film: micrometres(film + toMost),
      mean: micrometres(mean + toMost),
      painted: micrometres(film + lacking + toMost),
    };
  });

export function thinnestOf(alike: readonly AlikeFilm[]): PaintedOver['shownBy'] {
  const { panel, read, painted } = alike.reduce((least, one) =>
    one.painted < least.painted ? one : least,
  );
  return { panel, read, film: painted };
}
