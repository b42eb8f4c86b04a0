/**
 * A line that names the panel of the lines below it, however it is dressed up: `Bonnet`, `== Roof ==`, `【车顶】`, `2. Boot lid:`,
 * `Panel 3/5: Roof (4 readings)`, `Hood (mil)`, `Élément : Capot`.
 */
import { once } from '../../base/kept.ts';
import { hasLetter } from '../../base/letters.ts';
import { roleOfKey } from '../beside/sayings.ts';
import { unitNamed } from '../cells/unit.ts';
import type { Piece } from './line-words.ts';

export type Caption = { readonly panel: Piece; readonly unit: Piece | undefined };

/** Marks around a name, its place in a list, and `Panel 3 of 5`. */
const before = once(
  () =>
    /^[\s\-=_*~#>+•·–—[【「『〈《(]*(?:\d{1,3}[.)]\s+(?=\p{L}))?(?:\p{L}+\.?\s*\d{1,3}\s*(?:\/|of|von|de|di|van|из)\s*\d{1,3}\s*[:.)–-]\s*)?/u,
);
const behind = /[\s\-=_*~#<+:.–—\]】」』〉》)]*$/u;
/** `(4 readings)`, `, n = 3`. */
const count = once(() => /[\s,([–-]+(?:n\s*=\s*\d{1,4}|\d{1,4}\s\p{L}{3,}\.?)$/u);
const unitAtEnd = /[\s,:;–-]*[([]\s*([^\s()[\]]{1,20})$/u;

export function captionOfLine(
  text: string,
  isPanel: (label: string) => boolean,
): Caption | undefined {
  const start = before().exec(text)?.[0].length ?? 0;
  let name = text.slice(start).replace(behind, '').replace(count(), '').replace(behind, '');
  const [all = '', word = ''] = unitAtEnd.exec(name) ?? [];
  const isUnit = unitNamed(word) !== undefined;
  const unit = isUnit ? { text: word, at: start + name.length - word.length } : undefined;
  if (isUnit) name = name.slice(0, name.length - all.length);
  if (isPanel(name)) return { panel: { text: name, at: start }, unit };
  return keyedCaption(name, start, unit);
}

function keyedCaption(name: string, start: number, unit: Piece | undefined): Caption | undefined {
  const [, key = '', mark = '', value = ''] =
    /^([^:：=]{1,60}?)(\s*[:：=]\s*)(\S.*)$/u.exec(name) ?? [];
  if (!hasLetter(value) || roleOfKey(key) !== 'panel') return undefined;
  return { panel: { text: value, at: start + key.length + mark.length }, unit };
}
