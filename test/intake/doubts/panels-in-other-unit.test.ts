import { describe, expect, test } from 'vitest';
import { read } from '../helpers.ts';

const rows = (panel: string, ...films: readonly (number | string)[]) =>
  films.map((film, k) => `${panel},${k + 1},${film}\n`).join('');
const head = 'panel,point,reading_um\n';
const inUm = rows('bonnet', 112.1, 115.3, 109.8) + rows('roof', 104.2, 108.8, 110);
const codes = (text: string, more = {}) =>
  read(text, more).diagnostics.map(({ severity, code }) => `${severity} ${code}`);

describe('panels that were written in mil among others in µm', () => {
  const text = head + inUm + rows('boot', 4.5, 4.4, 4.7) + rows('door front left', 4.1, 4.6);

  test('refuse the file once, with how many they are and from where on', () => {
    const { diagnostics } = read(text);
    expect(diagnostics).toHaveLength(1);
    expect(diagnostics[0]).toMatchObject({
      code: 'unit-doubtful',
      severity: 'error',
      at: { line: 8 },
    });
    expect(diagnostics[0]?.message).toBe(
      '2 panels read 1/25.4 of the others, from "boot" on: are they in mil?',
    );
  });

  test('do so where they are more than the others, too', () => {
    const more = rows('wing', 4.4, 4.5, 4.1, 4.6, 4.2, 4.3);
    expect(codes(text + more)).toEqual(['error unit-doubtful']);
  });

  test('are read where the unit was asked for', () => {
    expect(read(text, { unit: 'um' }).value?.readings).toHaveLength(11);
  });

  test('are none where one alone, a few spots or no thickness of the others may be bare metal', () => {
    const single = head + inUm + rows('boot', 4.5, 4.4, 4.7);
    const spots = head + rows('bonnet', 112.1, 4.4, 109.8) + rows('roof', 104.2, 108.8, 4.4);
    const bare = head + inUm + rows('boot', 0.4, 1.1) + rows('door front left', 0.8, 0.2);
    for (const one of [single, spots, bare])
      expect(codes(one)).not.toContain('error unit-doubtful');
  });
});

test('a table of our own that was filled in with mil is refused as any other is, but for who is graded', () => {
  const films = [
    ['bonnet', 4.52, 4.41],
    ['roof', 4.22, 4.35],
  ] as const;
  const own = `panel,point,repeat,reading_um\n${films.flatMap(([panel, ...values]) => values.map((film, k) => `${panel},${k + 1},1,${film}\n`)).join('')}`;
  const other = head + films.map(([panel, ...values]) => rows(panel, ...values)).join('');
  expect(codes(own)).toEqual(['error unit-doubtful']);
  expect(codes(other)).toEqual(['error unit-doubtful']);
  expect(codes(own, { ownUnitTold: true })).toEqual(['warning unit-doubtful']);
  expect(codes(other, { ownUnitTold: true })).toEqual(['error unit-doubtful']);
});
