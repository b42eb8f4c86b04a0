/** The job's hours, days and materials for people. */

import { counted } from '../../base/counted.ts';
import { shown } from '../../base/rounding.ts';
import type { WorkEstimate } from '../../work/estimate-work.ts';
import type { LearnedPace } from '../../work/history.ts';
import { type JobTime, jobHours } from '../../work/job-time.ts';
import type { Material } from '../../work/materials.ts';
import { joined } from '../facts.ts';
import { type Block, list, paragraph } from '../model.ts';
import { byVerbose, type PageOptions } from '../page-options.ts';
import { percentOff } from './work-record.ts';

/** What a plan says of its work: hours, days and what to have ready. */
export function workBlocks(
  work: WorkEstimate,
  options: Pick<PageOptions, 'onPaper'> = {},
): readonly Block[] {
  if (work.machineMinutes === 0) return [paragraph('Time', 'none: no panel is worked')];
  const inHand = shown(work.machineMinutes / 60, 1);
  const whole = hoursOf(work.job.time);
  const more = byVerbose(': stages, days', options);
  return [
    paragraph(
      'Time',
      joined(
        [
          joined(
            [
              `correction ${hoursOf(work.time)} (P50, P80, P95)`,
              {
                text: `${inHand}\u00a0h of it ${work.inHand} in hand`,
                facts: [`correction ${inHand}\u00a0h ${work.inHand} in hand`],
              },
            ],
            ', ',
          ),
          {
            text: `whole job ${whole}${daysText(work)}${more}`,
            facts: [`whole job ${whole} (P50, P80, P95)${daysText(work)}${more}`],
          },
        ],
        '; ',
      ),
    ),
    paragraph('Materials', joined(work.materials.map(amount), ', ')),
  ];
}

/** `16.9, 20.2, 24.0 h`: half of such jobs take less, four in five, nineteen in twenty. */
const hoursOf = (time: JobTime): string =>
  `${[0.5, 0.8, 0.95].map((p) => shown(jobHours(time, p), 1)).join(', ')}\u00a0h`;

/** `: 4 days, 5 at P80`; hours are of one person, days of all of them. */
function daysText({ scope: { hands }, days, daysP80 }: WorkEstimate): string {
  const people = hands === 1 ? '' : ` of one person; ${hands} people`;
  const longer = daysP80 === days.length ? '' : `, ${daysP80} at P80`;
  return `${people}: ${counted(days.length, 'day')}${longer}`;
}

const amount = ({ material, quantity, unit }: Material): string =>
  unit === 'pieces'
    ? `${material} ×\u00a0${shown(quantity, 0)}`
    : `${material} ${shown(quantity, 0)}\u00a0${unit}`;

/** The same at length: why the hours are no surer, and all that is used up. */
export const workDetailBlocks = (
  work: WorkEstimate,
  learned: LearnedPace | null,
): readonly Block[] => [
  spreadLine(work, learned),
  ...(learned === null ? [] : [historyLine(learned)]),
  paragraph('Materials of the whole job', joined(work.jobMaterials.map(amount), ', ')),
  ...(work.pads.length === 0
    ? []
    : [
        paragraph(
          'Pads and towels',
          joined(
            [
              ...work.pads.map(
                ({ material, ready, wornOut }) =>
                  `${material} ×\u00a0${ready}, ${shown(wornOut, 1)} worn out`,
              ),
              `${counted(work.towelLoads, 'load')} of towels to wash`,
            ],
            '; ',
          ),
        ),
      ]),
];

/** Each stage's part of the hours that half of such jobs take at most, as the days have them. */
export const stageList = (work: WorkEstimate, isTried: boolean): Block =>
  list(
    {
      text: `Order of the job, as long as half of such jobs take at most (${shown(jobHours(work.job.time, 0.5), 1)}\u00a0h of one person)`,
      short: 'Order of the job',
    },
    work.stages.map(({ stage, mean, wait }, i) => {
      const wait_ = wait === 0 ? '' : `, then ${shown(wait, 0)}\u00a0min to wait`;
      const time = mean === 0 ? WITH_THE_STEPS : `: ${shown(mean * work.medianShare, 0)}\u00a0min`;
      const made = isTried && stage.id === TEST_SPOT ? COUNTED : '';
      return `${i + 1}. ${stage.text}${time}${wait_}${made}`;
    }),
  );

/** Hours are of the whole job, from taking the vehicle in: what is done of it counts, as the readings do. */
const TEST_SPOT = 'test-spot';
const COUNTED = ' (counted, though spots are made: the hours are of the whole job)';

/** A look between two steps takes no time of its own. */
const WITH_THE_STEPS = ' (its time is in the steps)';

const TOP = 3;

function spreadLine({ stages, job: { spread } }: WorkEstimate, learned: LearnedPace | null): Block {
  const top = stages
    .map(({ stage }, i) => ({ id: stage.id, share: spread.stages[i] ?? 0 }))
    .sort((a, b) => b.share - a.share)
    .slice(0, TOP)
    .map(({ id, share }) => `${id} ${shown(100 * share, 0)}\u00a0%`);
  return paragraph(
    'Spread of the time',
    joined(
      [
        `most of it from ${top.join(', ')}`,
        joined(
          [
            `${shown(100 * spread.pace, 0)}\u00a0% is a pace not yet known${learned === null ? ' (your own hours narrow it: --history)' : ''}`,
            `${shown(100 * spread.job, 0)}\u00a0% one job against the next`,
          ],
          ', ',
        ),
      ],
      '; ',
    ),
  );
}

function historyLine({ jobs, factor, stages, error }: LearnedPace): Block {
  const off = (logError: number): string => `${shown(percentOff(logError), 0)}\u00a0%`;
  const errors =
    error === null
      ? []
      : [
          `estimates were off by ${off(error.before)}, by the other jobs’ pace by ${off(error.after)}`,
        ];
  const own = stages.map(
    (one) => `${one.stage} ×\u00a0${shown(one.factor, 2)} (${counted(one.records, 'record')})`,
  );
  return paragraph(
    'Own hours',
    joined(
      [
        `${counted(jobs, 'job')} took ${shown(factor.middle, 2)} times the estimate (${shown(factor.low, 2)}–${shown(factor.high, 2)})`,
        ...errors,
        ...(own.length === 0 ? [] : [`beyond that ${own.join(', ')}`]),
      ],
      '; ',
    ),
  );
}
