/** The sheet of one trainee: the mark and how it comes about, panel by panel, and what to do. No one else is named. */

import { counted } from '../../base/counted.ts';
import { shownFile } from '../../base/file-name.ts';
import { textIn } from '../../base/remark.ts';
import { figure, shown } from '../../base/rounding.ts';
import {
  bare,
  nextFact,
  nextSentence,
  says,
  tell,
  thicknessText,
  um,
  unitName,
} from '../../base/sentence.ts';
import type { LengthUnit } from '../../base/units.ts';
import type { GradedClass, GradedTrainee } from '../../tasks/grade/grade-request.ts';
import type { CarBias } from '../../training/car-bias.ts';
import type { Found } from '../../training/found.ts';
import type { Grade } from '../../training/grade-trainee.ts';
import type { Mark } from '../../training/mark.ts';
import type { PanelScore } from '../../training/panel-score.ts';
import { together } from '../../training/reasons.ts';
import type { ReferencePanel } from '../../training/reference.ts';
import type { VoidPanel } from '../../training/void-panels.ts';
import { column, figures, filmFigures } from '../columns.ts';
import { joined, toldFacts } from '../facts.ts';
import {
  type Block,
  type Cell,
  type Column,
  cell,
  gap,
  list,
  paragraph,
  type Said,
  title,
} from '../model.ts';
import { wholePercents } from '../whole-percents.ts';
import type { GradePage } from './grade-blocks.ts';
import {
  attemptName,
  becauseText,
  carName,
  criterionNames,
  markText,
  percentText,
  scoreText,
  signedText,
  verdictOf,
  verdictText,
  voidText,
} from './grade-words.ts';
import { reasonText } from './trainee-lines.ts';

export function gradeSheet(
  trainee: GradedTrainee,
  graded: GradedClass,
  { unit, verbose }: GradePage,
): readonly Block[] {
  const { grade } = trainee;
  const verdict = verdictText(verdictOf(trainee));
  const mark = grade === null ? '' : `, ${markText(grade.mark.share, graded.marking.passMark)}`;
  const head = [
    title(`Sheet of ${attemptName(trainee)}: ${verdict}${mark}`),
    paragraph(null, about(trainee, graded)),
    ...(grade === null || grade.grounds.length === 0
      ? []
      : [paragraph('Verdict', `${becauseText(grade)}.`)]),
  ];
  if (grade === null) return [...head, gap, ...notReadBlocks(trainee)];
  return [
    ...head,
    gap,
    markTable(grade.mark),
    paragraph(null, passText(grade, graded)),
    ...voidBlocks(grade),
    gap,
    panelTable(grade, graded, { unit, verbose }),
    ...gaugeBlocks(trainee, graded, unit),
    ...carBlocks(grade, unit),
    ...foundBlocks(grade),
    ...conditionBlocks(grade),
    gap,
    ...whatToDo(grade, unit),
    gap,
    paragraph(
      'How it is scored',
      toldFacts(
        says`z is how far a panel’s mean is from the reference, in units of σ_pt (${um(graded.sigmaPt.value)})${nextFact}z′ allows besides for the film between your points and the reference’s.${nextSentence}Up to 2 is satisfactory, under 3 questionable, 3 and more unsatisfactory (ISO 13528).${nextSentence}No one fails on one panel alone.`,
        unit,
      ),
    ),
  ];
}

