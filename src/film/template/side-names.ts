/** Panels by their names, those of both sides together. */
import type { Panel } from './template.ts';

/** `rear bumper, both sills`: both where the panels of either side are among them; `told` is what each is called. */
export function panelNames(
  panels: readonly Panel[],
  told: (panel: Panel, name: string) => string = (_, name) => name,
): readonly string[] {
  const ids = new Set(panels.map(({ id }) => id));
  const names = panels.map((panel) => {
    const both = panel.mirror !== null && ids.has(panel.mirror);
    return told(panel, both ? `both ${panel.name.replace(/\b(left|right) /, '')}s` : panel.name);
  });
  return [...new Set(names)];
}
