/** Test spots as a page: what each took, how hard the paint is, the ladder, and what to do next. */

import { counted } from '../../base/counted.ts';
import { type Remark, textIn } from '../../base/remark.ts';
import { figure, shown } from '../../base/rounding.ts';
import { thicknessText, unitName } from '../../base/sentence.ts';
import type { LengthUnit } from '../../base/units.ts';
import type { Rung, RungState } from '../../correction/spot/spot-ladder.ts';
import type { SpotResult } from '../../tasks/spot/spot-files.ts';
import { assumptionBlocks } from '../assumption-blocks.ts';
import { column, figures } from '../columns.ts';
import { axisFromNothing, inUnit } from '../drawn-axis.ts';
import { joined } from '../facts.ts';
import { factorText } from '../log-factor.ts';
import {
  type Block,
  type Cell,
  cell,
  gap,
  list,
  notice,
  paragraph,
  type Said,
  title,
} from '../model.ts';
import type { PageOptions } from '../page-options.ts';

export function spotBlocks(result: SpotResult, options: PageOptions): readonly Block[] {
  const { trials, ladder, settings, vehicle } = result;
  const cautions = result.advice.filter(isCaution);
  const advice = result.advice.filter((one) => !isCaution(one));
  const [next, ...others] = advice.map((one) => textIn(one, options.unit));
  const further = others.length === 0 ? [] : [gap, list('Besides', others)];
  const panels = panelsOf(result);
  const [only = '', second] = panels;
  const where = second === undefined ? only : counted(panels.length, 'panel');
  const of = vehicle === null ? '' : ` of ${vehicle}`;
  return [
    title(`Test spots${of}: ${counted(trials.length, 'trial')} on ${where}`),
    paragraph(
      null,
      `Aim ${settings.aim.name}: ${shown(100 * settings.aim.share, 0)}\u00a0% of the defects, by eye.`,
    ),
    ...cautions.map((one) => notice('Mind', `${textIn(one, options.unit)}.`)),
    paragraph(second === undefined ? `Next on ${only}` : 'Next, by all panels', next ?? ''),
    ...allTogether(panels),
    gap,
    trialTable(result, options.unit),
    gap,
    paragraph(second === undefined ? 'Paint' : 'Paint, by all panels', paintLine(result)),
    ...(ladder.length === 0 ? [] : [gap, ...ladderBlocks(result, options)]),
    ...further,
    ...keptLine(result),
    ...assumptionBlocks(result, options),
  ];
}

const ladderBlocks = ({ ladder, settings }: SpotResult, options: PageOptions): readonly Block[] => [
  ladderTable(shownRungs(ladder, options.verbose), options),
  paragraph(
    null,
    joined(
      [
        'Now: what a set takes, the middle and in brackets nine cases of ten.',
        `Chance: to reach the aim with ${counted(settings.correction.spot.sets, 'set')} of that rung alone.`,
        'A plan may work a milder rung for more sets, if that reaches it.',
      ],
      ' ',
    ),
  ),
];

/** Told before what comes next. */
const CAUTIONS: readonly string[] = [
  'spot-colour-repaint',
  'spot-place-short',
  'spot-place-unknown',
];

const isCaution = ({ code }: Remark): boolean => CAUTIONS.includes(code);

type Trials = Pick<SpotResult, 'trials' | 'nameOf'>;

const panelsOf = ({ trials, nameOf }: Trials): readonly string[] => [
  ...new Set(trials.map(({ trial }) => nameOf(trial.panel))),
];

/** Whether one of the panels is repainted, no trial says; a rung for factory paint may be too strong for it. */
const allTogether = (panels: readonly string[]): readonly Block[] =>
  panels.length < 2
    ? []
    : [
        paragraph(
          'Mind',
          joined(
            [
              `paint, ladder and what comes next hold the trials on ${panels.join(', ')} for one paint.`,
              'A repaint is judged by itself: put its trials into a file of their own.',
            ],
            ' ',
          ),
        ),
      ];

function keptLine({ kept }: SpotResult): readonly Block[] {
  if (kept === undefined || kept === null) return [];
  const { added, already } = kept;
  const before = already === 0 ? [] : [`${already} stood there already`];
  const told = [`${counted(added, 'observation')} added to the rates`, ...before];
  return [paragraph('Kept', joined(told, '; ', '.'))];
}

