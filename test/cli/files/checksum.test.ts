import { describe, expect, test } from 'vitest';
import { sha256Of } from '../../../src/cli/files/checksum.ts';
import { loadFile } from '../../../src/cli/files/files.ts';
import { readShown } from '../../../src/cli/load/named-file.ts';
import { readJob } from '../../../src/formats/job/read-job.ts';
import { inputOf } from '../../../src/tasks/read/read-request.ts';

describe('the checksum of bytes', () => {
  // FIPS 180-4, the examples of NIST for SHA-256: one block, and none.
  test.each([
    ['abc', 'ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad'],
    ['', 'e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855'],
  ])('of "%s" is the published one', (text, sum) => {
    expect(sha256Of(Buffer.from(text))).toBe(sum);
  });
});

describe('the checksum of a file', () => {
  test('is that of its bytes, and handed on to what was read of it', async () => {
    const { file } = await loadFile('samples/sound-saloon/readings.csv');
    if (file === undefined) throw new Error('the sample cannot be read');
    expect(file.sha256).toBe(sha256Of(file.bytes));
    expect(inputOf(file, null).sha256).toBe(file.sha256);
  });

  test('is worked out when it is first asked for', () => {
    let asked = 0;
    const file = {
      name: 'readings.csv',
      bytes: new Uint8Array(),
      get sha256() {
        asked += 1;
        return 'sum';
      },
    };
    const input = inputOf(file, null);
    expect(asked).toBe(0);
    expect(input.sha256).toBe('sum');
    expect(asked).toBe(1);
  });

  test('of settings is not asked for to read them', async () => {
    const file = {
      name: '/private/job.json',
      bytes: Buffer.from('{ "schema": "leastcut/job/1", "aim": "correct" }'),
      get sha256(): string {
        throw new Error('nobody needs it');
      },
    };
    const world = { load: async () => ({ file, diagnostics: [] }) };
    const reader = async (name: string, text: string) => readJob(name, text);
    const shown = { path: '/private/job.json', shown: 'job.json' };
    const { value } = await readShown(shown, world, reader);
    expect(value?.value.aim).toBe('correct');
    expect(value?.placeOf(['aim'])).toMatchObject({ file: 'job.json', line: 1 });
  });
});
