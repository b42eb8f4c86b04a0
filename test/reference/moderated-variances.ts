/**
 * Prior on variances and moderated variances: R package limma 3.54.1, fitFDist and squeezeVar, R 4.2.2.
 * The input variances are invented.
 */
export const moderatedVarianceCases = [
  {
    name: 'heterogeneous n5',
    variances: [31.2, 8.4, 77.5, 12.9, 25.6, 4.1, 110.3, 19.8, 40.2, 9.7, 15.5],
    dofs: [4, 4, 4, 4, 4, 4, 4, 4, 4, 4, 4],
    priorDof: 7.48115489758,
    priorVariance: 24.0118511763,
    moderated: [
      26.5161807103, 18.5727289571, 42.6469621214, 20.1405154874, 24.5651574727, 17.0746218282,
      54.0743839419, 22.5444548337, 29.6517537708, 19.0256450659, 21.0463477048,
    ],
  },
  {
    name: 'mild n9',
    variances: [22.1, 30.5, 14.2, 41.9, 27.3, 18.8, 9.6, 35.1, 52.4, 24.0],
    dofs: [8, 8, 8, 8, 8, 8, 8, 8, 8, 8],
    priorDof: Infinity,
    priorVariance: 27.59,
    moderated: [27.59, 27.59, 27.59, 27.59, 27.59, 27.59, 27.59, 27.59, 27.59, 27.59],
  },
  {
    name: 'unequal df',
    variances: [12.5, 60.1, 7.3, 33.0, 90.8, 15.9, 5.2],
    dofs: [2, 4, 8, 4, 11, 3, 6],
    priorDof: 5.51499769872,
    priorVariance: 21.7935680854,
    moderated: [
      19.3202291815, 37.8971692118, 13.2143180354, 26.5046283587, 67.7560783387, 19.7171489387,
      13.147330273,
    ],
  },
  {
    name: 'homogeneous n3',
    variances: [20.0, 25.0, 22.0, 18.0, 30.0, 24.0],
    dofs: [2, 2, 2, 2, 2, 2],
    priorDof: Infinity,
    priorVariance: 23.1666666667,
    moderated: [
      23.1666666667, 23.1666666667, 23.1666666667, 23.1666666667, 23.1666666667, 23.1666666667,
    ],
  },
];
