/** The entry: small, so that the version is printed before anything else is loaded. */
import { loadProgram } from './load-program.ts';
import { version } from './version.ts';

const words = process.argv.slice(2);

/** Where nothing can be written any more, that decides the exit code. */
let outputFailed = false;

/** A reader that has gone is no fault: end quietly. Set before the first write. */
process.stdout.on('error', ({ code }: NodeJS.ErrnoException) => {
  if (code === 'EPIPE' || outputFailed) return;
  outputFailed = true;
  process.exitCode = 73;
  process.stderr.write(
    `leastcut: error[output-unwritable]: standard output cannot be written (${code})\n`,
  );
});
process.stderr.on('error', () => {});

if (words[0] === '--version' || words[0] === '-V') process.stdout.write(`leastcut ${version}\n`);
else {
  try {
    const { program } = loadProgram(import.meta.dirname);
    const code = await program.run(words);
    if (!outputFailed) process.exitCode = code;
  } catch (problem) {
    const trace = problem instanceof Error ? problem.stack : String(problem);
    process.stderr.write(
      `leastcut ${version}: a bug of ours, please report it with the input\n${trace}\n`,
    );
    process.exitCode = 70;
  }
}
