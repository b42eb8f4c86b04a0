/** A panel taken apart on a page: what it is, how sure that is, what limits it, what would help. */

import { counted } from '../../base/counted.ts';
import { saying, textIn } from '../../base/remark.ts';
import { roundTo, shown } from '../../base/rounding.ts';
import {
  bare,
  type Sentence,
  says,
  tell,
  thicknessText,
  um,
  unitName,
} from '../../base/sentence.ts';
import {
  effectiveDegreesOfFreedom,
  expandedUncertainty,
  standardUncertainty,
  uncertaintyBudget,
} from '../../base/uncertainty.ts';
import type { LengthUnit } from '../../base/units.ts';
import { type LineComparison, marginOf } from '../../film/condition/line-comparison.ts';
import type { FlagRule } from '../../film/condition/outlying-points.ts';
import type { FilmModel } from '../../film/film-model.ts';
import { type PanelWhy, panelWhy } from '../../film/help/panel-why.ts';
import type { DoubtSource } from '../../film/limits/variance-of-left.ts';
import type { PanelSurvey } from '../../film/survey.ts';
import type { SurveyHelp } from '../../tasks/survey/survey-help.ts';
import type { SurveyResult } from '../../tasks/survey/survey-vehicle.ts';
import { type Block, cell, gap, list, paragraph, title } from '../model.ts';
import { partName } from '../panel-list.ts';
import { pointLines } from '../point-lines.ts';
import { baselineBlock } from './baseline-block.ts';
import { sourcesOfFigures } from './clear-basis.ts';
import { clearSteps } from './clear-steps.ts';
import { doubtShares, sourceWords } from './doubt-sources.ts';
import { flagText, isOfFilm } from './evidence-lines.ts';
import { type Advice, adviceLine, adviceOf, NOT_TO_ADD } from './help-lines.ts';
import { limitSteps } from './limit-steps.ts';
import { isNear } from './sureness-blocks.ts';
import {
  comparisonText,
  otherSideStep,
  otherSideText,
  sidesStep,
  surenessText,
  sureOf,
} from './sureness-lines.ts';
import { wereThinner } from './thinner-clear.ts';

export type WhyContext = {
  readonly result: SurveyResult;
  readonly helped: SurveyHelp;
  readonly unit: LengthUnit;
};

/** A page for a panel; of a panel in two zones, what they have in common and then each by itself. */
export function whyBlocks(survey: PanelSurvey, context: WhyContext): readonly Block[] {
  const { unit } = context;
  const heading = says`Why ${partName(survey)}: ${survey.condition}${isNear(survey) ? '?' : ''}, ${um(survey.budget, 2)} may go`;
  return [
    title(tell(heading, unit)),
    gap,
    ...(survey.zones.length === 0 ? partBlocks(survey, context) : zonedBlocks(survey, context)),
  ];
}

function zonedBlocks(survey: PanelSurvey, context: WhyContext): readonly Block[] {
  const { unit } = context;
  return [
    ...whatItIs(survey, context),
    list('Zones', [
      ...survey.zones.map((zone) => {
        const names = zone.points.map(({ point }) => point).join(', ');
        const said = says`${zone.zone}: points ${names}; ${um(zone.budget, 2)} may go`;
        return tell(said, unit);
      }),
      'Each is surveyed and planned by itself; the panel shows what allows least.',
    ]),
    ...survey.zones.flatMap((zone) => [gap, ...whyBlocks(zone, context)]),
  ];
}

function partBlocks(survey: PanelSurvey, context: WhyContext): readonly Block[] {
  const { settings } = context.result;
  const why = panelWhy(survey, settings.terms, settings.film);
  return [
    ...whatItIs(survey, context),
    ...(survey.points.length + survey.otherPoints.length === 0
      ? []
      : [list(`Points (${unitName(context.unit)})`, pointLines(survey, context.unit))]),
    ...howSure(survey, why, context),
    ...clearBlocks(survey, why, context),
    ...whatLimits(survey, why, context),
    ...riskBlocks(survey, why, context),
    ...sourcesOfFigures(survey, context.unit),
    ...whatHelps(survey, context),
  ];
}

