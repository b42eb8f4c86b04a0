/** An example of the help that is wider than the page, on several lines that a shell takes for one. */
import { wrapSetIn } from '../../render/wrap.ts';

const GOES_ON = ' \\';
const HELD = '\u00a0';

/** What stands in quotes stays together. */
export function foldedExample(example: string, width: number): readonly string[] {
  const line = `  ${example.replaceAll(/"[^"]*"/g, (text) => text.replaceAll(' ', HELD))}`;
  const whole = wrapSetIn(line, width, '    ').length === 1;
  const lines = wrapSetIn(line, whole ? width : width - GOES_ON.length, '    ');
  return lines.map((one, i) => one.replaceAll(HELD, ' ') + (i < lines.length - 1 ? GOES_ON : ''));
}
