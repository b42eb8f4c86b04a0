/** What is worked out once, and kept as long as the function that answers is. */

/** The same answer to the same question of a few numbers and words; beyond `most`, the one found first goes first. */
export function kept<Question extends readonly (string | number)[], Answer>(
  answer: (...question: Question) => Answer,
  most = 64,
): (...question: Question) => Answer {
  const known = new Map<string, Answer>();
  return (...question) => {
    const key = question.join(' ');
    const before = known.get(key);
    if (before !== undefined) return before;
    const now = answer(...question);
    known.set(key, now);
    const [oldest] = known.keys();
    if (known.size > most && oldest !== undefined) known.delete(oldest);
    return now;
  };
}

/** Made when it is first asked for. */
export function once<Answer>(make: () => Answer): () => Answer {
  let made: { readonly answer: Answer } | undefined;
  return () => {
    made ??= { answer: make() };
    return made.answer;
  };
}
