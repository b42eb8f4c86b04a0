/** Published differences of means; full digits by R 4.2.2 and Python, which agree. */

/** Student 1908 (Cushny & Peebles 1905): hours of sleep gained by ten patients on two drugs. */
export const sleep = {
  x: [0.7, -1.6, -0.2, -1.2, -0.1, 3.4, 3.7, 0.8, 0, 2],
  y: [1.9, 0.8, 1.1, 0.1, -0.1, 4.4, 5.5, 1.6, 4.6, 3.4],
  paired: {
    difference: -1.58,
    t: -4.06212768338204,
    dof: 9,
    interval95: [-2.459885763277, -0.700114236723],
  },
  welch: {
    t: -1.86081346748685,
    dof: 17.7764735161785,
    interval95: [-3.365483230712, 0.205483230712],
  },
} as const;

/** NIST/SEMATECH e-Handbook 1.3.5.3, AUTO83B: miles per gallon of 249 and 79 cars, by their summaries. */
export const auto83b = {
  first: { n: 249, mean: 20.1445783133, sd: 6.41469934324 },
  second: { n: 79, mean: 30.4810126582, sd: 6.10771004864 },
  welch: { t: -12.9462732749, dof: 136.874976673, interval95: [-11.9152480946, -8.75762059531] },
} as const;
