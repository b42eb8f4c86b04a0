/**
 * Answers worked out once and kept as long as the function that answers is. They must follow from the
 * question alone.
 *
 * At most `most` are kept; beyond that all are forgotten, so that memory stays flat however long the program
 * runs.
 */

/** To texts: few labels and words stand in many rows and files. */
export function remembered<Answer>(
  answer: (text: string) => Answer,
  most = 2000,
): (text: string) => Answer {
  const known = createAnswers<Answer>(most);
  return (text) => {
    const before = known.to(text);
    return before === undefined ? known.keep(text, answer(text)) : before.answer;
  };
}

/** To a few numbers and words at once. */
export function kept<Question extends readonly (string | number)[], Answer>(
  answer: (...question: Question) => Answer,
  most = 64,
): (...question: Question) => Answer {
  const known = createAnswers<Answer>(most);
  return (...question) => {
    const key = question.join(' ');
    const before = known.to(key);
    return before === undefined ? known.keep(key, answer(...question)) : before.answer;
  };
}

/** To a thing that never changes, such as a model or a template: as long as there is that thing. */
export function keptWith<Thing extends object, Answer>(
  answer: (thing: Thing) => Answer,
): (thing: Thing) => Answer {
  const known = new WeakMap<Thing, { readonly answer: Answer }>();
  return (thing) => {
    const before = known.get(thing);
    if (before !== undefined) return before.answer;
    const made = { answer: answer(thing) };
    known.set(thing, made);
    return made.answer;
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

function createAnswers<Answer>(most: number) {
  const known = new Map<string, { readonly answer: Answer }>();
  return {
    to: (key: string): { readonly answer: Answer } | undefined => known.get(key),
    keep: (key: string, answer: Answer): Answer => {
      if (known.size >= most) known.clear();
      known.set(key, { answer });
      return answer;
    },
  };
}
