/** A defects file and the names of defects → what is recorded of each panel. */
import {
  type Diagnostic,
  error,
  hasErrors,
  type Outcome,
  type Place,
} from '../../base/diagnostics.ts';
import { suggest } from '../../base/did-you-mean.ts';
import { moreLike, mostTold } from '../../base/of-a-kind.ts';
import type { Defect } from '../../correction/defects.ts';
import type { CorrectionModel, DefectKind } from '../../correction/removal/catalogue.ts';
import type { VehicleTemplate } from '../../film/template/template.ts';
import { type DefectRow, readDefectsFile } from '../../intake/read-defects-file.ts';
import { byPanelId } from '../read/match-panels.ts';
import type { LoadedFile } from '../read/read-request.ts';
import type { Settings } from '../settings/settings.ts';
import { rowPlace } from './defect-row-place.ts';
import { gradedTwice } from './graded-twice.ts';

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
  const unknown = unknownDefects(
    defects.flatMap(({ row, defect }) => (defect === undefined ? [row] : [])),
    model,
  );
  const named = defects.flatMap(({ row, defect }) =>
    defect === undefined ? [] : [{ name: row.panel, value: { row, defect }, at: rowPlace(row) }],
  );
  const matched = byPanelId(named, template);
  const diagnostics = [...rows.diagnostics, ...unknown, ...matched.diagnostics];
  if (matched.value === undefined || hasErrors(diagnostics)) return { diagnostics };
  const byPanel = [...matched.value];
  return {
    value: new Map(byPanel.map(([id, of]) => [id, of.map(({ defect }) => defect)])),
    diagnostics: [...diagnostics, ...byPanel.flatMap(([, of]) => gradedTwice(of))],
  };
}

/** What is near to a name takes long to find: of thousands it is found for the first. */
function unknownDefects(rows: readonly DefectRow[], model: CorrectionModel): readonly Diagnostic[] {
  const told = rows
    .slice(0, mostTold)
    .map((row) => unknownDefect(row.defect, rowPlace(row, row.defect), model));
  const [first] = told;
  const more = rows.length - told.length;
  return first === undefined || more === 0 ? told : [...told, moreLike(first, more)];
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
  return defects.find((kind) => namesOf(kind).some((one) => wordsOf(one) === word));
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
  const names = defects.flatMap(namesOf);
  const near = defects.filter((kind) => sharesWord(text, kind)).map(({ id }) => id);
  return error('defect-unknown', `"${text}" is no defect that is known here`, {
    at,
    hint:
      near.length > 1
        ? `which: ${near.join(' or ')}?`
        : (suggest(text, names) ??
          (near[0] === undefined
            ? `one of ${ids.join(', ')}; leastcut explain ID says what each is also called`
            : `did you mean "${near[0]}"?`)),
  });
}

const namesOf = ({ id, name, aliases }: DefectKind): readonly string[] => [id, name, ...aliases];

/** Said of every defect, and of none. */
const OF_ANY: ReadonlySet<string> = new Set(['mark', 'spot', 'light', 'fine', 'paint', 'clear']);

/** `random scratches`, `fine haze`: a word that says what it is, in whichever number. */
function sharesWord(text: string, kind: DefectKind): boolean {
  const stems = (words: string): readonly string[] =>
    wordsOf(words)
      .split(' ')
      .map((word) => word.replace(/(?:es|s)$/, ''))
      .filter((word) => word.length > 2 && !OF_ANY.has(word));
  const own = new Set(namesOf(kind).flatMap(stems));
  return stems(text).some((word) => own.has(word));
}
