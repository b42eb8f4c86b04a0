/** A cell's text as a message quotes it: in quotes, and not a whole page of it. */
const longest = 60;

export function quoted(text: string): string {
  if (text.length <= longest) return `"${text}"`;
  const start = Array.from(text.slice(0, longest)).slice(0, -1).join('');
  return `"${start}…"`;
}
