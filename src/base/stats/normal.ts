/**
 * Standard normal distribution: density, distribution function and quantile.
 *
 * Φ by the rational approximations of Cody 1969 (Math. Comp. 23: 631–637; constants as in Cody 1993,
 * ACM TOMS 19: 22–32); Φ⁻¹ by Wichura 1988 (Applied Statistics 37: 477–484, AS 241).
 *
 * Accuracy: relative error below 2e-14 for Φ down to z = −37 and for Φ⁻¹ from 1e-300; near p = 1
 * the rounding of p itself weighs more (for the upper tail q take −Φ⁻¹(q)).
 * An upper tail is Φ(−z), never 1 − Φ(z). Φ(±∞) is 0 or 1; Φ⁻¹(0) is −∞ and Φ⁻¹(1) is ∞; a NaN, or a
 * probability outside [0, 1], throws a RangeError.
 */
import { polynomial } from './polynomial.ts';

const INVERSE_ROOT_TWO_PI = 0.3989422804014327;
const ROOT_THIRTY_TWO = Math.sqrt(32);
/** To where Φ is taken from its value at 0. */
const CENTRE_REACH = 0.67448975;
/** Beyond it the upper tail, 5e-17, is less than half of the last digit of 1. */
const LAST_DIGIT_REACH = 8.3;

/** (Φ(z) − ½)/z at the centre, by z². Written out, as is the next: no functions are called more often. */
const centre = (square: number): number =>
  ((((0.06568233791820745 * square + 2.2352520354606837) * square + 161.02823106855587) * square +
    1067.6894854603709) *
    square +
    18154.98125334356) /
  ((((square + 47.202581904688245) * square + 976.0985517377767) * square + 10260.932208618979) *
    square +
    45507.78933502673);
/** The upper tail over exp(−y²/2), to √32. */
const shoulder = (y: number): number =>
  ((((((((1.0765576773720192e-8 * y + 0.39894151208813466) * y + 8.883149794388377) * y +
    93.50665613217785) *
    y +
    597.2702763948002) *
    y +
    2494.5375852903726) *
    y +
    6848.190450536283) *
    y +
    11602.65143764735) *
    y +
    9842.714838383978) /
  ((((((((y + 22.266688044328117) * y + 235.387901782625) * y + 1519.3775994075547) * y +
    6485.558298266761) *
    y +
    18615.571640885097) *
    y +
    34900.95272114598) *
    y +
    38912.00328609327) *
    y +
    19685.429676859992);
/** What the tail beyond that lacks to its leading term, by 1/y². */
const farShoulder = (x: number): number =>
  (((((0.023073441764940174 * x + 0.215898534057957) * x + 0.12740116116024736) * x +
    0.022235277870649807) *
    x +
    0.0014216191932278934) *
    x +
    2.9112874951168793e-5) /
  (((((x + 1.284260096144911) * x + 0.4682382124808651) * x + 0.06598813786892856) * x +
    0.0037823963320275824) *
    x +
    7.297515550839662e-5);

type Ratio = { readonly numerator: readonly number[]; readonly denominator: readonly number[] };

const ratio = (of: Ratio, x: number): number =>
  polynomial(of.numerator, x) / polynomial(of.denominator, x);

/** exp(−y²/2) with y split at a sixteenth, so that the rounding of y² does not reach the exponent. */
const gaussian = (y: number): number => {
  const coarse = Math.trunc(y * 16) / 16;
  return Math.exp((-coarse * coarse) / 2) * Math.exp(-((y - coarse) * (y + coarse)) / 2);
};

/** Density φ(z) = exp(−z²/2)/√(2π). Relative error below 1e-15 to |z| = 3, 1e-13 at 38. */
export const normalDensity = (z: number): number => {
  if (Number.isNaN(z)) throw new RangeError('normalDensity needs a number');
  return INVERSE_ROOT_TWO_PI * Math.exp((-z * z) / 2);
};

/** The upper tail over exp(−y²/2). */
const tailRatio = (y: number): number => {
  if (y < ROOT_THIRTY_TWO) return shoulder(y);
  const x = 1 / (y * y);
  return (INVERSE_ROOT_TWO_PI - x * farShoulder(x)) / y;
};

