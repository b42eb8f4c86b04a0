/** Reasons that let nothing at all come off a panel, whatever its film. */
import { micrometres } from '../../base/units.ts';
import { daysAgo, needsUltrasound, readByLayers } from '../condition/condition.ts';
import type { FilmModel, PanelFacts } from '../film-model.ts';
import type { Panel } from '../template/template.ts';
import { coloursAt, coloursElsewhere, isColourNormal, spotsNamed } from './colour-at-spot.ts';
import type { LimitCode, UnsaidLimit } from './limit.ts';

const ZERO = micrometres(0);

export function outrightLimits(
  facts: PanelFacts,
  state: {
    readonly points: number;
    readonly isFactoryFilm: boolean;
    /** The panel where nothing was read of it. */
    readonly unread: Panel | null;
    /** Whether its clear was read by itself all the same. */
    readonly isReadByLayers?: boolean;
  },
  { freshPaintDays, reading }: Pick<FilmModel, 'freshPaintDays' | 'reading'>,
): readonly UnsaidLimit[] {
  const limits: UnsaidLimit[] = [];
  const nothing = (code: LimitCode, text: string): void => {
    limits.push({ code, value: ZERO, said: () => text });
  };
  if (state.unread !== null) nothing('no-data', whyUnread(state.unread, state));
  const hasBadColour = coloursAt(facts).length > 0 && !isColourNormal(facts.finish);
  if (hasBadColour) nothing('colour-at-spot', colourText(facts, state));
  const elsewhere = hasBadColour ? [] : coloursElsewhere(facts, state.isFactoryFilm);
  if (elsewhere.length > 0) nothing('colour-at-spot', elsewhereText(elsewhere));
  if (facts.covered)
    nothing('covered', 'covered by film, wrap or coating: not paint to be polished');
  if (facts.clearCoatFailure) nothing('clear-coat-failure', CLEAR_COAT_FAILED);
  if (facts.finish === 'matte') nothing('finish', 'a matte finish is never polished');
  if (facts.paintedDaysAgo !== null && facts.paintedDaysAgo < freshPaintDays) {
    nothing('fresh-paint', `painted ${daysAgo(facts.paintedDaysAgo)}, under ${freshPaintDays}`);
  }
  if (state.unread === null && !state.isFactoryFilm && !facts.covered && !hasBadColour) {
    nothing('test-spot', whyTestSpot(facts));
  }
  if (state.unread === null && state.points === 1) {
    nothing(
      'readings',
      `one point is no basis for machine work: read at least ${reading.leastPoints}, best ${reading.bestPoints}`,
    );
  }
  return limits;
}

export const CLEAR_COAT_FAILED = 'the clear coat has failed: refinish';

function colourText(
  facts: PanelFacts,
  { unread, isFactoryFilm }: { readonly unread: Panel | null; readonly isFactoryFilm: boolean },
): string {
  const spots = spotsNamed(coloursAt(facts));
  return unread !== null || isFactoryFilm
    ? `colour came on the pad at ${spots}: it is through the clear there, or the finish is not what was said`
    : `its ${spots} left colour on the pad: leave it alone`;
}

const elsewhereText = (elsewhere: readonly string[]): string =>
  `colour came on the pad at ${elsewhere.join(', ')}, and this is the same paint: not until the finish is settled, its own clear is read, or a test spot of its own leaves no colour`;

/** On a car whose paint has no clear, colour from repaint may be its base coat all the same. */
function whyTestSpot(facts: PanelFacts): string {
  const spots = coloursAt(facts);
  if (spots.length > 0) {
    return `its ${spotsNamed(spots)} left colour, which on repaint may be a base coat under clear: counts only once the job states the finish of this panel itself`;
  }
  return facts.clear?.of === 'panel'
    ? 'a clear that is read or stated does not count on repaint, whose coats nobody knows: a test spot comes first'
    : 'the total says nothing of refinish clear, a test spot comes first';
}

function whyUnread(
  panel: Panel,
  { isReadByLayers = false }: { readonly isReadByLayers?: boolean },
): string {
  if (isReadByLayers && needsUltrasound(panel)) return readByLayers(panel);
  return needsUltrasound(panel)
    ? `a gauge for metal reads no film on ${panel.substrate}`
    : 'nothing is known of it until it is read';
}
