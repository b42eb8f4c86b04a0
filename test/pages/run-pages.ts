/**
 * `npm run pages [-- --only WORD] [--keep FOLDER]`: writes the pages of every command, opens each in a headless
 * Chromium, on telephones and desks, in light and dark, on A4 and Letter, and says what is wrong with
 * them. Where there is no Chromium it says so and checks nothing. `--keep` leaves the pages to be looked at.
 */
import { execFile } from 'node:child_process';
import { cpSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { availableParallelism, tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { parseArgs, promisify } from 'node:util';
import { buildProgram } from '../cli/build-program.ts';
import { type Browser, findBrowser, startBrowser, type Tab } from './browser.ts';
import { type Checked, checkPage } from './check-page.ts';
import { detailPages, panelCounts, samplePages, usualCount, vehiclePages } from './page-list.ts';
import { plantedPages } from './planted-pages.ts';
import { vehicleFiles } from './vehicle-files.ts';

type Page = {
  readonly name: string;
  readonly write: () => Promise<string>;
  readonly most?: number | undefined;
};
const execute = promisify(execFile);

/** Several at a time, in their order. */
async function inParallel<A, B>(
  items: readonly A[],
  workers: number,
  work: (item: A) => Promise<B>,
): Promise<readonly B[]> {
  const results: B[] = [];
  const queue = [...items.entries()];
  const worker = async (): Promise<void> => {
    for (let next = queue.shift(); next !== undefined; next = queue.shift()) {
      const [at, item] = next;
      results[at] = await work(item);
    }
  };
  await Promise.all(Array.from({ length: workers }, worker));
  return results;
}

/** Each page as a way of writing its file, in a folder with the samples and the vehicles. */
function pagesIn(folder: string, only: string): readonly Page[] {
  const program = buildProgram(process.cwd(), folder);
  const pageOf = (name: string, words: readonly string[], cwd: string, at: number): Page => {
    const path = join(cwd, `page-${at}.html`);
    const write = async (): Promise<string> => {
      await execute(process.execPath, [program, ...words, '--format', 'html', '-o', path, '-q'], {
        cwd,
      }).catch((problem: { readonly code?: number; readonly stderr?: string }) => {
        // Exit 1 is an answer of no: its page is written.
        if (problem.code !== 1) throw new Error(`${name}: ${problem.stderr}`);
      });
      return path;
    };
    return { name, write };
  };
  const workFolder = (name: string): string => {
    const cwd = join(folder, name);
    cpSync('samples', join(cwd, 'samples'), { recursive: true });
    return cwd;
  };
  const ofVehicle = (panels: number): readonly Page[] => {
    const cwd = workFolder(String(panels));
    for (const { name, text } of Object.values(vehicleFiles(panels))) {
      writeFileSync(join(cwd, name), text);
    }
    const pages = panels === usualCount ? [...vehiclePages, ...detailPages] : vehiclePages;
    return pages.map(({ name, words, most }, at) => ({
      ...pageOf(`${name}, ${panels} panel${panels === 1 ? '' : 's'}`, words, cwd, at),
      most: panels === usualCount ? most : undefined,
    }));
  };
  const amongSamples = workFolder('samples');
  const ofSamples = samplePages.map(({ name, words }, at) => pageOf(name, words, amongSamples, at));
  return [...ofSamples, ...panelCounts.flatMap(ofVehicle)].filter(({ name }) =>
    name.includes(only),
  );
}

/** Pages that are wrong on purpose: a check that says nothing of them proves nothing of the others. */
async function blindness(browser: Browser, folder: string): Promise<readonly string[]> {
  const tab = await browser.open();
  const unseen: string[] = [];
  for (const [at, { wrong, html, wanted }] of plantedPages.entries()) {
    const path = join(folder, `planted-${at}.html`);
    writeFileSync(path, html);
    const { faults } = await checkPage(tab, pathToFileURL(path).href);
    if (!faults.some((fault) => wanted.test(fault))) {
      unseen.push(`a page with ${wrong} is not noticed: ${faults.join('; ') || 'no fault'}`);
    }
  }
  await tab.close();
  return unseen;
}

/** A page that is not written, or that the browser dies of, is a fault and no end. */
async function lookAt(
  { write, most = Number.POSITIVE_INFINITY }: Page,
  tab: Tab,
): Promise<Checked> {
  try {
    const { faults, sheets } = await checkPage(tab, pathToFileURL(await write()).href);
    const tooMany = sheets.some((count) => count > most) ? [`more than ${most} sheets`] : [];
    return { faults: [...faults, ...tooMany], sheets };
  } catch (problem) {
    return { faults: [String(problem)], sheets: [] };
  }
}

async function checkAll(browser: Browser, folder: string, only: string): Promise<number> {
  const workers = Math.min(4, availableParallelism());
  const unseen = await blindness(browser, folder);
  for (const one of unseen) console.log(`the checks are blind: ${one}`);
  const pages = pagesIn(folder, only);
  const tabs = await Promise.all(Array.from({ length: workers }, () => browser.open()));
  const checked = await inParallel(pages, workers, async (page) => {
    const tab = tabs.pop() ?? (await browser.open());
    const { faults, sheets } = await lookAt(page, tab);
    tabs.push(tab);
    const paper = sheets.length === 0 ? '' : `: sheets of A4 ${sheets[0]}, of Letter ${sheets[1]}`;
    console.log(`${faults.length === 0 ? 'ok  ' : 'BAD '} ${page.name}${paper}`);
    for (const fault of new Set(faults)) console.log(`       ${fault}`);
    return faults.length;
  });
  const bad = checked.filter((count) => count > 0).length;
  console.log(`${pages.length - bad} pages are right, ${bad} are not`);
  return bad + unseen.length;
}

/** One that was found and does not start is as good as none; one that was named has to. */
async function started(executable: string): Promise<Browser | undefined> {
  try {
    return await startBrowser(executable);
  } catch (problem) {
    if (process.env['CHROMIUM']) throw problem;
    console.log(`${executable} does not start (${problem}): the pages are not checked.`);
    return undefined;
  }
}

async function main(): Promise<void> {
  const { values } = parseArgs({
    options: { only: { type: 'string', default: '' }, keep: { type: 'string' } },
  });
  const executable = findBrowser(process.env);
  if (executable === undefined) {
    console.log('No Chromium in PATH, and CHROMIUM names none: the pages are not checked.');
    return;
  }
  const start = Date.now();
  const browser = await started(executable);
  if (browser === undefined) return;
  const folder = mkdtempSync(join(tmpdir(), 'leastcut-pages-'));
  try {
    console.log(`Pages in ${browser.version}`);
    const bad = await checkAll(browser, folder, values.only);
    console.log(`${((Date.now() - start) / 1000).toFixed(0)} s`);
    if (bad > 0) process.exitCode = 1;
  } finally {
    await browser.close();
    if (values.keep !== undefined) cpSync(folder, values.keep, { recursive: true });
    rmSync(folder, { recursive: true, force: true, maxRetries: 10, retryDelay: 100 });
  }
}

await main();
