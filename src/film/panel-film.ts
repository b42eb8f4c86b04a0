import type { Micrometres } from '../base/units.ts';
import type { Spread } from './spread.ts';

/** The film of a panel as its points tell it, its spread moderated by the other panels. */
export type PanelFilm = {
  readonly mean: Micrometres;
  readonly smallest: Micrometres;
  readonly count: number;
  readonly spread: Spread;
  readonly calibration: Micrometres;
  /** Standard uncertainty by whoever read it; absent where operators were not seen to differ. */
  readonly operators?: Micrometres | undefined;
};
