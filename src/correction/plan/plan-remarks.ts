/** What a panel's plan has to say: why it is as it is, what is local work, what to mind. */
import { counted } from '../../base/counted.ts';
import { type Remark, remark, saying } from '../../base/remark.ts';
import { LEAST_TOLD, shown } from '../../base/rounding.ts';
import { type Sentence, says, um } from '../../base/sentence.ts';
import type { Micrometres } from '../../base/units.ts';
import type { FilmModel } from '../../film/film-model.ts';
import { isRepaintSaidWithoutClear } from '../../film/limits/colour-at-spot.ts';
import { visitNotes } from '../../film/limits/left-after-visit.ts';
import { overrunNotes } from '../../film/overrun-note.ts';
import { placeNotes } from '../../film/place-note.ts';
import type { PanelSurvey } from '../../film/survey.ts';
import { unreadWorkNotes } from '../../film/unread-work-note.ts';
import type { Defect } from '../defects.ts';
import type { CorrectionModel, Machine } from '../removal/catalogue.ts';
import type { Combination } from '../removal/combination.ts';
import { type Step, stepsId } from '../removal/step.ts';
import { type FlatWidth, largestFlat } from './candidate-search.ts';
import { type Choice, mostTaken, type RatedCandidate, type Within } from './choose-steps.ts';
import type { Verdict } from './plan.ts';

/** What might be worked with, and how wide a panel is flat. */
type WorkPlace = {
  readonly machines: readonly Machine[];
  readonly flatWidth: FlatWidth;
} & Pick<Within, 'isHeldByFilm'>;

export function nothingFits(
  { boundBy, budget }: Pick<PanelSurvey, 'boundBy' | 'budget'>,
  best: RatedCandidate | undefined,
  machineWays: number,
  place: WorkPlace,
): Remark {
  if (budget === 0) {
    return remark(`limit-${boundBy.code}`, says`nothing may go: ${saying(boundBy)}`, 0);
  }
  if (machineWays === 0) {
    return remark('no-technique', whyNoTechnique(place));
  }
  if (best !== undefined && !place.isHeldByFilm) return tooMild(budget, best);
  return best === undefined
    ? remark(
        'nothing-fits',
        says`${um(budget, 2)} may go, the mildest steps take more: ${LESS_TAKEN}`,
        budget,
      )
    : remark(
        'not-worth-it',
        says`the ${um(budget, 2)} that may go would clear ${shown(100 * best.correction, 0)} % of the marks: not worth the film`,
        budget,
      );
}

/** What may go would clear the marks; nothing that the shop has takes it. */
const tooMild = (budget: Micrometres, { correction }: RatedCandidate): Remark =>
  remark(
    SHOP_TOO_MILD,
    says`${um(budget, 2)} may go, and what the shop has clears ${shown(100 * correction, 0)} % of the marks at most: ${MORE_CLEARS}`,
    budget,
  );

export const SHOP_TOO_MILD = 'shop-too-mild';
export const MORE_CLEARS = 'a stronger pad, product or machine clears more';

/** What would do where the mildest steps take too much. */
export const LESS_TAKEN = 'a softer pad or a finer product takes less';

const poweredOf = (machines: readonly Machine[]): readonly Machine[] =>
  machines.filter(({ motion }) => motion.kind !== 'hand');

/** By hand is always possible, and seldom worth it: what is asked of is the machines. */
function whyNoTechnique({ machines, flatWidth }: WorkPlace): string {
  const powered = poweredOf(machines);
  if (powered.length === 0) return 'the shop has no machine, and by hand the marks hardly clear';
  const orbital = powered.filter(({ motion }) => motion.kind !== 'rotary');
  if (orbital.length === 0) {
    return 'every machine of the shop is a rotary, which leaves holograms: the last step needs a dual action, and by hand the marks hardly clear';
  }
  const ending = largestFlat(
    flatWidth,
    orbital.map((machine) => ({ machine })),
  );
  return ending === 0
    ? 'no machine of the shop lies flat here and ends without rotary holograms'
    : 'no pad and product of the shop end without haze: the last step needs a softer pad or a finer product';
}

