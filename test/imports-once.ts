/**
 * The runner turns each use of an imported name into the call of a getter, on an object that V8 does not see through.
 * Here a module takes what it imports by name once, into constants. So nothing that is exported may change later
 * (`test/cli/load-program.test.ts`), and no modules may import one another in a circle.
 */
import type { Plugin } from 'vitest/config';

type Specifier = {
  readonly type: string;
  readonly local: { readonly name: string };
  readonly imported?: { readonly name?: string };
};
type Import = {
  readonly start: number;
  readonly end: number;
  readonly source: { readonly raw: string };
  readonly specifiers: readonly Specifier[];
};

export const importsOnce: Plugin = {
  name: 'imports-once',
  // When the types are gone.
  enforce: 'post',
  transform(code, id) {
    if (id.includes('/node_modules/')) return null;
    const imports = this.parse(code).body.filter(({ type }) => type === 'ImportDeclaration');
    return { code: withConstants(code, imports as unknown as readonly Import[]), map: null };
  },
};

function withConstants(code: string, imports: readonly Import[]): string {
  let [text, at] = ['', 0];
  for (const one of imports) {
    text += code.slice(at, one.start) + asConstants(one, code.slice(one.start, one.end));
    at = one.end;
  }
  return text + code.slice(at);
}

/** On as many lines as it was: messages and coverage name the right ones. */
function asConstants({ start, source, specifiers }: Import, written: string): string {
  const names = specifiers.map(taken);
  if (names.length === 0 || names.includes(undefined)) return written;
  const module = `imported_${start}`;
  const lines = written.replaceAll(/[^\n]/g, '');
  return `import * as ${module} from ${source.raw}; const { ${names.join(', ')} } = ${module};${lines}`;
}

/** As a pattern takes it; nothing for the module as a whole. */
function taken({ type, local, imported }: Specifier): string | undefined {
  if (type === 'ImportNamespaceSpecifier') return undefined;
  return `${imported?.name ?? 'default'}: ${local.name}`;
}
