import type { Explained } from '../../tasks/explain/explain.ts';
import type { Explanation } from '../../tasks/explain/explanation.ts';
import type { Assumption } from '../../tasks/settings/assumption.ts';
import { envelope, type RecordContext } from '../envelope.ts';
import type { MachineRecord } from '../model.ts';
import { recordedFigure } from '../recorded.ts';

/** `leastcut/explain/1`: every meaning of every word asked for. */
export const explainRecord = (
  explained: readonly Explained[],
  assumptions: readonly Assumption[],
  context: RecordContext,
): MachineRecord => ({
  ...envelope('explain', { vehicle: null, inputs: [], assumptions }, context),
  topics: explained.flatMap(({ word, topics }) =>
    topics.map((topic) => ({ word, ...topicRecord(topic) })),
  ),
});

const topicRecord = ({ kind, id, also, meaning, details, number, example }: Explanation) => ({
  kind,
  id,
  also,
  meaning,
  details,
  number:
    number === null
      ? null
      : {
          value: recordedFigure(number.value),
          unit: number.unit,
          origin: number.origin,
          where: number.where,
          built_in: recordedFigure(number.builtIn),
          least: recordedFigure(number.range[0]),
          most: recordedFigure(number.range[1]),
          basis: number.basis,
          source: number.source,
          formula: number.formula,
          used: number.used,
          change: number.change,
        },
  example,
});
