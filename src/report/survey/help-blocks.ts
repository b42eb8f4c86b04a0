/** What would help, over a car: what it frees panel by panel, then what has no figure or frees next to nothing. */
import { groupBy } from '../../base/group-by.ts';
import { LEAST_TOLD, shown } from '../../base/rounding.ts';
import {
  joinSentences,
  nextFact,
  type Sentence,
  says,
  tell,
  unitName,
} from '../../base/sentence.ts';
import type { LengthUnit } from '../../base/units.ts';
import type { PartGain } from '../../film/help/what-would-help.ts';
import { type PanelSurvey, partName, partsOf } from '../../film/survey.ts';
import { panelNames } from '../../film/template/side-names.ts';
import type { SurveyHelp } from '../../tasks/survey/survey-help.ts';
import type { SurveyResult } from '../../tasks/survey/survey-vehicle.ts';
import { about, joined, toldFacts } from '../facts.ts';
import { type Block, type Facts, list, paragraph, type Said } from '../model.ts';
import { whichPanels } from '../panel-list.ts';
import { coatName } from './coat-name.ts';
import { flagText } from './evidence-lines.ts';
import { alikeGroups } from './gain-groups.ts';
import { gainRange, groupsText } from './gain-groups-text.ts';
import { columnsOf, type Gain, gainRows, gainTable, titleOf } from './gain-table.ts';
import {
  adviceLine,
  adviceOf,
  edgeText,
  isAskedFirst,
  minutes,
  NOT_TO_ADD,
  signed,
} from './help-lines.ts';
import { type HelpMeansOf, ifGone, lostToPatch, MEANS } from './help-means.ts';
import { hasRow, helpTable } from './help-table.ts';
import { isToldApart } from './own-gains.ts';

export type HelpPage = {
  readonly helped: SurveyHelp;
  readonly result: SurveyResult;
  /** Whether every panel's own gains are shown, however many there are. */
  readonly verbose: boolean;
};

export function helpBlocks(
  surveyed: readonly PanelSurvey[],
  page: HelpPage,
  unit: LengthUnit,
): readonly Block[] {
  const read = surveyed.filter(({ points }) => points.length > 0);
  const parts = read.flatMap(partsOf);
  const gains = parts.flatMap((part) =>
    (page.helped.get(part) ?? [])
      .filter(({ code }) => code !== 'history' || !isOnFilmRecord(part))
      .map((help) => ({ ...help, part })),
  );
  const first = readAgainLines(gains, parts, unit);
  const withoutGain = withoutFigure(read, page, unit);
  if (!page.verbose) {
    return [
      ...besides('What would help first', first),
      ...helpTable(gains, parts, unit),
      ...besides('To do', withoutGain),
      ...lowering(gains, { parts, result: page.result }, unit),
    ];
  }
  const ofOthers = gains.filter(({ part }) => !isToldApart(part));
  const small = smallGains(ofOthers, gains, parts).map((one) => tell(one, unit));
  const zinc = ofOthers.filter(({ code, gain }) => code === 'zinc' && Math.abs(gain) >= LEAST_TOLD);
  return [
    ...gainBlocks(gains, parts, { ...page, first, further: [...small, ...withoutGain] }, unit),
    ...(zinc.length === 0
      ? []
      : [
          paragraph(
            labelOf(zinc),
            tell(says`zinc under steel, if there is any: ${groupsText(zinc, parts)}`, unit),
          ),
        ]),
  ];
}

/** `Would lower it`, unless a part of it gains. */
const labelOf = (zinc: readonly Gain[]): string =>
  zinc.some(({ gain }) => gain > 0) ? 'Would change it' : 'Would lower it';

/** In short what takes film away: earlier work, a thin clear, zinc, the patch of a spot. */
function lowering(
  gains: readonly Gain[],
  { parts, result }: HelpMeansOf,
  unit: LengthUnit,
): readonly Block[] {
  const zinc = gains.filter(({ code, gain }) => code === 'zinc' && Math.abs(gain) >= LEAST_TOLD);
  const rowOf = (code: Gain['code']) => gains.filter((one) => one.code === code && hasRow(one));
  const told = [
    ...ifGone(rowOf('history')),
    ...(rowOf('clear').length === 0 ? [] : [says`thin ${coatName(parts)}`]),
    ...(zinc.length === 0
      ? []
      : [says`zinc under steel: ${gainRange(zinc.map(({ gain }) => gain))}`]),
    ...(rowOf('test-spot').length === 0 ? [] : lostToPatch(parts, result)),
  ];
  return told.length === 0
    ? []
    : [paragraph(labelOf(zinc), toldFacts(joinSentences(told, nextFact), unit))];
}

/** It was polished, so nobody finds out that it never was; what test spots took is gone from their patches alone. */
const isOnFilmRecord = ({ facts: { recorded } }: PanelSurvey): boolean =>
  recorded !== null && recorded.by !== 'test spots';

/**
 * `front right wing: point 5 (71.0) is low, read it again, 1 min: +3.51 µm if as the others, nothing if it reads the
 * same; …`: a doubtful reading from which nothing may go, or which weighs on the whole car, is asked about first. What
 * another frees stands beside it, where it is told that it stands out.
 */
