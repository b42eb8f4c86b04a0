/** `## Bonnet`: a heading of Markdown that names a panel. A `#` begins a comment else, which is no row. */
import { rewritten, type Source } from './source.ts';

const heading = /^(#{1,6})(?=[ \t]+(\S.*?)[ \t]*#*$)/gmu;

/** The text with blanks for the signs of such headings; undefined where it has none. */
export function withPlainHeadings(
  source: Source,
  isPanel: (label: string) => boolean,
): Source | undefined {
  if (!source.text.includes('#')) return undefined;
  const text = source.text.replace(heading, (signs, _, label: string) =>
    isPanel(label) ? ' '.repeat(signs.length) : signs,
  );
  return text === source.text ? undefined : rewritten(source, text);
}
