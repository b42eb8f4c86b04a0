/** One panel of the work card: what is done on it, in order, with a box for each time. */

import { counted } from '../../base/counted.ts';
import { type Remark, textIn } from '../../base/remark.ts';
import { shown } from '../../base/rounding.ts';
import { thicknessText, unitName } from '../../base/sentence.ts';
import type { LengthUnit } from '../../base/units.ts';
import {
  hasUnknownRisk,
  type LocalWork,
  type PanelPlan,
  type PlannedStep,
} from '../../correction/plan/plan.ts';
import { totalFloor } from '../../film/limits/removal-limits.ts';
import { placeName, withPoints } from '../../film/place-note.ts';
import { partName } from '../../film/survey.ts';
import { marksFor } from '../../tasks/plan/marked-points.ts';
import type { PlanResult } from '../../tasks/plan/plan-vehicle.ts';
import { staged } from '../../work/polishing.ts';
import type { Block, Tick } from '../model.ts';
import { isToReadAgain } from './read-again-ticks.ts';
import { BLANK } from './spot-first.ts';
import { combinationWords } from './step-words.ts';
import { zoneTicks } from './zone-ticks.ts';

/** Points are read before anything is done, and again when all is: as many as show the loss of what may go. */
export function panelTicks(part: PanelPlan, result: PlanResult, unit: LengthUnit): Block {
  const { panel, budget } = part.survey;
  const { section } = result.settings.correction.removal;
  const sections = Math.ceil(panel.area / section - 1e-9);
  const most = thicknessText(budget, unit, 2);
  const marks = marksFor(budget, result);
  const median = thicknessText(part.removal.median, unit, 2);
  const planned = part.steps.length === 0 ? '' : `planned ${median}, `;
  const takes = `takes ${median} of ${most}\u00a0${unitName(unit)} that may go`;
  return {
    kind: 'ticks',
    label: partName(part.survey),
    note: `${part.steps.length === 0 ? 'spot only' : takes}, ${counted(sections, 'section')}`,
    items: [
      ...readAgainFirst(part, result),
      ...zoneTicks(part, result, unit),
      tick(
        marks === 1
          ? `mark a point, wipe it, read it cool: ${BLANK}`
          : `mark ${marks} points; wiped, cool: mean ${BLANK}`,
      ),
      tick(
        `tape: trim ${shown(panel.trimLength, 1)}\u00a0m, edges ${result.settings.film.edgeWidth}\u00a0mm, body lines`,
      ),
      ...thinEdges(part, result, unit),
      ...unknownRisk(part),
      ...minded(part, unit, ({ code }) => code === PLACE_ON_RECORD),
      ...namedSpots(part, unit).flatMap(({ spot, name }) => spotTicks(spot, { name, part }, unit)),
      ...stepTicks(part.steps),
      tick(
        `wipe, inspect; read ${marks === 1 ? 'it again, cool:' : 'again, cool: mean'} ${BLANK} off: ${BLANK} (${planned}${most} may go)`,
      ),
      ...minded(part, unit, ({ code }) => PLACE_REMARKS.has(code)),
    ],
  };
}

/** The point stands at the head of the card; its panel has a box for it, lest it be worked without. */
const readAgainFirst = (part: PanelPlan, result: PlanResult): readonly Tick[] =>
  isToReadAgain(part, result)
    ? [
        {
          ...remarkTick('mind', 'read again first, as on top: no set before that is settled'),
          tone: 'strong',
        },
      ]
    : [];

/**
 * Points off the face enter no figure of it, and no pad may come there: what reads under the floor of the face is told
 * with its reading.
 */
function thinEdges(
  { survey }: PanelPlan,
  { settings }: PlanResult,
  unit: LengthUnit,
): readonly Tick[] {
  const floor = totalFloor(survey.facts, settings.terms.totalFloor, settings.film);
  const thin = survey.otherPoints.filter(({ thickness }) => thickness < floor);
  const told = thin.map(
    ({ point, place, thickness }) =>
      `point ${point} (${place}) reads ${thicknessText(thickness, unit)}\u00a0${unitName(unit)}`,
  );
  return thin.length === 0
    ? []
    : [
        {
          ...remarkTick('thin', `${told.join(', ')}: tape it off, no pad there, nor by hand`),
          tone: 'strong',
        },
      ];
}

/** Where the risk is not known only the pad shows the end of the clear. */
const unknownRisk = (panel: PanelPlan): readonly Tick[] =>
  hasUnknownRisk(panel)
    ? [
        {
          ...remarkTick(
            'mind',
            'risk not known, the clear here cannot be read: look at the pad after each set; first colour on it: stop, no more on this panel',
          ),
          tone: 'strong',
        },
      ]
    : [];

