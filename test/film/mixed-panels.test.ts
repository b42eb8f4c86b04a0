import { describe, expect, it } from 'vitest';
import { isZone, nameWithZone, partsOf } from '../../src/film/survey.ts';
import {
  amongSound,
  fiveAround,
  onFace,
  panelOf,
  plainPanel,
  reading,
  surveyOf,
} from './car-builder.ts';

/** Three points of factory film, two repainted. */
const halfRepainted = onFace('tested', 110, 158, 112, 161, 114);

describe('a panel in two zones', () => {
  it('is mixed, and names the points of each zone with their means', () => {
    const { panel } = amongSound(halfRepainted);
    expect(panel.condition).toBe('mixed');
    expect(panel.evidence[0]?.text).toMatch(
      /^two zones 47.5 µm apart, Ashman’s D 23.0: 112.0 µm at points 1, 3, 5, 159.5 µm at points 2, 4$/,
    );
    expect(panel.zones.map(({ zone, points }) => [zone, points.map(({ point }) => point)])).toEqual(
      [
        ['thinner', ['1', '3', '5']],
        ['thicker', ['2', '4']],
      ],
    );
  });
  it('has a condition, statistics and a budget for each zone', () => {
    const [a, b] = amongSound(halfRepainted).panel.zones;
    expect([a?.condition, b?.condition]).toEqual(['original', 'refinished']);
    expect([a?.statistics?.mean, b?.statistics?.mean]).toEqual([112, 159.5]);
    expect(a?.budget).toBeGreaterThan(1);
    expect([b?.budget, b?.boundBy.code]).toEqual([0, 'test-spot']);
  });
  it('shows all of its points, and what the zone that allows least allows', () => {
    const { panel } = amongSound(halfRepainted);
    expect(panel.points).toHaveLength(5);
    expect(panel.statistics?.mean).toBe(131);
    expect([panel.budget, panel.boundBy.code]).toEqual([0, 'test-spot']);
    expect(panel.also).toEqual(['refinished']);
  });
  it('gives each zone the share of the area that it has of the points', () => {
    const { panel } = amongSound(halfRepainted);
    const [a, b] = panel.zones;
    expect(a?.panel.area).toBeCloseTo(0.6 * panel.panel.area, 12);
    expect(b?.panel.area).toBeCloseTo(0.4 * panel.panel.area, 12);
  });
  it('surveys its factory zone as a panel of those points among the same others', () => {
    const [a] = amongSound(halfRepainted).panel.zones;
    const alone = amongSound(onFace('tested', 110, 112, 114)).panel;
    // The same but for the pool, which the panel that stands alone is part of.
    expect(a?.film?.mean).toBe(alone.film?.mean);
    expect(a?.boundBy.code).toBe(alone.boundBy.code);
    expect(Math.abs((a?.budget ?? 0) - alone.budget)).toBeLessThan(0.1);
  });
  it('does not enter the spread of the other panels', () => {
    const other = (readings: typeof halfRepainted) =>
      panelOf(amongSound(readings).survey, 'sound-b').film?.spread.sd;
    expect(other(halfRepainted)).toBe(other(onFace('tested', 112)));
  });
  it('is told of beside another such panel: neither hides the other', () => {
    const survey = surveyOf({
      panels: ['a', 'b', 'c', 'd', 'e', 'f'].map((id) => plainPanel(id)),
      readings: [
        ...['c', 'd', 'e', 'f'].flatMap((id) => fiveAround(id, 112)),
        ...onFace('a', 110, 158, 112, 161, 114),
        ...onFace('b', 155, 111, 112, 160, 114),
      ],
    });
    expect([panelOf(survey, 'a').condition, panelOf(survey, 'b').condition]).toEqual([
      'mixed',
      'mixed',
    ]);
  });
  it('is refinished and no more where both of its levels are repaint', () => {
    const { panel } = amongSound(onFace('tested', 230, 233, 300, 304, 231));
    expect([panel.condition, panel.zones]).toEqual(['refinished', []]);
  });
  it('is advised the edge of its repair to be found, and no test spot on part of it', () => {
    const { advice } = amongSound(halfRepainted).panel;
    expect(advice.map(({ code }) => code)).toContain('repair-edge');
    expect(advice.map(({ code }) => code)).not.toContain('test-spot');
  });
  it('has the bound of its thinner zone, and no doubt that would be one population’s', () => {
    const { panel } = amongSound(halfRepainted);
    const bounds = panel.zones.map(({ thinnest }) => thinnest);
    expect(bounds.every((bound) => bound !== null)).toBe(true);
    expect(panel.thinnest).toBe(Math.min(...bounds.map((bound) => bound ?? Number.NaN)));
    expect([panel.moderation, panel.uncertainty]).toEqual([null, null]);
  });
  it('is surveyed and worked as its two zones, where a panel of one film is worked as it is', () => {
    const { panel } = amongSound(halfRepainted);
    expect(partsOf(panel)).toBe(panel.zones);
    expect(panel.zones.map(isZone)).toEqual([true, true]);
    const whole = amongSound(fiveAround('tested', 112)).panel;
    expect(partsOf(whole)).toEqual([whole]);
    expect([panel, whole].map(isZone)).toEqual([false, false]);
  });
  it('has the clear of its own points alone in each zone, where that was read by itself', () => {
    const clear = [38, 60, 40, 62, 39].map((um, i) =>
      reading('tested', `${i + 1}`, um, { layer: 'clear' }),
    );
    const [thinner, thicker] = amongSound([...halfRepainted, ...clear]).panel.zones;
    expect(thinner?.facts.clear?.mean).toBe(39);
    expect(thicker?.facts.clear?.mean).toBe(61);
    expect([thinner?.readingCount, thicker?.readingCount]).toEqual([3, 2]);
  });
  it('is named with its zone, and by itself where it has none', () => {
    expect([nameWithZone('roof', 'thinner'), nameWithZone('roof', null)]).toEqual([
      'roof (thinner zone)',
      'roof',
    ]);
  });
  it('may not be worked in a thicker zone that no factory painted, under the line of a repaint too', () => {
    for (const high of [142, 150]) {
      const { panel } = amongSound(onFace('tested', 110, high, 112, high + 1, 114));
      const [thinner, thicker] = panel.zones;
      expect([thinner?.condition, thicker?.condition]).toEqual(['original', 'refinished']);
      expect(thinner?.budget).toBeGreaterThan(1);
      expect([thicker?.budget, thicker?.boundBy.code]).toEqual([0, 'test-spot']);
      expect(thicker?.evidence[0]?.text).toContain('over the rest of its panel');
      expect(thicker?.sureness).toBeNull();
    }
  });
  it('has its thinner zone cut back where that lies farther under the usual film', () => {
    const [thinner, thicker] = amongSound(onFace('tested', 84, 114, 86, 116, 85)).panel.zones;
    expect([thinner?.also, thicker?.condition]).toEqual([['cut-back'], 'original']);
  });
  it('has none where points lie on filler, be it one or more: nothing of it may go before a test spot', () => {
    for (const films of [
      [110, 112, 620, 640, 111],
      [110, 112, 620, 109, 111],
    ]) {
      const { panel } = amongSound(onFace('tested', ...films));
      expect(panel.condition).toBe('filler');
      expect(panel.zones).toEqual([]);
      expect([panel.budget, panel.boundBy.code]).toEqual([0, 'test-spot']);
    }
  });
});
