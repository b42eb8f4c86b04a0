/** The page of a class: everybody in a row, then what each has to mend, then the class as a whole. */
import { shownFile } from '../../base/file-name.ts';
import { groupBy } from '../../base/group-by.ts';
import { textIn } from '../../base/remark.ts';
import { figure, shown } from '../../base/rounding.ts';
import { says, tell, thicknessText, um, unitName } from '../../base/sentence.ts';
import { median } from '../../base/stats/summary.ts';
import type { LengthUnit } from '../../base/units.ts';
import type { CopiedSurveys, GradedClass, GradedTrainee } from '../../tasks/grade/grade-request.ts';
import type { ClassPanel, ClassView, FoundByClass } from '../../training/class-view.ts';
import { type Reason, type ReasonCode, together } from '../../training/reasons.ts';
import { type Block, type Cell, type Column, cell, gap, paragraph, title } from '../model.ts';
import { counted } from '../words.ts';
import {
  attemptName,
  becauseText,
  carName,
  foundText,
  percentText,
  scoreText,
  signedText,
  type TraineeVerdict,
  verdictOf,
  verdictText,
} from './grade-words.ts';

export type GradePage = { readonly unit: LengthUnit; readonly verbose: boolean };

export function gradeBlocks(graded: GradedClass, { unit, verbose }: GradePage): readonly Block[] {
  const car = carName(graded);
  return [
    title(`Grading${car === '' ? '' : ` on ${car}`}: ${summary(graded.trainees)}`),
    paragraph(null, comparedWith(graded)),
    paragraph('Columns', whatColumnsSay(graded, unit)),
    gap,
    classTable(graded.trainees, unit),
    gap,
    ...graded.trainees.flatMap((trainee) => told(trainee, unit, verbose)),
    ...copiedBlocks(graded, unit),
    ...foundBlocks(graded.view),
    ...hardPanels(graded.view.panels, unit),
    ...conditionBlocks(graded),
    ...gaugeRrBlocks(graded, unit),
    ...assumedBlocks(graded, unit),
  ];
}

const VERDICTS: readonly TraineeVerdict[] = [
  'satisfactory',
  'questionable',
  'unsatisfactory',
  'not-read',
];

function summary(trainees: readonly GradedTrainee[]): string {
  const people = new Set(trainees.map(({ name }) => name)).size;
  const latest = trainees.filter(({ attempt, attempts }) => attempt === attempts);
  const counts = VERDICTS.map((verdict) => ({
    verdict,
    count: latest.filter((trainee) => verdictOf(trainee) === verdict).length,
  }));
  const parts = counts
    .filter(({ count }) => count > 0)
    .map(({ verdict, count }) => `${count} ${verdictText(verdict)}`);
  return `${counted(people, 'trainee')}, ${parts.join(', ')}`;
}

function comparedWith({ reference, referenceFile, assessor, date }: GradedClass): string {
  const panels = [...reference.panels.values()];
  const points = panels.reduce((sum, { count }) => sum + count, 0);
  const by = assessor === null ? '' : ` by ${assessor}`;
  const day = date === null ? '' : `, ${date}`;
  return reference.kind === 'expert'
    ? `Against ${shownFile(referenceFile ?? '')}${by}${day}: ${counted(panels.length, 'panel')} at ${counted(points, 'point')}.`
    : `Against the consensus of the class, the robust mean of each panel: ${counted(panels.length, 'panel')}.`;
}

const whatColumnsSay = ({ sigmaPt, settings }: GradedClass, unit: LengthUnit): string =>
  tell(
    says`off: panels ${figure(settings.training.scores.unsatisfactory)} σ or more from the reference (σ_pt ${um(sigmaPt.value)}); bias: over the whole car; SD: of repeats; low, repairs: low spots and repaired panels found. No one fails on one panel alone.`,
    unit,
  );

const right = (name: string): Column => ({ title: name, align: 'right' });
const column = (name: string): Column => ({ title: name, align: 'left' });

function classTable(trainees: readonly GradedTrainee[], unit: LengthUnit): Block {
  const film = (name: string): Column => ({ ...right(name), unit: unitName(unit) });
  return {
    kind: 'table',
    columns: [
      column('trainee'),
      { ...column('verdict'), leads: true },
      { ...right('mark'), leads: true },
      right('panels'),
      right('points'),
      { ...right('off'), said: 'panels off' },
      right(`bias (${unitName(unit)})`),
      film('SD'),
      { ...right('low'), said: 'low spots found' },
      { ...right('repairs'), said: 'repairs found' },
    ],
    rows: trainees.map((trainee) => classRow(trainee, unit)),
  };
}

