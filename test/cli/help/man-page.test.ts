import { spawnSync } from 'node:child_process';
import { stripVTControlCharacters } from 'node:util';
import { describe, expect, test } from 'vitest';
import { commands } from '../../../src/cli/commands.ts';
import { manPage, roff } from '../../../src/cli/help/man-page.ts';
import { offersOf } from '../../../src/cli/help/offers.ts';
import { version } from '../../../src/cli/version.ts';
import { naughty } from '../../render/naughty.ts';

const offered = (await Promise.all(commands.map(({ load }) => load()))).map(offersOf);
const page = manPage(offered, version);
const groff = (text: string) =>
  spawnSync('groff', ['-ww', '-man', '-Tascii'], { input: text, encoding: 'utf8' });
const hasGroff = spawnSync('groff', ['--version']).error === undefined;

/** What our own pages use of roff; anything else would be text that was taken for it. */
const REQUESTS = /^\.(TH|SH|SS|TP|PP|nf|fi)\b/;
const ESCAPES = /\\(f[BIR]|e|-|&|\((?:dq|aq))/g;

describe('the manual page', () => {
  test('has only requests and escapes that we know', () => {
    const lines = page.split('\n');
    expect(lines.filter((line) => /^[.']/.test(line) && !REQUESTS.test(line))).toEqual([]);
    expect(page.replaceAll(ESCAPES, '')).not.toContain('\\');
    expect(page).toMatch(/^[\n\x20-\x7e]*$/);
  });

  test.skipIf(!hasGroff)('is set by groff without a warning', () => {
    const { stderr, status, stdout } = groff(page);
    expect({ stderr, status }).toEqual({ stderr: '', status: 0 });
    expect(stdout).toContain('LEASTCUT(1)');
  });

  test('says of every exit code what it means, and of each variable its option', () => {
    for (const code of [0, 1, 2, 3, 65, 66, 70, 73, 78])
      expect(page).toContain(`\n\\fB${code}\\fR\n`);
    expect(page).toContain('\n\\fBLEASTCUT_RISK_PCT\\fR\n\\fB\\-\\-risk\\-pct\\fR\n');
  });

  test('says once what many commands take, and names the files and the signs', () => {
    const said = page.split('\n').filter((line) => line.startsWith('\\fB\\-\\-header\\-line'));
    expect(said).toHaveLength(1);
    for (const word of ['.SH FILES', '.SH SIGNS', 'leastcut.json', 'FILE.part']) {
      expect(page).toContain(word);
    }
  });

  test('says of every answer that is no which command gives it, and of settings the environment', () => {
    const said = page.replaceAll('\\-', '-').replaceAll('\n', ' ');
    for (const word of ['gauge, where it fails', '--check', 'a variable of the environment']) {
      expect(said).toContain(word);
    }
  });

  test.each(naughty)('shows %j as text', (text) => {
    const lines = roff(text).split('\n');
    expect(lines).toHaveLength(1);
    expect(lines.filter((line) => /^[.']/.test(line))).toEqual([]);
    expect(roff(text).replaceAll(ESCAPES, '')).not.toContain('\\');
  });

  test.skipIf(!hasGroff)('shows them so also to groff', () => {
    const plain = naughty.filter((text) => /^[\x21-\x7e][\x20-\x7e]*$/.test(text));
    expect(plain.length).toBeGreaterThan(15);
    const { stdout, stderr } = groff(`.TH X 1\n.nf\n${plain.map(roff).join('\n')}\n`);
    const lines = stripVTControlCharacters(stdout)
      .split('\n')
      .map((line) => line.trim());
    expect(stderr).toBe('');
    expect(plain.filter((text) => !lines.includes(text.trim()))).toEqual([]);
  });
});
