import { groupBy } from '../base/group-by.ts';
import { roundTo, shown } from '../base/rounding.ts';
import type { PanelSurvey } from '../film/survey.ts';
import type { Panel } from '../film/template.ts';
import { isOwn } from '../tasks/effective-settings.ts';
import type { Settings } from '../tasks/settings.ts';
import type { SurveyResult } from '../tasks/survey-vehicle.ts';
import { filmTable, partName, type ShowUnit, thickness, unitName } from './film-table.ts';
import { type Block, cell, gap, list, paragraph, title } from './model.ts';
import { factsList } from './panel-facts.ts';
import { settingsList } from './settings-list.ts';
import { chosen } from './survey-record.ts';
import { counted } from './words.ts';

export type PageOptions = { readonly unit: ShowUnit; readonly verbose: boolean };

/** The survey as a page. */
export function surveyBlocks(
  result: SurveyResult,
  panels: readonly Panel[],
  options: PageOptions,
): readonly Block[] {
  const surveyed = chosen(result.survey.panels, panels);
  const read = surveyed.filter(({ points }) => points.length > 0);
  return [
    title(heading('Survey', result, read)),
    ...readNotes(result, options),
    gap,
    ...readTable(read, options.unit),
    ...unreadLine(surveyed),
    gap,
    ...evidenceLines(read),
    ...result.survey.notes.map(({ text }) => paragraph('Note', text)),
    ...adviceLines(surveyed),
    ...(options.verbose ? [...factsList(read, result), ...limitsList(read, options.unit)] : []),
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
      : `Baseline ${thickness(survey.baseline, unit)} ${unitName(unit)}.`;
  const risk = shown(100 * settings.terms.risk, 1);
  return [paragraph(null, `${baseline} ${legend(settings)} Limits kept at ${risk}\u00a0% risk.`)];
}

/** What the columns of the film table mean. */
export const legend = ({ film }: Settings): string =>
  `‹ thin: least film credible on ${roundTo(100 * film.tolerance.content, 1)}\u00a0% of the face; may go: median removal within every limit; ┊ floor.`;

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

/** `rear bumper (plastic)`; `both sills` where the panel of the other side is unread too. */
function unreadName({ name, mirror, substrate }: Panel, unread: readonly Panel[]): string {
  const both = mirror !== null && unread.some(({ id }) => id === mirror);
  const shownName = both ? `both ${name.replace(/\b(left|right) /, '')}s` : name;
  const metal = substrate === 'steel' || substrate === 'aluminium';
  return metal ? shownName : `${shownName} (${substrate})`;
}

/** What stands out, in words; panels in line with factory film have nothing to say. */
function evidenceLines(read: readonly PanelSurvey[]): readonly Block[] {
  return read
    .filter(({ condition, lowPoints, highPoints }) => {
      return condition !== 'original' || lowPoints.length + highPoints.length > 0;
    })
    .map((survey) => {
      const evidence =
        survey.condition === 'original' ? [] : survey.evidence.map(({ text }) => text);
      const low =
        survey.lowPoints.length === 0 ? [] : [`low at point ${survey.lowPoints.join(', ')}`];
      const high =
        survey.highPoints.length === 0 ? [] : [`high at point ${survey.highPoints.join(', ')}`];
      return paragraph(survey.panel.name, [...evidence, ...low, ...high].join('; '));
    });
}

/** Advice by what to do, with the panels it is for. */
function adviceLines(surveyed: readonly PanelSurvey[]): readonly Block[] {
  const pairs = surveyed
    .filter(({ points }) => points.length > 0)
    .flatMap(({ panel, advice }) => advice.map(({ text }) => ({ text, name: panel.name })));
  const groups = [...groupBy(pairs, ({ text }) => text)];
  const all = surveyed.filter(({ points }) => points.length > 0).length;
  return groups.length === 0
    ? []
    : [
        list(
          'What would help',
          groups.map(([text, group]) =>
            group.length === all ? text : `${text}: ${group.map(({ name }) => name).join(', ')}`,
          ),
        ),
      ];
}

/** A panel, or in place of a mixed one its zones. */
const partsOf = (survey: PanelSurvey): readonly PanelSurvey[] =>
  survey.zones.length === 0 ? [survey] : survey.zones;

const limitsList = (read: readonly PanelSurvey[], unit: ShowUnit): readonly Block[] => [
  list(
    `Every limit, and the median removal it allows (${unitName(unit)})`,
    read
      .flatMap(partsOf)
      .flatMap((survey) => [
        partName(survey),
        ...survey.limits.map(
          ({ text, value }) => `\u00a0\u00a0${thickness(value, unit, 2)}: ${text}`,
        ),
      ]),
  ),
];

export function assumptionBlocks(
  { assumptions, inputs, settings }: SurveyResult,
  { verbose }: PageOptions,
): readonly Block[] {
  const texts = assumptions.map(({ text }) => text);
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

const inputLines = ({ file, decisions }: SurveyResult['inputs'][number]): readonly string[] => [
  decisions === null
    ? file
    : `${file}: ${decisions.encoding}, ${decisions.layout} layout, readings in ${unitName(decisions.unit)}`,
  ...(decisions?.evidence ?? []).map((text) => `  ${text}`),
];
