/** Where the build may write: it removes what lies there. */
import { spawnSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';

const root = resolve(import.meta.dirname, '../..');
const folder = mkdtempSync(join(tmpdir(), 'build-folder-'));
afterAll(() => rmSync(folder, { recursive: true }));

const buildInto = (target: string) =>
  spawnSync(process.execPath, [join(root, '.build.mjs'), target], { encoding: 'utf8' });

describe('a build', () => {
  it('is refused where a file lies, and leaves it', () => {
    const file = join(folder, 'file');
    writeFileSync(file, 'kept');
    const { status, stderr } = buildInto(file);
    expect(stderr).toContain(`${file} is there and is no build`);
    expect(status).not.toBe(0);
    expect(readFileSync(file, 'utf8')).toBe('kept');
  });

  it('is refused where a folder of other things lies, and leaves it', () => {
    const other = join(folder, 'other');
    mkdirSync(other);
    writeFileSync(join(other, 'notes.txt'), 'kept');
    const { status, stderr } = buildInto(other);
    expect(stderr).toContain(`${other} is there and is no build`);
    expect(status).not.toBe(0);
    expect(readFileSync(join(other, 'notes.txt'), 'utf8')).toBe('kept');
  });
});
