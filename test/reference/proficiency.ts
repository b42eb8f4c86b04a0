/**
 * Published values of what grading rests on: robust means, gauge R&R, agreement, shares, scores. Full digits
 * by R 4.2.2 and Python, which agree; the printed figures stand beside them.
 */

/** ISO 5725-5:1998, creosote oil, cell means. The printed answer of the standard is that of round 4. */
export const creosote = {
  values: [24.14, 20.155, 19.5, 20.3, 20.705, 17.57, 20.1, 20.94, 21.185],
  start: [20.3, 0.94912],
  rounds: [
    [20.387222222, 0.985596632],
    [20.406604938, 1.009682944],
    [20.410912209, 1.026681774],
    [20.41186938, 1.038801008],
    [20.412082084, 1.047479894],
  ],
  converged: { mean: 20.412142857142857, sd: 1.0698397029558995 },
} as const;

/** Analytical Methods Committee 1989 (Analyst 114:1693), copper in wholemeal flour, 24 results, by factor 1.134. */
export const copperInFlour = {
  values: [
    2.9, 3.1, 3.4, 3.4, 3.7, 3.7, 2.8, 2.5, 2.4, 2.4, 2.7, 2.2, 5.28, 3.37, 3.03, 3.03, 28.95, 3.77,
    3.4, 2.2, 3.5, 3.6, 3.7, 3.7,
  ],
  mean: 3.2055659227311053,
  sd: 0.674150100028104,
} as const;

/** ISO 13528:2005, 8.6.2, antibody concentrations, means of 25 laboratories. */
export const antibody = {
  values: [
    2.15, 1.85, 1.8, 1.8, 1.9, 1.9, 1.9, 2.05, 2.35, 2.03, 2.08, 1.25, 1.13, 1.0, 1.08, 1.2, 1.35,
    1.23, 1.23, 0.9, 1.48, 1.2, 1.73, 1.43, 1.28,
  ],
  mean: 1.5686426698324223,
  sd: 0.46494938398542557,
} as const;

/**
 * Rousseeuw & Hubert 2011 (WIREs Data Mining and Knowledge Discovery 1:73), section on robust location and scale: five
 * measurements, and the same with a decimal mark lost in the fourth.
 */
export const fiveMeasurements = {
  clean: [6.27, 6.34, 6.25, 6.31, 6.28],
  slipped: [6.27, 6.34, 6.25, 63.1, 6.28],
  /** As printed. */
  mean: { clean: 6.29, slipped: 17.65 },
  median: { clean: 6.28, slipped: 6.28 },
  /** 1.483·MAD, without a factor for few values; the same for both. */
  mad: 0.044,
} as const;

