/** What a job states of earlier work: how sure it is held to be, in the place of what, besides what record. */
import { spoken } from '../../base/remark.ts';
import { type Sentence, says, um } from '../../base/sentence.ts';
import type { FilmModel } from '../../film/film-model.ts';
import { panelNames } from '../../film/template/side-names.ts';
import type { VehicleTemplate } from '../../film/template/template.ts';
import type { Assumption } from './assumption.ts';
import type { EffectiveFacts } from './panel-facts.ts';

/**
 * A record and what is stated both count, as `taken_um` is what went besides the record: one work told in both would
 * count twice, so it is said. That nothing was ever taken is no figure, and nothing is said of it. Named are the panels
 * that were read.
 */
export function earlierWorkAssumptions(
  facts: ReadonlyMap<string, EffectiveFacts>,
  { panels }: VehicleTemplate,
  { unknownClear, unknownLife }: FilmModel['earlier'],
  isRead: (id: string) => boolean,
): readonly Assumption[] {
  const about = (
    code: string,
    isOf: (own: EffectiveFacts, taken: number) => boolean,
    said: (names: string) => Sentence,
  ): readonly Assumption[] => {
    const found = panels.filter(({ id }) => {
      const own = facts.get(id);
      const taken = own?.taken.value ?? 0;
      return own !== undefined && taken > 0 && isOf(own, taken);
    });
    const read = found.filter(({ id }) => isRead(id));
    const names = found.length === panels.length ? 'every panel' : panelNames(read).join(', ');
    return read.length === 0 ? [] : [{ code, ...spoken(said(names)), origin: 'job' }];
  };
  return [
    ...about(
      'record-and-stated',
      ({ recorded }) => (recorded.value?.mean ?? 0) > 0,
      (names) =>
        says`what is stated as taken counts besides what is on record of ${names}: leave out of "taken_um" what the record holds`,
    ),
    ...about(
      'taken-exact',
      ({ takenSd }) => takenSd.value === 0,
      (names) => says`"taken_um" of ${names} taken as exact (no sd)`,
    ),
    ...about(
      'taken-instead',
      (_, taken) => taken < unknownLife,
      (names) =>
        says`"taken_um" of ${names} lets more go than "unknown" (${um(unknownClear, null)} of topcoat, ${um(unknownLife, null)} of life)`,
    ),
  ];
}
