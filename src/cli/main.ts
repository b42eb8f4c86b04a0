/** The entry: small, so that the version is printed before anything else is loaded. */
import { version } from './version.ts';

const words = process.argv.slice(2);

/** A reader that has gone is no fault: end quietly. Set before the first write. */
for (const stream of [process.stdout, process.stderr]) {
  stream.on('error', (problem: NodeJS.ErrnoException) => {
    if (problem.code !== 'EPIPE') throw problem;
  });
}

if (words[0] === '--version' || words[0] === '-V') process.stdout.write(`leastcut ${version}\n`);
else {
  try {
    const { run } = await import('./run.ts');
    process.exitCode = await run(words);
  } catch (problem) {
    const trace = problem instanceof Error ? problem.stack : String(problem);
    process.stderr.write(
      `leastcut ${version}: a bug of ours, please report it with the input\n${trace}\n`,
    );
    process.exitCode = 70;
  }
}
