/**
 * Builds the program: `node .build.mjs [folder]`, `dist` unless named. In the folder stand then
 *
 *   main.js, batch-worker.js   the entries: small, they load the rest when it is needed
 *   package.json               says that they are CommonJS, which starts without the loader of modules
 *   program.cjs                everything else in one script, as src/cli/load-program.ts runs it
 *   program.cache              what V8 compiled of it, for the Node that built it (src/cli/load-program.ts)
 *   survey.cache               the same with no more than a survey runs
 *   LICENSES.txt               the terms of the packages whose code it holds
 *   schemas/, man/             what the program says of itself, as files
 */
import { execFileSync } from 'node:child_process';
import { readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
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

const commonJs = {
  ...common,
  format: 'cjs',
  define: { 'import.meta.dirname': '__dirname' },
};

rmSync(folder, { recursive: true, force: true });
buildSync({
  ...commonJs,
  entryPoints: ['src/cli/main.ts', 'src/cli/batch-worker.ts'],
  outdir: folder,
});
writeFileSync(join(folder, 'package.json'), '{ "type": "commonjs" }\n');
const { metafile, outputFiles } = await build({
  ...commonJs,
  entryPoints: ['src/cli/program.ts'],
  metafile: true,
  write: false,
  alias: {
    // Commander can start other programs as subcommands. This one never does, and so holds no means to.
    'node:child_process': './src/cli/build/no-child-process.ts',
  },
  plugins: [statisticsByFile()],
});
writeFileSync(
  join(folder, 'program.cjs'),
  scriptOf(withPlainSpreads(outputFiles[0].text)),
  'latin1',
);
writeFileSync(join(folder, 'LICENSES.txt'), licencesOf(metafile.inputs));
write('src/cli/build/write-schemas.ts', join(folder, 'schemas'));
write('src/cli/build/write-man.ts', join(folder, 'man'));
write('src/cli/build/write-cache.ts', folder);

/**
 * File by file, and of those only what is used: of the one that it comes as, all classes and tables would be
 * made at each start (3 ms) for a few functions. Esbuild leaves out what it is told to do nothing by itself.
 */
function statisticsByFile() {
  const home = join(root, 'node_modules/simple-statistics');
  const inert = (path) => ({ path, sideEffects: false });
  return {
    name: 'statistics-by-file',
    setup({ onResolve }) {
      onResolve({ filter: /^simple-statistics$/ }, () => inert(join(home, 'index.js')));
      onResolve({ filter: /^\.\// }, ({ path, resolveDir }) =>
        resolveDir.startsWith(home) ? inert(join(resolveDir, path)) : undefined,
      );
    },
  };
}

/**
 * `{ ...null, ...one, last }` for `{ ...one, last }`, which says the same. Where a literal begins with a spread and
 * goes on, V8 of Node 20 makes a hidden class for each object by itself: that takes seven times as long, and nothing
 * that reads such objects is ever quick. A batch had to clear up all its memory every hundred cars because of these
 * classes, and lost the machine code of its functions each time.
 */
function withPlainSpreads(text) {
  const file = ts.createSourceFile('program.js', text, ts.ScriptTarget.ES2023);
  const places = [];
  const visit = (node) => {
    if (ts.isObjectLiteralExpression(node) && node.properties.length > 1) {
      const [first] = node.properties;
      if (ts.isSpreadAssignment(first)) places.push(first.getStart(file));
    }
    ts.forEachChild(node, visit);
  };
  visit(file);
  const cuts = [0, ...places.sort((one, other) => one - other), text.length];
  return cuts
    .slice(1)
    .map((end, i) => text.slice(cuts[i], end))
    .join('...null,');
}

/**
 * A function of what a CommonJS module finds about itself, ready to be run. In ASCII: it is decoded in no
 * time and takes half of the memory. Regular expressions are the last to hold other characters.
 */
function scriptOf(text) {
  const ascii = text.replaceAll(
    /[^\0-\x7f]/g,
    (unit) => `\\u${unit.charCodeAt(0).toString(16).padStart(4, '0')}`,
  );
  return `(function (module, require, __dirname) {${ascii}\n})`;
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
