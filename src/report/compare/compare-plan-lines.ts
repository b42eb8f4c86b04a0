/** What was planned beside what was measured, in words. */

import { counted } from '../../base/counted.ts';
import { shownFile } from '../../base/file-name.ts';
import { shown } from '../../base/rounding.ts';
import { thicknessText, unitName } from '../../base/sentence.ts';
import type { LengthUnit } from '../../base/units.ts';
import { placeName } from '../../film/place-note.ts';
import type { Panel } from '../../film/template/template.ts';
import type { CompareResult } from '../../tasks/compare/compare-files.ts';
import type { PanelPlace } from '../../tasks/compare/compare-places.ts';
import type { PlaceRead } from '../../tasks/compare/compare-places-read.ts';
import { mainStep, type RateSeen } from '../../tasks/compare/compare-plan.ts';
import type { PartLeft } from '../../tasks/compare/part-left.ts';
import { joined } from '../facts.ts';
import { factorText } from '../log-factor.ts';
import { type Block, notice, paragraph } from '../model.ts';
import { partNameOf, partsLeft } from './compare-words.ts';

/** A plan of other readings frees nothing here: told before anything that it says. */
export const planInDoubt = ({ planOfOthers }: CompareResult): readonly Block[] =>
  planOfOthers.length === 0
    ? []
    : [
        notice(
          'Plan in doubt',
          joined(
            [
              ...planOfOthers.map((text) => `${text.replace(/^the plan was /u, '')}.`),
              'What might go is the lesser of what it and the survey before the work allow.',
              'Nothing is held against it, and no rate is learned by it.',
            ],
            ' ',
          ),
        ),
      ];

/** What was to go deeper than the panels: of which places no reading tells, and what the others lost. */
export function placesLine({ places }: CompareResult, unit: LengthUnit): readonly Block[] {
  const unread = places.filter(({ place }) => place.read === null);
  const told = unread.map(
    ({ panel, place }) =>
      `${panel.name}, ${placeName(place, placesOn(panel, places))}: ${thicknessText(place.median, unit)} (up to ${thicknessText(place.high, unit)}) ${unitName(unit)} more by a spot`,
  );
  const points = [...new Set(unread.map(({ place: { point } }) => `“${point}”`))].join(', ');
  const read = places.flatMap(({ panel, place }) =>
    readText(placeName(place, placesOn(panel, places)), { panel, place }, unit),
  );
  return [
    ...(read.length === 0 ? [] : [paragraph('Read at the spots', joined(read, '; ', '.'))]),
    ...(unread.length === 0
      ? []
      : [
          paragraph(
            'Not read',
            joined(
              [
                ...told,
                `read these places before more comes off there, as points called ${points}`,
              ],
              '; ',
              '.',
            ),
          ),
        ]),
  ];
}

const placesOn = ({ id }: Panel, places: readonly PanelPlace[]): readonly PlaceRead[] =>
  places.filter(({ panel }) => panel.id === id).map(({ place }) => place);

/** `roof, deep scratches: 2.9 ± 1.3 µm more than the panel, 3.0 planned` */
const readText = (
  spot: string,
  { panel: { name }, place: { median, read } }: PanelPlace,
  unit: LengthUnit,
): readonly string[] =>
  read === null
    ? []
    : [
        `${name}, ${spot}: ${thicknessText(read.taken.mean, unit)} ± ${thicknessText(read.taken.sd, unit)} ${unitName(unit)} more than the panel are held to be gone, ${median === 0 ? 'by no plan at hand' : `${thicknessText(median, unit)} planned`}`,
      ];

/** Marks are read for a plan that was made before them: which readings it was made from, and what follows. */
export const planOfMarks = ({ planBeforeMarks }: CompareResult): readonly Block[] =>
  planBeforeMarks === null
    ? []
    : [
        paragraph(
          'Plan',
          `made from ${planBeforeMarks}, which the marks read before the work do not contradict. If any film came off in between, plan anew.`,
        ),
      ];

export function planLine(
  { planned, planOfOthers, panels, worked }: CompareResult,
  unit: LengthUnit,
): readonly Block[] {
  if (!planned || planOfOthers.length > 0) return [];
  const judged = panels
    .map((panel) => partsLeft([panel]).filter(({ against }) => against !== null))
    .filter((parts) => parts.length > 0);
  const within = judged.filter((parts) => parts.every((part) => wordOf(part) === 'as-foretold'));
  const parts = [
    ...WORDS.flatMap(({ word, told }) => toldOn(told, judged.flat(), word, unit)),
    ...(within.length === 0
      ? []
      : [`${withinText(within.length, judged.length)}within what plan and readings may be off by`]),
  ];
  return [
    paragraph(
      'Against the plan',
      judged.length === 0
        ? 'none of its panels was compared.'
        : joined([...parts, asWorkedText(judged.flat(), worked)], '; ', '.'),
    ),
  ];
}

