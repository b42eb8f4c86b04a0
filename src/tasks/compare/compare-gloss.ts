/** A file of gloss before and after → its change on each panel of the template. */
import { hasErrors, type Outcome } from '../../base/diagnostics.ts';
import {
  type GlossChange,
  type GlossPlace,
  glossChanges,
} from '../../film/compare/compare-gloss.ts';
import type { VehicleTemplate } from '../../film/template/template.ts';
import { readGlossFile } from '../../intake/read-gloss-file.ts';
import { rowsByPanelId } from '../read/match-panels.ts';
import type { LoadedFile } from '../read/read-request.ts';

export type ComparedGloss = GlossChange;

/** In walking order; nothing where no file is named. */
export function compareGloss(
  file: LoadedFile | undefined,
  template: VehicleTemplate,
): Outcome<readonly ComparedGloss[]> {
  if (file === undefined) return { value: [], diagnostics: [] };
  const read = readGlossFile(file);
  if (read.value === undefined) return { diagnostics: read.diagnostics };
  const matched = rowsByPanelId(read.value, template);
  const diagnostics = [...read.diagnostics, ...matched.diagnostics];
  if (matched.value === undefined || hasErrors(diagnostics)) return { diagnostics };
  const { value: rows } = matched;
  const places = template.panels.flatMap((panel) =>
    (rows.get(panel.id) ?? []).map(({ at: _, ...row }): GlossPlace => ({ ...row, panel })),
  );
  return { value: glossChanges(places), diagnostics };
}
