/** Rows of cells → the text of a file, the way spreadsheets and gauges write it. */
import type { Shot, Survey } from './invented-survey.ts';

export type NumberStyle = {
  readonly decimal?: string;
  readonly thousands?: string;
  readonly digits?: number;
};
export type Dialect = {
  readonly delimiter?: string;
  readonly eol?: string;
  readonly quote?: 'needed' | 'all' | 'never';
  readonly finalEnd?: boolean;
};

/** `1234.5` as `1.234,5`: digits, thousands and mark as asked for. */
export function shown(
  value: number,
  { decimal = '.', thousands = '', digits = 1 }: NumberStyle = {},
): string {
  const [whole = '', fraction = ''] = Math.abs(value).toFixed(digits).split('.');
  const grouped = thousands === '' ? whole : whole.replace(/\B(?=(\d{3})+$)/g, thousands);
  return (value < 0 ? '-' : '') + grouped + (fraction === '' ? '' : decimal + fraction);
}

export const quoted = (cell: string): string => `"${cell.replaceAll('"', '""')}"`;

export function csv(rows: readonly (readonly string[])[], dialect: Dialect = {}): string {
  const { delimiter = ',', eol = '\n', quote = 'needed', finalEnd = true } = dialect;
  const written = (cell: string): string => {
    if (quote === 'all') return quoted(cell);
    const needed = cell.includes(delimiter) || /["\r\n]/.test(cell);
    return needed && quote === 'needed' ? quoted(cell) : cell;
  };
  const text = rows.map((row) => row.map(written).join(delimiter)).join(eol);
  return finalEnd ? text + eol : text;
}

export type Show = (value: number) => string;
export type LongStyle = Dialect &
  NumberStyle & {
    readonly header?: readonly string[];
    readonly row?: (shot: Shot, show: Show, index: number) => readonly string[];
  };

const digitsOf = ({ unit }: Survey): number => (unit === 'mil' ? 2 : 1);

export const showing =
  (survey: Survey, style: NumberStyle = {}): Show =>
  (value) =>
    shown(value, { digits: digitsOf(survey), ...style });

/** The rows of a long table: a header, then a row per reading. */
export function longRows(survey: Survey, style: LongStyle = {}): readonly (readonly string[])[] {
  const show = showing(survey, style);
  const row = style.row ?? (({ panel, point, value }: Shot) => [panel, point, show(value)]);
  const header = style.header ?? ['panel', 'point', `reading_${survey.unit}`];
  return [header, ...survey.shots.map((shot, index) => row(shot, show, index))];
}

export const longTable = (survey: Survey, style: LongStyle = {}): string =>
  csv(longRows(survey, style), style);
