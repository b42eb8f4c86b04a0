/** The item at a place that is known to be there: a place outside the list is a bug of ours, and throws. */
export function at<Item>(items: ArrayLike<Item>, place: number): Item {
  const item = items[place];
  if (item === undefined) throw new RangeError(`there is no place ${place} among ${items.length}`);
  return item;
}

/** The same of a map: what stands under a key that is known to be there. */
export function valueAt<Key, Value>(values: ReadonlyMap<Key, Value>, key: Key): Value {
  const value = values.get(key);
  if (value === undefined) throw new RangeError(`there is no ${String(key)} among ${values.size}`);
  return value;
}