/** AIAG, Measurement Systems Analysis, 4th edition: 10 parts, 3 appraisers, 3 trials. */
export const aiag = {
  readings: [
    [
      [0.29, 0.41, 0.64],
      [0.08, 0.25, 0.07],
      [0.04, -0.11, -0.15],
    ],
    [
      [-0.56, -0.68, -0.58],
      [-0.47, -1.22, -0.68],
      [-1.38, -1.13, -0.96],
    ],
    [
      [1.34, 1.17, 1.27],
      [1.19, 0.94, 1.34],
      [0.88, 1.09, 0.67],
    ],
    [
      [0.47, 0.5, 0.64],
      [0.01, 1.03, 0.2],
      [0.14, 0.2, 0.11],
    ],
    [
      [-0.8, -0.92, -0.84],
      [-0.56, -1.2, -1.28],
      [-1.46, -1.07, -1.45],
    ],
    [
      [0.02, -0.11, -0.21],
      [-0.2, 0.22, 0.06],
      [-0.29, -0.67, -0.49],
    ],
    [
      [0.59, 0.75, 0.66],
      [0.47, 0.55, 0.83],
      [0.02, 0.01, 0.21],
    ],
    [
      [-0.31, -0.2, -0.17],
      [-0.63, 0.08, -0.34],
      [-0.46, -0.56, -0.49],
    ],
    [
      [2.26, 1.99, 2.01],
      [1.8, 2.12, 2.19],
      [1.77, 1.45, 1.87],
    ],
    [
      [-1.36, -1.25, -1.31],
      [-1.68, -1.62, -1.5],
      [-1.49, -1.77, -2.16],
    ],
  ],
  ss: [88.3619344444, 3.1672622222, 0.3589822222, 2.7589333333],
  dof: [9, 2, 18, 60],
  interactionChance: 0.9741064043290462,
  pooled: {
    sd: {
      ev: 0.19993317972081662,
      av: 0.2268375214963223,
      int: 0,
      grr: 0.30237152232290465,
      pv: 1.0423274938380347,
      tv: 1.0852995632186302,
    },
    studyVariation: 0.2786065088114228,
    ndc: 4,
    /** As the manual prints them. */
    printed: { ev: 0.199933, av: 0.226838, grr: 0.302373, pv: 1.042327, studyVariation: 0.279 },
  },
  withInteraction: {
    sd: {
      ev: 0.21443465723203942,
      av: 0.22830444982676001,
      int: 0,
      grr: 0.3132174069762436,
      pv: 1.0433945274524374,
      tv: 1.0893930805501828,
    },
    studyVariation: 0.2875155098452227,
  },
} as const;

/** Bland & Altman 1986, Lancet 327:307, first readings of two peak flow meters, A − B. */
export const peakFlow = {
  a: [494, 395, 516, 434, 476, 557, 413, 442, 650, 433, 417, 656, 267, 478, 178, 423, 427],
  b: [512, 430, 520, 428, 500, 600, 364, 380, 658, 445, 432, 626, 260, 477, 259, 350, 451],
  mean: -2.1176470588235294,
  sd: 38.76512987360738,
  limits: [-78.097301611094, 73.86200749344692],
  limitsAtTwo: [-79.64790680603829, 75.41261268839122],
  meanInterval: [-22.04883769664517, 17.81354357899811],
  lowerInterval: [-112.61913645114221, -43.57546677104578],
  upperInterval: [39.34017265339871, 108.38384233349514],
  printed: { mean: -2.1, sd: 38.8, limitsAtTwo: [-79.7, 75.5] },
} as const;

/** Cohen 1968, Psychological Bulletin 70:213: proportions of two judges; printed .492. */
export const cohen1968 = {
  table: [
    [0.44, 0.07, 0.09],
    [0.05, 0.2, 0.05],
    [0.01, 0.03, 0.06],
  ],
  kappa: 0.4915254237288136,
  printed: 0.492,
} as const;

/** Agresti 1990 (91 couples), by R package vcd. */
export const couples = {
  table: [
    [7, 7, 2, 3],
    [2, 8, 3, 7],
    [1, 5, 4, 9],
    [2, 8, 9, 14],
  ],
  kappa: 0.1293302540415705,
} as const;

/** Two tables that agree alike (0.60) and have different kappas, and the textbook table of 0.4. */
export const kappaTables = [
  {
    table: [
      [45, 15],
      [25, 15],
    ],
    kappa: 0.13043478260869557,
    observed: 0.6,
  },
  {
    table: [
      [25, 35],
      [5, 35],
    ],
    kappa: 0.2592592592592592,
    observed: 0.6,
  },
  {
    table: [
      [20, 5],
      [10, 15],
    ],
    kappa: 0.4,
    observed: 0.7,
  },
] as const;

/** Newcombe 1998, Statistics in Medicine 17:857, Table I: 95 % intervals, printed to four digits. */
export const newcombe = [
  {
    x: 81,
    n: 263,
    exact: [0.25273674558527126, 0.36762192260135135],
    printedExact: [0.2527, 0.3676],
  },
  {
    x: 15,
    n: 148,
    exact: [0.057844010083448576, 0.161650490349479],
    printedExact: [0.0578, 0.1617],
  },
  {
    x: 0,
    n: 20,
    exact: [0, 0.1684334709830853],
    printedExact: [0, 0.1684],
  },
  {
    x: 1,
    n: 29,
    exact: [0.0008726468835799228, 0.1776442954887229],
    printedExact: [0.0009, 0.1776],
  },
] as const;