function classRow(trainee: GradedTrainee, unit: LengthUnit): readonly Cell[] {
  const { grade } = trainee;
  const verdict = verdictOf(trainee);
  const bad = verdict === 'unsatisfactory' || verdict === 'not-read';
  const name = cell(attemptName(trainee));
  const said = cell(verdictText(verdict), bad ? 'binding' : 'plain');
  if (grade === null) return [name, said, ...Array.from({ length: 8 }, () => cell('–'))];
  const { coverage, scores, bias, repeatability, lowSpots, repairs, mark } = grade;
  const off = scores.filter((score) => score.verdict === 'unsatisfactory').length;
  return [
    name,
    said,
    cell(percentText(mark.share)),
    cell(`${coverage.panelsRead}/${coverage.panels}`),
    cell(`${coverage.pointsRead}/${coverage.points}`),
    cell(String(off), off > 0 ? 'binding' : 'plain'),
    cell(bias === null ? '–' : signedText(bias.mean, unit)),
    cell(repeatability === null ? '–' : thicknessText(repeatability.sd, unit)),
    cell(foundText(lowSpots)),
    cell(foundText(repairs)),
  ];
}

/** What stands in the table already, and what makes no difference to the verdict. */
const QUIET: readonly ReasonCode[] = [
  'few-points',
  'not-repeated',
  'panel-doubtful',
  'panel-extra',
  'low-spot-missed',
];
const MOST_TOLD = 2;

function told(trainee: GradedTrainee, unit: LengthUnit, verbose: boolean): readonly Block[] {
  const { grade, notRead } = trainee;
  if (grade === null) {
    const [first] = notRead.filter(({ severity }) => severity !== 'note');
    const at = first?.at?.line === undefined ? '' : ` (line ${first.at.line})`;
    return [paragraph(trainee.name, `not read: ${first?.message ?? 'no reading'}${at}`)];
  }
  const all = verbose ? grade.reasons : grade.reasons.filter(({ code }) => !QUIET.includes(code));
  if (all.length === 0 && grade.grounds.length === 0) return [];
  const shownReasons = all.slice(0, verbose ? all.length : MOST_TOLD);
  const more = all.length - shownReasons.length;
  const texts = [
    ...shownReasons.map((one) => reasonText(one, unit)),
    ...(more === 0 ? [] : [`and ${more} more`]),
  ];
  const text = [becauseText(grade), ...(texts.length === 0 ? [] : [texts.join('; ')])].join(': ');
  return [paragraph(attemptName(trainee), text)];
}

/** They are about all of the file: a line says nothing. */
const OF_THE_WHOLE: readonly ReasonCode[] = [
  'car-off',
  'panels-unread',
  'few-points',
  'not-repeated',
  'too-regular',
  'survey-copied',
];

/** With the line of the file, where it shows. */
export function reasonText(reason: Reason, unit: LengthUnit): string {
  const text = textIn(reason, unit);
  const nowhere = reason.line === null || OF_THE_WHOLE.includes(reason.code);
  return nowhere ? text : `${text} (line ${reason.line})`;
}

function copiedText({ trainees, same, of, apart }: CopiedSurveys, unit: LengthUnit): string {
  const names = trainees.join(' and ');
  return apart === null
    ? `${names} have ${same} of ${of} values in common`
    : tell(
        says`${names} differ by ${um(apart.sd)} (SD of ${of} points), two of this class usually by ${um(apart.usual)}`,
        unit,
      );
}

const copiedBlocks = ({ copied }: GradedClass, unit: LengthUnit): readonly Block[] =>
  copied.length === 0
    ? []
    : [
        paragraph(
          'Copied',
          `${copied.map((pair) => copiedText(pair, unit)).join('; ')}; by chance that hardly happens. Ask both.`,
        ),
      ];

/** How many of the low spots and repairs the class found, all surveys together. */
function foundBlocks({ lowSpots, repairs }: ClassView): readonly Block[] {
  const part = (what: string, { found, of, interval }: FoundByClass): readonly string[] =>
    interval === null
      ? []
      : [
          `${found} of ${of} ${what} (${shown(100 * interval[0], 0)} to ${percentText(interval[1])})`,
        ];
  const parts = [...part('low spots', lowSpots), ...part('repaired panels', repairs)];
  return parts.length === 0
    ? []
    : [paragraph('Found', `${parts.join('; ')}, all surveys together; 95 % intervals, exact.`)];
}

const MOST_HARD = 3;
/** Of fewer, what is hard for one is no matter of the panel. */
const LEAST_READ_BY = 3;

/**
 * Those that fewer read satisfactorily than is usual on this car: who is off everywhere makes no panel hard. Where
 * there is none, the one that scatters most.
 */
