/** Some things, of which there is a first one. */
export type OneOrMore<Item> = [Item, ...Item[]];

/** Items gathered by key, keys in order of first appearance. (`Map.groupBy` arrives with Node 21.) */
export function groupBy<Key, Item>(
  items: Iterable<Item>,
  keyOf: (item: Item) => Key,
): Map<Key, OneOrMore<Item>> {
  const groups = new Map<Key, OneOrMore<Item>>();
  for (const item of items) {
    const key = keyOf(item);
    const group = groups.get(key);
    if (group === undefined) groups.set(key, [item]);
    else group.push(item);
  }
  return groups;
}
