/** A defects file and the names of defects → what is recorded of each panel. */
import {
  type Diagnostic,
  error,
  hasErrors,
  type Outcome,
  type Place,
} from '../../base/diagnostics.ts';
import { suggest } from '../../base/did-you-mean.ts';
import type { Defect } from '../../correction/defects.ts';
import type { CorrectionModel, DefectKind } from '../../correction/removal/catalogue.ts';
import type { VehicleTemplate } from '../../film/template/template.ts';
import { type DefectRow, readDefectsFile } from '../../intake/read-defects-file.ts';
import { byPanelId } from '../read/match-panels.ts';
import type { LoadedFile } from '../read/read-request.ts';
import type { Settings } from '../settings/settings.ts';

export type DefectsByPanel = ReadonlyMap<string, readonly Defect[]>;

export function recordedDefects(
  template: VehicleTemplate,
  { film, correction: model }: Pick<Settings, 'film' | 'correction'>,
  file: LoadedFile | undefined,
): Outcome<DefectsByPanel> {
  if (file === undefined) return { value: new Map(), diagnostics: [] };
  const rows = readDefectsFile(file, film.measurement.largestReading);
  if (rows.value === undefined) return { diagnostics: rows.diagnostics };
  const defects = rows.value.map((row) => ({ row, defect: toDefect(row, model) }));
  const unknown = defects.flatMap(({ row, defect }) =>
    defect === undefined ? [unknownDefect(row.defect, rowPlace(row, row.defect), model)] : [],
  );
  const named = defects.flatMap(({ row, defect }) =>
    defect === undefined ? [] : [{ name: row.panel, value: defect, at: rowPlace(row) }],
  );
  const matched = byPanelId(named, template);
  const diagnostics = [...rows.diagnostics, ...unknown, ...matched.diagnostics];
  return matched.value === undefined || hasErrors(diagnostics)
    ? { diagnostics }
    : { value: matched.value, diagnostics };
}

const wordsOf = (text: string): string =>
  text
    .trim()
    .toLowerCase()
    .replaceAll(/[\s_-]+/g, ' ');

/** The kind of defect that a word of the trade means. */
export function defectNamed(
  text: string,
  { defects }: Pick<CorrectionModel, 'defects'>,
): DefectKind | undefined {
  const word = wordsOf(text);
  return defects.find(({ id, name, aliases }) =>
    [id, name, ...aliases].some((one) => wordsOf(one) === word),
  );
}

/** What is taken to be there where nobody says what: swirl marks. */
export function usualDefect({ defects }: Pick<CorrectionModel, 'defects'>): DefectKind {
  const kind = defects.find(({ id }) => id === 'swirl-marks');
  if (kind === undefined) throw new Error('swirl marks are a built-in defect');
  return kind;
}

function toDefect(
  { defect, grade, depth, extent }: DefectRow,
  model: CorrectionModel,
): Defect | undefined {
  const kind = defectNamed(defect, model);
  return kind === undefined
    ? undefined
    : {
        kind,
        grade: grade ?? model.correction.assumedGrade,
        depth,
        ...(extent === '' ? {} : { extent }),
      };
}

export function unknownDefect(
  text: string,
  at: Place,
  { defects }: Pick<CorrectionModel, 'defects'>,
): Diagnostic {
  const ids = defects.map(({ id }) => id);
  const names = defects.flatMap(({ id, name, aliases }) => [id, name, ...aliases]);
  const ofSeveral = defects.filter(({ name }) => wordsOf(name).split(' ').includes(wordsOf(text)));
  const which = ofSeveral.map(({ id }) => id).join(' or ');
  return error('defect-unknown', `"${text}" is no defect that is known here`, {
    at,
    hint:
      ofSeveral.length > 1
        ? `which: ${which}?`
        : (suggest(text, names) ?? `one of ${ids.join(', ')}`),
  });
}

function rowPlace({ origin, lineText, panel }: DefectRow, word = panel): Place {
  const column = lineText.indexOf(word) + 1;
  return {
    file: origin.file,
    line: origin.line,
    lineText,
    ...(column === 0 ? {} : { column, length: word.length }),
  };
}
