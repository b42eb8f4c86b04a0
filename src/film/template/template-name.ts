/**
 * How a template is named on a command line and in a file: by an id, or by its file, which is a path
 * or `-` for standard input.
 */
export const isTemplatePath = (word: string): boolean =>
  word === '-' || word.toLowerCase().endsWith('.json') || /[\\/]/.test(word);
