/** What is said of a list that names no job, and of a file that holds no text at all. */
import { type Diagnostic, error } from '../../base/diagnostics.ts';
import { saidFile } from '../../base/file-name.ts';

/** What is known of the beginning of a file: its bytes, and whether they are all of it. */
export type Beginning = { readonly bytes: Uint8Array; readonly isAll: boolean };

/** Of a file whose bytes make no text. */
export function withoutText(name: string, { bytes }: Beginning): Diagnostic {
  const why = bytes.length === 0 ? 'is empty' : `holds no text, only ${whatOf(bytes)}`;
  return error('file-empty', `${saidFile(name)} ${why}`, {
    at: { file: name },
    hint: 'write or export it again: a list of jobs (job,readings and a row for each), or readings; a folder of them will do as well',
  });
}

function whatOf(bytes: Uint8Array): string {
  if (bytes.every((byte) => byte === 0)) return 'bytes of nought';
  return bytes.every((byte) => byte <= 0x20) ? 'blanks' : 'the mark of an encoding';
}

export const emptyFolder = (name: string): Diagnostic =>
  error('batch-empty', `the folder "${name}" holds no job`, {
    at: { file: name },
    hint: 'a job is a file of readings (csv, tsv, txt), or NAME.job.json with NAME.csv beside it',
  });

export const emptyList = (name: string, form: 'json' | 'table'): Diagnostic =>
  error(
    'batch-empty',
    form === 'json'
      ? `${saidFile(name)} is a list without an entry`
      : `${saidFile(name)} names columns, and no job in a row below them`,
    {
      at: { file: name },
      hint:
        form === 'json'
          ? 'write an object for each job: { "job": "coupe", "readings": "coupe.csv" }'
          : 'write a row for each: its name and the file of its readings',
    },
  );