function readAgainLines(
  gains: readonly Gain[],
  parts: readonly PanelSurvey[],
  unit: LengthUnit,
): readonly Facts[] {
  return gains.flatMap((help) => {
    const { part, gain, time, elsewhere = [] } = help;
    const others = elsewhere.filter((one) => one.gain >= LEAST_TOLD);
    if (!isAskedFirst(help, part)) return [];
    const isOne = part.lowPoints.length + part.highPoints.length === 1;
    const [it, reads] = isOne ? ['it', 'it reads'] : ['them', 'they read'];
    const takes = time === null ? '' : `, ${minutes(time)}`;
    const edge = gains.find((one) => one.part === part && one.code === 'edge-point');
    const facts = [
      says`${flagText(part, unit).join(', ')}, read ${it} again${takes}: ${signed(gain)} if as the others, nothing if ${reads} the same`,
      ...(others.length === 0 ? [] : [says`others gain with it ${othersText(others, parts)}`]),
      ...(edge === undefined ? [] : [says`${edgeText(part)}: ${signed(edge.gain)}`]),
    ];
    return [about(partName(part), toldFacts(joinSentences(facts, nextFact), unit))];
  });
}

function othersText(others: readonly PartGain[], parts: readonly PanelSurvey[]): Sentence {
  const groups = alikeGroups(others).map((group) => {
    const which = whichPanels(
      group.map(({ part }) => part),
      parts,
    );
    return says`${gainRange(group.map(({ gain }) => gain))} (${which})`;
  });
  return joinSentences(groups, ', ');
}

/** A few on one line, more on one each. */
function besides(label: string, told: readonly Said[]): readonly Block[] {
  if (told.length === 0) return [];
  return [told.length > MOST_ON_A_LINE ? list(label, told) : paragraph(label, joined(told, '; '))];
}

const MOST_ON_A_LINE = 2;

/** What comes `first`, then what each thing is and takes, then what each panel gains, then what is `further` to be said. */
function gainBlocks(
  gains: readonly Gain[],
  parts: readonly PanelSurvey[],
  page: HelpPage & { readonly first: readonly Said[]; readonly further: readonly Said[] },
  unit: LengthUnit,
): readonly Block[] {
  const worth = gains.filter(({ gain }) => gain >= LEAST_TOLD);
  const columns = columnsOf(worth);
  if (columns.length === 0) {
    return besides('What would help', [...page.first, ...page.further]);
  }
  const coat = coatName(parts);
  const lines = columns.map((code) => {
    const own = worth.filter((one) => one.code === code);
    const means = MEANS[code](own, { parts, result: page.result }).map((one) => tell(one, unit));
    const title = titleOf(code, coat);
    return {
      text: `${title}: ${means.join('; ')}`,
      facts: means.map((one) => `${title}: ${one}`),
    };
  });
  const label = {
    text: `What would help, ${unitName(unit)} more may go; ${NOT_TO_ADD}`,
    short: 'What would help',
  };
  return [
    list(label, [...page.first, ...lines]),
    gainTable(gainRows(worth, columns, unit), columns, { coat, unit }),
    ...besides('What would help besides', page.further),
  ];
}

/** More points and a checked gauge: asked first, and worth little. The gauge is that of every panel. */
function smallGains(
  gains: readonly Gain[],
  all: readonly Gain[],
  parts: readonly PanelSurvey[],
): readonly Sentence[] {
  const points = groupBy(
    gains.filter(({ code, gain }) => code === 'points' && gain >= LEAST_TOLD),
    ({ points: count, time }) => `${count} ${time}`,
  );
  const gauge = all.filter(({ code }) => code === 'gauge');
  return [
    ...[...points.values()].map((group) => {
      const [{ points: count, time }] = group;
      const takes = time === null ? '' : `, ${minutes(time)} each`;
      return says`${count ?? 0} points on a panel${takes}: ${groupsText(group, parts)}`;
    }),
    ...(gauge.length === 0 ? [] : [gaugeLine(gauge)]),
  ];
}

function gaugeLine(group: readonly Gain[]): Sentence {
  const share = Math.max(...group.map(({ doubtShare = 0 }) => doubtShare));
  const range = gainRange(group.map(({ gain }) => gain));
  return says`gauge checked on shims: ${range} where any may go, ${shown(100 * share, 1)} % of its doubt`;
}

/**
 * What would settle a word stands beside that, what nothing helps first of all, and which point is to be read again
 * where it is told that it stands out.
 */
const SAID_ELSEWHERE: readonly string[] = ['settle', 'settle-clear', 'beyond-help'];
/** What frees no film. */
const SAID_IN_FULL: readonly string[] = ['repair-edge'];

/** The panels with what to do on them. */
function withoutFigure(
  read: readonly PanelSurvey[],
  { helped, verbose }: HelpPage,
  unit: LengthUnit,
): readonly Facts[] {
  const elsewhere = verbose ? SAID_ELSEWHERE : [...SAID_ELSEWHERE, ...SAID_IN_FULL];
  // What is unread has a line of its own, with what to do.
  const told = read
    .filter(({ condition }) => condition !== 'unread')
    .flatMap((panel) => [panel, ...panel.zones])
    .flatMap((part) => {
      const advice = adviceOf(part, helped)
        .filter(({ code, value }) => value === undefined && !elsewhere.includes(code))
        .map(adviceLine);
      return advice.length === 0
        ? []
        : [{ part, said: toldFacts(joinSentences(advice, nextFact), unit) }];
    });
  return [...groupBy(told, ({ said }) => said.text).values()].map((group) =>
    about(panelNames(group.map(({ part }) => part.panel)).join(', '), group[0].said),
  );
}
