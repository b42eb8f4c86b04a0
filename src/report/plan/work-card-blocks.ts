/**
 * The plan as a card to work from in the bay: what to keep off and when to stop, then panel by panel in the
 * order of polishing, with boxes to tick; how each step is set and what to mind stand on a sheet of their own.
 */
import { groupBy } from '../../base/group-by.ts';
import { shown } from '../../base/rounding.ts';
import { says, tell, um } from '../../base/sentence.ts';
import type { LengthUnit } from '../../base/units.ts';
import { isTouched, type PanelPlan, workedParts } from '../../correction/plan/plan.ts';
import { setTime } from '../../correction/removal/removal-rate.ts';
import { isColourNormal, isRepaintSaidWithoutClear } from '../../film/limits/colour-at-spot.ts';
import { partName } from '../../film/survey.ts';
import type { Panel } from '../../film/template/template.ts';
import { seenAtOnePoint } from '../../tasks/plan/marked-points.ts';
import type { PlanResult } from '../../tasks/plan/plan-vehicle.ts';
import type { Assumption } from '../../tasks/settings/assumption.ts';
import { inPolishingOrder } from '../../work/polishing-order.ts';
import { column, figures, measures } from '../columns.ts';
import { joined } from '../facts.ts';
import { largeAssumptions } from '../large-assumptions.ts';
import { motionText } from '../methods/method-words.ts';
import { type Block, cell, gap, notice, paragraph, type Said, type Tick, title } from '../model.ts';
import type { PageOptions } from '../page-options.ts';
import { colourFirst } from '../survey/colour-lines.ts';
import { filesTaken, noteBlocks, warningsFirst } from '../survey/note-blocks.ts';
import { heading } from '../survey/page-head.ts';
import { settleFirst } from '../survey/settle-first.ts';
import { strictNote } from '../survey/strict-note.ts';
import { dayBlocks } from './day-lines.ts';
import { keepOffBlocks } from './keep-off.ts';
import { nothingWorked } from './nothing-worked.ts';
import { orderText } from './order-text.ts';
import { panelTicks } from './panel-ticks.ts';
import { openOf } from './plan-answer.ts';
import { careWords } from './plan-blocks.ts';
import { isToReadAgain, readAgainTicks } from './read-again-ticks.ts';
import { readMoreFirst } from './read-more-first.ts';
import { spotFirst } from './spot-first.ts';
import { combinationWords } from './step-words.ts';
import { zoneFaces } from './zone-ticks.ts';

export function workCardBlocks(
  result: PlanResult,
  panels: readonly Panel[],
  { unit }: PageOptions,
): readonly Block[] {
  const ids = new Set(panels.map(({ id }) => id));
  const asked = result.plan.panels.filter(({ survey }) => ids.has(survey.panel.id));
  const worked = inPolishingOrder(asked).flatMap(partsWithSpots).filter(isTouched);
  const read = asked.filter(({ survey }) => survey.points.length > 0);
  const name = heading(
    'Work card',
    result,
    read.map(({ survey }) => survey),
  );
  const again = readAgainTicks(
    asked.map(({ survey }) => survey),
    result,
    unit,
  ).flatMap((block) => [block, gap]);
  const first = [
    ...strictNote(result),
    ...warningsFirst(result, unit),
    ...filesTaken(result.assumptions),
    ...colourFirst(asked.map(({ survey }) => survey)),
  ];
  const keepOff = keepOffBlocks(asked.flatMap(partsWithSpots), unit);
  if (worked.length === 0) {
    return [
      title(name),
      ...first,
      ...again,
      paragraph(null, sentenceOf(nothingWorked(asked.flatMap(partsWithSpots)))),
      ...keepOff,
      ...noteBlocks(result.survey, unit),
    ];
  }
  return [
    title(name),
    { kind: 'form', fields: ['Date', 'By', 'Gauge check before', 'Gauge check after'] },
    gap,
    ...first,
    ...again,
    ...readMoreFirst(worked.filter((part) => !isToReadAgain(part, result))),
    ...settleFirst(openOf(worked, asked), unit),
    ...keepOff,
    ...largeAssumptions(result.assumptions.filter(isSeenAtCar), unit),
    gap,
    notice('Stop', stopRule(worked, result, unit)),
    gap,
    paragraph('Order', orderText(worked, result)),
    ...spotFirst(worked, result).flatMap((block) => [gap, block]),
    ...zoneFaces(worked, result, unit).flatMap((block) => [gap, block]),
    ...worked.flatMap((part) => [gap, panelTicks(part, result, unit)]),
    gap,
    { kind: 'ticks', label: 'When all panels are done', items: closing(result) },
    gap,
    title(`Beside the card${vehicleText(result)}: how each step is set, what to mind`),
    gap,
    settingsTable(worked, result),
    gap,
    paragraph('Care', careWords(result)),
    ...noteBlocks(result.survey, unit),
    gap,
    ...dayBlocks(result),
  ];
}

