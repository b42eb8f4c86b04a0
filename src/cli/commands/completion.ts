import { error } from '../../base/diagnostics.ts';
import { suggest } from '../../base/did-you-mean.ts';
import { type Command, failed } from '../command.ts';
import { completionScript, shells } from '../completion/shells.ts';
import { offersOf } from '../help/offers.ts';

export const completionCommand: Command = {
  name: 'completion',
  summary: 'write what a shell needs to complete commands, options and words',
  operands: shells.join('|'),
  words: shells,
  filesOf: () => [],
  options: [],
  formats: ['text'],
  examples: [
    'leastcut completion bash       # ~/.bashrc: eval "$(leastcut completion bash)"',
    'leastcut completion zsh        # ~/.zshrc: eval "$(leastcut completion zsh)"',
    'leastcut completion fish       # then: | source',
    'leastcut completion powershell # then: | Out-String | Invoke-Expression',
  ],
  run: async ([typed, ...excess], _options, world) => {
    const shell = shells.find((known) => known === typed);
    if (shell === undefined || excess.length > 0) return failed([refusal(typed, excess)]);
    const commands = await world.commands();
    const script = completionScript(shell, commands.map(offersOf));
    return { pages: () => [], records: () => [], script, diagnostics: [] };
  },
};

function refusal(typed: string | undefined, excess: readonly string[]) {
  const hint = `one of ${shells.join(', ')}`;
  if (typed === undefined) {
    return error('usage-option-value', 'completion is written for a shell, and none is named', {
      hint,
    });
  }
  if (excess.length > 0) {
    return error('usage-option-value', 'completion is written for one shell at a time', { hint });
  }
  return error('usage-option-value', `"${typed}" is no shell that completion is written for`, {
    hint: suggest(typed, shells) ?? hint,
  });
}
