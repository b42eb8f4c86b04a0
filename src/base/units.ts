/**
 * Physical quantities as branded numbers: a thickness cannot be passed where a time is meant.
 *
 * A quantity is made in one of the constructors below, where a raw number gets its meaning: on
 * reading a file, in the built-in data, or where a documented formula yields it.
 */
declare const unit: unique symbol;

export type Quantity<Unit extends string> = number & { readonly [unit]: Unit };

export type Micrometres = Quantity<'µm'>;
export type Millimetres = Quantity<'mm'>;
export type Metres = Quantity<'m'>;
export type SquareMetres = Quantity<'m²'>;
export type Minutes = Quantity<'min'>;
export type Seconds = Quantity<'s'>;
export type Kelvins = Quantity<'K'>;
export type DegreesCelsius = Quantity<'°C'>;
export type Newtons = Quantity<'N'>;
export type MetresPerSecond = Quantity<'m/s'>;

export const micrometres = (value: number): Micrometres => value as Micrometres;
export const millimetres = (value: number): Millimetres => value as Millimetres;
export const metres = (value: number): Metres => value as Metres;
export const squareMetres = (value: number): SquareMetres => value as SquareMetres;
export const minutes = (value: number): Minutes => value as Minutes;
export const seconds = (value: number): Seconds => value as Seconds;
export const kelvins = (value: number): Kelvins => value as Kelvins;
export const degreesCelsius = (value: number): DegreesCelsius => value as DegreesCelsius;
export const newtons = (value: number): Newtons => value as Newtons;
export const metresPerSecond = (value: number): MetresPerSecond => value as MetresPerSecond;

/** Units a thickness is read or shown in. */
export type LengthUnit = 'um' | 'mil';

/** 1 mil (thou) = 25.4 µm exactly: international inch, 1959 (ISO 80000-3). */
export const MICROMETRES_PER_MIL = 25.4;

export const milToMicrometres = (mil: number): Micrometres =>
  micrometres(mil * MICROMETRES_PER_MIL);
export const micrometresToMil = (thickness: Micrometres): number => thickness / MICROMETRES_PER_MIL;

/** A number of micrometres as one of the unit that is shown. */
export const inLengthUnit = (value: number, unit: LengthUnit): number =>
  unit === 'um' ? value : micrometresToMil(micrometres(value));

/** Sum, difference and multiple of quantities of one unit; mixed units do not compile. */
export const plus = <U extends string>(a: Quantity<U>, b: NoInfer<Quantity<U>>): Quantity<U> =>
  (a + b) as Quantity<U>;
export const minus = <U extends string>(a: Quantity<U>, b: NoInfer<Quantity<U>>): Quantity<U> =>
  (a - b) as Quantity<U>;
export const scale = <U extends string>(a: Quantity<U>, factor: number): Quantity<U> =>
  (a * factor) as Quantity<U>;
