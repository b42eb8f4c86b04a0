/**
 * What a test spot on repaint would allow, and how it is made and judged: no more than on the sound panel of the car
 * that allows least, so nothing where none is sound.
 */
import { remark } from '../../base/remark.ts';
import { nextFact, says, um } from '../../base/sentence.ts';
import { micrometres } from '../../base/units.ts';
import { HELD_BACK } from '../condition/other-side.ts';
import type { FilmModel } from '../film-model.ts';
import type { SurveyAdvice } from '../help/survey-advice.ts';
import type { PanelSurvey } from '../survey.ts';
import { bounded } from './allowance.ts';
import { type AllowanceGrounds, allowanceAfterSpot, isSound } from './allowance-at.ts';
import { spotsNamed } from './colour-at-spot.ts';
import type { Limit } from './limit.ts';

/** The panels, those that wait for a test spot of their own with what it would allow. */
export function withAfterTestSpot(
  panels: readonly PanelSurvey[],
  { measuring }: Pick<FilmModel, 'measuring'>,
): readonly PanelSurvey[] {
  const least = allowsLeast(panels.filter(isSound));
  const told = <Part extends PanelSurvey>(part: Part): Part =>
    waitsForSpot(part)
      ? {
          ...part,
          ...(freesNothing(least) ? withoutSpot(part, least) : notBefore(part, least)),
          evidence: [...part.evidence, ...capOf(least)],
          advice: part.advice.map((one) =>
            one.code === 'test-spot' ? spotOnRepaint(least, measuring) : one,
          ),
        }
      : part;
  return overParts(panels, told);
}

function allowsLeast(sound: readonly PanelSurvey[]): PanelSurvey | null {
  const [first, ...others] = sound;
  return first === undefined
    ? null
    : others.reduce((least, one) => (one.budget < least.budget ? one : least), first);
}

/** Whether even a good spot would let nothing go, as far as the other panels are settled. */
const freesNothing = (least: PanelSurvey | null): boolean =>
  least === null || (least.budget === 0 && !isUnsettled(least));

/** Its limits, where no spot is to be asked for: what holds it is the other panels. */
function withoutSpot(
  { limits }: PanelSurvey,
  least: PanelSurvey | null,
): Pick<PanelSurvey, 'limits' | 'budget' | 'boundBy'> {
  const text =
    least === null
      ? 'repaint gets no more than the original panels, of which none is there to go by: a test spot frees nothing'
      : `repaint gets no more than ${least.panel.name}, the original panel that allows least, and nothing may go there: a test spot frees nothing`;
  const held: Limit = { ...remark('sound-panels', text, 0), code: 'sound-panels', value: ZERO };
  return bounded(limits.map((limit) => (limit.code === 'test-spot' ? held : limit)));
}

/** What a spot waits for, where no more than nothing may go yet. */
const notBefore = (
  { limits }: PanelSurvey,
  least: PanelSurvey | null,
): Partial<Pick<PanelSurvey, 'limits' | 'budget' | 'boundBy'>> =>
  least === null || least.budget > 0
    ? {}
    : withText(
        limits,
        `repaint gets no more than ${least.panel.name}, where it is to be settled first what that is: a test spot comes after`,
      );

const withText = (limits: readonly Limit[], text: string) =>
  bounded(limits.map((one) => (one.code === 'test-spot' ? { ...one, text } : one)));

const ZERO = micrometres(0);

const capOf = (least: PanelSurvey | null) =>
  least === null
    ? []
    : [
        remark(
          'sound-panel-cap',
          says`after a test spot on it no more than on ${least.panel.name}, the original panel that allows least: ${um(least.budget, 2)}`,
          least.budget,
        ),
      ];

/** What is asked of the patch, and what it yields. */
function spotOnRepaint(
  least: PanelSurvey | null,
  { testSpotTime }: FilmModel['measuring'],
): SurveyAdvice {
  if (least === null) {
    return remark(
      'beyond-help',
      'no original panel is there to go by: leave it alone, a test spot frees nothing',
    );
  }
  if (least.budget === 0) return noMoreThanNothing(least, ', then make a test spot here');
  const cap = um(least.budget, 2);
  return {
    ...remark(
      'test-spot',
      says`test spot of its own: hand-sized patch off any filler or film (look for its edge), mildest step first${nextFact}colour on a white pad: leave it alone${nextFact}no colour: it has clear, ${cap} at most may go, patch included (plan --spots), as on the original panel that allows least, at a risk not known: no clear read counts on repaint (coats unknown), only such a spot`,
    ),
    time: testSpotTime,
  };
}

/** While it is not settled what the sound panel is, more may go from it one day, and from repaint with it. */
function noMoreThanNothing(least: PanelSurvey, then: string): SurveyAdvice {
  const { name } = least.panel;
  return isUnsettled(least)
    ? remark(
        'sound-panel-first',
        `nothing may go from ${name} till it is settled what it is, and repaint gets no more: settle that first${then}`,
      )
    : remark(
        'beyond-help',
        `nothing may go from ${name}, and repaint gets no more: leave it alone, a test spot frees nothing`,
      );
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
  const least = allowsLeast(panels.filter(isSound));
  const allowed = <Part extends PanelSurvey>(part: Part): Part => {
    const logSd = logSdOf(part);
    if (least === null || !waitsForSpot(part)) return part;
    if (logSd === null) return { ...part, ...whereIdle(part, idleAt(part)) };
    const { topcoat, limits, budget, boundBy } = allowanceAfterSpot(part, panels, logSd, grounds);
    return {
      ...part,
      topcoat,
      limits,
      budget,
      boundBy,
      evidence: part.evidence.filter(({ code }) => code !== 'sound-panel-cap'),
      advice: [
        ...(least.budget === 0 ? [noMoreThanNothing(least, '')] : []),
        ...part.advice.filter(({ code }) => !OF_A_SPOT.includes(code)),
      ],
    };
  };
  return overParts(panels, allowed);
}

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

const OF_A_SPOT: readonly string[] = ['test-spot', 'sound-panel-first', 'beyond-help'];

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
