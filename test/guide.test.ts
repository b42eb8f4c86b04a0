/** DEVELOPERS.md leads a stranger to places that are there. */
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { projectRoot } from './cli/run-leastcut.ts';

const guide = readFileSync(join(projectRoot, 'DEVELOPERS.md'), 'utf8');
const { scripts } = JSON.parse(readFileSync(join(projectRoot, 'package.json'), 'utf8')) as {
  readonly scripts: Readonly<Record<string, string>>;
};

/** A path as the page writes it; `*` stands for part of a name, and `<…>` for one yet to be given. */
function isThere(path: string): boolean {
  if (path.includes('<')) return existsSync(join(projectRoot, dirname(path)));
  if (!path.includes('*')) return existsSync(join(projectRoot, path));
  const pattern = new RegExp(`^${path.replaceAll('.', '\\.').replaceAll('*', '[\\w-]+')}$`);
  const folder = path.slice(0, path.indexOf('*')).replace(/[^/]*$/, '');
  return readdirSync(join(projectRoot, folder), { recursive: true, encoding: 'utf8' }).some(
    (name) => pattern.test(`${folder}${name}`),
  );
}

describe('DEVELOPERS.md', () => {
  test('names no file or folder that is not there', () => {
    const paths = [...guide.matchAll(/`((?:src|test|samples)\/[^`\s]*)`/g)].map(
      ([, path = '']) => path,
    );
    expect(paths.length).toBeGreaterThan(60);
    expect(paths.filter((path) => !isThere(path))).toEqual([]);
  });

  test('would be caught if it did', () => {
    expect(isThere('src/film/no-such-file.ts')).toBe(false);
    expect(isThere('src/report/*/*-no-such.ts')).toBe(false);
    expect(isThere('src/report/*/*-record.ts')).toBe(true);
  });

  test('names no script that package.json does not have', () => {
    const named = [...guide.matchAll(/npm run ([\w:]+)/g)].map(([, name = '']) => name);
    expect(named.length).toBeGreaterThan(5);
    expect(named.filter((name) => scripts[name] === undefined)).toEqual([]);
  });

  test('has a row for every room', () => {
    const rooms = readdirSync(join(projectRoot, 'src'));
    expect(rooms.filter((room) => !guide.includes(`\n| \`${room}\` | `))).toEqual([]);
  });
});
