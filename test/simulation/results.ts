/** The figures of a simulation as a table for people. */
import type { Outcome } from './run-cars.ts';

const percent = (share: number): string => `${(100 * share).toFixed(2)} %`;

/** Standard error of a share of `of`, panels taken as independent. */
const standardError = (share: number, of: number): number => Math.sqrt((share * (1 - share)) / of);

export function rowOf(name: string, outcome: Outcome): string {
  const { panels, worked, breached, alreadyUnder, free, freeWorked, freePolish } = outcome;
  const share = breached / worked;
  return `| ${[
    name,
    percent(worked / panels),
    percent(outcome.statedRisk),
    percent(outcome.statedIfThin),
    `${percent(share)} ± ${percent(3 * standardError(share, worked))}`,
    percent(alreadyUnder / worked),
    percent(freeWorked / free),
    percent(freePolish / free),
  ].join(' | ')} |`;
}

export const report = (rows: readonly string[]): string => `# Cars with known film

Three hundred cars of eleven panels, five points a panel, planned at the defaults (aim \`correct\`, swirl
marks of grade 3, risk 5 %, history unknown, no test spot). Written by the simulation under \`RECORD=1\`;
the seed is fixed. The tests hold the first two rows to their bars; the others say what becomes of the
risk where an assumption does not hold.

- *stated*: mean of the risks the plans state; *if thin*: mean of what they state besides for a clear
  6 µm thinner, to be held against the rows where it is; *under the floor*: panels worked that end with less than
  22.3 µm of clear on the thinnest 5 % of the face, ± three standard errors; *already*: those that were
  under it before any work.
- *free worked*: of the panels with 4 µm or more truly free, those with \`polish\` or \`lighter\`; *free
  polished*: with \`polish\` alone.

| cars | worked | stated | if thin | under the floor | already | free worked | free polished |
|---|---|---|---|---|---|---|---|
${rows.join('\n')}
`;
