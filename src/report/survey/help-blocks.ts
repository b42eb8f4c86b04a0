/** What would help, over a car: what it frees panel by panel, then what has no figure or frees next to nothing. */
import { groupBy } from '../../base/group-by.ts';
import { shown } from '../../base/rounding.ts';
import {
  bare,
  type Sentence,
  says,
  tell,
  thicknessText,
  um,
  unitName,
} from '../../base/sentence.ts';
import { spotTakes } from '../../correction/spot/test-spot-forecast.ts';
import type { Help, HelpCode } from '../../film/help/what-would-help.ts';
import { type PanelSurvey, partsOf } from '../../film/survey.ts';
import type { SurveyHelp } from '../../tasks/survey/survey-help.ts';
import type { SurveyResult } from '../../tasks/survey/survey-vehicle.ts';
import { type Block, cell, list, paragraph } from '../model.ts';
import { panelNames, partNames, whichPanels } from '../panel-list.ts';
import { partName, type ShowUnit } from './film-table.ts';
import { alikeGroups } from './gain-groups.ts';
import { adviceLine, adviceOf, minutes, NOT_TO_ADD, ofDoubt, signed } from './help-lines.ts';
import { isToldApart } from './own-gains.ts';

type Gain = Help & { readonly part: PanelSurvey };

/** Gains that differ from panel to panel have a column each. */
const COLUMNS = ['history', 'clear', 'test-spot'] as const satisfies readonly HelpCode[];
type ColumnCode = (typeof COLUMNS)[number];

/** Less is written as nought. */
const LEAST_SHOWN = 0.005;

export type HelpPage = {
  readonly helped: SurveyHelp;
  readonly result: SurveyResult;
  /** Whether every panel's own gains are shown, however many there are. */
  readonly verbose: boolean;
};

export function helpBlocks(
  surveyed: readonly PanelSurvey[],
  page: HelpPage,
  unit: ShowUnit,
): readonly Block[] {
  const read = surveyed.filter(({ points }) => points.length > 0);
  const parts = read.flatMap(partsOf);
  const gains = parts.flatMap((part) =>
    (page.helped.get(part) ?? []).map((help) => ({ ...help, part })),
  );
  const further = [...smallGains(gains, parts), ...withoutFigure(read, page.helped)];
  const lowered = lowering(gains, parts);
  return [
    ...gainBlocks(gains, parts, { ...page, further }, unit),
    ...(lowered === null ? [] : [paragraph('Would lower it', tell(lowered, unit))]),
  ];
}

/** A few on one line, more on one each. */
function besides(label: string, lines: readonly Sentence[], unit: ShowUnit): readonly Block[] {
  const told = lines.map((one) => tell(one, unit));
  if (told.length === 0) return [];
  return [told.length > MOST_ON_A_LINE ? list(label, told) : paragraph(label, told.join('; '))];
}

const MOST_ON_A_LINE = 2;

/**
 * What each thing is and takes, then what each panel gains: where that makes a long table, from least to most.
 * What is `further` to be said comes last.
 */
function gainBlocks(
  gains: readonly Gain[],
  parts: readonly PanelSurvey[],
  page: HelpPage & { readonly further: readonly Sentence[] },
  unit: ShowUnit,
): readonly Block[] {
  const worth = gains.filter(({ gain }) => gain >= LEAST_SHOWN);
  const columns = COLUMNS.filter((code) => worth.some((one) => one.code === code)).sort(
    (one, other) => total(worth, other) - total(worth, one),
  );
  if (columns.length === 0) return besides('What would help', page.further, unit);
  const rows = gainRows(worth, columns, unit);
  const isLong = rows.length > MOST_ROWS && !page.verbose;
  const lines = columns.map((code) => {
    const own = worth.filter((one) => one.code === code);
    const how = HOW[code](own, page, parts);
    const gained = isLong ? groupsText(own, parts) : [];
    return says`${TITLES[code]}${gained.length === 0 ? '' : ' '}${gained}: ${how}`;
  });
  const told = [...(isLong ? [...apart(parts), ...lines, ...page.further] : lines)].map((line) =>
    tell(line, unit),
  );
  const label = `What would help, ${unitName(unit)} more may go; ${NOT_TO_ADD}`;
  return isLong
    ? [list(label, told)]
    : [
        list(label, told),
        gainTable(rows, columns, unit),
        ...besides('Besides', page.further, unit),
      ];
}

