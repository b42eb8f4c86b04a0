import { existsSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { beforeEach, describe, expect, it } from 'vitest';
import { askLeastcut } from './ask-leastcut.ts';
import { temporaryFolder } from './temporary-folder.ts';

const car = 'samples/plastic-bumpers/readings.tsv';

describe('init', () => {
  let folder = '';
  beforeEach(() => {
    folder = temporaryFolder();
  });

  it('writes files that change nothing in a plan but what is assumed', async () => {
    const written = await askLeastcut(['init', join(folder, 'new/job')]);
    expect(written).toMatchObject({ code: 0, err: '' });
    const files = ['shop', 'job'].flatMap((kind) => [
      `--${kind}`,
      join(folder, 'new/job', `${kind}.json`),
    ]);
    const [bare, begun] = await Promise.all([
      askLeastcut(['plan', car, '--format', 'json']),
      askLeastcut(['plan', car, ...files, '--format', 'json']),
    ]);
    expect(begun.code).toBe(bare.code);
    expect(results(begun.out)).toEqual(results(bare.out));
    const assumed = (out: string) => (JSON.parse(out) as { assumptions: unknown[] }).assumptions;
    expect(assumed(begun.out).length).toBeLessThan(assumed(bare.out).length);
  });

  it('says on the page what it wrote, that nothing changes yet, and what to type next', async () => {
    const { out } = await askLeastcut(['init', folder]);
    const words = out.replaceAll(/\s+/g, ' ');
    for (const name of ['shop.json', 'job.json', 'schemas/shop.schema.json']) {
      expect(words).toContain(`${join(folder, name)}: what`);
    }
    expect(words).toContain('no figure changes until you edit them');
    expect(words).toContain(
      `Next: leastcut plan readings.csv --shop ${join(folder, 'shop.json')} --job ${join(folder, 'job.json')}`,
    );
  });

  it('names the files it wrote and the command to type next, which runs', async () => {
    const { out } = await askLeastcut(['init', folder, '--format', 'json']);
    const record = JSON.parse(out) as { written: readonly string[]; next: string };
    for (const path of record.written) expect(existsSync(path), path).toBe(true);
    const words = record.next.replace('readings.csv', car).split(' ').slice(1);
    expect((await askLeastcut(words)).code).toBe(0);
  });

  it('writes nothing at all where one of its files exists, and leaves that one as it is', async () => {
    writeFileSync(join(folder, 'job.json'), 'mine');
    for (const more of [[], ['--force']]) {
      const { code, out, err } = await askLeastcut(['init', folder, ...more]);
      expect(code).toBe(73);
      expect(out).toBe('');
      expect(err).toContain('job.json" exists: nothing was written');
    }
    expect(readdirSync(folder)).toEqual(['job.json']);
    expect(readFileSync(join(folder, 'job.json'), 'utf8')).toBe('mine');
  });

  it('leaves nothing half-written where it cannot write', async () => {
    writeFileSync(join(folder, 'schemas'), 'a file where a folder is wanted');
    const { code, err } = await askLeastcut(['init', folder]);
    expect(code).toBe(73);
    expect(err).toContain('[output-unwritable]');
    expect(readdirSync(folder)).toEqual(['schemas']);
  });

  it('takes one folder', async () => {
    expect((await askLeastcut(['init', folder, 'another'])).code).toBe(2);
  });
});

/** The record without what says where its values are from. */
function results(out: string): unknown {
  const {
    assumptions: _,
    inputs: __,
    settings: ___,
    ...rest
  } = JSON.parse(out) as Record<string, unknown>;
  return JSON.parse(JSON.stringify(rest, (key, value) => (key === 'facts' ? undefined : value)));
}
