import type { Reporter } from 'vitest/node';

/** What is used here of the coverage map that the runner hands to its reporters. */
interface CoverageMap {
  files(): string[];
  fileCoverageFor(path: string): {
    toSummary(): { branches: { covered: number; total: number } };
  };
}

/** One line per room under src/: how many of its branches the tests took. */
export function branchesByRoom(coverage: CoverageMap): string[] {
  const rooms = new Map<string, { covered: number; total: number }>();
  for (const path of coverage.files()) {
    const room = /[\\/]src[\\/]([^\\/]+)[\\/]/.exec(path)?.[1] ?? 'elsewhere';
    const sum = rooms.get(room) ?? { covered: 0, total: 0 };
    const { covered, total } = coverage.fileCoverageFor(path).toSummary().branches;
    rooms.set(room, { covered: sum.covered + covered, total: sum.total + total });
  }
  return [...rooms]
    .sort(([one], [other]) => one.localeCompare(other, 'en'))
    .map(([room, { covered, total }]) => {
      const share = total === 0 ? 'none' : `${((100 * covered) / total).toFixed(1)} %`;
      return `${room.padEnd(11)} ${share.padStart(8)}  ${covered} of ${total}`;
    });
}

/** Prints those lines after the summary that covers everything at once. */
export const branchesReporter: Reporter = {
  onCoverage(coverage) {
    process.stdout.write(
      `\nBranches taken, by room\n${branchesByRoom(coverage as CoverageMap).join('\n')}\n`,
    );
  },
};
