/** A panel as it is held against its lines, and what it is held against: what the tests of `condition-tests.ts` are given. */
import type { Uncertain } from '../../base/uncertainty.ts';
import type { Micrometres } from '../../base/units.ts';
import type { GaugeScatter } from '../help/panel-uncertainty.ts';
import type { PanelFilm } from '../panel-film.ts';
import type { PanelPoint } from '../panel-points.ts';
import type { Spread } from '../spread.ts';
import type { Panel } from '../template/template.ts';
import type { ThinnestCredible } from '../thinnest-credible.ts';
import type { PaintedTogether } from './line-comparison.ts';
import type { ZoneCut } from './zones.ts';

/** The points of a panel, and what is known as taken: put back where it is asked what the panel was painted with. */
export type JudgedPoints = {
  readonly points: readonly PanelPoint[];
  /** Those off the face, which tell of filler alone. */
  readonly otherPoints: readonly PanelPoint[];
  readonly gone: Uncertain<'µm'>;
};

/** A panel as it was judged. */
export type JudgedPanel = JudgedPoints & {
  readonly film: PanelFilm;
  readonly uncertainty: Uncertain<'µm'>;
  /** What tells whether it is repaint: all of it, but for points on filler where others are there. */
  readonly besideFiller: BesideFiller;
};

export type BesideFiller = Pick<JudgedPanel, 'points' | 'uncertainty'> & {
  readonly median: Micrometres;
};

/** A panel, where its points might be cut in two, and what its least film is. */
export type JudgedFilm = Pick<JudgedPanel, 'points' | 'film' | 'uncertainty'> & {
  /** Null where they may not. */
  readonly cut: ZoneCut | null;
  /** Null where no bound was drawn. */
  readonly thinnest: ThinnestCredible | null;
  readonly totalFloor: Micrometres;
};

/** What it was judged against. */
export type JudgedAgainst = {
  /** Null where no other panel speaks of the car. */
  readonly baseline: Uncertain<'µm'> | null;
  /** What it is held to besides; absent where that is nothing. */
  readonly beside?: HeldBeside | null;
  /** What the factory painted if the usual film of the car is repaint, and the chance of that; null where it is not asked. */
  readonly ifPaintedOver: IfPaintedOver | null;
  /** The panels of its side that may have been painted again with it; absent where none were. */
  readonly together?: PaintedTogether | undefined;
  readonly scatter: GaugeScatter;
  /** Of film over the other panels, as zones are told by it. */
  readonly zoneSpread: Spread;
};

/** The usual film of the car as something else has it, and the chance that this counts. */
export type HeldBeside = {
  readonly film: Uncertain<'µm'>;
  /** By which film is cut back, where that is more: zinc makes no thick film a factory's, but thin film lack more. */
  readonly overZinc?: Uncertain<'µm'>;
  readonly chance: number;
};

export type IfPaintedOver = {
  readonly film: Uncertain<'µm'>;
  readonly chance: number;
  /** The panel that shows it. */
  readonly shownBy: { readonly panel: Panel };
};

/** What every panel of a car is judged against alike. */
export type JudgedAlike = Pick<JudgedAgainst, 'scatter' | 'zoneSpread'>;
