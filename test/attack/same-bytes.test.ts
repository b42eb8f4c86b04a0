import { describe, expect, test } from 'vitest';
import { runCommand } from '../cli/run-command.ts';
import { program, projectRoot } from '../cli/run-leastcut.ts';
import { locales, nothingSaid, type Surrounding, shutPrototypes } from './surroundings.ts';

const saloon = 'samples/sound-saloon';
const commands = [
  `plan ${saloon}/readings.csv --job ${saloon}/job.json --defects ${saloon}/defects.csv`,
  'quote samples/older-coupe/readings.csv --shop samples/shop.json --format csv',
  'batch samples/week/jobs.csv --command survey --workers 2',
];

const run = async (words: string, { env, flags }: Surrounding) => {
  const { code, out } = await runCommand(
    process.execPath,
    [...flags, program(), ...words.split(' ')],
    { cwd: projectRoot, env },
  );
  return { code, out };
};

// Every command of the cases, and by other versions of Node: `npm run attack -- --only same-bytes`.
describe.concurrent.each(commands)('leastcut %s', (words) => {
  test('gives the same bytes in any locale and time zone, and with prototypes shut', async () => {
    const surroundings = [nothingSaid, ...locales, ...shutPrototypes];
    const [first, ...others] = await Promise.all(surroundings.map((one) => run(words, one)));
    expect(first?.out.length).toBeGreaterThan(100);
    for (const other of others) expect(other).toEqual(first);
  });
});
