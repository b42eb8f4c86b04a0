/**
 * Every naughty string as a file's name, a folder's, a vehicle's, a panel's, a column's, a value of a
 * job, an option and a job of a batch: nothing that a terminal obeys comes out, machine forms stay
 * valid and say the string as it was, and nothing is run, read or written that was not asked for.
 */
import { existsSync, mkdirSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { type Run, type RunOptions, runCommand } from '../cli/run-command.ts';
import type { Attack } from './attack.ts';
import { naughtyStrings } from './naughty-strings.ts';
import { sideBySide } from './side-by-side.ts';

/** Control characters but line ends, and marks of direction. */
const OBEYED = /[\p{Cc}\u061c\u200b-\u200f\u2028-\u202e\u2060-\u2069\ufeff]/u;

const obeyedIn = (text: string): string | undefined =>
  OBEYED.exec(text.replaceAll('\n', ''))?.[0].codePointAt(0)?.toString(16);

const quoted = (text: string): string => `"${text.replaceAll('"', '""')}"`;

const readings = (vehicle: string, panel: string): string =>
  ['bonnet', 'roof', panel]
    .flatMap((name) =>
      [1, 2, 3].map((n) => `${[vehicle, name].map(quoted).join(',')},${n},${117 + n}\n`),
    )
    .reduce((all, row) => all + row, 'vehicle,panel,point,reading_um\n');

/** Names that a file system takes; a folder of its own keeps those with dots and slashes apart. */
const isFileName = (text: string): boolean =>
  text !== '' && !/[/\0]/.test(text) && !/^\.\.?$/.test(text) && isBytes(text);

/** A name is bytes to the disk, at most 255 with its ending: half a surrogate pair has none of its own. */
const isBytes = (text: string): boolean => {
  const bytes = Buffer.from(text);
  return bytes.length < 200 && bytes.toString() === text;
};

/** An argument holds no NUL, and Linux none beyond 128 KiB. */
const isArgument = (text: string): boolean => !text.includes('\0') && text.length < 30_000;

type Program = (words: readonly string[], options?: RunOptions) => Promise<Run>;

const codes = new Set([0, 1, 2, 3, 65, 66, 73, 78]);

type Claim = { readonly what: string; readonly run: Run };

const faultOf = ({ what, run: { code, out, err } }: Claim): string | undefined => {
  const mark = obeyedIn(out + err);
  if (mark !== undefined) return `${what}: U+${mark} comes out bare`;
  if (code === null || !codes.has(code)) return `${what}: exit ${code}: ${err.slice(-300)}`;
  const lines = out.startsWith('{\n') ? [out] : out.split('\n').filter((line) => line !== '');
  const machine = out.startsWith('{') ? lines : [];
  return machine.some((line) => !isJson(line)) ? `${what}: JSON that is none` : undefined;
};

function isJson(text: string): boolean {
  try {
    JSON.parse(text);
    return true;
  } catch {
    return false;
  }
}

async function attackBy(text: string, folder: string, program: Program) {
  const claims: Claim[] = [];
  const claim = async (what: string, words: readonly string[], options?: RunOptions) => {
    const run = await program(words, options);
    claims.push({ what, run });
    return run;
  };
  const form = ['--format', 'ndjson'];
  const stdin = readings(text, `shelf ${text}`);
  const read = await claim('labels', ['read', '-', ...form], { stdin });
  await claim('labels refused', ['survey', '-', '--format', 'json'], { stdin });
  await claim('labels refused in text', ['survey', '-'], { stdin });
  await claim('a column', ['read', '-', '--format', 'csv'], {
    stdin: `panel,reading_um,${quoted(text)}\nroof,118,1\nbonnet,117,2\n`,
  });
  const job = { schema: 'leastcut/job/1', vehicle: { id: text, make: text, owner: text } };
  writeFileSync(join(folder, 'job.json'), JSON.stringify({ ...job, template: 'saloon' }));
  writeFileSync(join(folder, 'cars.csv'), readings('FH', 'boot'));
  await claim('a job', ['survey', 'cars.csv', '--job', 'job.json', '--format', 'json']);
  writeFileSync(join(folder, 'job.json'), JSON.stringify({ ...job, [text]: text, aim: text }));
  await claim('a job refused', ['survey', 'cars.csv', '--job', 'job.json']);
  writeFileSync(join(folder, 'list.json'), JSON.stringify([{ job: text, readings: text }]));
  await claim('a list', ['batch', 'list.json', '--command', 'survey']);
  if (isArgument(text)) {
    await claim('options', ['survey', 'cars.csv', '--vehicle', text, '--panel', text]);
    await claim('a command', [text, text]);
    await claim('a word', ['explain', text]);
    await claim('a name of no file', ['survey', `./${text}`, '--format', 'json']);
  }
  if (isFileName(text)) {
    mkdirSync(join(folder, text));
    writeFileSync(join(folder, text, `${text}.csv`), readings('', 'boot'));
    const file = `./${text}/${text}.csv`;
    const made = await claim('a file', ['survey', file, '--format', 'json']);
    await claim('a file in text', ['read', file, '-v']);
    await claim('a folder of jobs', ['batch', `./${text}`, '--command', 'survey', '-q']);
    await claim('an output', ['survey', file, '-o', `./${text}/${text}`]);
    const [input] = made.code === 0 ? (JSON.parse(made.out) as Named).inputs : [];
    if (made.code === 0 && input?.file !== file) claims.push(claimOf('a file is named otherwise'));
    if (!existsSync(join(folder, text, text))) claims.push(claimOf('an output is not there'));
  }
  const [first] = read.code === 0 ? read.out.split('\n') : [];
  const vehicle = first === undefined ? undefined : (JSON.parse(first) as Named).vehicle;
  return { claims, read: vehicle !== undefined, isKept: vehicle === text };
}

type Named = {
  readonly vehicle: string | null;
  readonly inputs: readonly { readonly file: string }[];
};

/** What is no matter of a run, in the shape of one. */
const claimOf = (what: string): Claim => ({ what, run: { code: null, out: '', err: '' } });

export const labels: Attack = {
  name: 'labels',
  claim: 'a label that acts: on a terminal, in a record, on the disk',
  run: async ({ program, folder, times }) => {
    const step = Math.max(1, Math.floor(naughtyStrings.length / times));
    const strings = naughtyStrings.filter((_, i) => i % step === 0);
    let runs = 0;
    let kept = 0;
    const faults = await sideBySide(strings, 2, async (text, i) => {
      const own = join(folder, `${i}`);
      mkdirSync(own);
      const { claims, isKept } = await attackBy(text, own, (words, options) =>
        runCommand(process.execPath, [program, ...words], { cwd: own, ...options }),
      );
      runs += claims.length;
      kept += isKept ? 1 : 0;
      const expected = new Set(['job.json', 'list.json', 'cars.csv', text]);
      const strange = readdirSync(own).filter((name) => !expected.has(name));
      rmSync(own, { recursive: true });
      return [...claims.map(faultOf), ...strange.map((name) => `a file "${name}" was made`)]
        .flatMap((fault) => fault ?? [])
        .map((fault) => `${JSON.stringify(text.slice(0, 40))}: ${fault}`);
    });
    return {
      figure: `${strings.length} strings, ${runs} runs; ${kept} came back as the very vehicle's name they were`,
      faults: faults.flat(),
    };
  },
};