function about({ file, date, attempt, attempts, name }: GradedTrainee, graded: GradedClass): Said {
  const earlier = graded.trainees
    .filter((one) => one.name === name && one.attempt !== attempt)
    .map((one) => {
      const mark =
        one.grade === null ? '' : ` ${markText(one.grade.mark.share, graded.marking.passMark)}`;
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
  return joined(parts, '; ', '.');
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

/** Weights are those of what could be judged, and marks are counted in them: both add up as they are printed. */
function markTable({ criteria, share: reached }: Mark): Block {
  const judged = criteria.flatMap(({ criterion, weight, share }) =>
    share === null || weight === 0 ? [] : [{ criterion, weight, share }],
  );
  const whole = judged.reduce((sum, { weight }) => sum + weight, 0);
  const weights = wholePercents(
    judged.map(({ weight }) => (100 * weight) / whole),
    100,
  );
  const marks = wholePercents(
    judged.map(({ share }, i) => (weights[i] ?? 0) * share),
    100 * reached,
  );
  const percent = (value: number | undefined): Cell => cell(`${value ?? 0} %`);
  return {
    kind: 'table',
    columns: [column('criterion'), figures('weight'), figures('reached'), figures('marks')],
    rows: criteria
      .filter(({ weight }) => weight > 0)
      .map(({ criterion, share }): readonly Cell[] => {
        const name = cell(criterionNames[criterion]);
        if (share === null) return [name, cell('–'), cell('–'), cell('–')];
        const at = judged.findIndex((one) => one.criterion === criterion);
        return [name, percent(weights[at]), cell(percentText(share)), percent(marks[at])];
      }),
  };
}

function passText(
  { mark: { criteria, share: reached }, verdict, grounds }: Grade,
  { marking, rubric }: GradedClass,
): string {
  const by = rubric === null ? '' : ` (rubric ${rubric})`;
  const none = criteria.some(({ share, weight }) => share === null && weight > 0)
    ? ' A dash: nothing to judge by, its weight goes to the others.'
    : '';
  const failedBy = grounds.includes('under-pass-mark') || reached < marking.passMark;
  const otherwise =
    verdict === 'unsatisfactory' && !failedBy
      ? ' The mark would pass: the verdict is for what is told above.'
      : '';
  return `The pass mark is ${percentText(marking.passMark)}${by}.${none}${otherwise}`;
}

/** Who read them must be able to say so. */
function voidBlocks(grade: Grade): readonly Block[] {
  const text = voidText(grade);
  if (text === '') return [];
  const unread = grade.voided.some(({ as }) => as === 'unread');
  const say = unread ? ['If you read these panels at the car, say so to your trainer.'] : [];
  return [paragraph('Void', joined([`${text}.`, ...say], ' '))];
}

function panelTable(grade: Grade, { reference }: GradedClass, { unit, verbose }: GradePage): Block {
  const film = (title: string): Column => filmFigures(title, unit);
  return {
    kind: 'table',
    columns: [
      column(`panel (${unitName(unit)})`),
      { ...figures('n'), said: 'points' },
      film('mean'),
      film('reference'),
      { ...film('differs'), leads: true },
      figures('z'),
      ...(verbose ? [figures('ζ'), figures('E_n')] : []),
      { ...column('verdict'), leads: true },
    ],
    rows: [...reference.panels.values()].map((panel) => {
      const score = grade.scores.find((one) => one.panel.id === panel.panel.id);
      if (score === undefined) return unreadRow(panel, unit, verbose);
      const voided = grade.voided.find((one) => one.panel.id === panel.panel.id);
      return panelRow(score, voided, { unit, verbose });
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

const VOID: Readonly<Record<VoidPanel['as'], string>> = {
  unread: 'not counted',
  wrong: 'slip',
  turned: 'numbers turned',
};

/** Numbers from the other end make no panel better than its mean is. */
const shownVoid = (verdict: PanelScore['verdict'], voided: VoidPanel | undefined): string | null =>
  voided === undefined || (voided.as === 'turned' && verdict !== 'satisfactory')
    ? null
    : VOID[voided.as];

function panelRow(
  score: PanelScore,
  voided: VoidPanel | undefined,
  { unit, verbose }: GradePage,
): readonly Cell[] {
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
    cell(
      shownVoid(verdict, voided) ?? verdict,
      voided === undefined && verdict === 'satisfactory' ? 'plain' : 'binding',
    ),
  ];
}

/** The trainee’s own gauge, or that readings were put right by everybody’s: they are not what the display showed. */
function gaugeBlocks(
  { name }: GradedTrainee,
  { assumptions }: GradedClass,
  unit: LengthUnit,
): readonly Block[] {
  const own = assumptions.filter(
    ({ code, text }) => code === 'own-gauge' && text.startsWith(`${name} `),
  );
  const said = own.length > 0 ? own : assumptions.filter(({ code }) => code === 'gauge-adjusted');
  return said.map((one) => paragraph('Gauge', `${textIn(one, unit)}.`));
}

function carBlocks(grade: Grade, unit: LengthUnit): readonly Block[] {
  const text = [...carText(grade, unit), ...limitsText(grade, unit), ...repeatsText(grade, unit)];
  return text.length === 0 ? [] : [paragraph('Agreement', joined(text, ' '))];
}

function carText({ bias }: Grade, unit: LengthUnit): readonly string[] {
  if (bias === null) return [];
  const [mean, low, high] = [bias.mean, bias.low, bias.high].map((one) => signedText(one, unit));
  return [
    `over the whole car you read ${mean} ${unitName(unit)} from the reference (95 %: ${low} to ${high}); a single panel far off hardly moves that.${slightBias(bias)}`,
  ];
}

/** A bias that is no chance and no fault either: worth a look at the gauge, and costs nothing. */
const slightBias = ({ low, high, verdict }: CarBias): string =>
  verdict === 'satisfactory' && low * high > 0
    ? ' That is more than chance and no more than is allowed: check the gauge’s zero and a shim before the next car.'
    : '';

/** With the panels that they leave out; of too few that are left there are none. */
function limitsText({ agreement, slipped, scores }: Grade, unit: LengthUnit): readonly string[] {
  const names = together(slipped.map(({ name }) => name));
  if (agreement === null) {
    return slipped.length === 0
      ? []
      : [
          `No limits of agreement: ${slipped.length} of ${counted(scores.length, 'panel')} are void (${names}), and how well the car is read shows once that is mended.`,
        ];
  }
  const [low, high] = agreement.limits.map((limit) => signedText(limit, unit));
  const known = (agreement.upperInterval[1] - agreement.upperInterval[0]) / 2;
  const without = slipped.length === 0 ? '' : `, ${names} left out as void`;
  return [
    `Limits of agreement: 95 % of panels from ${low} to ${high} ${unitName(unit)} of it${without} (each limit known to ± ${thicknessText(known, unit)}).`,
  ];
}

const repeatsText = ({ repeatability }: Grade, unit: LengthUnit): readonly string[] =>
  repeatability === null
    ? []
    : [
        tell(
          says`Repeats differ by ${um(repeatability.sd, 2)} (SD, ${figure(repeatability.dof)} degrees of freedom; up to ${bare(repeatability.allowed, 2)} is usual).`,
          unit,
        ),
      ];

function foundBlocks({ lowSpots, repairs }: Grade): readonly Block[] {
  const parts = [...foundPart('low spots', lowSpots), ...foundPart('repaired panels', repairs)];
  return parts.length === 0 ? [] : [paragraph('Found', joined(parts, '; ', '.'))];
}

function foundPart(what: string, { found, of, interval }: Found): readonly string[] {
  if (interval === null) return [];
  const [low, high] = interval;
  return [
    `${found} of ${of} ${what} (95 %: ${shown(100 * low, 0)} to ${percentText(high)} of such)`,
  ];
}

function conditionBlocks({ conditions }: Grade): readonly Block[] {
  if (conditions === null) return [];
  const { of, alike, kappa, otherwise } = conditions;
  const beyond = kappa === null ? '' : ` (kappa ${scoreText(kappa, 2)})`;
  const said = `${alike} of ${counted(of, 'panel')} as the reference says${beyond}`;
  const others = otherwise.map(
    ({ panel, own, theirs }) => `${panel.name} reads as ${own}, the reference as ${theirs}`,
  );
  return [
    paragraph('Conditions', {
      text: `${said}${others.length === 0 ? '' : `: ${others.join('; ')}`}.`,
      facts: [said, ...others],
    }),
  ];
}

const whatToDo = ({ reasons }: Grade, unit: LengthUnit): readonly Block[] =>
  reasons.length === 0
    ? [paragraph('What to do', 'nothing to mend.')]
    : [
        list(
          'What to do',
          reasons.map((reason) => reasonText(reason, unit)),
        ),
      ];
