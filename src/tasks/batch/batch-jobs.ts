/** What a list says of its jobs → jobs by name, each once. */
import {
  type Diagnostic,
  error,
  hasErrors,
  type Outcome,
  type Place,
} from '../../base/diagnostics.ts';

/** What one column says of a job, and where it says it. */
export type SaidCell = { readonly text: string; readonly at: Place };

export type BatchEntry = {
  readonly id: string;
  /** Where the list names it. */
  readonly at: Place;
  readonly readings: readonly SaidCell[];
  /** The other columns that say something. */
  readonly said: ReadonlyMap<string, readonly SaidCell[]>;
};

type Listed = {
  readonly at: Place;
  readonly cells: ReadonlyMap<string, readonly SaidCell[]>;
};

/** Every problem of the list at once: a job without a name or readings, a name that stands twice. */
export function batchEntries(listed: readonly Listed[]): Outcome<readonly BatchEntry[]> {
  const lines = new Map<string, Place>();
  const diagnostics: Diagnostic[] = [];
  const entries = listed.flatMap(({ at, cells }): readonly BatchEntry[] => {
    const [id] = cells.get('job') ?? [];
    const readings = cells.get('readings') ?? [];
    if (id === undefined || readings.length === 0) {
      diagnostics.push(lacking(id === undefined ? 'job' : 'readings', at));
      return [];
    }
    const before = lines.get(id.text);
    if (before !== undefined) diagnostics.push(namedTwice(id, before));
    lines.set(id.text, id.at);
    const said = [...cells].filter(
      ([key, texts]) => key !== 'job' && key !== 'readings' && texts.length > 0,
    );
    return [{ id: id.text, at: id.at, readings, said: new Map(said) }];
  });
  return hasErrors(diagnostics) ? { diagnostics } : { value: entries, diagnostics };
}

const lacking = (what: 'job' | 'readings', at: Place): Diagnostic =>
  error(
    'batch-job-incomplete',
    what === 'job' ? 'the job has no name' : 'the job has no readings',
    {
      at,
      hint:
        what === 'job'
          ? 'give it one in the column job: its record is found by it'
          : 'name its file in the column readings, or remove the row',
    },
  );

const namedTwice = ({ text, at }: SaidCell, before: Place): Diagnostic =>
  error(
    'batch-job-twice',
    `"${text}" names two jobs${before.line === undefined ? '' : `, also that of line ${before.line}`}`,
    {
      at,
      hint: 'name each job once: a record is found by its name',
    },
  );
