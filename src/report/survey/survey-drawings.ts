/** What a page with drawings shows of a survey beside its table: what may go as bars, every point at its place. */

import { thicknessText, unitName } from '../../base/sentence.ts';
import type { LengthUnit } from '../../base/units.ts';
import { type PanelSurvey, partName, partsOf } from '../../film/survey.ts';
import { column, filmFigures } from '../columns.ts';
import { axisFromNothing, inUnit } from '../drawn-axis.ts';
import { type Block, type Cell, cell, type Face, type FacePoint } from '../model.ts';
import { placesOf } from '../point-places.ts';
import { limitWord } from './film-table.ts';

/** Without a panel that was read there is nothing to draw. */
export const surveyDrawings = (read: readonly PanelSurvey[], unit: LengthUnit): readonly Block[] =>
  read.length === 0 ? [] : [budgetBars(read, unit), facesOf(read, unit)];

/** What may go of each part as a bar, which ends at the limit that binds; the next one as a ring. */
function budgetBars(read: readonly PanelSurvey[], unit: LengthUnit): Block {
  const parts = read.flatMap(partsOf);
  const rows = parts.map((part) => ({ part, next: nextLimit(part) }));
  const drawn = rows.flatMap(({ part, next }) => [part.budget, next?.value ?? 0]);
  return {
    kind: 'table',
    label: 'What may go, and the limit it ends at; ○ where the next limit would end it',
    columns: [
      column(`panel (${unitName(unit)})`),
      filmFigures('may go', unit),
      column('bound by'),
      column('next limit'),
      { ...column(`may go (${unitName(unit)})`), axis: axisFromNothing(drawn, unit) },
    ],
    rows: rows.map(({ part, next }): readonly Cell[] => [
      cell(partName(part)),
      cell(thicknessText(part.budget, unit, 2), 'strong'),
      cell(limitWord(part.boundBy.code, part), 'binding'),
      cell(
        next === undefined
          ? '–'
          : `${limitWord(next.code, part)} at ${thicknessText(next.value, unit, 2)}`,
      ),
      {
        kind: 'strip',
        values: [],
        marked: null,
        open: next === undefined ? [] : [inUnit(next.value, unit)],
        bar: { from: 0, to: inUnit(part.budget, unit), look: 'extent' },
      },
    ]),
  };
}

/** The smallest of the limits that do not bind. */
const nextLimit = ({ limits, boundBy }: PanelSurvey) =>
  limits
    .filter((one) => one.code !== boundBy.code && Number.isFinite(one.value))
    .toSorted((a, b) => a.value - b.value)[0];

const facesOf = (read: readonly PanelSurvey[], unit: LengthUnit): Block => ({
  kind: 'faces',
  label: 'Every point, in walking order',
  values: `readings (${unitName(unit)})`,
  faces: read.map((survey) => faceOf(survey, unit)),
});

function faceOf(
  { panel, points, statistics, lowPoints, highPoints }: PanelSurvey,
  unit: LengthUnit,
): Face {
  const { places, arrow } = placesOf(panel, points);
  const facePoints = points.map(({ point, thickness: film }, i): FacePoint => {
    const { u, v } = places[i] ?? { u: 0.5, v: 0.5 };
    const sign = lowPoints.includes(point) ? 'low' : highPoints.includes(point) ? 'high' : 'none';
    return { name: point, u, v, value: thicknessText(film, unit), sign };
  });
  const mean = statistics === null ? '' : `mean ${thicknessText(statistics.mean, unit)}`;
  const note = [mean, arrow].filter((text) => text !== '').join(', ');
  return { name: panel.name, note, points: facePoints };
}
