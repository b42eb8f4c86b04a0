/**
 * The plan as a card to work from in the bay: settings of each step, then panel by panel in the order of
 * polishing, with boxes to tick. What to mind stands on it once.
 */
import { groupBy } from '../../base/group-by.ts';
import { shown } from '../../base/rounding.ts';
import { says, tell, um, unitName } from '../../base/sentence.ts';
import {
  isTouched,
  type PanelPlan,
  type PlannedStep,
  workedParts,
} from '../../correction/plan/plan.ts';
import { setTime } from '../../correction/removal/removal-rate.ts';
import type { Panel } from '../../film/template/template.ts';
import type { PlanResult } from '../../tasks/plan/plan-vehicle.ts';
import { staged } from '../../work/polishing.ts';
import { inPolishingOrder } from '../../work/polishing-order.ts';
import { motionText } from '../methods/method-words.ts';
import {
  type Block,
  type Column,
  cell,
  gap,
  list,
  notice,
  paragraph,
  type Tick,
  title,
} from '../model.ts';
import { partName, type ShowUnit, thickness } from '../survey/film-table.ts';
import { heading, type PageOptions } from '../survey/survey-blocks.ts';
import { counted } from '../words.ts';
import { dayLine } from './work-blocks.ts';

export function workCardBlocks(
  result: PlanResult,
  panels: readonly Panel[],
  { unit }: PageOptions,
): readonly Block[] {
  const ids = new Set(panels.map(({ id }) => id));
  const asked = result.plan.panels.filter(({ survey }) => ids.has(survey.panel.id));
  const parts = inPolishingOrder(asked).flatMap(partsWithSpots);
  const worked = parts.filter(isTouched);
  const read = asked.filter(({ survey }) => survey.points.length > 0);
  const name = heading(
    'Work card',
    result,
    read.map(({ survey }) => survey),
  );
  if (worked.length === 0) return [title(name), paragraph(null, 'Nothing to polish.')];
  return [
    title(name),
    { kind: 'form', fields: ['Date', 'By', 'Gauge check before', 'Gauge check after'] },
    ...(worked.some(({ provisional }) => provisional) ? [spotFirst] : []),
    notice('Stop', stopRule(result, unit)),
    paragraph('Care', `${result.cautions.map(({ text }) => text).join('; ')}.`),
    gap,
    settingsTable(worked, result),
    ...worked.flatMap((part) => [gap, panelTicks(part, result, unit)]),
    gap,
    { kind: 'ticks', label: 'When all panels are done', items: closing(result) },
    ...leftAlone(parts),
    list('Days', result.work.days.map(dayLine)),
  ];
}

/** What is worked by itself; spots at deep defects stand with the first part of their panel. */
const partsWithSpots = (panel: PanelPlan): readonly PanelPlan[] =>
  workedParts({ panels: [panel] }).map((part, i) =>
    i === 0 ? { ...part, local: panel.local } : part,
  );

const spotFirst: Block = paragraph(
  'Test spot first',
  'no spot has shown yet how this paint gives way: work one with the mildest step, wipe, inspect, and plan anew with --spots before going on',
);

/** Sets, then the eye, then the gauge; and what one reading can show at all. */
function stopRule({ settings: { film } }: PlanResult, unit: ShowUnit): string {
  const seen = SEEN * Math.SQRT2 * film.measurement.repeatability;
  return (
    'first by the sets: no more than stand here. Then by the eye, on a wiped panel in good light: clear is clear. ' +
    `The gauge is an alarm only: at a marked point, wiped and cool, one re-read cannot show a loss under ${tell(says`${um(seen)}`, unit)}; stop when it shows more than may go. Colour on the pad under clear: stop at once`
  );
}

/** A change of so many SDs of a difference is seen at the level of 95 %. */
const SEEN = 1.96;

const column = (name: string, align: Column['align'] = 'left'): Column => ({ title: name, align });

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
      column('pad mm', 'right'),
      column('min a section', 'right'),
      column('passes', 'right'),
      column('overlap', 'right'),
    ],
    rows: all.flatMap(([step]) => {
      if (step === undefined) return [];
      const { id, machine } = step.combination;
      const time = setTime(machine, removal.section, removal);
      return [
        [
          cell(id, 'strong'),
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

function panelTicks(part: PanelPlan, result: PlanResult, unit: ShowUnit): Block {
  const { panel, budget } = part.survey;
  const { section } = result.settings.correction.removal;
  const sections = Math.ceil(panel.area / section - 1e-9);
  const last = part.steps.length - 1;
  const facts = `${counted(sections, 'section')}, may go ${thickness(budget, unit, 2)}\u00a0${unitName(unit)}, plan takes ${thickness(part.removal.median, unit, 2)}`;
  return {
    kind: 'ticks',
    label: `${partName(part.survey)}: ${facts}`,
    items: [
      tick(
        `tape ${shown(panel.trimLength, 1)}\u00a0m of trim, the edges (${result.settings.film.edgeWidth}\u00a0mm) and body lines`,
      ),
      ...spotTicks(part),
      ...staged(part.steps).flatMap(({ step, stage }, i) => [
        stepTick(step, stage),
        tick(
          i === last
            ? 'wipe, inspect; a marked point, cool: before ______ after ______'
            : 'wipe, inspect: still needed?',
        ),
      ]),
      ...part.cautions
        .filter(({ code }) => PLACE_REMARKS.has(code))
        .map(({ text }) => tick(`mind: ${text}`, 0)),
    ],
  };
}

/** Cautions that are of this panel's steps and not of all. */
const PLACE_REMARKS: ReadonlySet<string> = new Set(['panel-heat', 'rotary-heat']);

/** Spots at deep defects come before the panel's own steps, which pass over them. */
const spotTicks = ({ local }: PanelPlan): readonly Tick[] =>
  local.flatMap(({ defect, steps, reasons }) =>
    steps.length === 0
      ? reasons.map(({ text }) => tick(`leave: ${text}`, 0))
      : steps.map(({ combination, sets }) =>
          tick(
            `spot at ${defect.kind.name}: ${counted(sets, 'set')} of ${combination.id}, that place only`,
            sets,
          ),
        ),
  );

const tick = (text: string, boxes = 1): Tick => ({ text, boxes });

const stepTick = ({ combination, sets, machineTime }: PlannedStep, stage: string): Tick =>
  tick(
    `${stage}: ${counted(sets, 'set')} of ${combination.id}, ${shown(machineTime, 0)}\u00a0min machine`,
    sets,
  );

function leftAlone(parts: readonly PanelPlan[]): readonly Block[] {
  const left = parts.filter((part) => !isTouched(part));
  if (left.length === 0) return [];
  const names = left.map(({ survey }) => partName(survey)).join(', ');
  return [paragraph('Keep off', names)];
}

const AFTER = ['unmask-dust', 'panel-wipe', 'remeasure'] as const;

/** What of the correction comes after the last panel, in the order of the job. */
const closing = ({ work }: PlanResult): readonly Tick[] =>
  work.order.filter(({ id }) => AFTER.some((after) => after === id)).map(({ text }) => tick(text));
