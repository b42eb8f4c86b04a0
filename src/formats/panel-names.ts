/** Names of panels as a JSON object: the word of the export, and the panel it means. */
import * as z from 'zod';
import { text } from './json/setting-values.ts';
import { settingsReader } from './json/settings-reader.ts';

const panelNamesSchema = z.record(z.string(), text);

export const readPanelNamesJson = settingsReader(
  panelNamesSchema,
  (names): ReadonlyMap<string, string> => new Map(Object.entries(names)),
);