type GainRow = { readonly names: string; readonly cells: readonly string[] };

/** Panels of the same figures share a row. */
function gainRows(
  gains: readonly Gain[],
  columns: readonly ColumnCode[],
  unit: ShowUnit,
): readonly GainRow[] {
  const rows = [...groupBy(gains, ({ part }) => part)].map(([part, own]) => ({
    part,
    cells: columns.map((code) => {
      const found = own.find((one) => one.code === code);
      return found === undefined ? '–' : `+${thicknessText(found.gain, unit, 2)}`;
    }),
  }));
  const same = groupBy(
    rows.filter(({ cells }) => cells.some((text) => text !== '–')),
    ({ cells }) => cells.join(' '),
  );
  return [...same.values()].map((group) => ({
    names: group.map(({ part }) => partName(part)).join(', '),
    cells: group[0].cells,
  }));
}

const gainTable = (
  rows: readonly GainRow[],
  columns: readonly ColumnCode[],
  unit: ShowUnit,
): Block => ({
  kind: 'table',
  columns: [
    { title: 'panel', align: 'left' },
    ...columns.map(
      (code) =>
        ({
          title: TITLES[code],
          said: WOULD_HELP[code],
          align: 'right',
          unit: unitName(unit),
        }) as const,
    ),
  ],
  rows: rows.map(({ names, cells }) => [cell(names), ...cells.map((text) => cell(text))]),
});

/** Of a table of gains, so that a car keeps to a page; `-v` has them all. */
const MOST_ROWS = 4;

const total = (gains: readonly Gain[], code: HelpCode): number =>
  gains.reduce((sum, one) => (one.code === code ? sum + one.gain : sum), 0);

const TITLES: Readonly<Record<ColumnCode, string>> = {
  history: 'history',
  clear: 'clear read',
  'test-spot': 'test spot',
};

/** Read alone, a cell must not sound like something that was measured. */
const WOULD_HELP: Readonly<Record<ColumnCode, string>> = {
  history: 'would help: knowing its history: more may go',
  clear: 'would help: reading the clear: more may go',
  'test-spot': 'would help: a test spot: more may go',
};

type How = (own: readonly Gain[], page: HelpPage, parts: readonly PanelSurvey[]) => Sentence;

/** What each thing is, and what it takes. */
const HOW: Readonly<Record<ColumnCode, How>> = {
  history: () => says`if never polished (taken_um)`,
  clear: (own) => says`ultrasonic gauge that tells layers apart, ${timeOf(own)} a panel`,
  'test-spot': (own, { result }, parts) => {
    const takes = spotTakes(result.settings.correction);
    const lost = takes === null ? '' : says`; its patch loses ${um(takes)}${notOn(parts, takes)}`;
    return says`a patch polished, read before and after (leastcut spot), ${timeOf(own)} for all${lost}`;
  },
};

/** Of original panels those that may give less than the patch takes; of others it is told that nothing may go. */
function notOn(parts: readonly PanelSurvey[], takes: number): string {
  const less = parts.filter(({ condition, budget }) => condition === 'original' && budget < takes);
  return less.length === 0 ? '' : `, so not on ${partNames(less)}`;
}

function timeOf(gains: readonly Gain[]): string {
  const time = gains[0]?.time ?? null;
  return time === null ? '' : minutes(time);
}

/** More points and a checked gauge: asked first, and worth little. */
function smallGains(gains: readonly Gain[], parts: readonly PanelSurvey[]): readonly Sentence[] {
  const points = groupBy(
    gains.filter(
      ({ code, gain, part }) => code === 'points' && gain >= LEAST_SHOWN && !isToldApart(part),
    ),
    ({ points: count, time }) => `${count} ${time}`,
  );
  const gauge = gains.filter(({ code }) => code === 'gauge');
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
  return says`gauge checked on shims: ${gainRange(group)}; ${ofDoubt(share)}`;
}