/** What a part was worked within, besides what may go. */
export type ChoiceGrounds = Pick<WorkPlace, 'machines' | 'isHeldByFilm'> & {
  /** The strongest that may be worked on repaint, as it was tried there; anything may be on other paint. */
  readonly tried?: Combination | undefined;
  readonly isShort: boolean;
};

export function choiceReasons(
  verdict: Verdict,
  { budget, boundBy }: PanelSurvey,
  { machines, isHeldByFilm, tried, isShort }: ChoiceGrounds,
): readonly Remark[] {
  if (verdict === 'lighter' && tried !== undefined) {
    const isByDepth = boundBy.code === 'spot-depth';
    const which = isByDepth ? 'that its spot showed free of colour' : 'that may go';
    const then = isByDepth ? 'work that spot deeper, or ' : '';
    return [
      remark(
        'stronger-than-tried',
        says`the aim takes a step stronger than ${tried.id}, the strongest that was tried on this panel, or more than the ${um(budget, 2)} ${which}: ${then}try the next rung on its spot first`,
        budget,
      ),
    ];
  }
  if (verdict === 'lighter' && !isHeldByFilm) {
    return [remark(SHOP_TOO_MILD, ALL_BY_SHOP, budget)];
  }
  if (verdict === 'lighter') {
    return [
      remark(
        'aim-out-of-reach',
        says`the aim takes more than the ${um(budget, 2)} that may go: ${saying(boundBy)}`,
        budget,
      ),
    ];
  }
  if (verdict !== 'hand') return [];
  const isAllOfIt = isShort && !isHeldByFilm;
  return [
    remark('by-hand', whyByHand(machines)),
    ...(isAllOfIt ? [remark(SHOP_TOO_MILD, ALL_BY_HAND, budget)] : []),
  ];
}

const whyByHand = (machines: readonly Machine[]): string =>
  poweredOf(machines).length === 0
    ? 'by hand: the shop has no machine'
    : 'by hand: no pad of a machine that may end a panel lies flat, or the mildest machine step takes too much';

/** How much may go stands in the table: panels that fall short alike are told together. */
const ALL_BY_SHOP = `what the shop has clears no more, though more may go: ${MORE_CLEARS}`;
const ALL_BY_HAND = 'by hand no more clears, though more may go';

/** Says so where a part is worked otherwise than it would be alone, for the sake of fewer set-ups. */
export const asElsewhere = (taken: RatedCandidate, own: RatedCandidate): readonly Remark[] =>
  taken === own
    ? []
    : [
        remark(
          'as-elsewhere',
          `as other panels are worked, for fewer set-ups: ${stepsId(own.steps)} would be as good here`,
        ),
      ];

/** Says so where what was tried on this paint is planned before something milder that was not. */
export const triedFirst = ({ instead }: Pick<Choice, 'instead'>): readonly Remark[] =>
  instead === undefined
    ? []
    : [
        remark(
          'tried-first',
          says`tried on this paint, and takes no more: ${stepsId(instead.steps)} is milder by the ladder and was not tried; it takes ${um(instead.removal.median, 2)}, nine cases of ten up to ${um(mostTaken(instead), 2)}`,
          instead.removal.median,
        ),
      ];

/**
 * A survey foretells a removal as that of a step not tried on this paint: steps that were tried are surer, so that
 * more of them may go. The value is how much more.
 */
export const otherThanSurveyed = (
  { budget: surveyed }: Pick<PanelSurvey, 'budget'>,
  { budget: ofSteps }: Pick<PanelSurvey, 'budget'>,
): readonly Remark[] =>
  Math.abs(ofSteps - surveyed) < LEAST_TOLD
    ? []
    : [
        remark(
          'of-these-steps',
          says`${um(surveyed, 2)} may go by a step not tried on this paint, as the survey says; these steps are foretold ${ofSteps > surveyed ? 'better' : 'worse'}, so ${um(ofSteps, 2)}`,
          ofSteps - surveyed,
        ),
      ];

