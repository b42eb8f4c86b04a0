/** A piece of the user's text for a sentence: cut with an ellipsis beyond 60 UTF-16 units. */
export const shorten = (text: string): string =>
  text.length > 60 ? `${text.slice(0, 59)}…` : text;
