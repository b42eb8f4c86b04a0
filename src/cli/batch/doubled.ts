/** Jobs of a batch that are likely one: done for the same vehicle, or of the same readings, whatever their files. Told at its end. */
import { inWords } from '../../base/in-words.ts';
import { plainVehicle } from '../../film/same-vehicle.ts';

export type DoubledJobs = {
  /** Takes the record of a job as a line of ndjson. */
  readonly add: (line: string) => void;
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
  const note = (key: string, job: string, why: string): boolean => {
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
    add: (line) => {
      const { job, vehicle, sum } = aboutJob(line);
      const isKnown =
        vehicle !== null &&
        note(
          `vehicle ${plainVehicle(vehicle)}`,
          job,
          `are of one vehicle, ${JSON.stringify(vehicle)}`,
        );
      if (!isKnown && sum !== null) note(`readings ${sum}`, job, 'have the same readings');
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

/** Apart from the line: V8 keeps a line as long as a piece that was cut out of it. */
const copyOf = (text: string): string => [...text].join('');

const TEXT = '"(?:[^"\\\\]|\\\\.)*"';
const job = new RegExp(`"job":(${TEXT})`);
/** Null where no result was made of them. */
const readings = /"readings_sha256":"([0-9a-f]+)","inputs":/;
const vehicleOf = new RegExp(
  `"result":\\{"schema":${TEXT},"version":${TEXT},"command":${TEXT},"vehicle":(${TEXT})`,
);

/** As a record of a batch writes it; a batch of ten thousand is not parsed for it. */
function aboutJob(line: string) {
  const text = (found: string | undefined): string | null =>
    found === undefined ? null : (JSON.parse(found) as string);
  const [, sum] = readings.exec(line) ?? [];
  return {
    job: text(job.exec(line)?.[1]) ?? '',
    vehicle: text(vehicleOf.exec(line)?.[1]),
    sum: sum === undefined ? null : copyOf(sum),
  };
}
