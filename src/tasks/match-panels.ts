/** Panel names in job and defects files → ids of the template, or a diagnostic with a way out. */
import { type Diagnostic, error, type Outcome, type Place } from '../base/diagnostics.ts';
import { panelMatcher } from '../film/panel-names.ts';
import type { Panel, VehicleTemplate } from '../film/template.ts';

export type Named<T> = { readonly name: string; readonly value: T; readonly at?: Place };

/** Values by panel id, in the order given; names that mean no one panel are refused, all at once. */
export function byPanelId<T>(
  named: readonly Named<T>[],
  template: VehicleTemplate,
): Outcome<ReadonlyMap<string, readonly T[]>> {
  const match = panelMatcher(template);
  const found = new Map<string, T[]>();
  const diagnostics: Diagnostic[] = [];
  for (const { name, value, at } of named) {
    const answer = match(name);
    if (answer.kind === 'match') {
      found.set(answer.panel.id, [...(found.get(answer.panel.id) ?? []), value]);
    } else if (answer.kind === 'ambiguous') {
      const names = answer.panels.map((panel) => panel.name).join(', ');
      diagnostics.push(
        error('panel-ambiguous', `"${name}" may be ${names}`, { at, hint: answer.why }),
      );
    } else {
      diagnostics.push(unknownPanel(name, answer.suggestion, template, at));
    }
  }
  return diagnostics.length === 0 ? { value: found, diagnostics } : { diagnostics };
}

const unknownPanel = (
  name: string,
  suggestion: string | undefined,
  template: VehicleTemplate,
  at: Place | undefined,
): Diagnostic =>
  error('panel-unknown', `"${name}" is not a panel of the ${template.name} template`, {
    at,
    hint:
      suggestion === undefined
        ? `leastcut template show ${template.id} lists its panels`
        : `did you mean "${suggestion}"?`,
  });

/** The panels that `--panel` names; all of them when it names none. */
export function chosenPanels(
  names: readonly string[],
  template: VehicleTemplate,
): Outcome<readonly Panel[]> {
  if (names.length === 0) return { value: template.panels, diagnostics: [] };
  const match = panelMatcher(template);
  const answers = names.map((name) => ({ name, answer: match(name) }));
  const panels = answers.flatMap(({ answer }) => (answer.kind === 'match' ? [answer.panel] : []));
  const diagnostics = answers.flatMap(({ name, answer }) => {
    if (answer.kind === 'match') return [];
    const hint =
      answer.kind === 'ambiguous'
        ? answer.why
        : answer.suggestion === undefined
          ? `leastcut template show ${template.id} lists the panels`
          : `did you mean "${answer.suggestion}"?`;
    return [error('usage-unknown-panel', `--panel "${name}" names no one panel`, { hint })];
  });
  return diagnostics.length === 0 ? { value: panels, diagnostics } : { diagnostics };
}
