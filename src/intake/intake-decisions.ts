/** What was decided about a file on the way from its bytes to its readings. */
import type { TableUnit } from './cells/unit.ts';
import type { GaugeRole } from './header/gauge-vocabulary.ts';
import type { LayoutName } from './header/layout.ts';
import type { Metadatum } from './tables/table.ts';

export type IntakeDecisions = {
  readonly encoding: string;
  readonly delimiter: string;
  readonly decimal: string;
  readonly layout: LayoutName;
  readonly unit: TableUnit;
  /** 0 where no line names the columns. */
  readonly headerLine: number;
  /** What the file calls its columns, by role; two names where their texts are read as one. */
  readonly columns: ReadonlyMap<GaugeRole, readonly string[]>;
  /** Plain sentences, such as `17 of 20 readings fit only a decimal comma`. */
  readonly evidence: readonly string[];
  /** What lines beside the tables say of it: serial number, date, operator … */
  readonly metadata: readonly Metadatum[];
};
