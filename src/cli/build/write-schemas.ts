/**
 * Writes what is published of the formats into a folder: `<kind>.schema.json` for each kind of file
 * and record, `<kind>.columns.json` for each table. A step of the build; no command loads it.
 */
import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { csvTables } from '../../formats/csv-columns.ts';
import { listSchemas } from '../../formats/json-schemas.ts';

const [folder = 'dist/schemas'] = process.argv.slice(2);

const files = [
  ...listSchemas().map(({ kind, schema }) => ({ name: `${kind}.schema.json`, content: schema })),
  ...csvTables.map((table) => ({ name: `${table.kind}.columns.json`, content: table })),
];

mkdirSync(folder, { recursive: true });
for (const { name, content } of files) {
  writeFileSync(join(folder, name), `${JSON.stringify(content, null, 2)}\n`);
}
