/** ± may be a standard deviation, 95 % confidence or what a maker permits: the page says which, each time. */
import { describe, expect, test } from 'vitest';
import { askLeastcut } from '../cli/ask-leastcut.ts';

const figure = String.raw`±\s[\d.]+(?:–[\d.]+)?(?:\s(?:µm|mil))?`;
/** What stands behind a figure, or around it, where it says what it is. */
const said = new RegExp(
  [
    String.raw`${figure}\s\((?:95\s%|SD)(?:, [^()]*)?\)`,
    String.raw`${figure}\s\(mean\s±\sSD\)`,
    String.raw`${figure}\sat\s95\s%`,
    // As a data sheet writes the error that is permitted.
    String.raw`${figure}\s±\s[\d.]+\s%\sof the\sfilm`,
    String.raw`within\s${figure}`,
    String.raw`mean\s±\ssd`,
    // Several in a row, of which the last says it.
    String.raw`±\s[\d.]+(?:, [\d.]+: [+−]?[\d.]+ ±\s[\d.]+)+\s(?:µm|mil)\s\(95\s%\)`,
    // A layer whose doubt is that of the figure beside it, of which it is said.
    String.raw`${figure} over [\d.]+ ${figure}\s\(SD\)`,
  ].join('|'),
  'gu',
);

/** A list or table whose head says what ± is in it speaks for all of its lines. */
function withoutHeaded(out: string): string {
  let headed = false;
  return out
    .split('\n')
    .filter((line) => {
      const isHead =
        /(?:± SD\)|mean ± sd|± U|^How sure each mean \(95 %\))/u.test(line) && !/^ {2}/.test(line);
      const goesOn = headed && line !== '' && (/^\s/.test(line) || isRow(line));
      headed = isHead || goesOn;
      return !headed;
    })
    .join('\n');
}

const isRow = (line: string): boolean => !/^[^\d±]*: /u.test(line) && !/^[A-Z]/u.test(line);

const unsaid = (out: string): readonly string[] => {
  const page = withoutHeaded(out.replaceAll('\u00a0', ' '))
    .replace(/\n {2,}/g, ' ')
    .replace(said, '');
  return page.match(/.{0,40}±.{0,30}/gu) ?? [];
};

const coupe = ['samples/older-coupe/readings.csv', '--job', 'samples/older-coupe/job.json'];
const pages: readonly (readonly string[])[] = [
  ['survey', 'samples/sound-saloon/readings.csv'],
  ['survey', 'samples/sound-saloon/readings.csv', '-v', '--show-unit', 'mil'],
  ['survey', ...coupe],
  ['survey', ...coupe, '-v'],
  ['survey', ...coupe, '--why', 'bonnet', '--why', 'roof', '--why', 'right quarter'],
  ['survey', 'test/cases/survey-near-line/readings.csv', '--why', 'front left door'],
  ['survey', 'samples/plastic-bumpers/readings.tsv', '--job', 'samples/plastic-bumpers/job.json'],
  ['gauge', 'samples/gauge-checks.csv', '--mpe-um', '1', '--mpe-pct', '1'],
];

describe('the page of', () => {
  test.each(pages.map((words) => [words.join(' '), words] as const))(
    '`%s` says of every ± whether it is an SD, 95 % confidence or what is permitted',
    async (_, words) => {
      const { out } = await askLeastcut(words);
      expect(out).toContain('±');
      expect(unsaid(out)).toEqual([]);
    },
  );
});