/** Where not to go is read before any set. */
const PLACE_ON_RECORD = 'place-on-record';

const minded = (
  { cautions }: PanelPlan,
  unit: LengthUnit,
  isSo: (one: Remark) => boolean,
): readonly Tick[] => cautions.filter(isSo).map((one) => remarkTick('mind', textIn(one, unit)));

/** Cautions that are of this panel's steps and not of all. */
const PLACE_REMARKS: ReadonlySet<string> = new Set([
  'overrun-on-record',
  'worked-unread',
  'panel-heat',
  'rotary-heat',
]);

/** After each step but the last, whose end is the panel's, the eye says whether another is wanted. */
const stepTicks = (steps: readonly PlannedStep[]): readonly Tick[] =>
  staged(steps).flatMap(({ step, stage }, i) => {
    const isLast = i === steps.length - 1;
    const name = isLast && stage !== 'finish' ? `${stage} and finish` : stage;
    return [setsTick(name, step), ...(isLast ? [] : [tick('wipe, inspect: still needed?')])];
  });

/** As a comparison asks for its reading, and with what tells it apart the first time it is named. */
type SpotName = { readonly short: string; readonly whole: string };

/** One of its kind goes by that; of several each has its number, as the plan is read by a comparison. */
function namedSpots(
  { survey, local }: PanelPlan,
  unit: LengthUnit,
): readonly { readonly spot: LocalWork; readonly name: SpotName }[] {
  const worked = local.filter(({ steps }) => steps.length > 0);
  const places = withPoints(
    worked.map(({ defect }) => ({ panel: survey.panel.id, defect: defect.kind.id })),
  );
  return local.map((spot) => {
    const place = places[worked.indexOf(spot)];
    const { kind, grade, depth, extent = '' } = spot.defect;
    const short = place === undefined ? kind.name : placeName(place, places);
    if (place?.point !== short) return { spot, name: { short: kind.name, whole: kind.name } };
    const told =
      depth === null ? `grade ${grade}` : `${thicknessText(depth, unit)} ${unitName(unit)} deep`;
    return {
      spot,
      name: { short, whole: `${short} (${extent === '' ? told : `${told}, ${extent}`})` },
    };
  });
}

/** Spots at deep defects come before the panel's own steps, which pass over them: their film is counted with them. */
function spotTicks(
  { steps, place, removal, reasons }: LocalWork,
  { name, part: { steps: own } }: { readonly name: SpotName; readonly part: PanelPlan },
  unit: LengthUnit,
): readonly Tick[] {
  if (steps.length === 0) return reasons.map((one) => remarkTick('leave', textIn(one, unit)));
  const takes = `${thicknessText(removal.median, unit, 2)} ${unitName(unit)} (${thicknessText(removal.low, unit)}–${thicknessText(removal.high, unit)})`;
  const more = own.length === 0 ? takes : `${takes} more than the rest of the panel`;
  const inAll =
    place === null
      ? ''
      : `; in all ${thicknessText(place.removal, unit, 2)} of ${thicknessText(place.budget, unit, 2)} that may go there`;
  return [
    tick(`mark the place of the ${name.whole}, wipe it, read it cool: ${BLANK}`),
    ...steps.map((step) => setsTick(`spot at ${name.short}, that place only`, step)),
    remarkTick('that place', `takes ${more}${inAll}`),
    ...(steps.some(({ sets }) => sets > 1)
      ? [remarkTick('after each set', 'wipe, inspect: still needed?')]
      : []),
    tick(
      `wipe, inspect; read that place again, cool: ${BLANK} off: ${BLANK} (planned ${thicknessText(removal.median, unit, 2)})`,
    ),
  ];
}

const tick = (text: string): Tick => ({ text, boxes: 1 });

const remarkTick = (label: string, text: string): Tick => ({
  text: `${label}: ${text}`,
  boxes: 0,
});

/** `cut: 3× da/foam-medium/medium, 60 min`, a box to each set; by itself each is `cut, set 1 of 3: …`. */
function setsTick(name: string, { combination, sets, machineTime }: PlannedStep): Tick {
  const time = (minutes: number): string => `${shown(minutes, 0)}\u00a0min`;
  const words = combinationWords(combination);
  const oneOf = (_: unknown, i: number): string =>
    `${name}, set ${i + 1} of ${sets}: ${words}, ${time(machineTime / sets)}`;
  return {
    text: `${name}: ${sets}×\u00a0${words}, ${time(machineTime)}`,
    boxes: sets,
    tone: 'strong',
    ...(sets === 1 ? {} : { apart: Array.from({ length: sets }, oneOf) }),
  };
}
