/** What would help, over a car: what it frees panel by panel, then what has no figure or frees next to nothing. */
import { groupBy } from '../../base/group-by.ts';
import { type Sentence, says, tell, thicknessText, um, unitName } from '../../base/sentence.ts';
import type { Help, HelpCode } from '../../film/help/what-would-help.ts';
import { type PanelSurvey, partsOf } from '../../film/survey.ts';
import type { SurveyHelp } from '../../tasks/survey/survey-help.ts';
import { type Block, cell, list, paragraph } from '../model.ts';
import { panelNames, whichPanels } from '../panel-list.ts';
import { partName, type ShowUnit } from './film-table.ts';
import { adviceOf, minutes, ofDoubt, signed } from './help-lines.ts';

type Gain = Help & { readonly part: PanelSurvey };

/** Gains that differ from panel to panel have a column each. */
const COLUMNS = ['history', 'clear', 'test-spot'] as const satisfies readonly HelpCode[];

/** Less reads as nought. */
const LEAST_SHOWN = 0.05;

export function helpBlocks(
  surveyed: readonly PanelSurvey[],
  helped: SurveyHelp,
  unit: ShowUnit,
): readonly Block[] {
  const read = surveyed.filter(({ points }) => points.length > 0);
  const parts = read.flatMap(partsOf);
  const gains = parts.flatMap((part) =>
    (helped.get(part) ?? []).map((help) => ({ ...help, part })),
  );
  const lines = [...smallGains(gains, parts), ...withoutFigure(read, helped)];
  const lowered = lowering(gains, parts);
  return [
    ...gainTable(gains, parts, unit),
    ...(lines.length === 0
      ? []
      : [besides(gains.length === 0 ? 'What would help' : 'Besides', lines, unit)]),
    ...(lowered === null ? [] : [paragraph('Would lower it', tell(lowered, unit))]),
  ];
}

/** A few on one line, more on one each. */
const besides = (label: string, lines: readonly Sentence[], unit: ShowUnit): Block => {
  const told = lines.map((one) => tell(one, unit));
  return told.length > MOST_ON_A_LINE ? list(label, told) : paragraph(label, told.join('; '));
};

const MOST_ON_A_LINE = 2;

/** Panels of the same figures share a row; where that makes a long table, each help is a line. */
function gainTable(
  gains: readonly Gain[],
  parts: readonly PanelSurvey[],
  unit: ShowUnit,
): readonly Block[] {
  const shown = gains.filter(({ gain }) => gain >= LEAST_SHOWN);
  const columns = COLUMNS.filter((code) => shown.some((one) => one.code === code)).sort(
    (one, other) => total(shown, other) - total(shown, one),
  );
  if (columns.length === 0) return [];
  const rows = [...groupBy(shown, ({ part }) => part)].map(([part, own]) => ({
    part,
    cells: columns.map((code) => {
      const found = own.find((one) => one.code === code);
      return found === undefined ? '–' : `+${thicknessText(found.gain, unit)}`;
    }),
  }));
  const same = groupBy(
    rows.filter(({ cells }) => cells.some((text) => text !== '–')),
    ({ cells }) => cells.join(' '),
  );
  if (same.size > MOST_ROWS) {
    const lines = columns.map((code) => {
      const own = shown.filter((one) => one.code === code);
      return says`${COLUMN_WORDS[code](timeOf(own, code))}: ${gainRange(own)}: ${namesOf(own, parts)}`;
    });
    const label = `What would help, more may go; ${EACH_ALONE}`;
    return [
      list(
        label,
        lines.map((line) => tell(line, unit)),
      ),
    ];
  }
  return [
    paragraph(
      `What would help, ${unitName(unit)} more may go`,
      `${columns.map((code) => COLUMN_WORDS[code](timeOf(shown, code))).join('; ')}; ${EACH_ALONE}`,
    ),
    {
      kind: 'table',
      columns: [
        { title: 'panel', align: 'left' },
        ...columns.map(
          (code) => ({ title: TITLES[code], align: 'right', unit: unitName(unit) }) as const,
        ),
      ],
      rows: [...same.values()].map((group) => [
        cell(group.map(({ part }) => partName(part)).join(', ')),
        ...group[0].cells.map((text) => cell(text)),
      ]),
    },
  ];
}

