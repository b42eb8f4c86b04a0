/** A panel taken apart on a page: what it is, how sure that is, what limits it, what would help. */
import { nextFact, says, tell, um, unitName } from '../../base/sentence.ts';
import type { LengthUnit } from '../../base/units.ts';
import type { FlagRule } from '../../film/condition/outlying-points.ts';
import { panelWhy } from '../../film/help/panel-why.ts';
import { type PanelSurvey, partName } from '../../film/survey.ts';
import { about, joined, remarkFacts, toldFacts } from '../facts.ts';
import { type Block, gap, list, paragraph, title } from '../model.ts';
import { pointLines } from '../point-lines.ts';
import { baselineBlock } from './baseline-block.ts';
import { sourcesOfFigures } from './clear-basis.ts';
import { flagText, isOfFilm } from './evidence-lines.ts';
import { isNear } from './sureness-blocks.ts';
import type { WhyContext } from './why-context.ts';
import { earlierWorkBlocks } from './why-earlier-work.ts';
import { filmBlocks } from './why-film-blocks.ts';
import { helpBlocks } from './why-help-blocks.ts';
import { clearBlocks, limitBlocks } from './why-limit-blocks.ts';
import { riskBlocks } from './why-risk-blocks.ts';
import { wordBlocks } from './why-word-blocks.ts';

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
        const said = says`points ${names}${nextFact}${um(zone.budget, 2)} may go`;
        return about(zone.zone, toldFacts(said, unit));
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
    ...filmBlocks(survey, why, context),
    ...earlierWorkBlocks(survey, context),
    ...clearBlocks(survey, why, context),
    ...limitBlocks(survey, why, context),
    ...riskBlocks(survey, why, context),
    ...sourcesOfFigures(survey, context.unit),
    ...helpBlocks(survey, context),
  ];
}

function whatItIs(survey: PanelSurvey, context: WhyContext): readonly Block[] {
  const { unit, result } = context;
  const conditions = [survey.condition, ...survey.also].join(', ');
  const evidence = survey.evidence.filter(isOfFilm).map((one) => remarkFacts(one, unit));
  const { id, substrate } = survey.panel;
  const by = `by the ${result.substrates.get(id)?.by ?? 'template'}`;
  return [
    paragraph('What it is', about(`${conditions} (${substrate}, ${by})`, joined(evidence, '; '))),
    ...wordBlocks(survey, context),
    ...baselineBlock(survey, result, unit),
    ...flags(survey, unit),
  ];
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
  const said = found.length === 0 ? ['none'] : found;
  const rule = `(${RULES[flagRule]})`;
  const text = `${said.join('; ')} ${rule}`;
  const facts = said.map((one) => `${one} ${rule}`);
  return [paragraph('Points that stand out', { text, facts })];
}
