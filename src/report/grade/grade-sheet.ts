/** The sheet of one trainee: the mark and how it comes about, panel by panel, and what to do. No one else is named. */
import { shownFile } from '../../base/file-name.ts';
import { figure, shown } from '../../base/rounding.ts';
import { bare, says, tell, thicknessText, um, unitName } from '../../base/sentence.ts';
import type { LengthUnit } from '../../base/units.ts';
import type { GradedClass, GradedTrainee } from '../../tasks/grade/grade-request.ts';
import type { Found } from '../../training/found.ts';
import type { Grade } from '../../training/grade-trainee.ts';
import type { Mark } from '../../training/mark.ts';
import type { PanelScore } from '../../training/panel-score.ts';
import type { ReferencePanel } from '../../training/reference.ts';
import { type Block, type Cell, type Column, cell, gap, list, paragraph, title } from '../model.ts';
import { type GradePage, reasonText } from './grade-blocks.ts';
import {
  attemptName,
  carName,
  criterionNames,
  percentText,
  scoreText,
  signedText,
  verdictOf,
  verdictText,
} from './grade-words.ts';

export function gradeSheet(
  trainee: GradedTrainee,
  graded: GradedClass,
  { unit, verbose }: GradePage,
): readonly Block[] {
  const { grade } = trainee;
  const verdict = verdictText(verdictOf(trainee));
  const mark = grade === null ? '' : `, ${percentText(grade.mark.share)}`;
  const head = [
    title(`Sheet of ${attemptName(trainee)}: ${verdict}${mark}`),
    paragraph(null, about(trainee, graded)),
  ];
  if (grade === null) return [...head, gap, ...notReadBlocks(trainee)];
  return [
    ...head,
    gap,
    markTable(grade.mark),
    paragraph(null, passText(grade.mark, graded)),
    gap,
    panelTable(grade, graded, { unit, verbose }),
    ...carBlocks(grade, unit),
    ...foundBlocks(grade),
    ...conditionBlocks(grade),
    gap,
    ...whatToDo(grade, unit),
    gap,
    paragraph(
      'How it is scored',
      tell(
        says`z is how far a panel’s mean is from the reference, in units of σ_pt (${um(graded.sigmaPt.value)}); z′ allows besides for the film between your points and the reference’s. Up to 2 is satisfactory, under 3 questionable, 3 and more unsatisfactory (ISO 13528). No one fails on one panel alone.`,
        unit,
      ),
    ),
  ];
}

function about(
  { file, date, attempt, attempts, name }: GradedTrainee,
  graded: GradedClass,
): string {
  const earlier = graded.trainees
    .filter((one) => one.name === name && one.attempt !== attempt)
    .map((one) => {
      const mark = one.grade === null ? '' : ` ${percentText(one.grade.mark.share)}`;
      return `${one.attempt}:${mark} ${verdictText(verdictOf(one))}`;
    });
  const car = carName(graded);
  const parts = [
    ...(car === '' ? [] : [car]),
    `read from ${shownFile(file)}`,
    ...(date === null ? [] : [date]),
    ...(graded.assessor === null ? [] : [`reference by ${graded.assessor}`]),
    ...(attempts === 1 ? [] : [`attempt ${attempt} of ${attempts} (${earlier.join(', ')})`]),
  ];
  return `${parts.join('; ')}.`;
}

const notReadBlocks = ({ notRead }: GradedTrainee): readonly Block[] => [
  list(
    'Why it cannot be read',
    notRead.map(({ at, message, hint }) => {
      const line = at?.line === undefined ? '' : `line ${at.line}: `;
      return `${line}${message}${hint === undefined ? '' : `: ${hint}`}`;
    }),
  ),
];

const right = (name: string): Column => ({ title: name, align: 'right' });
const column = (name: string): Column => ({ title: name, align: 'left' });

/** Weights are those of what could be judged. */
function markTable({ criteria }: Mark): Block {
  const whole = criteria.reduce((sum, { weight, share }) => sum + (share === null ? 0 : weight), 0);
  return {
    kind: 'table',
    columns: [column('criterion'), right('weight'), right('reached'), right('marks')],
    rows: criteria
      .filter(({ weight }) => weight > 0)
      .map(({ criterion, weight, share }): readonly Cell[] => {
        const name = cell(criterionNames[criterion]);
        if (share === null) return [name, cell('–'), cell('–'), cell('–')];
        const part = whole === 0 ? 0 : weight / whole;
        return [
          name,
          cell(percentText(part)),
          cell(percentText(share)),
          cell(percentText(part * share)),
        ];
      }),
  };
}

