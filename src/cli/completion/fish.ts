/** For fish: `leastcut completion fish | source`, or as a file in its folder of completions. */
import type { OfferedCommand, OfferedOption } from '../help/offers.ts';
import { sharedOptions } from './choices.ts';

export const fishScript = (commands: readonly OfferedCommand[]): string => `\
# fish completion for leastcut, written by: leastcut completion fish
# For this shell: leastcut completion fish | source
function __leastcut_no_command
  test (count (commandline -opc)) -eq 1
end
function __leastcut_command
  set -l words (commandline -opc)
  test (count $words) -ge 2; and contains -- $words[2] $argv
end
function __leastcut_first
  test (count (commandline -opc)) -eq 2; and __leastcut_command $argv
end
complete -c leastcut -f
complete -c leastcut -n __leastcut_no_command -s V -l version -d 'the version'
complete -c leastcut -n __leastcut_no_command -s h -l help -d 'show this help'
complete -c leastcut -n __leastcut_no_command -a help -d 'show the help of a command'
complete -c leastcut -n '__leastcut_first help' -a '${commands.map(({ name }) => name).join(' ')}'
${[
  ...commands.flatMap(commandLines),
  ...sharedOptions(commands).map(({ option, commands: names }) => optionLine(option, names)),
].join('\n')}
`;

const commandLines = ({ name, summary, words, takesFiles }: OfferedCommand): readonly string[] => [
  `complete -c leastcut -n __leastcut_no_command -a ${name} -d ${quoted(summary)}`,
  ...(words.length === 0
    ? []
    : [`complete -c leastcut -n '__leastcut_first ${name}' -a '${words.join(' ')}'`]),
  ...(takesFiles ? [`complete -c leastcut -n '__leastcut_command ${name}' -F`] : []),
];

function optionLine(option: OfferedOption, names: readonly string[]): string {
  const { short, long, summary } = option;
  const letter = short === undefined ? '' : ` -s ${short.slice(1)}`;
  return `complete -c leastcut -n '__leastcut_command ${names.join(' ')}'${letter} -l ${long.slice(2)}${valuePart(option)} -d ${quoted(summary)}`;
}

function valuePart({ value, choices, takesFile }: OfferedOption): string {
  if (value === '') return '';
  if (choices.length > 0) return ` -x -a '${choices.join(' ')}'`;
  return takesFile ? ' -r -F' : ' -x';
}

const quoted = (text: string): string => `'${text.replace(/['\\]/g, '\\$&')}'`;
