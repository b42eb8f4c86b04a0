/**
 * Values that scatter less than film does: the variance between points against that of the reference, by F, on panels of
 * even film. All of them together; and by how many of them read more even than theirs in the reference (their F has a
 * chance under that of an even panel, counted by the binomial law): who makes up half of a survey is seen by the second.
 */
import { says, um } from '../base/sentence.ts';
import { binomialUpperTail } from '../base/stats/incomplete-beta.ts';
import { pooledVariance, type VarianceOf } from '../base/stats/pooled-variance.ts';
import { sampleVariance } from '../base/stats/summary.ts';
import { type Checked, lowerF, type MadeUp, valuesOf, varianceThere } from './checked-values.ts';
import { faceReadings, type ReadPanel, readPanels } from './graded-survey.ts';
import { together as named, reason } from './reasons.ts';

type EvenPanel = {
  readonly read: ReadPanel;
  readonly dof: number;
  readonly variance: number;
  /** Of so even a panel, or one more so. */
  readonly chance: number;
};

export const evenPanels = ({ panels, reference, trainee }: Checked): readonly EvenPanel[] =>
  panels.flatMap((read): readonly EvenPanel[] => {
    const theirs = reference.panels.get(read.panel.id);
    if (theirs?.even !== true) return [];
    const [dof, variance] = [read.points.length - 1, sampleVariance(valuesOf(read))];
    const there = varianceThere(read, theirs, trainee);
    // Marks that the reference reads alike are no measure: nobody reads them more even.
    const chance = there.variance === 0 ? 1 : lowerF(variance / there.variance, dof, there.dof);
    return [{ read, dof, variance, chance }];
  });

export function tooRegular(checked: Checked): readonly MadeUp[] {
  const even = evenPanels(checked);
  if (even.length === 0) return [];
  const { evenPanel, falseAlarm } = checked.slips;
  const flat = even.filter(({ chance }) => chance < evenPanel);
  const rest = even.filter((one) => !flat.includes(one));
  const [together, counted] = [
    chanceTogether(even, checked),
    binomialUpperTail(flat.length, even.length, evenPanel),
  ];
  // Who made up some panels and read the others is told of those.
  const isPart = rest.length > 0 && chanceTogether(rest, checked) >= falseAlarm;
  if (isPart && counted < falseAlarm) {
    return [onSome(flat, even, checked, Math.min(together, counted))];
  }
  return together < falseAlarm ? [onAll(even, checked, together)] : [];
}

/** One panel at the least. */
const pooled = (panels: readonly EvenPanel[]): VarianceOf => pooledVariance(panels) as VarianceOf;

function chanceTogether(panels: readonly EvenPanel[], { reference: { film } }: Checked): number {
  const { variance, dof } = pooled(panels);
  return lowerF(variance / film.variance, dof, film.dof);
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
  const where = `on ${flat.length} of ${even.length} panels (${names})`;
  return { chance, panels, told: regular(flat, checked, where, panels) };
}

const regular = (
  panels: readonly EvenPanel[],
  { trainee, film }: Checked,
  where: string,
  about: readonly string[],
) =>
  reason(
    'too-regular',
    says`your points ${where} differ by ${um(Math.sqrt(pooled(panels).variance), 2)} (SD), on this car film varies by ${um(film)}: too regular to be true; spread the points over the panel, and write each reading as it comes`,
    {
      panels: about,
      at: panels.flatMap(({ read }) => faceReadings(trainee, read.panel.id))[0],
    },
  );
