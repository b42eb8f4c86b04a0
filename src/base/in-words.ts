/** `bonnet`, `bonnet and roof`, `bonnet, roof and boot lid`: several things in a sentence. */
export const inWords = (words: readonly string[], last: 'and' | 'or' = 'and'): string =>
  words.length < 2
    ? (words[0] ?? '')
    : `${words.slice(0, -1).join(', ')} ${last} ${words[words.length - 1]}`;
