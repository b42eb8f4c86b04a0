/** `--fields`: the columns of a table that were asked for, in that order; or which there are. */
import { type Diagnostic, error, found, type Outcome, refused } from '../base/diagnostics.ts';
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

export const namesIn = (fields: string): readonly string[] =>
  fields.split(',').map((name) => name.trim());

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
  const columns = namesIn(fields);
  const odd = oddList(columns, fields);
  if (odd !== undefined) return refused(odd);
  const unknown = columns.filter((name) => !all.includes(name));
  if (unknown.length > 0) {
    return refused(
      ...unknown.map((name) =>
        error('usage-unknown-field', `"${name}" is no column of this table`, {
          hint: suggest(name, all) ?? withUnit(name, all) ?? `one of ${all.join(', ')}`,
        }),
      ),
    );
  }
  if (columns.join() === all.join()) return found({ columns, of: (row) => row });
  const places = columns.map((name) => all.indexOf(name));
  return found({ columns, of: (row) => places.map((place) => row[place] ?? null) });
}

/** What no table could be made of: programs that read csv by names keep one of two columns of a name. */
function oddList(columns: readonly string[], typed: string): Diagnostic | undefined {
  const twice = columns.find((name, i) => columns.indexOf(name) < i);
  if (columns.includes('')) {
    const place = columns.indexOf('') + 1;
    return error('usage-option-value', `--fields names no column in place ${place}: "${typed}"`, {
      hint: 'put one comma between two columns, and none at an end; --fields= lists the columns',
    });
  }
  if (twice === undefined) return undefined;
  return error('usage-option-value', `--fields names the column "${twice}" twice`, {
    hint: 'name each column once',
  });
}

/** `mean` for `mean_um`. */
function withUnit(name: string, all: readonly string[]): string | undefined {
  const longer = all.filter((one) => one.startsWith(`${name}_`));
  return longer.length === 1 ? `did you mean "${longer[0]}"?` : undefined;
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
