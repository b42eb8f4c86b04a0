/** What stands over the table of a survey or plan: whose it is, what it is held against, what its columns mean. */
import { roundTo, shown } from '../../base/rounding.ts';
import { bare, type Sentence, says, tell, um, unitName } from '../../base/sentence.ts';
import { expandedUncertainty } from '../../base/uncertainty.ts';
import { removalFactor } from '../../film/limits/allowance-steps.ts';
import type { PanelSurvey } from '../../film/survey.ts';
import type { Settings } from '../../tasks/settings/settings.ts';
import type { SurveyResult } from '../../tasks/survey/survey-vehicle.ts';
import { type Block, paragraph } from '../model.ts';
import { panelNames } from '../panel-list.ts';
import { counted } from '../words.ts';
import { type ShowUnit, thickness } from './film-table.ts';
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
  const near = read.some(isMarked)
    ? [' ? says that a condition is near its line; its figure holds on both sides.']
    : [];
  return [
    paragraph('How to read it', [legend(settings, read, unit), ...near].join('')),
    paragraph('Baseline', baselineLine(result, read, unit)),
    paragraph('Risk', riskLine(settings, read)),
  ];
}

/** Itself or a zone of it. */
const isMarked = (survey: PanelSurvey): boolean => [survey, ...survey.zones].some(isNear);

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

/** By how many panels that risk comes true, if all is taken that may go. */
function riskLine({ terms }: Settings, read: readonly PanelSurvey[]): string {
  const risk = `${shown(100 * terms.risk, 1)}\u00a0% a panel of too thin clear`;
  const worked = read.filter(({ budget }) => budget > 0).length;
  return worked < 2
    ? `${risk}.`
    : `${risk}, ${shown(worked * terms.risk, 1)} panels of ${worked} in all.`;
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
    `least (‹) is the film that ${content}\u00a0% of the face exceeds. ` +
    `May go is what to aim at: ${scatter} times as much, and thinner clear, are allowed for.` +
    `${floor} each dot is a point.`
  );
}
