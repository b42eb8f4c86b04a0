/**
 * What a test spot on repaint would allow, and how it is made and judged: no more than on the sound panel of the car
 * that allows least, so nothing where none is sound.
 */
import { remark, spoken } from '../../base/remark.ts';
import { LEAST_TOLD } from '../../base/rounding.ts';
import { nextFact, type Sentence, says, um } from '../../base/sentence.ts';
import { micrometres } from '../../base/units.ts';
import { HELD_BACK } from '../condition/other-side.ts';
import { isHeldByOwnLine, sidePaintedWith, unlessRepaint } from '../condition/painted-side.ts';
import type { FilmModel } from '../film-model.ts';
import type { SurveyAdvice } from '../help/survey-advice.ts';
import type { PanelSurvey } from '../survey.ts';
import { type Allowance, bounded } from './allowance.ts';
import { type AllowanceGrounds, allowanceAfterSpot, carCap } from './allowance-at.ts';
import { spotsNamed } from './colour-at-spot.ts';
import type { Limit } from './limit.ts';
import { isCutBack } from './sound-cap.ts';

/** The panels, those that wait for a test spot of their own with what it would allow. */
export function withAfterTestSpot(
  panels: readonly PanelSurvey[],
  grounds: AllowanceGrounds,
): readonly PanelSurvey[] {
  const least = carCap(panels, grounds);
  const { measuring } = grounds.model;
  const told = <Part extends PanelSurvey>(part: Part): Part =>
    waitsForSpot(part)
      ? {
          ...part,
          ...(freesNothing(part, least) ? withoutSpot(part, least) : notBefore(part, least)),
          evidence: [...part.evidence, ...capOf(least)],
          advice: part.advice.map((one) =>
            one.code === 'test-spot' ? spotOnRepaint(part, least, measuring) : one,
          ),
        }
      : part;
  return overParts(withSpotsThatSettle(panels, grounds), told);
}

/** Of film that may be repaint by its own figure, where its own spot would free something. */
function withSpotsThatSettle(
  panels: readonly PanelSurvey[],
  grounds: AllowanceGrounds,
): readonly PanelSurvey[] {
  if (!panels.some(isHeldByOwnLine)) return panels;
  const least = carCap(
    panels.filter((one) => !isHeldByOwnLine(one)),
    grounds,
  );
  return panels.map((panel) =>
    least === null || !isHeldByOwnLine(panel) || isSpent(panel, least)
      ? panel
      : { ...panel, advice: panel.advice.map(orBySpot) },
  );
}

const orBySpot = (one: SurveyAdvice): SurveyAdvice =>
  one.code === 'settle'
    ? { ...one, ...spoken(`a test spot of its own without colour; or ${one.text}`) }
    : one;

/** Whether even a good spot would let nothing go, as far as the other panels are settled. */
const freesNothing = (part: PanelSurvey, least: PanelSurvey | null): boolean =>
  least === null || (isSpent(part, least) && !isUnsettled(least));

/** Gone on record, an earlier spot among it: it counts in what a spot would free, as `capLimit` has it. */
const goneOf = ({ facts }: PanelSurvey): number => facts.recorded?.mean ?? 0;

const isSpent = (part: PanelSurvey, least: PanelSurvey): boolean =>
  least.budget - goneOf(part) < LEAST_TOLD;

/** `nothing may go from roof`, or that it is gone already. */
const whySpent = (part: PanelSurvey, { budget, panel }: PanelSurvey): Sentence =>
  budget < LEAST_TOLD
    ? says`nothing may go from ${panel.name}, and repaint gets no more`
    : says`repaint gets no more than the ${um(budget, 2)} of ${panel.name}, and ${um(goneOf(part), 2)} is gone already`;

/** Its limits, where no spot is to be asked for: what holds it is the other panels. */
function withoutSpot(
  part: PanelSurvey,
  least: PanelSurvey | null,
): Pick<PanelSurvey, 'limits' | 'budget' | 'boundBy'> {
  // What is gone is of this panel alone, so that its own limit stands.
  if (least !== null && least.budget > 0) return withText(part.limits, heldTo(part, least));
  const text = least === null ? NONE_TO_GO_BY : heldTo(part, least);
  const held: Limit = { ...remark('sound-panels', text, 0), code: 'sound-panels', value: ZERO };
  return bounded(part.limits.map((limit) => (limit.code === 'test-spot' ? held : limit)));
}

