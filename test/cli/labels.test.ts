import { describe, expect, test } from 'vitest';
import { askLeastcut } from './ask-leastcut.ts';

/** What no label may bring to a terminal: control characters but line ends, and marks of direction. */
const UNSAFE = /[\p{Cc}\u061c\u200b-\u200f\u2028-\u202e\u2060-\u2069\ufeff]/u;
const unsafeIn = (text: string): string | undefined => UNSAFE.exec(text.replaceAll('\n', ''))?.[0];

const evil = ['\u001b[2J\u001b]0;owned\u0007', '\u202eevil\u202c', 'a\u009b31mb', '\u200bx\u2066y'];

const csv = (vehicle: string, panel: string): string =>
  ['bonnet', 'roof', panel]
    .flatMap((name) => [1, 2, 3, 4, 5].map((i) => `"${vehicle}","${name}",${i},${118 + i}\n`))
    .reduce((all, row) => all + row, 'vehicle,panel,point,reading_um\n');

describe.concurrent.each(evil)('a label with %j', (label) => {
  test('comes out as text that moves nothing, in pages and in refusals', async () => {
    const runs = await Promise.all([
      askLeastcut(['read', '-'], { stdin: csv(`FH ${label}`, `shelf ${label}`) }),
      askLeastcut(['survey', '-'], { stdin: csv(`FH ${label}`, 'boot lid') }),
      askLeastcut(['plan', '-'], { stdin: csv(`FH ${label}`, 'boot lid') }),
      askLeastcut(['survey', '-'], { stdin: csv('FH', `shelf ${label}`) }),
      askLeastcut(['survey', '-', '--vehicle', label], { stdin: csv('FH', 'boot lid') }),
      askLeastcut(['survey', '-', '--panel', label], { stdin: csv('FH', 'boot lid') }),
      askLeastcut(['survey', `${label}.csv`]),
      askLeastcut([label]),
      askLeastcut(['survey', `--${label}`]),
      askLeastcut(['survey', '-', '--format', label]),
      ...[['--plain'], ['--ascii'], ['--format', 'md'], ['--format', 'html']].map((form) =>
        askLeastcut(['survey', '-', ...form], { stdin: csv(`FH ${label}`, 'boot lid') }),
      ),
    ]);
    expect(runs.map(({ out, err }) => unsafeIn(out + err))).toEqual(runs.map(() => undefined));
    expect(runs[0]?.out).toContain('\\u{');
    expect(runs.map(({ code }) => code)).toEqual([0, 0, 0, 65, 2, 2, 66, 2, 2, 2, 0, 0, 0, 0]);
  });

  test('stays exact in JSON, escaped where a terminal would obey it', async () => {
    const stdin = csv(`FH ${label}`, 'boot lid');
    const { out } = await askLeastcut(['survey', '-', '--format', 'json'], { stdin });
    expect(JSON.parse(out).vehicle).toBe(`FH ${label}`);
    expect(unsafeIn(out)).toBeUndefined();
  });
});