function hardPanels(all: readonly ClassPanel[], unit: LengthUnit): readonly Block[] {
  const panels = all.filter(({ count }) => count >= LEAST_READ_BY);
  const shares = panels.flatMap(({ satisfactory }) => satisfactory ?? []);
  const usual = shares.length === 0 ? 1 : median(shares);
  const wrong = panels
    .flatMap(({ reference, satisfactory, count }) =>
      satisfactory === null ? [] : [{ name: reference.panel.name, satisfactory, count }],
    )
    .filter(({ satisfactory }) => satisfactory < usual)
    .sort((a, b) => a.satisfactory - b.satisfactory);
  if (wrong.length > 0) {
    const names = wrong
      .slice(0, MOST_HARD)
      .map(
        ({ name, satisfactory, count }) =>
          `${name} (${Math.round(satisfactory * count)} of ${count})`,
      );
    return [paragraph('Hard panels', `fewest satisfactory on ${names.join(', ')}`)];
  }
  const widest = panels
    .flatMap(({ reference, robust }) =>
      robust === null ? [] : [{ name: reference.panel.name, sd: robust.sd }],
    )
    .sort((a, b) => b.sd - a.sd);
  const [first] = widest;
  return first === undefined
    ? []
    : [
        paragraph(
          'Hard panels',
          `none; the class differs most on the ${first.name} (SD ${tell([um(first.sd)], unit)})`,
        ),
      ];
}

/** All surveys together, and who has the fewest right. */
function conditionBlocks({ view, trainees }: GradedClass): readonly Block[] {
  const { kappa, conditions } = view;
  if (kappa === null) return [];
  const own = trainees
    .filter(({ attempt, attempts }) => attempt === attempts)
    .flatMap(({ name, grade }) =>
      grade === null || grade.conditions.length === 0
        ? []
        : [
            {
              name,
              alike: grade.conditions.filter(([a, b]) => a === b).length,
              of: grade.conditions.length,
            },
          ],
    )
    .sort((one, other) => one.alike / one.of - other.alike / other.of);
  const [least] = own;
  const fewest =
    least === undefined || own.length < 2 || least.alike === least.of
      ? ''
      : `; fewest: ${least.name}, ${least.alike} of ${least.of}`;
  const beyond = kappa.kappa === null ? '' : `, kappa ${scoreText(kappa.kappa, 2)}`;
  return [
    paragraph(
      'Conditions',
      `${conditions.alike} of ${counted(conditions.of, 'panel')} as the reference says, all surveys together (${percentText(kappa.observed)}${beyond})${fewest}.`,
    ),
  ];
}

function gaugeRrBlocks(
  { view: { gaugeRr: rr }, leftOut }: GradedClass,
  unit: LengthUnit,
): readonly Block[] {
  const without = leftOutText(leftOut);
  if (rr === null) {
    return [
      paragraph(
        'Gauge R&R',
        `none: it takes two trainees with two readings or more at the same marks or panels${without}.`,
      ),
    ];
  }
  const { result, parts, counts } = rr;
  const { sd, studyVariation, ndc, pooled } = result;
  const one = (value: number): string => tell([um(value, 2)], unit);
  const within = parts === 'panels' ? ' (the film between points in it)' : '';
  const interaction = pooled ? 'not proved' : one(sd.int);
  const share =
    studyVariation === null ? '' : `; R&R is ${percentText(studyVariation)} of the study variation`;
  const classes = ndc === null ? '' : `, ndc ${ndc} by ANOVA`;
  return [
    paragraph(
      'Gauge R&R',
      `${counts.parts} ${parts}, ${counts.trainees} trainees${without}, ${counts.trials} readings each: repeatability ${one(sd.ev)}${within}, reproducibility ${one(sd.av)}, interaction ${interaction}${share}${classes}.`,
    ),
  ];
}

const WHY_LEFT_OUT: Readonly<Record<GradedClass['leftOut'][number]['why'], string>> = {
  slip: 'with slips in the readings',
  'half-unread': 'with half of the car unread',
};

/** ` (without caja and dov, with slips in the readings)` */
function leftOutText(leftOut: GradedClass['leftOut']): string {
  const groups = groupBy(leftOut, ({ why }) => why);
  const parts = [...groups].map(
    ([why, some]) => `${together(some.map(({ trainee }) => trainee))}, ${WHY_LEFT_OUT[why]}`,
  );
  return parts.length === 0 ? '' : ` (without ${parts.join('; ')})`;
}

export const assumedBlocks = (
  { assumptions }: Pick<GradedClass, 'assumptions'>,
  unit: LengthUnit,
): readonly Block[] =>
  assumptions.length === 0
    ? []
    : [paragraph('Assumed', `${assumptions.map((one) => textIn(one, unit)).join('; ')}.`)];
