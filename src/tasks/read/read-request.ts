/** What to read and how, and the readings that come of it. */
import type { Outcome } from '../../base/diagnostics.ts';
import type { Reading } from '../../film/reading.ts';
import type { VehicleTemplate } from '../../film/template/template.ts';
import type { TemplateRules } from '../../formats/data/template-defaults.ts';
import type { GaugePiece } from '../../intake/bytes/decode.ts';
import type {
  ExcludedCell,
  GaugeReadings,
  IntakeDecisions,
  IntakeOptions,
} from '../../intake/read-gauge-file.ts';
import type { Assumption } from '../settings/assumption.ts';
import type { StatedSize } from '../template/scale-to-vehicle.ts';
import type { AsDecided, TypedReading } from './reading-rules.ts';

/** A file's bytes as they were loaded, with their checksum. */
export type LoadedFile = {
  readonly name: string;
  readonly bytes: Uint8Array;
  /** May be worked out when it is first asked for: `inputOf` hands it on without asking. */
  readonly sha256: string;
  /** Given in place of bytes: whole vehicles of a long file. */
  readonly piece?: GaugePiece;
  /** What was read of the piece, where that is done already. */
  readonly read?: Outcome<GaugeReadings>;
  /** Lines of rows that are not read. */
  readonly leftOut?: ReadonlySet<number>;
};

export type ReadInput = {
  readonly file: string;
  readonly sha256: string;
  readonly decisions: IntakeDecisions | null;
};

/** Files that were read as they stand, with nothing to decide; what was not given is none. */
export const inputsOf = (...files: readonly (LoadedFile | undefined)[]): readonly ReadInput[] =>
  files.flatMap((file) => (file === undefined ? [] : [inputOf(file, null)]));

export const inputOf = (file: LoadedFile, decisions: ReadInput['decisions']): ReadInput => ({
  file: file.name,
  get sha256() {
    return file.sha256;
  },
  decisions,
});

/** All readings of one vehicle; `template` is null where no template knows its panels. */
export type VehicleReadings = {
  readonly vehicle: string | null;
  readonly template: VehicleTemplate | null;
  readonly readings: readonly Reading[];
  /** Cells of its panels that gave no reading, named as its readings are. */
  readonly leftOut: readonly ExcludedCell[];
  readonly assumptions: readonly Assumption[];
};

export type ReadVehicles = {
  readonly vehicles: readonly VehicleReadings[];
  readonly excluded: readonly ExcludedCell[];
  readonly inputs: readonly ReadInput[];
};

export type ReadRequest = {
  readonly files: readonly LoadedFile[];
  readonly templates: readonly VehicleTemplate[];
  /** Named by the user; else the one that fits best. */
  readonly templateId: string | undefined;
  /** The size of the vehicle, to which the template is scaled; of one vehicle only. */
  readonly size?: StatedSize | undefined;
  /** The built-in ones where nothing is set. */
  readonly templateRules?: TemplateRules;
  readonly intake: Omit<IntakeOptions, 'isPanel'>;
  /** What the user settles by hand, which wins over all else. */
  readonly typed?: TypedReading | undefined;
  readonly decided?: AsDecided | undefined;
  /** Only this vehicle, where it is named. */
  readonly vehicle: string | undefined;
  /** True where a panel that no template knows may keep its name: nothing is computed from it. */
  readonly keepUnknownPanels: boolean;
};
