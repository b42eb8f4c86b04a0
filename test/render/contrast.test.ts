import { describe, expect, test } from 'vitest';
import { pageStyle, themes } from '../../src/render/html-style.ts';
import { stripDrawing } from '../../src/render/strip-svg.ts';
import { contrast, hexOf } from './contrast.ts';

describe('the colours of a page', () => {
  test('are measured as WCAG 2.2 does: black on white is 21, #777777 on white 4.48', () => {
    expect(contrast('#000000', '#ffffff')).toBeCloseTo(21, 6);
    expect(contrast('#777777', '#ffffff')).toBeCloseTo(4.48, 2);
  });

  test.each(
    Object.entries(themes).flatMap(([theme, { paper, ink, quiet, mark }]) =>
      Object.entries({ ink, quiet, mark }).map(([name, colour]) => ({
        theme,
        name,
        colour,
        paper,
      })),
    ),
  )('in $theme: $name stands out from the paper by 4.5 and more (WCAG 1.4.3)', (one) => {
    expect(contrast(one.colour, one.paper)).toBeGreaterThanOrEqual(4.5);
  });

  test('are the only ones: every rule names one of them', () => {
    const known = Object.values(themes).flatMap((theme) => Object.values(theme));
    expect(
      (pageStyle.match(/#[0-9a-f]{3,8}\b/gi) ?? []).filter((one) => !known.includes(one)),
    ).toEqual([]);
    expect(pageStyle).not.toMatch(/\b(rgb|hsl|color-mix)\(/);
  });

  test('write no text in the colour of rules', () => {
    expect(pageStyle).not.toMatch(/[^-]color: var\(--rule\)|fill: var\(--rule\)/);
  });

  test('say nothing alone: what is marked is bold as well, what is drawn has a shape of its own', () => {
    expect(pageStyle).toMatch(/\.binding \{ color: var\(--mark\); font-weight: 700; \}/);
  });

  test('are read as a browser says them', () => {
    expect(hexOf('rgb(0, 114, 178)')).toBe('#0072b2');
    expect(hexOf('rgba(86, 180, 233, 0.5)')).toBe('#56b4e9');
  });
});

describe('printed without colour', () => {
  /** What a mark looks like when every colour but that of the paper is one grey. */
  const greyLook = (element: string): string => {
    const [, tag = '', look = ''] = /^<(\w+)(?: class="(\w+)")?/.exec(element) ?? [];
    const style = new RegExp(`\\.strip (?:\\.${look}|${look === '' ? tag : '-'}) \\{([^}]*)\\}`)
      .exec(pageStyle)?.[1]
      ?.replaceAll(/var\(--(?:ink|mark|quiet)\)/g, 'grey')
      .trim();
    const turns = /d="([^"]*)"/
      .exec(element)?.[1]
      ?.replaceAll(/[\d.-]+/g, '')
      .replaceAll(' ', '');
    return `${tag} ${turns ?? ''} ${/ r="[\d.]+"/.exec(element)?.[0] ?? ''} ${style}`;
  };

  test('every mark of a strip differs from the others by its shape', () => {
    const axis = { from: 0, to: 100, line: 50 };
    const strip = { kind: 'strip', values: [30], marked: 20, open: [40] } as const;
    const drawn = (['span', 'extent'] as const)
      .map((look) => stripDrawing({ ...strip, bar: { from: 10, to: 60, look } }, axis, 'x'))
      .concat(stripDrawing({ ...strip, values: [130] }, axis, 'x'))
      .join('');
    const marks = drawn.match(/<(?:path|circle|rect)\b[^>]*>/g) ?? [];
    const kinds = new Map(
      marks.map((mark) => [/class="(\w+)"/.exec(mark)?.[1] ?? 'value', greyLook(mark)]),
    );
    expect([...kinds.keys()].sort()).toEqual([
      'base',
      'beyond',
      'extent',
      'floor',
      'mark',
      'open',
      'span',
      'stop',
      'value',
    ]);
    for (const look of kinds.values()) expect(look).not.toContain('undefined');
    expect(new Set(kinds.values()).size).toBe(kinds.size);
  });

  test('what is to be seen keeps 3 to 1 from the paper (WCAG 1.4.11)', () => {
    const { paper, ink, quiet, mark } = themes.print;
    for (const colour of [ink, quiet, mark]) expect(contrast(colour, paper)).toBeGreaterThan(3);
  });
});
