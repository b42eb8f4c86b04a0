import { describe, expect, test } from 'vitest';
import { micrometres } from '../../../src/base/units.ts';
import { readGauge } from '../../../src/formats/gauge.ts';
import { renderText } from '../../../src/render/text.ts';
import { gaugeBlocks } from '../../../src/report/gauge/gauge-blocks.ts';
import { gaugeFileText } from '../../../src/report/gauge/gauge-file.ts';
import { type CheckGaugeRequest, checkGaugeFiles } from '../../../src/tasks/gauge/check-gauge.ts';
import { resolveSettings } from '../../../src/tasks/settings/settings.ts';
import { checkedGauge, gaugeChecks } from '../../samples/gauge-checks.ts';
import { flag, layersOf } from '../layers.ts';

const header = 'shim_um,shim_uncertainty_um,reading_um';
const file = (name: string, text: string) => ({
  name,
  bytes: new TextEncoder().encode(text),
  sha256: name,
});
const rows = (shim: number, uncertainty: number, ...readings: readonly number[]): string =>
  readings.map((reading) => `${shim},${uncertainty},${reading}\n`).join('');

function check(
  texts: readonly string[],
  rest: Partial<CheckGaugeRequest> = {},
  said: Parameters<typeof layersOf>[0] = {},
) {
  return checkGaugeFiles({
    files: texts.map((text, i) => file(`${i + 1}.csv`, text)),
    settings: resolveSettings(layersOf(said)),
    gauge: undefined,
    permitted: { fixed: micrometres(1), proportional: 0.01 },
    shimUncertainty: undefined,
    adjust: false,
    ...rest,
  });
}
const checked = (...asked: Parameters<typeof check>) => {
  const { value } = check(...asked);
  if (value === undefined) throw new Error('refused');
  return value;
};
const codes = (list: readonly { readonly code: string }[]): readonly string[] =>
  list.map(({ code }) => code);

describe('the largest error permitted', () => {
  const text = `${header}\n${rows(100, 0.5, 100.1, 100.2)}`;
  const statement = (keys: string) => {
    const { value } = readGauge('g', `{ "schema": "leastcut/gauge/1", ${keys} }`);
    return value?.value;
  };
  const gauge = statement('"permitted_error": { "fixed_um": 2, "proportional_pct": 3 }');

  test('is what was typed, before what the gauge file states', () => {
    expect(checked([text], { gauge }).permitted).toEqual({ fixed: 1, proportional: 0.01 });
    expect(checked([text], { gauge }).assumptions).toEqual([]);
  });
  test('is what the gauge file states, key by key', () => {
    const permitted = { fixed: micrometres(1) };
    expect(checked([text], { gauge, permitted: {} }).permitted).toEqual({
      fixed: 2,
      proportional: 0.03,
    });
    expect(checked([text], { gauge, permitted }).permitted).toEqual({
      fixed: 1,
      proportional: 0.03,
    });
    expect(checked([text], { gauge, permitted }).assumptions).toEqual([]);
  });
  test('is assumed where nobody states it, in whole or in part, and that is said', () => {
    expect(checked([text], { permitted: {} }).permitted).toEqual({ fixed: 1, proportional: 0.02 });
    for (const permitted of [{}, { fixed: micrometres(1) }, { proportional: 0.01 }]) {
      expect(codes(checked([text], { permitted }).assumptions)).toEqual(['gauge-mpe']);
    }
    const shop = { numbers: { 'film.measurement.fixed_um': 3 } };
    expect(checked([text], { permitted: {} }, { shop }).permitted.fixed).toBe(3);
  });
});

describe('before and after', () => {
  const before = `${header}\n${rows(100, 0.5, 100.1, 100.2, 100.1)}`;
  const after = `${header}\n${rows(100, 0.5, 101.9, 102, 101.9)}`;

  test('are two files in that order, or a column', () => {
    const column = `${header},check\n100,0.5,100.1,before\n100,0.5,100.2,before\n100,0.5,100.1,before\n100,0.5,101.9,after\n100,0.5,102,after\n100,0.5,101.9,after\n`;
    const [two, one] = [checked([before, after]), checked([column])];
    expect(two.runs.map((run) => run.check)).toEqual(['before', 'after']);
    expect(two.runs).toEqual(one.runs);
    expect(two.drift).toEqual(one.drift);
    // (101.9 + 102 + 101.9)/3 − (100.1 + 100.2 + 100.1)/3 = 1.8
    expect(two.drift).toMatchObject([{ shim: 100, proved: true }]);
    expect(two.drift[0]?.change).toBeCloseTo(1.8, 10);
  });
  test('the worse of the two decides', () => {
    // Error 1.93, U about .55: undecided at an MPE of 2.
    expect(checked([before]).verdict).toBe('pass');
    expect(checked([before, after]).verdict).toBe('undecided');
  });
  test('one check alone says nothing of drift', () => {
    expect(checked([before]).drift).toEqual([]);
    expect(checked([before]).runs.map((run) => run.check)).toEqual([null]);
  });
  test('said twice over is refused, and so is a third file', () => {
    const column = `${header},check\n100,0.5,100.1,before\n`;
    expect(codes(check([column, after]).diagnostics)).toEqual(['usage-option-value']);
    expect(codes(check([before, after, before]).diagnostics)).toEqual(['usage-option-value']);
  });
  test('pool how far readings repeat: √((2·.01/3 + 2·.01/3)/4) = .0577', () => {
    const { repeatability } = checked([before, after]);
    expect(repeatability?.dof).toBe(4);
    expect(repeatability?.sd).toBeCloseTo(Math.sqrt(0.01 / 3), 10);
  });
});

