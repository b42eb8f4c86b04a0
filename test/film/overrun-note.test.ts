import { describe, expect, it } from 'vitest';
import { saying } from '../../src/base/remark.ts';
import { tell } from '../../src/base/sentence.ts';
import { micrometres } from '../../src/base/units.ts';
import type { Overrun } from '../../src/film/film-model.ts';
import { overrunNotes } from '../../src/film/overrun-note.ts';

const told = (
  allowed: number | null,
  paintedDaysAgo: number | null = null,
  surely = true,
): readonly string[] => {
  const overrun: Overrun = {
    date: '2026-03-31',
    mean: micrometres(6.2),
    sd: micrometres(0.4),
    allowed: allowed === null ? null : micrometres(allowed),
    surely,
  };
  const recorded = { mean: micrometres(6.2), sd: micrometres(0.4), overruns: [overrun] };
  return overrunNotes({ recorded, paintedDaysAgo } as Parameters<typeof overrunNotes>[0]).map(
    (note) => tell(saying(note), 'um'),
  );
};

describe('what is said of a panel that lost more than might go at a visit on record', () => {
  it('says perhaps where what was measured may be off by as much', () => {
    expect(told(6, null, false)[0]).toContain('on 2026-03-31 perhaps more came off than might go');
    expect(told(6)[0]).toContain('on 2026-03-31 more came off than might go');
  });

  it('names what might go, that nothing might, or neither where nobody said', () => {
    expect(told(2.8)[0]).toContain('6.2 ± 0.4 µm (SD) where 2.80 µm might: its limits count that');
    expect(told(0)[0]).toContain('6.2 ± 0.4 µm (SD) where nothing might: its limits count that');
    expect(told(null)[0]).toContain('6.2 ± 0.4 µm (SD): its limits count that');
  });

  it('is nothing where it was painted since', () => {
    expect(told(2.8, 200)).toEqual([]);
  });
});