const percent = (share: number | null): string =>
  share === null ? '–' : `${shown(100 * share, 0)}\u00a0%`;

function trialTable({ trials, nameOf }: Trials, unit: LengthUnit): Block {
  const um = (value: number | undefined): string =>
    value === undefined ? '–' : thicknessText(value, unit, 1);
  const onSeveral = panelsOf({ trials, nameOf }).length > 1;
  return {
    kind: 'table',
    columns: [
      column('spot'),
      ...(onSeveral ? [column('panel')] : []),
      column('combination'),
      figures('sets'),
      figures('marks'),
      figures(`removed (${unitName(unit)})`),
      { ...figures('shows from'), unit: unitName(unit) },
      figures('cleared'),
      figures('haze'),
    ],
    rows: trials.map(({ trial, removed }) => [
      cell(trial.spot),
      ...(onSeveral ? [cell(nameOf(trial.panel))] : []),
      cell(trial.combination.id),
      cell(`${trial.sets}`),
      cell(`${trial.marks.length}`),
      cell(
        removed === null ? '–' : `${um(removed.mean)} (${um(removed.low)} to ${um(removed.high)})`,
        'strong',
      ),
      cell(um(removed?.resolvable)),
      cell(percent(trial.cleared)),
      cell(trial.haze === null ? '–' : figure(trial.haze)),
    ]),
  };
}

function paintLine({ paint, word }: SpotResult): Said {
  const { hardness, depthScale } = paint.removal;
  const film = paint.provisional ? ['By no film read on a spot that counts.'] : [];
  const told = [
    `${word}: gives way ${factorText(hardness)} as fast as usual paint`,
    `defects ${factorText(depthScale)} as deep as taken`,
  ];
  return joined([joined(told, '; ', '.'), ...film], ' ');
}

const STATES: Readonly<Record<RungState, string>> = {
  'too-mild': 'too mild',
  cleared: 'cleared',
  'over-budget': 'more than may go',
  open: '',
};

const SHOWN_EITHER_SIDE = 3;

/** Around what was tried and what comes next; all of it with -v. */
function shownRungs(ladder: readonly Rung[], verbose: boolean): readonly Rung[] {
  if (verbose) return ladder;
  const first = ladder.findIndex(({ tried }) => tried);
  const last = ladder.findLastIndex(({ tried }) => tried);
  const around = ladder.slice(Math.max(0, first - 1), last + 1 + SHOWN_EITHER_SIDE);
  return around.length > 0 ? around : ladder.slice(0, 2 * SHOWN_EITHER_SIDE);
}

function ladderTable(
  rungs: readonly Rung[],
  { unit, drawn = false }: Pick<PageOptions, 'unit' | 'drawn'>,
): Block {
  const axis = axisFromNothing(
    rungs.flatMap(({ before, high }) => [before, high]),
    unit,
  );
  return {
    kind: 'table',
    columns: [
      column('ladder, mildest first'),
      { ...figures('before'), unit: `${unitName(unit)} a set` },
      figures(`now (${unitName(unit)} a set)`),
      figures('chance'),
      column('verdict'),
      ...(drawn ? [{ ...column(`○ before, · now (${unitName(unit)} a set)`), axis }] : []),
    ],
    rows: rungs.map((rung) => [
      ...rungCells(rung, unit),
      ...(drawn ? [rungStrip(rung, unit)] : []),
    ]),
  };
}

const rungCells = (
  { combination, before, low, high, chance, state, tried }: Rung,
  unit: LengthUnit,
): readonly Cell[] => [
  cell(combination.id, tried ? 'strong' : 'plain'),
  cell(thicknessText(before, unit, 2)),
  cell(
    `${thicknessText(combination.perSet, unit, 2)} (${thicknessText(low, unit, 1)}–${thicknessText(high, unit, 1)})`,
  ),
  cell(percent(chance)),
  cell(
    state === 'too-mild' && tried ? 'did not clear' : STATES[state],
    state === 'over-budget' ? 'binding' : 'plain',
  ),
];

/** The 90 % range as a line with its middle on it, and what was held before any trial. */
const rungStrip = ({ combination, before, low, high }: Rung, unit: LengthUnit): Cell => ({
  kind: 'strip',
  values: [inUnit(combination.perSet, unit)],
  marked: null,
  open: [inUnit(before, unit)],
  bar: { from: inUnit(low, unit), to: inUnit(high, unit), look: 'span' },
});
