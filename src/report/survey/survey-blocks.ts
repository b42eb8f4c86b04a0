import { shownFile } from '../../base/file-name.ts';
import { groupBy } from '../../base/group-by.ts';
import { type Remark, saying, textIn } from '../../base/remark.ts';
import { roundTo, shown } from '../../base/rounding.ts';
import { type Sentence, says, tell, um, unitName } from '../../base/sentence.ts';
import { expandedUncertainty } from '../../base/uncertainty.ts';
import { isFactoryFilm, needsUltrasound } from '../../film/condition/condition.ts';
import { removalFactor } from '../../film/limits/allowance-steps.ts';
import { type PanelSurvey, partsOf } from '../../film/survey.ts';
import type { Panel } from '../../film/template/template.ts';
import { isOwn } from '../../tasks/settings/effective-settings.ts';
import type { Settings } from '../../tasks/settings/settings.ts';
import type { SurveyReport } from '../../tasks/survey/survey-help.ts';
import type { SurveyResult } from '../../tasks/survey/survey-vehicle.ts';
import { type Block, cell, gap, list, paragraph, title } from '../model.ts';
import { factsList, statedBlock } from '../panel-facts.ts';
import { panelNames } from '../panel-list.ts';
import { pointsOffFace } from '../point-lines.ts';
import { decisionLines } from '../read/decision-lines.ts';
import { settingsList } from '../settings-list.ts';
import { counted } from '../words.ts';
import { clearAssumptions } from './clear-basis.ts';
import { mostOfDoubt } from './doubt-sources.ts';
import { filmTable, limitWord, partName, type ShowUnit, thickness } from './film-table.ts';
import { helpBlocks } from './help-blocks.ts';
import { isNear, nearTheLine, sureness, surenessList } from './sureness-blocks.ts';
import { sureOf } from './sureness-lines.ts';
import { surveyDrawings } from './survey-drawings.ts';
import { chosen } from './survey-record.ts';
import { isOfFilm, whyBlocks } from './why-blocks.ts';

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
    ...readNotes(result, read, options),
    gap,
    ...readTable(read, unit),
    ...offFace(surveyed, unit),
    ...(read.length === 0 ? [] : sureness(read, result.settings, unit)),
    ...nearTheLine(read, unit),
    ...otherLimits(read, unit),
    ...evidenceLines(read, unit),
    ...unreadBlocks(surveyed, unit),
    ...result.survey.notes.map((note) => paragraph('Note', textIn(note, unit))),
    ...helpBlocks(surveyed, helped, unit),
    ...statedBlock(read, result, unit),
    ...(options.verbose
      ? [
          ...surenessList(surveyed, unit),
          ...factsList(read, result, unit),
          spreadLine(result, unit),
          ...limitsList(surveyed, unit),
        ]
      : []),
    ...assumptionBlocks(result, options, clearAssumptions(read, unit)),
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

function readNotes(
  { survey, settings }: SurveyResult,
  read: readonly PanelSurvey[],
  { unit }: PageOptions,
): readonly Block[] {
  const { baseline } = survey;
  const refinished = thickness(settings.film.conditions.refinished, unit, 0);
  const known =
    baseline === null
      ? `No baseline: no metal panel reads under ${refinished}.`
      : tell(says`Baseline (usual film) ${um(baseline)}${otherBaselines(read, baseline)}.`, unit);
  const risk = shown(100 * settings.terms.risk, 1);
  return [
    ...strictNote(settings),
    paragraph(
      null,
      `${known} ${legend(settings, read, unit)} Limits kept at ${risk}\u00a0% risk a panel${ifItHolds(read)}.`,
    ),
  ];
}

/** Where less may go on the other side of its line, the risk is that of the word alone. */
const ifItHolds = (read: readonly PanelSurvey[]): string =>
  read.some(({ otherSide }) => otherSide?.overBoth != null) ? ', ? if its word holds' : '';

/** `; without zinc under it 109.3 µm: bonnet`. */
function otherBaselines(read: readonly PanelSurvey[], usual: number): Sentence {
  const others = read.filter(({ baseline }) => baseline !== null && baseline !== usual);
  const [first] = others;
  if (first === undefined) return [];
  const zinc = first.facts.galvanised ? 'with' : 'without';
  const names = panelNames(others.map(({ panel }) => panel)).join(', ');
  return says`; ${zinc} zinc under the paint ${um(first.baseline ?? usual)}: ${names}`;
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
  const floors = [...new Set(read.map(({ totalFloor }) => totalFloor))].sort((a, b) => a - b);
  const told = floors.map((floor) => thickness(floor, unit, 0)).join(' or ');
  const floor = floors.length === 0 ? '' : `, ${told} ${unitName(unit)}`;
  const scatter = shown(removalFactor(terms), 1);
  return `‹ least: credible on ${content}\u00a0% of the face; may go: middle of a removal that may be ${scatter} times as much; ┊ total floor${floor}.`;
}

export const readTable = (read: readonly PanelSurvey[], unit: ShowUnit): readonly Block[] =>
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

