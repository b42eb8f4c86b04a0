/** What can be explained, and what an explanation is made of. */
import type { Basis, Range } from '../../formats/default.ts';
import type { SettingOrigin } from '../settings/setting-origin.ts';

export type TopicKind =
  | 'word'
  | 'heading'
  | 'value'
  | 'default'
  | 'diagnostic'
  | 'option'
  | 'key'
  | 'record key'
  | 'column'
  | 'condition'
  | 'verdict'
  | 'remark'
  | 'defect'
  | 'stage'
  | 'basis'
  | 'exit code';

/** A number of the model as it stands: in force, built in, on what grounds, and how to change it. */
export type ExplainedNumber = {
  readonly value: number;
  readonly unit: string;
  readonly origin: SettingOrigin;
  readonly where: string;
  readonly builtIn: number;
  readonly range: Range;
  readonly basis: Basis;
  readonly source: string;
  readonly formula: string;
  readonly used: string;
  /** The line for the shop file. */
  readonly change: string;
};

/** The smallest input that shows a diagnostic. */
export type ExplainedExample = {
  readonly command: string;
  readonly files: readonly { readonly name: string; readonly text: string }[];
};

export type Explanation = {
  readonly kind: TopicKind;
  readonly id: string;
  /** Other words by which it is found. */
  readonly also: readonly string[];
  readonly meaning: string;
  /** What else there is to say, each under a word of its own. */
  readonly details: readonly { readonly label: string; readonly text: string }[];
  readonly number: ExplainedNumber | null;
  readonly example: ExplainedExample | null;
};

/** An option of the command line as data, since the tasks know no command. */
export type OptionTopic = {
  /** `--risk-pct` */
  readonly name: string;
  readonly also: readonly string[];
  readonly summary: string;
  /** What may follow it; empty for a switch. */
  readonly takes: string;
  readonly commands: readonly string[];
  /** The variable of the environment that stands for it; null where it is said anew for every run. */
  readonly variable: string | null;
};
