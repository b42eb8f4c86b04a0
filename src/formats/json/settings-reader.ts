/** A reader of one kind of settings file: JSON, checked by its schema, as values of the program. */
import type * as z from 'zod';
import type { Outcome } from '../../base/diagnostics.ts';
import { parseJson } from './json-text.ts';
import type { Placed } from './placed.ts';
import { validate } from './validate.ts';

export type SettingsReader<T> = (file: string, text: string) => Outcome<Placed<T>>;

export const settingsReader =
  <S extends z.ZodType, T>(schema: S, toValue: (typed: z.output<S>) => T): SettingsReader<T> =>
  (file, text) => {
    const { value: document, diagnostics } = parseJson(file, text);
    if (document === undefined) return { diagnostics };
    const checked = validate(schema, document);
    if (checked.value === undefined) return { diagnostics: checked.diagnostics };
    const value = { value: toValue(checked.value), placeOf: document.placeOf };
    return { value, diagnostics: checked.diagnostics };
  };
