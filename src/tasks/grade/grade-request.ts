/** What is graded, against what, and by which rules. */
import type { Diagnostic } from '../../base/diagnostics.ts';
import type { Micrometres } from '../../base/units.ts';
import type { Panel, VehicleTemplate } from '../../film/template/template.ts';
import type { Job, JobVehicle } from '../../formats/job/job.ts';
import type { Placed } from '../../formats/json/placed.ts';
import type { Rubric } from '../../formats/rubric.ts';
import type { ClassView, LeftOut } from '../../training/class-view.ts';
import type { CopiedPanels } from '../../training/copied-panels.ts';
import type { Grade } from '../../training/grade-trainee.ts';
import type { SigmaPt } from '../../training/panel-score.ts';
import type { Reference } from '../../training/reference.ts';
import type { Marking } from '../../training/training-model.ts';
import type { LoadedFile, ReadInput, ReadRequest } from '../read/read-request.ts';
import type { Assumption } from '../settings/assumption.ts';
import type { NamedGauge } from '../settings/gauge-in-use.ts';
import type { Settings } from '../settings/settings.ts';

/** A file of a trainee; one that could not even be loaded is empty, and says why. */
export type HandedFile = LoadedFile & { readonly notLoaded?: readonly Diagnostic[] };

export type GradeFilesRequest = {
  /** How every file is read; its own list of files is empty. */
  readonly read: ReadRequest;
  /** The expert’s file; undefined where the class is its own reference. */
  readonly reference: LoadedFile | undefined;
  readonly trainees: readonly HandedFile[];
  readonly settings: Settings;
  readonly job: Placed<Job> | undefined;
  readonly rubric: { readonly name: string; readonly value: Rubric } | undefined;
  /** The gauge of the expert and of every trainee who has none of their own. */
  readonly gauge: NamedGauge | undefined;
  /** Gauges of single trainees, by the name that was typed. */
  readonly traineeGauges: ReadonlyMap<string, NamedGauge>;
  /** Points of one name are one place, whatever the files say. */
  readonly marked: boolean;
  readonly anonymous: boolean;
  /** Whose sheet is asked for. */
  readonly trainee: string | undefined;
};

/** One survey of a trainee: several of one trainee are attempts, in the order of the files. */
export type GradedTrainee = {
  readonly name: string;
  readonly attempt: number;
  readonly attempts: number;
  readonly file: string;
  /** As the file writes it. */
  readonly date: string | null;
  /** What is said of the trainee’s own gauge; nothing where there is none. */
  readonly ownGauge: readonly Assumption[];
  /** The same as it is said to the trainee. */
  readonly yourGauge: readonly Assumption[];
  /** Null where the file could not be read. */
  readonly grade: Grade | null;
  /** Why it could not. */
  readonly notRead: readonly Diagnostic[];
};

/** SD of the differences of two, what is usual of it in the class, and what the first reads more all over. */
export type Apart = {
  readonly sd: Micrometres;
  readonly usual: Micrometres;
  readonly offset: Micrometres;
};

export type CopiedSurveys = {
  /** Both, or the one who copied the reference. */
  readonly trainees: readonly string[];
  readonly fromReference: boolean;
  readonly same: number;
  readonly of: number;
  /** They are one and the same: byte by byte, or reading by reading in the same order. */
  readonly identical: 'file' | 'readings' | null;
  /** Whole panels that they hold figure for figure, or within a step of the display, where these give them away; null else. */
  readonly whole: Omit<CopiedPanels, 'surveys'> | null;
  /** SD of their differences where that gives them away, and what is usual in the class; null else. */
  readonly apart: Apart | null;
};

export type GradedClass = {
  readonly vehicle: string | null;
  readonly identity: JobVehicle | null;
  readonly template: VehicleTemplate;
  readonly reference: Reference;
  readonly referenceFile: string | null;
  readonly assessor: string | null;
  readonly date: string | null;
  readonly sigmaPt: SigmaPt;
  readonly marking: Marking;
  /** What the rubric is called, or the file it stands in. */
  readonly rubric: string | null;
  readonly trainees: readonly GradedTrainee[];
  readonly view: ClassView;
  /** On which most of the class agree with each other and not with the reference. */
  readonly unlike: readonly Panel[];
  /** The values of most of the class do not follow the marks of the reference. */
  readonly marksUnlike: boolean;
  readonly copied: readonly CopiedSurveys[];
  /** Whose surveys the figures of panels and of the gauge leave out. */
  readonly leftOut: readonly { readonly trainee: string; readonly why: LeftOut['why'] }[];
  /** Whose repeats make most of the repeatability of the class; null where nobody’s do. */
  readonly mostOfRepeats: string | null;
  /** Whose sheet is asked for. */
  readonly asked: string | null;
  readonly inputs: readonly ReadInput[];
  readonly assumptions: readonly Assumption[];
  readonly settings: Settings;
};
