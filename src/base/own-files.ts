/**
 * What the program's own files and tables are called, and which commands take them by which option: told where
 * one stands in the place of another.
 */

import { ownPage } from './own-pages.ts';
import { resultTable } from './result-tables.ts';

export type Taker = {
  readonly commands: readonly string[];
  /** None where the file is named by itself, as readings are. */
  readonly option?: string;
};

const mostCommands = ['survey', 'plan', 'quote'];

/** Of each kind of JSON file that some command takes, by the kind that its `schema` names. */
const takers: ReadonlyMap<string, Taker & { readonly option: string }> = new Map([
  ['job', { option: '--job', commands: mostCommands }],
  ['shop', { option: '--shop', commands: mostCommands }],
  ['template', { option: '--template', commands: mostCommands }],
  ['film-record', { option: '--film-record', commands: mostCommands }],
  ['gauge', { option: '--gauge', commands: mostCommands }],
  ['rates', { option: '--rates', commands: mostCommands }],
  ['rubric', { option: '--rubric', commands: ['grade'] }],
  ['decisions', { option: '--as-decided', commands: ['read', 'survey', 'plan'] }],
  ['plan', { option: '--plan', commands: ['compare'] }],
  ['survey', { option: '--for', commands: ['template sheet'] }],
]);

export type KindSaid = Taker & { readonly kind: string; readonly option: string };

/** `leastcut/job/1` is a job file, which is named with --job; nothing of what no command takes. */
export function kindSaid(schemaName: unknown): KindSaid | undefined {
  const kind = /^leastcut\/([a-z-]+)\/\d+$/.exec(String(schemaName))?.[1];
  const taker = kind === undefined ? undefined : takers.get(kind);
  return kind === undefined || taker === undefined
    ? undefined
    : { ...taker, kind: kind.replace('-', ' ') };
}

export type OwnTable = Taker & {
  readonly called: string;
  /** Those that it must have. */
  readonly columns: readonly string[];
};

const listOfJobs: OwnTable = {
  called: 'a list of jobs',
  columns: ['job', 'readings'],
  commands: ['batch'],
};

/** Tables that people fill in, by the columns that each must have. */
export const ownTables: readonly OwnTable[] = [
  { called: 'a table of readings', columns: ['panel', 'reading_um'], commands: mostCommands },
  {
    called: 'a table of defects',
    columns: ['panel', 'defect'],
    ...{ commands: ['plan', 'quote'], option: '--defects' },
  },
  {
    called: 'a table of test spots',
    columns: ['spot', 'panel', 'machine', 'pad', 'product', 'sets'],
    ...{ commands: mostCommands, option: '--spots' },
  },
  { called: 'checks of a gauge', columns: ['shim_um', 'reading_um'], commands: ['gauge'] },
  {
    called: 'a table of gloss',
    columns: ['panel', 'angle_deg', 'before_gu', 'after_gu'],
    ...{ commands: ['compare'], option: '--gloss' },
  },
  {
    called: 'a table of sets worked',
    columns: ['panel', 'sets'],
    ...{ commands: ['compare'], option: '--worked' },
  },
  {
    called: 'a table of hours',
    columns: ['job', 'estimated_min', 'actual_min'],
    ...{ commands: ['plan', 'quote'], option: '--history' },
  },
  listOfJobs,
];

/** Which of them has these columns: of several the one that must have most, as test spots name a defect as well. */
export function ownTable(cells: readonly string[]): OwnTable | undefined {
  const names = cells.map((cell) => cell.trim().toLowerCase());
  const fitting = ownTables.filter(({ columns }) => columns.every((one) => names.includes(one)));
  const most = Math.max(...fitting.map(({ columns }) => columns.length));
  return fitting.find(({ columns }) => columns.length === most);
}

/** Which of our results a text is, as far as its beginning tells; nothing of any other text. */
export function ownResult(beginning: string): string | undefined {
  if (/^\s*\{\s*"schema"\s*:\s*"leastcut\//u.test(beginning)) return 'a record';
  const [head = ''] = beginning.split(/\r\n?|\n/u, 1);
  return resultTable(head) ?? ownPage(beginning);
}

/** `survey, plan take it as --job FILE`. */
export function takenAs({ commands, option }: Taker): string {
  if (option === undefined) return `leastcut ${commands[0]} FILE takes it`;
  return `${commands.join(', ')} ${commands.length === 1 ? 'takes' : 'take'} it as ${option} FILE`;
}

/** Which of our own files a text in JSON is, as far as its beginning tells; nothing of any other text. */
export function ownJson(
  text: string,
): { readonly called: string; readonly wayOut: string } | undefined {
  if (!/^\s*(?:\[\s*)?\{\s*"[^"\n]*"\s*:/u.test(text)) return undefined;
  const said = /"schema"\s*:\s*"(leastcut\/[^"\n]{1,60})"/u.exec(text)?.[1];
  const kind = kindSaid(said);
  if (kind !== undefined) return { called: `a ${kind.kind} file`, wayOut: takenAs(kind) };
  if (said !== undefined) {
    return {
      called: `a file that calls itself ${said}`,
      wayOut: 'name the readings it was made of',
    };
  }
  const table = ownTable([...text.matchAll(/"(\w+)"\s*:/gu)].map(([, key = '']) => key));
  return table === listOfJobs ? { called: table.called, wayOut: takenAs(table) } : undefined;
}
