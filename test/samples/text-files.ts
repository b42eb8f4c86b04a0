/** How the samples are written: lines that end in a newline, JSON with short lists on one line. */

export const lines = (rows: readonly string[]): string => `${rows.join('\n')}\n`;

export const table = (rows: readonly (readonly string[])[], delimiter: string): string =>
  lines(rows.map((cells) => cells.join(delimiter)));

/** Two spaces deep; an object or list that holds no other and fits is kept on one line. */
export const json = (value: unknown): string => `${written(value, '')}\n`;

const LINE = 96;

function written(value: unknown, indent: string): string {
  if (typeof value !== 'object' || value === null) return JSON.stringify(value);
  const list = Array.isArray(value);
  const [open, close] = list ? '[]' : '{}';
  const deeper = `${indent}  `;
  const items = Object.entries(value).map(
    ([key, item]) => `${list ? '' : `${JSON.stringify(key)}: `}${written(item, deeper)}`,
  );
  const flat = Object.values(value).every((item) => typeof item !== 'object' || item === null);
  const gap = list || items.length === 0 ? '' : ' ';
  const oneLine = `${open}${gap}${items.join(', ')}${gap}${close}`;
  if (flat && indent !== '' && oneLine.length + indent.length <= LINE) return oneLine;
  return `${open}\n${items.map((item) => deeper + item).join(',\n')}\n${indent}${close}`;
}
