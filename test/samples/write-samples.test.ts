import { mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { sampleFiles } from './write-samples.ts';

const top = fileURLToPath(new URL('../../', import.meta.url));
const files = sampleFiles();

if (process.env['RECORD'] === '1') {
  for (const [path, text] of files) {
    mkdirSync(dirname(join(top, path)), { recursive: true });
    writeFileSync(join(top, path), text);
  }
}

describe('the samples on disk', () => {
  it.each([...files])('%s holds byte for byte what the generator makes', (path, text) => {
    const onDisk = readFileSync(join(top, path));
    expect(onDisk.toString('utf8')).toBe(text);
    expect(onDisk.equals(Buffer.from(text))).toBe(true);
  });

  it('hold nothing else but the page that explains them', () => {
    const found = readdirSync(join(top, 'samples'), { recursive: true, withFileTypes: true })
      .filter((entry) => entry.isFile())
      .map((entry) => join(entry.parentPath, entry.name).slice(top.length));
    const made = [...files.keys()].filter((path) => path.startsWith('samples/'));
    expect(found.sort()).toEqual([...made, 'samples/README.md'].sort());
  });

  it('are the files that their page names', () => {
    const page = readFileSync(join(top, 'samples/README.md'), 'utf8');
    const named = new Set(page.match(/(?<!test\/)samples\/[\w./-]+\.\w+/g));
    expect([...named].sort()).toEqual(
      [...files.keys()].filter((p) => p.startsWith('samples/')).sort(),
    );
  });
});
