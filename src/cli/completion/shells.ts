/** Completion of command lines: a script for each shell, written from what the commands offer. */
import type { OfferedCommand } from '../help/offers.ts';
import { bashScript } from './bash.ts';
import { fishScript } from './fish.ts';
import { powershellScript } from './powershell.ts';
import { zshScript } from './zsh.ts';

export const shells = ['bash', 'zsh', 'fish', 'powershell'] as const;
export type Shell = (typeof shells)[number];

const SCRIPTS: Readonly<Record<Shell, (commands: readonly OfferedCommand[]) => string>> = {
  bash: bashScript,
  zsh: zshScript,
  fish: fishScript,
  powershell: powershellScript,
};

export const completionScript = (shell: Shell, commands: readonly OfferedCommand[]): string =>
  SCRIPTS[shell](commands);