/** Of a mark that only new paint mends. */
export const DEEPER_THAN_CLEAR = 'deeper-than-clear';

export function defectRemarks(defects: readonly Defect[], survey: DefectGround): readonly Remark[] {
  return defects
    .filter(({ grade }) => grade > 0)
    .flatMap((defect) => {
      const { kind, grade, depth } = defect;
      if (kind.scope === 'local') {
        return [remark('local-defect', `${kind.name} of grade ${grade}: local work or left`)];
      }
      if (kind.scope === 'not-polishing') {
        return [remark('not-polishing', `${kind.name} is not a polishing matter`)];
      }
      const deep = throughClear(defect, survey);
      return deep === null || depth === null
        ? []
        : [remark(DEEPER_THAN_CLEAR, says`${kind.name}: ${deep}`, depth)];
    });
}

/** What of a survey a depth is held against. */
export type DefectGround = Pick<PanelSurvey, 'statistics' | 'topcoat'>;

/** Of a measured depth that no polishing reaches the bottom of; null of any other. */
export function throughClear(
  { depth }: Pick<Defect, 'depth'>,
  { statistics, topcoat }: DefectGround,
): Sentence | null {
  if (depth === null) return null;
  if (statistics !== null && depth >= statistics.mean) {
    return says`${um(depth, 0)} deep is more than all the paint there (${um(statistics.mean, 0)}): is the depth right? No polishing mends it, new paint does`;
  }
  return topcoat !== null && depth >= topcoat.clear.mean
    ? says`${um(depth, 0)} deep is through the ${topcoat.finish === 'single-stage' ? 'topcoat' : 'clear'} (${um(Math.max(0, topcoat.clear.mean), 0)} reckoned at its thinnest): no polishing mends it, new paint does`
    : null;
}

/** The figures that cautions name. */
export type CautionFigures = Pick<FilmModel, 'edgeWidth'> & Pick<CorrectionModel, 'heat'>;

export function cautionsOf(
  survey: PanelSurvey,
  steps: readonly Step[],
  { edgeWidth, heat }: CautionFigures,
): readonly Remark[] {
  const cautions: Remark[] = [
    ...overrunNotes(survey),
    ...unreadWorkNotes(survey.facts),
    ...placeNotes(survey.facts),
    ...visitNotes(survey),
  ];
  const more = survey.advice.find(({ code }) => code === 'more-points');
  if (more !== undefined) {
    const read = counted(survey.points.length, 'point');
    // Three do: more of them is advice then, and no bar to the work.
    const first = survey.points.length < 3 ? ' first' : '';
    cautions.push(remark(more.code, `only ${read}: ${more.text}${first}`));
  }
  if (survey.otherPoints.some(({ place }) => place === 'edge')) {
    const text = `edge points were read apart: pad off the outer ${edgeWidth} mm`;
    cautions.push(remark('edges-read', text));
  }
  if (survey.lowPoints.length > 0) {
    cautions.push(
      remark('low-points', `low at ${survey.lowPoints.join(', ')}: fewer passes there`),
    );
  }
  return [...cautions, ...colourCautions(survey), ...rotaryCautions(steps, heat)];
}

/** A repaint is freed by a trial on it that left no colour: the first that comes later may be from under a clear. */
function colourCautions(survey: PanelSurvey): readonly Remark[] {
  if (isRepaintSaidWithoutClear(survey)) {
    return [
      remark(
        'colour-on-repaint',
        'repainted, perhaps with a clear: first colour on the pad: stop, no more there',
      ),
    ];
  }
  return survey.facts.finish.startsWith('single-stage')
    ? [remark('colour-on-pad', 'colour on the pad is normal on single-stage paint')]
    : [];
}

export function rotaryCautions(
  steps: readonly Step[],
  heat: CorrectionModel['heat'],
): readonly Remark[] {
  const text = `rotary: keep it moving, slow down at ${heat.caution} °C, stop at ${heat.stop} °C`;
  return steps.some(({ combination }) => combination.machine.motion.kind === 'rotary')
    ? [remark('rotary-heat', text)]
    : [];
}
