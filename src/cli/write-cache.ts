/**
 * Runs the built program over a sample, as its users do most, and keeps what was compiled on the way.
 * A step of the build; no command loads it.
 */
import { loadProgram } from './load-program.ts';

const [folder = 'dist'] = process.argv.slice(2);

const readings = 'samples/sound-saloon/readings.csv';
const rest = [
  '--job',
  'samples/sound-saloon/job.json',
  '--defects',
  'samples/sound-saloon/defects.csv',
];

const { program, keepCompiled } = loadProgram(folder);
for (const words of [
  ['survey', readings],
  ['survey', readings, '--format', 'json'],
  ['plan', readings, ...rest],
  ['quote', readings, ...rest],
  ['read', readings],
]) {
  const code = await program.run(words);
  if (code !== 0) throw new Error(`${words.join(' ')} ended with ${code}`);
}
keepCompiled();
if (!loadProgram(folder).isCompiled) throw new Error('the compiled code was not taken');
