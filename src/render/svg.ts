/** What all drawings share: a picture with its name and its numbers in words, and text in it. */
import { element, escaped } from './html-text.ts';

export type Drawing = {
  readonly look: string;
  /** Left edge, top, width, height. */
  readonly box: readonly [number, number, number, number];
  readonly title: string;
  /** What it shows, for who does not see it. */
  readonly said: string;
};

export const drawing = ({ look, box, title, said }: Drawing, ...parts: readonly string[]): string =>
  element(
    'svg',
    { class: look, viewBox: box.join(' '), role: 'img' },
    element('title', {}, escaped(title)),
    element('desc', {}, escaped(said)),
    ...parts,
  );

export type TextPlace = {
  readonly x: number;
  readonly y: number;
  readonly anchor: 'start' | 'middle' | 'end';
  readonly look?: string;
};

export const drawnText = ({ x, y, anchor, look }: TextPlace, text: string): string =>
  element(
    'text',
    { x, y, 'text-anchor': anchor, ...(look === undefined ? {} : { class: look }) },
    escaped(text),
  );

/** A tenth of a unit of the drawing is finer than any paper. */
export const tenth = (value: number): number => Math.round(10 * value) / 10;
