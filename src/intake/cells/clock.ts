/** The time of day that a text names: `14:05`, `2:05:30 pm`. */

export type Clock = {
  /** From midnight, with what seconds add. */
  readonly minutes: number;
  /** The text on either side of it. */
  readonly before: string;
  readonly after: string;
};

const CLOCK = /(?<!\d)([01]?\d|2[0-4]):([0-5]\d)(?::(\d{2})(?:[.,]\d+)?)?(?:\s?([ap])\.?m\b\.?)?/iu;

/** The first of a text; a zone that follows it is left to whoever asks. */
export function clockIn(text: string): Clock | undefined {
  const found = CLOCK.exec(text);
  if (found === null) return undefined;
  const [clock, hour, minute, second = '0', half] = found;
  const hours =
    half === undefined ? Number(hour) : (Number(hour) % 12) + (/p/iu.test(half) ? 12 : 0);
  return {
    minutes: hours * 60 + Number(minute) + Number(second) / 60,
    before: text.slice(0, found.index),
    after: text.slice(found.index + clock.length),
  };
}
