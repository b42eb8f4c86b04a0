/** Values of the visits that look keyed wrongly, each with the file it stands in. */
import type { AskedSlip } from '../../film/condition/keying-slips.ts';
import type { Panel } from '../../film/template/template.ts';
import type { Visit } from './compare-visits.ts';

export type VisitSlip = { readonly file: string; readonly panel: Panel; readonly slip: AskedSlip };

export const slipsOfVisits = (
  visits: readonly Visit[],
  ids: ReadonlySet<string>,
): readonly VisitSlip[] =>
  visits.flatMap(({ file, surveyed: { survey } }) =>
    survey.panels
      .filter(({ panel }) => ids.has(panel.id))
      .flatMap(({ panel, keyingSlips }) => keyingSlips.map((slip) => ({ file, panel, slip }))),
  );
