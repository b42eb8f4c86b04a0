/** Places that are to be read besides more points of the face: what lies there no such point tells. */
import { sidePaintedWith } from '../condition/painted-side.ts';
import { unreadPlaces } from '../place-note.ts';
import type { PanelSurvey } from '../survey.ts';

export type PlaceToRead = {
  /** Id of the panel. */
  readonly panel: string;
  /** By what name it is read; null where any will do. */
  readonly point: string | null;
  readonly place: 'face' | 'shut';
};

/** The shuts of doors that tell whether a side was painted again, then places worked deeper that nobody read since. */
export const placesToRead = (panels: readonly PanelSurvey[]): readonly PlaceToRead[] => [
  ...shutsToRead(panels),
  ...panels.flatMap(({ panel, facts }) =>
    [...new Set(unreadPlaces(facts).map(({ point }) => point))].map(
      (point): PlaceToRead => ({ panel: panel.id, point, place: 'face' }),
    ),
  ),
];

function shutsToRead(panels: readonly PanelSurvey[]): readonly PlaceToRead[] {
  const doors = panels.flatMap((one) => sidePaintedWith(one)?.shutsWanted ?? []);
  return [...new Set(doors.map(({ id }) => id))].map((panel) => ({
    panel,
    point: null,
    place: 'shut',
  }));
}
