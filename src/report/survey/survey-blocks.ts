import { shownFile } from '../../base/file-name.ts';
import { groupBy } from '../../base/group-by.ts';
import { type Remark, saying, textIn } from '../../base/remark.ts';
import { roundTo, shown } from '../../base/rounding.ts';
import { says, tell, um, unitName } from '../../base/sentence.ts';
import { type PanelSurvey, partsOf } from '../../film/survey.ts';
import type { Panel } from '../../film/template/template.ts';
import { isOwn } from '../../tasks/settings/effective-settings.ts';
import type { Settings } from '../../tasks/settings/settings.ts';
import type { SurveyHelp, SurveyReport } from '../../tasks/survey/survey-help.ts';
import type { SurveyResult } from '../../tasks/survey/survey-vehicle.ts';
import { type Block, cell, gap, list, paragraph, title } from '../model.ts';
import { factsList, statedBlock } from '../panel-facts.ts';
import { panelNames } from '../panel-list.ts';
import { pointsOffFace } from '../point-lines.ts';
import { decisionLines } from '../read/decision-lines.ts';
import { settingsList } from '../settings-list.ts';
import { counted } from '../words.ts';
import { filmTable, partName, type ShowUnit, thickness } from './film-table.ts';
import { helpLines } from './help-lines.ts';
import { nearTheLine, sureness, surenessList } from './sureness-blocks.ts';
import { surveyDrawings } from './survey-drawings.ts';
import { chosen } from './survey-record.ts';
import { whyBlocks } from './why-blocks.ts';

export type PageOptions = {
  readonly unit: ShowUnit;
  readonly verbose: boolean;
  /** Whether the page has room for drawings beside its tables. */
  readonly drawn?: boolean;
};

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
      ...strictNote(result.settings),
      ...asked.flatMap((survey) => [gap, ...whyBlocks(survey, { result, helped, unit })]),
      ...assumptionBlocks(result, options),
    ];
  }
  return [
    title(heading('Survey', result, read)),
    ...readNotes(result, options),
    gap,
    ...readTable(read, unit),
    ...unreadLine(surveyed),
    ...offFace(surveyed, unit),
    ...sureness(read, result.settings, unit),
    ...nearTheLine(read, unit),
    gap,
    ...evidenceLines(read, unit),
    ...result.survey.notes.map((note) => paragraph('Note', textIn(note, unit))),
    ...helpBlock(surveyed, helped, unit),
    ...statedBlock(read, result, unit),
    ...(options.verbose
      ? [
          ...surenessList(read, unit),
          ...factsList(read, result, unit),
          spreadLine(result, unit),
          ...limitsList(read, unit),
        ]
      : []),
    ...assumptionBlocks(result, options),
    ...(options.drawn === true ? surveyDrawings(read, unit) : []),
  ];
}

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
  return `${what}${of}: ${survey.template.name}, ${counted(read.length, 'panel')} read at ${counted(points, 'point')}`;
}

