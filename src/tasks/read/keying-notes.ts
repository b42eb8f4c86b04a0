import { type Diagnostic, note } from '../../base/diagnostics.ts';
import { keyingQuestion, keyingSlips } from '../../film/condition/keying-slips.ts';
import type { Reading } from '../../film/reading.ts';
import type { PanelSurvey } from '../../film/survey.ts';

/** A value that looks keyed wrongly is pointed at where it stands, and taken as it is. */
export const keyingNotes = (
  panels: readonly Pick<PanelSurvey, 'panel' | 'points'>[],
  readings: readonly Reading[],
): readonly Diagnostic[] =>
  panels
    .filter(({ points }) => keyingSlips(points).length > 0)
    .flatMap(({ panel, points }) =>
      keyingSlips(points).map((slip) => {
        const origin = readings.find(
          (reading) => reading.panel === panel.id && reading.point === slip.point,
        )?.origin;
        return note('keying-slip', `${panel.name}: ${keyingQuestion(slip).text}`, {
          at: origin,
          hint: 'look at the gauge or read the point again; the value is taken as it is',
        });
      }),
    );
