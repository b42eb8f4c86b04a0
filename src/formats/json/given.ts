/** How values of a settings file reach plain types. */
type Given<T> = { readonly [Key in keyof T]?: Exclude<T[Key], undefined> };

/** The keys that were given: absent rather than undefined. */
export const given = <T extends object>(values: T): Given<T> =>
  Object.fromEntries(Object.entries(values).filter(([, value]) => value !== undefined)) as Given<T>;

/** A number that was given, as a quantity. */
export const asQuantity = <Q>(
  make: (value: number) => Q,
  value: number | undefined,
): Q | undefined => (value === undefined ? undefined : make(value));
