/** For PowerShell 5.1 and later; where it has nothing to offer, the shell offers files. */
import { type OfferedCommand, rootWords } from '../help/offers.ts';
import { flagsOf, sharedOptions } from './choices.ts';

export const powershellScript = (commands: readonly OfferedCommand[]): string => `\
# PowerShell completion for leastcut, written by: leastcut completion powershell
# For this shell: leastcut completion powershell | Out-String | Invoke-Expression
Register-ArgumentCompleter -Native -CommandName leastcut -ScriptBlock {
  param($wordToComplete, $commandAst, $cursorPosition)
  $commands = [ordered]@{
${commands.map(({ name, summary }) => `    ${quoted(name)} = ${quoted(summary)}`).join('\n')}
  }
  $options = @{
${commands.map(({ name, options }) => `    ${quoted(name)} = ${listOf(options.flatMap(flagsOf))}`).join('\n')}
  }
  $first = @{
${commands
  .filter(({ words }) => words.length > 0)
  .map(({ name, words }) => `    ${quoted(name)} = ${listOf(words)}`)
  .join('\n')}
  }
  $says = @{
${says(commands).join('\n')}
  }
  $choices = @{
${choices(commands).join('\n')}
  }
  $words = @($commandAst.CommandElements | ForEach-Object { $_.ToString() })
  # The words before the one that is being typed.
  $before = @($words | Select-Object -First ($words.Count - [int]($wordToComplete -ne '')))
  $command = if ($before.Count -gt 1) { $before[1] } else { '' }
  $offered = if ($before.Count -le 1) { @($commands.Keys) + ${listOf(rootWords)} }
    elseif ($command -eq 'help') { @($commands.Keys) }
    elseif ($choices.ContainsKey("$command $($before[-1])")) { $choices["$command $($before[-1])"] }
    elseif ($wordToComplete -like '-*') { $options[$command] }
    elseif ($before.Count -eq 2) { $first[$command] }
  $offered | Where-Object { $_ -and $_.StartsWith($wordToComplete) } | ForEach-Object {
    $tip = if ($commands.Contains($_)) { $commands[$_] } elseif ($says.ContainsKey($_)) { $says[$_] } else { $_ }
    [System.Management.Automation.CompletionResult]::new($_, $_, 'ParameterValue', $tip)
  }
}
`;

function says(commands: readonly OfferedCommand[]): readonly string[] {
  const all = commands.flatMap(({ options }) =>
    options.map(({ long, summary }) => [long, summary] as const),
  );
  return [...new Map(all)].map(([long, summary]) => `    ${quoted(long)} = ${quoted(summary)}`);
}

const choices = (commands: readonly OfferedCommand[]): readonly string[] =>
  sharedOptions(commands)
    .filter(({ option }) => option.choices.length > 0)
    .flatMap(({ option, commands: names }) =>
      names.flatMap((name) =>
        flagsOf(option).map(
          (flag) => `    ${quoted(`${name} ${flag}`)} = ${listOf(option.choices)}`,
        ),
      ),
    );

const listOf = (words: readonly string[]): string => `@(${words.map(quoted).join(', ')})`;

/** PowerShell takes the curly ones for quotes too. */
const quoted = (text: string): string => `'${text.replace(/['‘’‚‛]/g, '$&$&')}'`;
