/** How well the film of a panel is known: its mean, its spread, the thinnest that is credible. */

import { counted } from '../../base/counted.ts';
import { roundTo, shown } from '../../base/rounding.ts';
import {
  bare,
  nextFact,
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
import type { PanelWhy } from '../../film/help/panel-why.ts';
import type { PanelSurvey } from '../../film/survey.ts';
import { column, figures } from '../columns.ts';
import { type Block, cell, list, paragraph } from '../model.ts';
import { sourceWords } from './doubt-sources.ts';
import { degrees, toldIn, type WhyContext } from './why-context.ts';

/** The mean with its budget of uncertainty, the spread, the thinnest credible film. */
export function filmBlocks(
  survey: PanelSurvey,
  why: PanelWhy,
  context: WhyContext,
): readonly Block[] {
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
        { ...column('the mean is uncertain by'), said: 'uncertainty of the mean,' },
        figures(`SD (${unitName(unit)})`),
        figures('of its variance'),
        figures('dof'),
      ],
      rows: uncertaintyBudget(uncertainty).map(({ source, contribution, share, dof: own }) => [
        cell(sourceWords(source)),
        cell(thicknessText(Math.abs(contribution), unit, 2)),
        cell(`${shown(100 * share, 0)} %`),
        cell(degrees(own)),
      ]),
    },
    list('Spread over the panel', spreadLines(survey).map(toldIn(unit))),
    list('Thinnest credible film', thinnestLines(survey, why, context).map(toldIn(unit))),
  ];
}

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
    says`${bare(film.mean, 2)} − ${shown(factor, 3)} × ${bare(film.spread.sd, 2)} = ${um(bound, 2)}${nextFact}smallest point ${um(film.smallest, 2)}`,
    says`the lesser ${bare(least, 2)} − ${bare(gaugeMargin, 2)} for the gauge’s own error = ${um(thinnest.thinnest, 2)}`,
    says`${share ?? ''} of the face is thicker, with ${sure ?? ''} confidence at least, if film varies normally over it (k ${shown(factor, 3)} for ${counted(film.count, 'point')}, ${degrees(film.spread.dof)} degrees of freedom)`,
    anyShape,
  ];
}
