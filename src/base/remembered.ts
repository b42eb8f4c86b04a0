/**
 * The same answers to texts, each worked out once: few labels and words stand in many rows and files.
 *
 * At most `most` of them are kept; beyond that all are forgotten, so that memory stays flat however long the
 * program runs. The answer must follow from the text alone.
 */
export function remembered<Answer>(
  answer: (text: string) => Answer,
  most = 2000,
): (text: string) => Answer {
  const known = new Map<string, { readonly answer: Answer }>();
  return (text) => {
    const before = known.get(text);
    if (before !== undefined) return before.answer;
    const told = { answer: answer(text) };
    if (known.size >= most) known.clear();
    known.set(text, told);
    return told.answer;
  };
}
