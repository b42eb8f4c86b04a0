/** The decisions that one value settles, as people read and type them. */
import type { ReadingDecisions } from '../../formats/decisions.ts';
import type { IntakeDecisions } from '../../intake/read-gauge-file.ts';

export type DecidedKey = keyof Omit<ReadingDecisions, 'columns' | 'panelNames'>;

type DecidedName = {
  readonly named: string;
  /** Its key in a decisions file. */
  readonly inFile: string;
  readonly show: (value: unknown) => string;
  /** What to type for this value. */
  readonly option: (value: unknown) => string;
};

const delimiterNames: Readonly<Record<string, string>> = {
  ',': 'comma',
  ';': 'semicolon',
  '\t': 'tab',
  '|': 'pipe',
};
export const delimiterWord = (sign: unknown): string =>
  delimiterNames[String(sign)] ?? String(sign);
export const decimalWord = (mark: unknown): string => (mark === ',' ? 'comma' : 'point');

const plainly = String;
const article = (word: string): string => `a ${word}`;

export const decidedNames: Readonly<Record<DecidedKey, DecidedName>> = {
  encoding: {
    ...{ named: 'the encoding', inFile: 'encoding', show: plainly },
    option: (value) => `--encoding ${plainly(value).replace(/-bom$/u, '')}`,
  },
  delimiter: {
    ...{ named: 'the delimiter', inFile: 'delimiter' },
    show: (value) => article(delimiterWord(value)),
    option: (value) => `--delimiter ${delimiterWord(value)}`,
  },
  headerLine: {
    ...{ named: 'the header', inFile: 'header_line' },
    show: (value) => (value === 0 ? 'none' : `line ${plainly(value)}`),
    option: (value) => `--header-line ${plainly(value)}`,
  },
  layout: {
    ...{ named: 'the layout', inFile: 'layout', show: plainly },
    option: (value) => `--layout ${plainly(value)}`,
  },
  unit: {
    ...{ named: 'the unit', inFile: 'unit' },
    show: (value) => (value === 'um' ? 'µm' : plainly(value)),
    // No option names millimetres or inches: the file itself must.
    option: (value) =>
      value === 'um' || value === 'mil' ? `--reading-unit ${value}` : 'leaving out --as-decided',
  },
  decimal: {
    ...{ named: 'the decimal mark', inFile: 'decimal' },
    show: (value) => article(decimalWord(value)),
    option: (value) => `--decimal ${decimalWord(value)}`,
  },
};

export const decidedValue = (key: DecidedKey, decisions: IntakeDecisions): string | number =>
  decisions[key];
