/**
 * Lines above numbers that no line of known names heads: names of columns with something wrong, and titles of what is
 * no reading, `Panel;Target`, `Limits`. Read as a list under them the numbers would be films.
 */

import { type Diagnostic, error } from '../../base/diagnostics.ts';
import { roleOfKey } from '../beside/sayings.ts';
import { numberShape } from '../cells/numbers.ts';
import { saysBeforeOrAfter } from '../cells/visit-words.ts';
import { isOtherQuantity } from '../doubts/other-quantities.ts';
import { besideReadings } from '../header/beside-readings.ts';
import type { GaugeRole } from '../header/gauge-vocabulary.ts';
import type { HeaderCell } from '../header/header.ts';
import { type Layout, type LayoutContext, readGaugeHeader } from '../header/layout.ts';
import { lineFrom } from '../rows/lines.ts';
import type { Source } from '../rows/source.ts';
import type { Row } from '../rows/tokens.ts';
import { namesStatistic } from '../statistics/statistic-words.ts';

/**
 * A row that names a column of readings, or several: a header with something wrong, which is to be
 * said. `Panel,Before,After`, `,Anna,Ben` and `Panel,2023/05,2024/05` are no one survey, and
 * `Largest (µm)` no reading, whatever stands below them; nor is what `Panel;Target` heads.
 */
export const headsReadings = ({ cells, line }: Row, layout: Layout, below: number): boolean => {
  if (cells.length < 2) return false;
  const { readings } = layout;
  const names = readGaugeHeader(cells);
  if (line === below - 1 && headsOthers(names, layout)) return true;
  const named = readings.filter(({ column }) => {
    const label = names[column]?.label ?? '';
    return label !== '' && numberShape(label)?.suffix !== '';
  });
  const inUnit = named.some(({ column }) => names[column]?.unit !== undefined);
  return (
    inUnit ||
    named.length > 1 ||
    names.some(({ role, label }) => role === 'reading' && label !== '')
  );
};

/** Straight above the first row: a name of the panels, or one of no readings, and words over the numbers. */
const headsOthers = (
  names: ReturnType<typeof readGaugeHeader>,
  { columns, readings }: Layout,
): boolean => {
  const over = names[columns.get('panel') ?? -1];
  const label = names[readings[0]?.column ?? -1]?.label ?? '';
  if (label === '' || numberShape(label) !== undefined || isOfTheFile(over)) return false;
  return (
    (over?.role === 'panel' && !isReadingInUnit(label)) ||
    isOther(label) ||
    saysBeforeOrAfter(label)
  );
};

const OF_THE_FILE: ReadonlySet<GaugeRole> = new Set([
  'vehicle',
  'operator',
  'time',
  'unit',
  'note',
]);

/** `Note;after wash`, `Location;Leeds`: said of all readings. A location may be a column of panels, but heads none here. */
const isOfTheFile = (over: HeaderCell<GaugeRole> | undefined): boolean =>
  over !== undefined &&
  ((over.role !== undefined && OF_THE_FILE.has(over.role)) || /^location$/iu.test(over.label));

const wordsOf = ({ text }: Source, { start }: Row): readonly string[] =>
  lineFrom(text, start).trim().split(/\s+/u);
/** A longer line is a sentence, and no title (an assumption). */
const longestTitle = 3;

const startOfLine = /^(\D+?)[\s:]+\d/u;

function titlesOthers(words: readonly string[], isPanel: LayoutContext['isPanel']): boolean {
  const [text, first = '', last = ''] = [words.join(' '), words[0], words.at(-1)];
  if (words.length > longestTitle || /[\d:=]/u.test(text) || isPanel(text)) return false;
  // `Before` alone is a title of readings.
  const isVisit = roleOfKey(first) === 'panel' && saysBeforeOrAfter(last);
  return isVisit || isOther(text) || isOther(last);
}

/** `Panel Target`, `Limits`: straight above a panel and its numbers a title of what is no reading. */
export function titleOfOthers(
  source: Source,
  rows: readonly Row[],
  { isPanel }: LayoutContext,
): Diagnostic | undefined {
  const title = rows.find((row, k) => {
    const next = rows[k + 1];
    const [, label = ''] =
      next === undefined ? [] : (startOfLine.exec(lineFrom(source.text, next.start)) ?? []);
    return isPanel(label.trim()) && titlesOthers(wordsOf(source, row), isPanel);
  });
  if (title === undefined) return undefined;
  const text = wordsOf(source, title).join(' ');
  return error(
    'header-missing',
    `"${text}" stands above the numbers, and they may be no readings`,
    {
      at: source.placeAt(title.start, text.length),
      hint: 'if they are readings, take the line out; else keep them out of the file',
    },
  );
}

/** `Thickness (?m)`: a reading in a unit whose letters were lost, which is told elsewhere. */
const isReadingInUnit = (label: string): boolean =>
  readGaugeHeader([label.replace(/\s*[([].*$/u, '')])[0]?.role === 'reading';

const isOther = (text: string): boolean =>
  namesStatistic(text) || besideReadings.test(text) || isOtherQuantity(text);
