/** How colours stand out from each other. */

/** Relative luminance as WCAG 2.2 defines it: of `#rrggbb`, 0 for black and 1 for white. */
export function luminance(colour: string): number {
  const [red = 0, green = 0, blue = 0] = [1, 3, 5].map((at) => {
    const share = Number.parseInt(colour.slice(at, at + 2), 16) / 255;
    return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
  });
  return 0.2126 * red + 0.7152 * green + 0.0722 * blue;
}

/** Contrast ratio as WCAG 2.2 defines it, from 1 to 21. */
export function contrast(one: string, other: string): number {
  const [dark = 0, light = 0] = [luminance(one), luminance(other)].sort((a, b) => a - b);
  return (light + 0.05) / (dark + 0.05);
}

/** `rgb(0, 114, 178)`, as a browser says it, as `#0072b2`. */
export const hexOf = (colour: string): string => {
  const shares = colour.match(/\d+(\.\d+)?/g)?.slice(0, 3) ?? [];
  return `#${shares.map((share) => Number(share).toString(16).padStart(2, '0')).join('')}`;
};
