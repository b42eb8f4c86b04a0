/** Panels that a settings file names, by the template's ids: each once, or refused where it stands. */

import { type Diagnostic, error, type Outcome, type Place } from '../../base/diagnostics.ts';
import type { OneOrMore } from '../../base/group-by.ts';
import { panelMatcher } from '../../film/template/panel-names.ts';
import type { VehicleTemplate } from '../../film/template/template.ts';
import type { Named } from '../read/match-panels.ts';
import { panelProblem } from '../read/match-panels.ts';

/** What is said of each panel, by id. A panel under two names would have two truths: it is refused. */
export function settingsPanels<T>(
  named: readonly Named<T>[],
  template: VehicleTemplate,
): Outcome<ReadonlyMap<string, T>> {
  const grouped = settingsPanelGroups(named, template);
  if (grouped.value === undefined) return { diagnostics: grouped.diagnostics };
  const groups = [...grouped.value];
  const diagnostics = groups.flatMap(([id, [first, ...more]]) => {
    const { name = id } = template.panels.find((panel) => panel.id === id) ?? {};
    return more.map((again) => twice(again, first, name));
  });
  return diagnostics.length > 0
    ? { diagnostics }
    : { value: new Map(groups.map(([id, [only]]) => [id, only.value])), diagnostics };
}

/** The same where a panel may be named again and again, as in a record of visits. */
export function settingsPanelGroups<T>(
  named: readonly Named<T>[],
  template: VehicleTemplate,
): Outcome<ReadonlyMap<string, Readonly<OneOrMore<Named<T>>>>> {
  const match = panelMatcher(template);
  const groups = new Map<string, OneOrMore<Named<T>>>();
  const diagnostics: Diagnostic[] = [];
  for (const one of named) {
    const answer = match(one.name);
    if (answer.kind === 'match') {
      const before = groups.get(answer.panel.id);
      groups.set(answer.panel.id, before === undefined ? [one] : [...before, one]);
    } else {
      const code =
        answer.kind === 'ambiguous' ? 'settings-panel-ambiguous' : 'settings-panel-unknown';
      diagnostics.push({ ...panelProblem(error, one.name, answer, template, one.at), code });
    }
  }
  return diagnostics.length === 0 ? { value: groups, diagnostics } : { diagnostics };
}

function twice<T>(again: Named<T>, first: Named<T>, panel: string): Diagnostic {
  const line = first.at?.line === undefined ? '' : `, already named on line ${first.at.line}`;
  return error(
    'settings-panel-twice',
    `"${again.name}" is the ${panel}${line} as "${first.name}"`,
    { at: again.at, hint: 'say all of one panel under one name' },
  );
}

/** `job.json:12`: where to look a setting up. */
export const placeText = ({ file, line }: Place): string =>
  line === undefined ? file : `${file}:${line}`;
