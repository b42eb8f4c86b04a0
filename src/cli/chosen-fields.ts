/** `--fields`: the columns of a table that were asked for, in that order; or which there are. */
import { error, found, type Outcome, refused } from '../base/diagnostics.ts';
import { suggest } from '../base/did-you-mean.ts';
import type { DataCell, DataTable } from '../report/model.ts';
import type { Answer } from './command.ts';
import type { TypedOptions } from './options.ts';

/** Nothing asked for lists the names, one a row. */
export function chosenFields(table: DataTable, fields: string): Outcome<DataTable> {
  if (fields.trim() === '') return found(namesOf(table.columns));
  const { value: choice, diagnostics } = chosenColumns(table.columns, fields);
  return choice === undefined
    ? refused(...diagnostics)
    : found({ columns: choice.columns, rows: table.rows.map(choice.of) });
}

export const namesOf = (columns: DataTable['columns']): DataTable => ({
  columns: ['field'],
  rows: columns.map((name) => [name]),
});

export type ChosenColumns = {
  readonly columns: readonly string[];
  /** What a row of all columns has in these. */
  readonly of: (row: readonly DataCell[]) => readonly DataCell[];
};

/** All of them where nobody chose. */
export function chosenColumns(
  all: readonly string[],
  fields: string | undefined,
): Outcome<ChosenColumns> {
  if (fields === undefined) return found({ columns: all, of: (row) => row });
  const columns = fields.split(',').map((name) => name.trim());
  const unknown = columns.filter((name) => !all.includes(name));
  if (unknown.length > 0) {
    return refused(
      ...unknown.map((name) =>
        error('usage-unknown-field', `"${name}" is no column of this table`, {
          hint: suggest(name, all) ?? `one of ${all.join(', ')}`,
        }),
      ),
    );
  }
  const places = columns.map((name) => all.indexOf(name));
  return found({ columns, of: (row) => places.map((place) => row[place] ?? null) });
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
