/**
 * Gauge repeatability and reproducibility by two-way analysis of variance (AIAG, Measurement Systems
 * Analysis, 4th edition): parts, each read by every operator, each the same number of times.
 *
 * Variance components from the mean squares: repeatability EV² = MS_within; interaction
 * INT² = (MS_parts×operators − MS_within)/r; reproducibility AV² = (MS_operators − MS_parts×operators)/(p·r);
 * part variation PV² = (MS_parts − MS_parts×operators)/(o·r). A negative component counts as 0. Where the
 * interaction is not proved (its F has a chance over `poolOver`) it is pooled into the repeatability, whose
 * mean square then stands in both places. GRR² = EV² + AV² + INT²; TV² = GRR² + PV².
 *
 * ndc, the number of classes that can be told apart, is 1.41·PV/GRR cut to a whole number, at least 1. It is a
 * trap: the average-and-range method gives 5 on the manual’s own example and this one 4, and it grows with the
 * parts that happen to be chosen, not only with the gauge. It compares with an ndc of the same method only.
 *
 * `readings[part][operator][trial]`. Two parts, two operators and two trials are the least; an uneven table
 * or a value that is not finite throws a RangeError.
 */
import { at } from '../at.ts';
import { fUpperTail } from './incomplete-beta.ts';
import { mean } from './summary.ts';

export type SumOfSquares = { readonly ss: number; readonly dof: number };

export type GaugeRr = {
  readonly parts: SumOfSquares;
  readonly operators: SumOfSquares;
  readonly interaction: SumOfSquares;
  readonly within: SumOfSquares;
  /** Chance of an interaction this large where there is none. */
  readonly interactionChance: number;
  readonly pooled: boolean;
  /** Standard deviations. */
  readonly sd: Readonly<Record<'ev' | 'av' | 'int' | 'grr' | 'pv' | 'tv', number>>;
  /** GRR/TV, 0 to 1; null where nothing varies. */
  readonly studyVariation: number | null;
  /** Null where the gauge does not vary. */
  readonly ndc: number | null;
};

type Table = readonly (readonly (readonly number[])[])[];

export function gaugeRr(readings: Table, { poolOver = 0.05 } = {}): GaugeRr {
  const [p, o, r] = sizes(readings);
  const { parts, operators, interaction, within } = sumsOfSquares(readings);
  const [msWithin, msInteraction] = [within.ss / within.dof, interaction.ss / interaction.dof];
  const interactionChance =
    msInteraction === 0 ? 1 : fUpperTail(msInteraction / msWithin, interaction.dof, within.dof);
  const pooled = interactionChance > poolOver;
  const ev = pooled ? (within.ss + interaction.ss) / (within.dof + interaction.dof) : msWithin;
  const beside = pooled ? ev : msInteraction;
  const variance = {
    ev,
    av: Math.max(0, (operators.ss / operators.dof - beside) / (p * r)),
    int: pooled ? 0 : Math.max(0, (msInteraction - msWithin) / r),
    pv: Math.max(0, (parts.ss / parts.dof - beside) / (o * r)),
  };
  const grr = variance.ev + variance.av + variance.int;
  const tv = grr + variance.pv;
  return {
    parts,
    operators,
    interaction,
    within,
    interactionChance,
    pooled,
    sd: {
      ev: Math.sqrt(variance.ev),
      av: Math.sqrt(variance.av),
      int: Math.sqrt(variance.int),
      grr: Math.sqrt(grr),
      pv: Math.sqrt(variance.pv),
      tv: Math.sqrt(tv),
    },
    studyVariation: tv === 0 ? null : Math.sqrt(grr / tv),
    ndc: grr === 0 ? null : Math.max(1, Math.floor(1.41 * Math.sqrt(variance.pv / grr))),
  };
}

function sizes(readings: Table): readonly [parts: number, operators: number, trials: number] {
  const [p, o, r] = [readings.length, readings[0]?.length ?? 0, readings[0]?.[0]?.length ?? 0];
  const even = readings.every(
    (part) => part.length === o && part.every((trials) => trials.length === r),
  );
  if (!(even && p >= 2 && o >= 2 && r >= 2)) {
    throw new RangeError('parts, operators and trials must be two or more, and the table even');
  }
  return [p, o, r];
}

function sumsOfSquares(
  readings: Table,
): Pick<GaugeRr, 'parts' | 'operators' | 'interaction' | 'within'> {
  const [p, o, r] = sizes(readings);
  const cells = readings.map((part) => part.map(mean));
  const ofPart = cells.map(mean);
  const ofOperator = Array.from({ length: o }, (_, j) => mean(cells.map((part) => at(part, j))));
  const grand = mean(ofPart);
  const squares = (values: readonly number[]): number =>
    values.reduce((sum, value) => sum + value ** 2, 0);
  const apart = cells.flatMap((part, i) =>
    part.map((cell, j) => cell - at(ofPart, i) - at(ofOperator, j) + grand),
  );
  const within = readings.flatMap((part, i) =>
    part.flatMap((trials, j) => trials.map((value) => value - at(at(cells, i), j))),
  );
  return {
    parts: { ss: o * r * squares(ofPart.map((value) => value - grand)), dof: p - 1 },
    operators: { ss: p * r * squares(ofOperator.map((value) => value - grand)), dof: o - 1 },
    interaction: { ss: r * squares(apart), dof: (p - 1) * (o - 1) },
    within: { ss: squares(within), dof: p * o * (r - 1) },
  };
}
