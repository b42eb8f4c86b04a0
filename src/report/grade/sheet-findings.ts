/** What the readings of a trainee show over the whole car: the gauge, how far they agree, what was found. */
import { counted } from '../../base/counted.ts';
import { textIn } from '../../base/remark.ts';
import { figure } from '../../base/rounding.ts';
import { bare, says, tell, thicknessText, um, unitName } from '../../base/sentence.ts';
import type { LengthUnit } from '../../base/units.ts';
import type { GradedClass, GradedTrainee } from '../../tasks/grade/grade-request.ts';
import type { Found } from '../../training/found.ts';
import type { Grade } from '../../training/grade-trainee.ts';
import { together } from '../../training/reasons.ts';
import { joined } from '../facts.ts';
import { type Block, paragraph } from '../model.ts';
import { BIAS_HINT, hintedBias, intervalText, signed, signedText } from './grade-words.ts';
import { panelsWorkedOver } from './panels-worked-over.ts';

/** The trainee’s own gauge, or that readings were put right by everybody’s: they are not what the display showed. */
export function gaugeBlocks(
  { yourGauge }: GradedTrainee,
  { assumptions }: GradedClass,
  unit: LengthUnit,
): readonly Block[] {
  const said =
    yourGauge.length > 0 ? yourGauge : assumptions.filter(({ code }) => code === 'gauge-adjusted');
  return said.map((one) => paragraph('Gauge', `${textIn(one, unit)}.`));
}

export function carBlocks(grade: Grade, unit: LengthUnit, against: string): readonly Block[] {
  const text = [
    ...carText(grade, unit, against),
    ...limitsText(grade, unit),
    ...repeatsText(grade, unit),
  ];
  return text.length === 0 ? [] : [paragraph('Agreement', joined(text, ' '))];
}

function carText(grade: Grade, unit: LengthUnit, against: string): readonly string[] {
  const { bias } = grade;
  if (bias === null) return [];
  const [mean, low, high] = [bias.mean, bias.low, bias.high].map((one) => signedText(one, unit));
  return [
    `over the whole car you read ${mean} ${unitName(unit)} from ${against} (95 %: ${low} to ${high}); a single panel far off hardly moves that.${hintOf(grade)}`,
  ];
}

const hintOf = (grade: Grade): string =>
  hintedBias(grade) === null
    ? ''
    : ` That is more than chance and no more than is allowed: ${BIAS_HINT} before the next car.`;

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

export function foundBlocks(grade: Grade, unit: LengthUnit, against: string): readonly Block[] {
  const { lowSpots, repairs } = grade;
  const parts = [
    ...foundPart('low spots', lowSpots),
    ...foundPart('repaired panels', repairs),
    ...panelsWorkedOver(grade, against)
      .filter(({ isSpot }) => isSpot)
      .map(({ said }) => tell(says`${said}; that takes no marks`, unit)),
  ];
  return parts.length === 0 ? [] : [paragraph('Found', joined(parts, '; ', '.'))];
}

function foundPart(what: string, { found, of, interval }: Found): readonly string[] {
  if (interval === null) return [];
  return [`${found} of ${of} ${what} (95 %, exact: ${intervalText(interval)} of such)`];
}

export function conditionBlocks({ conditions }: Grade, against: string): readonly Block[] {
  if (conditions === null) return [];
  const { of, alike, kappa, otherwise } = conditions;
  const beyond = kappa === null ? '' : ` (kappa ${signed(kappa, 2)})`;
  const said = `${alike} of ${counted(of, 'panel')} as ${against} says${beyond}`;
  const others = otherwise.map(
    ({ panel, own, theirs }) => `${panel.name} reads as ${own}, ${against} as ${theirs}`,
  );
  return [
    paragraph('Conditions', {
      text: `${said}${others.length === 0 ? '' : `: ${others.join('; ')}`}.`,
      facts: [said, ...others],
    }),
  ];
}