/** Distribution function Φ(z): the chance that a standard normal value is at most z. */
export const normalCdf = (z: number): number => {
  if (Number.isNaN(z)) throw new RangeError('normalCdf needs a number');
  const y = Math.abs(z);
  if (y <= CENTRE_REACH) return 0.5 + z * centre(y * y);
  const tail = y > 38.6 ? 0 : gaussian(y) * tailRatio(y);
  return z < 0 ? tail : 1 - tail;
};

/** Values, and the density and the distribution function at each. */
export type NormalTable = {
  readonly z: Float64Array;
  readonly density: Float64Array;
  readonly below: Float64Array;
};

/**
 * φ and Φ at each z, into their columns: Φ takes its exponential from φ, half the work of both, and no number is
 * handed on by itself, for V8 would make an object of it. Relative error of Φ below 1e-13.
 */
export function fillNormal({ z, density, below }: NormalTable): void {
  for (let k = 0; k < z.length; k += 1) {
    const value = z[k] as number;
    if (Number.isNaN(value)) throw new RangeError('fillNormal needs numbers');
    const y = Math.abs(value);
    const height = INVERSE_ROOT_TWO_PI * Math.exp((-value * value) / 2);
    density[k] = height;
    if (y <= CENTRE_REACH) {
      below[k] = 0.5 + value * centre(y * y);
      continue;
    }
    if (value > LAST_DIGIT_REACH) {
      below[k] = 1;
      continue;
    }
    const tail = (height / INVERSE_ROOT_TWO_PI) * tailRatio(y);
    below[k] = value < 0 ? tail : 1 - tail;
  }
}

const QUANTILE_CENTRE = {
  numerator: [
    2509.0809287301227, 33430.57558358813, 67265.7709270087, 45921.95393154987, 13731.69376550946,
    1971.5909503065513, 133.14166789178438, 3.3871328727963665,
  ],
  denominator: [
    5226.495278852854, 28729.085735721943, 39307.89580009271, 21213.794301586597, 5394.196021424751,
    687.1870074920579, 42.31333070160091, 1,
  ],
};
const QUANTILE_SHOULDER = {
  numerator: [
    0.0007745450142783414, 0.022723844989269184, 0.2417807251774506, 1.2704582524523684,
    3.6478483247632045, 5.769497221460691, 4.630337846156546, 1.4234371107496835,
  ],
  denominator: [
    1.0507500716444169e-9, 0.0005475938084995345, 0.015198666563616457, 0.14810397642748008,
    0.6897673349851, 1.6763848301838038, 2.053191626637759, 1,
  ],
};
const QUANTILE_TAIL = {
  numerator: [
    2.0103343992922881e-7, 2.7115555687434876e-5, 0.0012426609473880784, 0.026532189526576124,
    0.29656057182850487, 1.7848265399172913, 5.463784911164114, 6.657904643501103,
  ],
  denominator: [
    2.0442631033899397e-15, 1.421511758316446e-7, 1.8463183175100548e-5, 0.0007868691311456133,
    0.014875361290850615, 0.1369298809227358, 0.599832206555888, 1,
  ],
};

/** Quantile Φ⁻¹(p): the z with Φ(z) = p. */
export const normalQuantile = (p: number): number => {
  if (!(p >= 0 && p <= 1)) throw new RangeError('normalQuantile needs a probability');
  const fromCentre = p - 0.5;
  if (Math.abs(fromCentre) <= 0.425) {
    return fromCentre * ratio(QUANTILE_CENTRE, 0.180625 - fromCentre * fromCentre);
  }
  const tail = fromCentre < 0 ? p : 1 - p;
  if (tail === 0) return fromCentre < 0 ? -Infinity : Infinity;
  const r = Math.sqrt(-Math.log(tail));
  const size = r <= 5 ? ratio(QUANTILE_SHOULDER, r - 1.6) : ratio(QUANTILE_TAIL, r - 5);
  return fromCentre < 0 ? -size : size;
};

/** z of a one-sided 95 % statement: Φ⁻¹(0.95). */
export const Z_95 = normalQuantile(0.95);
