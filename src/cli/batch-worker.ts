/** The entry of a thread that runs jobs of a batch. */
import { loadProgram } from './load-program.ts';

void loadProgram(import.meta.dirname).program.serveJobs();
