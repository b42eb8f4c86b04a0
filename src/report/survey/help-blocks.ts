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
import { adviceLine, adviceOf, edgeText, minutes, NOT_TO_ADD, signed } from './help-lines.ts';
import { MEANS } from './help-means.ts';
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
  const ofOthers = gains.filter(({ part }) => !isToldApart(part));
  const first = readAgainLines(gains, parts, unit);
  const further = [
    ...smallGains(ofOthers, gains, parts).map((one) => tell(one, unit)),
    ...withoutFigure(read, page.helped, unit),
  ];
  const zinc = ofOthers.filter(({ code, gain }) => code === 'zinc' && Math.abs(gain) >= LEAST_TOLD);
  const anyUnread = surveyed.some(({ condition }) => condition === 'unread');
  return [
    ...gainBlocks(gains, parts, { ...page, first, further, anyUnread }, unit),
    ...(zinc.length === 0
      ? []
      : [
          paragraph(
            zinc.some(({ gain }) => gain > 0) ? 'Would change it' : 'Would lower it',
            tell(says`zinc, if there is any: ${groupsText(zinc, parts)}`, unit),
          ),
        ]),
  ];
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
  return gains.flatMap(({ code, part, gain, time, elsewhere = [] }) => {
    const others = elsewhere.filter((one) => one.gain >= LEAST_TOLD);
    const isFirst =
      (part.budget < LEAST_TOLD && gain >= LEAST_TOLD) ||
      others.some((one) => one.gain >= WEIGHS_ON_OTHERS);
    if (code !== 'read-again' || !isFirst) return [];
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

/** µm that a doubtful reading takes from another panel. */
const WEIGHS_ON_OTHERS = 0.5;

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

/**
 * What comes `first`, then what each thing is and takes, then what each panel gains: where that makes a long table, from
 * least to most, but for panels that are told apart. What is `further` to be said comes last.
 */
function gainBlocks(
  gains: readonly Gain[],
  parts: readonly PanelSurvey[],
  page: HelpPage & {
    readonly first: readonly Said[];
    readonly further: readonly Said[];
    readonly anyUnread: boolean;
  },
  unit: LengthUnit,
): readonly Block[] {
  const worth = gains.filter(({ gain }) => gain >= LEAST_TOLD);
  const columns = columnsOf(worth);
  if (columns.length === 0) {
    return besides('What would help', [...page.first, ...page.further]);
  }
  const coat = coatName(parts);
  const rows = gainRows(worth, columns, unit);
  const isLong = rows.length > MOST_ROWS && !page.verbose;
  const lines = columns.flatMap((code) => {
    const own = worth.filter((one) => one.code === code && !(isLong && isToldApart(one.part)));
    if (own.length === 0) return [];
    const gained = isLong ? tell(says` ${groupsText(own, parts)}`, unit) : '';
    const [first, ...more] = MEANS[code](own, { parts, result: page.result }).map((one) =>
      tell(one, unit),
    );
    const said = `${titleOf(code, coat)}${gained}: ${first}`;
    const text = [said, ...more].join('; ');
    return [{ text, facts: [said, ...more.map((one) => `${titleOf(code, coat)}: ${one}`)] }];
  });
  // In one line of 80 columns.
  const apart = page.anyUnread
    ? ' (unread: unknown); each alone, if as reckoned'
    : `; ${NOT_TO_ADD}`;
  const label = {
    text: `What would help, ${unitName(unit)} more may go${apart}`,
    short: 'What would help',
  };
  const told = [...page.first, ...lines, ...(isLong ? page.further : [])];
  return isLong
    ? [list(label, told)]
    : [
        list(label, told),
        gainTable(rows, columns, { coat, unit }),
        ...besides('Besides', page.further),
      ];
}

/** Of a table of gains, so that a car keeps to a page; `-v` has them all. */
const MOST_ROWS = 4;

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

/** The panels with what to do on them. */
function withoutFigure(
  read: readonly PanelSurvey[],
  helped: SurveyHelp,
  unit: LengthUnit,
): readonly Facts[] {
  // What is unread has a line of its own, with what to do.
  const told = read
    .filter(({ condition }) => condition !== 'unread')
    .flatMap((panel) => [panel, ...panel.zones])
    .flatMap((part) => {
      const advice = adviceOf(part, helped)
        .filter(({ code, value }) => value === undefined && !SAID_ELSEWHERE.includes(code))
        .map(adviceLine);
      return advice.length === 0
        ? []
        : [{ part, said: toldFacts(joinSentences(advice, nextFact), unit) }];
    });
  return [...groupBy(told, ({ said }) => said.text).values()].map((group) =>
    about(panelNames(group.map(({ part }) => part.panel)).join(', '), group[0].said),
  );
}
