/** A panel as pages call it: as the job's template does, else as all built-in ones do in which the label means one panel. */
import { panelMatcher } from '../../film/template/panel-names.ts';
import type { Side } from '../../film/template/panel-sense.ts';
import { builtInTemplates } from '../../formats/data/templates.ts';

/** A label that means no panel, or several, stays as it was written. */
export function panelNamer(
  templateId: string | undefined,
  nearside: Side | null,
): (label: string) => string {
  const own = builtInTemplates.filter(({ id }) => id === templateId);
  const templates = (own.length === 0 ? builtInTemplates : own).map((template) =>
    nearside === null ? template : { ...template, nearside },
  );
  const matchers = templates.map(panelMatcher);
  return (label) => {
    const names = matchers.flatMap((match) => {
      const found = match(label);
      return found.kind === 'match' ? [found.panel.name] : [];
    });
    const [name = label, other] = [...new Set(names)];
    return other === undefined ? name : label;
  };
}
