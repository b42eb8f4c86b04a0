/** Sound files of every kind spoiled in each of their places (`settings-attack.ts`). */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Attack } from './attack.ts';
import { oneInFor, settingsFault, spoiledTexts } from './settings-attack.ts';

/** One of each kind, and a second where a kind has much in it. */
export const attackedFiles: readonly string[] = [
  'samples/older-coupe/job.json',
  'test/cases/job-facts-json/job.json',
  'samples/shop.json',
  'samples/own-things.json',
  'samples/two-door.json',
  'samples/film-record.json',
  'samples/rates.json',
  'samples/class/rubric.json',
  'test/cases/doctor-check-all-kinds/gauge.json',
  'test/cases/doctor-check-all-kinds/decisions.json',
  'test/cases/compare-plan-text/plan.json',
];

/** Texts of one file, for each time. */
const textsEach = 100;

export const settingsFiles: Attack = {
  name: 'settings',
  claim: 'a crash, a wait, a refusal without a place or a polluted prototype',
  run: async ({ root, times }) => {
    let texts = 0;
    const faults: string[] = [];
    for (const file of attackedFiles) {
      const sound = readFileSync(join(root, file), 'utf8');
      const told = new Set<string>();
      for (const text of spoiledTexts(sound, oneInFor(sound, times * textsEach))) {
        texts += 1;
        const fault = settingsFault(text);
        const kind = fault?.replaceAll(/\d+|"[^"]*"/g, '').slice(0, 100);
        if (fault === undefined || kind === undefined || told.has(kind)) continue;
        told.add(kind);
        faults.push(`${file}: ${fault}: ${text.slice(0, 300)}`);
      }
    }
    return { figure: `${texts} spoiled texts of ${attackedFiles.length} files`, faults };
  },
};
