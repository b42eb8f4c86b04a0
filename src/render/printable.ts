/**
 * Text that is safe on a terminal: control characters, escapes and marks that turn the writing
 * direction are shown as `\u{…}`, so that no label can move the cursor or forge a line (CWE-150).
 */
const UNSAFE = /[\p{Cc}\u061c\u200b-\u200f\u2028-\u202e\u2060-\u2069\ufeff]/gu;

export const printable = (text: string): string =>
  text.replace(UNSAFE, (mark) => `\\u{${(mark.codePointAt(0) ?? 0).toString(16)}}`);

const segmenter = new Intl.Segmenter('en', { granularity: 'grapheme' });
const WIDE =
  /[\u1100-\u115f\u2e80-\u303e\u3041-\ua4cf\uac00-\ud7a3\uf900-\ufaff\ufe30-\ufe6f\uff00-\uff60\uffe0-\uffe6\u{1f300}-\u{1faff}\u{20000}-\u{3fffd}]|\ufe0f|\p{Emoji_Presentation}/u;
/** With nothing to stand on, it stands on what is before it. */
const COMBINING = /^[\p{Mn}\p{Me}]+$/u;

/** Columns a text takes on a terminal: a wide character two (UAX #11), a combining mark none. */
export function displayWidth(text: string): number {
  if (/^[\x20-\x7e]*$/.test(text)) return text.length;
  let width = 0;
  for (const { segment } of segmenter.segment(text)) width += segmentWidth(segment);
  return width;
}

function segmentWidth(segment: string): number {
  if (COMBINING.test(segment)) return 0;
  return WIDE.test(segment) ? 2 : 1;
}
