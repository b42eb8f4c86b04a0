/**
 * Stands in the built program for `node:child_process`, which the library that reads arguments asks for
 * and this program never uses: nothing it is given can make it start another program.
 */
export const spawn = (): never => {
  throw new Error('no other program is ever started');
};
