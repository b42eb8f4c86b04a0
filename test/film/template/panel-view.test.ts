import { describe, expect, test } from 'vitest';
import { panelView, seenPlace } from '../../../src/film/template/panel-view.ts';
import { builtInTemplates } from '../../../src/formats/data/templates.ts';

const panels = builtInTemplates.flatMap((template) => template.panels);
const viewsOf = (word: string) =>
  panels.filter(({ id }) => id.split('-').includes(word)).map(panelView);

describe('a panel as whoever stands before it sees it', () => {
  test('has the front of the vehicle at the right on every right-hand panel, so that it is mirrored', () => {
    expect(viewsOf('right').length).toBeGreaterThan(30);
    for (const view of viewsOf('right')) {
      expect(view).toEqual({ isMirrored: true, towards: { word: 'front', at: 'right' } });
    }
  });

  test('has the front of the vehicle at the left on every left-hand panel', () => {
    for (const view of viewsOf('left')) {
      expect(view).toEqual({ isMirrored: false, towards: { word: 'front', at: 'left' } });
    }
  });

  test('has the vehicle’s left at the right before the front bumper, at the left behind the rear one', () => {
    const [front] = panels.filter(({ id }) => id === 'bumper-front').map(panelView);
    const [rear] = panels.filter(({ id }) => id === 'bumper-rear').map(panelView);
    expect(front).toEqual({ isMirrored: true, towards: { word: 'left', at: 'right' } });
    expect(rear).toEqual({ isMirrored: false, towards: { word: 'left', at: 'left' } });
  });

  test('has its front edge at the top where it is flat', () => {
    for (const panel of panels.filter(({ facing }) => facing === 'horizontal')) {
      expect(panelView(panel)).toEqual({
        isMirrored: false,
        towards: { word: 'front', at: 'top' },
      });
    }
  });

  test('is drawn as it is, and without an arrow, where its name tells neither side nor end', () => {
    const [roof] = panels;
    if (roof === undefined) throw new Error('a panel');
    const nameless = { ...roof, id: 'x1', name: 'panel x1', facing: 'vertical' as const };
    expect(panelView(nameless)).toEqual({ isMirrored: false, towards: null });
  });

  test('is drawn as it is where its id and its name tell different sides', () => {
    const [door] = panels.filter(({ id }) => id === 'door-front-left');
    if (door === undefined) throw new Error('a door');
    const torn = { ...door, name: 'front right door' };
    // Both say front, which is the vehicle's left at the right for whoever stands before it.
    expect(panelView(torn)).toEqual({ isMirrored: true, towards: { word: 'left', at: 'right' } });
    const turned = { ...door, id: 'door-left', name: 'rear right door' };
    expect(panelView(turned)).toEqual({ isMirrored: false, towards: null });
  });

  test('puts a point of u 0.2 a fifth from the right where it is mirrored, its height kept', () => {
    const mirrored = { isMirrored: true, towards: null };
    expect(seenPlace({ u: 0.2, v: 0.3 }, mirrored)).toEqual({ u: 0.8, v: 0.3 });
    expect(seenPlace({ u: 0.2, v: 0.3 }, { ...mirrored, isMirrored: false })).toEqual({
      u: 0.2,
      v: 0.3,
    });
  });
});