describe('the step of the display', () => {
  const stepOf = (...asked: Parameters<typeof check>) => Number(checked(...asked).step);
  test('is the readings’ own', () => {
    expect(stepOf([`${header}\n${rows(100, 0.5, 100.1, 100.2)}`])).toBe(0.1);
    expect(stepOf([`${header}\n${rows(100, 0.5, 100, 101)}`])).toBe(1);
  });
  test('is no ten because a few shims happen to be tens', () => {
    expect(stepOf([`${header}\n${rows(50, 0.5, 50, 50)}${rows(100, 0.5, 100, 100)}`])).toBe(1);
    expect(stepOf(['shim_mil,shim_uncertainty_um,reading_mil\n5,1,5\n'])).toBeCloseTo(2.54, 10);
  });
  test('is what the gauge file says where that is coarser', () => {
    const { value } = readGauge(
      'g',
      '{ "schema": "leastcut/gauge/1", "permitted_error": { "fixed_um": 1, "proportional_pct": 1 }, "resolution_um": 5 }',
    );
    expect(stepOf([`${header}\n${rows(100, 0.5, 100, 101)}`], { gauge: value?.value })).toBe(5);
  });
});

test('without a repeat the scatter is assumed, and that is said', () => {
  const { assumptions, repeatability } = checked([`${header}\n${rows(100, 0.5, 100.1)}`]);
  expect(codes(assumptions)).toEqual(['gauge-no-repeats']);
  expect(repeatability).toBeUndefined();
});

test('the unit of the file may be a setting', () => {
  const text = 'shim,shim_uncertainty,reading\n4,0.02,4.1\n';
  const [run] = checked([text], {}, { typed: { readingUnit: flag('mil' as const) } }).runs;
  expect(run?.result.shims[0]?.shim).toBeCloseTo(101.6, 10);
});

describe('an adjustment', () => {
  const high = `${header}\n${[0, 50, 125, 250].map((shim) => rows(shim, 0.5, 2 + 1.03 * shim)).join('')}`;

  test('is made only when asked for', () => {
    expect(checked([high]).adjustment).toBeNull();
    const { adjustment } = checked([high], { adjust: true });
    expect(adjustment?.shims).toBe(4);
    expect(adjustment?.line.slope).toBeCloseTo(1 / 1.03, 10);
    expect(adjustment?.left.shims.every(({ residual }) => Math.abs(residual) < 1e-9)).toBe(true);
  });
  test('leaves the verdict as it was found', () => {
    expect(checked([high], { adjust: true }).verdict).toBe('fail');
  });
  test('is not made of a gauge that moved, nor where no sound line goes through', () => {
    const moved = [
      `${header}\n${rows(100, 0.5, 100.1, 100.2, 100.1)}`,
      `${header}\n${rows(100, 0.5, 101.9, 102, 101.9)}`,
    ];
    const flat = [`${header}\n${rows(50, 0.5, 100)}${rows(100, 0.5, 100)}`];
    for (const texts of [moved, flat]) {
      const outcome = check(texts, { adjust: true });
      expect(codes(outcome.diagnostics)).toEqual(['gauge-not-adjusted']);
      expect(outcome.value?.adjustment).toBeNull();
    }
  });
});

describe('the sample of a gauge', () => {
  test('is found as it was drawn: offset, gain and scatter, and no drift', () => {
    const { value, diagnostics } = check([gaugeChecks()], { adjust: true });
    expect(diagnostics).toEqual([]);
    const { offset, gain, scatter } = checkedGauge;
    for (const { result } of value?.runs ?? []) {
      for (const { shim, error, expanded } of result.shims) {
        const truth = offset + (gain - 1) * shim;
        expect(Math.abs(error.value - truth)).toBeLessThan(expanded);
      }
    }
    expect(value?.drift.filter(({ proved }) => proved)).toEqual([]);
    expect(value?.repeatability?.dof).toBe(32);
    // χ²(32) keeps s/σ within .76 and 1.24 in 95 of 100 draws.
    expect((value?.repeatability?.sd ?? 0) / scatter).toBeGreaterThan(0.76);
    expect((value?.repeatability?.sd ?? 0) / scatter).toBeLessThan(1.24);
    expect(value?.adjustment?.line.slope).toBeCloseTo(1 / gain, 2);
  });
});

