/**
 * Names that mean one panel only because of the template that was taken: `left door` is one on a coupé and two
 * on a saloon. Where nobody named the template, the file does not say which; the panel is taken, and told.
 */
import { type Diagnostic, type Place, warning } from '../../base/diagnostics.ts';
import type { Reading } from '../../film/reading.ts';
import { panelMatcher } from '../../film/template/panel-names.ts';
import type { VehicleTemplate } from '../../film/template/template.ts';
import { listed } from './match-panels.ts';

export function namesByTemplate(
  readings: readonly Reading[],
  taken: VehicleTemplate,
  templates: readonly VehicleTemplate[],
  placeOf: (reading: Reading) => Place,
): readonly Diagnostic[] {
  const firsts = new Map(readings.toReversed().map((reading) => [reading.panel, reading]));
  const labels = [...firsts.keys()].reverse();
  const match = panelMatcher(taken);
  // A car that has all of the panels, whichever of its own some of them are.
  const others = templates.filter(
    (template) =>
      template.id !== taken.id &&
      labels.every((label) => panelMatcher(template)(label).kind !== 'unknown'),
  );
  return labels.flatMap((label) => {
    const own = match(label);
    const [open] = others.flatMap((template) => {
      const answer = panelMatcher(template)(label);
      return answer.kind === 'ambiguous' ? [{ template, panels: answer.panels }] : [];
    });
    const reading = firsts.get(label);
    if (own.kind !== 'match' || open === undefined || reading === undefined) return [];
    const may = listed(open.panels.map(({ name }) => name));
    const message = `"${label}" is the ${own.panel.name} on the ${taken.name} template, and is read so; on the ${open.template.name} it may be ${may}`;
    const hint = `name the template, or the panel in full`;
    return [warning('panel-ambiguous', message, { at: placeOf(reading), hint })];
  });
}
