/**
 * Jobs done by several at a time, and what came of them in the order of the jobs.
 *
 * What is done before its turn waits, and no job is begun that would make more than `ahead` wait: the
 * memory in use does not grow with the number of jobs.
 */
export type Runner<Task, Done> = (task: Task) => Promise<Done>;

/** `take` gets each in turn, and says whether to go on. */
export async function inOrder<Task, Done>(
  tasks: Iterable<Task> | AsyncIterable<Task>,
  runners: readonly Runner<Task, Done>[],
  ahead: number,
  take: (done: Done) => Promise<boolean>,
): Promise<void> {
  const idle = [...runners];
  const changes = createSignal();
  const turns = createTurns(take, changes.tell);
  for await (const task of tasks) {
    let runner = idle.shift();
    while (turns.goOn() && (runner === undefined || turns.waiting() >= ahead)) {
      await changes.next();
      runner ??= idle.shift();
    }
    if (!turns.goOn() || runner === undefined) break;
    const own = runner;
    turns.add(
      own(task).finally(() => {
        idle.push(own);
        changes.tell();
      }),
    );
  }
  await turns.end();
}

/** Work that is taken in the order in which it was begun; `tell` is called when one has been. */
function createTurns<Done>(take: (done: Done) => Promise<boolean>, tell: () => void) {
  let waiting = 0;
  let goesOn = true;
  let failure: { readonly problem: unknown } | undefined;
  let turn: Promise<void> = Promise.resolve();
  const takeNext = async (work: Promise<Done>): Promise<void> => {
    try {
      const done = await work;
      if (goesOn) goesOn = await take(done);
    } catch (problem) {
      failure ??= { problem };
      goesOn = false;
    }
    waiting -= 1;
    tell();
  };
  return {
    add: (work: Promise<Done>): void => {
      waiting += 1;
      // A job that fails while it waits for its turn is told when its turn comes.
      work.catch(() => {});
      turn = turn.then(() => takeNext(work));
    },
    waiting: (): number => waiting,
    goOn: (): boolean => goesOn,
    end: async (): Promise<void> => {
      await turn;
      if (failure !== undefined) throw failure.problem;
    },
  };
}

/** Lets one wait for the next time that another tells. */
function createSignal() {
  let wake: (() => void) | undefined;
  return {
    tell: (): void => {
      wake?.();
      wake = undefined;
    },
    next: (): Promise<void> =>
      new Promise((resolve) => {
        wake = resolve;
      }),
  };
}
