/**
 * JCGM 100:2008 (GUM), annex H.1: calibration of an end gauge, nm. Printed and full digits.
 */
export const endGauge = {
  length: 50000838,
  components: {
    standard: { contribution: 25, dof: 18 },
    difference: { contribution: 9.68194195397, dof: 25.6 },
    'expansion difference': { contribution: 2.88675134595, dof: 50 },
    'temperature difference': { contribution: 16.5988202392, dof: 2 },
  },
  /** Parts of the difference, which combine to 9.7 nm with 25.6 degrees of freedom. */
  differenceParts: {
    repeats: { contribution: 5.8, dof: 24 },
    'random effects': { contribution: 3.9, dof: 5 },
    'systematic effects': { contribution: 6.7, dof: 8 },
  },
  printed: { combined: 32, effectiveDof: 16.7, truncatedDof: 16, expanded99: 93 },
  full: { combined: 31.6637674111, effectiveDof: 16.7521475092, expanded99: 92.4829499512 },
};

/** Type B factors: JCGM 100:2008 4.3.7 and F.2.2.1; copper expansion 0.40e-6 as half-width in 4.3.7. */
export const typeBFactors = {
  rectangular: 0.5773502691896258,
  resolution: 0.2886751345948129,
  copper: { halfWidth: 0.4e-6, printed: 0.23e-6 },
};