/** What may be found out and takes film away from what may go. */
function lowering(gains: readonly Gain[], parts: readonly PanelSurvey[]): Sentence | null {
  const zinc = gains.filter(
    ({ code, gain, part }) => code === 'zinc' && gain <= -LEAST_SHOWN && !isToldApart(part),
  );
  return zinc.length === 0 ? null : says`zinc, if there is any: ${groupsText(zinc, parts)}`;
}

/** `+0.21 to +0.33 µm`, from the least change to the most; `within ± 0.01 µm` where some lose. */
function gainRange(group: readonly Gain[]): Sentence {
  const sizes = group.map(({ gain }) => gain).sort((a, b) => a - b);
  const [low, high] = [sizes[0] ?? 0, sizes.at(-1) ?? 0];
  if (low <= -LEAST_SHOWN && high >= LEAST_SHOWN) {
    return says`within ± ${um(Math.max(-low, high), 2)}`;
  }
  const [least, most] = high <= 0 ? [high, low] : [low, high];
  if (shown(least, 2) === shown(most, 2)) return signed(most);
  return says`${least < 0 ? '−' : '+'}${bare(Math.abs(least), 2)} to ${signed(most)}`;
}

/**
 * `+0.22 to +0.37 µm (boot lid, roof), +0.44 to +0.78 µm (the others)`: the largest group goes without its names
 * where it is all the rest. Those told apart are in none.
 */
function groupsText(gains: readonly Gain[], parts: readonly PanelSurvey[]): Sentence {
  const others = parts.filter((part) => !isToldApart(part));
  const own = gains.filter(({ part }) => others.includes(part));
  const groups = alikeGroups(own);
  const [largest] = [...groups].sort((one, other) => other.length - one.length);
  const rest = restOf(own, others);
  const told = groups.map((group) => {
    const isRest = groups.length > 1 && group === largest && rest !== null;
    return says`${gainRange(group)} (${isRest ? rest : whichPanels(partsIn(group), parts)})`;
  });
  const [first = [], ...further] = told;
  return further.reduce((all, one) => says`${all}, ${one}`, first);
}

/** What is left once the smaller groups are named; null where that could not be told. */
function restOf(own: readonly Gain[], others: readonly PanelSurvey[]): string | null {
  if (own.length === others.length) return 'the others';
  return whichPanels(partsIn(own), others) === 'every original panel'
    ? 'the other originals'
    : null;
}

const partsIn = (group: readonly Gain[]): readonly PanelSurvey[] => group.map(({ part }) => part);

/** Where to find the gains that are in no group. */
function apart(parts: readonly PanelSurvey[]): readonly Sentence[] {
  const own = parts.filter(isToldApart);
  return own.length === 0
    ? []
    : [says`${partNames(own)}: told above, under near ${own.length === 1 ? 'its' : 'their'} line`];
}

/** What would settle a word stands beside that, and what nothing helps stands first of all. */
const SAID_ELSEWHERE: readonly string[] = ['settle', 'beyond-help'];

/** The panels with what to do on them. */
function withoutFigure(read: readonly PanelSurvey[], helped: SurveyHelp): readonly Sentence[] {
  // What is unread has a line of its own, with what to do.
  const told = read
    .filter(({ condition }) => condition !== 'unread')
    .flatMap((panel) => [panel, ...panel.zones])
    .flatMap((part) => {
      const advice = adviceOf(part, helped)
        .filter(({ code, value }) => value === undefined && !SAID_ELSEWHERE.includes(code))
        .map(adviceLine);
      const [first, ...others] = advice;
      return first === undefined
        ? []
        : [{ part, said: others.reduce((all, one) => says`${all}; ${one}`, first) }];
    });
  return [...groupBy(told, ({ said }) => tell(said, 'um'))].map(
    ([, group]) =>
      says`${panelNames(group.map(({ part }) => part.panel)).join(', ')}: ${group[0].said}`,
  );
}