function whatItIs(survey: PanelSurvey, context: WhyContext): readonly Block[] {
  const { unit, result } = context;
  const conditions = [survey.condition, ...survey.also].join(', ');
  const evidence = survey.evidence
    .filter(isOfFilm)
    .map((one) => textIn(one, unit))
    .join('; ');
  const { id, substrate } = survey.panel;
  const by = result.substrates.has(id) ? 'by the job' : 'by the template';
  return [
    paragraph('What it is', `${conditions} (${substrate}, ${by}): ${evidence}`),
    ...sureOfWord(survey, context),
    ...baselineBlock(survey, result, unit),
    ...flags(survey, unit),
  ];
}

/** What the first word hangs on, and every other comparison that could have made it another. */
function sureOfWord(survey: PanelSurvey, { unit, result }: WhyContext): readonly Block[] {
  const { settings } = result;
  const said = surenessText(survey);
  if (survey.condition === 'unread') {
    return [paragraph('How sure', 'nothing is sure of a panel that was not read')];
  }
  if (survey.sureness === null || said === null) return [];
  const { comparisons, beside, deciding } = survey.sureness;
  const lines = [
    said,
    doubtOfLine(deciding),
    ...[otherSideText(survey, settings.terms)].filter((text) => text !== null),
    ...otherSideStep(survey),
    ...comparisons.slice(1).map(comparisonText),
    ...beside.map((one) => says`${one.condition} besides, ${sureOf(one)}: ${comparisonText(one)}`),
    ...noCut(survey, settings.film),
  ];
  return [list(`How sure “${survey.condition}” is`, lines.map(inUnit(unit)))];
}

/** Why no comparison speaks of two zones. */
function noCut(
  { points, zones, sureness }: PanelSurvey,
  { zones: { leastPoints } }: FilmModel,
): readonly Sentence[] {
  const asked = sureness?.comparisons.some(({ condition }) => condition === 'mixed') ?? false;
  if (asked || zones.length > 0 || points.length === 0) return [];
  return [
    says`mixed: no question of it, as no cut leaves ${leastPoints} points or more on either side, factory film among them`,
  ];
}

/** The sum behind the chance of the other side. */
function doubtOfLine(one: LineComparison): Sentence {
  const apart = says`figure and line are ${um(marginOf(one), 2)} apart, which is uncertain by ± ${um(one.standard, 2)} (SD) on ${degrees(one.dof)} degrees of freedom`;
  const shares = doubtShares(one.difference);
  return shares === '' ? apart : says`${apart}: ${shares}`;
}

const RULES: Readonly<Record<FlagRule, string>> = {
  'other-panels': 'against the spread of the other panels',
  esd: 'by the generalised ESD test on its own points',
  grubbs: 'by Grubbs’ test on its own points',
  none: 'too few points to tell',
};

function flags(survey: PanelSurvey, unit: LengthUnit): readonly Block[] {
  const { flagRule, points, zones } = survey;
  if (points.length === 0 || zones.length > 0) return [];
  const found = flagText(survey, unit);
  const said = found.length === 0 ? 'none' : found.join('; ');
  return [paragraph('Points that stand out', `${said} (${RULES[flagRule]})`)];
}

