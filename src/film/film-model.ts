import type { Micrometres, Millimetres, Minutes } from '../base/units.ts';

/** A normal distribution of a layer's thickness over cars and panels. */
export type LayerThickness = { readonly mean: Micrometres; readonly sd: Micrometres };

/** What is expected of a finish before anything is read: the topcoat and all that lies under it. */
export type LayerPrior = { readonly top: LayerThickness; readonly under: LayerThickness };

/** Every number the film room needs and does not own; the built-in ones carry their basis as data. */
export type FilmModel = {
  readonly measurement: {
    /** Half-width of the gauge's calibration error: fixed part and share of the reading. */
    readonly fixed: Micrometres;
    readonly proportional: number;
    /** At least this it is, where a check on shims found the gauge that far off; absent where none did. */
    readonly leastCalibration?: Micrometres;
    /** The display's step where it is known besides; else the readings themselves tell it. */
    readonly step?: Micrometres;
    /** SD of one operator's readings about what all would read, where two were seen to differ. */
    readonly betweenOperators?: Micrometres;
    /** SD of one reading repeated at a point, hand placement included. */
    readonly repeatability: Micrometres;
    /** Degrees of freedom from which the data's own repeatability replaces the assumed one. */
    readonly repeatabilityLeastDof: number;
    /** Extra SD at a point marked as curved. */
    readonly curvature: Micrometres;
    /**
     * From this thickness of shim a check says something of readings on film. On the bare plate the share of the film is
     * nothing, and whatever a gauge does with it passes.
     */
    readonly filmShim: Micrometres;
    /** More than this no gauge for vehicle paint shows. */
    readonly largestReading: Micrometres;
    /** A middle reading outside these makes the unit of a file doubtful. */
    readonly doubtfulUnder: Micrometres;
    readonly doubtfulOver: Micrometres;
    /** When two rounds of readings are not of one paint read one way: see `same-round.ts`. */
    readonly rounds: {
      readonly falseAlarm: number;
      readonly leastShift: Micrometres;
      readonly fewest: number;
      readonly assumedDof: number;
      /** SD of film between two points of a panel that have no names to find them again by. */
      readonly film: Micrometres;
    };
  };
  readonly spread: {
    readonly priorDofCap: number;
    readonly fallbackShare: number;
    readonly fallbackLeast: Micrometres;
    /** Variances under this share of the panels' median count as that when their likeness is judged. */
    readonly leastShareOfMedian: number;
    /** Panels that must tell their spread before they are pooled. */
    readonly leastPanels: number;
  };
  readonly tolerance: { readonly content: number; readonly confidence: number };
  /** When a cut through a panel's points is believed to part two zones. */
  readonly zones: {
    readonly meansApart: Micrometres;
    readonly meansApartSds: number;
    readonly gap: Micrometres;
    readonly gapSds: number;
    readonly leastPoints: number;
  };
  /** Chance of flagging any point of an even panel as standing out. */
  readonly flagRisk: number;
  readonly conditions: {
    readonly filler: Micrometres;
    readonly refinished: Micrometres;
    readonly refinishedAbove: Micrometres;
    readonly refinishedAboveShare: number;
    readonly cutBack: Micrometres;
    /** Panels that make a baseline; what fewer are held to besides is the film that factories paint. */
    readonly baselinePanels: number;
    /** By this share of the variance of factory film over cars a panel lies about the film of its car. */
    readonly aboutItsCar: number;
    /** Degrees of freedom that this counts for beside what the panels of a car show. */
    readonly aboutItsCarDof: number;
    /** At most so likely the usual film of a car is repaint where the panel that shows it may be cut back instead. */
    readonly paintedOverMost: number;
    readonly mirror: Micrometres;
    readonly mirrorShare: number;
    /** A condition is near its line where the truth lies on the other side with more than this chance. */
    readonly nearRisk: number;
  };
  readonly layers: {
    readonly clearOverBase: LayerPrior;
    readonly galvanisedUnder: LayerThickness;
    readonly singleStage: LayerPrior;
  };
  readonly stated: {
    /** SD of panels of one car about what is stated of the car's paint. */
    readonly panelToPanel: Micrometres;
    /** What a stated layer may be off by where nothing is said. */
    readonly clearSd: Micrometres;
    readonly underSd: Micrometres;
  };
  /** How the spread of the total is shared between the topcoat and what lies under it. */
  readonly topcoat: {
    /** Share of the face whose topcoat is spoken of. */
    readonly thinnestShare: number;
    /** Share of a panel's variance that is put down to the topcoat. */
    readonly panelShare: number;
    /** Most of the topcoat's own variance that may lie within a panel. */
    readonly panelCeiling: number;
    /** Least of the under layers' own variance that lies between panels. */
    readonly underLeast: number;
  };
  readonly earlier: {
    /** Clear taken before, where nobody knows. */
    readonly unknownClear: Micrometres;
    /** The same, counted against the limit over the panel's life. */
    readonly unknownLife: Micrometres;
  };
  readonly limits: {
    /** Risk taken where nobody states another, per cent. */
    readonly riskPct: number;
    /** Chance that the removal itself exceeds what the total floor allows, per cent. */
    readonly totalFloorRiskPct: number;
    readonly life: Micrometres;
    readonly lifeSolid: Micrometres;
    readonly clearFloor: Micrometres;
    readonly clearFloorStrict: Micrometres;
    readonly singleStageFloor: Micrometres;
    readonly totalFloor: Micrometres;
    readonly totalFloorSingleStage: Micrometres;
  };
  /** What readings of two visits are held to. */
  readonly compare: {
    /** A gain from which on film is held for paint: wax, coatings and a gauge that moved make less. */
    readonly leastOfPaint: Micrometres;
    /** Points whose figures tell that readings are those of a visit on record; fewer may be alike by chance. */
    readonly leastAlike: number;
    /** The share of the points of both that must read the same: a slip that was corrected makes no other survey. */
    readonly shareAlike: number;
    /** Chance that two honest visits have a point whose change is held to stand out. */
    readonly pointFalseAlarm: number;
    /** How what comes off varies over a panel at least, as a share of it. */
    readonly unevenWork: number;
    /** The log of the likelihoods' ratio from which points are held to fit another way round. */
    readonly farBetter: number;
  };
  /** How much thinner the clear is taken to be in `risk if thin`. */
  readonly thinnerClear: Micrometres;
  /** Paint younger than this is left alone. */
  readonly freshPaintDays: number;
  readonly reading: {
    /** Points a panel needs before a machine may work it, and the count that is best. */
    readonly leastPoints: number;
    readonly bestPoints: number;
    /** More points than this gain next to nothing. */
    readonly mostPoints: number;
  };
  /** What it takes to find something out, a panel. */
  readonly measuring: {
    /** A point read three times. */
    readonly pointTime: Minutes;
    /** The clear by a layer-resolving instrument. */
    readonly clearTime: Minutes;
    /** A test spot with ten marks before and after. */
    readonly testSpotTime: Minutes;
  };
  /** Outer strip of a panel that no statement is about, mm. */
  readonly edgeWidth: Millimetres;
};

