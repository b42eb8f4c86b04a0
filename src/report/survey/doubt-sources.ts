/** What a figure, or its distance from a line, is uncertain by: each source in words. */
import { shown } from '../../base/rounding.ts';
import { type Uncertain, uncertaintyBudget } from '../../base/uncertainty.ts';

const SOURCES: Readonly<Record<string, string>> = {
  film: 'film varies over the panel',
  repeatability: 'gauge set down again',
  resolution: 'step of the display',
  curvature: 'curved points',
  calibration: 'gauge’s own error, shared by all points',
  operators: 'who reads: two operators differ',
  baseline: 'the baseline',
  cars: 'what factories paint, which differs from car to car',
  zinc: 'how thick the zinc is, which differs from car to car',
  spread: 'the spread, known from few points',
  line: 'the line, drawn from the spread',
  record: 'what is on record or stated as taken',
  'other-records': 'what is on record or stated as taken from the other panels',
};

export const sourceWords = (source: string): string => SOURCES[source] ?? source;

/** `film varies over the panel 80 %, step of the display 20 %`, by size; sources that make nothing are left out. */
export const doubtShares = (of: Uncertain<'µm'>): string =>
  uncertaintyBudget(of)
    .filter(({ share }) => share >= LEAST_SHARE)
    .map(({ source, share }) => `${sourceWords(source)} ${shown(100 * share, 0)} %`)
    .join(', ');

const LEAST_SHARE = 0.005;

/** What makes most of it, as the end of a sentence; of how many points it is where film varies too much for so few. */
export const mostOfDoubt = (of: Uncertain<'µm'>, points?: number): string =>
  uncertaintyBudget(of)
    .slice(0, 1)
    .map(({ source }) => (source === 'film' ? varyingFilm(points) : sourceWords(source)))
    .join('');

const varyingFilm = (points: number | undefined): string =>
  points === undefined
    ? 'film that varies over the panel'
    : `film that varies so much over its ${points} points`;