const NONE_TO_GO_BY =
  'repaint gets no more than the original panels, of which none is there to go by: a test spot frees nothing';

const heldTo = (part: PanelSurvey, least: PanelSurvey): string | Sentence =>
  least.budget === 0
    ? `repaint gets no more than ${least.panel.name}, ${ofMeasure(least)}, and nothing may go there: a test spot frees nothing`
    : says`${whySpent(part, least)}: a test spot frees nothing`;

/** What a spot waits for, where no more than nothing may go yet. */
const notBefore = (
  part: PanelSurvey,
  least: PanelSurvey | null,
): Partial<Pick<PanelSurvey, 'limits' | 'budget' | 'boundBy'>> =>
  least === null || !isSpent(part, least)
    ? {}
    : withText(
        part.limits,
        `repaint gets no more than ${least.panel.name}, where it is to be settled first what that is: a test spot comes after`,
      );

const withText = (limits: readonly Limit[], said: string | Sentence) =>
  bounded(limits.map((one) => (one.code === 'test-spot' ? { ...one, ...spoken(said) } : one)));

const ZERO = micrometres(0);

const ofMeasure = (least: PanelSurvey): string =>
  isCutBack(least) ? 'which may be original' : 'the original panel that allows least';

const capOf = (least: PanelSurvey | null) =>
  least === null
    ? []
    : [
        remark(
          'sound-panel-cap',
          says`after a test spot on it no more than on ${least.panel.name}, ${ofMeasure(least)}: ${um(least.budget, 2)}`,
          least.budget,
        ),
      ];

/** What is asked of the patch, and what it yields. */
function spotOnRepaint(
  part: PanelSurvey,
  least: PanelSurvey | null,
  { testSpotTime }: FilmModel['measuring'],
): SurveyAdvice {
  if (least === null) {
    return remark(
      'beyond-help',
      'no original panel is there to go by: leave it alone, a test spot frees nothing',
    );
  }
  if (isSpent(part, least)) return noMoreThanNothing(part, least, ', then make a test spot here');
  const gone = goneOf(part);
  const cap = um(least.budget - gone, 2);
  const counted = gone > 0 ? says`, ${um(gone, 2)} of it gone already` : '';
  return {
    ...remark(
      'test-spot',
      says`test spot of its own: hand-sized patch off any filler or film (look for its edge), mildest step first${nextFact}colour on a white pad: leave it alone${nextFact}no colour: it has clear, ${cap} at most may go, patch included (plan --spots), as on the original panel that allows least${counted}, at a risk not known: no clear read counts on repaint (coats unknown), only such a spot`,
    ),
    time: testSpotTime,
  };
}

/** While it is not settled what the sound panel is, more may go from it one day, and from repaint with it. */
function noMoreThanNothing(part: PanelSurvey, least: PanelSurvey, then: string): SurveyAdvice {
  const { name } = least.panel;
  const why = whySpent(part, least);
  if (!isUnsettled(least)) {
    return remark('beyond-help', says`${why}: leave it alone, a test spot frees nothing`);
  }
  const text =
    least.budget < LEAST_TOLD
      ? `nothing may go from ${name} till it is settled what it is, and repaint gets no more: settle that first${then}`
      : says`${why}: settle first what ${name} is${then}`;
  return { ...remark('sound-panel-first', text), after: least.panel };
}

const isUnsettled = ({ otherSide }: PanelSurvey): boolean =>
  otherSide !== null &&
  [otherSide.budget, otherSide.ifWordHolds].some(
    (budget) => budget !== null && budget >= HELD_BACK,
  );

/**
 * The same panels once test spots were made: repaint with one of its own has what that allows. `logSdOf` foretells a
 * removal there; null of a part without a spot that counts. `idleAt` names those that do not.
 */