export type Finish =
  | 'clear-over-base'
  | 'single-stage-solid'
  | 'single-stage-metallic'
  | 'lacquer'
  | 'matte'
  | 'unknown';

/**
 * A layer's mean over a panel, as a measurement or a paint maker gives it. Of a panel's clear it is
 * what is there now; of the car's, what was painted, from which earlier work is still to be taken.
 */
export type StatedLayer = LayerThickness & {
  readonly of: 'panel' | 'car';
  /** How the layer varies over the panel, where that was measured too. */
  readonly within?: { readonly sd: Micrometres; readonly dof: number };
  /** Panels of the car that it was read on, where it is told from those. */
  readonly readOn?: number;
  /** The mean of what was read of it and of what is stated, as they agree. */
  readonly withStated?: true;
};

/** The clear of a car as it was painted, by the readings of some of its panels. */
export type ClearElsewhere = LayerThickness & { readonly panels: number };

/** A visit that took more than might go, and what might, where it says so. */
export type Overrun = {
  readonly date: string;
  readonly mean: Micrometres;
  readonly sd: Micrometres;
  readonly allowed: Micrometres | null;
  /** False where what was measured lies over what might go, and what that may be off by reaches under it. */
  readonly surely: boolean;
};

/** A spot at a deep defect, planned for a visit: what it was to take beyond what the panel lost. */
export type PlaceWorked = {
  readonly date: string | null;
  /** Id of the kind of defect. */
  readonly defect: string;
  /** The name of the point at which it is read. */
  readonly point: string;
  readonly median: Micrometres;
  /** Most of it, in 95 cases of 100. */
  readonly high: Micrometres;
  /** What a reading since, or readings before and after, say of it, as on record; absent where none do. */
  readonly measured?: { readonly value: Micrometres; readonly standardError: Micrometres };
  /** What is held of it by all that was read there; absent where nobody did. */
  readonly taken?: Pick<RecordedRemoval, 'mean' | 'sd'>;
};

