/** Some things, of which there is a first one. */
export type OneOrMore<Item> = [Item, ...Item[]];

/** Items gathered by key, keys in order of first appearance. (`Map.groupBy` arrives with Node 21.) */
export function groupBy<Key, Item>(
  items: Iterable<Item>,
  keyOf: (item: Item) => Key,
): Map<Key, OneOrMore<Item>> {
  const groups = new Map<Key, OneOrMore<Item>>();
  // Items of one key mostly stand together: the key above is not looked up.
  let above: Key | undefined;
  let group: OneOrMore<Item> | undefined;
  for (const item of items) {
    const key = keyOf(item);
    if (group === undefined || key !== above) group = groups.get(key);
    above = key;
    if (group !== undefined) group.push(item);
    else {
      group = [item];
      groups.set(key, group);
    }
  }
  return groups;
}