/** Of a table of gains, so that a car of thirteen panels keeps to a page; `--why` has each panel's own. */
const MOST_ROWS = 7;

const total = (gains: readonly Gain[], code: HelpCode): number =>
  gains.reduce((sum, one) => (one.code === code ? sum + one.gain : sum), 0);

const TITLES: Readonly<Record<(typeof COLUMNS)[number], string>> = {
  history: 'history',
  clear: 'clear read',
  'test-spot': 'test spot',
};

/** Each was reckoned with all else as it is, up to the next limit. */
const EACH_ALONE = 'each alone, not to be added up; next limit caps';

const COLUMN_WORDS: Readonly<Record<(typeof COLUMNS)[number], (time: string) => string>> = {
  history: () => 'history, if never polished before',
  clear: (time) => `clear read (${time} a panel)`,
  'test-spot': (time) => `test spot (${time}, one per paint)`,
};

function timeOf(gains: readonly Gain[], code: HelpCode): string {
  const time = gains.find((one) => one.code === code)?.time ?? null;
  return time === null ? '' : minutes(time);
}

/** More points and a checked gauge: asked first, and worth little. */
function smallGains(gains: readonly Gain[], parts: readonly PanelSurvey[]): readonly Sentence[] {
  const points = groupBy(
    gains.filter(({ code, gain }) => code === 'points' && gain >= LEAST_SHOWN),
    ({ points: count, time }) => `${count} ${time}`,
  );
  const gauge = gains.filter(({ code }) => code === 'gauge');
  return [
    ...[...points.values()].map((group) => {
      const [{ points: count, time }] = group;
      const takes = time === null ? '' : `, ${minutes(time)} a panel`;
      return says`${count ?? 0} points in all: ${gainRange(group)}${takes}: ${namesOf(group, parts)}`;
    }),
    ...(gauge.length === 0 ? [] : [gaugeLine(gauge)]),
  ];
}

function gaugeLine(group: readonly Gain[]): Sentence {
  const most = Math.max(...group.map(({ gain }) => gain));
  const share = Math.max(...group.map(({ doubtShare = 0 }) => doubtShare));
  const gained = most < LEAST_GAUGE_SHOWN ? 'next to nothing' : says`${signed(most, 2)} at most`;
  return says`gauge checked on shims: ${gained}: ${ofDoubt(share)}`;
}

const LEAST_GAUGE_SHOWN = 0.005;

/** What may be found out and takes film away from what may go. */
function lowering(gains: readonly Gain[], parts: readonly PanelSurvey[]): Sentence | null {
  const zinc = gains.filter(({ code, gain }) => code === 'zinc' && gain <= -LEAST_SHOWN);
  if (zinc.length === 0) return null;
  return says`zinc, if there is any: ${gainRange(zinc)}: ${namesOf(zinc, parts)}`;
}

/** `+0.2 to +0.8 µm`. */
function gainRange(group: readonly Gain[]): Sentence {
  const sizes = group.map(({ gain }) => gain).sort((a, b) => Math.abs(a) - Math.abs(b));
  const [least, most] = [sizes[0] ?? 0, sizes.at(-1) ?? 0];
  if (Math.abs(most - least) < LEAST_SHOWN) return signed(most);
  const sign = least < 0 ? '−' : '+';
  return says`${sign}${bareSize(least)} to ${signed(most)}`;
}

const bareSize = (gain: number): Sentence => [{ ...um(Math.abs(gain)), named: false }];

const namesOf = (group: readonly Gain[], parts: readonly PanelSurvey[]): string =>
  whichPanels(
    group.map(({ part }) => part),
    parts,
  );

/** Advice by what to do, with the panels it is for; what would settle a word stands beside that. */
function withoutFigure(read: readonly PanelSurvey[], helped: SurveyHelp): readonly Sentence[] {
  // What is unread has a line of its own, with what to do.
  const pairs = read
    .filter(({ condition }) => condition !== 'unread')
    .flatMap((panel) => [panel, ...panel.zones])
    .flatMap((part) =>
      adviceOf(part, helped)
        .filter(({ code, value }) => value === undefined && code !== 'settle')
        .map(({ text }) => ({ text, part })),
    );
  return [...groupBy(pairs, ({ text }) => text)].map(([text, group]) => [
    `${text}: ${panelNames(group.map(({ part }) => part.panel)).join(', ')}`,
  ]);
}
