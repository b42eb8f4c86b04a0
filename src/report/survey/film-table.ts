/** The table of panels that survey and plan share: what was read, what is credible, what may go. */

import { thicknessText, unitName } from '../../base/sentence.ts';
import { inLengthUnit, type LengthUnit, type Micrometres } from '../../base/units.ts';
import type { LimitCode } from '../../film/limits/limit.ts';
import { isZone, type PanelSurvey } from '../../film/survey.ts';
import { column, figures, filmFigures } from '../columns.ts';
import { LARGEST_DRAWN } from '../drawn-axis.ts';
import { type Block, type Cell, type Column, cell, type StripAxis } from '../model.ts';

const LIMIT_WORDS: Readonly<Record<LimitCode, string>> = {
  clear: 'clear',
  life: 'life',
  total: 'total',
  readings: 'n = 1',
  finish: 'matte',
  covered: 'covered',
  'fresh-paint': 'fresh',
  'clear-coat-failure': 'failed',
  'colour-at-spot': 'colour',
  'test-spot': 'spot 1st',
  'sound-panels': 'others',
  'spot-depth': 'as tried',
  'near-line': 'line',
  place: 'place',
  'as-compared': 'visit',
  'no-data': 'no data',
};

/** A limit of a panel, in a word: no spot is made while the panels it goes by are to be settled, nor where it frees nothing. */
export function limitWord(code: LimitCode, { topcoat, advice }: PanelSurvey): string {
  if (code === 'clear' && topcoat?.finish === 'single-stage') return 'topcoat';
  const isSpotLater =
    code === 'test-spot' &&
    advice.some((one) => one.code === 'sound-panel-first' || one.code === 'beyond-help');
  return LIMIT_WORDS[isSpotLater ? 'sound-panels' : code];
}

/** One row a panel; the last column is the caller's own word on it. */
export function filmTable(
  panels: readonly PanelSurvey[],
  own: { readonly title: string; readonly cellOf: (panel: PanelSurvey) => Cell },
  unit: LengthUnit,
): Block {
  const axis = commonAxis(panels, unit);
  const film = (title: string): Column => filmFigures(title, unit);
  return {
    kind: 'table',
    columns: [
      column(`panel (${unitName(unit)})`),
      { ...figures('n'), said: 'points' },
      film('mean ± sd'),
      { ...film('min'), said: 'thinnest reading' },
      { ...film('least'), said: 'thinnest credible' },
      { ...film('may go'), leads: true },
      { ...column('bound by'), leads: true },
      { ...column(own.title), leads: true },
      { ...column(''), axis, said: 'readings', unit: unitName(unit) },
    ],
    rows: panels.flatMap((panel) =>
      [panel, ...panel.zones].map((part) => filmRow(part, own.cellOf(part), unit)),
    ),
  };
}

function filmRow(survey: PanelSurvey, own: Cell, unit: LengthUnit): readonly Cell[] {
  const { statistics } = survey;
  const value = (one: Micrometres | null | undefined, digits = 1): string =>
    one === null || one === undefined ? '–' : thicknessText(one, unit, digits);
  const sd = statistics?.sd ?? null;
  return [
    cell(isZone(survey) ? `\u00a0\u00a0${survey.zone} zone` : survey.panel.name),
    cell(String(survey.points.length)),
    cell(`${value(statistics?.mean)}${sd === null ? '' : ` ± ${thicknessText(sd, unit)}`}`),
    cell(value(statistics?.min)),
    cell(value(survey.thinnest)),
    ...(survey.zones.length > 0
      ? [cell('–'), cell('by zone')]
      : [
          cell(thicknessText(survey.budget, unit, 2)),
          cell(limitWord(survey.boundBy.code, survey), 'binding'),
        ]),
    own,
    {
      kind: 'strip',
      values: survey.points.map((point) => inLengthUnit(point.thickness, unit)),
      marked: survey.thinnest === null ? null : inLengthUnit(survey.thinnest, unit),
    },
  ];
}

/** Common to all panels: from under the floor and the least that is credible to the largest sound total, in whole tens (or half mil). */
function commonAxis(panels: readonly PanelSurvey[], unit: LengthUnit): StripAxis {
  const step = unit === 'um' ? 10 : 0.5;
  const floors = panels.map(({ totalFloor }) => totalFloor);
  // Of several the highest: that of zinc, which is read as film.
  const floor = floors.length === 0 ? null : Math.max(...floors);
  const values = panels.flatMap(({ points }) => points.map((point) => point.thickness));
  const sound = values.filter((value) => value <= LARGEST_DRAWN);
  const thinnest = panels.flatMap((panel) => panel.thinnest ?? []);
  const from = Math.min(...values, ...thinnest, ...(floor === null ? [] : [floor]));
  const to = sound.length === 0 ? LARGEST_DRAWN : Math.max(...sound);
  return {
    from: Math.max(0, Math.floor(inLengthUnit(from, unit) / step - 0.5) * step),
    to: Math.ceil(inLengthUnit(to, unit) / step + 0.01) * step,
    line: floor === null ? null : inLengthUnit(floor, unit),
  };
}
