/**
 * Builds the program: `node .build.mjs [folder]`, `dist` unless named. In the folder stand then
 *
 *   main.js, batch-worker.js   the entries: small, they load the rest when it is needed
 *   package.json               says that they are CommonJS, which starts without the loader of modules
 *   program.cjs                everything else in one script, as src/cli/load-program.ts runs it
 *   survey.cjs, plan.cjs       the same with no more than these commands take
 *   program.cache, …           what V8 compiled of each, for the Node that built it
 *   LICENSES.txt               the terms of the packages whose code it holds
 *   schemas/, man/             what the program says of itself, as files
 */
import { execFileSync } from 'node:child_process';
import { readdirSync, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { basename, join, resolve } from 'node:path';
import { build, buildSync } from 'esbuild';
import ts from 'typescript';

const root = import.meta.dirname;
const folder = resolve(process.argv[2] ?? join(root, 'dist'));

const common = {
  absWorkingDir: root,
  bundle: true,
  platform: 'node',
  mainFields: ['module', 'main'],
  target: 'node20.19',
  minify: true,
  legalComments: 'none',
  logLevel: 'warning',
};

const define = { 'import.meta.dirname': '__dirname' };

/** Packages that make classes, tables and thousands of texts at each start of which we need few, and their entries. */
const taken = { 'simple-statistics': 'index.js', 'jsonc-parser': 'lib/esm/main.js' };

removeBuild();
buildSync({
  ...common,
  define,
  format: 'cjs',
  entryPoints: ['src/cli/main.ts', 'src/cli/batch-worker.ts'],
  outdir: folder,
});
writeFileSync(join(folder, 'package.json'), '{ "type": "commonjs" }\n');
write('src/cli/build/write-schemas.ts', join(folder, 'schemas'));
const { metafile, outputFiles } = await build({
  ...common,
  define: { ...define, JOB_SHAPE: JSON.stringify(shapeOf('job')) },
  format: 'esm',
  splitting: true,
  entryPoints: ['src/cli/program.ts'],
  outdir: folder,
  metafile: true,
  write: false,
  alias: {
    // Commander can start other programs as subcommands. This one never does, and so holds no means to.
    'node:child_process': './src/cli/build/no-child-process.ts',
  },
  plugins: [packagesByFile()],
});
const parts = new Map(outputFiles.map(({ path, text }) => [basename(path), partOf(text)]));
writeScript('program', [...parts.keys()]);
const forms = ['csv', 'html', 'markdown', 'plain'].map((form) => `src/render/${form}.ts`);
const answer = [...forms, 'src/cli/files/output-files.ts', 'src/cli/by-vehicle.ts'];
writeScript('survey', partsFor('src/cli/commands/survey.ts', ...answer));
writeScript(
  'plan',
  partsFor('src/cli/commands/plan.ts', 'src/formats/job/plain-job.ts', ...answer),
);
writeFileSync(join(folder, 'LICENSES.txt'), licencesOf(metafile.inputs));
write('src/cli/build/write-man.ts', join(folder, 'man'));
write('src/cli/build/write-cache.ts', folder);

/** What lies in its place goes, if that is what an earlier build left, or an empty folder: nothing else is touched. */
function removeBuild() {
  const found = statSync(folder, { throwIfNoEntry: false });
  const names = found?.isDirectory() ? readdirSync(folder) : undefined;
  if (found !== undefined && !(names?.length === 0 || names?.includes('main.js')))
    throw new Error(`${folder} is there and is no build: name another folder, or move it away`);
  rmSync(folder, { recursive: true, force: true });
}

/** The published schema of a kind of file, without the words for people: what `plainValue` reads a plain file by. */
function shapeOf(kind) {
  const text = readFileSync(join(folder, 'schemas', `${kind}.schema.json`), 'utf8');
  const isWord = (key, value) => key === 'description' && typeof value === 'string';
  return JSON.stringify(JSON.parse(text, (key, value) => (isWord(key, value) ? undefined : value)));
}

/**
 * File by file, and of those only what is used: of one that it comes as, all would be made at each start (3 ms of the
 * statistics) for a few functions. Esbuild leaves out what it is told to do nothing by itself.
 */
function packagesByFile() {
  const modules = join(root, 'node_modules');
  const homes = Object.keys(taken).map((name) => join(modules, name));
  const inert = (...path) => ({ path: join(...path), sideEffects: false });
  return {
    name: 'packages-by-file',
    setup({ onResolve }) {
      onResolve({ filter: new RegExp(`^(?:${Object.keys(taken).join('|')})$`) }, ({ path }) =>
        inert(modules, path, taken[path]),
      );
      onResolve({ filter: /^\.\// }, ({ path, resolveDir }) =>
        homes.some((home) => resolveDir.startsWith(home))
          ? inert(resolveDir, path.endsWith('.js') ? path : `${path}.js`)
          : undefined,
      );
    },
  };
}

/** Names of the parts that the program and some modules of it take. */
function partsFor(...modules) {
  const outputs = Object.entries(metafile.outputs);
  const paths = new Set(
    ['src/cli/program.ts', ...modules].map((module) => {
      const found = outputs.find(([, { entryPoint }]) => entryPoint === module);
      if (found === undefined) throw new Error(`${module} is no part of its own`);
      return found[0];
    }),
  );
  for (const path of paths)
    for (const { path: other, kind, external } of metafile.outputs[path].imports)
      if (kind === 'import-statement' && !external) paths.add(other);
  return [...paths].map((path) => basename(path));
}

/**
 * A function of what a CommonJS module finds about itself, ready to be run, that gives parts by their names. In ASCII:
 * it is decoded in no time and takes half of the memory. Regular expressions are the last to hold other characters.
 */
function writeScript(name, names) {
  const list = names.map((one) => `"${one}":${parts.get(one)}`).join(',\n');
  const ascii = list.replaceAll(
    /[^\0-\x7f]/g,
    (unit) => `\\u${unit.charCodeAt(0).toString(16).padStart(4, '0')}`,
  );
  const script = `(function (require, __dirname) {"use strict";return {${ascii}}\n})`;
  writeFileSync(join(folder, `${name}.cjs`), script, 'latin1');
}

/**
 * One of esbuild's files as a function: it takes a way to ask for other parts, and gives what it exports, by value.
 * Were all of them written into one function, V8 would make every name and function of the program at each start.
 */
function partOf(text) {
  const file = ts.createSourceFile('part.js', text, ts.ScriptTarget.ES2023);
  const changes = [];
  const change = (node, into) => changes.push({ from: node.getStart(file), to: node.end, into });
  const visit = (node) => {
    if (ts.isImportDeclaration(node)) change(node, importOf(node));
    else if (isDynamicImport(node))
      change(node, `Promise.resolve().then(()=>${moduleOf(node.arguments[0])})`);
    else if (goesOnAfterSpread(node)) changes.push(spreadOfNothing(node.properties[0], file));
    ts.forEachChild(node, visit);
  };
  visit(file);
  const last = file.statements.at(-1);
  if (ts.isExportDeclaration(last))
    change(last, `return{${last.exportClause.elements.map(exported)}}`);
  return `(part)=>{${withChanges(text, changes)}}`;
}

function isDynamicImport(node) {
  return ts.isCallExpression(node) && node.expression.kind === ts.SyntaxKind.ImportKeyword;
}

function moduleOf({ text }) {
  return text.startsWith('.') ? `part("${basename(text)}")` : `require("${text}")`;
}

function importOf({ importClause, moduleSpecifier }) {
  const module = moduleOf(moduleSpecifier);
  const { name, namedBindings } = importClause ?? {};
  const names = namedBindings && `{${namedBindings.elements.map(imported)}}`;
  const targets = [name?.text, names].filter((target) => target !== undefined);
  return targets.length === 0
    ? `${module};`
    : targets.map((one) => `var ${one}=${module};`).join('');
}

function imported({ propertyName, name }) {
  return `${(propertyName ?? name).text}:${name.text}`;
}

function exported({ propertyName, name }) {
  return `${name.text}:${(propertyName ?? name).text}`;
}

/**
 * `{ ...null, ...one, last }` for `{ ...one, last }`, which says the same. Where a literal begins with a spread and
 * goes on, V8 of Node 20 makes a hidden class for each object by itself: that takes seven times as long, and nothing
 * that reads such objects is ever quick. A batch had to clear up all its memory every hundred cars because of these
 * classes, and lost the machine code of its functions each time.
 */
function goesOnAfterSpread(node) {
  return (
    ts.isObjectLiteralExpression(node) &&
    node.properties.length > 1 &&
    ts.isSpreadAssignment(node.properties[0])
  );
}

function spreadOfNothing(first, file) {
  const at = first.getStart(file);
  return { from: at, to: at, into: '...null,' };
}

function withChanges(text, changes) {
  const sorted = changes.sort((one, other) => one.from - other.from);
  const starts = [0, ...sorted.map(({ to }) => to)];
  const ends = [...sorted.map(({ from }) => from), text.length];
  return ends.map((end, i) => text.slice(starts[i], end) + (sorted[i]?.into ?? '')).join('');
}

/** Of every package that the script is made of: each asks that its terms go with what is made of it. */
function licencesOf(inputs) {
  const packages = Object.keys(inputs).flatMap(
    (path) => /node_modules\/((?:@[^/]+\/)?[^/]+)\//.exec(path)?.[1] ?? [],
  );
  const rule = `\n${'-'.repeat(72)}\n\n`;
  return [...new Set(packages)].sort().map(licenceOf).join(rule);
}

function licenceOf(name) {
  const home = join(root, 'node_modules', name);
  const { version, license } = JSON.parse(readFileSync(join(home, 'package.json'), 'utf8'));
  const file = readdirSync(home).find((one) => /^licen[cs]e(?:\.|$)/i.test(one));
  if (file === undefined) throw new Error(`${name} comes without its licence`);
  return `${name} ${version}, ${license}\n\n${readFileSync(join(home, file), 'utf8').trim()}\n`;
}

/** Runs a source file that writes into a folder. */
function write(source, into) {
  const { outputFiles } = buildSync({
    ...common,
    entryPoints: [source],
    format: 'esm',
    write: false,
    banner: {
      js: "import{createRequire as r}from'node:module';const require=r(import.meta.url);",
    },
  });
  execFileSync(process.execPath, ['--input-type=module', '-', into], {
    cwd: root,
    input: outputFiles[0].text,
    stdio: ['pipe', 'ignore', 'inherit'],
  });
}
