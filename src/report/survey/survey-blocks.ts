import { groupBy } from '../../base/group-by.ts';
import { saying, textIn } from '../../base/remark.ts';
import { shown } from '../../base/rounding.ts';
import {
  nextFact,
  type Sentence,
  says,
  tell,
  thicknessText,
  um,
  unitName,
} from '../../base/sentence.ts';
import type { LengthUnit } from '../../base/units.ts';
import { removalFactor } from '../../film/limits/allowance-steps.ts';
import { type Limit, roomLeft } from '../../film/limits/limit.ts';
import type { RemovalTerms } from '../../film/limits/removal-limits.ts';
import { type PanelSurvey, partName, partsOf } from '../../film/survey.ts';
import type { SurveyReport } from '../../tasks/survey/survey-help.ts';
import type { SurveyResult } from '../../tasks/survey/survey-vehicle.ts';
import { assumptionBlocks } from '../assumption-blocks.ts';
import { headingOf, joined, setIn, toldFacts } from '../facts.ts';
import { isLarge, largeAssumptions } from '../large-assumptions.ts';
import { type Block, cell, gap, list, paragraph, title } from '../model.ts';
import type { PageOptions } from '../page-options.ts';
import { factsList, statedBlock } from '../panel-facts.ts';
import { pointsOffFace } from '../point-lines.ts';
import { builtInBlock } from './clear-basis.ts';
import { colourFirst } from './colour-lines.ts';
import { evidenceLines } from './evidence-lines.ts';
import { filmTable, limitWord } from './film-table.ts';
import { helpBlocks } from './help-blocks.ts';
import { leftOutBlock } from './left-out-block.ts';
import { FILES_DOUBTED, noteBlocks, warningsFirst } from './note-blocks.ts';
import { heading, readNotes } from './page-head.ts';
import { strictNote } from './strict-note.ts';
import { isNear, nearTheLine, sureness, surenessList } from './sureness-blocks.ts';
import { answerBlocks } from './survey-answer.ts';
import { surveyDrawings } from './survey-drawings.ts';
import { chosen } from './survey-record.ts';
import { readInVain } from './unread-lines.ts';
import { whyBlocks } from './why-blocks.ts';

/** The survey as a page; where it is asked why of some panels, those taken apart instead. */
export function surveyBlocks(
  { result, panels, helped, why }: SurveyReport,
  options: PageOptions,
): readonly Block[] {
  const { unit } = options;
  const surveyed = chosen(result.survey.panels, panels);
  const read = surveyed.filter(({ points }) => points.length > 0);
  if (why.length > 0) {
    const asked = chosen(result.survey.panels, why);
    return [
      title(heading('Survey', result, read)),
      ...strictNote(result),
      ...warningsFirst(result, unit),
      ...asked.flatMap((survey) => [gap, ...whyBlocks(survey, { result, helped, unit })]),
      ...assumptionBlocks(result, options, [FILES_DOUBTED]),
    ];
  }
  const page = { helped, result, verbose: options.verbose };
  return airy([
    [title(heading('Survey', result, read)), ...strictNote(result)],
    [
      ...warningsFirst(result, unit),
      ...colourFirst(surveyed),
      ...answerBlocks(surveyed, helped, result, unit),
    ],
    largeAssumptions(result.assumptions, unit),
    readTable(read, unit),
    [
      ...(read.length === 0 ? [] : readNotes(result, read, options)),
      ...offFace(surveyed, unit),
      ...leftOutBlock(
        surveyed.map(({ panel }) => panel),
        result,
      ),
      ...(read.length === 0 ? [] : sureness(read, result.settings, options)),
      ...nearTheLine(read, page, unit),
      ...(options.verbose ? otherLimits(read, result.settings, unit) : []),
      ...evidenceLines(read, helped, options),
      ...(options.verbose ? readInVain(surveyed, unit) : []),
      ...noteBlocks(result.survey, unit),
    ],
    helpBlocks(surveyed, page, unit),
    options.verbose
      ? [
          ...surenessList(surveyed, unit),
          ...factsList(read, result, unit),
          spreadLine(result, unit),
          ...limitsList(surveyed, unit),
        ]
      : [],
    [
      ...statedBlock(read, result, unit),
      ...builtInBlock(read, result, options),
      ...assumptionBlocks(
        { ...result, assumptions: result.assumptions.filter((one) => !isLarge(one)) },
        options,
        SAID_ABOVE,
      ),
    ],
    options.drawn === true ? surveyDrawings(read, unit) : [],
  ]);
}

