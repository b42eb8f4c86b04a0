/** `--columns panel=Teil,reading=Wert` → what each column is. */
import { type Diagnostic, error, hasErrors, type Outcome } from '../../base/diagnostics.ts';
import { suggest } from '../../base/did-you-mean.ts';
import { joinedRoles } from '../../intake/header/columns-by-role.ts';
import { columnRoles } from '../../intake/intake-options.ts';

/** A comma ends a name only where another role follows: a header may hold one itself. */
const NEXT_ROLE = /,(?=\s*[a-z]+=)/;

export function typedColumns(
  words: readonly string[],
): Outcome<ReadonlyMap<string, readonly string[]>> {
  const columns = new Map<string, readonly string[]>();
  const diagnostics: Diagnostic[] = [];
  for (const word of words.flatMap((one) => one.split(NEXT_ROLE))) {
    const at = word.indexOf('=');
    const [role, header] = [word.slice(0, at).trim(), word.slice(at + 1).trim()];
    const known = columnRoles.find((one) => one === role);
    if (at < 1 || header === '') diagnostics.push(noPair(word));
    else if (known === undefined) diagnostics.push(noRole(role));
    else if (columns.has(role) && !joinedRoles.has(known)) diagnostics.push(twice(role));
    else columns.set(role, [...(columns.get(role) ?? []), header]);
  }
  return hasErrors(diagnostics) ? { diagnostics } : { value: columns, diagnostics };
}

const noPair = (word: string): Diagnostic =>
  error('usage-option-value', `--columns takes role=header, and "${word}" is not that`, {
    hint: 'write panel=Bauteil,reading=Messwert with the names of your file',
  });

const noRole = (role: string): Diagnostic =>
  error('usage-option-value', `"${role}" is nothing that a column can be`, {
    hint: suggest(role, columnRoles) ?? `one of ${columnRoles.join(', ')}`,
  });

const twice = (role: string): Diagnostic =>
  error('usage-option-value', `--columns names two columns for ${role}`, {
    hint: 'name one; only date and time, and texts like them, are read from two',
  });
