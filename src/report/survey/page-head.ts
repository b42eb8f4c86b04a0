/** What stands over the table of a survey or plan: whose it is, what it is held against, what its columns mean. */
import { roundTo, shown } from '../../base/rounding.ts';
import { bare, type Sentence, says, tell, um, unitName } from '../../base/sentence.ts';
import { expandedUncertainty } from '../../base/uncertainty.ts';
import { budgetRisk } from '../../film/help/panel-why.ts';
import { removalFactor } from '../../film/limits/allowance-steps.ts';
import { type PanelSurvey, partsOf } from '../../film/survey.ts';
import type { Settings } from '../../tasks/settings/settings.ts';
import type { SurveyResult } from '../../tasks/survey/survey-vehicle.ts';
import { type Block, paragraph } from '../model.ts';
import { panelNames } from '../panel-list.ts';
import { counted } from '../words.ts';
import { type ShowUnit, thickness } from './film-table.ts';
import { hasDoubtedWord } from './leave-reason.ts';
import { isNear } from './sureness-blocks.ts';

/** `Survey of AB 12, Make Model 1998: saloon, 13 panels, 65 points`. */
export function heading(
  what: string,
  { vehicle, identity, survey }: SurveyResult,
  read: readonly PanelSurvey[],
): string {
  const name = [identity?.make, identity?.model, identity?.year].filter(Boolean).join(' ');
  const car = [vehicle, name].filter(Boolean).join(', ');
  const points = read.reduce((sum, panel) => sum + panel.points.length, 0);
  const of = car === '' ? '' : ` of ${car}`;
  return `${what}${of}: ${survey.template.name}, ${counted(read.length, 'panel')}, ${counted(points, 'point')}`;
}

/** Under the table: how it is read, what its panels are held against, what risk is taken. */
export function readNotes(
  result: SurveyResult,
  read: readonly PanelSurvey[],
  unit: ShowUnit,
): readonly Block[] {
  const { settings } = result;
  return [
    paragraph('How to read it', `${legend(settings, read, unit)}${questionMark(read)}`),
    paragraph('Baseline', baselineLine(result, read, unit)),
    paragraph('Risk', riskLine(settings, read, unit)),
  ];
}

/** What the mark is put to, where there is one: behind a first word it bears on what may go. */
function questionMark(read: readonly PanelSurvey[]): string {
  const parts = read.flatMap((survey) => [survey, ...survey.zones]);
  if (parts.some(isNear)) {
    return ' ? near its line: its figure keeps the risk over both sides together, not on each.';
  }
  return parts.some(hasDoubtedWord) ? ' ? is under 95\u00a0% sure.' : '';
}

function baselineLine(
  { survey, settings }: SurveyResult,
  read: readonly PanelSurvey[],
  unit: ShowUnit,
): string {
  const { baseline, baselineUncertain, baselineMakers } = survey;
  if (baseline === null) {
    const refinished = thickness(settings.film.conditions.refinished, unit, 0);
    return `none, as no metal panel reads under ${refinished} ${unitName(unit)}.`;
  }
  const size =
    baselineUncertain === null
      ? says`${um(baseline)}`
      : says`${bare(baseline)} ± ${um(expandedUncertainty(baselineUncertain))}`;
  const what =
    baselineMakers.length === 0
      ? 'what factories paint: too few panels were read to tell the usual film of this car'
      : `the usual film of this car, the middle of ${counted(baselineMakers.length, 'panel')}`;
  return tell(says`${size} is ${what}${otherBaselines(read, baseline)}.`, unit);
}

/** `; without zinc under it 109.3 µm: bonnet`. */
function otherBaselines(read: readonly PanelSurvey[], usual: number): Sentence {
  const others = read.filter(({ baseline }) => baseline !== null && baseline !== usual);
  const [first] = others;
  if (first === undefined) return [];
  const zinc = first.facts.galvanised ? 'with' : 'without';
  const names = panelNames(others.map(({ panel }) => panel)).join(', ');
  return says`; ${zinc} zinc under the paint ${um(first.baseline ?? usual)}: ${names}`;
}

/** By how many panels that risk comes true, if all is taken that may go; and what it would be over thinner clear. */
function riskLine(settings: Settings, read: readonly PanelSurvey[], unit: ShowUnit): string {
  const { risk } = settings.terms;
  const each = `${shown(100 * risk, 1)}\u00a0% a panel of too thin clear, if it is what its condition says`;
  const worked = read.filter(({ budget }) => budget > 0).length;
  const all = worked < 2 ? '' : `, ${shown(worked * risk, 1)} panels of ${worked} in all`;
  return `${each}${all}${riskIfThinner(settings, read, unit)}.`;
}

/** Of a panel near its line the risk is that of both sides, and no such figure stands for it. */
function riskIfThinner(
  { terms, film }: Settings,
  read: readonly PanelSurvey[],
  unit: ShowUnit,
): string {
  const risks = read
    .flatMap(partsOf)
    .filter((part) => part.budget > 0 && !isNear(part))
    .flatMap((part) => budgetRisk(part, terms, film)?.riskIfThin ?? [])
    .map((risk) => shown(100 * risk, 0));
  const [low, high] = [Math.min(...risks.map(Number)), Math.max(...risks.map(Number))];
  if (risks.length === 0) return '';
  const range = low === high ? `${low}` : `${low} to ${high}`;
  return tell(
    says`; ${range}\u00a0% were the topcoat ${um(film.thinnerClear, null)} thinner than thought`,
    unit,
  );
}

/** Said before anything else: who asks for the strict floors is else taken aback by what they leave. */
export const strictNote = ({ terms }: Settings): readonly Block[] =>
  terms.policy === 'strict'
    ? [
        paragraph(
          'Strict policy',
          'its floors are meant for instruments that read the clear by itself. From the whole film, which is all an electromagnetic gauge reads, it allows almost nothing.',
        ),
      ]
    : [];

/** What the columns of the film table mean. */
export function legend(
  { film, terms }: Settings,
  read: readonly PanelSurvey[],
  unit: ShowUnit,
): string {
  const content = roundTo(100 * film.tolerance.content, 1);
  const scatter = shown(removalFactor(terms), 1);
  const floors = [...new Set(read.map(({ totalFloor }) => totalFloor))].sort((a, b) => a - b);
  const told = floors.map((floor) => thickness(floor, unit, 0)).join(' or ');
  const floor = floors.length === 0 ? '' : ` ┊ is the total floor, ${told} ${unitName(unit)};`;
  return (
    `least (‹): ${content}\u00a0% of the face is thicker. ` +
    `May go: plan no more; ${scatter} times as much gone, or thinner clear, is within the risk, not both.` +
    `${floor} each dot is a point.`
  );
}
