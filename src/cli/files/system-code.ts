/** The system's own word for what it refused: ENOENT, EACCES, ENOSPC. */
export const systemCodeOf = (problem: unknown): string =>
  problem instanceof Error && 'code' in problem ? String(problem.code) : String(problem);

/** A reader that has gone is no fault: writing ends there, quietly. */
export const readerHasGone = (problem: unknown): boolean => systemCodeOf(problem) === 'EPIPE';
