/** The entry: small, so that the version is printed before anything else is loaded. */
import { exitCodes } from './exit-code.ts';
import { endingWith, isAllWritten, writeAnswer, writeError } from './files/standard-output.ts';
import { version } from './version.ts';

async function main(words: readonly string[]): Promise<number> {
  if (words[0] === '--version' || words[0] === '-V') {
    await writeAnswer(`leastcut ${version}\n`);
    return endingWith(exitCodes.done);
  }
  try {
    const { loadProgram, scripts } = await import('./load-program.ts');
    const script = scripts.find((name) => name === words[0]);
    return await loadProgram(import.meta.dirname, script).program.run(words);
  } catch (problem) {
    const trace = problem instanceof Error ? problem.stack : String(problem);
    writeError(`leastcut ${version}: a bug of ours, please report it with the input\n${trace}\n`);
    return exitCodes.bug;
  }
}

main(process.argv.slice(2)).then((code) => {
  process.exitCode = code;
  // Else Node would first wait for V8 to tidy up what nobody needs any more.
  if (isAllWritten()) process.exit();
});
