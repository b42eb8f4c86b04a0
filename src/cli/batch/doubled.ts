/** Jobs of a batch that are likely one: done for the same vehicle, or of the same readings, whatever their files. Told at its end. */
import { inWords } from '../../base/in-words.ts';
import { plainVehicle } from '../../film/same-vehicle.ts';
import type { AboutJob } from './about-job.ts';

export type DoubledJobs = {
  readonly add: (job: Pick<AboutJob, 'job' | 'vehicle' | 'readingsSum'>) => void;
  /** None where each job is a vehicle of its own. */
  readonly told: () => readonly string[];
};

/** Groups that are told, and names of jobs for each; more are counted. */
const MOST_TOLD = 5;

type Group = { readonly why: string; readonly jobs: string[] };

/** It grows with the number of jobs, not with their records. */
export function createDoubled(): DoubledJobs {
  const first = new Map<string, string>();
  const groups = new Map<string, Group>();
  const note = (key: string, name: string, why: string): boolean => {
    const job = copyOf(name);
    const before = first.get(key);
    if (before === undefined) {
      first.set(key, job);
      return false;
    }
    const group = groups.get(key) ?? { why, jobs: [before] };
    group.jobs.push(job);
    groups.set(key, group);
    return true;
  };
  return {
    add: ({ job, vehicle, readingsSum }) => {
      const isKnown =
        vehicle !== null &&
        note(
          `vehicle ${plainVehicle(vehicle)}`,
          job,
          `are of one vehicle, ${JSON.stringify(vehicle)}`,
        );
      if (!isKnown && readingsSum !== null) {
        note(`readings ${readingsSum}`, job, 'have the same readings');
      }
    },
    told: () => {
      const all = [...groups.values()];
      const rest = all.length - MOST_TOLD;
      return [
        ...all.slice(0, MOST_TOLD).map(groupText),
        ...(rest > 0 ? [`and ${rest} more such groups of jobs`] : []),
      ];
    },
  };
}

function groupText({ why, jobs }: Group): string {
  const named = jobs.slice(0, MOST_TOLD).map((job) => JSON.stringify(job));
  const more = jobs.length - named.length;
  return `jobs ${inWords([...named, ...(more > 0 ? [`${more} more`] : [])])} ${why}: is that one job twice?`;
}

/** V8 keeps the whole text that a name was cut out of as long as the name. */
const copyOf = (text: string): string => [...text].join('');
