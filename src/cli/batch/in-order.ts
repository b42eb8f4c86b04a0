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
  let waiting = 0;
  let goesOn = true;
  let failure: { readonly problem: unknown } | undefined;
  let turn: Promise<void> = Promise.resolve();

  const begin = (task: Task, runner: Runner<Task, Done>): void => {
    waiting += 1;
    const work = runner(task).finally(() => {
      idle.push(runner);
      changes.tell();
    });
    // A job that fails while it waits for its turn is told when its turn comes.
    work.catch(() => {});
    turn = turn.then(async () => {
      try {
        const done = await work;
        if (goesOn) goesOn = await take(done);
      } catch (problem) {
        failure ??= { problem };
        goesOn = false;
      }
      waiting -= 1;
      changes.tell();
    });
  };

  for await (const task of tasks) {
    let runner = idle.shift();
    while (goesOn && (runner === undefined || waiting >= ahead)) {
      await changes.next();
      runner ??= idle.shift();
    }
    if (!goesOn || runner === undefined) break;
    begin(task, runner);
  }
  await turn;
  if (failure !== undefined) throw failure.problem;
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
