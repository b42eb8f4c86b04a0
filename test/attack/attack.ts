/** What an attack is given, and what it says at its end. */
export type Attack = {
  readonly name: string;
  /** What must not happen, as a sentence for the list. */
  readonly claim: string;
  readonly run: (setup: AttackSetup) => Promise<AttackResult>;
};

export type AttackSetup = {
  /** The built program. */
  readonly program: string;
  /** The top of the project. */
  readonly root: string;
  /** An empty folder, thrown away after. */
  readonly folder: string;
  /** How often what is repeated is repeated. */
  readonly times: number;
  /** Further binaries of Node to run it by. */
  readonly nodes: readonly string[];
};

export type AttackResult = { readonly figure: string; readonly faults: readonly string[] };
