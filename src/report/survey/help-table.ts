/** What would help, in a row for each thing: what it takes, how much more may go, and on which panels. */
import { groupBy } from '../../base/group-by.ts';
import { tell, unitName } from '../../base/sentence.ts';
import type { LengthUnit, Minutes } from '../../base/units.ts';
import { isOnRecord } from '../../film/limits/earlier-work.ts';
import type { PanelSurvey } from '../../film/survey.ts';
import { column } from '../columns.ts';
import { type Block, cell } from '../model.ts';
import { partNames } from '../panel-list.ts';
import { coatName } from './coat-name.ts';
import { rangeOf } from './gain-groups-text.ts';
import type { Gain } from './gain-table.ts';
import { minutes } from './help-lines.ts';
import { isSettledByClear } from './near-lines.ts';

/** Those worth a row, that of most first; `read` are the panels and zones that were read. */
export function helpTable(
  gains: readonly Gain[],
  read: readonly PanelSurvey[],
  unit: LengthUnit,
): readonly Block[] {
  const rows = [...groupBy(gains.filter(hasRow), rowKey).values()].sort(
    (one, other) => total(other) - total(one),
  );
  if (rows.length === 0) return [];
  return [
    {
      kind: 'table',
      columns: [
        { ...column('Would help') },
        column('takes'),
        {
          ...column(`${unitName(unit)} more may go`),
          said: 'more may go, alone, if as reckoned',
          unit: unitName(unit),
        },
        { ...column('panels; each alone, if as reckoned'), said: 'panels' },
      ],
      rows: rows.map((own) =>
        [
          nameOf(own, read),
          takes(own),
          tell(rangeOf(own.map(({ gain }) => gain)), unit),
          panelsOf(own, read),
        ].map((text) => cell(text)),
      ),
    },
  ];
}

/** Whether a gain has its place in the table. */
export const hasRow = ({ code, gain, part }: Gain): boolean =>
  ROWS.includes(code) && gain >= WORTH_A_ROW && !(code === 'clear' && isSettledByClear(part));

/** What a clear that is read settles of a panel near its line stands there. */
const ROWS: readonly Gain['code'][] = ['history', 'clear', 'test-spot', 'points'];

/** µm: nobody does anything for less. */
const WORTH_A_ROW = 0.15;

type Row = readonly [Gain, ...Gain[]];

const rowKey = ({ code, points }: Gain): string => `${code} ${points ?? ''}`;

const total = (own: Row): number => own.reduce((sum, { gain }) => sum + gain, 0);

function nameOf(own: Row, read: readonly PanelSurvey[]): string {
  const [{ code, points }] = own;
  if (code === 'points') return `${points ?? 0} points`;
  if (code === 'clear') return `${coatName(read)} read`;
  if (code === 'test-spot') return 'test spot';
  return own.some(({ part }) => isOnRecord(part.facts)) ? 'no other work' : 'never worked';
}

function takes(own: Row): string {
  const [{ code }] = own;
  const times = own.flatMap(({ time }) => time ?? []);
  if (times.length === 0) return 'word of it';
  const most = minutes(Math.max(...times) as Minutes);
  return code === 'test-spot' ? `${most} once` : `${most} each`;
}

/** By the most gained first, as many as have room, or all but those that do not. */
function panelsOf(own: Row, read: readonly PanelSurvey[]): string {
  const parts = [...own].sort((one, other) => other.gain - one.gain).map(({ part }) => part);
  const others = read.filter(({ budget }) => budget > 0).filter((one) => !parts.includes(one));
  const but = others.length === 0 ? 'all panels worked' : `all worked but ${partNames(others)}`;
  const ofWorked = parts.length > 1 && parts.every(({ budget }) => budget > 0) ? [but] : [];
  const named = parts.map((_, i) => {
    const left = parts.length - i - 1;
    return `${partNames(parts.slice(0, i + 1))}${left === 0 ? '' : ` and ${left} more`}`;
  });
  const inFull = [...ofWorked, ...named.slice(-1)].sort((a, b) => a.length - b.length);
  const ways = [...inFull, ...named.toReversed()];
  return ways.find(({ length }) => length <= ROOM) ?? named[0] ?? '';
}

/** Characters that a page of 80 columns has beside the other columns. */
const ROOM = 40;
