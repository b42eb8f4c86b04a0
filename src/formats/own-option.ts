/** By which option a settings file of each kind is named, as far as it has one of its own. */
const options: ReadonlyMap<string, string> = new Map([
  ['job', '--job'],
  ['shop', '--shop'],
  ['template', '--template'],
  ['film-record', '--film-record'],
  ['gauge', '--gauge'],
  ['rates', '--rates'],
  ['rubric', '--rubric'],
  ['decisions', '--as-decided'],
  ['plan', '--plan'],
]);

/** `leastcut/job/1` is a job file, which is named with --job; nothing of what is no kind of ours. */
export function kindSaid(
  schemaName: unknown,
): { readonly kind: string; readonly option: string } | undefined {
  const kind = /^leastcut\/([a-z-]+)\/\d+$/.exec(String(schemaName))?.[1];
  const option = kind === undefined ? undefined : options.get(kind);
  return kind === undefined || option === undefined
    ? undefined
    : { kind: kind.replace('-', ' '), option };
}