/** Its risk, and files that are perhaps of two cars. */
const SAID_ABOVE: readonly string[] = ['risk', FILES_DOUBTED];

/** A blank line between groups of blocks that belong together. */
const airy = (groups: readonly (readonly Block[])[]): readonly Block[] =>
  groups
    .filter((blocks) => blocks.length > 0)
    .flatMap((blocks, i) => (i === 0 ? blocks : [gap, ...blocks]));

const readTable = (read: readonly PanelSurvey[], unit: LengthUnit): readonly Block[] =>
  read.length === 0
    ? [paragraph(null, 'No panel was read.')]
    : [
        filmTable(
          read,
          {
            title: 'condition',
            cellOf: (part) => cell(`${part.condition}${isNear(part) ? '?' : ''}`),
          },
          unit,
        ),
      ];

/** What binds where it is not the clear, of panels from which something may go; the table says which. */
function otherLimits(
  read: readonly PanelSurvey[],
  { terms }: SurveyResult['settings'],
  unit: LengthUnit,
): readonly Block[] {
  const told = read
    .flatMap(partsOf)
    .filter(
      ({ budget, boundBy }) =>
        budget > 0 && boundBy.code !== 'clear' && boundBy.code !== 'near-line',
    )
    .map((part) => ({
      part,
      word: limitWord(part.boundBy.code, part),
      text: `${textIn(part.boundBy, unit)}${tell(ofRoom(part.boundBy, terms), unit)}`,
    }));
  const groups = [...groupBy(told, ({ word, text }) => `${word}: ${text}`).values()];
  return groups.map((group) => {
    const [{ word, text }] = group;
    // Where one limit reads in two ways, which panels each is of.
    const isOne = groups.filter(([one]) => one.word === word).length === 1;
    const on = isOne ? '' : ` (${group.map(({ part }) => partName(part)).join(', ')})`;
    return paragraph('Bound by', `${word}${on}: ${text}`);
  });
}

/** `: 8.7 µm left, and 1 job in 20 takes 2.5 times its plan`: why less may be planned than a limit leaves. */
const ofRoom = ({ room }: Limit, { logSd }: Pick<RemovalTerms, 'logSd'>): Sentence =>
  room === undefined
    ? says``
    : says`: ${um(roomLeft(room))} left, and 1 job in ${shown(1 / room.risk, 0)} takes ${shown(removalFactor({ ...room, logSd }), 1)} times its plan`;

/** Points that enter no statistic, with where they lie. */
function offFace(surveyed: readonly PanelSurvey[], unit: LengthUnit): readonly Block[] {
  const apart = surveyed
    .filter(({ otherPoints }) => otherPoints.length > 0)
    .map((survey) => `${survey.panel.name} ${pointsOffFace(survey, unit)}`);
  return apart.length === 0 ? [] : [paragraph('Off the face, kept apart', joined(apart, '; '))];
}

/** What the panels of factory film say together of how much film varies over a panel. */
function spreadLine({ survey: { spreadPrior } }: SurveyResult, unit: LengthUnit): Block {
  const { variance, dof, dofCeiling } = spreadPrior;
  const from = Number.isFinite(dofCeiling)
    ? `on ${shown(dofCeiling, 0)} degrees of freedom in all`
    : 'assumed, as too few panels of factory film tell';
  const said = says`SD s0 ${um(Math.sqrt(variance))} over a panel, ${from}${nextFact}each panel is drawn towards it with the weight of d0 ${shown(dof, 1)}`;
  return paragraph('Spread', toldFacts(said, unit));
}

const limitsList = (read: readonly PanelSurvey[], unit: LengthUnit): readonly Block[] => [
  list(
    {
      text: `Every limit, and the median removal it allows (${unitName(unit)}, ± SD)`,
      short: `Allows (${unitName(unit)}, ± SD)`,
    },
    read
      .flatMap(partsOf)
      .flatMap((survey) => [
        headingOf(partName(survey)),
        ...survey.limits.map((one) =>
          setIn(
            partName(survey),
            tell(says`${thicknessText(one.value, unit, 2)}: ${saying(one)}`, unit),
          ),
        ),
      ]),
  ),
];
