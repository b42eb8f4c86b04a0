/**
 * Values that scatter less than film does, on panels of even film: of each the chance of so small a variance between points
 * beside the reference (src/training/checked-values.ts). All of them together, by Fisher’s −2·Σ ln of these chances (χ² on
 * two degrees of freedom a panel); and by how many have one under that of an even panel, counted by the binomial law: who
 * makes up half of a survey is seen by the second. Only panels that stand out are told of where the others together look
 * honest; where these are too even as well, if less so, it is the survey as a whole.
 */
import { says, um } from '../base/sentence.ts';
import { regularisedUpperGamma } from '../base/stats/gamma.ts';
import { binomialUpperTail } from '../base/stats/incomplete-beta.ts';
import { pooledVariance, type VarianceOf } from '../base/stats/pooled-variance.ts';
import { sampleVariance } from '../base/stats/summary.ts';
import { sum } from '../base/sum.ts';
import { resolution } from '../base/uncertainty.ts';
import { type Checked, chanceOfSoEven, type MadeUp, valuesOf } from './checked-values.ts';
import { faceReadings, type ReadPanel, readPanels, stepOf } from './graded-survey.ts';
import { together as named, reason } from './reasons.ts';
import type { ReferencePanel } from './reference.ts';

type EvenPanel = {
  readonly read: ReadPanel;
  readonly theirs: ReferencePanel;
  readonly dof: number;
  readonly variance: number;
  /** Of so even a panel, or one more so. */
  readonly chance: number;
};

export const evenPanels = ({ panels, reference, trainee }: Checked): readonly EvenPanel[] => {
  // Three points that a coarse display shows alike are as likely as film that varies by its rounding.
  const rounding = resolution(stepOf(trainee)) ** 2;
  return panels.flatMap((read): readonly EvenPanel[] => {
    const theirs = reference.panels.get(read.panel.id);
    if (theirs?.even !== true || !showsScatter(theirs)) return [];
    const dof = read.points.length - 1;
    const variance = Math.max(rounding, sampleVariance(valuesOf(read)));
    return [
      { read, theirs, dof, variance, chance: chanceOfSoEven(variance, read, { theirs, trainee }) },
    ];
  });
};

/** One point shows none, and what other cars vary by is no proof against anybody. */
export const showsScatter = ({ own }: ReferencePanel): boolean => own.dof > 0;

export function tooRegular(checked: Checked): readonly MadeUp[] {
  const even = evenPanels(checked);
  if (even.length === 0) return [];
  const { evenPanel, honestRest, falseAlarm } = checked.slips;
  const flat = even.filter(({ chance }) => chance < evenPanel);
  const rest = even.filter((one) => !flat.includes(one));
  const [together, counted] = [
    chanceTogether(even),
    binomialUpperTail(flat.length, even.length, evenPanel),
  ];
  // Who made up some panels and read the others is told of those.
  const isPart = rest.length > 0 && (together >= falseAlarm || chanceTogether(rest) >= honestRest);
  if (isPart && counted < falseAlarm) {
    return [onSome(flat, even, checked, Math.min(together, counted))];
  }
  return together < falseAlarm ? [onAll(even, checked, together)] : [];
}

/** One panel at the least. */
const pooled = (panels: readonly VarianceOf[]): number =>
  (pooledVariance(panels) as VarianceOf).variance;

/** No chance is under the least that a number can be told from none by. */
export function chanceTogether(panels: readonly Pick<EvenPanel, 'chance'>[]): number {
  if (panels.length === 0) return 1;
  const statistic = -2 * sum(panels.map(({ chance }) => Math.log(Math.max(chance, 1e-15))));
  return regularisedUpperGamma(panels.length, statistic / 2);
}

const onAll = (even: readonly EvenPanel[], checked: Checked, chance: number): MadeUp => ({
  chance,
  panels: readPanels(checked.trainee).map(({ panel }) => panel.id),
  told: regular(even, checked, 'on a panel', []),
});

function onSome(
  flat: readonly EvenPanel[],
  even: readonly EvenPanel[],
  checked: Checked,
  chance: number,
): MadeUp {
  const panels = flat.map(({ read }) => read.panel.id);
  const names = named(flat.map(({ read }) => read.panel.name));
  const where = `on ${flat.length} of the ${even.length} panels that have even film by the reference (${names})`;
  return { chance, panels, told: regular(flat, checked, where, panels) };
}

const regular = (
  panels: readonly EvenPanel[],
  { trainee, reference }: Checked,
  where: string,
  about: readonly string[],
) => {
  const whose = reference.kind === 'expert' ? 'those of the reference' : 'those of the class';
  const theirs = Math.sqrt(pooled(panels.map((one) => one.theirs.own)));
  return reason(
    'too-regular',
    says`your points ${where} differ by ${um(Math.sqrt(pooled(panels)), 2)} (SD), ${whose} there by ${um(theirs)}: so near lie points of one place (the middle, say), or values that nobody read; spread the points over the panel, and write each reading as it comes`,
    {
      panels: about,
      at: panels.flatMap(({ read }) => faceReadings(trainee, read.panel.id))[0],
    },
  );
};
