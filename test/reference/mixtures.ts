/** Two-component normal mixtures fitted to the Old Faithful data (R datasets::faithful, EM in R and Python). */
export const oldFaithful = {
  waiting: {
    means: [54.6148561406, 80.0910694027],
    sds: [5.87121941222, 5.86773442371],
    ashmanD: 4.34045699396,
  },
  eruptions: {
    means: [2.01860781706, 4.27334342119],
    sds: [0.235621771457, 0.437063146223],
    ashmanD: 6.42192645943,
  },
} as const;

/** R package modes: components N(0, 1²) and N(15, 3²). */
export const modesExample = { means: [0, 15], sds: [1, 3], ashmanD: 6.7082039324993685 } as const;
