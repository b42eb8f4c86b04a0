/** `--fields`: the columns of a table that were asked for, in that order; or which there are. */
import { error, found, type Outcome, refused } from '../base/diagnostics.ts';
import { suggest } from '../base/did-you-mean.ts';
import type { DataTable } from '../report/model.ts';
import type { Answer } from './command.ts';
import type { TypedOptions } from './options.ts';

/** Nothing asked for lists the names, one a row. */
export function chosenFields(table: DataTable, fields: string): Outcome<DataTable> {
  const { columns, rows } = table;
  if (fields.trim() === '') {
    return found({ columns: ['field'], rows: columns.map((name) => [name]) });
  }
  const asked = fields.split(',').map((name) => name.trim());
  const unknown = asked.filter((name) => !columns.includes(name));
  if (unknown.length > 0) {
    return refused(
      ...unknown.map((name) =>
        error('usage-unknown-field', `"${name}" is no column of this table`, {
          hint: suggest(name, columns) ?? `one of ${columns.join(', ')}`,
        }),
      ),
    );
  }
  const places = asked.map((name) => columns.indexOf(name));
  return found({
    columns: asked,
    rows: rows.map((row) => places.map((place) => row[place] ?? null)),
  });
}

/** An answer whose table has the columns that were asked for. */
export function withFields(answer: Answer, { fields }: TypedOptions): Answer {
  if (fields === undefined || answer.table === undefined) return answer;
  const { value, diagnostics } = chosenFields(answer.table(), fields);
  return {
    ...answer,
    ...(value === undefined ? {} : { table: () => value }),
    diagnostics: [...answer.diagnostics, ...diagnostics],
  };
}
