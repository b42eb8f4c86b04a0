import type { JsonDocument } from './json-text.ts';

/** What a settings file says, and where each part of it stands in the file. */
export type Placed<T> = { readonly value: T; readonly placeOf: JsonDocument['placeOf'] };
