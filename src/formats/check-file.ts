/** A settings file of whatever kind it says it is: that kind, or every problem where it stands. */
import { error, hasErrors, type Outcome } from '../base/diagnostics.ts';
import { closest } from '../base/did-you-mean.ts';
import { type FileKind, type FileKindName, fileKinds } from './file-kinds.ts';
import { type JsonDocument, parseJson } from './json/json-text.ts';
import { keysOf } from './json/schema-words.ts';
import { shorten } from './json/shorten.ts';

export function checkSettingsFile(file: string, text: string): Outcome<FileKindName> {
  const { value: document, diagnostics } = parseJson(file, text);
  if (document === undefined) return { diagnostics };
  const kind = kindOf(document);
  if (kind.value === undefined) return { diagnostics: kind.diagnostics };
  const read = kind.value.read(file, text);
  return hasErrors(read.diagnostics)
    ? { diagnostics: read.diagnostics }
    : { value: kind.value.kind, diagnostics: read.diagnostics };
}

const KINDS = fileKinds.map(({ kind }) => kind).join(', ');

function kindOf({ value, placeOf }: JsonDocument): Outcome<FileKind> {
  const said = isObject(value) && Object.hasOwn(value, 'schema') ? value['schema'] : undefined;
  const kind = fileKinds.find(({ schemaName }) => schemaName === said);
  if (kind !== undefined) return { value: kind, diagnostics: [] };
  const nothing = said === undefined;
  const near =
    typeof said === 'string'
      ? closest(
          said,
          fileKinds.map(({ schemaName }) => schemaName),
        )
      : undefined;
  const message = nothing
    ? 'the file does not say what kind it is'
    : `"schema" is ${shorten(JSON.stringify(said))}, which is no kind of settings file`;
  const likely = nothing ? likeliestKind(value) : undefined;
  const hint =
    near !== undefined
      ? `did you mean "${near}"?`
      : likely !== undefined
        ? `by its keys it is a ${likely.kind} file: add "schema": "${likely.schemaName}"`
        : `"schema": "leastcut/shop/1", or in place of shop another kind: ${KINDS}`;
  const at = placeOf(nothing ? [] : ['schema']);
  return { diagnostics: [error('settings-schema', message, { at, hint })] };
}

/** The one kind that knows more of the keys than any other. */
function likeliestKind(value: unknown): FileKind | undefined {
  const keys = isObject(value) ? Object.keys(value) : [];
  const counts = fileKinds.map((kind) => {
    const known = keysOf(kind.schema);
    return { kind, count: keys.filter((key) => known.includes(key)).length };
  });
  const most = Math.max(...counts.map(({ count }) => count));
  const [first, second] = counts.filter(({ count }) => count === most);
  return most === 0 || second !== undefined ? undefined : first?.kind;
}

const isObject = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === 'object' && value !== null && !Array.isArray(value);