export function withOwnSpots(
  panels: readonly PanelSurvey[],
  logSdOf: (part: PanelSurvey) => number | null,
  grounds: AllowanceGrounds,
  idleAt: (part: PanelSurvey) => IdleSpots = () => ({ unsaid: [], risen: [] }),
): readonly PanelSurvey[] {
  // Once that is settled, they are a measure of what may go from repaint.
  const settled = panels.map((panel) => {
    const logSd = isHeldByOwnLine(panel) ? logSdOf(panel) : null;
    if (logSd === null) return panel;
    const freed = allowanceAfterSpot(panel, panels, logSd, grounds);
    return freed === panel ? panel : settledBySpot(panel, freed);
  });
  const least = carCap(settled, grounds);
  const allowed = <Part extends PanelSurvey>(part: Part): Part => {
    const logSd = logSdOf(part);
    const isOfSide = sidePaintedWith(part) !== undefined;
    if (least === null || !(isOfSide || waitsForSpot(part))) return part;
    if (logSd === null) return { ...part, ...whereIdle(part, idleAt(part)) };
    const { topcoat, limits, budget, boundBy } = allowanceAfterSpot(part, settled, logSd, grounds);
    return {
      ...(isOfSide ? { ...unlessRepaint(part), otherSide: null } : part),
      topcoat,
      limits,
      budget,
      boundBy,
      evidence: part.evidence.filter(({ code }) => code !== 'sound-panel-cap'),
      advice: [
        ...(least.budget === 0 ? [noMoreThanNothing(part, least, '')] : []),
        ...part.advice.filter(({ code }) => !OF_A_SPOT.includes(code)),
      ],
    };
  };
  return overParts(settled, allowed);
}

const settledBySpot = (
  part: PanelSurvey,
  { topcoat, limits, budget, boundBy }: Allowance,
): PanelSurvey => ({
  ...unlessRepaint(part),
  ...{ topcoat, limits, budget, boundBy, otherSide: null },
  advice: part.advice.filter(({ code }) => !OF_A_SPOT.includes(code)),
});

/** Test spots of a panel that free nothing of it, by their names. */
export type IdleSpots = {
  /** Nobody said whether colour came on the pad. */
  readonly unsaid: readonly string[];
  /** All that was read of them rose. */
  readonly risen: readonly string[];
};

type Retold = Partial<Pick<PanelSurvey, 'limits' | 'budget' | 'boundBy' | 'advice'>>;

/** Silence about the pad is no leave: only colour shows the end of a clear that nobody can read. Nor is film that rose. */
function whereIdle(part: PanelSurvey, { unsaid, risen }: IdleSpots): Retold {
  if (risen.length > 0) {
    const spots = spotsNamed(risen);
    return retold(
      part,
      `all marks of ${spots} read more after than before: it frees nothing`,
      `read ${spots} again, gauge checked, panel wiped and cool, or make another test spot`,
    );
  }
  if (unsaid.length === 0) return {};
  const spots = spotsNamed(unsaid);
  return retold(
    part,
    `whether colour came on the pad at ${spots} is not said: it frees nothing`,
    `say whether colour came on the pad at ${spots}, in its column colour_on_pad: yes, leave it alone; no, it has clear`,
  );
}

const retold = ({ limits, advice }: PanelSurvey, why: string, what: string): Retold => ({
  ...withText(limits, why),
  advice: advice.map((one) => (one.code === 'test-spot' ? remark('test-spot', what) : one)),
});

const OF_A_SPOT: readonly string[] = ['settle', 'test-spot', 'sound-panel-first', 'beyond-help'];

const waitsForSpot = ({ boundBy, zones }: PanelSurvey): boolean =>
  boundBy.code === 'test-spot' && zones.length === 0;

/** Of a panel in two zones its zones; the panel itself shows what the zone that allows least allows. */
const overParts = (
  panels: readonly PanelSurvey[],
  to: <Part extends PanelSurvey>(part: Part) => Part,
): readonly PanelSurvey[] =>
  panels.map((panel) =>
    panel.zones.length === 0 ? to(panel) : { ...panel, zones: panel.zones.map(to) },
  );
