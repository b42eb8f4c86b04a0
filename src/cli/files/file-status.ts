/** What stands behind a name: asked at once, which takes less than to load Node's promises of it. */
import { lstatSync, realpathSync, type Stats, statSync } from 'node:fs';

export const statOrNothing = (name: string): Stats | undefined => orNothing(() => statSync(name));

/** Of a symbolic link itself. */
export const linkOrNothing = (name: string): Stats | undefined => orNothing(() => lstatSync(name));

export const realPathOrNothing = (name: string): string | undefined =>
  orNothing(() => realpathSync(name));

function orNothing<Found>(look: () => Found): Found | undefined {
  try {
    return look();
  } catch {
    return undefined;
  }
}