/** The mean with its budget of uncertainty, the spread, the thinnest credible film. */
function howSure(survey: PanelSurvey, why: PanelWhy, context: WhyContext): readonly Block[] {
  const { uncertainty } = survey;
  if (uncertainty === null) return [];
  const { unit } = context;
  const [standard, expanded] = [standardUncertainty(uncertainty), expandedUncertainty(uncertainty)];
  const dof = degrees(effectiveDegreesOfFreedom(uncertainty));
  const mean = says`mean ${bare(uncertainty.value)} ± ${um(expanded)} at 95 % (standard uncertainty ${um(standard, 2)} on ${dof} degrees of freedom)`;
  return [
    paragraph('How sure', tell(mean, unit)),
    {
      kind: 'table',
      columns: [
        { title: 'the mean is uncertain by', align: 'left' },
        { title: `± ${unitName(unit)}`, align: 'right' },
        { title: 'of its variance', align: 'right' },
        { title: 'dof', align: 'right' },
      ],
      rows: uncertaintyBudget(uncertainty).map(({ source, contribution, share, dof: own }) => [
        cell(sourceWords(source)),
        cell(thicknessText(Math.abs(contribution), unit, 2)),
        cell(`${shown(100 * share, 0)} %`),
        cell(degrees(own)),
      ]),
    },
    list('Spread over the panel', spreadLines(survey).map(inUnit(unit))),
    list('Thinnest credible film', thinnestLines(survey, why, context).map(inUnit(unit))),
  ];
}

const inUnit =
  (unit: LengthUnit) =>
  (said: Sentence): string =>
    tell(said, unit);

/** Infinite where nothing limits them. */
const degrees = (dof: number): string => (Number.isFinite(dof) ? shown(dof, 0) : '∞');

function spreadLines({ film, moderation, statistics }: PanelSurvey): readonly Sentence[] {
  if (film === null || moderation === null) return [];
  const { own, prior } = moderation;
  const sd = statistics?.sd ?? null;
  const ownText =
    own.dof === 0
      ? says`its own points: too few to say`
      : says`its own points: SD ${um(Math.sqrt(own.variance))} on ${degrees(own.dof)} degrees of freedom`;
  const raised =
    sd !== null && own.dof > 0 && own.variance > sd ** 2 * (1 + 1e-9)
      ? says` (they read ${um(sd)}; the gauge alone scatters more)`
      : says``;
  const pool = Number.isFinite(prior.dofCeiling)
    ? 'the car’s panels together'
    : 'assumed, as no pool of factory film speaks for it';
  return [
    says`${ownText}${raised}`,
    says`${pool}: SD ${um(Math.sqrt(prior.variance))}, with the weight of ${degrees(prior.dof)}`,
    says`taken: SD ${um(film.spread.sd)} on ${degrees(film.spread.dof)}`,
  ];
}

function thinnestLines(
  { film, thinnest: _, statistics }: PanelSurvey,
  { thinnest, distributionFree }: PanelWhy,
  { result }: WhyContext,
): readonly Sentence[] {
  if (film === null || statistics === null || distributionFree === null) return [];
  const { content, confidence } = result.settings.film.tolerance;
  const [share, sure] = [content, confidence].map((one) => `${roundTo(100 * one, 1)} %`);
  const { confidence: free, pointsNeeded } = distributionFree;
  const anyShape = says`whatever its shape: the smallest of ${counted(film.count, 'point')}, ${um(film.smallest)}, is under ${share ?? ''} of the face with ${shown(100 * free, 0)} % confidence only; ${sure ?? ''} takes ${pointsNeeded} points`;
  if (thinnest === null) {
    const why =
      film.count < 2 ? 'a single point shows no spread' : 'over filler film is not of one kind';
    return [says`no bound: ${why}`, anyShape];
  }
  const { factor, bound, gaugeMargin } = thinnest;
  const least = Math.min(bound, film.smallest);
  return [
    says`${bare(film.mean, 2)} − ${shown(factor, 3)} × ${bare(film.spread.sd, 2)} = ${um(bound, 2)}; smallest point ${um(film.smallest, 2)}`,
    says`the lesser ${bare(least, 2)} − ${bare(gaugeMargin, 2)} for the gauge’s own error = ${um(thinnest.thinnest, 2)}`,
    says`${share ?? ''} of the face is thicker, with ${sure ?? ''} confidence at least, if film varies normally over it (k ${shown(factor, 3)} for ${counted(film.count, 'point')}, ${degrees(film.spread.dof)} degrees of freedom)`,
    anyShape,
  ];
}

