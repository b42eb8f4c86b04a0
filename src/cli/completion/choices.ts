import type { OfferedCommand, OfferedOption } from '../help/offers.ts';

/** An option with the words it takes, and the commands in which it takes just these. */
export type SharedOption = {
  readonly option: OfferedOption;
  readonly commands: readonly string[];
};

/** Each option once for all commands in which it is the same: `--format` is not. */
export function sharedOptions(commands: readonly OfferedCommand[]): readonly SharedOption[] {
  const shared = new Map<string, { option: OfferedOption; commands: string[] }>();
  for (const { name, options } of commands) {
    for (const option of options) {
      const key = [option.long, ...option.choices].join(' ');
      const known = shared.get(key);
      if (known === undefined) shared.set(key, { option, commands: [name] });
      else known.commands.push(name);
    }
  }
  return [...shared.values()];
}

/** `-o` and `--out`. */
export const flagsOf = ({ short, long }: OfferedOption): readonly string[] =>
  short === undefined ? [long] : [short, long];