/** What might still go after a visit, by all that was read and planned, and the later readings that it was told of. */
export type LeftAfterVisit = {
  /** Without one, of readings that are compared just now. */
  readonly date: string | null;
  readonly most: Micrometres;
  /** Of a panel in two zones, by the names of these. */
  readonly zones?: Readonly<Record<string, Micrometres>>;
  readonly points: number;
  readonly mean: Micrometres;
  /** Each of the readings at these points, where the record keeps them. */
  readonly read?: readonly Micrometres[];
  /** Held to for being fewer than these points alone, as the record keeps no readings. */
  readonly isByNumber?: boolean;
  /** Whether it was held back by a word in doubt, which a test spot made since may settle. */
  readonly isNearLine?: boolean;
  /** Where the visit stands in its record. */
  readonly visit?: number;
};

/** Film that visits on record took, all together. */
export type RecordedRemoval = {
  readonly mean: Micrometres;
  readonly sd: Micrometres;
  /** What says so, where it is not the film record alone. */
  readonly by?: string;
  /** Visits at which more came off than might go. */
  readonly overruns?: readonly Overrun[];
  /** Visits at which film came on by as much as paint adds; without a day those that are compared just now. */
  readonly gains?: readonly { readonly date: string | null; readonly by: Micrometres }[];
  /** Visits that worked it and did not read it after: their part of what is gone is foretold, not measured. */
  readonly unread?: readonly {
    readonly date: string;
    readonly mean: Micrometres;
    readonly sd: Micrometres;
  }[];
  /** Places of it that were worked deeper, by so much more. */
  readonly places?: readonly PlaceWorked[];
  /** What might still go after each visit, where it is known. */
  readonly left?: readonly LeftAfterVisit[];
  /** The part of it that is gone all over the panel, where patches of test spots lost some; else all of it. */
  readonly allOver?: Pick<RecordedRemoval, 'mean' | 'sd'>;
  /** Test spots of this visit that left colour on the pad which the paint is not known to give. */
  readonly colourAt?: readonly string[];
};

/** What the job says of a panel beyond its readings. */
export type PanelFacts = {
  readonly finish: Finish;
  /** Whether that is stated of the panel itself, whatever it was painted with last; absent where it is the car's. */
  readonly isOwnFinish?: boolean;
  /** Film taken off before, apart from what is on record, where it is known. */
  readonly taken: Micrometres | null;
  /** What that may be off by, as an SD: 0 where it is stated without. */
  readonly takenSd: Micrometres;
  readonly recorded: RecordedRemoval | null;
  readonly clear: StatedLayer | null;
  /** Read on this panel, where its clear is stated besides: it only lowers what may go. */
  readonly clearRead?: StatedLayer;
  /**
   * Read on other panels of the car, where nothing was read of this one's: on all, and on those without a stated one. It
   * only lowers what may go.
   */
  readonly clearElsewhere?: readonly ClearElsewhere[];
  /** A layer stated of the car cannot be true of another panel of this paint. */
  readonly statedInDoubt?: true;
  /** Everything under the clear. */
  readonly under: StatedLayer | null;
  readonly galvanised: boolean;
  readonly covered: boolean;
  readonly clearCoatFailure: boolean;
  readonly paintedDaysAgo: number | null;
  /** Test spots of other panels that put its clear in doubt, as it has none of its own without colour. */
  readonly colourElsewhere?: readonly string[];
  /** Test spots on it whose colour on the pad puts the finish of the whole car in doubt. */
  readonly colourOfCar?: readonly string[];
  /** Test spots on it that left no colour where a finish without a clear is stated. */
  readonly clearShownAt?: readonly string[];
  /** A visit on record whose later readings these are, and nothing more: no more may go than was left then. */
  readonly heldTo?: LeftAfterVisit;
};

export type LimitPolicy = 'standard' | 'strict';