function clearBlocks(
  survey: PanelSurvey,
  { clear }: PanelWhy,
  context: WhyContext,
): readonly Block[] {
  const { topcoat } = survey;
  if (topcoat === null || clear === null) return [];
  const name = topcoat.finish === 'single-stage' ? 'Topcoat' : 'Clear';
  const steps = clearSteps(survey, clear, context.result.settings.film);
  return [list(`${name}, step by step`, steps.map(inUnit(context.unit)))];
}

/** Every limit side by side, the one that binds marked. */
function whatLimits(
  { boundBy, evidence }: PanelSurvey,
  { limits }: PanelWhy,
  { unit }: WhyContext,
): readonly Block[] {
  const after = evidence.filter((one) => !isOfFilm(one));
  return [
    list(`What limits it: median removal that each allows (${unitName(unit)})`, [
      ...limits.flatMap((why) => {
        const { limit } = why;
        const mark = limit === boundBy ? '→' : '\u00a0';
        const allows = thicknessText(limit.value, unit, 2);
        const said = says`${mark} ${allows}: ${saying(limit)}${limit === boundBy ? ' (binds)' : ''}`;
        return [said, ...limitSteps(why)].map(inUnit(unit));
      }),
      ...after.map((one) => textIn(one, unit)),
    ]),
  ];
}

const DOUBT: Readonly<Record<DoubtSource, string>> = {
  layers: 'how the total is shared between the layers',
  removal: 'the removal',
  spread: 'the spread over the panel',
  sampling: 'the number of points',
  gauge: 'the gauge’s own error',
};

function riskBlocks(
  survey: PanelSurvey,
  { risk, sides, doubt }: PanelWhy,
  { result, unit }: WhyContext,
): readonly Block[] {
  const { topcoat, budget } = survey;
  if (risk === null || topcoat === null || budget === 0) return [];
  const percent = (share: number): string => `${shown(100 * share, share < 0.0995 ? 1 : 0)} %`;
  const { thinnerClear } = result.settings.film;
  const name = topcoat.finish === 'single-stage' ? 'topcoat' : 'clear';
  const risks = says`${percent(risk.risk)} that less than ${um(topcoat.clearFloor)} of ${name} stays where it is thinnest; ${percent(risk.riskIfThin)} ${wereThinner(thinnerClear)}; before any polishing ${percent(risk.already)}`;
  const parts = doubt.map(({ source, share }) => `${DOUBT[source]} ${percent(share)}`);
  return [
    list('Risk if a plan took it all', [risks, ...sidesStep(survey, sides)].map(inUnit(unit))),
    paragraph(`Shares of the variance of the ${name} left then`, parts.join(', ')),
  ];
}

function whatHelps(survey: PanelSurvey, { helped, unit }: WhyContext): readonly Block[] {
  const advice = adviceOf(survey, helped);
  const lines = (some: readonly Advice[]): readonly string[] =>
    some.map((one) => tell(adviceLine(one), unit));
  const helps = advice.filter((one) => !lowersIt(one));
  const lowers = advice.filter(lowersIt);
  const hasGains = helps.some(({ value }) => value !== undefined);
  return [
    list(
      hasGains ? `What would help; ${NOT_TO_ADD}` : 'What would help',
      helps.length === 0 ? ['nothing that is known of'] : lines(helps),
    ),
    ...(lowers.length === 0 ? [] : [list('What would lower it', lines(lowers))]),
  ];
}

const lowersIt = ({ value }: Advice): boolean => value !== undefined && value < -LEAST_LOWERING;

/** Less is written as nought. */
const LEAST_LOWERING = 0.005;
