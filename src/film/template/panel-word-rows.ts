/** What words for panels mean, as the lists of each language write it. */
import type { Sense } from './panel-sense.ts';

/** What words mean, then the words, parted by commas. */
export type WordRow = readonly [Sense | readonly Sense[], string];

export const left: Sense = { side: 'left' };
export const right: Sense = { side: 'right' };
export const front: Sense = { end: 'front' };
export const rear: Sense = { end: 'rear' };
export const bonnet: Sense = { part: 'bonnet' };
export const roof: Sense = { part: 'roof' };
export const wing: Sense = { part: 'wing' };
export const door: Sense = { part: 'door' };
export const quarter: Sense = { part: 'quarter' };
export const vanSide: Sense = { part: 'van-side' };
export const boot: Sense = { part: 'boot' };
export const tailgate: Sense = { part: 'tailgate' };
export const rearDoors: Sense = { part: 'rear-doors' };
export const bumper: Sense = { part: 'bumper' };
export const sill: Sense = { part: 'sill' };
export const mirror: Sense = { part: 'mirror' };
export const rail: Sense = { part: 'rail' };
export const driver: Sense = { kerb: 'driver' };
export const passenger: Sense = { kerb: 'passenger' };
export const filler: Sense = {};
