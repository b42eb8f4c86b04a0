/** Readings of people who read the same points apart: it is said, and the means are held to be that much less sure. */
import { type Diagnostic, warning } from '../../base/diagnostics.ts';
import { saidFile } from '../../base/file-name.ts';
import { spoken } from '../../base/remark.ts';
import { shown } from '../../base/rounding.ts';
import { bare, says, um } from '../../base/sentence.ts';
import { type OperatorsApart, operatorsApart } from '../../film/between-operators.ts';
import type { FilmModel } from '../../film/film-model.ts';
import type { Reading } from '../../film/reading.ts';
import { roleOfKey } from '../../intake/beside/sayings.ts';
import type { ReadInput } from '../read/read-request.ts';
import type { Assumption } from '../settings/assumption.ts';

export type ByOperators = {
  readonly model: FilmModel;
  readonly diagnostics: readonly Diagnostic[];
  /** Where they read in files of their own, which then are perhaps of two cars. */
  readonly assumptions: readonly Assumption[];
};

/** Readings by the operator that they or their file name; of several files that name none, by the file. */
export function withOperators(
  readings: readonly Reading[],
  inputs: readonly ReadInput[],
  model: FilmModel,
): ByOperators {
  const operatorOf = operatorsBy(readings, inputs);
  const pointsAreNamed = inputs.every(({ decisions }) => namesPoints(decisions));
  const apart = operatorsApart(readings, operatorOf, { ...model.measurement, pointsAreNamed });
  if (apart === undefined) return { model, diagnostics: [], assumptions: [] };
  const measurement = { ...model.measurement, betweenOperators: apart.sd };
  const filesOf = (operator: string): readonly string[] =>
    readings.filter((one) => operatorOf(one) === operator).map(({ origin }) => origin.file);
  const later = new Set(filesOf(apart.higher));
  const isOneFile = filesOf(apart.lower).some((file) => later.has(file));
  return {
    model: { ...model, measurement },
    diagnostics: [told(apart)],
    assumptions: isOneFile ? [] : [filesDoubted(apart)],
  };
}

const filesDoubted = (apart: OperatorsApart): Assumption => ({
  code: 'files-doubted',
  ...spoken(
    says`${apart.higher} reads ${bare(apart.difference, 1)} ± ${um(apart.expanded, 1)} more than ${apart.lower} on the ${apart.points} points that both read`,
  ),
  origin: 'readings',
});

/** Everybody who is named as having read any of them, in order of first appearance. */
export function readersOf(
  readings: readonly Reading[],
  inputs: readonly ReadInput[],
): readonly string[] {
  const operatorOf = operatorsBy(readings, inputs);
  return [...new Set(readings.flatMap((reading) => operatorOf(reading) ?? []))];
}

/** Who read a reading, as it or its file names them. */
export function operatorsBy(
  readings: readonly Reading[],
  inputs: readonly ReadInput[],
): (reading: Reading) => string | undefined {
  const isOneFile = readings.every(({ origin }) => origin.file === readings[0]?.origin.file);
  const byFile = new Map(
    inputs.map(({ file, decisions }) => {
      const named = decisions?.metadata.find(({ key }) => roleOfKey(key) === 'operator')?.value;
      return [file, named ?? (isOneFile ? undefined : saidFile(file))];
    }),
  );
  return ({ operator, origin }) => operator ?? byFile.get(origin.file);
}

const namesPoints = (decisions: ReadInput['decisions']): boolean =>
  decisions !== null && (decisions.columns.has('point') || decisions.layout === 'wide');

const told = ({ lower, higher, difference, expanded, points, example }: OperatorsApart) =>
  warning(
    'operators-differ',
    `${higher} reads ${shown(difference, 1)} ± ${shown(expanded, 1)} µm (95 %) more than ${lower} on the ${points} points that both read, more than chance: every mean counts as that much less sure`,
    {
      at: example.origin,
      hint: 'check both gauges on shims, or leastcut grade the two; then survey one of them alone',
    },
  );
