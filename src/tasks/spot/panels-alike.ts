/**
 * Names of panels that are one: `roof` and `Roof`, `bonnet` and `hood`. Each gets the spelling that came first. No
 * template is asked for what words mean; names that it alone would settle stay apart.
 */
import { readLabel } from '../../film/template/panel-names.ts';

export function panelsAlike(): (name: string) => string {
  const firsts = new Map<string, string>();
  return (name) => {
    const key = meaningOf(name) ?? folded(name);
    const first = firsts.get(key) ?? name;
    firsts.set(key, first);
    return first;
  };
}

const folded = (name: string): string =>
  `"${name.normalize('NFC').trim().replace(/\s+/gu, ' ').toLowerCase()}`;

/** What the words of a name mean, where each meaning is a panel. */
function meaningOf(name: string): string | undefined {
  const { meanings } = readLabel(name);
  if (meanings.length === 0 || meanings.some(({ part }) => part === undefined)) return undefined;
  return meanings
    .map(({ part, end, side, kerb }) => [part, end, side, kerb].map((one) => one ?? '').join(' '))
    .toSorted()
    .join('|');
}
