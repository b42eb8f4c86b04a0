/** For zsh with compinit: as a file `_leastcut` on the fpath, or by `eval`. */
import type { OfferedCommand, OfferedOption } from '../help/offers.ts';

export const zshScript = (commands: readonly OfferedCommand[]): string => `\
#compdef leastcut
# zsh completion for leastcut, written by: leastcut completion zsh
# For this shell: eval "$(leastcut completion zsh)"
_leastcut() {
  local -a commands
  commands=(
${commands.map(({ name, summary }) => `    ${quoted(`${name}:${summary}`)}`).join('\n')}
    'help:show the help of a command'
  )
  if (( CURRENT == 2 )); then
    _describe command commands
    _arguments '(-)'{-h,--help}'[show this help]' '(-)'{-V,--version}'[the version]'
    return
  fi
  shift words
  (( CURRENT-- ))
  case $words[1] in
    help) _describe command commands ;;
${commands.map(commandCase).join('\n')}
  esac
}
compdef _leastcut leastcut
if [ "\${funcstack[1]}" = _leastcut ]; then _leastcut "$@"; fi
`;

function commandCase({ name, options, words, takesFiles }: OfferedCommand): string {
  const first = words.length === 0 ? [] : [quoted(`1:what:(${words.join(' ')})`)];
  const rest = takesFiles ? [quoted('*:file:_files')] : [];
  const specs = [...options.map(optionSpec), ...first, ...rest];
  return `    ${name}) _arguments -S ${specs.map((spec) => `\\\n      ${spec}`).join(' ')} ;;`;
}

/** `'(-o --out)'{-o,--out=}'[what it does]:file:_files'`. */
function optionSpec(option: OfferedOption): string {
  const { short, long, summary, repeatable, value } = option;
  const said = quoted(`[${plain(summary)}]${valueSpec(option)}`);
  const flag = value === '' ? long : `${long}=`;
  if (short === undefined) return (repeatable ? "'*'" : '') + flag + said;
  return `'(${short} ${long})'{${short},${flag}}${said}`;
}

function valueSpec({ value, choices, takesFile }: OfferedOption): string {
  if (value === '') return '';
  if (choices.length > 0) return `:${plain(value)}:(${choices.join(' ')})`;
  return `:${plain(value)}:${takesFile ? '_files' : ' '}`;
}

/** Within a spec, brackets and colons have a meaning. */
const plain = (text: string): string => text.replace(/[\\[\]:]/g, '\\$&');

const quoted = (text: string): string => `'${text.replaceAll("'", "'\\''")}'`;
