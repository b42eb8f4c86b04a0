/** What a word of a panel's name can say: which part, at which end, on which side. */
export type Side = 'left' | 'right';
export type End = 'front' | 'rear';
export type KerbWord = 'nearside' | 'offside' | 'driver' | 'passenger';

export type Part =
  | 'bonnet'
  | 'roof'
  | 'wing'
  | 'door'
  | 'quarter'
  | 'bedside'
  | 'van-side'
  | 'boot'
  | 'tailgate'
  | 'rear-doors'
  /** A label that names boot and tailgate at once. */
  | 'closure'
  | 'bumper'
  | 'sill'
  | 'mirror'
  | 'rail'
  | 'cab-rear';

export type Sense = {
  readonly part?: Part;
  readonly end?: End;
  readonly side?: Side;
  readonly kerb?: KerbWord;
  /** The word `side`, which says nothing unless left, right or the kerb is named as well. */
  readonly sideWord?: true;
  /** A reading taken only where no better one fits: `fr` as front, not front right. */
  readonly weak?: true;
  /** A phrase that means this alone, whatever its words mean apart. */
  readonly asOne?: true;
};
