/** How a file was read, in lines: what was decided, on what evidence, and what else the file says. */

import { counted } from '../base/counted.ts';
import { unitName } from '../base/sentence.ts';
import { decimalWord, delimiterWord } from '../tasks/read/decided-names.ts';
import type { ReadInput } from '../tasks/read/read-request.ts';
import { about, joined } from './facts.ts';
import type { Facts, Said } from './model.ts';

type Decisions = NonNullable<ReadInput['decisions']>;

/** At most as many lines as are asked for, however much there is to say. */
export function decisionLines(decisions: Decisions, most: number): readonly Said[] {
  const said = [...decisions.evidence, ...columnLine(decisions), ...metadataLine(decisions)];
  const room = Math.max(1, most - 1);
  if (said.length <= room) return [summary(decisions), ...said];
  const left = said.length - room + 1;
  return [
    summary(decisions),
    ...said.slice(0, room - 1),
    `and ${counted(left, 'further statement')}: --format json has them all`,
  ];
}

const layoutWords: Readonly<Record<Decisions['layout'], string>> = {
  long: 'a reading in each row',
  wide: 'a column for each panel',
  repeats: 'several readings in each row',
  blocks: 'lines above name the panels',
  list: 'a list',
};

function summary({ encoding, delimiter, decimal, layout, headerLine, unit }: Decisions): Facts {
  const header =
    headerLine === 0 ? 'no line names the columns' : `line ${headerLine} names the columns`;
  const sign = delimiterWord(delimiter);
  return joined(
    [
      { text: encoding, facts: [`encoding ${encoding}`] },
      { text: sign, facts: [`delimiter ${sign}`] },
      `decimal ${decimalWord(decimal)}`,
      `${layout} layout (${layoutWords[layout]})`,
      header,
      `readings in ${unit === 'um' || unit === 'mil' ? unitName(unit) : unit}`,
    ],
    ', ',
  );
}

/** Only the columns that are called something else here than what they are. */
function columnLine({ columns }: Decisions): readonly Said[] {
  const named = [...columns].flatMap(([role, names]) =>
    names.some((name) => !isOwnName(name, role))
      ? [`${role} "${names.map(shortened).join('" and "')}"`]
      : [],
  );
  return named.length === 0 ? [] : [listed('columns', named)];
}

/** `reading`, `reading_um`. */
const isOwnName = (name: string, role: string): boolean =>
  [role, `${role}_um`, `${role}_mil`].includes(name.trim().toLowerCase());

function metadataLine({ metadata }: Decisions): readonly Said[] {
  const said = metadata.map(({ key, value, line }) => `${key} ${shortened(value)} (line ${line})`);
  if (said.length === 0) return [];
  const left = said.length - MOST_SAYINGS;
  const more = left > 0 ? [`and ${left} more: --format json has them all`] : [];
  return [listed('the file also says', [...said.slice(0, MOST_SAYINGS), ...more])];
}

const listed = (what: string, said: readonly string[]): Facts => about(what, joined(said, ', '));

/** Lines beside the readings that are shown to people: a preamble has about ten. Of more the count is said. */
const MOST_SAYINGS = 12;

const LONGEST = 50;
/** Never in the middle of a sign: half of one is none. */
const shortened = (text: string): string =>
  text.length > LONGEST ? `${text.slice(0, LONGEST - 1).replace(/[\ud800-\udbff]$/, '')}…` : text;
