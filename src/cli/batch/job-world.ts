/**
 * The world as a job of a batch sees it: what it loads is noted, so that the same job need not be done
 * again; what follows from options alone is kept for the next job that has the same.
 */
import type { FromList, World } from '../command.ts';
import type { TypedOptions } from '../options.ts';

/** Checksums of what a job loaded, by the name of the file; null where it could not be read. */
export type LoadedSums = Map<string, string | null>;

type Kept = { readonly made: Promise<unknown>; readonly sums: LoadedSums };

/** Settings of so many kinds of job are kept; the job files of a long list are not. */
const mostKept = 8;

export type JobWorlds = {
  /** Equal options, said in the same places, are given as one and the same, by which what follows from them is known again. */
  readonly same: (options: TypedOptions, fromList: FromList) => TypedOptions;
  readonly worldOf: (sums: LoadedSums, load: World['load'], fromList?: FromList) => World;
};

/** A job writes nothing and knows of no other command. */
const apart: Pick<World, 'create' | 'command' | 'commands'> = {
  create: async () => [],
  command: async (name) => {
    throw new Error(`a job does not run ${name}`);
  },
  commands: async () => [],
};

export function createJobWorlds(
  around: Pick<World, 'surroundings' | 'fromEnvironment'>,
): JobWorlds {
  const once = createKeeper();
  return {
    same: createSameOptions(),
    worldOf: (sums, load, fromList = new Map()) => {
      // What stands in the list stands before the environment.
      const unsaid = [...around.fromEnvironment].filter((name) => !fromList.has(name));
      const base = { ...around, ...apart, fromList, fromEnvironment: new Set(unsaid) };
      return { ...base, load: noting(load, sums), once: once(base, load, sums) };
    },
  };
}

/** Of options, those that were asked for last. */
function createSameOptions(): JobWorlds['same'] {
  const byText = new Map<string, TypedOptions>();
  return (options, fromList) => {
    const key = JSON.stringify([options, ...fromList]);
    const known = byText.get(key) ?? options;
    byText.delete(key);
    byText.set(key, known);
    const [oldest] = byText.keys();
    if (byText.size > mostKept && oldest !== undefined) byText.delete(oldest);
    return known;
  };
}

/** What is made of options, as long as they are: another job that takes it has loaded the same files. */
function createKeeper() {
  const kept = new WeakMap<TypedOptions, Map<string, Kept>>();
  return (
    base: Omit<World, 'load' | 'once'>,
    load: World['load'],
    sums: LoadedSums,
  ): World['once'] =>
    async (what, options, make) => {
      const own = kept.get(options) ?? new Map<string, Kept>();
      kept.set(options, own);
      const entry = own.get(what) ?? keep(make, base, load);
      own.set(what, entry);
      const made = await entry.made;
      for (const [name, sum] of entry.sums) sums.set(name, sum);
      return made as Awaited<ReturnType<typeof make>>;
    };
}

function keep(
  make: (world: World) => Promise<unknown>,
  base: Omit<World, 'load' | 'once'>,
  load: World['load'],
): Kept {
  const sums: LoadedSums = new Map();
  const world: World = {
    ...base,
    load: noting(load, sums),
    once: (_what, _options, again) => again(world),
  };
  return { made: make(world), sums };
}

const noting =
  (load: World['load'], sums: LoadedSums): World['load'] =>
  async (name) => {
    const loaded = await load(name);
    sums.set(name, loaded.file?.sha256 ?? null);
    return loaded;
  };
