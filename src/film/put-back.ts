/**
 * What earlier work took, put back: a panel is compared with the others for the film that it was painted with, so that
 * what was polished off them makes no other panel thick. It is all that anybody knows of: what is stated, and what is
 * on record besides, each with its SD. What is left on the panel, and what may go, is told from what it reads now.
 */
import { type Component, exactly, type Uncertain, uncertain } from '../base/uncertainty.ts';
import { type Micrometres, micrometres } from '../base/units.ts';
import type { FilmModel, PanelFacts, RecordedRemoval } from './film-model.ts';
import { calibrationUncertainty } from './gauge/calibration.ts';

type Facts = Pick<PanelFacts, 'taken' | 'takenSd' | 'recorded' | 'paintedDaysAgo'>;
type Gone = Pick<RecordedRemoval, 'mean' | 'sd'>;

/**
 * What its readings lack of the film that it was painted with. A patch that lost film lies between them; what went
 * before the panel was painted again is no part of its paint.
 */
export function goneAllOver({ taken, takenSd, recorded, paintedDaysAgo }: Facts): Gone {
  if (paintedDaysAgo !== null) return NOTHING;
  const onRecord = recorded?.allOver ?? recorded ?? NOTHING;
  return {
    mean: micrometres((taken ?? 0) + onRecord.mean),
    sd: micrometres(Math.hypot(takenSd, onRecord.sd)),
  };
}

const NOTHING: Gone = { mean: micrometres(0), sd: micrometres(0) };

export const putBack = (film: Micrometres, facts: Facts): Micrometres =>
  micrometres(film + goneAllOver(facts).mean);

/** To be added to a figure of the panel that reads `film`: the gauge errs on what is put back as on what is there. */
export function goneUncertain(
  film: Micrometres,
  facts: Facts,
  measurement: FilmModel['measurement'],
): Uncertain<'µm'> {
  const { mean, sd } = goneAllOver(facts);
  if (mean === 0 && sd === 0) return exactly(mean);
  const before = calibrationUncertainty(putBack(film, facts), measurement);
  const calibration = known(before - calibrationUncertainty(film, measurement));
  return uncertain(mean, sd === 0 ? { calibration } : { record: known(sd), calibration });
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

/** What is known to have been taken is uncertain by, of the panel's own and of those it is compared with. */
export const isOfRecord = (source: string): boolean =>
  source === 'record' || source === 'other-records';
