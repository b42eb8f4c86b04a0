/** What the owner wants done and who does it: everything that the stages of a job follow from. */
export type JobScope = {
  /** Cleaned on the car, taken off for it, or left alone. */
  readonly wheels: 'on' | 'off' | 'none';
  readonly shuts: boolean;
  /** Of the paint, before any machine: chemistry and clay, one of them, or done already. */
  readonly decontamination: 'full' | 'chemical' | 'clay' | 'none';
  readonly trim: boolean;
  readonly engineBay: boolean;
  readonly interior: boolean;
  readonly glass: boolean;
  readonly protection: 'none' | 'wax' | 'sealant' | 'coating';
  /** How dirty the vehicle comes in. */
  readonly soiling: 'light' | 'usual' | 'heavy';
  /** People at work on the vehicle. */
  readonly hands: number;
  readonly hoursPerDay: number;
  /** An order of one's own, by the ids of the stages; null for the usual one. */
  readonly order: readonly string[] | null;
};

/** Where nobody says otherwise: the outside, washed, decontaminated, corrected and waxed, by one person. */
export const usualScope: JobScope = {
  wheels: 'on',
  shuts: true,
  decontamination: 'full',
  trim: false,
  engineBay: false,
  interior: false,
  glass: true,
  protection: 'wax',
  soiling: 'usual',
  hands: 1,
  hoursPerDay: 8,
  order: null,
};

/** The parts of a scope that a stage may depend on. */
export type ScopePart = Exclude<keyof JobScope, 'hands' | 'hoursPerDay' | 'order' | 'soiling'>;

/** For each part that matters, what it must be for the stage to be done. */
export type StageNeeds = { readonly [Part in ScopePart]?: readonly JobScope[Part][] };

/** Whether a scope asks for what needs these. */
export const isAsked = (needs: StageNeeds, scope: Pick<JobScope, ScopePart>): boolean =>
  (Object.keys(needs) as ScopePart[]).every((part) =>
    (needs[part] as readonly unknown[]).includes(scope[part]),
  );
