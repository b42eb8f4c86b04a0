/** Several names of one file that are read as one panel: said, since two panels may be meant. */
import { type Diagnostic, type Place, warning } from '../base/diagnostics.ts';
import { groupBy } from '../base/group-by.ts';

export type NamedPanel = { readonly label: string; readonly panel: string };

/** Case, blanks and signs between words make no other name. */
const plain = (label: string): string =>
  label
    .normalize('NFC')
    .toLowerCase()
    .replaceAll(/[^\p{L}\p{N}]+/gu, '');

export function namesTogether(
  matched: readonly NamedPanel[],
  about: {
    readonly nameOf: (panel: string) => string;
    readonly placeOf: (label: string) => Place | undefined;
  },
): readonly Diagnostic[] {
  return [...groupBy(matched, ({ panel }) => panel)].flatMap(([panel, own]) => {
    const names = [...groupBy(own, ({ label }) => plain(label)).values()].flatMap(
      ([first]) => first?.label ?? [],
    );
    const [, second] = names;
    if (second === undefined) return [];
    const told = names.map((name) => `"${name}"`);
    const most = told.slice(0, -1).join(', ');
    const message = `${most} and ${told.at(-1)} are read as one panel, the ${about.nameOf(panel)}`;
    const hint = 'if they are different panels, name each as leastcut template show does';
    return [warning('panel-names-together', message, { at: about.placeOf(second), hint })];
  });
}
