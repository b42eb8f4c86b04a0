/** An option as data: the parser, the help, the manual and the completion are made from it. */
export type OptionSpec = {
  readonly flags: string;
  readonly summary: string;
  readonly choices?: readonly string[];
  /** Words among what it takes, which may be anything else besides. */
  readonly among?: readonly string[];
  readonly range?: readonly [number, number];
  /** Of a range, only whole numbers. */
  readonly whole?: boolean;
  /** Words that stand for what may also be typed as it is. */
  readonly words?: Readonly<Record<string, string>>;
  /** Each value counts; of any other option a second value that says otherwise is refused. */
  readonly repeatable?: boolean;
  /** It may stand in the environment, as LEASTCUT_ and its name. */
  readonly environment?: boolean;
};

/** What an option says once it is read; a switch takes nothing and is true. */
export type ValueOf<Spec extends OptionSpec> = Spec extends {
  readonly choices: readonly (infer Choice)[];
}
  ? Choice
  : Spec extends { readonly words: Readonly<Record<string, infer Sign>> }
    ? Sign
    : Spec extends { readonly range: unknown }
      ? number
      : Spec extends { readonly repeatable: true }
        ? readonly string[]
        : Spec['flags'] extends `${string}<${string}`
          ? string
          : boolean;