function readNotes({ survey, settings }: SurveyResult, { unit }: PageOptions): readonly Block[] {
  const baseline =
    survey.baseline === null
      ? 'No baseline: no sound metal panel was read.'
      : `Baseline, the usual film of its sound panels: ${thickness(survey.baseline, unit)} ${unitName(unit)}.`;
  const risk = shown(100 * settings.terms.risk, 1);
  return [
    ...strictNote(settings),
    paragraph(null, `${baseline} ${legend(settings)} Limits kept at ${risk}\u00a0% risk.`),
  ];
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
export const legend = ({ film }: Settings): string =>
  `‹ least: film credible on ${roundTo(100 * film.tolerance.content, 1)}\u00a0% of the face; may go: middle of a removal that keeps every limit, its scatter allowed for; ┊ floor of the total.`;

export const readTable = (read: readonly PanelSurvey[], unit: ShowUnit): readonly Block[] =>
  read.length === 0
    ? [paragraph(null, 'No panel was read.')]
    : [
        filmTable(
          read,
          {
            title: 'condition',
            cellOf: ({ condition }) => cell(condition),
          },
          unit,
        ),
      ];

export function unreadLine(surveyed: readonly PanelSurvey[]): readonly Block[] {
  const unread = surveyed.filter(({ points }) => points.length === 0).map(({ panel }) => panel);
  const names = panelNames(unread, unreadName);
  return unread.length === 0 ? [] : [paragraph('Not read', `${names.join(', ')}: nothing may go`)];
}

/** `rear bumper (plastic)`. */
const unreadName = ({ substrate }: Panel, name: string): string =>
  substrate === 'steel' || substrate === 'aluminium' ? name : `${name} (${substrate})`;

/** Points that enter no statistic, with where they lie. */
function offFace(surveyed: readonly PanelSurvey[], unit: ShowUnit): readonly Block[] {
  const apart = surveyed
    .filter(({ otherPoints }) => otherPoints.length > 0)
    .map((survey) => `${survey.panel.name} ${pointsOffFace(survey, unit)}`);
  return apart.length === 0 ? [] : [paragraph('Off the face, kept apart', apart.join('; '))];
}

/** What stands out, in words, panels of which the same is to be said together; those of factory film have nothing to say. */
function evidenceLines(read: readonly PanelSurvey[], unit: ShowUnit): readonly Block[] {
  const said = read
    .filter(
      ({ condition, lowPoints, highPoints, keyingSlips, budget }) =>
        condition !== 'original' ||
        lowPoints.length + highPoints.length + keyingSlips.length > 0 ||
        budget === 0,
    )
    .map((survey) => {
      const evidence = (
        survey.condition === 'original' ? survey.evidence.filter(isQuestion) : survey.evidence
      ).map((one) => textIn(one, unit));
      const flags = [
        ...flagged(survey, survey.lowPoints, 'low', unit),
        ...flagged(survey, survey.highPoints, 'high', unit),
      ];
      const text = [...evidence, ...flags, ...nothing(survey, unit)].join('; ');
      return { name: survey.panel.name, text };
    });
  return [...groupBy(said, ({ text }) => text)].map(([text, group]) =>
    paragraph(group.map(({ name }) => name).join(', '), text),
  );
}

/** Why nothing at all may go. */
const nothing = ({ budget, boundBy, zones }: PanelSurvey, unit: ShowUnit): readonly string[] =>
  budget === 0 && zones.length === 0 ? [`nothing may go: ${textIn(boundBy, unit)}`] : [];

/** `low for this panel: point 2 (225.5)`. */
function flagged(
  { points }: PanelSurvey,
  names: readonly string[],
  side: 'low' | 'high',
  unit: ShowUnit,
): readonly string[] {
  const found = points.filter(({ point }) => names.includes(point));
  const told = found.map(({ point, thickness: film }) => `${point} (${thickness(film, unit)})`);
  const word = found.length === 1 ? 'point' : 'points';
  return found.length === 0 ? [] : [`${side} for this panel: ${word} ${told.join(', ')}`];
}

const helpBlock = (
  surveyed: readonly PanelSurvey[],
  helped: SurveyHelp,
  unit: ShowUnit,
): readonly Block[] => {
  const lines = helpLines(surveyed, helped);
  return lines.length === 0
    ? []
    : [
        list(
          'What would help, a panel at best',
          lines.map((one) => tell(one, unit)),
        ),
      ];
};

/** What is asked of the readings themselves is worth a word on any panel. */
const isQuestion = ({ code }: Remark): boolean => code === 'keying-slip';

/** What the panels of factory film say together of how much film varies over a panel. */
function spreadLine({ survey: { spreadPrior } }: SurveyResult, unit: ShowUnit): Block {
  const { variance, dof, dofCeiling } = spreadPrior;
  const from = Number.isFinite(dofCeiling)
    ? `on ${shown(dofCeiling, 0)} degrees of freedom in all`
    : 'assumed, as too few panels of factory film tell';
  const said = says`SD s0 ${um(Math.sqrt(variance))} over a panel, ${from}; each panel is drawn towards it with the weight of d0 ${shown(dof, 1)}`;
  return paragraph('Spread', tell(said, unit));
}

const limitsList = (read: readonly PanelSurvey[], unit: ShowUnit): readonly Block[] => [
  list(
    `Every limit, and the median removal it allows (${unitName(unit)})`,
    read
      .flatMap(partsOf)
      .flatMap((survey) => [
        partName(survey),
        ...survey.limits.map((one) =>
          tell(says`\u00a0\u00a0${thickness(one.value, unit, 2)}: ${saying(one)}`, unit),
        ),
      ]),
  ),
];

const SAID_UP_FRONT = 'strict-policy';

export function assumptionBlocks(
  { assumptions, inputs, settings }: Pick<SurveyResult, 'assumptions' | 'inputs' | 'settings'>,
  { unit, verbose }: PageOptions,
): readonly Block[] {
  const texts = assumptions
    .filter(({ code }) => code !== SAID_UP_FRONT)
    .map((one) => textIn(one, unit));
  return [
    ...(texts.length === 0 ? [] : [paragraph('Assumed', `${texts.join('; ')}.`)]),
    ...(verbose ? ownSettings(settings) : []),
    ...(verbose ? [list('Inputs', inputs.flatMap(inputLines))] : []),
  ];
}

const ownSettings = ({ effective }: Settings): readonly Block[] => {
  const own = effective.filter(isOwn);
  return own.length === 0 ? [] : [settingsList('Settings that are not built in', own)];
};

const inputLines = ({ file, decisions }: SurveyResult['inputs'][number]): readonly string[] =>
  decisions === null
    ? [shownFile(file)]
    : [`${shownFile(file)}:`, ...decisionLines(decisions, MOST_LINES).map((text) => `  ${text}`)];

/** Lines about how one file was read. */
const MOST_LINES = 16;
