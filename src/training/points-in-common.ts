/** Points of one name that two surveys read on one panel, with the value of each. */
import { type GradedSurvey, readPanels } from './graded-survey.ts';

export type CommonPoint = { readonly one: number; readonly other: number };

export const pointsInCommon = (one: GradedSurvey, other: GradedSurvey): readonly CommonPoint[] =>
  readPanels(one).flatMap(({ panel, points }) =>
    readPanels(other)
      .filter((theirs) => theirs.panel.id === panel.id)
      .flatMap((theirs) =>
        points.flatMap(({ point, thickness }) =>
          theirs.points
            .filter((their) => their.point === point)
            .map((their) => ({ one: thickness, other: their.thickness })),
        ),
      ),
  );
