/**
 * What earlier work on record took, put back: a panel is compared with the others for the film that it was painted
 * with, so that what was polished off them makes no other panel thick. What is left on it, and what may go, is told
 * from what it reads now.
 */
import { type Component, type Uncertain, uncertain } from '../base/uncertainty.ts';
import { type Micrometres, micrometres } from '../base/units.ts';
import type { PanelFacts, RecordedRemoval } from './film-model.ts';

type Facts = Pick<PanelFacts, 'recorded'>;

/** What its readings lack by the record; a patch that lost film lies between them. */
export const goneAllOver = ({ recorded }: Facts): Pick<RecordedRemoval, 'mean' | 'sd'> =>
  recorded?.allOver ?? recorded ?? NOTHING;

const NOTHING = { mean: micrometres(0), sd: micrometres(0) };

export const putBack = (film: Micrometres, facts: Facts): Micrometres =>
  micrometres(film + goneAllOver(facts).mean);

/** To be added to a figure of the panel. */
export function goneUncertain(facts: Facts): Uncertain<'µm'> {
  const { mean, sd } = goneAllOver(facts);
  return uncertain(mean, sd === 0 ? {} : { record: known(sd) });
}

/** Of the middle of several panels, as if their records all erred the same way. */
export function recordsOfMiddle(panels: readonly Facts[]): Readonly<Record<string, Component>> {
  const sd = panels.reduce((sum, facts) => sum + goneAllOver(facts).sd, 0) / panels.length;
  return sd === 0 ? {} : { 'other-records': known(sd) };
}

const known = (contribution: number): Component => ({
  contribution,
  dof: Number.POSITIVE_INFINITY,
});

/** What a record is uncertain by, of the panel's own and of those it is compared with. */
export const isOfRecord = (source: string): boolean =>
  source === 'record' || source === 'other-records';
