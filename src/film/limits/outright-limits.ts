/** Reasons that let nothing at all come off a panel, whatever its film. */
import { micrometres } from '../../base/units.ts';
import { daysAgo, needsUltrasound } from '../condition/condition.ts';
import type { FilmModel, PanelFacts } from '../film-model.ts';
import type { Panel } from '../template/template.ts';
import type { LimitCode, UnsaidLimit } from './limit.ts';

const ZERO = micrometres(0);

export function outrightLimits(
  facts: PanelFacts,
  state: {
    readonly points: number;
    readonly isFactoryFilm: boolean;
    /** The panel where nothing was read of it. */
    readonly unread: Panel | null;
  },
  { freshPaintDays, reading }: Pick<FilmModel, 'freshPaintDays' | 'reading'>,
): readonly UnsaidLimit[] {
  const limits: UnsaidLimit[] = [];
  const nothing = (code: LimitCode, text: string): void => {
    limits.push({ code, value: ZERO, said: () => text });
  };
  if (state.unread !== null) nothing('no-data', whyUnread(state.unread));
  if (facts.covered)
    nothing('covered', 'covered by film, wrap or coating: not paint to be polished');
  if (facts.finish === 'matte') nothing('finish', 'a matte finish is never polished');
  if (facts.paintedDaysAgo !== null && facts.paintedDaysAgo < freshPaintDays) {
    nothing('fresh-paint', `painted ${daysAgo(facts.paintedDaysAgo)}, under ${freshPaintDays}`);
  }
  if (state.unread === null && !state.isFactoryFilm && !facts.covered) {
    nothing(
      'test-spot',
      facts.clear?.of === 'panel'
        ? 'a clear that is read or stated does not count on repaint, whose coats nobody knows: a test spot comes first'
        : 'the total says nothing of refinish clear, a test spot comes first',
    );
  }
  if (state.unread === null && state.points === 1) {
    nothing(
      'readings',
      `one point is no basis for machine work: read at least ${reading.leastPoints}, best ${reading.bestPoints}`,
    );
  }
  return limits;
}

const whyUnread = (panel: Panel): string =>
  needsUltrasound(panel)
    ? `a gauge for metal reads no film on ${panel.substrate}`
    : 'nothing is known of it until it is read';
