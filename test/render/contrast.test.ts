import { describe, expect, test } from 'vitest';
import { pageStyle, themes } from '../../src/render/html-style.ts';

/** Relative luminance and contrast ratio as WCAG 2.2 defines them. */
function luminance(colour: string): number {
  const [red = 0, green = 0, blue = 0] = [1, 3, 5].map((at) => {
    const share = Number.parseInt(colour.slice(at, at + 2), 16) / 255;
    return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
  });
  return 0.2126 * red + 0.7152 * green + 0.0722 * blue;
}

function contrast(one: string, other: string): number {
  const [dark = 0, light = 0] = [luminance(one), luminance(other)].sort((a, b) => a - b);
  return (light + 0.05) / (dark + 0.05);
}

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
});
