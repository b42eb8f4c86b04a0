/** What stands for standard input where a file is named, on the command line and in records. */
export const STANDARD_INPUT = '-';

/** A file as people are told of it. */
export const shownFile = (name: string): string =>
  name === STANDARD_INPUT ? 'standard input' : name;

/** The same in a sentence: a name in quotes, standard input without. */
export const saidFile = (name: string): string =>
  name === STANDARD_INPUT ? 'standard input' : `"${name}"`;

/** The name of a file without its folders and its ending. */
export const fileStem = (name: string): string =>
  shownFile(name)
    .replace(/.*[/\\]/s, '')
    .replace(/(?<=.)\.[^.]*$/, '');