export function unreadLine(surveyed: readonly PanelSurvey[]): readonly Block[] {
  const unread = surveyed.filter(({ points }) => points.length === 0).map(({ panel }) => panel);
  const names = panelNames(unread, unreadName);
  return unread.length === 0 ? [] : [paragraph('Not read', `${names.join(', ')}: nothing may go`)];
}

/** `rear bumper (plastic)`. */
const unreadName = ({ substrate }: Panel, name: string): string =>
  substrate === 'steel' || substrate === 'aluminium' ? name : `${name} (${substrate})`;

/** Of what is unread: what it is made of, whether a gauge reads it, what would help. */
function unreadBlocks(surveyed: readonly PanelSurvey[], unit: ShowUnit): readonly Block[] {
  const said = surveyed
    .filter(({ condition }) => condition === 'unread')
    .map(({ panel, advice }) => {
      const help = advice.map((one) => textIn(one, unit)).join(', ');
      const why = needsUltrasound(panel) ? ', which a gauge for metal does not read' : '';
      return { panel, text: `${panel.substrate}${why}: ${help}` };
    });
  const groups = [...groupBy(said, ({ text }) => text)].map(
    ([text, group]) => `${panelNames(group.map(({ panel }) => panel)).join(', ')} (${text})`,
  );
  return groups.length === 0
    ? []
    : [paragraph('Unread, so nothing is sure and nothing may go', groups.join('; '))];
}

/** What binds where it is not the clear, of panels from which something may go; the table says which. */
function otherLimits(read: readonly PanelSurvey[], unit: ShowUnit): readonly Block[] {
  const told = read
    .flatMap(partsOf)
    .filter(({ budget, boundBy }) => budget > 0 && boundBy.code !== 'clear')
    .map((part) => `${limitWord(part.boundBy.code, part)}: ${textIn(part.boundBy, unit)}`);
  return [...new Set(told)].map((text) => paragraph('Bound by', text));
}

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
        lowPoints.length + highPoints.length + keyingSlips.length > 0 ||
        // What is unread has a line of its own.
        (condition !== 'unread' && (condition !== 'original' || budget === 0)),
    )
    .map((survey) => {
      const told = survey.evidence
        .filter(survey.condition === 'original' ? isQuestion : isOfFilm)
        .map((one) => textIn(one, unit));
      const flags = [
        ...flagged(survey, survey.lowPoints, 'low', unit),
        ...flagged(survey, survey.highPoints, 'high', unit),
      ].map((said) => (isFactoryFilm(survey.condition) ? `${said}; read it again` : said));
      const word = survey.condition === 'original' ? [] : [tell(wordText(survey), unit)];
      const text = [...word, ...told, ...flags, ...nothing(survey, unit)].join('; ');
      return { name: survey.panel.name, text };
    });
  return [...groupBy(said, ({ text }) => text)].map(([text, group]) =>
    paragraph(group.map(({ name }) => name).join(', '), text),
  );
}

/** `thin, 99.9 % sure, and cut-back, over 99.9 % sure; mean ± 5.1 µm`: every word with how sure it is. */
function wordText({
  condition,
  also,
  sureness: found,
  uncertainty,
  keyingSlips,
}: PanelSurvey): Sentence {
  const isTold = found !== null && keyingSlips.length === 0;
  const words = [condition, ...also].map((word, i) => {
    const own = i === 0 ? found?.deciding : found?.beside.find((one) => one.condition === word);
    if (!isTold || own === undefined) return word;
    const why = own.otherSide > SURE_ENOUGH ? `, for ${mostOfDoubt(own.difference)}` : '';
    return `${word}, ${sureOf(own)}${i === 0 ? '' : why}`;
  });
  // Over filler film is not of one kind: its mean says nothing.
  const mean =
    uncertainty === null || condition === 'filler'
      ? []
      : says`; mean to ± ${um(expandedUncertainty(uncertainty))}`;
  return says`${words.join(', and ')}${mean}`;
}

/** Chance of the other side that asks for no reason. */
const SURE_ENOUGH = 0.05;

/** Why nothing at all may go, and what may after a test spot. */
const nothing = (survey: PanelSurvey, unit: ShowUnit): readonly string[] =>
  survey.budget === 0 && survey.zones.length === 0
    ? [
        `nothing may go: ${textIn(survey.boundBy, unit)}`,
        ...survey.evidence.filter((one) => !isOfFilm(one)).map((one) => textIn(one, unit)),
      ]
    : [];

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

/** The risk stands over the table of a survey. */
const RISK = 'risk';
const SAID_UP_FRONT = 'strict-policy';

export function assumptionBlocks(
  { assumptions, inputs, settings }: Pick<SurveyResult, 'assumptions' | 'inputs' | 'settings'>,
  { unit, verbose }: PageOptions,
  first: readonly string[] = [],
): readonly Block[] {
  const texts = [
    ...first,
    ...assumptions
      .filter(({ code }) => code !== SAID_UP_FRONT && (first.length === 0 || code !== RISK))
      .map((one) => textIn(one, unit)),
  ];
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
