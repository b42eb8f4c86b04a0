/** `## Bonnet`: a heading of Markdown that names a panel. A `#` begins a comment else, which is no row. */
import { createSource, type Source } from './source.ts';

const heading = /^(#{1,6})(?=[ \t]+(\S.*?)[ \t]*#*$)/gmu;

/** The text with blanks for the signs of such headings; undefined where it has none. */
export function withPlainHeadings(
  source: Source,
  isPanel: (label: string) => boolean,
): Source | undefined {
  const { name, text: written, ...rules } = source;
  if (!written.includes('#')) return undefined;
  const text = written.replace(heading, (signs, _, label: string) =>
    isPanel(label) ? ' '.repeat(signs.length) : signs,
  );
  return text === written ? undefined : createSource(name, text, { ...rules, written });
}
