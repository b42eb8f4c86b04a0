/** Work on many things, some at a time, in their order. */
export async function sideBySide<T, R>(
  things: readonly T[],
  atATime: number,
  work: (thing: T, index: number) => Promise<R>,
): Promise<readonly R[]> {
  const results: R[] = [];
  let next = 0;
  const worker = async (): Promise<void> => {
    for (let index = next++; index < things.length; index = next++) {
      const thing = things[index] as T;
      results[index] = await work(thing, index);
    }
  };
  await Promise.all(Array.from({ length: atATime }, worker));
  return results;
}