function passText({ criteria }: Mark, { marking, rubric }: GradedClass): string {
  const by = rubric === null ? '' : ` (rubric ${rubric})`;
  const none = criteria.some(({ share, weight }) => share === null && weight > 0)
    ? ' A dash: nothing to judge by, its weight goes to the others.'
    : '';
  return `The pass mark is ${percentText(marking.passMark)}${by}.${none}`;
}

function panelTable(grade: Grade, { reference }: GradedClass, { unit, verbose }: GradePage): Block {
  const film = (name: string): Column => ({ ...right(name), unit: unitName(unit) });
  return {
    kind: 'table',
    columns: [
      column(`panel (${unitName(unit)})`),
      { ...right('n'), said: 'points' },
      film('mean'),
      film('reference'),
      film('differs'),
      right('z'),
      ...(verbose ? [right('ζ'), right('E_n')] : []),
      column('verdict'),
    ],
    rows: [...reference.panels.values()].map((panel) => {
      const score = grade.scores.find((one) => one.panel.id === panel.panel.id);
      return score === undefined ? unreadRow(panel, unit, verbose) : panelRow(score, unit, verbose);
    }),
  };
}

const unreadRow = (
  { panel, mean }: ReferencePanel,
  unit: LengthUnit,
  verbose: boolean,
): readonly Cell[] => [
  cell(panel.name),
  cell('–'),
  cell('–'),
  cell(thicknessText(mean, unit)),
  ...Array.from({ length: verbose ? 4 : 2 }, () => cell('–')),
  cell('not read', 'binding'),
];

function panelRow(score: PanelScore, unit: LengthUnit, verbose: boolean): readonly Cell[] {
  const { panel, count, mean, reference, difference, kind, z, zeta, en, verdict } = score;
  const plain = (value: number | null): Cell => cell(value === null ? '–' : scoreText(value));
  return [
    cell(panel.name),
    cell(String(count)),
    cell(thicknessText(mean, unit)),
    cell(thicknessText(reference.mean, unit)),
    cell(signedText(difference, unit)),
    cell(`${scoreText(z)}${kind === 'z' ? '' : '′'}`),
    ...(verbose ? [plain(zeta), plain(en)] : []),
    cell(verdict, verdict === 'satisfactory' ? 'plain' : 'binding'),
  ];
}

function carBlocks({ bias, agreement, repeatability }: Grade, unit: LengthUnit): readonly Block[] {
  const signed = (value: number): string => signedText(value, unit);
  const [car, limits] = [
    bias === null
      ? []
      : [
          `over the whole car you read ${signed(bias.mean)} ${unitName(unit)} from the reference (95 %: ${signed(bias.low)} to ${signed(bias.high)}).`,
        ],
    agreement === null
      ? []
      : [
          `Limits of agreement: 95 % of panels from ${signed(agreement.limits[0])} to ${signed(agreement.limits[1])} ${unitName(unit)} of it (each limit known to ± ${thicknessText((agreement.upperInterval[1] - agreement.upperInterval[0]) / 2, unit)}).`,
        ],
  ];
  const repeats =
    repeatability === null
      ? []
      : [
          tell(
            says`Repeats differ by ${um(repeatability.sd, 2)} (SD, ${figure(repeatability.dof)} degrees of freedom; up to ${bare(repeatability.allowed, 2)} is usual).`,
            unit,
          ),
        ];
  const text = [...car, ...limits, ...repeats].join(' ');
  return text === '' ? [] : [paragraph('Agreement', text)];
}

function foundBlocks({ lowSpots, repairs }: Grade): readonly Block[] {
  const parts = [...foundPart('low spots', lowSpots), ...foundPart('repaired panels', repairs)];
  return parts.length === 0 ? [] : [paragraph('Found', `${parts.join('; ')}.`)];
}

function foundPart(what: string, { found, of, interval }: Found): readonly string[] {
  if (interval === null) return [];
  const [low, high] = interval;
  return [
    `${found} of ${of} ${what} (95 %: ${shown(100 * low, 0)} to ${percentText(high)} of such)`,
  ];
}

const conditionBlocks = ({ kappa, conditions }: Grade): readonly Block[] =>
  kappa === null
    ? []
    : [
        paragraph(
          'Conditions',
          `${Math.round(kappa.observed * conditions.length)} of ${conditions.length} panels as the reference says${kappa.kappa === null ? '' : ` (kappa ${scoreText(kappa.kappa, 2)})`}.`,
        ),
      ];

const whatToDo = ({ reasons }: Grade, unit: LengthUnit): readonly Block[] =>
  reasons.length === 0
    ? [paragraph('What to do', 'nothing to mend.')]
    : [
        list(
          'What to do',
          reasons.map((reason) => reasonText(reason, unit)),
        ),
      ];
