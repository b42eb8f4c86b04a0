/** A drawing of a page as a picture of its own: the same marks, in the page's own colours. */
import { pageStyle } from '../../src/render/html-style.ts';

/** The first drawing of that look; its size is that of its own units. */
export function drawingOf(html: string, look: string): string {
  const [, box = '', inside = ''] =
    new RegExp(`<svg class="${look}" viewBox="([^"]*)" role="img">(.*?)</svg>`, 's').exec(html) ??
    [];
  const [left = 0, top = 0, width = 0, height = 0] = box.split(' ').map(Number);
  if (width === 0) throw new Error(`the page has no drawing ${look}`);
  return `<svg xmlns="http://www.w3.org/2000/svg" class="${look}" viewBox="${left - EDGE} ${top - EDGE} ${width + 2 * EDGE} ${height + 2 * EDGE}" width="${width}" role="img" font-family="system-ui, sans-serif">
<style>${pageStyle}.backing { fill: var(--paper); }
</style>
<rect class="backing" x="${left - EDGE}" y="${top - EDGE}" width="${width + 2 * EDGE}" height="${height + 2 * EDGE}"/>
${inside}
</svg>
`;
}

const EDGE = 12;