const sentenceOf = (clause: string): string => `${clause[0]?.toUpperCase()}${clause.slice(1)}.`;

/** What is taken for granted and whoever stands at the car can settle. */
const isSeenAtCar = ({ code }: Assumption): boolean => code === 'eddy-current' || code === 'finish';

const vehicleText = ({ vehicle }: PlanResult): string => (vehicle === null ? '' : ` of ${vehicle}`);

/** What is worked by itself; spots at deep defects stand with the first part of their panel. */
const partsWithSpots = (panel: PanelPlan): readonly PanelPlan[] =>
  workedParts({ panels: [panel] }).map((part, i) =>
    i === 0 ? { ...part, local: panel.local } : part,
  );

/** Sets, then the eye, then the gauge; and what one reading can show at all. */
function stopRule(worked: readonly PanelPlan[], result: PlanResult, unit: LengthUnit): Said {
  const seen = tell(says`${um(seenAtOnePoint(result))}`, unit);
  return joined(
    [
      'do no more sets than stand here.',
      'Wipe and look in good light: once the marks are gone, do no more.',
      `The gauge is an alarm only: one marked point, wiped and cool, shows no loss under ${seen}; where more are marked, go by their mean. More off than may go: stop.`,
      colourRule(worked),
    ],
    ' ',
  );
}

/** What colour on the pad means is a matter of each panel’s finish. */
function colourRule(worked: readonly PanelPlan[]): string {
  const normal = worked.filter(
    ({ survey }) => isColourNormal(survey.facts.finish) && !isRepaintSaidWithoutClear(survey),
  );
  const others = worked.filter((part) => !normal.includes(part));
  if (normal.length === 0) return 'Colour on the pad under clear: stop at once';
  const other = 'a lighter colour or primer on it: stop at once';
  if (others.length === 0) {
    return `This paint has no clear, and its own colour on the pad is normal; ${other}`;
  }
  return others.every(({ survey }) => isRepaintSaidWithoutClear(survey))
    ? `This paint has no clear, and its own colour on the pad is normal; ${other}. Not so on repaint (${namesOf(others)}): there any colour: stop at once`
    : `Colour on the pad is normal where the paint has no clear (${namesOf(normal)}): there ${other}; elsewhere any colour: stop at once`;
}

const namesOf = (parts: readonly PanelPlan[]): string =>
  parts.map(({ survey }) => partName(survey)).join(', ');

/** Each combination of the plan once, in the order it is met. */
function settingsTable(
  worked: readonly PanelPlan[],
  { settings: { correction } }: PlanResult,
): Block {
  const { removal } = correction;
  const steps = worked.flatMap((part) => [
    ...part.local.flatMap((spot) => spot.steps),
    ...part.steps,
  ]);
  const all = [...groupBy(steps, ({ combination }) => combination.id).values()];
  return {
    kind: 'table',
    columns: [
      column('step'),
      column('speed'),
      measures('pad', 'mm'),
      { ...figures('min a section'), said: 'a section takes', unit: 'min' },
      figures('passes'),
      figures('overlap'),
    ],
    rows: all.flatMap(([step]) => {
      if (step === undefined) return [];
      const { machine } = step.combination;
      const time = setTime(machine, removal.section, removal);
      return [
        [
          cell(combinationWords(step.combination), 'strong'),
          cell(motionText(machine)),
          cell(shown(machine.padDiameter, 0)),
          cell(shown(time, 1)),
          cell(shown(removal.passes, 0)),
          cell(`${shown(100 * removal.overlap, 0)}\u00a0%`),
        ],
      ];
    }),
  };
}

const AFTER = ['unmask-dust', 'panel-wipe', 'remeasure'] as const;

/** What of the correction comes after the last panel, in the order of the job. */
const closing = ({ work }: PlanResult): readonly Tick[] =>
  work.order
    .filter(({ id }) => AFTER.some((after) => after === id))
    .map(({ text }): Tick => ({ text, boxes: 1 }));
