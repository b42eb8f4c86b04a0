/** What panels are said to be made of: by the job, else by the readings' own column. */
import { type Diagnostic, warning } from '../../base/diagnostics.ts';
import { groupBy } from '../../base/group-by.ts';
import type { Reading } from '../../film/reading.ts';
import type { Substrate, VehicleTemplate } from '../../film/template/template.ts';
import { substrateWord } from '../../intake/cells/substrate-word.ts';

export type SaidSubstrate = {
  readonly substrate: Substrate;
  readonly by: 'job' | 'readings';
  /** Whether the readings say it, alone or with the job: then it is known by what principle they were taken. */
  readonly inReadings: boolean;
};

export type SaidSubstrates = {
  readonly substrates: ReadonlyMap<string, SaidSubstrate>;
  readonly diagnostics: readonly Diagnostic[];
};

/** The job is believed before the column; a column that says two things of a panel says nothing. */
export function saidSubstrates(
  readings: readonly Reading[],
  byJob: ReadonlyMap<string, Substrate>,
  { panels }: VehicleTemplate,
): SaidSubstrates {
  const substrates = new Map<string, SaidSubstrate>();
  for (const [id, substrate] of byJob) {
    substrates.set(id, { substrate, by: 'job', inReadings: false });
  }
  const diagnostics: Diagnostic[] = [];
  for (const [id, own] of groupBy(saying(readings), ({ panel }) => panel)) {
    const panel = panels.find((one) => one.id === id);
    const [first] = own;
    const stated = byJob.get(id);
    const other = own.find(({ says }) => says !== (stated ?? first.says));
    if (panel === undefined) continue;
    if (other !== undefined) diagnostics.push(contradiction(panel.name, other, stated));
    else {
      const by = stated === undefined ? 'readings' : 'job';
      substrates.set(id, { substrate: first.says, by, inReadings: true });
    }
  }
  return { substrates, diagnostics };
}

type Saying = Pick<Reading, 'panel' | 'origin'> & {
  readonly cell: string;
  readonly says: Substrate;
};

function saying(readings: readonly Reading[]): readonly Saying[] {
  const said: Saying[] = [];
  for (const { panel, origin, substrate: cell } of readings) {
    const says = cell === undefined ? undefined : substrateWord(cell);
    if (cell !== undefined && says !== undefined) said.push({ panel, origin, cell, says });
  }
  return said;
}

const contradiction = (
  name: string,
  { cell, says, origin }: Saying,
  stated: Substrate | undefined,
): Diagnostic => {
  const [what, hint] =
    stated === undefined
      ? [
          `the readings of "${name}" name more than one substrate`,
          'a reading may stand under the wrong panel; else say "substrate" of the panel in the job file',
        ]
      : [
          `"${name}" is ${stated} by the job file`,
          'the job is believed: mend it if the panel is not, for a gauge reads by one principle what it cannot by the other',
        ];
  return warning('substrate-contradicted', `${what}, and ${cell} here says ${says}`, {
    at: origin,
    hint,
  });
};