describe('the gauge file', () => {
  test('is read back as what the check found', () => {
    const found = checked([gaugeChecks()], { adjust: true });
    const { value, diagnostics } = readGauge('gauge.json', gaugeFileText(found));
    expect(diagnostics).toEqual([]);
    expect(value?.value).toMatchObject({
      permitted: { fixed: 1, proportional: 0.01 },
      resolution: 0.1,
      verdict: 'pass',
      repeatability: { dof: 32 },
    });
    expect(value?.value.checks.map(({ check, shim, n }) => [check, Number(shim), n])).toEqual([
      ...[0, 49.6, 125.2, 251].map((shim) => ['before', shim, 5]),
      ...[0, 49.6, 125.2, 251].map((shim) => ['after', shim, 5]),
    ]);
    expect(value?.value.drift.map(({ proved }) => proved)).toEqual([false, false, false, false]);
    expect(value?.value.adjustment?.slope).toBeCloseTo(found.adjustment?.line.slope ?? 0, 6);
    expect(value?.value.adjustment?.offset).toBeCloseTo(found.adjustment?.line.offset ?? 0, 6);
  });
  test('takes what was known of the gauge along, and writes what is not known not at all', () => {
    const { value } = readGauge(
      'g',
      '{ "schema": "leastcut/gauge/1", "instrument": "G2", "serial": "0042", "permitted_error": { "fixed_um": 1, "proportional_pct": 1 } }',
    );
    const one = checked([`${header}\n${rows(100, 0.5, 100.12345)}`], { gauge: value?.value });
    const written = JSON.parse(gaugeFileText(one)) as object;
    expect(written).toMatchObject({ instrument: 'G2', serial: '0042', adjustment: null });
    for (const key of ['resolution_um', 'repeatability_um', 'drift']) {
      expect(written).not.toHaveProperty(key);
    }
  });
  test('of the wildest readings can be read again', () => {
    const wild = checked([`${header}\n${rows(3000, 50, 3500, -50)}${rows(0, 0, 3500, 0)}`]);
    expect(readGauge('g', gaugeFileText(wild)).diagnostics).toEqual([]);
  });
});

describe('the page of an adjustment that was asked for', () => {
  const pageOf = (off: number): string => {
    const text = `${header}\n${[0, 50, 100, 250]
      .map((shim) => rows(shim, 0.2, shim + off, shim + off + 0.1, shim + off - 0.1))
      .join('')}`;
    const blocks = gaugeBlocks(checked([text], { adjust: true }), 'um');
    return renderText(blocks, { width: 80, paint: (piece) => piece }).replaceAll(/\n +/g, ' ');
  };

  test('says first that none is needed where the gauge passes, and to use it as it is', () => {
    const page = pageOf(0.1);
    expect(page).toContain('Gauge check: pass, no adjustment needed');
    expect(page).toContain('Adjustment: none is needed');
    expect(page).toContain('Use the gauge as it is: write its gauge file without --adjust.');
    expect(page).not.toContain('ADJUSTED');
  });

  test('says that it is adjusted where the gauge fails', () => {
    const page = pageOf(9);
    expect(page).toMatch(/^Gauge check: FAIL$/m);
    expect(page).toContain('Adjustment: ADJUSTED, as asked');
    expect(page).not.toContain('none is needed');
  });
});

test('a check on the bare plate alone is undecided, says why, and writes a file that says so', () => {
  const bare = checked([`${header}\n${rows(0, 0, 0.1, 0, 0.2, 0.1, 0.1)}`]);
  expect(bare).toMatchObject({ verdict: 'undecided', reached: false });
  const page = renderText(gaugeBlocks(bare, 'um'), { width: 80, paint: (piece) => piece });
  expect(page).toContain('No shim of 40 µm or more was read');
  expect(page).toContain('Read shims on either side of the film as well');
  expect(page).not.toContain('Use the gauge.');
  expect(JSON.parse(gaugeFileText(bare))).toMatchObject({ verdict: 'undecided' });
});

describe('readings that no gauge shows', () => {
  const page = (...readings: readonly string[]): string =>
    renderText(gaugeBlocks(checked([`${header}\n${readings.join('')}`]), 'um'), {
      width: 80,
      paint: (text) => text,
    }).replaceAll(/\s+/g, ' ');

  test('in another unit are mended before the gauge is', () => {
    const said = page(rows(50, 0.5, 1.97, 1.98), rows(125, 0.5, 4.92, 4.93));
    expect(said).toContain(
      'What to do: Look at the figures before the gauge: 1.97 µm is a 25.4th of the shim of 50 µm, and so with 3 more: mil and µm mixed up? Name the unit that the gauge showed, and check again.',
    );
    expect(said).not.toContain('serviced');
  });
  test('with a decimal mark in the wrong place as well, and are not read more often for it', () => {
    const said = page(rows(125, 0.5, 12.5, 125.2, 125.1));
    expect(said).toContain(
      '12.5 µm is a tenth of the shim of 125 µm: a decimal mark in the wrong place? Write what the gauge showed, and check again.',
    );
    expect(said).not.toContain('Read each shim more often');
  });
  test('are none of a gauge that is far off, nor of the bare plate', () => {
    expect(page(rows(0, 0, 0.1, 0.2), rows(50, 0.5, 60, 61))).toContain('have it serviced');
  });
});
