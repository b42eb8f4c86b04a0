/** What stands over the table of a survey or plan: whose it is, what it is held against, what its columns mean. */

import { counted } from '../../base/counted.ts';
import { roundTo, shown } from '../../base/rounding.ts';
import { bare, says, tell, thicknessText, um, unitName } from '../../base/sentence.ts';
import { expandedUncertainty } from '../../base/uncertainty.ts';
import type { LengthUnit } from '../../base/units.ts';
import { removalFactor } from '../../film/limits/allowance-steps.ts';
import { type PanelSurvey, partsOf } from '../../film/survey.ts';
import { panelNames } from '../../film/template/side-names.ts';
import type { Settings } from '../../tasks/settings/settings.ts';
import type { SurveyResult } from '../../tasks/survey/survey-vehicle.ts';
import { joined } from '../facts.ts';
import { type Block, type Facts, paragraph, type Said } from '../model.ts';
import type { PageOptions } from '../page-options.ts';
import { riskLine } from './risk-line.ts';

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
  { unit, verbose }: Pick<PageOptions, 'unit' | 'verbose'>,
): readonly Block[] {
  const { settings } = result;
  return [
    ...ofUntriedStep(result, read),
    paragraph('How to read it', legend(settings, read, unit, takesMore(settings))),
    paragraph('Baseline', baselineLine(result, read, unit)),
    paragraph('Risk', riskLine(settings, read, { unit, verbose })),
  ];
}

/** Where steps were tried, a plan tells what may go by the steps it plans: one reads both and must know which holds. */
function ofUntriedStep(
  { paint, settings }: SurveyResult,
  read: readonly PanelSurvey[],
): readonly Block[] {
  const isTried = settings.rates !== null || paint.tried.some((one) => !one.paint.provisional);
  const mayGo = read.flatMap(partsOf).some(({ budget }) => budget > 0);
  return isTried && mayGo
    ? [
        paragraph(
          'May go',
          'told here of a step not tried on this paint; a plan tells it of the steps planned, more or less as these are known: work to the plan.',
        ),
      ]
    : [];
}

function baselineLine(
  { survey, settings }: SurveyResult,
  read: readonly PanelSurvey[],
  unit: LengthUnit,
): Said {
  const { baseline, baselineUncertain, baselineMakers } = survey;
  if (baseline === null) {
    if (read.every(({ facts }) => facts.covered)) return 'none, as every panel read is covered.';
    const refinished = thicknessText(settings.film.conditions.refinished, unit, 0);
    return `none, as no metal panel reads under ${refinished} ${unitName(unit)}.`;
  }
  const size =
    baselineUncertain === null
      ? says`${um(baseline)}`
      : says`${bare(baseline)} ± ${um(expandedUncertainty(baselineUncertain))} (95\u00a0%)`;
  const what =
    baselineMakers.length === 0
      ? says`what factories paint: fewer than ${settings.film.conditions.baselinePanels} metal panels like the factory’s were read, alike and at two points or more, too few to tell the usual film of this car: read more, 5 min each`
      : `this car’s usual film, the middle of ${counted(baselineMakers.length, 'panel')}`;
  const usual = tell(says`${size}, ${what}`, unit);
  const isHeld = ({ panel }: PanelSurvey): boolean =>
    survey.heldToOthers.some(({ id }) => id === panel.id);
  return joined(
    [
      usual,
      ...otherBaselines(
        read.filter((one) => !isHeld(one)),
        baseline,
        unit,
      ),
      ...read.filter(isHeld).flatMap((one) => lackingToOthers(one, unit)),
    ],
    '; ',
    '.',
  );
}

const lackingToOthers = ({ panel, baseline }: PanelSurvey, unit: LengthUnit): readonly string[] =>
  baseline === null
    ? []
    : [
        tell(
          says`${panel.name} is held to the ${um(baseline)} of the others, as it lacks film to them`,
          unit,
        ),
      ];

/** `without zinc under it 109.3 µm: bonnet`. */
function otherBaselines(
  read: readonly PanelSurvey[],
  usual: number,
  unit: LengthUnit,
): readonly string[] {
  const others = read.filter(({ baseline }) => baseline !== null && baseline !== usual);
  const [first] = others;
  if (first === undefined) return [];
  const names = panelNames(others.map(({ panel }) => panel)).join(', ');
  if (others.every(({ facts }) => facts.finish === 'unknown')) {
    return [
      tell(
        says`${um(first.baseline ?? usual)} where that allows less, as the finish is not known: ${names}`,
        unit,
      ),
    ];
  }
  const zinc = first.facts.galvanised ? 'with' : 'without';
  return [tell(says`${zinc} zinc under the paint ${um(first.baseline ?? usual)}: ${names}`, unit)];
}

/** What the columns of the film table mean. */
export function legend(
  { film }: Settings,
  read: readonly PanelSurvey[],
  unit: LengthUnit,
  scatter: Facts,
): Said {
  const [content, sure] = [film.tolerance.content, film.tolerance.confidence].map(
    (share) => `${roundTo(100 * share, 1)}\u00a0%`,
  );
  const floors = [...new Set(read.map(({ totalFloor }) => totalFloor))].sort((a, b) => a - b);
  const told = floors.map((floor) => thicknessText(floor, unit, 0)).join(' or ');
  const drawn = floors.length > 1 ? ' (drawn)' : '';
  const mayGo = read.flatMap(partsOf).some(({ budget }) => budget > 0);
  const floor = `${told} ${unitName(unit)}`;
  const thicker = `${content} is thicker (${sure} sure)`;
  // Where nothing is drawn, no sign is explained.
  return joined(
    [
      { text: `least (‹): ${thicker};`, facts: [`thinnest credible: ${thicker}`] },
      ...(floors.length === 0
        ? []
        : [{ text: `┊: total floor, ${floor}${drawn};`, facts: [`total floor: ${floor}`] }]),
      { text: 'dots: points.', facts: [] },
      ...(mayGo
        ? [{ text: 'May go: most to plan;', facts: ['may go: plan no more than this'] }, scatter]
        : []),
    ],
    ' ',
  );
}

/** What a job takes by chance, where no steps are planned. */
export function takesMore({ terms }: Settings): Facts {
  const scatter = shown(removalFactor(terms), 1);
  const jobs = shown(1 / terms.risk, 0);
  return {
    text: `1 job in ${jobs} takes ${scatter} times it.`,
    facts: [
      `may go: 1 job in ${jobs} takes off over ${scatter} times what was planned, which is allowed for`,
    ],
  };
}
