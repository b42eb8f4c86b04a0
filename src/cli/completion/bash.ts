/**
 * For bash 3.2 and later. What a word is not known for is left to the shell, which then offers files
 * (`complete -o default`). The lists hold letters, digits and `. / - _` only, so that the shell has
 * nothing in them to expand.
 */
import { type OfferedCommand, rootWords } from '../help/offers.ts';
import { flagsOf, sharedOptions } from './choices.ts';

export const bashScript = (commands: readonly OfferedCommand[]): string => `\
# bash completion for leastcut, written by: leastcut completion bash
# For this shell: eval "$(leastcut completion bash)"
_leastcut() {
  local cur=\${COMP_WORDS[COMP_CWORD]} prev=\${COMP_WORDS[COMP_CWORD-1]} command=\${COMP_WORDS[1]}
  local commands='${commands.map(({ name }) => name).join(' ')}' words=''
  COMPREPLY=()
  if [[ $COMP_CWORD -eq 1 ]]; then
    COMPREPLY=($(compgen -W "$commands ${rootWords.join(' ')}" -- "$cur"))
    return
  fi
  if [[ $command == help ]]; then
    COMPREPLY=($(compgen -W "$commands" -- "$cur"))
    return
  fi
  # --format=json comes as three words.
  if [[ $cur == = ]]; then cur=''
  elif [[ $prev == = ]]; then prev=\${COMP_WORDS[COMP_CWORD-2]}; fi
  case "$command $prev" in
${valueCases(commands).join('\n')}
  esac
  case $command in
${commands.map(commandCase).join('\n')}
  esac
  COMPREPLY=($(compgen -W "$words" -- "$cur"))
}
complete -o default -F _leastcut leastcut
`;

/** Where a value stands: its words, or what the shell offers. */
function valueCases(commands: readonly OfferedCommand[]): readonly string[] {
  const shared = sharedOptions(commands).filter(({ option }) => option.value !== '');
  return shared.map(({ option, commands: names }) => {
    const differs = shared.filter((one) => one.option.long === option.long).length > 1;
    const pattern = flagsOf(option)
      .flatMap((flag) => (differs ? names.map((name) => `"${name} ${flag}"`) : [`*" ${flag}"`]))
      .join('|');
    return option.choices.length === 0
      ? `    ${pattern}) return ;;`
      : `    ${pattern}) COMPREPLY=($(compgen -W '${option.choices.join(' ')}' -- "$cur")); return ;;`;
  });
}

/** Options where one is begun; else the words that may stand first. */
function commandCase({ name, options, words }: OfferedCommand): string {
  const flags = options.flatMap(flagsOf).join(' ');
  return `    ${name}) if [[ $cur == -* ]]; then words='${flags}'; elif [[ $COMP_CWORD -eq 2 ]]; then words='${words.join(' ')}'; fi ;;`;
}
