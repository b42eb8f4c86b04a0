/**
 * Runs the built program over a sample, as its users do most, and keeps what was compiled on the way.
 * A step of the build; no command loads it.
 */
import { loadProgram } from '../load-program.ts';

const [folder = 'dist'] = process.argv.slice(2);

const readings = 'samples/sound-saloon/readings.csv';
const rest = [
  '--job',
  'samples/sound-saloon/job.json',
  '--defects',
  'samples/sound-saloon/defects.csv',
];

const { program, keepCompiled } = loadProgram(folder);
await run(['survey', readings]);
keepCompiled('survey');
await run(['survey', readings, '--format', 'json']);
await run(['plan', readings, ...rest]);
await run(['quote', readings, ...rest]);
await run(['read', readings]);
keepCompiled('program');
for (const what of ['survey', 'program'] as const) {
  if (!loadProgram(folder, what).isCompiled) throw new Error(`${what}.cache was not taken`);
}

async function run(words: readonly string[]): Promise<void> {
  const code = await program.run(words);
  if (code !== 0) throw new Error(`${words.join(' ')} ended with ${code}`);
}
