import { shownFile } from '../base/file-name.ts';
import { type Remark, saying, textIn } from '../base/remark.ts';
import { roundTo, shown } from '../base/rounding.ts';
import { says, tell, um, unitName } from '../base/sentence.ts';
import { expandedUncertainty } from '../base/uncertainty.ts';
import { type PanelSurvey, partsOf } from '../film/survey.ts';
import type { Panel } from '../film/template.ts';
import { isOwn } from '../tasks/effective-settings.ts';
import type { Settings } from '../tasks/settings.ts';
import type { SurveyHelp, SurveyReport } from '../tasks/survey-help.ts';
import type { SurveyResult } from '../tasks/survey-vehicle.ts';
import { decisionLines } from './decision-lines.ts';
import { filmTable, partName, type ShowUnit, thickness } from './film-table.ts';
import { helpLines } from './help-lines.ts';
import { type Block, cell, gap, list, paragraph, title } from './model.ts';
import { factsList, statedBlock } from './panel-facts.ts';
import { settingsList } from './settings-list.ts';
import { chosen } from './survey-record.ts';
import { whyBlocks } from './why-blocks.ts';
import { counted } from './words.ts';

export type PageOptions = { readonly unit: ShowUnit; readonly verbose: boolean };

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
    ...sureness(read, unit),
    gap,
    ...evidenceLines(read, unit),
    ...result.survey.notes.map((note) => paragraph('Note', textIn(note, unit))),
    ...helpBlock(surveyed, helped, unit),
    ...statedBlock(read, result, unit),
    ...(options.verbose
      ? [...factsList(read, result, unit), spreadLine(result, unit), ...limitsList(read, unit)]
      : []),
    ...assumptionBlocks(result, options),
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
  if (unread.length === 0) return [];
  const names = new Set(unread.map((panel) => unreadName(panel, unread)));
  return [paragraph('Not read', `${[...names].join(', ')}: no data, nothing may go`)];
}

/** How well the means are known, and the clear that the limit of that name rests on. */
function sureness(read: readonly PanelSurvey[], unit: ShowUnit): readonly Block[] {
  const parts = read.flatMap(partsOf).filter(({ topcoat }) => topcoat !== null);
  const means = parts.flatMap(({ uncertainty }) =>
    uncertainty === null ? [] : [expandedUncertainty(uncertainty)],
  );
  if (means.length === 0) return [];
  const known = parts.flatMap(({ topcoat }) => topcoat ?? []);
  const clears = known.map(({ clear }) => Math.max(0, clear.mean));
  const doubts = known.map(({ clear }) => clear.sd);
  const floors = [...new Set(known.map(({ clearFloor }) => clearFloor))];
  const range = (values: readonly number[]): string => {
    const [low, high] = [Math.min(...values), Math.max(...values)].map((one) =>
      thickness(one, unit),
    );
    return low === high ? `${low}` : `${low}–${high}`;
  };
  const clear = `clear on the thinnest part ${range(clears)}\u00a0± ${range(doubts)} expected, ${range(floors)} must stay`;
  return [
    paragraph(
      'How sure',
      `on sound panels each mean to ± ${range(means)} ${unitName(unit)} (95\u00a0%); ${clear}; --why takes a panel apart`,
    ),
  ];
}

/** `rear bumper (plastic)`; `both sills` where the panel of the other side is unread too. */
function unreadName({ name, mirror, substrate }: Panel, unread: readonly Panel[]): string {
  const both = mirror !== null && unread.some(({ id }) => id === mirror);
  const shownName = both ? `both ${name.replace(/\b(left|right) /, '')}s` : name;
  const metal = substrate === 'steel' || substrate === 'aluminium';
  return metal ? shownName : `${shownName} (${substrate})`;
}

/** What stands out, in words; panels in line with factory film have nothing to say. */
function evidenceLines(read: readonly PanelSurvey[], unit: ShowUnit): readonly Block[] {
  return read
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
      return paragraph(
        survey.panel.name,
        [...evidence, ...flags, ...nothing(survey, unit)].join('; '),
      );
    });
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
          'What would help, each at best',
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
