/**
 * Names that mean one panel only because of the template that was taken: `left door` is one on a coupé and two
 * on a saloon. Where nobody named the template, the file does not say which; the panel is taken, and told.
 */
import { type Diagnostic, type Place, warning } from '../../base/diagnostics.ts';
import { keptWith, remembered } from '../../base/kept.ts';
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
  const names = JSON.stringify([...new Set(readings.map(({ panel }) => panel))]);
  const others = leavingOpen(templates)(names).filter(({ id }) => id !== taken.id);
  if (others.length === 0) return [];
  const firsts = new Map(readings.toReversed().map((reading) => [reading.panel, reading]));
  const labels = [...firsts.keys()].reverse();
  const match = panelMatcher(taken);
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

/**
 * Templates of cars that have all of the panels and more than one for some name. Kept: the vehicles of a long file bear
 * few sets of names.
 */
const leavingOpen = keptWith((templates: readonly VehicleTemplate[]) =>
  remembered((written) => {
    const names: readonly string[] = JSON.parse(written);
    return templates.filter((template) => {
      const match = panelMatcher(template);
      return (
        names.every((name) => match(name).kind !== 'unknown') &&
        names.some((name) => match(name).kind === 'ambiguous')
      );
    });
  }, 64),
);