function withinText(within: number, judged: number): string {
  if (judged === 1) return '';
  return `${within === judged ? 'all ' : ''}${counted(within, 'panel')} `;
}

/** A plan allows for rates that are far off: what might go is said before it, and is no matter of what it foretold. */
type PlanWord = 'over' | NonNullable<PartLeft['against']>;

const wordOf = ({ overruns, against }: PartLeft): PlanWord | null =>
  overruns.some(({ code }) => code === 'more-than-allowed') ? 'over' : against;

const WORDS: readonly { readonly word: PlanWord; readonly told: string }[] = [
  { word: 'over', told: 'more than might go on' },
  { word: 'more', told: 'more on' },
  { word: 'less', told: 'less on' },
];

function toldOn(
  told: string,
  judged: readonly PartLeft[],
  word: PlanWord,
  unit: LengthUnit,
): readonly string[] {
  const some = judged.filter((part) => wordOf(part) === word);
  return some.length === 0 ? [] : [`${told} ${some.map((one) => toldOf(one, unit)).join(', ')}`];
}

/** What the plan is held to: all its sets, or those that were worked. */
function asWorkedText(judged: readonly PartLeft[], worked: CompareResult['worked']): string {
  if (worked === null) return 'taken as worked in full (if not, say so with --worked)';
  const unsaid = new Set(
    judged.map(({ comparison: { panel } }) => panel).filter(({ id }) => !worked.panels.has(id)),
  );
  const rest =
    unsaid.size === 0
      ? ''
      : ` (${counted(unsaid.size, 'panel')} not named there as worked in full)`;
  return `by the sets of ${shownFile(worked.file)}${rest}`;
}

/** `roof (0.6 for 2.9 µm)` */
function toldOf({ comparison, foretold }: PartLeft, unit: LengthUnit): string {
  const came = thicknessText(comparison.change?.removed.value ?? 0, unit);
  const planned = thicknessText(foretold?.removal?.median ?? 0, unit);
  return `${partNameOf(comparison)} (${came} for ${planned} ${unitName(unit)})`;
}

export const rateLines = ({ rates, panels, shift }: CompareResult): readonly Block[] =>
  rates.flatMap((rate) =>
    rateLine(rate, partsOfRate(rate, panels), shift === null ? '' : ', if the gauge did not shift'),
  );

/** What was to be done mostly by this combination, and was compared. */
const partsOfRate = ({ combination }: RateSeen, panels: CompareResult['panels']) =>
  partsLeft(panels).filter(
    ({ foretold, against }) =>
      against !== null &&
      foretold !== null &&
      foretold.removal !== null &&
      mainStep(foretold)?.combination === combination,
  );

/** Only a rate that looks wrong is worth a line; where the panels disagree, it is not the rate alone. */
function rateLine(
  { combination, panels, factor, looks, withinKnown }: RateSeen,
  parts: readonly PartLeft[],
  unless: string,
): readonly Block[] {
  if (looks === null) return [];
  const on = `${combination}, most of the work on ${counted(panels, 'panel')}`;
  if (new Set(parts.map(wordOf)).size > 1) {
    return [paragraph('Rate', `${on}: ${timesForetold(parts)}${unless}: not the rate alone.`)];
  }
  const times = `${factorText(factor)} what was foretold${unless}`;
  return [
    paragraph(
      'Rate',
      looks === 'too-low'
        ? `${on}, cuts more than its rate says: ${times}.`
        : `${on}, cuts less than its rate says: ${times}${ofLess(withinKnown)}`,
    ),
  ];
}

/** Film that a gauge hides looks so too; what the rate itself may be off by is no reason to look for a fault. */
const ofLess = (withinKnown: boolean): string =>
  withinKnown
    ? ', no more than the plan held its rate to be off by.'
    : '. So it looks where the gauge reads too high by now: check it on a shim before another set.';

/** `× 2.30 what was foretold on boot lid, × 0.97 on bonnet`, most first; many within only by their count. */
function timesForetold(parts: readonly PartLeft[]): string {
  const told = parts
    .map((part) => ({ part, times: timesOf(part) }))
    .sort((one, other) => other.times - one.times);
  const within = told.filter(({ part }) => wordOf(part) === 'as-foretold');
  const named = within.length > FEW ? told.filter((one) => !within.includes(one)) : told;
  const texts = named.map(
    ({ part, times }, i) =>
      `×\u00a0${shown(times, 2)}${i === 0 ? ' what was foretold' : ''} on ${partNameOf(part.comparison)}`,
  );
  return [...texts, ...(within.length > FEW ? [`${within.length} others within`] : [])].join(', ');
}

const FEW = 3;

const timesOf = ({ comparison, foretold }: PartLeft): number =>
  (comparison.change?.removed.value ?? 0) / (foretold?.removal?.median ?? Number.NaN);
