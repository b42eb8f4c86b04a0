/** What stands behind a name: asked at once, which takes less than to load Node's promises of it. */
import { lstatSync, realpathSync, type Stats, statSync } from 'node:fs';
import { systemCodeOf } from './system-code.ts';

export const statOrNothing = (name: string): Stats | undefined =>
  orNothing(() => statSync(name, { throwIfNoEntry: false }));

/** Of a symbolic link itself. */
export const linkOrNothing = (name: string): Stats | undefined =>
  orNothing(() => lstatSync(name, { throwIfNoEntry: false }));

/** Only where the system says so: not where it lets nobody look. */
export const isNotThere = (name: string): boolean => {
  try {
    statSync(name);
    return false;
  } catch (problem) {
    return ['ENOENT', 'ENOTDIR'].includes(systemCodeOf(problem));
  }
};

export const realPathOrNothing = (name: string): string | undefined =>
  orNothing(() => realpathSync(name));

function orNothing<Found>(look: () => Found): Found | undefined {
  try {
    return look();
  } catch {
    return undefined;
  }
}
