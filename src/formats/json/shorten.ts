/** A piece of the user's text for a sentence: cut with an ellipsis beyond 60 UTF-16 units. */
export const shorten = (text: string): string =>
  text.length > 60 ? `${text.slice(0, 59)}…` : text;

/** A text of a file in quotes, as a sentence names it. */
export const quoted = (text: string): string => shorten(JSON.stringify(text));
