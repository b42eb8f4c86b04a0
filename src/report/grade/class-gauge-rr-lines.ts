/** Gauge R&R of a class, and whose surveys it leaves out. */
import { groupBy } from '../../base/group-by.ts';
import { tell, um } from '../../base/sentence.ts';
import type { LengthUnit } from '../../base/units.ts';
import type { GradedClass } from '../../tasks/grade/grade-request.ts';
import { together } from '../../training/reasons.ts';
import { joined } from '../facts.ts';
import { type Block, paragraph } from '../model.ts';
import { percentText } from './grade-words.ts';

export function gaugeRrBlocks(
  { view: { gaugeRr: rr }, leftOut, mostOfRepeats }: GradedClass,
  unit: LengthUnit,
): readonly Block[] {
  const without = leftOutText(leftOut, rr?.parts ?? 'marked points');
  if (rr === null) {
    return [
      paragraph(
        'Gauge R&R',
        `none: it takes two trainees with two readings or more at the same marks or panels${without}.`,
      ),
    ];
  }
  const { result, parts, counts, most } = rr;
  const { sd, studyVariation, ndc, pooled } = result;
  const one = (value: number): string => tell([um(value, 2)], unit);
  const within = parts === 'panels' ? ' (the film between points in it)' : '';
  const interaction = pooled ? 'not proved' : one(sd.int);
  const figures = [
    `repeatability ${one(sd.ev)}${within}${most === null ? '' : ` (most of it by ${mostOfRepeats}: ${one(most.sd)}, the others ${one(most.others)})`}`,
    `reproducibility ${one(sd.av)}`,
    `interaction ${interaction}`,
  ];
  const share =
    studyVariation === null ? [] : [`R&R is ${percentText(studyVariation)} of the study variation`];
  const classes = ndc === null ? [] : [`ndc ${ndc} by ANOVA`];
  return [
    paragraph(
      'Gauge R&R',
      joined(
        [
          `${counts.parts} ${parts}, ${counts.trainees} trainees${without}, ${counts.trials} readings each`,
          joined([joined([joined(figures, ', '), ...share], '; '), ...classes], ', ', '.'),
        ],
        ': ',
      ),
    ),
  ];
}

const WHY_LEFT_OUT: Readonly<Record<Exclude<LeftOutAs, 'few-marks'>, string>> = {
  slip: 'with slips in the readings',
  'made-up': 'with values that look made up',
  copied: 'with values too like another’s',
  'gauge-drift': 'with a gauge that drifts',
  'not-following': 'with values that do not follow the panels',
  'half-unread': 'with half of the car unread, or read at one point a panel',
  'repeats-alike': 'with repeats all alike',
};

type LeftOutAs = GradedClass['leftOut'][number]['why'];

/** Points that are not marked are none of the marks, however often they were read. */
const fewRead = (parts: string): string => `with few of these ${parts} read twice`;

/** ` (without caja and dov, with slips in the readings)` */
function leftOutText(leftOut: GradedClass['leftOut'], parts: string): string {
  const groups = groupBy(leftOut, ({ why }) => why);
  const texts = [...groups].map(([why, some]) => {
    const as = why === 'few-marks' ? fewRead(parts) : WHY_LEFT_OUT[why];
    return `${together(some.map(({ trainee }) => trainee))}, ${as}`;
  });
  return texts.length === 0 ? '' : ` (without ${texts.join('; ')})`;
}