/** Small samples by R (binom.test) and Python, which agree; 4 of 20 at 90 % as well. */
export const smallShares = [
  {
    x: 4,
    n: 20,
    confidence: 0.95,
    exact: [0.05733399705003278, 0.4366140029966683],
  },
  {
    x: 9,
    n: 10,
    confidence: 0.95,
    exact: [0.5549838829718046, 0.9974714214555382],
  },
  {
    x: 10,
    n: 10,
    confidence: 0.95,
    exact: [0.6915028921812392, 1],
  },
  {
    x: 5,
    n: 10,
    confidence: 0.95,
    exact: [0.18708602844739855, 0.8129139715526015],
  },
  {
    x: 4,
    n: 20,
    confidence: 0.9,
    exact: [0.07135388430861819, 0.4010281173319745],
  },
] as const;

/**
 * Youden 1962, Experimentation and Measurement, Table 2 (NIST Dataplot, YOUDEN31): 24 student operators read the
 * thickness of paper four times each, in mm; one reading of one of them is a blunder. The results of its one-way
 * analysis by R and Python, and the blunder, in mm. The other 95 readings are not typed here.
 */
export const youdenPaper = {
  operators: 24,
  readings: 4,
  mean: 0.07677604166666667,
  blunder: { operator: 21, replicate: 4, reading: 0.0466 },
  sdOfMeans: 0.0035656534797031013,
  repeatability: 0.0038862605205175495,
  betweenVariance: 8.9381295289855e-6,
  reproducibility: 0.0049031775780935,
  f: 3.36724,
  chance: 4.3796e-5,
} as const;

/** CCQM-K30, lead in wine (Metrologia 45, 08001): reference 2.99 mg/kg, U 0.06 (k = 2). */
export const leadInWine = {
  assigned: { value: 2.99, u: 0.03, expanded: 0.06 },
  laboratories: [
    { name: 'INMETRO', x: 1.62, u: 0.044, expanded: 0.088, zeta: -25.72571499, en: -12.8628575 },
    {
      name: 'KRISS',
      x: 2.893,
      u: 0.0206572769953052,
      expanded: 0.044,
      zeta: -2.66306392,
      en: -1.30368808,
    },
    { name: 'NMIJ', x: 2.936, u: 0.0125, expanded: 0.025, zeta: -1.66153846, en: -0.83076923 },
    { name: 'IRMM', x: 2.94, u: 0.0165, expanded: 0.033, zeta: -1.46035979, en: -0.7301799 },
    { name: 'LNE', x: 3.13, u: 0.06, expanded: 0.12, zeta: 2.08699678, en: 1.0434985 },
    { name: 'INM', x: 7.71, u: 0.99, expanded: 1.98, zeta: 4.76548926, en: 2.38274463 },
  ],
} as const;

/** NIST Dataplot reference page of the z score of ISO 13528, data GEAR; the page prints cut digits. */
export const gear = {
  values: [1.006, 0.996, 0.998, 1.0, 0.992, 0.993, 1.002, 0.999, 0.994, 1.0],
  assigned: 1,
  sigma: 0.00627890487781,
  printed: [0.955, -0.637, -0.318, 0, -1.274, -1.114, 0.318, -0.159, -0.955, 0],
} as const;

/** ISO 13528 / ISO Guide 43-1: what a z score says, at and beside its limits. */
export const zVerdicts = [
  [-3, 'unsatisfactory'],
  [-2.999, 'questionable'],
  [-2.001, 'questionable'],
  [-2, 'satisfactory'],
  [0, 'satisfactory'],
  [2, 'satisfactory'],
  [2.001, 'questionable'],
  [2.999, 'questionable'],
  [3, 'unsatisfactory'],
] as const;
