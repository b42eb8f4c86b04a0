/** What the system refused, by its own word (ENOENT, EACCES, ENOSPC) and in words for people. */

export const systemCodeOf = (problem: unknown): string =>
  problem instanceof Error && 'code' in problem ? String(problem.code) : String(problem);

/** A reader that has gone is no fault: writing ends there, quietly. */
export const readerHasGone = (problem: unknown): boolean => systemCodeOf(problem) === 'EPIPE';

const words: ReadonlyMap<string, string> = new Map([
  ['EISDIR', 'it is a folder'],
  ['ENOENT', 'there is no such folder'],
  ['ENOTDIR', 'a part of its path is no folder'],
  ['EACCES', 'its permissions do not allow it'],
  ['EPERM', 'the system does not allow it'],
  ['EROFS', 'the disk takes no changes'],
  ['ENOSPC', 'the disk is full'],
  ['EDQUOT', 'your share of the disk is full'],
  ['EFBIG', 'the disk takes no file of that size'],
  ['EIO', 'the disk fails'],
  ['EBUSY', 'another program holds it'],
  ['ELOOP', 'its links lead in a circle'],
  ['ENAMETOOLONG', 'its name is too long'],
  ['EMFILE', 'too many files are open'],
  ['ENFILE', 'too many files are open'],
  ['EBADF', 'it is closed'],
]);

/** Why it was refused; of what is seldom met the system's own word. */
export const reasonOf = (problem: unknown): string => {
  const code = systemCodeOf(problem);
  return words.get(code) ?? `the system says ${code}`;
};
