/** The item at a place that is known to be there: a place outside the list is a bug of ours, and throws. */
export function at<Item>(items: ArrayLike<Item>, place: number): Item {
  const item = items[place];
  if (item === undefined) throw new RangeError(`there is no place ${place} among ${items.length}`);
  return item;
}
