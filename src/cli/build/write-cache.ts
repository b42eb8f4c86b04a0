/**
 * Runs the built program over a sample, as its users do most, and keeps what was compiled on the way.
 * A step of the build; no command loads it.
 */
import { loadProgram, type ScriptName, scripts } from '../load-program.ts';

const [folder = 'dist'] = process.argv.slice(2);

const readings = 'samples/sound-saloon/readings.csv';
const rest = [
  '--job',
  'samples/sound-saloon/job.json',
  '--defects',
  'samples/sound-saloon/defects.csv',
];

const plan = ['plan', readings, ...rest];
const runs: Readonly<Record<ScriptName, readonly (readonly string[])[]>> = {
  survey: [['survey', readings]],
  plan: [plan],
  program: [
    ['survey', readings],
    ['survey', readings, '--format', 'json'],
    plan,
    ['quote', readings, ...rest],
    ['read', readings],
  ],
};

for (const name of scripts) {
  const { program, keepCompiled } = loadProgram(folder, name);
  for (const words of runs[name]) {
    const code = await program.run(words);
    if (code !== 0) throw new Error(`${words.join(' ')} ended with ${code}`);
  }
  keepCompiled();
  if (!loadProgram(folder, name).isCompiled) throw new Error(`${name}.cache was not taken`);
}
