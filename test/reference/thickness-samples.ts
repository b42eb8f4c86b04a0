/**
 * Published samples of thickness with their statistics (R 4.2.2 and Python agree on the full digits).
 */
/** Nelson, Coffin & Copeland 2003 (R package EngrExpt, ccthickn): clear coat on 40 sprayed test panels, µm. */
export const clearCoatPanels = {
  values: [
    64.7, 64.5, 71.3, 61.4, 60.6, 66.4, 64.2, 62.6, 61.4, 64.8, 61.6, 65.4, 62.2, 67.9, 64.2, 67.0,
    66.4, 61.2, 63.9, 62.3, 62.6, 64.0, 58.2, 64.4, 66.4, 66.2, 64.4, 64.8, 67.2, 70.2, 66.5, 61.1,
    64.9, 62.7, 60.7, 65.5, 64.4, 60.5, 64.1, 67.6,
  ],
  mean: 64.26,
  standardDeviation: 2.71763471819,
  median: 64.4,
  medianAbsoluteDeviation: 2,
  minimum: 58.2,
  maximum: 71.3,
  meanInterval95: [63.3908582517, 65.1291417483] as const,
  lowerLimits: [
    [0.9, 59.6476863772],
    [0.95, 58.4836843799],
    [0.99, 56.2675935863],
  ] as const,
  confidenceOfSmallest: 0.871487843435,
};

/** Natrella 1963, NBS Handbook 91, chapter 2: thickness of mica washers, inch. */
export const micaWashers = {
  values: [0.123, 0.124, 0.126, 0.129, 0.12, 0.132, 0.123, 0.126, 0.129, 0.128],
  mean: 0.126,
  standardDeviation: 0.00359010987,
  meanInterval95: [0.12343179011, 0.12856820989] as const,
};
