/**
 * Text that is safe on a terminal: control characters, escapes, marks that turn the writing direction,
 * what takes no room, and halves of pairs are shown as `\u{…}`, so that no label can move the cursor,
 * forge a line (CWE-150) or hold what nobody sees. A joiner or non-joiner stays within a word of a script
 * that is written with them, and a joiner within an emoji.
 */
// What the first class leaves over are control characters and halves.
const UNSAFE =
  /[^ -~\u00a0-\ud7ff\ue000-\u{10ffff}]|[\u00ad\u061c\u180e\u200b-\u200f\u2028-\u202e\u2060-\u206f\ufeff\ufff9-\ufffb\u{e0000}-\u{e007f}]/gu;

export const printable = (text: string): string =>
  text.replace(UNSAFE, (mark, at: number) =>
    joins(mark, text, at) ? mark : `\\u{${(mark.codePointAt(0) ?? 0).toString(16)}}`,
  );

/** Scripts whose words a joiner or non-joiner shapes. */
const SHAPED = 'Arab Syrc Deva Beng Guru Gujr Orya Taml Telu Knda Mlym Sinh';

/** Made where such a mark first stands: V8 takes longer to set up its classes than a page to write. */
let within: RegExp | undefined;
function joins(mark: string, text: string, at: number): boolean {
  if (mark !== '\u200c' && mark !== '\u200d') return false;
  within ??= joinersWithin();
  within.lastIndex = at;
  return within.test(text);
}

function joinersWithin(): RegExp {
  const scripts = SHAPED.split(' ').map((script) => `\\p{scx=${script}}`);
  const letter = `(?=[\\p{L}\\p{M}])[${scripts.join('')}]`;
  const emoji = '\\p{Extended_Pictographic}';
  return new RegExp(
    `(?<=${letter}).(?=${letter})|(?<=${emoji}[\\ufe0f\\p{Emoji_Modifier}]?)\\u200d(?=${emoji})`,
    'uy',
  );
}

/** One column each: Latin and Greek letters, dashes, arrows, signs, box lines and blocks. */
const NARROW =
  /^[\x20-\x7e\u00a0-\u02ff\u0370-\u03ff\u2010-\u2027\u2030-\u205e\u2190-\u22ff\u2500-\u259f]*$/;

/** Made when a text first needs it: it takes longer to set up than a page to write. */
let segmenter: Intl.Segmenter | undefined;
const graphemes = (text: string): Intl.Segments => {
  segmenter ??= new Intl.Segmenter('en', { granularity: 'grapheme' });
  return segmenter.segment(text);
};

/** Columns a text takes on a terminal: a wide character two (UAX #11), a combining mark none. */
export function displayWidth(text: string): number {
  if (NARROW.test(text)) return text.length;
  let width = 0;
  for (const { segment } of graphemes(text)) width += segmentWidth(segment);
  return width;
}

/** Looked up where a text is not plain: V8 takes longer to make such a class than to read a page. */
function segmentWidth(segment: string): number {
  // With nothing to stand on, it stands on what is before it.
  if (/^[\p{Mn}\p{Me}]+$/u.test(segment)) return 0;
  const wide =
    /[\u1100-\u115f\u2e80-\u303e\u3041-\ua4cf\uac00-\ud7a3\uf900-\ufaff\ufe30-\ufe6f\uff00-\uff60\uffe0-\uffe6\u{1f300}-\u{1faff}\u{20000}-\u{3fffd}]|\ufe0f|\p{Emoji_Presentation}/u;
  return wide.test(segment) ? 2 : 1;
}
