import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { checkSettingsFile } from '../../src/formats/check-file.ts';
import { projectRoot } from '../cli/run-leastcut.ts';
import { settingsFault, spoiledTexts } from './settings-attack.ts';
import { attackedFiles } from './settings-files-attack.ts';

/** One in so many: `npm run attack -- --only settings` tries them all. */
const oneIn = 997;

test.each(attackedFiles)('%s, spoiled in one place, is read or refused with a place', (file) => {
  const sound = readFileSync(join(projectRoot, file), 'utf8');
  const texts = [...spoiledTexts(sound, oneIn)];
  const faults = texts.flatMap((text) => {
    const fault = settingsFault(text);
    return fault === undefined ? [] : [`${fault}: ${text.slice(0, 200)}`];
  });
  expect(texts.length).toBeGreaterThan(30);
  expect(faults).toEqual([]);
});

const refusal = (text: string): string | undefined => {
  const { value, diagnostics } = checkSettingsFile('f.json', text);
  expect(value).toBeUndefined();
  return diagnostics[0]?.message;
};
const job = (inner: string): string => `{"schema":"leastcut/job/1",${inner}}`;

describe('a settings file', () => {
  test('whose kind is an object with a toString of its own is of no kind', () => {
    expect(refusal('{"schema":{"toString":1,"valueOf":2}}')).toBe(
      '"schema" is {"toString":1,"valueOf":2}, which is no kind of settings file',
    );
  });

  test('is refused where a word is asked for and an object of that kind stands', () => {
    expect(refusal(job('"scope":{"wheels":{"toString":1,"valueOf":2}}'))).toContain('wheels');
  });

  test.each(['1e400', '-1e400', '1e308', '123456789012345678901234567890'])(
    'takes no number as large as %s',
    (number) => {
      expect(refusal(job(`"risk_pct":${number}`))).toContain('risk_pct');
    },
  );

  test('has no way to take in another file, run a command or read the environment', () => {
    for (const key of ['include', 'extends', '$ref', 'import', 'exec', 'env']) {
      expect(refusal(job(`"${key}":"/etc/passwd"`))).toContain(`"${key}"`);
    }
    const taken = checkSettingsFile('f.json', job('"vehicle":{"id":"$HOME $(id) %HOME% `id`"}'));
    expect(taken).toEqual({ value: 'job', diagnostics: [] });
  });

  test('sets nothing on what all objects share', () => {
    for (const key of ['__proto__', 'constructor', 'prototype', 'hasOwnProperty']) {
      expect(refusal(job(`"${key}":{"aim":"full"}`))).toContain(`"${key}"`);
      expect(refusal(job(`"vehicle":{"${key}":{"id":"x"}}`))).toContain(key);
    }
    expect(({} as { aim?: unknown }).aim).toBeUndefined();
  });

  test('whose own thing has an id of great length is told of it shortly, wherever that id is named', () => {
    const own = readFileSync(join(projectRoot, 'samples/own-things.json'), 'utf8');
    for (const id of ['x'.repeat(10_000), 'word '.repeat(2000)]) {
      for (const name of ['long-throw', 'waffle', 'house-polish']) {
        const text = own.replace(`"id": "${name}"`, `"id": "${id}"`);
        expect(text, name).not.toBe(own);
        const { diagnostics } = checkSettingsFile('f.json', text);
        expect(diagnostics.length, name).toBeGreaterThan(0);
        for (const { message, hint = '' } of diagnostics)
          expect(message.length + hint.length, message.slice(0, 80)).toBeLessThan(400);
      }
    }
  });

  test('of ten million characters in one text is refused with a sentence', () => {
    expect(refusal(job(`"aim":"${'x'.repeat(10_000_000)}"`))?.length).toBeLessThan(300);
  });
});
