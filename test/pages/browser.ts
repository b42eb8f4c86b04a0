/**
 * A headless browser that is spoken to through two pipes, in the words of the DevTools protocol: messages
 * of JSON with a zero byte between them. No package and no open port is needed for it.
 */
import { type ChildProcess, spawn } from 'node:child_process';
import { existsSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { delimiter, join } from 'node:path';
import type { Readable, Writable } from 'node:stream';

export type Values = Readonly<Record<string, unknown>>;
/** Something that happened without being asked for. */
export type Event = { readonly method: string; readonly params: Values };

export type Tab = {
  readonly ask: (method: string, params?: Values) => Promise<Values>;
  /** What has happened since it was last asked. */
  readonly events: () => readonly Event[];
  readonly close: () => Promise<void>;
};
export type Browser = {
  readonly version: string;
  readonly open: () => Promise<Tab>;
  readonly close: () => Promise<void>;
};

const NAMES = ['chromium', 'chromium-browser', 'google-chrome', 'google-chrome-stable'];
const PATIENCE_MS = 30_000;

/** `CHROMIUM` names it; else the first of its usual names in `PATH`. */
export function findBrowser(env: Readonly<Record<string, string | undefined>>): string | undefined {
  const { CHROMIUM: named, PATH: path = '' } = env;
  if (named !== undefined && named !== '') return named;
  const folders = path.split(delimiter).filter((folder) => folder !== '');
  return NAMES.flatMap((name) => folders.map((folder) => join(folder, name))).find(existsSync);
}

export async function startBrowser(executable: string): Promise<Browser> {
  const profile = mkdtempSync(join(tmpdir(), 'leastcut-browser-'));
  const child = spawn(
    executable,
    [
      '--headless',
      '--remote-debugging-pipe',
      `--user-data-dir=${profile}`,
      '--no-first-run',
      '--disable-extensions',
      '--disable-gpu',
      '--hide-scrollbars',
      // Pages are our own, and a container gives no place for the sandbox.
      '--no-sandbox',
    ],
    { stdio: ['ignore', 'ignore', 'ignore', 'pipe', 'pipe'] },
  );
  const wire = wireOf(child);
  const close = async (): Promise<void> => {
    const ended = new Promise<void>((resolve) => child.once('exit', () => resolve()));
    // It answers by ending; one that does not is ended.
    await wire.ask('Browser.close').catch(() => child.kill('SIGKILL'));
    if (child.exitCode === null && child.signalCode === null) await ended;
    rmSync(profile, { recursive: true, force: true, maxRetries: 10, retryDelay: 100 });
  };
  try {
    const { product } = await wire.ask('Browser.getVersion');
    return { version: String(product), open: () => openTab(wire), close };
  } catch (problem) {
    rmSync(profile, { recursive: true, force: true });
    throw problem;
  }
}

type Answer = { readonly resolve: (values: Values) => void; readonly reject: (why: Error) => void };
type Wire = {
  readonly ask: (method: string, params?: Values, session?: string) => Promise<Values>;
  readonly hear: (session: string, listener: (event: Event) => void) => void;
};
type Message = {
  readonly id?: number;
  readonly result?: Values;
  readonly error?: { readonly message: string };
  readonly method?: string;
  readonly params?: Values;
  readonly sessionId?: string;
};

function wireOf(child: ChildProcess): Wire {
  const [, , , down, up] = child.stdio as unknown as readonly [
    null,
    null,
    null,
    Writable,
    Readable,
  ];
  const waiting = new Map<number, Answer>();
  const listeners = new Map<string, (event: Event) => void>();
  let ended: Error | undefined;
  const end = (why: Error): void => {
    ended = why;
    for (const { reject } of waiting.values()) reject(why);
    waiting.clear();
  };
  child.on('error', end);
  child.on('exit', (code) => end(new Error(`the browser ended with ${code}`)));
  // A broken pipe is the end of the browser, which says more.
  for (const pipe of [down, up]) pipe.on('error', () => {});

  const take = ({ id, result, error, method, params, sessionId }: Message): void => {
    if (id === undefined) {
      if (method !== undefined) listeners.get(sessionId ?? '')?.({ method, params: params ?? {} });
      return;
    }
    const answer = waiting.get(id);
    waiting.delete(id);
    if (error === undefined) answer?.resolve(result ?? {});
    else answer?.reject(new Error(error.message));
  };
  const parts: Buffer[] = [];
  up.on('data', (chunk: Buffer) => {
    let from = 0;
    for (let at = chunk.indexOf(0); at !== -1; at = chunk.indexOf(0, from)) {
      parts.push(chunk.subarray(from, at));
      take(JSON.parse(Buffer.concat(parts.splice(0)).toString('utf8')) as Message);
      from = at + 1;
    }
    parts.push(chunk.subarray(from));
  });

  let last = 0;
  return {
    ask: (method, params = {}, sessionId) => {
      if (ended !== undefined) return Promise.reject(ended);
      last += 1;
      const id = last;
      return new Promise<Values>((resolve, reject) => {
        const timer = setTimeout(
          () => reject(new Error(`no answer to ${method} after ${PATIENCE_MS / 1000} s`)),
          PATIENCE_MS,
        );
        const done =
          <T>(how: (value: T) => void) =>
          (value: T): void => {
            clearTimeout(timer);
            how(value);
          };
        waiting.set(id, { resolve: done(resolve), reject: done(reject) });
        down.write(`${JSON.stringify({ id, method, params, sessionId })}\0`);
      });
    },
    hear: (session, listener) => listeners.set(session, listener),
  };
}

async function openTab(wire: Wire): Promise<Tab> {
  const { targetId } = await wire.ask('Target.createTarget', { url: 'about:blank' });
  const { sessionId } = await wire.ask('Target.attachToTarget', { targetId, flatten: true });
  const session = String(sessionId);
  const heard: Event[] = [];
  wire.hear(session, (event) => heard.push(event));
  const ask: Tab['ask'] = (method, params) => wire.ask(method, params, session);
  for (const domain of ['Page', 'Network', 'Runtime', 'Log']) await ask(`${domain}.enable`);
  return {
    ask,
    events: () => heard.splice(0),
    close: async () => {
      await wire.ask('Target.closeTarget', { targetId });
    },
  };
}
