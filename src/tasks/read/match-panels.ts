/** Panel names in job and defects files → ids of the template, or a diagnostic with a way out. */
import { counted } from '../../base/counted.ts';
import { type Diagnostic, error, type Outcome, type Place } from '../../base/diagnostics.ts';
import { mostTold } from '../../base/of-a-kind.ts';
import { type PanelMatch, panelMatcher } from '../../film/template/panel-names.ts';
import type { Panel, VehicleTemplate } from '../../film/template/template.ts';

export type Named<T> = { readonly name: string; readonly value: T; readonly at?: Place };

/** Values by panel id, in the order given; names that mean no one panel are refused, all at once. */
export function byPanelId<T>(
  named: readonly Named<T>[],
  template: VehicleTemplate,
): Outcome<ReadonlyMap<string, readonly T[]>> {
  const match = panelMatcher(template);
  const found = new Map<string, T[]>();
  const diagnostics: Diagnostic[] = [];
  for (const [i, { name, value, at }] of named.entries()) {
    const [first] = diagnostics;
    // The panel nearest to a name takes long to find, and the file is refused whatever else it names.
    if (first !== undefined && diagnostics.length === mostTold) {
      diagnostics.push(notLookedAt(first, named.length - i));
      break;
    }
    const answer = match(name);
    if (answer.kind === 'match') {
      found.set(answer.panel.id, [...(found.get(answer.panel.id) ?? []), value]);
    } else diagnostics.push(panelProblem(error, name, answer, template, at));
  }
  return diagnostics.length === 0 ? { value: found, diagnostics } : { diagnostics };
}

const notLookedAt = ({ code, at }: Diagnostic, count: number): Diagnostic =>
  error(code, `${counted(count, 'name')} after these not looked at`, {
    ...(at === undefined ? {} : { at: { file: at.file } }),
    hint: 'mend these first',
  });

/** The same for rows of a file, each of which names its panel. */
export const rowsByPanelId = <Row extends { readonly panel: string; readonly at: Place }>(
  rows: readonly Row[],
  template: VehicleTemplate,
): Outcome<ReadonlyMap<string, readonly Row[]>> =>
  byPanelId(
    rows.map((row) => ({ name: row.panel, value: row, at: row.at })),
    template,
  );

const LISTED = 6;

/** A few words as a list; of many, the first and how many more. */
export const listed = (words: readonly string[]): string =>
  words.length <= LISTED
    ? words.join(', ')
    : `${words.slice(0, LISTED).join(', ')} and ${words.length - LISTED} more`;

/** Why a name means no one panel of the template, and what to write instead. */
export function panelProblem(
  severity: typeof error,
  name: string,
  answer: Exclude<PanelMatch, { readonly kind: 'match' }>,
  template: VehicleTemplate,
  at: Place | undefined,
): Diagnostic {
  if (answer.kind === 'ambiguous') {
    const names = listed(answer.panels.map((panel) => panel.name));
    return severity('panel-ambiguous', `"${name}" may be ${names}`, { at, hint: answer.why });
  }
  return severity('panel-unknown', `"${name}" is not a panel of the ${template.name} template`, {
    at,
    hint:
      answer.suggestion === undefined
        ? `leastcut template show ${template.id} lists its panels`
        : `did you mean "${answer.suggestion}"?`,
  });
}

/** The panels that `--panel` names; all of them when it names none. */
export const chosenPanels = (
  names: readonly string[],
  template: VehicleTemplate,
): Outcome<readonly Panel[]> =>
  names.length === 0
    ? { value: template.panels, diagnostics: [] }
    : namedPanels('--panel', names, template);

/** The panels that an option names, by any name they go by. */
export function namedPanels(
  option: string,
  names: readonly string[],
  template: VehicleTemplate,
): Outcome<readonly Panel[]> {
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
    const message =
      answer.kind === 'ambiguous'
        ? `${option} "${name}" may be ${listed(answer.panels.map((panel) => panel.name))}`
        : `${option} "${name}" is no panel of the ${template.name} template`;
    return [error('usage-unknown-panel', message, { hint })];
  });
  return diagnostics.length === 0 ? { value: panels, diagnostics } : { diagnostics };
}
